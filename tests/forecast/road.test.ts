import { describe, expect, it } from 'vitest';
import { carryOn, runPot, standingOf, syrupCelsius, wattsAt } from '../../source/forecast/advance.js';
import { carryOver, carryOverNow } from '../../source/forecast/carry-over.js';
import {
  begin,
  curveBias,
  type Estimate,
  joulesDone,
  joulesToBoil,
  logWatts,
  unknowns,
} from '../../source/forecast/estimate.js';
import { crossing, crossingBy, type Hob, project } from '../../source/forecast/index.js';
import { pathOf } from '../../source/forecast/path.js';
import { solutionJoulePerGramKelvin } from '../../source/sugar/heat.js';
import { boilingCurve } from '../../source/sugar/syrup.js';
import { numberAt } from '../../source/units/at.js';
import { curve, estimateAfter, hob, plainBoil, target, waterGrams } from './hall.js';

const path = pathOf(curve, hob);
const boiling = estimateAfter(plainBoil);
const at = 820;
const start = hob.startSolidsFraction;

/**
 * The heat between two solids fractions, summed in small steps from the balance in every textbook of evaporation: what
 * leaves takes its heat of evaporation, and all that stays is warmed. Specific heats: sugar/heat.ts for the solution, 2
 * J/(g K) for fat and starch, 1.2 kg of steel at 0.5.
 */
const heatBetween = (from: number, to: number): number => {
  const steps = 4000;
  let joules = 0;
  for (let step = 0; step < steps; step += 1) {
    const [low, high] = [step, step + 1].map((one) => from + (one / steps) * (to - from)) as [number, number];
    const middle = (low + high) / 2;
    const leaves = curve.dissolvedGrams / low - curve.dissolvedGrams / high;
    const perKelvin =
      (curve.dissolvedGrams / middle) * solutionJoulePerGramKelvin(middle, curve.celsiusAt(middle)) +
      hob.otherGrams * 2 +
      600;
    joules +=
      leaves * curve.evaporationJoulePerGram(middle) +
      perKelvin * (curve.celsiusAt(high) - curve.celsiusAt(low));
  }
  return joules;
};

