import { describe, expect, it } from 'vitest';
import { steamWatts } from '../../source/forecast/advance.js';
import {
  begin,
  dialBias,
  type Estimate,
  joulesDone,
  joulesToBoil,
  logWatts,
  unknowns,
} from '../../source/forecast/estimate.js';
import { expectation, readingVariance } from '../../source/forecast/expectation.js';
import { expectedReading, observe } from '../../source/forecast/index.js';
import { pathOf } from '../../source/forecast/path.js';
import { type Reading, read } from '../../source/forecast/reading.js';
import { numberAt } from '../../source/units/at.js';
import { curve, estimateAfter, hob, plainBoil } from './hall.js';

const path = pathOf(curve, hob);
const boiling = estimateAfter(plainBoil);
const at = 820;
const reading = (t: number, celsius: number, more: Partial<Reading> = {}): Reading => ({
  kind: 'reading',
  t,
  celsius,
  ...more,
});
const reads = (estimate: Estimate, ...readings: readonly Reading[]): Estimate =>
  readings.reduce((before, one) => read(before, one, path, hob), estimate);
const held = ({ covariance }: Estimate, row: number, column = row): number =>
  numberAt(covariance, row * unknowns + column);
const power = ({ mean }: Estimate): number => numberAt(mean, logWatts);
const dial = (estimate: Estimate): number => expectation(estimate, path, hob).celsius;

/** Seen cold once at 62 °C, the ring full on. */
const seenCold = estimateAfter(plainBoil.slice(0, 2));
const begun = { ...seenCold, t: 420 };

describe('two readings of a pot that only warms', () => {
  const learned = (more: Partial<Estimate> = {}, t = 420, celsius = 98.5): Estimate =>
    reads({ ...begun, ...more }, reading(t, celsius));

  it('give its power: what warmed it in that time, less what the room took, and the steam', () => {
    // By hand: the rise of all that is in the pot, 1 W/K to the room, the steam of an open pot at the mean of both.
    const below = path.startCelsius - (62 + 98.5) / 2;
    const watts = ((98.5 - 62) * path.warmingAt(0)) / 180 - below + steamWatts(below);
    const doubt = 0.25 ** 2 + (1.5 / 36.5) ** 2;
    const gain = held(begun, logWatts) / (held(begun, logWatts) + doubt);
    expect(power(learned())).toBeCloseTo(power(begun) + gain * (Math.log(watts) - power(begun)), 9);
    expect(held(learned(), logWatts)).toBeCloseTo(held(begun, logWatts) * (1 - gain), 9);
    // A rise of two kelvin says less than one of thirty.
    expect(held(learned({}, 420, 64), logWatts)).toBeGreaterThan(held(learned(), logWatts));
  });

  it('say nothing of it too soon, without a rise, or under a lid', () => {
    const stays = (estimate: Estimate): boolean => power(estimate) === power(begun);
    expect(stays(learned({}, 254))).toBe(true);
    expect(stays(learned({}, 255))).toBe(false);
    expect(stays(learned({}, 420, 62.9))).toBe(true);
    expect(stays(learned({}, 420, 63))).toBe(false);
    expect(stays(learned({ lidOn: true }))).toBe(true);
    const first = { ...estimateAfter([{ kind: 'heat', t: 60, level: 1 }]), t: 240 };
    expect(power(reads(first, reading(240, 62)))).toBe(power(first));
  });

  it('show that the ring is on where nobody said so, unless it was said to be off', () => {
    expect(learned({ heating: false, level: null }).heating).toBe(true);
    expect(learned({ heating: false, level: 0 }).heating).toBe(false);
  });

  it('leave the whole boil to be done, from as far below as the dial and what it is behind say', () => {
    const cold = learned({ behindKelvin: 2 }, 420, 90);
    expect(numberAt(cold.mean, joulesDone)).toBe(0);
    expect(joulesToBoil(cold)).toBeCloseTo((path.startCelsius - 92) * path.warmingAt(0), 3);
    expect(joulesToBoil(learned({ behindKelvin: 30 }, 420, 90))).toBeCloseTo(
      (path.startCelsius - 98) * path.warmingAt(0),
      3,
    );
    expect(held(cold, joulesDone)).toBeCloseTo((3 * path.warmingAt(0)) ** 2, 0);
    for (const row of [1, 2, 3]) {
      expect(held(cold, joulesDone, row)).toBe(0);
      expect(held(cold, row, joulesDone)).toBe(0);
      expect(held(cold, row)).toBeGreaterThan(0);
    }
    expect(cold).toMatchObject({ acceptedReadings: 2, lastReading: { t: 420, celsius: 90 } });
    expect(cold.suspects).toEqual({ count: 0, kelvin: 0 });
  });

  it('end three kelvin below the boil', () => {
    expect(learned({}, 420, path.startCelsius - 3.01).located).toBe(false);
    expect(learned({}, 420, path.startCelsius - 2.99).located).toBe(true);
  });
});

