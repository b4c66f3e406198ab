import { describe, expect, it } from 'vitest';
import { turn } from '../../source/forecast/acts.js';
import { carryOn, coldAtStart, runPot, steamWatts } from '../../source/forecast/advance.js';
import { temperatureOf, testCold } from '../../source/forecast/cold-water.js';
import {
  begin,
  dialBias,
  type Estimate,
  joulesDone,
  logWatts,
  unknowns,
} from '../../source/forecast/estimate.js';
import { expectation, readingVariance, weigh, widen } from '../../source/forecast/expectation.js';
import { pathOf } from '../../source/forecast/path.js';
import { covarianceOf, meanOf, spreadPoints } from '../../source/forecast/points.js';
import { curve, estimateAfter, hob, plainBoil } from './hall.js';

const path = pathOf(curve, hob);
const boiling = estimateAfter(plainBoil);
const at = 820;
const variance = ({ covariance }: Estimate, row: number): number =>
  covariance[row * unknowns + row] ?? Number.NaN;

describe('what is not known', () => {
  it('is carried by points that have its mean and its spread again', () => {
    const points = spreadPoints(boiling.mean, boiling.covariance);
    expect(points).toHaveLength(2 * unknowns);
    const mean = meanOf(points);
    mean.forEach((value, row) => {
      expect(value).toBeCloseTo(boiling.mean[row] ?? Number.NaN, 6);
    });
    covarianceOf(points, mean).forEach((value, place) => {
      const wanted = boiling.covariance[place] ?? Number.NaN;
      expect(Math.abs(value - wanted)).toBeLessThan(1e-6 * Math.max(1, Math.abs(wanted)));
    });
  });

  it('grows with time on the ring: the power by 7 % in a minute, the heat by 60 J in a second, each with the root', () => {
    for (const minutes of [1, 4]) {
      const later = carryOn(boiling, at + 60 * minutes, path, hob);
      expect(variance(later, logWatts) - variance(boiling, logWatts)).toBeCloseTo(0.07 ** 2 * minutes, 9);
      expect(variance(later, joulesDone)).toBeGreaterThan(
        variance(boiling, joulesDone) + 3600 * 60 * minutes,
      );
      expect(variance(later, dialBias)).toBeCloseTo(variance(boiling, dialBias), 9);
    }
    // Nobody is so unsure of a burner as not to know whether it gives ten watts or a thousand.
    expect(variance(carryOn({ ...boiling }, at + 40_000, path, hob), logWatts)).toBeLessThanOrEqual(1);
  });

  it('stays under a lid, off the ring and with the knob off, where nothing boils away', () => {
    const covered = carryOn({ ...boiling, lidOn: true }, at + 300, path, hob);
    expect(covered.mean[joulesDone]).toBeCloseTo(boiling.mean[joulesDone] ?? 0, 3);
    expect(variance(covered, joulesDone) / variance(boiling, joulesDone)).toBeCloseTo(1, 6);
    expect(variance(covered, logWatts)).toBeGreaterThan(variance(boiling, logWatts));
    const off = carryOn({ ...boiling, potOn: false }, at + 300, path, hob);
    expect(variance(off, logWatts)).toBeCloseTo(variance(boiling, logWatts), 12);
    expect(variance(off, joulesDone) / variance(boiling, joulesDone)).toBeCloseTo(1, 6);
    // On a trivet it cools by 2 W for each kelvin over the room.
    const cooled = (off.coldJoules ?? 0) - (boiling.coldJoules ?? 0);
    expect(cooled).toBeGreaterThan(300 * 2 * 60);
    expect(cooled).toBeLessThan(300 * 2 * 95);
    const out = carryOn(turn(boiling, at, 0, path, hob), at + 300, path, hob);
    expect(variance(out, logWatts)).toBeCloseTo(variance(boiling, logWatts), 12);
  });

  it('does not change before there is any sign of heat, nor when no time has passed', () => {
    const cold = begin(hob);
    const later = carryOn(cold, 600, path, hob);
    expect(later).toEqual({ ...cold, t: 600, coldJoules: coldAtStart(hob, path) });
    expect(carryOn(later, 600, path, hob)).toBe(later);
    expect(carryOn(later, 10, path, hob)).toBe(later);
    expect(carryOn(cold, 0, path, hob).coldJoules).toBe(coldAtStart(hob, path));
  });

  it('begins in a pot as cold as the room: what has to be warmed first', () => {
    expect(coldAtStart(hob, path)).toBeCloseTo((path.startCelsius - 20) * path.warmingAt(0), 6);
    expect(coldAtStart({ ...hob, celsiusAtStart: 50 }, path)).toBeCloseTo(
      (path.startCelsius - 50) * path.warmingAt(0),
      6,
    );
    expect(coldAtStart({ ...hob, celsiusAtStart: 150 }, path)).toBe(0);
    expect(coldAtStart({ ...hob, celsiusAtStart: Number.NaN }, path)).toBe(coldAtStart(hob, path));
  });

  it('steams away what a pot just below its boil loses, but not under a lid', () => {
    const standing = { potOn: true, lidOn: false, heating: true, change: null, lagSeconds: 60 };
    const below = 6;
    const start = { joules: 0, coldJoules: below * path.warmingAt(0), behindKelvin: 0 };
    const run = (lidOn: boolean) => runPot(start, Math.log(20), { ...standing, lidOn }, 0, 8, path, 12);
    const lost = run(false).coldJoules - run(true).coldJoules;
    expect(lost / (8 * steamWatts(below))).toBeCloseTo(1, 2);
    // Off the ring the loss to the room has it in already.
    const off = (lidOn: boolean) =>
      runPot(start, Math.log(20), { ...standing, potOn: false, lidOn }, 0, 8, path, 12).coldJoules;
    expect(off(false)).toBeCloseTo(off(true), 9);
  });

  it('follows a burner that is still arriving through the step, not from its end', () => {
    const standing = { potOn: true, lidOn: true, heating: true, change: { t: 0, watts: 0 }, lagSeconds: 60 };
    const start = { joules: 0, coldJoules: 1e6, behindKelvin: 0 };
    const { coldJoules } = runPot(start, Math.log(600), standing, 0, 60, path, 12);
    // The area under 600 (1 - exp(-t/60)) over a minute, and what a cold pot does not lose yet.
    const area = 600 * 60 * Math.exp(-1);
    const unlost = 60 * (1e6 / path.warmingAt(0));
    expect((1e6 - coldJoules) / (area + unlost)).toBeCloseTo(1, 1);
  });
});

