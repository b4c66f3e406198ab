import { describe, expect, it } from 'vitest';
import {
  begin,
  curveBias,
  dialBias,
  dialSdOf,
  type Estimate,
  joulesDone,
  logWatts,
  unknowns,
} from '../../source/forecast/estimate.js';
import {
  believe,
  believedBoilCelsius,
  dialEvidence,
  forget,
  learnedOf,
  reachedProbability,
  recheckDial,
} from '../../source/forecast/index.js';
import { normalBelow } from '../../source/forecast/numbers.js';
import { numberAt } from '../../source/units/at.js';
import { curve, estimateAfter, hob, plainBoil, target } from './hall.js';

const boiling = estimateAfter(plainBoil);
const at = 820;
const held = ({ covariance }: Estimate, row: number, column = row): number =>
  numberAt(covariance, row * unknowns + column);
/** The same with another mean or variance of one unknown. */
const withUnknown = (estimate: Estimate, row: number, mean: number, variance: number): Estimate => ({
  ...estimate,
  mean: estimate.mean.map((value, place) => (place === row ? mean : value)),
  covariance: estimate.covariance.map((value, place) => (place === row * unknowns + row ? variance : value)),
});

describe('what is left of a pot that nobody watched', () => {
  const left = () => forget(boiling, at + 3000, hob);

  it('is what was learned of stove, curve and dial, each by itself; where the syrup is has to be found anew', () => {
    for (const row of [logWatts, curveBias, dialBias]) {
      expect(left().mean[row]).toBe(boiling.mean[row]);
      expect(held(left(), row)).toBe(held(boiling, row));
      for (const column of [0, 1, 2, 3].filter((one) => one !== row))
        expect(held(left(), row, column)).toBe(0);
    }
    expect(left().mean[joulesDone]).toBe(0);
    expect(held(left(), joulesDone)).toBe(0);
    expect(left()).toMatchObject({
      located: false,
      coldJoules: null,
      acceptedReadings: 0,
      lastReading: null,
    });
  });

  it('is the knob, the ring and the lid as they were last told, and how often fingers disagreed', () => {
    const told = { ...boiling, level: 0.4, potOn: false, lidOn: true, heating: false };
    const kept = forget({ ...told, coldWater: { tests: 3, disagreed: 2 } }, at + 3000, hob);
    expect(kept).toMatchObject({ level: 0.4, potOn: false, lidOn: true, heating: false });
    expect(kept.knownLevels).toBe(boiling.knownLevels);
    expect(kept.coldWater).toEqual({ tests: 0, disagreed: 2 });
  });

  it('is of that time, and never of an earlier one', () => {
    expect(left().t).toBe(at + 3000);
    expect(forget(boiling, 3, hob).t).toBe(at);
  });
});

describe('a thermometer that was checked after the cook began', () => {
  const doubted = withUnknown(begin(hob), dialBias, 0.7, 4);
  const tied = {
    ...doubted,
    covariance: doubted.covariance.map((value, place) =>
      [dialBias, dialBias * unknowns].includes(place) ? 0.3 : value + 1,
    ),
  };
  const checked = { ...hob, dialSdKelvin: 0.5 };

  it('is known as well as the check says, and of no other unknown anything changes', () => {
    const after = recheckDial(tied, checked);
    expect(after.mean).toEqual([0, tied.mean[logWatts], 0, 0]);
    expect(held(after, dialBias)).toBeCloseTo(dialSdOf(checked) ** 2, 12);
    for (const row of [0, 1, 2]) {
      expect(held(after, row, dialBias)).toBe(0);
      expect(held(after, dialBias, row)).toBe(0);
      for (const column of [0, 1, 2]) expect(held(after, row, column)).toBe(held(tied, row, column));
    }
  });

  it('stays as it is once it was read in the syrup, or fingers were asked', () => {
    const read = { ...tied, lastReading: { t: 5, celsius: 60 } };
    const felt = { ...tied, coldWater: { tests: 1, disagreed: 0 } };
    for (const one of [read, felt]) expect(recheckDial(one, checked)).toBe(one);
  });
});

