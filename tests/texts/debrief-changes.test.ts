import { describe, expect, it } from 'vitest';
import { troubleNames } from '../../source/cook/event.js';
import { troubleName, troubleWords } from '../../source/texts/en/debrief-changes.js';
import { type Message, words } from '../../source/texts/message.js';
import { printer } from '../../source/units/printer.js';

const paper = printer({ unit: 'C', toShownCelsius: (celsius) => celsius });
const said = (id: string, values: unknown): string =>
  words({ id: `debrief.${id}`, values } as Message, paper);

/** What stands in a debrief, by what was found: the sentence, or the part of it that depends on it. */
const rows: ReadonlyArray<readonly [id: string, values: unknown, part: string]> = [
  ['because.burn', { phase: 'pull', at: 600, first: null }, 'the journal does not say what was done first.'],
  ['because.burn', { phase: 'pull', at: 600, first: 20 }, '20 s until the first thing was done.'],
  [
    'because.hands-too-hot',
    { at: 60, celsius: null, limitCelsius: 45 },
    'the middle read above their limit of 45',
  ],
  [
    'because.hands-too-hot',
    { at: 60, celsius: 52, limitCelsius: 45 },
    'the middle read 52 °C, above their limit',
  ],
  ['change.wrong-order', { name: 'foam' }, 'heat down and pot off the ring; never water'],
  ['change.wrong-order', { name: 'stiff' }, 'Rehearse "too stiff" once: the first act first.'],
  ['because.wrong-order', { name: 'foam', at: 60, acts: ['water', 'hum'] }, 'in order: water in and hum.'],
  ['because.unattended', { times: 1, seconds: 5 }, 'raised a warning once.'],
  [
    'because.unattended',
    { times: 3, seconds: 80 },
    'raised a warning 3 times; the longest went on for 80 s after it.',
  ],
  ['change.boil-over', { litres: null }, 'Lower the heat when the foam is half way up the pot'],
  ['change.boil-over', { litres: 4 }, 'Take a pot of 4 l or more'],
  ['because.boil-over', { name: 'overflow', at: 60, neededLitres: 4, haveLitres: 3 }, 'It ran over at'],
  ['because.boil-over', { name: 'foam', at: 60, neededLitres: 4, haveLitres: null }, 'this batch wants 4 l.'],
  ['because.boil-over', { name: 'foam', at: 60, neededLitres: 4, haveLitres: 3 }, 'and the pot holds 3 l.'],
  [
    'because.boil-over',
    { name: 'foam', at: 60, neededLitres: 4, haveLitres: 4 },
    'large enough, so it was the heat.',
  ],
  ['change.scorched', { late: true }, 'scrape the bottom as you stir'],
  ['change.scorched', { late: false }, 'a pot with a thicker base'],
  ['because.scorched', { at: 60, peakCelsius: null }, 'It smelled or looked scorched at'],
  ['because.scorched', { at: 60, peakCelsius: 126 }, 'never read above 126 °C, so it was the bottom.'],
  ['change.past-window', { late: true, offCelsius: 124 }, 'the moment it is asked for, at 124 °C.'],
  ['change.past-window', { late: false, offCelsius: 122 }, 'Take it off at 122 °C, that much earlier.'],
  [
    'because.past-window',
    { peakCelsius: 132, ceilingCelsius: 129, pastKelvin: 3, lateSeconds: 0 },
    "window's top of 129 °C.",
  ],
  [
    'because.past-window',
    { peakCelsius: 132, ceilingCelsius: 129, pastKelvin: 3, lateSeconds: 40 },
    'and came off 40 s after it was asked for.',
  ],
  ['because.few-readings', { seconds: 80, readings: 1 }, 'there was one reading, and once none for 80 s.'],
  ['because.few-readings', { seconds: 80, readings: 3 }, 'there were 3 readings'],
  [
    'because.stiff',
    { armsOut: true, portions: 1, gramsEach: 800, mostGrams: 400 },
    'Arms gave out with 800 g',
  ],
  [
    'because.stiff',
    { armsOut: false, portions: 1, gramsEach: 800, mostGrams: 400 },
    'It set before it was pulled',
  ],
  ['change.grains', { missingGrams: 80, wall: true }, 'Add syrup with 80 g more of dry solids'],
  ['change.grains', { missingGrams: 0, wall: true }, 'Wash the wall down once'],
  ['change.grains', { missingGrams: 0, wall: false }, 'never scrape the pot'],
  ['because.grains', { phase: 'pull', at: 60, doctorRatio: null }, '(pull).'],
  [
    'because.grains',
    { phase: 'pull', at: 60, doctorRatio: 0.3 },
    'with 0.3 g of syrup solids to 1 g of sugar.',
  ],
  ['because.soft', { droops: 1, moisture: null }, 'The rope drooped once.'],
  ['because.soft', { droops: 4, moisture: 0.08 }, 'The rope drooped 4 times; about 8 % of it was water.'],
  ['because.fingers-and-dial', { stages: 2 }, '2 stages harder than the thermometer read'],
  ['because.fingers-and-dial', { stages: -3 }, '3 stages softer than the thermometer read'],
  [
    'change.short-tests',
    { fromCelsius: null, feels: 'hard ball' },
    'Wait longer before the first test for hard ball.',
  ],
  ['change.short-tests', { fromCelsius: 121, feels: 'hard ball' }, 'at 121 °C, not before.'],
  ['because.short-tests', { tests: 3, firstCelsius: null }, '3 tests were short of the mark; each costs'],
  ['because.short-tests', { tests: 3, firstCelsius: 112 }, 'the first at 112 °C; each costs'],
  ['because.no-readings', { between: null }, 'nothing can be said of the water left'],
  ['because.no-readings', { between: [121, 131] }, 'somewhere in 121-131 °C.'],
  ['change.yield', { more: true }, 'more came out than went in'],
  ['change.yield', { more: false }, 'Scrape slab and hands'],
  [
    'change.weigh-and-count',
    { weigh: true, count: true },
    'Weigh the whole ("weigh 512g") and count the pieces',
  ],
  ['change.weigh-and-count', { weigh: true, count: false }, 'Weigh the whole ("weigh 512g").'],
  ['change.weigh-and-count', { weigh: false, count: true }, 'Count the pieces ("count 63").'],
  [
    'because.weigh-and-count',
    { weigh: true, count: true, grams: { low: 700, high: 800 }, pieces: { low: 99.6, high: 120 } },
    'guess again: 700 g to 800 g and 100 to 120 pieces.',
  ],
];

describe('what to do otherwise next time', () => {
  it.each(rows)('%s of %j: "%s"', (id, values, part) => {
    const sentence = said(id, values);
    expect(sentence).toContain(part);
    expect(sentence).toMatch(/^[A-Z\d].*\.$/s);
    expect(sentence).not.toMatch(/undefined|NaN|\(\)|;;| {2}/);
  });

  it('has a word for every trouble, and shows another name harmlessly', () => {
    expect(Object.keys(troubleWords).sort()).toEqual([...troubleNames].sort());
    expect(troubleName('\x1b[2J')).toBe('\\x1b[2J');
  });
});