describe('weighing a reading in', () => {
  const expected = expectation(boiling, path, hob);
  const noise = readingVariance(boiling, hob);
  const own = expected.variance - noise;

  it('scatters by what dials scatter by, and by a third of what this one is behind', () => {
    expect(readingVariance({ ...boiling, behindKelvin: 0 }, hob)).toBeCloseTo(0.65 ** 2, 12);
    expect(readingVariance({ ...boiling, behindKelvin: 3 }, hob)).toBeCloseTo(0.65 ** 2 + 0.99 ** 2, 12);
  });

  it('leaves the spread that two measures of one thing leave', () => {
    const after = weigh(boiling, expected.celsius, expectation(boiling, path, hob), path, hob);
    const left = expectation(after, path, hob).variance - noise;
    // The curve bends a little between the points.
    expect(left / ((own * noise) / (own + noise))).toBeCloseTo(1, 1);
    for (let row = 0; row < unknowns; row += 1) expect(variance(after, row)).toBeGreaterThan(0);
  });

  it('moves by its share of the difference; far off, as Student’s t with four degrees has it', () => {
    const moved = (off: number): number =>
      expectation(
        weigh(boiling, expected.celsius + off, expectation(boiling, path, hob), path, hob),
        path,
        hob,
      ).celsius - expected.celsius;
    const shareAt = (off: number): number => {
      const extra = noise * Math.max(0, (4 + off ** 2 / expected.variance) / 5 - 1);
      return own / (expected.variance + extra);
    };
    for (const off of [0.5, -0.5, 4, -4]) expect(moved(off) / (off * shareAt(off))).toBeCloseTo(1, 1);
  });

  it('widens only what it is asked to', () => {
    const wider = widen(boiling, 2, 1.5);
    expect(variance(wider, 2)).toBeCloseTo(variance(boiling, 2) + 1.5, 12);
    const changed = wider.covariance.filter((value, place) => value !== boiling.covariance[place]);
    expect(changed).toHaveLength(1);
    expect(wider.mean).toBe(boiling.mean);
  });
});

describe('weighing a cold-water test in', () => {
  const before = temperatureOf(boiling, path);

  it('narrows what is believed where it fits, and moves it where it does not', () => {
    const fits = testCold(boiling, 'dissolves', path, hob);
    const colder = temperatureOf(fits, path);
    expect(colder.celsius).toBeLessThanOrEqual(before.celsius);
    const higher = testCold(boiling, 'firm ball', path, hob);
    const after = temperatureOf(higher, path);
    expect(after.celsius).toBeGreaterThan(before.celsius);
    expect(after.sd).toBeLessThan(before.sd);
    // The syrup is hotter than the dial says: then the dial reads low.
    expect(higher.mean[dialBias] ?? 0).toBeLessThan(boiling.mean[dialBias] ?? 0);
    expect(variance(higher, dialBias)).toBeLessThan(variance(boiling, dialBias));
  });

  it('counts for less with each test of the same hands', () => {
    const shift = (tests: number): number => {
      const told = testCold({ ...boiling, coldWater: { tests, disagreed: 0 } }, 'firm ball', path, hob);
      return temperatureOf(told, path).celsius - before.celsius;
    };
    expect(shift(1)).toBeLessThan(shift(0));
    expect(shift(5)).toBeLessThan(shift(1));
    expect(shift(5)).toBeGreaterThan(0);
  });

  it('is counted, and held against the thermometer only where one was read', () => {
    expect(testCold(boiling, 'hard crack', path, hob).coldWater).toEqual({ tests: 1, disagreed: 1 });
    const fits = testCold(boiling, 'dissolves', path, hob);
    expect(testCold(fits, 'hard crack', path, hob).coldWater).toMatchObject({ tests: 2 });
    const unread = { ...boiling, acceptedReadings: 0 };
    expect(testCold(unread, 'hard crack', path, hob).coldWater).toEqual({ tests: 1, disagreed: 0 });
  });

  it('says where on the curve a boil is of which nothing was read; "dissolves" says only that it was tested', () => {
    const unseen = carryOn(begin(hob), 300, path, hob);
    const dissolved = testCold(unseen, 'dissolves', path, hob);
    expect(dissolved).toEqual({ ...unseen, coldWater: { tests: 1, disagreed: 0 } });
    const found = testCold(dissolved, 'hard ball', path, hob);
    expect(found).toMatchObject({ located: true, coldWater: { tests: 2, disagreed: 0 } });
    const { celsius, sd } = temperatureOf(found, path);
    const { stageFromCelsius: from } = hob;
    expect(celsius).toBeGreaterThan(from['hard ball'] - 2);
    expect(celsius).toBeLessThan(from['soft crack'] + 2);
    expect(sd).toBeGreaterThan(1);
    expect(sd).toBeLessThan(8);
  });
});
