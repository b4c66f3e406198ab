import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { batchOf } from '../../source/batch/batch-of.js';
import { plainPrinter } from '../../source/commands/io.js';
import { defaultKitchen } from '../../source/kitchen/default.js';
import { handoutHtml } from '../../source/sheets/handout-html.js';
import { type RecipeName, recipe } from '../cook/play.js';
import { launched, withoutBrowser } from './browser.js';

const sizes = [
  ['a small phone', 320, 640],
  ['a phone', 360, 740],
  ['a laptop', 1280, 800],
] as const;
const names: readonly RecipeName[] = ['hill-hall-ginger-pull', 'molasses-pull'];
/** CSS pixels; nobody in the audience reads smaller letters. */
const smallestLetter = 12;

type Seen = {
  readonly overflow: number;
  readonly outside: readonly string[];
  readonly smallest: number;
  readonly boxHeight: number;
};

const look = `(() => {
  const root = document.documentElement;
  const all = [...document.querySelectorAll('main *')];
  const own = all.filter((one) => [...one.childNodes].some((node) => node.nodeType === 3 && node.textContent.trim() !== ''));
  const isOutside = (box) => box.width > 0 && (box.right > root.clientWidth + 1 || box.left < -1);
  return {
    overflow: root.scrollWidth - root.clientWidth,
    outside: all.filter((one) => isOutside(one.getBoundingClientRect())).map((one) => one.tagName),
    smallest: Math.min(...own.map((one) => Number.parseFloat(getComputedStyle(one).fontSize))),
    boxHeight: document.querySelector('.box').getBoundingClientRect().height,
  };
})()`;

describe.skipIf(withoutBrowser('the handout'))('the handout in a browser', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launched();
  });
  afterAll(async () => {
    await browser?.close();
  });

  const opened = async (name: RecipeName, width: number, height: number) => {
    const page: Page = await browser.newPage({ viewport: { width, height } });
    const asked: string[] = [];
    page.on('request', (request) => asked.push(request.url()));
    const body = handoutHtml(batchOf(recipe(name), defaultKitchen), plainPrinter);
    await page.route('**/*', (route) =>
      route.request().url() === 'http://page.test/'
        ? route.fulfill({ contentType: 'text/html', body })
        : route.abort(),
    );
    await page.goto('http://page.test/');
    return { page, asked };
  };

  for (const name of names) {
    it.each(sizes)(`fits %s, legible, asking for nothing: ${name}`, async (_, width, height) => {
      const { page, asked } = await opened(name, width, height);
      const seen = await page.evaluate<Seen>(look);
      expect(asked).toEqual(['http://page.test/']);
      expect(seen.overflow).toBe(0);
      expect(seen.outside).toEqual([]);
      expect(seen.smallest).toBeGreaterThanOrEqual(smallestLetter);
      expect(seen.boxHeight).toBeGreaterThan(100);
      await page.close();
    });

    it.each(['A4', 'Letter'])(`prints on at most two sides of %s: ${name}`, async (format) => {
      const { page } = await opened(name, 700, 1000);
      const pdf = (await page.pdf({ format, preferCSSPageSize: false })).toString('latin1');
      const pages = pdf.match(/\/Type\s*\/Page\b/g)?.length ?? 0;
      expect(pages).toBeGreaterThanOrEqual(2);
      expect(pages).toBeLessThanOrEqual(2);
      await page.close();
    });
  }
});
