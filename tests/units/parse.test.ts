import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { message, words } from '../../source/texts/message.js';
import {
  parseAltitude,
  parseAmount,
  parseDuration,
  parseHumidity,
  parseLength,
  parseMass,
  parsePressure,
  parseVolume,
} from '../../source/units/parse.js';
import { printer } from '../../source/units/printer.js';
import type { Unread } from '../../source/units/problem.js';

const print = printer({ unit: 'C', toShownCelsius: (celsius) => celsius });
const sentence = (result: { kind: string } | Unread): string =>
  'problem' in result ? words(result.problem, print) : `read as ${result.kind}`;

describe('amounts as people write them', () => {
  it.each([
    ['300 g', { kind: 'mass', grams: 300 }],
    ['300g', { kind: 'mass', grams: 300 }],
    ['1.5 kg', { kind: 'mass', grams: 1500 }],
    ['1,5 kg', { kind: 'mass', grams: 1500 }],
    ['0,125 kg', { kind: 'mass', grams: 125 }],
    ['1,200 g', { kind: 'mass', grams: 1200 }],
    ['1 lb', { kind: 'mass', grams: 453.59237 }],
    ['2 oz', { kind: 'mass', grams: 56.69904625 }],
    ['2 Ounces', { kind: 'mass', grams: 56.69904625 }],
    ['150 ml', { kind: 'volume', millilitres: 150 }],
    ['3 l', { kind: 'volume', millilitres: 3000 }],
    ['1 L', { kind: 'volume', millilitres: 1000 }],
    ['8 fl oz', { kind: 'volume', millilitres: 236.5882365 }],
    ['20 drops', { kind: 'count', n: 20, of: 'drop' }],
    ['a pinch', { kind: 'count', n: 1, of: 'pinch' }],
    ['3 pieces', { kind: 'count', n: 3, of: 'piece' }],
  ])('%s', (typed, read) => {
    expect(parseAmount(typed)).toEqual(read);
  });

  it.each([
    ['1 1/4 cup', 1.25 * 236.588],
    ['1¼ cups', 1.25 * 236.588],
    ['½ cup', 118.294],
    ['3/4 tsp', 0.75 * 4.92892],
    ['2 tbsp', 29.5735],
    ['2 Tbsp.', 29.5735],
  ])('US cups and spoons: %s', (typed, millilitres) => {
    const read = parseAmount(typed);
    expect(read.kind === 'volume' ? read.millilitres : read).toBeCloseTo(millilitres, 2);
  });

  it.each([
    ['1 cup', 250],
    ['2 tbsp', 30],
    ['1/2 tsp', 2.5],
  ])('metric cups and spoons: %s', (typed, millilitres) => {
    expect(parseAmount(typed, 'metric')).toEqual({ kind: 'volume', millilitres });
  });

  it.each([
    ['', 'Type a number and a unit'],
    ['some sugar', 'Type a number and a unit'],
    ['300', '"300" has no unit'],
    ['3 handfuls', '"handfuls" is no unit of mass, volume or count'],
    ['0 g', 'must be more than nothing'],
    ['-5 g', 'must be more than nothing'],
    ['1/0 cup', 'Type a number and a unit'],
    ['1,500 kg', 'can be read two ways. Type 1500 kg or 1.5 kg.'],
    ['NaN g', 'Type a number'],
    ['Infinity g', 'Type a number'],
    ['1e3 g', 'is no unit'],
    [`${'9'.repeat(500)} g`, 'Type a number'],
  ])('%j is refused with a sentence', (typed, part) => {
    expect(sentence(parseAmount(typed))).toContain(part);
  });

  it('what was typed cannot reach the terminal raw', () => {
    expect(sentence(parseAmount('3 \u001b[2Jcups'))).not.toContain('\u001b');
    expect(sentence(parseAmount('\u001b]0;x\u0007'))).not.toMatch(/[\u001b\u0007]/);
  });

  it('every text gives an answer, never an exception, and no amount is less than something', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.string({ unit: 'binary' })), (typed) => {
        const read = parseAmount(typed);
        if (read.kind === 'mass') expect(read.grams).toBeGreaterThan(0);
        for (const parse of [
          parseMass,
          parseVolume,
          parseLength,
          parseAltitude,
          parsePressure,
          parseHumidity,
          parseDuration,
        ])
          expect(parse(typed)).toHaveProperty('kind');
      }),
    );
  });

  it('printed grams are read back within what print rounds', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 50_000, noNaN: true }), (grams) => {
        const read = parseMass(print.grams(grams));
        const back = read.kind === 'mass' ? read.grams : Number.NaN;
        expect(Math.abs(back / grams - 1)).toBeLessThan(0.06);
      }),
    );
  });
});

