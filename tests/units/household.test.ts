import { describe, expect, it } from 'vitest';
import { householdAmount, householdVolume, ounces, quarts } from '../../source/units/household.js';
import { printer } from '../../source/units/printer.js';
import { parseWallTime, wallDate, wallTime } from '../../source/units/wall-clock.js';

describe('by ounces, cups and spoons, as people measure', () => {
  it.each([
    [500, '17 3/4 oz'],
    [28.35, '1 oz'],
    [907, '2 lb'],
    [1000, '2 lb 3 1/4 oz'],
    [3000, '6 lb 10 oz'],
    [3, '0.1 oz'],
  ])('%d g weigh %s', (grams, said) => expect(ounces(grams)).toBe(said));

  it.each([
    [591, '2 1/2 cups'],
    [237, '1 cup'],
    [79, '1/3 cup'],
    [59, '1/4 cup'],
    [30, '2 tbsp'],
    [22, '1 1/2 tbsp'],
    [5, '1 tsp'],
    [2.5, '1/2 tsp'],
    [1.2, '1/4 tsp'],
    [0.6, '1/8 tsp'],
    [0.2, 'a pinch'],
  ])('%d ml are %s', (millilitres, said) => expect(householdVolume(millilitres)).toBe(said));

  it('never rounds a weight by more than an eighth of an ounce up to five pounds, nor a volume by more than a fifth', () => {
    const size: Readonly<Record<string, number>> = { cup: 236.588, cups: 236.588, tbsp: 14.787, tsp: 4.929 };
    const measured = (words: string): number => {
      const parts = words.split(' ');
      const unit = size[parts.at(-1) ?? ''] ?? Number.NaN;
      const number = parts.slice(0, -1).reduce((sum, part) => {
        const [over = '0', under = '1'] = part.split('/');
        return sum + Number(over) / Number(under);
      }, 0);
      return number * unit;
    };
    for (let millilitres = 1.3; millilitres < 3000; millilitres *= 1.01)
      expect(
        Math.abs(measured(householdVolume(millilitres)) / millilitres - 1),
        `${millilitres}`,
      ).toBeLessThan(0.2);
    for (let grams = 6; grams < 2260; grams *= 1.01) {
      const said = ounces(grams);
      const [, pounds = '0', rest = '0'] = /^(?:(\d+) lb ?)?(?:(.*) oz)?$/.exec(said) ?? [];
      const all = Number(pounds) * 16 + measured(`${rest} cup`) / 236.588;
      expect(Math.abs(all - grams / 28.349523125), said).toBeLessThanOrEqual(0.126);
    }
  });

  it('small amounts are measured by spoon, larger ones weighed or measured, drops stay drops', () => {
    expect(householdAmount({ grams: 3, millilitres: 2.5 })).toBe('1/2 tsp');
    expect(householdAmount({ grams: 500, millilitres: 590 })).toBe('17 3/4 oz or 2 1/2 cups');
    expect(householdAmount({ grams: 500, millilitres: null })).toBe('17 3/4 oz');
    expect(householdAmount({ grams: 0.6, millilitres: 0.7, written: '20 drops' })).toBe('20 drops');
    expect(householdAmount({ grams: 0.6, millilitres: 0.7, written: '20 drops' }, 'de')).toBe('20 Tropfen');
    expect(householdAmount({ grams: 16, millilitres: 30 }, 'de')).toBe('2 EL');
    expect(quarts(3.2)).toBe('3 1/2 quarts');
  });

  it.each([
    ['1 drop', '1 Tropfen'],
    ['a drop', '1 Tropfen'],
    ['3 drops', '3 Tropfen'],
    ['a pinch', 'eine Prise'],
    ['2 pinches', '2 Prisen'],
  ])('what a recipe counts as %s is %s in German', (written, said) => {
    expect(householdAmount({ grams: 0.5, millilitres: null, written }, 'de')).toBe(said);
  });

  it('only somebody who weighs in ounces reads ounces, and a gram or two stay grams', () => {
    const right = (celsius: number): number => celsius;
    const metric = printer({ unit: 'C', toShownCelsius: right });
    const customary = printer({ unit: 'F', weights: 'ounces', toShownCelsius: right });
    expect(metric.grams(710)).toBe('710 g');
    expect(customary.grams(710)).toBe('25 oz');
    expect(customary.grams(7)).toBe('7 g');
    expect(customary.exactGrams(710)).toBe('710 g');
  });
});