describe('what a boil has shown', () => {
  it('of power and thermometer: the mean and the spread', () => {
    const learned = learnedOf(withUnknown(boiling, dialBias, -1.25, 0.36));
    expect(learned.dialBias).toEqual({ mean: -1.25, sd: 0.6 });
    expect(learned.logWatts.mean).toBe(boiling.mean[logWatts]);
    expect(learned.logWatts.sd ** 2).toBeCloseTo(held(boiling, logWatts), 12);
    expect(learnedOf(withUnknown(boiling, dialBias, 0, -1e-9)).dialBias.sd).toBe(0);
  });

  it('of the thermometer, without what was thought before: precisions subtracted', () => {
    // Gelman et al. 2013, eq. 2.12: 1/s2 = 1/prior2 + 1/evidence2, and means weighted by precision, the prior's being 0.
    const prior = dialSdOf(hob);
    const [evidence, found] = [0.8, 1.5];
    const precision = 1 / prior ** 2 + 1 / evidence ** 2;
    const after = withUnknown(boiling, dialBias, found / evidence ** 2 / precision, 1 / precision);
    expect(dialEvidence(after, hob)?.mean).toBeCloseTo(found, 9);
    expect(dialEvidence(after, hob)?.sd).toBeCloseTo(evidence, 9);
  });

  it('of the thermometer is nothing where it is known hardly better than before', () => {
    const better = (share: number): Estimate =>
      withUnknown(boiling, dialBias, 0.1, dialSdOf(hob) ** 2 / (1 + share));
    expect(dialEvidence(better(0), hob)).toBeNull();
    expect(dialEvidence(better(0.019), hob)).toBeNull();
    expect(dialEvidence(better(-0.2), hob)).toBeNull();
    expect(dialEvidence(better(0.021), hob)).not.toBeNull();
    // A spread of none is no certainty.
    expect(dialEvidence(withUnknown(boiling, dialBias, 0.1, 0), hob)?.sd).toBeCloseTo(1e-3, 6);
  });
});

describe('what is believed', () => {
  it('is the same asked for piece by piece, and before any evidence what was weighed', () => {
    const whole = believe(boiling, target, at + 40, curve, hob);
    expect(believedBoilCelsius(boiling, at + 40, curve, hob)).toBe(whole?.celsius);
    expect(reachedProbability(boiling, target, at + 40, curve, hob)).toBe(whole?.reachedProbability);
    const { celsius = 0, sd = 1 } = whole ?? {};
    expect(whole?.reachedProbability).toBeCloseTo(1 - normalBelow((target.floorCelsius - celsius) / sd), 12);
    expect(reachedProbability(begin(hob), target, 0, curve, hob)).toBe(0);
    expect(believe(begin(hob), target, 0, curve, hob)).toBeNull();
    expect(believedBoilCelsius(begin(hob), 0, curve, hob)).toBeCloseTo(hob.celsiusAtStart, 6);
    const felt = estimateAfter([{ kind: 'cold water', t: 900, outcome: 'firm ball' }]);
    expect(reachedProbability(felt, target, 900, curve, hob)).toBeGreaterThan(0);
  });

  it('of a thermometer is that it errs, from two disagreements on, by a kelvin that stands clear of its doubt', () => {
    const doubtsIt = (kelvin: number, sd: number, disagreed: number): boolean => {
      const one = withUnknown(boiling, dialBias, kelvin, sd ** 2);
      return (
        believe({ ...one, coldWater: { tests: 4, disagreed } }, target, at, curve, hob)?.dialBias !== null
      );
    };
    expect(doubtsIt(2, 0.5, 2)).toBe(true);
    expect(doubtsIt(-2, 0.5, 2)).toBe(true);
    expect(doubtsIt(2, 0.5, 1)).toBe(false);
    expect(doubtsIt(1, 0.5, 2)).toBe(true);
    expect(doubtsIt(0.99, 0.5, 2)).toBe(false);
    expect(doubtsIt(2, 1.65, 2)).toBe(true);
    expect(doubtsIt(2, 1.68, 2)).toBe(false);
    const one = withUnknown(boiling, dialBias, 2, 0.25);
    const told = believe({ ...one, coldWater: { tests: 4, disagreed: 2 } }, target, at, curve, hob);
    expect(told?.dialBias).toEqual({ kelvin: 2, sd: 0.5 });
  });
});