describe('the boiling curve as a road in heat', () => {
  it('begins where the batch as weighed boils, and ends with the curve', () => {
    expect(path.startCelsius).toBeCloseTo(curve.celsiusAt(start), 6);
    expect(path.joulesAt(path.startCelsius)).toBeCloseTo(0, 3);
    expect(path.highestCelsius).toBeCloseTo(curve.celsiusAt(curve.validSolidsFraction[1]), 6);
    expect(path.lowestJoules).toBeLessThan(0);
    // A third of the solids fraction: more water than anybody adds.
    expect(path.celsiusAt(path.lowestJoules)).toBeCloseTo(curve.celsiusAt(start / 3), 6);
  });

  it.each([0.86, 0.9, 0.93])('costs the heat that a balance finds up to %f solids', (solids) => {
    const joules = heatBetween(start, solids);
    expect(path.joulesAt(curve.celsiusAt(solids)) / joules).toBeCloseTo(1, 2);
    expect(path.celsiusAt(joules)).toBeCloseTo(curve.celsiusAt(solids), 0);
  });

  it.each([0.35, 0.5, 0.65])('and saves what was not boiled off yet at %f solids', (solids) => {
    const joules = -heatBetween(solids, start);
    expect(path.celsiusAt(joules)).toBeCloseTo(curve.celsiusAt(solids), 1);
  });

  it('warms all that is in the pot, and the pot', () => {
    const grams = curve.dissolvedGrams + waterGrams;
    const whole = grams * solutionJoulePerGramKelvin(start, path.startCelsius) + hob.otherGrams * 2 + 600;
    expect(path.warmingAt(0) / whole).toBeCloseTo(1, 6);
    // Less water, less to warm; beyond its ends it stays.
    expect(path.warmingAt(path.highestJoules)).toBeLessThan(path.warmingAt(0));
    expect(path.warmingAt(2 * path.highestJoules)).toBe(path.warmingAt(path.highestJoules));
    expect(path.warmingAt(2 * path.lowestJoules)).toBe(path.warmingAt(path.lowestJoules));
  });

  it('warms a gram of added water from 15 °C and boils it away', () => {
    expect(path.joulesPerWarmedGram).toBeCloseTo(4.2 * (path.startCelsius - 15), 6);
    expect(path.joulesPerAddedGram - path.joulesPerWarmedGram).toBeCloseTo(
      curve.evaporationJoulePerGram(start),
      6,
    );
  });

  it('leaves room to boil however thick the batch was weighed', () => {
    const [, driest] = curve.validSolidsFraction;
    const thick = pathOf(curve, { ...hob, startSolidsFraction: 0.9999 });
    expect(thick.startCelsius).toBeCloseTo(curve.celsiusAt(driest - 0.01), 6);
    expect(thick.highestCelsius).toBeGreaterThan(thick.startCelsius);
  });

  it('is laid out once for a batch and pot, again for another, and the last four are kept', () => {
    const batch = { sucroseGrams: 400, glucoseSolids: [], invertGrams: 0, saltGrams: 0, waterGrams: 200 };
    const fresh = boilingCurve({ ...batch, fatGrams: 0, inertGrams: 0 }, 85_000);
    const road = (more: Partial<Hob> = {}) => pathOf(fresh, { ...hob, ...more });
    const first = pathOf(fresh, hob);
    expect(road()).toBe(first);
    const others = [0.6, 0.61, 0.62].map((startSolidsFraction) => road({ startSolidsFraction }));
    expect(new Set([first, ...others]).size).toBe(4);
    expect(road()).toBe(first);
    expect(road({ otherGrams: 200 }).warmingAt(0)).toBeGreaterThan(first.warmingAt(0));
    expect(road({ startSolidsFraction: 0.62 })).toBe(others[2]);
    expect(road()).not.toBe(first);
    // Another batch has a road of its own on the same hob, and its own is found again.
    expect(pathOf(curve, hob).startCelsius).toBeCloseTo(path.startCelsius, 9);
    expect(pathOf(fresh, hob).startCelsius).toBeCloseTo(first.startCelsius, 9);
    expect(first.startCelsius).not.toBeCloseTo(path.startCelsius, 1);
  });
});

/** The moment at which this pot is at `celsius` when its heat is followed second by second. */
const followed = (estimate: Estimate, celsius: number, on: Hob = hob): number => {
  const bias = numberAt(estimate.mean, curveBias);
  let state = {
    joules: numberAt(estimate.mean, joulesDone),
    coldJoules: joulesToBoil(estimate),
    behindKelvin: 0,
  };
  for (let t = estimate.t; t < estimate.t + 6 * 3600; t += 1) {
    if (syrupCelsius(state, path) + bias >= celsius) return t;
    state = runPot(state, numberAt(estimate.mean, logWatts), standingOf(estimate, on), t, 1, path, 1);
  }
  return Number.POSITIVE_INFINITY;
};

