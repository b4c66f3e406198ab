import { describe, expect, it } from 'vitest';
import { equilibriumHumidity, waterActivity } from '../../source/sugar/activity.js';
import { solutionKilogramPerLitre } from '../../source/sugar/density.js';
import { firmnessAt, glassTransitionCelsius, pullingCelsius } from '../../source/sugar/glass.js';
import { solutionJoulePerGramKelvin } from '../../source/sugar/heat.js';
import { inversionPerMinute } from '../../source/sugar/inversion.js';
import { handLimitCelsius, secondsToBurn } from '../../source/sugar/skin.js';
import { sucroseSolubility } from '../../source/sugar/solubility.js';
import type { Syrup } from '../../source/sugar/syrup.js';
import { check } from './check.js';
import { celsiusOf, onlyWater, pulledCandy, sucrose } from './syrups.js';

describe('density of sucrose solutions at 20 °C', () => {
  check(
    (percent) => `${percent} %, kg/l`,
    (
      [
        [10, 1.0381],
        [20, 1.081],
        [30, 1.127],
        [40, 1.1765],
        [50, 1.2295],
        [60, 1.2864],
        [70, 1.3472],
        [80, 1.4117],
        [84, 1.4383],
      ] as const
    ).map(([at, value]) => ({
      at,
      value,
      tolerance: 0.001,
      source: 'CRC Handbook of Chemistry and Physics',
    })),
    (percent) => solutionKilogramPerLitre(percent / 100, 20),
  );
  check(
    (percent) => `${percent} %, kg/l`,
    (
      [
        [20, 1.08297],
        [40, 1.17874],
        [60, 1.28909],
        [70, 1.34997],
        [80, 1.41471],
        [90, 1.48317],
        [95, 1.51876],
      ] as const
    ).map(([at, gravity]) => ({
      at,
      value: gravity * 0.99717,
      tolerance: 0.0018,
      source: 'NBS Circular C440, Table 114, apparent specific gravity in air (0.1 % below the true one)',
    })),
    (percent) => solutionKilogramPerLitre(percent / 100, 20),
  );
  check(
    ([celsius]) => `saturated solution at ${celsius} °C, kg/l`,
    [
      { at: [20, 0.6709], value: 1.3327, tolerance: 0.006, source: 'Mohos 2010, Table A2.2' },
      { at: [100, 0.8297], value: 1.4359, tolerance: 0.06, source: 'Mohos 2010, Table A2.2' },
    ],
    ([celsius, solids]) => solutionKilogramPerLitre(solids as number, celsius as number),
  );
});

describe('specific heat of syrup', () => {
  check(
    ([solids, celsius]) => `${solids} at ${celsius} °C, J/(g K)`,
    (
      [
        [[0.5, 20], 3.004],
        [[0.65, 20], 2.649],
        [[0.8, 100], 2.775],
        [[0.9, 120], 2.734],
      ] as const
    ).map(([at, value]) => ({ at, value, tolerance: 0.002, source: 'Llano 2005, worked out apart' })),
    ([solids, celsius]) => solutionJoulePerGramKelvin(solids, celsius),
  );
});

describe('solubility of sucrose', () => {
  check(
    (celsius) => `saturated at ${celsius} °C, fraction`,
    [
      { at: 20, value: 0.6674, tolerance: 0.005, source: 'k-mashzavod, Svoystva saharozy' },
      { at: 20, value: 0.666, tolerance: 0.006, source: 'Vavrinecz polynomial (from memory)' },
      { at: 65, value: 0.7562, tolerance: 0.006, source: 'Vavrinecz polynomial (from memory)' },
      { at: 100, value: 0.832, tolerance: 0.006, source: 'Vavrinecz polynomial (from memory)' },
    ],
    sucroseSolubility,
  );
});

describe('glass transition', () => {
  check(
    (water) => `sucrose with ${water} % water, Celsius`,
    [
      { at: 0, value: 62, tolerance: 0.1, source: 'Mouritsen & Styrbaek, Mouthfeel' },
      { at: 0, value: 60, tolerance: 6, source: 'Int. J. Food Prop., doi 10.1080/10942910500269824' },
      { at: 0, value: 52, tolerance: 10, source: 'Berk 2008, Table 1.4, from Belitz 2004' },
    ],
    (water) => glassTransitionCelsius(sucrose(water)),
  );
  it('hard candy of 2 to 4 % water lies in the 28 to 49 °C of commercial ones, give or take 6 K (Kawai et al. 2019)', () => {
    for (const water of [2, 3, 4])
      for (const syrup of [sucrose(water), pulledCandy(water)]) {
        expect(glassTransitionCelsius(syrup)).toBeGreaterThan(28 - 6);
        expect(glassTransitionCelsius(syrup)).toBeLessThan(49 + 6.2);
      }
  });
  it('pulled candy of 8 to 10 % water is chewy at 21 °C, hard candy of 3 % is glassy', () => {
    for (const water of [8, 9, 10])
      expect(firmnessAt(21, glassTransitionCelsius(pulledCandy(water)))).toBe('chewy');
    expect(firmnessAt(21, glassTransitionCelsius(pulledCandy(3)))).toBe('glassy');
  });
  it('pulling of candy with 8 to 10 % water happens around 50 °C ("folded many times above 50 °C")', () => {
    for (const water of [8, 9, 10]) {
      const [stiff, droops] = pullingCelsius(glassTransitionCelsius(pulledCandy(water)));
      expect(stiff).toBeLessThan(50);
      expect(droops).toBeGreaterThan(50);
    }
  });
});

