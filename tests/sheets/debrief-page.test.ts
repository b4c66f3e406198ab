import { readFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { printerOf } from '../../source/commands/cook-printer.js';
import type { Story } from '../../source/lessons/story.js';
import { debriefHtml } from '../../source/sheets/debrief-html.js';
import { fairStory, rehearsed } from '../lessons/cooks-told.js';
import { launched, withoutBrowser } from './browser.js';

const sizes = [
  ['a phone', 360, 740],
  ['a small phone', 320, 640],
  ['a laptop', 1280, 800],
] as const;
/** CSS pixels of a page between margins of 13 mm. */
const papers = [
  ['A4', 794 - 98],
  ['Letter', 816 - 98],
] as const;
/** Nobody reads smaller letters on a page, CSS pixels. */
const smallestLetter = 10;

/** What is told, and on how many sides of paper. */
const cooks: readonly (readonly [string, () => Story, sides: number])[] = [
  ['the fair', () => fairStory(), 2],
  ['a remark', () => fairStory({ t: 1700, typed: 'note somebody asked how thin the threads get' }), 3],
  ['a rehearsal with a long list', () => rehearsed('interruption'), 3],
];

type Seen = {
  readonly overflow: number;
  readonly outside: readonly string[];
  readonly smallest: number;
  readonly curve: { readonly width: number; readonly points: number } | null;
  readonly curves: number;
  readonly mark: { readonly text: string; readonly position: string; readonly display: string } | null;
};

/** What is to be seen of a page, told in the browser. */
const lookAt = (page: Page): Promise<Seen> =>
  page.evaluate<Seen>(readFileSync('tests/sheets/look.js', 'utf8'));

describe.skipIf(withoutBrowser('the page'))('the page in a browser', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launched();
  });
  afterAll(async () => {
    await browser?.close();
  });

  const opened = async (
    story: Story,
    width: number,
    height: number,
  ): Promise<{ page: Page; asked: string[] }> => {
    const page = await browser.newPage({ viewport: { width, height } });
    const asked: string[] = [];
    page.on('request', (request) => asked.push(request.url()));
    await page.route('**/*', (route) =>
      route.request().url() === 'http://page.test/'
        ? route.fulfill({ contentType: 'text/html', body: debriefHtml(story, printerOf(story.cook)) })
        : route.abort(),
    );
    await page.goto('http://page.test/');
    return { page, asked };
  };

  for (const [name, tell, most] of cooks) {
    const story = tell();

    it.each(sizes)(
      `fits %s, legible, with its curve, asking for nothing: ${name}`,
      async (_, width, height) => {
        const { page, asked } = await opened(story, width, height);
        const seen = await lookAt(page);
        expect(asked).toEqual(['http://page.test/']);
        expect(seen.overflow).toBe(0);
        expect(seen.outside).toEqual([]);
        expect(seen.smallest).toBeGreaterThanOrEqual(smallestLetter);
        expect(seen.curve?.width).toBeGreaterThan(Math.min(280, width * 0.8));
        expect(seen.curve?.points).toBeGreaterThan(5);
        await page.close();
      },
    );

    it.each(papers)(`prints within %s: ${name}`, async (format, width) => {
      const { page } = await opened(story, width, 1000);
      await page.emulateMedia({ media: 'print' });
      const seen = await lookAt(page);
      expect(seen.overflow).toBe(0);
      expect(seen.outside).toEqual([]);
      expect(seen.smallest).toBeGreaterThanOrEqual(smallestLetter);
      expect(seen.curves).toBeGreaterThanOrEqual(1);
      const pdf = (await page.pdf({ format, preferCSSPageSize: false })).toString('latin1');
      const pages = pdf.match(/\/Type\s*\/Page\b/g)?.length ?? 0;
      expect(pages).toBeGreaterThanOrEqual(1);
      expect(pages).toBeLessThanOrEqual(most);
      const boxes = new Set(pdf.match(/\/MediaBox\s*\[[^\]]*\]/g));
      expect(boxes.size).toBe(1);
      await page.close();
    });
  }

  it('marks a rehearsal across every printed page', async () => {
    const story = rehearsed('interruption');
    const { page } = await opened(story, 700, 1000);
    await page.emulateMedia({ media: 'print' });
    const { mark } = await lookAt(page);
    // Browsers repeat what is fixed on every printed page.
    expect(mark).toEqual({ text: 'REHEARSAL', position: 'fixed', display: 'block' });
    await page.close();
  });
});