describe('when the syrup will be there', () => {
  const turnedDown = estimateAfter([{ kind: 'heat', t: 825, level: 0.3 }], hob, boiling);
  const watered = estimateAfter([{ kind: 'water', t: 825, grams: 40 }], hob, boiling);
  const cold = estimateAfter(plainBoil.slice(0, 3));
  const pots: readonly (readonly [string, Estimate])[] = [
    ['a boiling pot', boiling],
    ['a pot just turned down', turnedDown],
    ['a pot that got water', watered],
    ['a pot that has not boiled yet', cold],
  ];

  it.each(pots)('is when the heat has gone in, followed second by second: %s', (_, estimate) => {
    for (const celsius of [112, 118, target.floorCelsius]) {
      const there = crossing(estimate, celsius, estimate.t, curve, hob) ?? 0;
      const way = followed(estimate, celsius) - estimate.t;
      expect(Math.abs(there - estimate.t - way) / Math.max(60, way)).toBeLessThan(0.04);
    }
  });

  it('is now where it has been already, but not before cold water has boiled again', () => {
    expect(crossing(boiling, 100, at, curve, hob)).toBe(at);
    const warm = crossing(watered, 100, watered.t, curve, hob) ?? 0;
    expect(warm).toBeGreaterThan(watered.t + 5);
    const boils = path.celsiusAt(numberAt(watered.mean, joulesDone)) + numberAt(watered.mean, curveBias);
    expect((warm - watered.t) / (followed(watered, boils - 0.01) - watered.t)).toBeCloseTo(1, 1);
  });

  it('is no time at all for what is no temperature, or no pot on the heat', () => {
    expect(crossing(boiling, Number.NaN, at, curve, hob)).toBeNull();
    expect(crossing({ ...boiling, potOn: false }, 115, at, curve, hob)).toBeNull();
    expect(crossing({ ...boiling, acceptedReadings: 1 }, 115, at, curve, hob)).toBeNull();
  });

  it.each(pots)('and whether it was is the same question asked afterwards: %s', (_, estimate) => {
    for (const celsius of [100, 109, 112, 118]) {
      const there = crossing(estimate, celsius, estimate.t, curve, hob) ?? 0;
      for (const past of [-30, -1, 0.01, 20, 400]) {
        const now = Math.max(estimate.t, there + past);
        const crossed = crossingBy(estimate, celsius, now, curve, hob);
        if (there <= now) expect(crossed).toBeCloseTo(crossing(estimate, celsius, now, curve, hob) ?? 0, 6);
        else expect(crossed).toBeNull();
      }
    }
    expect(crossingBy({ ...estimate, heating: false }, 100, 9000, curve, hob)).toBeNull();
  });

  it('is uncertain by how the burner wanders on the way', () => {
    const known = { ...boiling, covariance: boiling.covariance.map(() => 0) };
    const far = { ...target, floorCelsius: 126, takeOffCelsius: 126 };
    const { low = 0, typical = 0, high = 0 } = project(known, far, at, curve, hob)?.seconds ?? {};
    const before = (crossing(known, 125.8, at, curve, hob) ?? 0) - at;
    const after = (crossing(known, 126.2, at, curve, hob) ?? 0) - at;
    // 0.45 K that the model leaves out, and 7 % in a minute as a walk seen by its mean: a third of its variance.
    const sd = Math.hypot((0.45 * (after - before)) / 0.4 / typical, 0.07 * Math.sqrt(typical / 180));
    // Between the tenths lie 2 x 1.2816 spreads of a normal distribution.
    expect(Math.log(high / low) / (2 * 1.2816 * sd)).toBeGreaterThan(0.85);
    expect(Math.log(high / low) / (2 * 1.2816 * sd)).toBeLessThan(1.15);
  });

  it('is told for each target and hob, whichever was asked for before', () => {
    const nearer = { ...target, floorCelsius: 114, takeOffCelsius: 116 };
    const other = { ...hob, dialLagSeconds: 3 };
    const asked = [
      [target, hob],
      [nearer, hob],
      [target, other],
      [nearer, other],
      [target, hob],
    ] as const;
    for (const [aim, on] of asked)
      expect(project(boiling, aim, at, curve, on)).toEqual(project({ ...boiling }, aim, at, curve, on));
    expect(project(boiling, nearer, at, curve, hob)?.seconds.typical).toBeLessThan(
      project(boiling, target, at, curve, hob)?.seconds.typical ?? 0,
    );
    // Six hours on, a pot that hardly heats is given as that.
    const weak = boiling.mean.map((value, row) => (row === logWatts ? Math.log(45) : value));
    const slow = project({ ...boiling, mean: weak, change: null }, target, at, curve, hob);
    expect(slow?.seconds.high ?? 6 * 3600).toBeLessThanOrEqual(6 * 3600 * 1.5);
  });
});

