import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  heatAlongCurve,
  heatToReachJoule,
  solutionJoulePerGramKelvin,
  warmingJoule,
} from '../../source/sugar/heat.js';
import { OutOfRange } from '../../source/sugar/out-of-range.js';
import { stageFromSeaLevelCelsius, stages } from '../../source/sugar/stages.js';
import {
  boilingCurve,
  dissolvedGrams,
  highestSolidsFraction,
  pressureRangePascal,
  type Syrup,
  scaleSyrup,
  solidsFraction,
  totalGrams,
  withWater,
} from '../../source/sugar/syrup.js';
import { words } from '../../source/texts/message.js';
import { printer } from '../../source/units/printer.js';
import { onlyWater, pulledCandy, sucrose } from '../published/syrups.js';

const grams = fc.double({ min: 0, max: 2000, noNaN: true });
const anySyrup: fc.Arbitrary<Syrup> = fc
  .record({
    sucroseGrams: grams,
    glucoseSolids: fc.array(fc.record({ grams, de: fc.double({ min: 10, max: 100, noNaN: true }) }), {
      maxLength: 3,
    }),
    invertGrams: grams,
    saltGrams: fc.double({ min: 0, max: 20, noNaN: true }),
    waterGrams: fc.double({ min: 20, max: 1000, noNaN: true }),
    fatGrams: fc.double({ min: 0, max: 100, noNaN: true }),
    inertGrams: fc.double({ min: 0, max: 100, noNaN: true }),
  })
  .filter((syrup) => dissolvedGrams(syrup) > 100);
const anyPressure = fc.double({ min: 60_000, max: 105_000, noNaN: true });
const anySolids = fc.double({ min: 0.01, max: highestSolidsFraction, noNaN: true });

describe('the boiling curve of any syrup anywhere', () => {
  it('goes forwards and backwards to 1 mK', () => {
    fc.assert(
      fc.property(anySyrup, anyPressure, anySolids, (syrup, pressure, solids) => {
        const curve = boilingCurve(syrup, pressure);
        const celsius = curve.celsiusAt(solids);
        expect(Math.abs(curve.celsiusAt(curve.solidsAt(celsius)) - celsius)).toBeLessThan(0.001);
      }),
      { numRuns: 500 },
    );
  });
  it('rises with solids and with pressure', () => {
    fc.assert(
      fc.property(
        anySyrup,
        anyPressure,
        fc.double({ min: 0, max: 0.975, noNaN: true }),
        (syrup, pressure, solids) => {
          const curve = boilingCurve(syrup, pressure);
          expect(curve.celsiusAt(solids + 0.01)).toBeGreaterThan(curve.celsiusAt(solids));
          expect(curve.kelvinPerSolidsFraction(solids)).toBeGreaterThan(0);
          expect(boilingCurve(syrup, pressure + 500).celsiusAt(solids)).toBeGreaterThan(
            curve.celsiusAt(solids),
          );
        },
      ),
      { numRuns: 500 },
    );
  });
  it('answers at both ends of its own ranges', () => {
    fc.assert(
      fc.property(anySyrup, anyPressure, (syrup, pressure) => {
        const curve = boilingCurve(syrup, pressure);
        expect(curve.solidsAt(curve.validCelsius[1])).toBeCloseTo(highestSolidsFraction, 9);
        expect(curve.solidsAt(curve.waterBoilsCelsius)).toBeCloseTo(0, 9);
        expect(curve.celsiusAt(0)).toBe(curve.waterBoilsCelsius);
      }),
    );
  });
  it('gives every stage a bound, rising from stage to stage', () => {
    fc.assert(
      fc.property(anySyrup, anyPressure, (syrup, pressure) => {
        const curve = boilingCurve(syrup, pressure);
        const bounds = stages.slice(1).map((stage) => curve.fromSeaLevel(stageFromSeaLevelCelsius[stage]));
        expect(bounds.every((bound, index) => index === 0 || bound > (bounds[index - 1] ?? Infinity))).toBe(
          true,
        );
      }),
    );
  });
  it('does not depend on the amount made, nor on fat and starch', () => {
    const curve = boilingCurve(pulledCandy(), 85_000);
    const large = boilingCurve({ ...scaleSyrup(pulledCandy(), 7), fatGrams: 90, inertGrams: 40 }, 85_000);
    expect(large.celsiusAt(0.9)).toBeCloseTo(curve.celsiusAt(0.9), 9);
    expect(large.waterGramsAt(110)).toBeCloseTo(7 * curve.waterGramsAt(110), 6);
  });
  it('at sea level shifts nothing', () => {
    expect(boilingCurve(pulledCandy(), 101_325).fromSeaLevel(125)).toBeCloseTo(125, 9);
  });
  it('in the hill hall at 85 kPa the same candy boils 5 to 7 K lower', () => {
    const shift = 125 - boilingCurve(pulledCandy(), 85_000).fromSeaLevel(125);
    expect(shift).toBeGreaterThan(5);
    expect(shift).toBeLessThan(7);
  });
  it('water left, dissolved and solids fraction fit together', () => {
    const curve = boilingCurve(pulledCandy(), 101_325);
    const left = withWater(pulledCandy(), curve.waterGramsAt(125));
    expect(solidsFraction(left)).toBeCloseTo(curve.solidsAt(125), 12);
    expect(totalGrams(left)).toBeCloseTo(dissolvedGrams(left) + left.waterGrams, 12);
  });
});