const holding = 'Sloan & Labuza 1975, water holding at 25 °C';
const cornSyrup = (water: number): Syrup => ({
  ...onlyWater,
  glucoseSolids: [{ grams: 100, de: 42 }],
  waterGrams: water,
});
const amorphousSucrose = (water: number): Syrup => ({ ...onlyWater, sucroseGrams: 100, waterGrams: water });
const fructose = (water: number): Syrup => ({ ...onlyWater, invertGrams: 100, waterGrams: water });

describe('water activity at 25 °C', () => {
  const activity = (syrup: Syrup): number => waterActivity(syrup, 25).starzakPeacock;
  check(
    (water) => `42 DE solids with ${water} g water to 100 g`,
    (
      [
        [14, 0.6],
        [20, 0.7],
        [30, 0.8],
        [54, 0.9],
      ] as const
    ).map(([at, value]) => ({ at, value, tolerance: 0.03, source: holding })),
    (water) => activity(cornSyrup(water)),
  );
  check(
    (water) => `sucrose with ${water} g water to 100 g`,
    [
      {
        at: 14,
        value: 0.6,
        tolerance: 0.08,
        source: holding,
        disagrees: 'this form is too low in dry sucrose (0.50)',
      },
      { at: 20, value: 0.7, tolerance: 0.08, source: holding },
      { at: 35, value: 0.8, tolerance: 0.08, source: holding },
      { at: 65, value: 0.9, tolerance: 0.03, source: holding },
    ],
    (water) => activity(amorphousSucrose(water)),
  );
  check(
    (water) => `fructose with ${water} g water to 100 g`,
    [
      {
        at: 18,
        value: 0.6,
        tolerance: 0.08,
        source: holding,
        disagrees: 'this form is too low in dry fructose (0.50)',
      },
      { at: 30, value: 0.7, tolerance: 0.08, source: holding },
      { at: 44, value: 0.8, tolerance: 0.08, source: holding },
      { at: 80, value: 0.9, tolerance: 0.08, source: holding },
    ],
    (water) => activity(fructose(water)),
  );

  it.each([
    [14, 0.6],
    [20, 0.7],
    [35, 0.8],
    [65, 0.9],
  ])(
    `the printed humidity band of sucrose with %i g water to 100 g holds %f (${holding})`,
    (water, published) => {
      const [low, high] = equilibriumHumidity(amorphousSucrose(water), 25);
      expect(low).toBeLessThanOrEqual(published);
      expect(high).toBeGreaterThanOrEqual(published);
    },
  );

  const products = 'Ergun, Lietha & Hartel 2010, Crit. Rev. Food Sci. Nutr. 50:162, Table 1 (from memory)';
  it.each([
    ['hard candy', 2, 5, 0.25, 0.4],
    ['chewy candy', 6, 10, 0.45, 0.6],
  ])(
    `%s: the band of our ERH for %i-%i %% water meets %f-%f (${products})`,
    (_name, wetFrom, wetTo, low, high) => {
      expect(equilibriumHumidity(pulledCandy(wetFrom), 25)[0]).toBeLessThan(high);
      expect(equilibriumHumidity(pulledCandy(wetTo), 25)[1]).toBeGreaterThan(low);
      const middle = equilibriumHumidity(pulledCandy((wetFrom + wetTo) / 2), 25);
      expect(middle[1]).toBeGreaterThan(low);
      expect(middle[0]).toBeLessThan(high);
    },
  );
});

describe('inversion', () => {
  check(
    (ph) => `per cent a minute at 120 °C, 90 % solids, pH ${ph}`,
    (
      [
        [3, 4.3],
        [4, 0.43],
        [5, 0.043],
      ] as const
    ).map(([at, value]) => ({
      at,
      value,
      tolerance: 0.03 * value,
      source: 'Vukov 1965 worked out apart in g/cm3',
    })),
    (ph) => 100 * inversionPerMinute(120, ph, 0.9),
  );
  it('has the activation energy of 108 kJ/mol that others measured', () => {
    const [cool, hot] = [inversionPerMinute(90, 4, 0.7), inversionPerMinute(91, 4, 0.7)];
    const kilojoule = (0.008314462618 * Math.log(hot / cool)) / (1 / 363.15 - 1 / 364.15);
    expect(Math.abs(kilojoule - 108)).toBeLessThan(1.5);
  });
});

describe('contact with skin', () => {
  const scald = "Children's of Alabama, scald times; lists differ twofold";
  it.each([
    [125, 90, 120],
    [130, 30, 30],
    [135, 10, 10],
    [140, 5, 5],
  ])(`water of %i °F burns within a factor of two of %i-%i s (${scald})`, (fahrenheit, low, high) => {
    const seconds = secondsToBurn(celsiusOf(fahrenheit)) ?? Number.NaN;
    expect(seconds).toBeGreaterThan(low / 2);
    expect(seconds).toBeLessThan(high * 2);
  });
  it('at every limit for hands there are at least 15 s to let go; for visitors and children far more than a pull', () => {
    expect(secondsToBurn(handLimitCelsius('gloved'))).toBeGreaterThanOrEqual(15);
    expect(secondsToBurn(handLimitCelsius('bare'))).toBeGreaterThanOrEqual(180);
    expect(secondsToBurn(handLimitCelsius('visitors'))).toBeGreaterThanOrEqual(3600);
    expect(secondsToBurn(handLimitCelsius('children'))).toBeNull();
  });
});