describe('the first reading of a pot that boils', () => {
  it('of a pot that was watched: near where its heat has brought it, and never surer than what steamed off', () => {
    const cold = { ...estimateAfter(plainBoil.slice(0, 3)), t: 520, behindKelvin: 1.5 };
    const found = reads(cold, reading(520, 103.6));
    expect(found).toMatchObject({ located: true, behindKelvin: 1.5, coldJoules: 0, acceptedReadings: 3 });
    expect(held(found, joulesDone)).toBeGreaterThanOrEqual((8 * 2250) ** 2);
    // By power learned cold it is doubted by 12 % more.
    expect(held(found, logWatts)).toBeCloseTo(held(cold, logWatts) + 0.12 ** 2, 9);
    // A dial that is behind shows less than there is.
    const behind = reads({ ...cold, behindKelvin: 0 }, reading(520, 103.6));
    expect(numberAt(found.mean, joulesDone)).toBeGreaterThan(numberAt(behind.mean, joulesDone));
    expect(reads({ ...cold, behindKelvin: 40 }, reading(520, 103.6)).behindKelvin).toBe(8);
    // What was not watched may be anywhere: a reading further on is believed more there.
    const far = (estimate: Estimate) =>
      numberAt(reads({ ...estimate, behindKelvin: 0 }, reading(520, 106)).mean, joulesDone);
    expect(far({ ...cold, acceptedReadings: 0 })).toBeGreaterThan(1.05 * far(cold));
    expect(far({ ...cold, heating: false })).toBeGreaterThan(1.05 * far(cold));
  });

  it('of a pot that was not watched: by the thermometer alone', () => {
    const unseen = { ...begin(hob), t: 600, behindKelvin: 5 };
    const found = reads(unseen, reading(600, 112));
    expect(found).toMatchObject({ located: true, behindKelvin: 0, heating: true, acceptedReadings: 1 });
    expect(power(found)).toBe(power(unseen));
    expect(held(found, logWatts)).toBe(held(unseen, logWatts));
    expect(Math.abs(path.celsiusAt(numberAt(found.mean, joulesDone)) - 112)).toBeLessThan(1);
    expect(reads({ ...unseen, level: 0 }, reading(600, 112)).heating).toBe(false);
  });
});

describe('a reading that says nothing of the water left', () => {
  const standing: readonly (readonly [string, Partial<Estimate>])[] = [
    ['off the ring', { potOn: false }],
    ['under a lid', { lidOn: true }],
    ['hardly back', { unsettledUntil: 841 }],
    ['cooled', { coldJoules: 3000 }],
  ];

  it.each(standing)('%s: half of how far below its boil it is, with half of what was thought', (_, more) => {
    const before = { ...boiling, t: 840, ...more };
    const after = reads(before, reading(840, 105));
    const below = dial({ ...before, coldJoules: 0 }) - 105;
    const warming = path.warmingAt(numberAt(boiling.mean, joulesDone));
    expect(below).toBeGreaterThan(3);
    expect(joulesToBoil(after)).toBeCloseTo(0.5 * joulesToBoil(before) + 0.5 * below * warming, 3);
    expect(after).toMatchObject({ mean: boiling.mean, covariance: boiling.covariance });
    expect(after.lastReading).toEqual({ t: 840, celsius: 105 });
    expect(after.acceptedReadings).toBe(boiling.acceptedReadings);
    // Never warmer than its boil, never more than 60 K below it.
    expect(joulesToBoil(reads(before, reading(840, 130)))).toBeCloseTo(0.5 * joulesToBoil(before), 3);
    expect(joulesToBoil(reads(before, reading(840, 5)))).toBeCloseTo(
      0.5 * joulesToBoil(before) + 0.5 * 60 * warming,
      3,
    );
  });

  it('and settled it says it again', () => {
    const settled = reads({ ...boiling, t: 840, unsettledUntil: 840 }, reading(840, 111));
    expect(settled.acceptedReadings).toBe(boiling.acceptedReadings + 1);
    expect(settled.mean).not.toEqual(boiling.mean);
  });
});