describe('what the curve does not know', () => {
  const print = printer({ unit: 'F', toShownCelsius: (celsius) => celsius });
  const refusal = (ask: () => unknown): OutOfRange => {
    try {
      ask();
    } catch (error) {
      if (error instanceof OutOfRange) return error;
      throw error;
    }
    throw new Error('was answered');
  };
  const curve = boilingCurve(sucrose(), 101_325);
  it.each([
    [
      'drier than 98.5 %',
      () => curve.celsiusAt(0.99),
      '99 % solids is outside what is known: 0 % to 98.5 %.',
    ],
    [
      'colder than boiling water',
      () => curve.solidsAt(90),
      '194 °F is outside what is known here: 212 °F to 313 °F.',
    ],
    [
      'thin air',
      () => boilingCurve(sucrose(), 30_000),
      'An air pressure of 30 kPa is outside what is known: 50 kPa to 110 kPa.',
    ],
    [
      'no sugar',
      () => boilingCurve(onlyWater, 101_325),
      'Nothing in this syrup is dissolved: it needs sugar, syrup or salt.',
    ],
    ['no number', () => curve.celsiusAt(Number.NaN), 'outside what is known'],
  ])('%s', (_what, ask, said) => {
    const error = refusal(ask);
    expect(error).toBeInstanceOf(RangeError);
    expect(words(error.said, print)).toContain(said);
  });
  it('covers the air of every place where people cook', () => {
    expect(pressureRangePascal[0]).toBeLessThanOrEqual(60_000);
    expect(pressureRangePascal[1]).toBeGreaterThanOrEqual(105_000);
  });
});

describe('heat along the boil', () => {
  const batch: Syrup = { ...scaleSyrup(pulledCandy(25), 10), fatGrams: 20, inertGrams: 15 };
  const curve = boilingCurve(batch, 85_000);
  const heat = heatAlongCurve(curve, 35);

  it('equals a fine sum of small steps of warming and evaporation', () => {
    const [from, to, steps] = [0.75, 0.92, 4000];
    let joule = 0;
    for (let step = 0; step < steps; step++) {
      const [low, high] = [from + ((to - from) * step) / steps, from + ((to - from) * (step + 1)) / steps];
      const middle = (low + high) / 2;
      joule += curve.dissolvedGrams * (1 / low - 1 / high) * curve.evaporationJoulePerGram(middle);
      const perKelvin =
        (curve.dissolvedGrams / middle) * solutionJoulePerGramKelvin(middle, curve.celsiusAt(middle)) +
        35 * 2;
      joule += perKelvin * (curve.celsiusAt(high) - curve.celsiusAt(low));
    }
    expect((heat.jouleAtSolids(to) - heat.jouleAtSolids(from)) / joule).toBeCloseTo(1, 5);
  });
  it('rises, and its inverse leads back to 1 mK', () => {
    fc.assert(
      fc.property(
        fc.double({ min: curve.celsiusAt(0.5), max: curve.validCelsius[1], noNaN: true }),
        (celsius) => {
          expect(Math.abs(heat.celsiusAt(heat.jouleAt(celsius)) - celsius)).toBeLessThan(0.001);
          if (celsius < curve.validCelsius[1] - 0.1)
            expect(heat.jouleAt(celsius + 0.1)).toBeGreaterThan(heat.jouleAt(celsius));
        },
      ),
    );
  });
  it('a kilogram batch needs about 0.7 MJ from 17 °C to hard ball: ten minutes of 1200 W, most of it evaporation', () => {
    const target = curve.fromSeaLevel(125);
    const joule = heatToReachJoule(batch, curve, 17, target);
    const evaporated = batch.waterGrams - curve.waterGramsAt(target);
    expect(joule).toBeGreaterThan(evaporated * 2250);
    expect(joule).toBeLessThan(evaporated * 2400 + 1035 * 3.2 * (target - 17));
    expect(heatToReachJoule(batch, curve, 17, 50)).toBe(warmingJoule(batch, 17, 50));
  });
  it('evaporating from syrup costs more than from water up to hard ball, where syrup holds its water hardest', () => {
    const thin = curve.evaporationJoulePerGram(0.1);
    expect(curve.evaporationJoulePerGram(0.92)).toBeGreaterThan(thin - 20);
  });
});