describe('when to read next', () => {
  const asked = (estimate: Estimate, now: number, takeOffCelsius = target.takeOffCelsius) => {
    const seen = { ...estimate, lastReading: { t: now, celsius: 111 } };
    const told = project(seen, { ...target, takeOffCelsius }, now, curve, hob);
    if (told === null) throw new Error('nothing is projected');
    return told;
  };

  it('is a quarter of the least time to go, within 20 s and 5 min, a minute while little is known or it is near', () => {
    const near = asked(boiling, at);
    // 2 K below the take-off is near: a minute at most.
    expect(near.nextReadingSeconds).toBeCloseTo(Math.max(20, Math.min(60, near.takeOffSeconds.low / 4)), 6);
    const weak = {
      ...boiling,
      mean: boiling.mean.map((value, row) => (row === logWatts ? Math.log(125) : value)),
      change: null,
      covariance: boiling.covariance.map(() => 0),
    };
    const far = asked(weak, at, 125);
    expect(far.takeOffSeconds.low / 4).toBeGreaterThan(300);
    expect(far.nextReadingSeconds).toBe(300);
    expect(asked({ ...weak, acceptedReadings: 4 }, at, 125).nextReadingSeconds).toBe(300);
    expect(asked({ ...weak, acceptedReadings: 3 }, at, 125).nextReadingSeconds).toBe(60);
    const celsius = path.celsiusAt(numberAt(weak.mean, joulesDone)) + numberAt(weak.mean, curveBias);
    expect(asked(weak, at, celsius + 7.9).nextReadingSeconds).toBeLessThanOrEqual(60);
    expect(asked(weak, at, celsius + 8.1).nextReadingSeconds).toBeGreaterThan(60);
  });

  it('is ten seconds in the last minute, and what was waited already is taken off', () => {
    const left = asked(boiling, at).takeOffSeconds.typical;
    expect(asked(boiling, at + left - 59).nextReadingSeconds).toBe(10);
    expect(asked(boiling, at + left - 62).nextReadingSeconds).toBe(20);
    const unread = project({ ...boiling, lastReading: null }, target, at, curve, hob);
    expect(unread?.nextReadingSeconds).toBeCloseTo(asked(boiling, at).nextReadingSeconds, 6);
    const waited = { ...boiling, lastReading: { t: at - 15, celsius: 111 } };
    expect(project(waited, target, at, curve, hob)?.nextReadingSeconds).toBeCloseTo(
      asked(boiling, at).nextReadingSeconds - 15,
      6,
    );
  });

  it('goes with what the pot will climb: what earlier cooks climbed, or the base of this stove', () => {
    const taught = { ...hob, learnedCarryOverKelvin: 1.1 };
    expect(project(boiling, target, at, curve, taught)?.carryOverKelvin).toBe(1.1);
    const told = asked(boiling, at);
    const bias = numberAt(boiling.mean, curveBias);
    const { offTheRingKelvin } = carryOver({
      stove: 'coil',
      watts: told.watts,
      celsius: target.takeOffCelsius - bias,
      curve,
      otherGrams: hob.otherGrams,
    });
    expect(told.carryOverKelvin / offTheRingKelvin).toBeCloseTo(1, 1);
    // Heat done over the whole to the floor of the window.
    const whole = path.joulesAt(target.floorCelsius - bias);
    expect(told.boilShare).toBeCloseTo(numberAt(boiling.mean, joulesDone) / whole, 6);
  });

  it('is not asked of a pot that gives off more than it gets, nor when it is there of one that takes six hours', () => {
    const power = (watts: number): Estimate => ({
      ...boiling,
      mean: boiling.mean.map((value, row) => (row === logWatts ? Math.log(watts) : value)),
      change: null,
    });
    expect(project(power(5), target, at, curve, hob)).toBeNull();
    // Told by what the burner will give, not by what has arrived: no forecast comes or goes by time alone.
    const arriving = { ...boiling, change: { t: at, watts: 0 } };
    for (const later of [0, 1, 60, 600])
      expect(project(arriving, target, at + later, curve, hob), `${later}`).not.toBeNull();
    expect(project(arriving, target, at, curve, hob)?.watts).toBe(1);
    expect(project(arriving, target, at, curve, hob)?.seconds.typical).toBeGreaterThan(
      30 + (project({ ...boiling, change: null }, target, at, curve, hob)?.seconds.typical ?? 0),
    );
    const glowing = { ...power(5), change: { t: at, watts: 800 } };
    for (const later of [0, 1, 60, 600]) expect(project(glowing, target, at + later, curve, hob)).toBeNull();
    expect(crossing(power(14), target.floorCelsius, at, curve, hob)).toBeNull();
    expect(crossing(power(800), target.floorCelsius, at, curve, hob)).not.toBeNull();
  });
});

