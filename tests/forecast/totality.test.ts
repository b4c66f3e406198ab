import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  begin,
  believe,
  crossing,
  type Evidence,
  type Hob,
  observe,
  project,
} from '../../source/forecast/index.js';
import { coldWaterOutcomes, stages } from '../../source/sugar/stages.js';
import { curve, estimateAfter, hob, plainBoil, target } from './hall.js';

const anyNumber = fc.oneof(
  fc.double({ min: 60, max: 160, noNaN: true }),
  fc.double({ min: -1000, max: 1000, noNaN: true }),
  fc.constantFrom(Number.NaN, Infinity, -Infinity, 0, 1e300, -1e300),
);
const anyTime = fc.oneof(
  { weight: 8, arbitrary: fc.double({ min: 0, max: 4000, noNaN: true }) },
  { weight: 1, arbitrary: anyNumber },
);
const anyEvidence: fc.Arbitrary<Evidence> = fc.oneof(
  {
    weight: 5,
    arbitrary: fc.record({ kind: fc.constant('reading' as const), t: anyTime, celsius: anyNumber }),
  },
  fc.record({
    kind: fc.constant('cold water' as const),
    t: anyTime,
    outcome: fc.constantFrom(...coldWaterOutcomes),
  }),
  fc.record({
    kind: fc.constant('heat' as const),
    t: anyTime,
    level: fc.oneof(fc.constant(null), anyNumber, fc.double({ min: 0, max: 1, noNaN: true })),
  }),
  fc.record({ kind: fc.constant('pot' as const), t: anyTime, on: fc.boolean() }),
  fc.record({ kind: fc.constant('lid' as const), t: anyTime, on: fc.boolean() }),
  fc.record({ kind: fc.constant('water' as const), t: anyTime, grams: anyNumber }),
);
const anyHob: fc.Arbitrary<Hob> = fc.record({
  stove: fc.constantFrom('gas', 'coil', 'glass-ceramic', 'induction'),
  otherGrams: fc.double({ min: 0, max: 200, noNaN: true }),
  dialSdKelvin: fc.double({ min: 0, max: 5, noNaN: true }),
  dialLagSeconds: fc.double({ min: 0, max: 40, noNaN: true }),
  stageFromCelsius: fc.constant(hob.stageFromCelsius),
  startSolidsFraction: fc.double({ min: 0.2, max: 0.95, noNaN: true }),
  celsiusAtStart: fc.double({ min: -10, max: 130, noNaN: true }),
});

describe('whatever is told, in whatever order', () => {
  it('times are never negative or beyond all measure, shares sum to 1, nothing is thrown', () => {
    fc.assert(
      fc.property(fc.array(anyEvidence, { maxLength: 30 }), anyHob, anyTime, (evidence, on, now) => {
        let estimate = begin(on);
        for (const next of evidence) {
          estimate = observe(estimate, next, curve, on);
          const ahead = project(estimate, target, now, curve, on);
          if (ahead !== null) {
            for (const { low, typical, high } of [ahead.seconds, ahead.takeOffSeconds]) {
              expect(low).toBeGreaterThanOrEqual(0);
              expect(typical).toBeGreaterThanOrEqual(low);
              expect(high).toBeGreaterThanOrEqual(typical);
              expect(high).toBeLessThan(1e6);
            }
            expect(ahead.boilShare).toBeGreaterThanOrEqual(0);
            expect(ahead.boilShare).toBeLessThanOrEqual(1);
            expect(ahead.watts).toBeGreaterThan(0);
            expect(ahead.nextReadingSeconds).toBeGreaterThanOrEqual(0);
            expect(ahead.nextReadingSeconds).toBeLessThanOrEqual(300);
            expect(ahead.carryOverKelvin).toBeGreaterThanOrEqual(0);
            expect(Number.isFinite(ahead.carryOverKelvin)).toBe(true);
          }
          const belief = believe(estimate, target, now, curve, on);
          if (belief !== null) {
            expect(Number.isFinite(belief.celsius)).toBe(true);
            expect(belief.sd).toBeGreaterThan(0);
            expect(stages.reduce((sum, stage) => sum + belief.stages[stage], 0)).toBeCloseTo(1, 6);
            expect(belief.reachedProbability).toBeGreaterThanOrEqual(0);
            expect(belief.reachedProbability).toBeLessThanOrEqual(1);
          }
          const when = crossing(estimate, target.floorCelsius, now, curve, on);
          if (when !== null) expect(Number.isFinite(when)).toBe(true);
        }
        for (const value of [...estimate.mean, ...estimate.covariance, estimate.t])
          expect(Number.isFinite(value)).toBe(true);
      }),
      { numRuns: 400 },
    );
  });

  it('is the same estimate after a trip through JSON', () => {
    const whole = estimateAfter(plainBoil);
    const halfway = JSON.parse(JSON.stringify(estimateAfter(plainBoil.slice(0, 5)))) as typeof whole;
    expect(estimateAfter(plainBoil.slice(5), hob, halfway)).toEqual(whole);
  });

  it('is no larger after ten thousand readings and a thousand turns of the knob', () => {
    let estimate = estimateAfter(plainBoil);
    for (let index = 0; index < 10_000; index++) {
      estimate = observe(
        estimate,
        { kind: 'reading', t: 830 + index, celsius: 111 + (index % 7) / 10 },
        curve,
        hob,
      );
      if (index % 10 === 0)
        estimate = observe(
          estimate,
          { kind: 'heat', t: 830 + index, level: ((index / 10) % 50) / 50 },
          curve,
          hob,
        );
    }
    expect(JSON.stringify(estimate).length).toBeLessThan(2500);
  });
});
