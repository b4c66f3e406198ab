import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Batch } from '../../source/batch/batch.js';
import { batchOf } from '../../source/batch/batch-of.js';
import { runPlanOf } from '../../source/batch/run-sheet-plan.js';
import { dialOf } from '../../source/kitchen/dial.js';
import type { Kitchen } from '../../source/kitchen/kitchen.js';
import { cardText } from '../../source/sheets/card.js';
import { cardHtml } from '../../source/sheets/card-html.js';
import type { RunSheetInput } from '../../source/sheets/run-sheet.js';
import { type Printer, printer } from '../../source/units/printer.js';
import { blind, hall, recipe, recipeNames, seaside } from '../cook/play.js';
import { launched, withoutBrowser } from './browser.js';

const printerOf = ({ dial }: Batch): Printer =>
  printer({ unit: dial.unit, toShownCelsius: (celsius) => dial.toShownCelsius(celsius) });
const made = (kitchen: Kitchen, name: (typeof recipeNames)[number] = 'hill-hall-ginger-pull') =>
  batchOf(recipe(name), kitchen);
const text = (batch: Batch, run: RunSheetInput | null = null): string =>
  cardText(batch, run, printerOf(batch));
const flat = (batch: Batch): string => text(batch).replaceAll(/\s+/g, ' ');
const runOf = (batch: Batch): RunSheetInput => ({
  batch,
  plan: runPlanOf(batch),
  pull: { at: 15 * 3600, twelve: true, date: '2026-11-28' },
  shortNotice: null,
  from: 'trade',
});

describe('the card', () => {
  it("has today's numbers on this thermometer", () => {
    const batch = made(hall);
    const shown = (celsius: number): string =>
      String(Math.round(batch.dial.toShownCelsius(celsius) * 1.8 + 32));
    const card = text(batch);
    expect(card).toContain(`>>> OFF THE HEAT: ${shown(batch.target.takeOffCelsius)} °F`);
    expect(card).toMatch(new RegExp(`> ${shown(batch.stageFromCelsius['hard ball'])} +hard ball`));
    expect(card).toMatch(new RegExp(`${shown(150)} +never`));
    // The book's own number at sea level is nowhere to be mistaken for it.
    expect(card).not.toContain('253 °F');
  });

  it('never lets a thermometer that reads high allow hotter hands', () => {
    const off = (ice: number): Kitchen => ({
      ...seaside,
      thermometers: seaside.thermometers.map((one) => ({
        ...one,
        iceShownCelsius: ice,
        boilsShownCelsius: 100 + ice,
      })),
    });
    const shownLimit = (kitchen: Kitchen): number =>
      Number(/Middle measured: (\d+) °C/.exec(flat(made(kitchen)))?.[1]);
    expect(shownLimit(off(6))).toBe(45);
    expect(dialOf(off(-6), 'middle').toShownCelsius(45)).toBeCloseTo(39, 0);
    expect(shownLimit(off(-6))).toBe(39);
  });

  it('has all that is needed with a dark screen', () => {
    const card = flat(made(hall));
    for (const said of [
      'POWER OUT',
      'Knob off',
      'cool running water, now, 20 minutes',
      'No ice, fat or cream',
      'Slide the lid on',
      'No water',
      'Pot: one adult, nothing else',
      'Before heat',
      'Before pouring',
      'Before hands',
      'never the mass',
      'under water',
      '20 drops ginger oil',
      'Allergies asked: milk',
      'Emergency number ....',
      'come before this card',
    ])
      expect(card.toLowerCase()).toContain(said.toLowerCase());
  });

  it('goes by fingers alone where there is no thermometer', () => {
    const card = flat(made(blind));
    expect(card).toContain('OFF THE HEAT: hard ball');
    expect(card).toContain('20 min for 1 cm, 45 for more');
    expect(card).not.toContain('Read every 2 min');
    expect(card).not.toMatch(/OFF THE HEAT: \d/);
  });

  it('has the words of the fingers large, and no number, on a page without a thermometer', () => {
    const batch = made(blind);
    const page = cardHtml(batch, null, printerOf(batch));
    expect(page).toContain('<p class="value words">hard ball</p>');
    expect(page).not.toMatch(/<th scope="row">\d/);
    expect(cardHtml(made(hall), null, printerOf(made(hall)))).toMatch(/<p class="value">\d+ °F<\/p>/);
  });

  it('forbids lid and stillness where a batch would foam or scorch', () => {
    const card = flat(made(hall, 'molasses-pull'));
    expect(card).toContain('stirring slowly along the bottom');
    expect(card).not.toContain('Lid on');
    expect(flat(made(hall, 'clear-pull'))).toContain('Lid on 2-3 min, opened away from the face');
  });

  it('carries the times of a run sheet', () => {
    const batch = made(hall);
    expect(text(batch, runOf(batch))).toMatch(/\n3:00 pm +Pull with/);
    expect(text(batch)).not.toContain('3:00 pm');
  });

  it('keeps its lines short and what a recipe says harmless', () => {
    for (const name of recipeNames)
      for (const line of text(made(hall, name)).split('\n'))
        expect(line.length, line).toBeLessThanOrEqual(78);
    const batch = made(hall);
    const hostile = { ...batch, recipe: { ...batch.recipe, name: '<script>x</script>\u001b[2J' } };
    const page = cardHtml(hostile, null, printerOf(batch));
    expect(page).not.toContain('<script');
    expect(page).not.toContain('\u001b');
    expect(page).not.toMatch(/(src|href)=/);
  });
});

/** Nobody reads smaller letters from a wall, CSS pixels. */
const smallestLetter = 10;

describe.skipIf(withoutBrowser('the card'))('the card in a browser', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launched();
  });
  afterAll(async () => {
    await browser?.close();
  });

  it.each(recipeNames)('%s is one sheet of A4 and of Letter, with times too', async (name) => {
    const batch = made(hall, name);
    const page = await browser.newPage();
    for (const run of [null, runOf(batch)]) {
      await page.setContent(cardHtml(batch, run, printerOf(batch)));
      for (const format of ['A4', 'Letter'] as const) {
        const pdf = (await page.pdf({ format, preferCSSPageSize: false })).toString('latin1');
        expect(pdf.match(/\/Type\s*\/Page\b(?!s)/g)?.length, `${format} ${run === null}`).toBe(1);
      }
    }
    await page.close();
  });

  it('is as legible on paper as on a telephone, and nothing runs out at the side', async () => {
    const batch = made(hall);
    const page = await browser.newPage();
    const look = `(() => {
      const sizes = [...document.querySelectorAll('main *')]
        .filter((one) => [...one.childNodes].some((node) => node.nodeType === 3 && node.textContent.trim() !== ''))
        .map((one) => parseFloat(getComputedStyle(one).fontSize));
      return { smallest: Math.min(...sizes), over: document.documentElement.scrollWidth - innerWidth };
    })()`;
    type Seen = { readonly smallest: number; readonly over: number };
    for (const [width, media] of [
      [320, 'screen'],
      [1280, 'screen'],
      [763, 'print'],
    ] as const) {
      await page.setViewportSize({ width, height: 900 });
      await page.emulateMedia({ media });
      await page.setContent(cardHtml(batch, runOf(batch), printerOf(batch)));
      const seen = await page.evaluate<Seen>(look);
      expect(seen.over, `${width} ${media}`).toBeLessThanOrEqual(0);
      expect(seen.smallest, `${width} ${media}`).toBeGreaterThanOrEqual(smallestLetter);
    }
    await page.close();
  });
});