describe('places, lengths, times', () => {
  it.each([
    ['1450m', 1450],
    ['1450 m', 1450],
    ['1,450 m', 1450],
    ['1.450 m', 1450],
    ['4.750 ft', 1447.8],
    ['1.450 km', 1450],
    ['450.5 m', 450.5],
    ['4750ft', 1447.8],
    ['4,750 feet', 1447.8],
    ['-430 m', -430],
    ['0 m', 0],
    ['1.45 km', 1450],
  ])('altitude %s', (typed, metres) => {
    const read = parseAltitude(typed);
    expect(read.kind === 'altitude' ? read.metres : read).toBeCloseTo(metres, 6);
  });
  it.each([
    ['850hPa', 85_000],
    ['1,013 hPa', 101_300],
    ['85 kPa', 85_000],
    ['29.9 inHg', 101_253],
    ['760 mmHg', 101_325],
    ['1013 mbar', 101_300],
    ['101325 Pa', 101_325],
  ])('pressure %s', (typed, pascal) => {
    const read = parsePressure(typed);
    expect(read.kind === 'pressure' ? Math.abs(read.pascal - pascal) : read).toBeLessThan(1);
  });
  it.each([
    ['50 mm', 50],
    ['20 cm', 200],
    ['2 in', 50.8],
    ['1/2 inch', 12.7],
    ['8"', 203.2],
  ])('length %s', (typed, millimetres) => {
    const read = parseLength(typed);
    expect(read.kind === 'length' ? read.millimetres : read).toBeCloseTo(millimetres, 6);
  });
  it.each([
    ['45 %', 0.45],
    ['45%', 0.45],
    ['45', 0.45],
    ['60 % RH', 0.6],
    ['0 %', 0],
  ])('humidity %s', (typed, fraction) => {
    expect(parseHumidity(typed)).toEqual({ kind: 'humidity', fraction });
  });
  it.each(['0.45', '120 %', '-3 %'])('humidity %s is asked again', (typed) => {
    expect(sentence(parseHumidity(typed))).toContain('0 % to 100 %');
  });
  it.each([
    ['40 s', 40],
    ['4 min', 240],
    ['1 h 10 min', 4200],
    ['1 min 30 s', 90],
    ['1.5 h', 5400],
  ])('duration %s', (typed, seconds) => {
    expect(parseDuration(typed)).toEqual({ kind: 'duration', seconds });
  });
  it('a duration of several parts names the part that is no time', () => {
    expect(sentence(parseDuration('1 h 10 parsecs'))).toContain('"parsecs" is no unit of time');
  });
  it('a mass where an altitude belongs is named', () => {
    expect(sentence(parseAltitude('1450 g'))).toBe(
      '"1450 g": "g" is no unit of altitude. Use one of m, ft and km, for example 1450 m or 4750 ft.',
    );
  });
  it('a problem fits a message of the texts', () => {
    const read = parseMass('7');
    expect('problem' in read && words(message('units.no-unit', read.problem.values), print)).toBe(
      '"7" has no unit. Add one of g, kg, mg, oz and lb, for example 300 g.',
    );
  });
});
