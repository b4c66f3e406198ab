import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { equilibriumHumidity } from '../../source/sugar/activity.js';
import { syrupLitres } from '../../source/sugar/density.js';
import {
  firmnessAt,
  firmnesses,
  glassTransitionCelsius,
  pullingCelsius,
  viscosityPascalSecond,
} from '../../source/sugar/glass.js';
import { invertedFraction } from '../../source/sugar/inversion.js';
import { handLimitCelsius, secondsToBurn } from '../../source/sugar/skin.js';
import {
  doctorNeeded,
  doctorRatio,
  grainRisk,
  sucroseSolubility,
  supersaturation,
} from '../../source/sugar/solubility.js';
import {
  coldWaterOutcomes,
  stageAt,
  stageDistance,
  stageFromSeaLevelCelsius,
  stages,
} from '../../source/sugar/stages.js';
import { onlyWater, pulledCandy, sucrose } from '../published/syrups.js';

describe('stages', () => {
  it('follow each other without gap, by rising temperature', () => {
    const bounds = stages.map((stage) => stageFromSeaLevelCelsius[stage]);
    expect(bounds).toEqual([...bounds].sort((a, b) => a - b));
    for (const stage of stages.slice(1)) {
      expect(stageAt(stageFromSeaLevelCelsius[stage])).toBe(stage);
      expect(stageDistance(stageAt(stageFromSeaLevelCelsius[stage] - 0.001), stage)).toBe(1);
    }
    expect(stageAt(20)).toBe('dissolves');
    expect(stageAt(400)).toBe('past hard crack');
  });
  it('are as far apart as the words are', () => {
    expect(stageDistance('soft ball', 'hard ball')).toBe(2);
    expect(stageDistance('hard ball', 'soft ball')).toBe(-2);
    expect(coldWaterOutcomes).toHaveLength(7);
  });
});

describe('graining', () => {
  it('plain sugar is a high risk, a third of syrup none; what is missing for enough is said', () => {
    expect(grainRisk(doctorRatio(sucrose()))).toBe('high');
    expect(grainRisk(doctorRatio(pulledCandy()))).toBe('low');
    const missing = doctorNeeded(sucrose());
    const doctored = { ...sucrose(), glucoseSolids: [{ grams: missing, de: 42 }] };
    expect(grainRisk(doctorRatio(doctored))).toBe('low');
    expect(doctorNeeded(doctored)).toBe(0);
  });
  it('acid makes its own doctor', () => {
    expect(doctorRatio(sucrose(), 0.2)).toBeGreaterThan(0.25);
  });
  it('a saturated solution has the coefficient 1, boiled candy at room temperature far more', () => {
    const fraction = sucroseSolubility(40);
    expect(supersaturation(sucrose(100 * (1 - fraction)), 40)).toBeCloseTo(1, 9);
    expect(supersaturation(pulledCandy(9), 25)).toBeGreaterThan(2);
  });
  it('hotter water holds more sugar', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 139, noNaN: true }), (celsius) => {
        expect(sucroseSolubility(celsius + 1)).toBeGreaterThan(sucroseSolubility(celsius));
      }),
    );
  });
  it('more acid, more heat and more time invert more; nothing is inverted twice', () => {
    const boil = [{ minutes: 20, celsius: 110, solidsFraction: 0.82 }];
    expect(invertedFraction(boil, 4)).toBeGreaterThan(invertedFraction(boil, 5));
    expect(invertedFraction([...boil, ...boil], 4)).toBeGreaterThan(invertedFraction(boil, 4));
    expect(invertedFraction(boil, 0)).toBeLessThanOrEqual(1);
    expect(invertedFraction([], 3)).toBe(0);
  });
});

describe('texture', () => {
  it('drier candy is never softer, and its pulling window lies hotter', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 20, noNaN: true }), (water) => {
        const [wet, dry] = [water + 1, water].map((percent) =>
          glassTransitionCelsius(pulledCandy(percent)),
        ) as [number, number];
        expect(dry).toBeGreaterThan(wet);
        expect(firmnesses.indexOf(firmnessAt(20, dry))).toBeGreaterThanOrEqual(
          firmnesses.indexOf(firmnessAt(20, wet)),
        );
        expect(pullingCelsius(dry)[0]).toBeGreaterThan(pullingCelsius(wet)[0]);
      }),
    );
  });
  it('honey and invert make it softer', () => {
    const invert = { ...onlyWater, sucroseGrams: 58, invertGrams: 33, waterGrams: 9 };
    expect(glassTransitionCelsius(invert)).toBeLessThan(glassTransitionCelsius(pulledCandy(9)));
  });
  it('at the ends of the pulling window the viscosity is what the window says', () => {
    const [stiff, droops] = pullingCelsius(5);
    expect(Math.log10(viscosityPascalSecond(stiff, 5))).toBeCloseTo(6, 9);
    expect(Math.log10(viscosityPascalSecond(droops, 5))).toBeCloseTo(3, 9);
    expect(viscosityPascalSecond(-50, 5)).toBe(1e12);
  });
  it('the humidity band is in order, in 0 to 1, and higher for wetter candy', () => {
    fc.assert(
      fc.property(fc.double({ min: 4, max: 30, noNaN: true }), (water) => {
        const [low, high] = equilibriumHumidity(pulledCandy(water), 20);
        expect(low).toBeGreaterThanOrEqual(0);
        expect(high).toBeLessThanOrEqual(1);
        expect(high - low).toBeGreaterThanOrEqual(0.15);
        expect(equilibriumHumidity(pulledCandy(water + 1), 20)[0]).toBeGreaterThan(low);
      }),
    );
  });
});

describe('in the pot and in the hands', () => {
  it('a kilogram of 75 % syrup fills about 0.73 l, a little more when hot; fat adds its own', () => {
    const batch = { ...pulledCandy(25), waterGrams: 25 };
    const cold = 10 * syrupLitres(batch, 20);
    expect(cold).toBeGreaterThan(0.71);
    expect(cold).toBeLessThan(0.74);
    expect(10 * syrupLitres(batch, 105)).toBeGreaterThan(cold);
    expect(syrupLitres({ ...batch, fatGrams: 9 }, 20) - syrupLitres(batch, 20)).toBeCloseTo(0.01, 9);
  });
  it('children are given the coolest candy, gloves the hottest', () => {
    const order = (['children', 'visitors', 'bare', 'gloved'] as const).map(handLimitCelsius);
    expect(order).toEqual([43, 45, 50, 55]);
  });
  it('hotter burns sooner', () => {
    fc.assert(
      fc.property(fc.double({ min: 45, max: 59, noNaN: true }), (celsius) => {
        expect(secondsToBurn(celsius + 1) ?? 0).toBeLessThan(secondsToBurn(celsius) ?? 0);
      }),
    );
    expect(secondsToBurn(130)).toBe(3);
  });
});