describe('what the pot climbs off the ring', () => {
  const asked = { stove: 'coil', watts: 600, celsius: 118, curve } as const;
  const usual = carryOver(asked);

  it('by its own base, and on a ring left hot by more', () => {
    expect(usual.offTheRingKelvin).toBeGreaterThan(0.3);
    expect(usual.leftOnTheRingKelvin).toBeGreaterThan(usual.offTheRingKelvin);
    expect(carryOver({ ...asked, watts: 1200 }).offTheRingKelvin).toBeGreaterThan(
      1.7 * usual.offTheRingKelvin,
    );
    expect(carryOver({ ...asked, otherGrams: 900 }).offTheRingKelvin).toBeLessThan(usual.offTheRingKelvin);
  });

  it('is what earlier cooks climbed, where that is known, and the ring in proportion', () => {
    const learned = carryOver({ ...asked, learnedKelvin: 2 });
    expect(learned.offTheRingKelvin).toBe(2);
    expect(learned.leftOnTheRingKelvin / 2).toBeCloseTo(
      usual.leftOnTheRingKelvin / usual.offTheRingKelvin,
      9,
    );
    expect(carryOver({ ...asked, learnedKelvin: 0 })).toEqual({
      offTheRingKelvin: 0,
      leftOnTheRingKelvin: 0,
    });
    for (const none of [null, -1, Number.NaN])
      expect(carryOver({ ...asked, learnedKelvin: none })).toEqual(usual);
    expect(carryOver({ ...asked, watts: 0, learnedKelvin: 2 })).toEqual({
      offTheRingKelvin: 0,
      leftOnTheRingKelvin: 0,
    });
  });

  it('now, by the power that goes in now', () => {
    const watts = wattsAt(standingOf(boiling, hob), numberAt(boiling.mean, logWatts), at, 118, path);
    const now = carryOverNow(boiling, 118, curve, hob) ?? 0;
    expect(now / carryOver({ ...asked, watts, otherGrams: hob.otherGrams }).offTheRingKelvin).toBeCloseTo(
      1,
      1,
    );
    expect(carryOverNow(boiling, 118, curve, { ...hob, learnedCarryOverKelvin: 1.4 })).toBe(1.4);
    expect(carryOverNow(begin(hob), 118, curve, { ...hob, learnedCarryOverKelvin: 0 })).toBe(0);
    expect(carryOverNow({ ...boiling, acceptedReadings: 2 }, 118, curve, hob)).toBe(now);
  });

  it('is not known of a pot that is off, covered, unheated, not found or hardly read', () => {
    const weak = boiling.mean.map((value, row) => (row === logWatts ? 0 : value));
    for (const less of [
      { potOn: false },
      { heating: false },
      { located: false },
      { lidOn: true },
      { acceptedReadings: 1 },
      { mean: weak },
    ])
      expect(carryOverNow({ ...boiling, ...less }, 118, curve, hob), JSON.stringify(less)).toBeNull();
  });
});

describe('time without news', () => {
  it('adds nothing to a pot that nobody heats, and spread to one that is heated', () => {
    const cold = carryOn(begin(hob), 600, path, hob);
    expect(cold.mean).toEqual(begin(hob).mean);
    const later = carryOn(boiling, at + 120, path, hob);
    const power = logWatts * unknowns + logWatts;
    expect(numberAt(later.covariance, power) - numberAt(boiling.covariance, power)).toBeCloseTo(
      2 * 0.07 ** 2,
      6,
    );
  });
});
