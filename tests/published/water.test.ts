import psychrolib from 'psychrolib';
import { beforeAll, describe, expect, it } from 'vitest';
import { altitudeAtPressure, pressureAtAltitude } from '../../source/sugar/atmosphere.js';
import { waterKilogramPerCubicMetre } from '../../source/sugar/density.js';
import {
  latentJoulePerGram,
  saturatedWaterKilogramPerCubicMetre,
  saturationCelsius,
  saturationPascal,
} from '../../source/sugar/water.js';
import { check } from './check.js';
import { celsiusOf, type Row } from './syrups.js';

const if97 = 'IAPWS R7-97(2012)';

describe('saturation line of water', () => {
  check(
    (kelvin) => `vapour pressure at ${kelvin} K, Pa`,
    [
      { at: 300, value: 0.353658941e4, tolerance: 5e-6, source: `${if97}, Table 35` },
      { at: 500, value: 0.263889776e7, tolerance: 5e-3, source: `${if97}, Table 35` },
      { at: 600, value: 0.123443146e8, tolerance: 5e-2, source: `${if97}, Table 35` },
    ],
    (kelvin) => saturationPascal(kelvin - 273.15),
  );
  check(
    (pascal) => `boiling point under ${pascal} Pa, K`,
    [
      { at: 0.1e6, value: 0.372755919e3, tolerance: 5e-7, source: `${if97}, Table 36` },
      { at: 1e6, value: 0.453035632e3, tolerance: 5e-7, source: `${if97}, Table 36` },
      { at: 10e6, value: 0.584149488e3, tolerance: 5e-7, source: `${if97}, Table 36` },
      { at: 101_325, value: 373.1243, tolerance: 1e-4, source: 'IAPWS-95 by the iapws package for Python' },
    ],
    (pascal) => saturationCelsius(pascal) + 273.15,
  );
  check(
    (celsius) => `vapour pressure at ${celsius} °C, Pa`,
    [
      { at: 110, value: 143_376, tolerance: 40, source: 'IAPWS-95 by the iapws package for Python' },
      { at: 120, value: 198_665, tolerance: 60, source: 'IAPWS-95 by the iapws package for Python' },
      { at: 130, value: 270_260, tolerance: 80, source: 'IAPWS-95 by the iapws package for Python' },
      { at: 140, value: 361_501, tolerance: 110, source: 'IAPWS-95 by the iapws package for Python' },
      { at: 150, value: 476_101, tolerance: 140, source: 'IAPWS-95 by the iapws package for Python' },
    ],
    saturationPascal,
  );
});

const latent: ReadonlyArray<Row<number>> = (
  [
    [100, 2256.4],
    [110, 2229.6],
    [120, 2202.1],
    [130, 2173.7],
    [140, 2144.3],
    [150, 2113.7],
  ] as const
).map(([at, value]) => ({
  at,
  value,
  tolerance: 0.003 * value,
  source: 'IAPWS-95 by the iapws package for Python; 0.3 %',
}));

describe('heat of evaporation and density of water', () => {
  check((celsius) => `latent heat at ${celsius} °C, J/g`, latent, latentJoulePerGram);
  check(
    (celsius) => `density at ${celsius} °C, kg/m3`,
    [
      { at: 20, value: 998.2, tolerance: 0.1, source: 'Kell 1975, J. Chem. Eng. Data 20:97' },
      { at: 100, value: 958.36, tolerance: 0.1, source: 'Kell 1975' },
    ],
    waterKilogramPerCubicMetre,
  );
  it('two independent formulas for the density of water agree within 0.1 % from 20 to 150 °C', () => {
    for (const celsius of [20, 60, 100, 125, 150])
      expect(
        Math.abs(waterKilogramPerCubicMetre(celsius) / saturatedWaterKilogramPerCubicMetre(celsius) - 1),
      ).toBeLessThan(0.001);
  });
});

const geometric = 'ISO 2533:1975 by geometric height, as in the GNU units data file';

describe('standard atmosphere', () => {
  check(
    (metres) => `pressure at ${metres} m, Pa`,
    (
      [
        [0, 101_325],
        [500, 95_461.3],
        [1000, 89_876.3],
        [1500, 84_559.7],
        [1609.344, 83_431.8],
        [2000, 79_501.4],
        [2500, 74_691.7],
        [3000, 70_121.1],
        [3500, 65_780.4],
        [4000, 61_660.4],
        [4500, 57_752.5],
        [5000, 54_048.3],
      ] as const
    ).map(([at, value]) => ({ at, value, tolerance: 0.1, source: geometric })),
    pressureAtAltitude,
  );
  it('altitude and pressure are each other backwards, also below the sea', () => {
    for (const metres of [-430, 0, 12, 1450, 5000])
      expect(altitudeAtPressure(pressureAtAltitude(metres))).toBeCloseTo(metres, 6);
  });
});

describe('psychrolib, an independent implementation of the ASHRAE equations, run beside ours', () => {
  beforeAll(() => psychrolib.SetUnitSystem(psychrolib.SI));

  it.each([-500, 0, 1000, 1450, 2000, 3000, 5000])('pressure at %i m within 0.06 %%', (metres) => {
    const theirs = psychrolib.GetStandardAtmPressure(metres);
    expect(Math.abs(pressureAtAltitude(metres) / theirs - 1)).toBeLessThan(0.0006);
  });
  it.each([20, 60, 90, 100, 120, 150])('vapour pressure at %i °C within 0.1 %%', (celsius) => {
    expect(Math.abs(saturationPascal(celsius) / psychrolib.GetSatVapPres(celsius) - 1)).toBeLessThan(0.001);
  });
  it.each([0, 1000, 2000, 3000])('water boils at %i m within 0.1 K', (metres) => {
    const here = psychrolib.GetStandardAtmPressure(metres);
    let [low, high] = [50, 120];
    for (let step = 0; step < 60; step++) {
      const middle = (low + high) / 2;
      if (psychrolib.GetSatVapPres(middle) < here) low = middle;
      else high = middle;
    }
    expect(Math.abs(saturationCelsius(pressureAtAltitude(metres)) - low)).toBeLessThan(0.1);
  });
});

describe('rules of thumb for altitude', () => {
  const waterBoils = (feet: number): number => saturationCelsius(pressureAtAltitude(feet * 0.3048));
  check(
    (feet) => `water boils at ${feet} ft, Celsius`,
    [
      { at: 0, value: 100, tolerance: 0.03, source: 'definition of the normal boiling point, before 1990' },
      {
        at: 5000,
        value: celsiusOf(202),
        tolerance: 0.6,
        source: 'Colorado State University Extension: 1 °F for 500 ft, a rule of whole degrees',
      },
    ],
    waterBoils,
  );
});