describe('both scales in one sentence', () => {
  const dial = printer({ unit: 'F', toShownCelsius: (celsius) => celsius + 1 });
  it('the other one behind, also of a window and of a limit; a difference stands alone', () => {
    const both = dial.inBoth();
    expect(both.dial(121.2)).toBe('252 °F · 122 °C');
    expect(both.dialSpan(120, 123)).toBe('250-255 °F · 121-124 °C');
    expect(both.degrees(45)).toBe('113 °F · 45 °C');
    expect(both.rise(3)).toBe('5 °F');
    expect(both.dialNumber(121.2)).toBe('252');
  });
  it('another scale first never changes how a bare number is read', () => {
    const celsius = dial.inScale('C');
    expect(celsius.unit).toBe('C');
    expect(celsius.thermometerUnit).toBe('F');
    expect(celsius.inBoth().dial(121.2)).toBe('122 °C · 252 °F');
    expect(celsius.inScale('F').dial(121.2)).toBe('252 °F');
    expect(celsius.inLanguage('de').inBoth().dial(121.2)).toBe('122 °C · 252 °F');
  });
});

describe('times of day', () => {
  it.each([
    ...['2026-02-30 15:00', '24:00', '15:60', '0 pm', '13 pm', '15', '', ' ', 'at', 'tomorrow', "3 o'clock"],
    ...[
      '11/28 15:00',
      '29.2. 15:00',
      '31.11. 15:00',
      '15:30 30',
      '3 pm 30',
      '15 Uhr 3',
      '25 Uhr',
      '15 Uhr 60',
    ],
    ...[
      'someday 15:00',
      'constructor 15:00',
      'next Monday 15:00',
      'heute morgen 15:00',
      '15:00 tomorrow 15:00',
    ],
  ])('%j is none', (typed) => {
    expect(parseWallTime(typed)).toBeNull();
  });
  it.each([
    ['15 Uhr', '15:00', 'today'],
    ['15 Uhr 30', '15:30', 'today'],
    ['15.30 Uhr', '15:30', 'today'],
    ['um 15h', '15:00', 'today'],
    ['15h30', '15:30', 'today'],
    ['3 p.m.', '15:00', 'today'],
    ['at 12 am', '00:00', 'today'],
    ['noon', '12:00', 'today'],
    ['mittags', '12:00', 'today'],
    ['tonight 8pm', '20:00', 'today'],
    ['tomorrow at 3 pm', '15:00', 'tomorrow'],
    ['Tomorrow, 15:00', '15:00', 'tomorrow'],
    ['morgen um 15 Uhr', '15:00', 'tomorrow'],
    ['on Saturday at 3 pm', '15:00', { weekday: 6 }],
    ['am Samstag um 15 Uhr', '15:00', { weekday: 6 }],
    ['Sa. 15.00', '15:00', { weekday: 6 }],
    ['sun noon', '12:00', { weekday: 0 }],
    ['28.11. 15:00', '15:00', { year: null, month: 11, date: 28 }],
    ['28.11.2026 15.30', '15:30', { year: 2026, month: 11, date: 28 }],
    ['am 28. 11. um 15 Uhr', '15:00', { year: null, month: 11, date: 28 }],
    ['2026-11-28T15:00', '15:00', { year: 2026, month: 11, date: 28 }],
  ])('%j is %s, %j', (typed, time, day) => {
    const read = parseWallTime(typed);
    expect(read === null ? null : wallTime(read.hours * 3600 + read.minutes * 60)).toBe(time);
    expect(read?.day).toEqual(day);
  });
  it('with 12 or 24 hours', () => {
    expect(wallTime(0, true)).toBe('12:00 am');
    expect(wallTime(54_300)).toBe('15:05');
    expect(wallTime(54_300, true)).toBe('3:05 pm');
    const here = new Date(2026, 10, 28, 15, 5).toISOString();
    expect(wallDate(here)).toBe('2026-11-28 15:05');
    expect(wallDate(here, true)).toBe('2026-11-28 3:05 pm');
    expect(wallDate('yesterday')).toBeNull();
  });
});
