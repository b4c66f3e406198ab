import { describe, expect, it } from 'vitest';
import { pressureAtAltitude } from '../../source/sugar/atmosphere.js';
import { publishedStages, stageAt } from '../../source/sugar/stages.js';
import { boilingCurve } from '../../source/sugar/syrup.js';
import { check } from './check.js';
import { celsiusOf, onlyWater, pulledCandy, pulledCandyCurve, type Row, sucroseCurve } from './syrups.js';

/**
 * How far published boiling points of sucrose lie from each other at the same solids: about 1.2 K up to 75 %, 2 to 3 K
 * at 80 %, 4 K (3 either way) to 95 %, more above. A row must be met within that.
 */
const spread = (percent: number): number => {
  if (percent < 60) return 1;
  if (percent <= 75) return 1.5;
  return percent <= 95 ? 3 : 5;
};

const rows = (
  source: string,
  points: ReadonlyArray<readonly [percent: number, celsius: number, disagrees?: string]>,
): ReadonlyArray<Row<number>> =>
  points.map(([at, value, disagrees]) => ({
    at,
    value,
    tolerance: spread(at),
    source,
    ...(disagrees === undefined ? {} : { disagrees }),
  }));

const boils = (percent: number): string => `sucrose ${percent} % boils at, Celsius`;
const ours = (percent: number): number => sucroseCurve.celsiusAt(percent / 100);
const above = (points: ReadonlyArray<readonly [number, number, string?]>) =>
  points.map(([percent, elevation, disagrees]) => [percent, 99.974 + elevation, disagrees] as const);

describe('boiling points of sucrose syrup at sea level', () => {
  check(
    boils,
    rows('table of an unnamed text in the GNU units data file, sugar section', [
      [30, 100],
      [40, 101],
      [50, 102],
      [60, 103],
      [70, 106],
      [80, 112],
      [90, 123],
      [95, 140],
      [97, 151],
      [98.2, 160],
    ]),
    ours,
  );
  check(
    boils,
    rows("Russian confectioner's table of sugar syrup, open vessel", [
      [10, 100.1],
      [20, 100.3],
      [30, 100.6],
      [40, 101.1],
      [50, 101.9],
      [60, 103.1],
      [70, 105.3],
    ]),
    ours,
  );
  check(
    boils,
    rows(
      'Browne 1912, by way of a spline',
      above([
        [50, 2.0],
        [60, 3.0],
        [64, 4.0],
        [68, 5.6],
        [70, 6.5, 'this old table rises faster than every other from 70 to 74 %'],
        [72, 7.4, 'this old table rises faster than every other from 70 to 74 %'],
        [74, 8.4, 'this old table rises faster than every other from 70 to 74 %'],
        [76, 9.4],
        [78, 10.6],
        [80, 12.0],
        [82, 13.9],
      ]),
    ),
    ours,
  );
  check(
    boils,
    rows('other cited points', [
      [65, 103.9],
      [65.46, 103.9],
      [79, 112, 'Browne 1912 (from memory): 3 K above the other tables'],
      [85, 113],
      [90, 120],
      [90.8, 130, 'Browne 1912: about 6 K above every other source'],
      [98, 154],
    ]),
    ours,
  );
});

describe('the same activity formula worked out by others', () => {
  check(
    boils,
    above([
      [60, 2.94],
      [65, 3.7944],
      [70, 4.9905],
      [75, 6.7417],
      [80, 9.4578],
      [85, 13.9982],
      [90, 22.3564],
      [92, 27.6903],
      [95, 39.1636],
      [97, 49.135],
      [98, 53.9681],
    ]).map(([at, value]) => ({
      at,
      value,
      tolerance: at <= 92 ? 0.15 : 0.6,
      source: 'closed form of Starzak & Peacock after Saska 2002, in the GNU units data file',
    })),
    ours,
  );
});

describe('mixed syrups and other sugars', () => {
  it('hard candy of sucrose and 42 DE syrup boiled to 146-152 °C keeps 1 to 4 % water (Hartel 2012, 1-3 %; others 3-4 %)', () => {
    expect(1 - pulledCandyCurve.solidsAt(152)).toBeGreaterThan(0.01);
    expect(1 - pulledCandyCurve.solidsAt(146)).toBeLessThan(0.04);
  });
  check(
    () => 'high-fructose syrup of 77 % boils at, Celsius',
    [{ at: 0.77, value: 110, tolerance: 2, source: 'trade value, one source' }],
    (solids) => boilingCurve({ ...onlyWater, invertGrams: 77 }, 101_325).celsiusAt(solids),
  );
});

describe('solids at the candy stages', () => {
  const label = {
    thread: 80,
    'soft ball': 85,
    'firm ball': 87,
    'hard ball': 92,
    'soft crack': 95,
    'hard crack': 99,
  };
  for (const { stage, fahrenheit } of publishedStages)
    it(`${stage}: about ${label[stage]} % within 1.5 (stage tables; a label for the whole range, not a measurement)`, () => {
      const [low, high] = fahrenheit.map((value) => 100 * sucroseCurve.solidsAt(celsiusOf(value))) as [
        number,
        number,
      ];
      expect(label[stage]).toBeGreaterThan(low - 1.5);
      expect(label[stage]).toBeLessThan(high + 1.5);
    });
  it.each([
    ['soft ball', 113, 116],
    ['firm ball', 118, 121],
    ['hard ball', 121, 130],
    ['soft crack', 132, 143],
    ['hard crack', 149, 154],
  ] as const)('the middle of %s is called so (McGee 2004, %i-%i °C)', (stage, low, high) => {
    expect(stageAt((low + high) / 2)).toBe(stage);
  });
});

describe('candy at altitude', () => {
  const drop = (seaLevelCelsius: number, feet: number): number =>
    1.8 *
    (seaLevelCelsius -
      boilingCurve(pulledCandy(), pressureAtAltitude(feet * 0.3048)).fromSeaLevel(seaLevelCelsius));
  check(
    ([celsius, feet]) => `${celsius} °C syrup at ${feet} ft boils lower by, °F`,
    (
      [
        [116, 1000],
        [121, 1000],
        [127, 1000],
        [121, 5000],
      ] as const
    ).map((at) => ({
      at,
      value: (2 * at[1]) / 1000,
      tolerance: (0.25 * at[1]) / 1000,
      source: 'Colorado State University Extension and McGee 2004: 2 °F for 1000 ft',
    })),
    ([celsius, feet]) => drop(celsius, feet),
  );
});
