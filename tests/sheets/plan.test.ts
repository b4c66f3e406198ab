import { describe, expect, it } from 'vitest';
import type { Batch } from '../../source/batch/batch.js';
import { batchOf } from '../../source/batch/batch-of.js';
import { planExplain, planJson, planText } from '../../source/sheets/plan.js';
import { printer } from '../../source/units/printer.js';
import { hall, hillHall, recipeOf, seaLevel } from '../batch/samples.js';

const printerOf = ({ dial }: Batch) =>
  printer({ unit: dial.unit, toShownCelsius: (celsius) => dial.toShownCelsius(celsius) });
const up = batchOf(hillHall, hall);
const json = (batch: Batch) => planJson(batch, printerOf(batch));
const text = (batch: Batch) => planText(batch, printerOf(batch));
const explained = (batch: Batch) => planExplain(batch, printerOf(batch));

/** Every path of a value down to its leaves: "target.todayCelsius". Lists end a path. */
const paths = (value: unknown, front = ''): readonly string[] =>
  value === null || typeof value !== 'object' || Array.isArray(value)
    ? [front]
    : Object.entries(value).flatMap(([key, inner]) => paths(inner, front === '' ? key : `${front}.${key}`));

const promised = `
version recipe ingredients
batch.totalGrams batch.waterGrams batch.solidsGrams batch.fatGrams
kitchen.pressurePascal kitchen.altitudeMetres kitchen.waterBoilsCelsius kitchen.unit
target.seaLevelCelsius target.todayCelsius target.thermometer target.unit target.feels target.takeOffCelsius target.takeOffThermometer
boil.startsCelsius boil.solidsFractionAtTarget boil.waterToBoilAwayGrams
candy.moistureFraction candy.glassTransitionCelsius candy.firmness candy.grainRisk candy.equilibriumRelativeHumidity
yield.cookedGrams yield.expectedGrams.low yield.expectedGrams.typical yield.expectedGrams.high
yield.pieces.low yield.pieces.typical yield.pieces.high yield.portions.count yield.portions.grams
yield.ropeMetres yield.cutMillimetres yield.wrappingSquares
pot.neededLitres pot.haveLitres pot.fits pot.depthMillimetres
notes`
  .trim()
  .split(/\s+/);

describe('the plan as JSON', () => {
  it('has every promised field, in every kitchen', () => {
    for (const batch of [up, batchOf(hillHall, seaLevel), batchOf(hillHall, hall, { thermometer: false })])
      expect(paths(json(batch))).toEqual(expect.arrayContaining(promised));
  });

  it('survives JSON: no NaN, no infinity, null where nothing is known', () => {
    const there = JSON.parse(JSON.stringify(json(batchOf(hillHall, seaLevel))));
    expect(there).toEqual(json(batchOf(hillHall, seaLevel)));
    expect(there.pot).toMatchObject({
      haveLitres: null,
      fits: null,
      depthMillimetres: null,
      stemCovered: null,
    });
  });

  it('gives the window on the dial in its own unit, corrected', () => {
    const { target } = json(up);
    expect(target.unit).toBe('F');
    // The dial shows a third of a degree Celsius too little at 120 °C: 33 °F in ice, 203 °F where 203.3 is right.
    expect(target.thermometer[0]).toBeCloseTo((target.todayCelsius[0] - 0.34) * 1.8 + 32, 0);
    expect(target.takeOffThermometer).toBeLessThan(target.thermometer[1]);
  });

  it('counts water, solids, fat and the rest once', () => {
    const { batch, ingredients } = json(up);
    const sum = ingredients.reduce((total, { grams }) => total + grams, 0);
    expect(batch.totalGrams + batch.laterGrams).toBeCloseTo(sum, 0);
    expect(batch.waterGrams + batch.solidsGrams + batch.fatGrams).toBeLessThanOrEqual(batch.totalGrams);
  });
});

describe('the plan on paper', () => {
  it('says the numbers a cook needs on this thermometer, in 78 columns', () => {
    const said = text(up);
    expect(said).toContain('500 g  granulated sugar');
    expect(said).toMatch(/Target +243-248 °F · 117-120 °C, hard ball in cold water/);
    expect(said).toMatch(/Take off +at 243 °F/);
    expect(said).toContain('contains milk');
    for (const line of said.split('\n')) expect(line.length).toBeLessThanOrEqual(78);
  });

  it('never invites hands in above their limit', () => {
    expect(text(batchOf(hillHall, { ...hall, hands: 'children' }))).toContain('below 109 °F');
    expect(text(batchOf(hillHall, { ...hall, hands: 'visitors' }))).toContain('below 113 °F');
  });

  it('has a pot that is too small before anything is weighed', () => {
    const small = text(batchOf(hillHall, { ...hall, pot: { litres: 2, diameterMillimetres: null } }));
    expect(small.indexOf('foam over')).toBeGreaterThan(0);
    expect(small.indexOf('foam over')).toBeLessThan(small.indexOf('granulated sugar'));
  });

  it('shows what a file hides: no control character of a name reaches the terminal', () => {
    const nasty = recipeOf({
      ingredients: [
        ['granulated-sugar', '300 g'],
        ['glucose-syrup', '200 g', 'de: 42'],
        ['my-syrup', '100 g', 'name: "red \\e[31m\\u202e", composition: { water: 0.2, sucrose: 0.8 }'],
      ],
      target: 'celsius: [123, 126]',
      more: 'allergens: { contains: ["nuts \\e[2J"] }',
    });
    const named = batchOf({ ...nasty, name: 'a\u001b]0;x\u0007b' }, hall);
    expect(text(named) + explained(named)).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202e]/);
    expect(text(named)).toContain('\\x1b');
  });
});

describe('the plan explained', () => {
  const said = explained(up);
  it('gives formula, inputs, result, source and uncertainty of every number', () => {
    const count = (word: string) => said.split('\n').filter((line) => line.startsWith(`  ${word} `)).length;
    expect(count('formula')).toBeGreaterThanOrEqual(12);
    for (const word of ['with', 'gives', 'source', 'known']) expect(count(word)).toBe(count('formula'));
  });

  it('holds the curve against both rules of thumb', () => {
    const line = said.replaceAll(/\s+/g, ' ');
    expect(line).toContain('lower by 5.4');
    expect(line).toContain('1 °F for every 500 ft, 5.3 K');
    expect(line).toContain('what boiling water reads low, 4.8 K');
    expect(line).toMatch(/Syrup shifts by 1\.1\d times as much as water/);
  });

  it('has no hole in it', () => {
    for (const batch of [up, batchOf(hillHall, seaLevel), batchOf(hillHall, hall, { thermometer: false })])
      expect(text(batch) + explained(batch)).not.toMatch(/NaN|undefined|null|Infinity|\[object/);
    for (const line of said.split('\n')) expect(line.length).toBeLessThanOrEqual(78);
  });
});

describe('a syrup without table sugar', () => {
  const flat = (told: string) => told.replaceAll(/\s+/g, ' ');
  const own = {
    ...hillHall,
    ingredients: hillHall.ingredients.filter(({ composition }) => composition.sucrose < 0.5),
  };

  it('is not said to hold more sugar than its water can', () => {
    expect(flat(explained(up))).toContain('times as much sucrose for its water');
    expect(explained(batchOf(own, hall))).not.toMatch(/NaN|Infinity|undefined|null/);
    expect(flat(explained(batchOf(own, hall)))).not.toContain('times as much sucrose');
  });
});