describe('an improbable reading', () => {
  const shown = dial(boiling);
  const low = (t: number): Reading => reading(t, shown - 9);
  const high = (t: number): Reading => reading(t, shown + 9);

  it('alone is left out, and remembered', () => {
    for (const one of [low(at), high(at)]) {
      const after = reads(boiling, one);
      expect(after).toMatchObject({ mean: boiling.mean, coldJoules: boiling.coldJoules });
      expect(after.suspects.count).toBe(1);
      expect(after.suspects.kelvin).toBeCloseTo(one.celsius - shown, 6);
      expect(after.lastReading).toEqual({ t: at, celsius: one.celsius });
      expect(after.acceptedReadings).toBe(boiling.acceptedReadings);
    }
  });

  it('and one on the other side of it are two alone', () => {
    expect(reads(boiling, low(at), high(at)).suspects.count).toBe(1);
    expect(reads(boiling, high(at), low(at)).suspects.count).toBe(1);
    expect(reads({ ...boiling, suspects: { count: 0, kelvin: -3 } }, low(at)).suspects.count).toBe(1);
  });

  it('low twice is a syrup below its boil, by so much; its place stands', () => {
    const after = reads(boiling, low(at), low(at));
    const warming = path.warmingAt(numberAt(boiling.mean, joulesDone));
    expect(joulesToBoil(after)).toBeCloseTo(joulesToBoil(boiling) + 9 * warming, 0);
    expect(after.mean).toEqual(boiling.mean);
    expect(after.acceptedReadings).toBe(boiling.acceptedReadings);
  });

  it('high twice, or once by somebody who stands by it, is sought anew, with doubt about the power', () => {
    for (const after of [reads(boiling, high(at), high(at)), reads(boiling, { ...high(at), sure: true })]) {
      expect(path.celsiusAt(numberAt(after.mean, joulesDone))).toBeGreaterThan(
        path.celsiusAt(numberAt(boiling.mean, joulesDone)) + 6,
      );
      expect(held(after, logWatts)).toBeCloseTo(held(boiling, logWatts) + 0.25 ** 2, 9);
      expect(after.suspects).toEqual({ count: 0, kelvin: 0 });
      expect(after.acceptedReadings).toBe(boiling.acceptedReadings + 1);
    }
  });

  it('low four times is sought anew, unless nothing boils there', () => {
    // Told apart by what stands in the way of the second: the count.
    const thrice = { ...boiling, suspects: { count: 3, kelvin: -9 } };
    const boils = { ...low(at), celsius: Math.max(shown - 9, path.startCelsius - 2.9) };
    const after = reads(thrice, boils);
    expect(after.acceptedReadings).toBe(boiling.acceptedReadings + 1);
    expect(numberAt(after.mean, joulesDone)).toBeLessThan(numberAt(boiling.mean, joulesDone));
    const cold = reads(thrice, reading(at, path.startCelsius - 3.1));
    expect(cold).toMatchObject({ mean: boiling.mean, acceptedReadings: boiling.acceptedReadings });
    expect(cold.suspects.count).toBe(4);
  });

  it('begins at three and a half spreads', () => {
    const { variance } = expectation(boiling, path, hob);
    const off = 3.5 * Math.sqrt(variance);
    expect(reads(boiling, reading(at, shown + off - 0.01)).suspects.count).toBe(0);
    expect(reads(boiling, reading(at, shown + off + 0.01)).suspects.count).toBe(1);
  });

  it('is none at all where no kitchen thermometer goes', () => {
    for (const celsius of [-30.1, 400.1, Number.NaN])
      expect(reads(boiling, reading(at, celsius))).toBe(boiling);
    for (const celsius of [-30, 400]) expect(reads(boiling, reading(at, celsius)).suspects.count).toBe(1);
  });
});

describe('what the thermometer should show', () => {
  it('is said once the boil was found: at that moment, with its spread', () => {
    expect(expectedReading(estimateAfter(plainBoil.slice(0, 3)), 430, curve, hob)).toBeNull();
    const now = expectedReading(boiling, at, curve, hob);
    expect(now?.celsius).toBeCloseTo(dial(boiling), 9);
    expect((now?.sd ?? 0) ** 2).toBeCloseTo(expectation(boiling, path, hob).variance, 9);
    expect((now?.sd ?? 0) ** 2).toBeGreaterThan(readingVariance(boiling, hob));
    expect(expectedReading(boiling, at + 60, curve, hob)?.celsius).toBeGreaterThan(dial(boiling) + 1);
    // Never of a time before the last news.
    expect(expectedReading(boiling, at - 200, curve, hob)).toEqual(now);
  });

  it('is in line with the next reading of this very boil', () => {
    const before = estimateAfter(plainBoil.slice(0, -1));
    const then = expectedReading(before, 820, curve, hob);
    expect(Math.abs((then?.celsius ?? 0) - 111.2)).toBeLessThan(2 * (then?.sd ?? 0));
    const after = observe(before, { kind: 'reading', t: 820, celsius: 111.2 }, curve, hob);
    expect(held(after, dialBias)).toBeLessThan(held(before, dialBias));
  });
});
