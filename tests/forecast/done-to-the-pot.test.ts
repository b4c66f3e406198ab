import { describe, expect, it } from 'vitest';
import { addWater, cover, movePot, turn } from '../../source/forecast/acts.js';
import { runPot, standingOf, steamWatts, wattsAt } from '../../source/forecast/advance.js';
import { outcomeLikelihood } from '../../source/forecast/cold-water.js';
import {
  begin,
  dialBias,
  type Estimate,
  joulesDone,
  logWatts,
  unknowns,
} from '../../source/forecast/estimate.js';
import { expectation, readingSdOf, weigh } from '../../source/forecast/expectation.js';
import { surprise } from '../../source/forecast/index.js';
import { knownPowers } from '../../source/forecast/known-powers.js';
import { normalBelow, normalQuantile, quantile, root } from '../../source/forecast/numbers.js';
import { pathOf } from '../../source/forecast/path.js';
import { defaultKitchen } from '../../source/kitchen/default.js';
import type { StoveKind } from '../../source/kitchen/kitchen.js';
import { shareOfFull, stoveTraits } from '../../source/kitchen/stove.js';
import { curve, estimateAfter, hob, plainBoil } from './hall.js';

const path = pathOf(curve, hob);
const boiling = estimateAfter(plainBoil);
const at = 820;
const gas = { ...hob, stove: 'gas' as StoveKind };

const settledWatts = ({ mean }: Estimate): number => Math.exp(mean[logWatts] ?? Number.NaN);
const spread = ({ covariance }: Estimate): number =>
  Math.sqrt(covariance[logWatts * unknowns + logWatts] ?? 0);
const heatDone = ({ mean }: Estimate): number => mean[joulesDone] ?? Number.NaN;
/** Watts into the pot at a moment, at the temperature where the boil began. */
const wattsThen = (estimate: Estimate, t: number, on = hob): number =>
  wattsAt(standingOf(estimate, on), estimate.mean[logWatts] ?? 0, t, path.startCelsius, path);

describe('the knob', () => {
  it('on a cold coil gives the share of full power that the setting stands for, with much doubt, and later', () => {
    const turned = turn(begin(hob), 30, 0.5, path, hob);
    expect(settledWatts(turned)).toBeCloseTo(shareOfFull(0.5) * stoveTraits.coil.fullWatts, 6);
    expect(spread(turned)).toBeCloseTo(0.5, 9);
    expect(wattsThen(turned, 30)).toBeCloseTo(0, 6);
    // After one lag two thirds have arrived.
    expect(wattsThen(turned, 90) / settledWatts(turned)).toBeCloseTo(1 - Math.exp(-1), 6);
    expect(turned).toMatchObject({ heating: true, level: 0.5, change: { t: 30, watts: 0 } });
  });

  it('turned down takes the power down by the ratio of the shares, doubted by a quarter more', () => {
    const turned = turn(boiling, at, 0.4, path, hob);
    expect(settledWatts(turned) / settledWatts(boiling)).toBeCloseTo(shareOfFull(0.4) / shareOfFull(1), 9);
    expect(spread(turned) ** 2 - spread(boiling) ** 2).toBeCloseTo(0.25 ** 2, 9);
    // At first the pot has what it had.
    expect(wattsThen(turned, at)).toBeCloseTo(wattsThen(boiling, at), 6);
    // What was believed of the old power says nothing of curve and dial any more.
    for (const row of [0, 2, 3]) {
      expect(turned.covariance[row * unknowns + logWatts]).toBe(0);
      expect(turned.covariance[logWatts * unknowns + row]).toBe(0);
      expect(turned.covariance[row * unknowns + row]).toBe(boiling.covariance[row * unknowns + row]);
    }
  });

  it('turned to where it stands changes nothing', () => {
    expect(turn(boiling, at, 1, path, hob)).toBe(boiling);
  });

  it('turned to where nobody knows keeps the power, with more doubt', () => {
    for (const level of [null, Number.NaN]) {
      const turned = turn(boiling, at, level, path, hob);
      expect(settledWatts(turned)).toBeCloseTo(settledWatts(boiling), 9);
      expect(spread(turned)).toBeGreaterThan(spread(boiling));
      expect(turned).toMatchObject({ level: null, heating: true });
    }
    const from = turn(turn(boiling, at, null, path, hob), at, 0.5, path, hob);
    expect(settledWatts(from)).toBeCloseTo(settledWatts(boiling), 9);
  });

  it('off heats no more, and keeps what was known of the setting', () => {
    const off = turn(boiling, at, 0, path, hob);
    expect(off).toMatchObject({
      heating: false,
      level: 0,
      mean: boiling.mean,
      covariance: boiling.covariance,
    });
    expect(off.knownLevels).toEqual([{ level: 1, logWatts: boiling.mean[logWatts], sd: spread(boiling) }]);
    // What the glowing ring still gives dies down, and then the pot cools.
    expect(wattsThen(off, at + 60)).toBeLessThan(0.4 * wattsThen(boiling, at));
    expect(wattsThen(off, at + 3600)).toBeLessThan(0);
    const again = turn(off, at + 60, 1, path, hob);
    expect(settledWatts(again)).toBeCloseTo(settledWatts(boiling), 9);
    expect(spread(again)).toBeCloseTo(Math.hypot(spread(boiling), 0.1), 9);
    expect(turn(off, at + 60, 0.5, path, hob).knownLevels).toHaveLength(1);
  });

  it('remembers each setting once, the latest last, twenty at most', () => {
    let estimate = boiling;
    for (let turns = 1; turns <= 60; turns += 1)
      estimate = turn(estimate, at + turns, 0.2 + (turns % 25) / 50, path, hob);
    const levels = estimate.knownLevels.map(({ level }) => level);
    expect(levels).toHaveLength(20);
    expect(new Set(levels).size).toBe(20);
    expect(levels.at(-1)).toBeCloseTo(0.2 + (59 % 25) / 50, 9);
  });

  it('beyond its end is at its end', () => {
    expect(turn(begin(hob), 0, 3, path, hob).level).toBe(1);
    expect(turn(boiling, at, -1, path, hob).heating).toBe(false);
  });
});

describe('the pot', () => {
  it('taken off boils on by what its base holds, and comes back with a cold base', () => {
    const off = movePot(boiling, at, false, path, gas);
    const watts = wattsAt(
      standingOf(boiling, gas),
      boiling.mean[logWatts] ?? 0,
      at,
      path.celsiusAt(heatDone(boiling)),
      path,
    );
    const base = watts * stoveTraits.gas.baseSeconds;
    expect(heatDone(off) - heatDone(boiling)).toBeCloseTo(base, 3);
    expect(off).toMatchObject({ potOn: false, moved: { t: at } });
    const back = movePot(off, at + 40, true, path, gas);
    expect(back).toMatchObject({
      potOn: true,
      moved: null,
      unsettledUntil: at + 100,
      change: boiling.change,
    });
    expect(back.coldJoules).toBeCloseTo(base, 3);
    expect(movePot(boiling, at, true, path, gas)).toBe(boiling);
    expect(movePot(off, at + 9, false, path, gas)).toBe(off);
  });

  it('back on a coil that went on glowing is given more for a while: the longer it was away, half more at most', () => {
    const off = movePot(boiling, at, false, path, hob);
    const glow = (away: number): number => {
      const back = movePot(off, at + away, true, path, hob);
      return wattsThen(back, at + away) / settledWatts(back);
    };
    expect(glow(30)).toBeCloseTo(1.5, 2);
    expect(glow(300)).toBeCloseTo(2.5, 2);
    // Nothing glows under a knob that is off.
    const cold = turn(off, at + 1, 0, path, hob);
    expect(movePot(cold, at + 60, true, path, hob).change).toEqual(cold.change);
  });

  it('that does not boil yet boils nothing off on its way', () => {
    const warming = estimateAfter(plainBoil.slice(0, 2));
    const off = movePot(warming, 240, false, path, hob);
    expect(heatDone(off)).toBe(heatDone(warming));
    expect(off.moved).toEqual({ t: 240, watts: 0 });
    const covered = movePot({ ...boiling, lidOn: true }, at, false, path, hob);
    expect(heatDone(covered)).toBe(heatDone(boiling));
  });

  it('under a lid is heard again a minute after the lid is off', () => {
    const covered = cover(boiling, at, true);
    expect(covered).toMatchObject({ lidOn: true, unsettledUntil: boiling.unsettledUntil });
    expect(cover(covered, at + 30, true)).toBe(covered);
    expect(cover(covered, at + 90, false)).toMatchObject({ lidOn: false, unsettledUntil: at + 150 });
  });

  it('given water has to warm and boil away as much again', () => {
    const watered = addWater(boiling, at, 40, path);
    const cost = heatDone(boiling) - heatDone(watered);
    expect(cost / 40).toBeCloseTo(path.joulesPerAddedGram - path.joulesPerWarmedGram, 6);
    expect(watered.coldJoules).toBeCloseTo((boiling.coldJoules ?? 0) + 40 * path.joulesPerWarmedGram, 6);
    expect(watered.unsettledUntil).toBe(at + 60);
    // Water of 15 °C to where this batch boils, at 4.2 J/(g K).
    expect(path.joulesPerWarmedGram).toBeCloseTo(4.2 * (path.startCelsius - 15), 6);
    for (const none of [0, -5, Number.NaN]) expect(addWater(boiling, at, none, path)).toBe(boiling);
    const drowned = addWater(boiling, at, 1e9, path);
    expect(heatDone(drowned)).toBe(path.lowestJoules);
    expect(drowned.coldJoules).toBe(20_000 * path.joulesPerWarmedGram + (boiling.coldJoules ?? 0));
    expect(addWater({ ...boiling, unsettledUntil: 2000 }, at, 5, path).unsettledUntil).toBe(2000);
  });
});

describe('heat and losses', () => {
  it('on a trivet loses 2 W for each kelvin over the room, on the ring 1 W for each above the start of the boil', () => {
    const off = standingOf({ ...boiling, potOn: false }, hob);
    expect(wattsAt(off, 6, at, 100, path)).toBe(-2 * 80);
    expect(wattsAt(off, 6, at, 10, path)).toBeCloseTo(0, 12);
    const on = standingOf({ ...boiling, change: null }, hob);
    const gained = (celsius: number): number => wattsAt(on, Math.log(500), at, celsius, path);
    expect(gained(path.startCelsius)).toBeCloseTo(500, 6);
    expect(gained(path.startCelsius + 20)).toBeCloseTo(480, 6);
    const cooling = standingOf({ ...boiling, heating: false, change: null }, hob);
    expect(wattsAt(cooling, 6, at, path.startCelsius, path)).toBeCloseTo(-(path.startCelsius - 20), 6);
  });

  it('steams 70 W at the boil and a third of it 24 K below; not once it boils', () => {
    expect(steamWatts(0)).toBe(0);
    expect(steamWatts(1e-9)).toBeCloseTo(70, 3);
    expect(steamWatts(24) / 70).toBeCloseTo(Math.exp(-1), 9);
  });

  it('brings what was put in: joules over a minute, into warming first and then along the curve', () => {
    const standing = { potOn: true, lidOn: false, heating: true, change: null, lagSeconds: 60 };
    const start = { joules: 1000, coldJoules: 0, behindKelvin: 0 };
    const after = runPot(start, Math.log(500), standing, 0, 60, path, 12);
    const loss = path.celsiusAt(start.joules) - path.startCelsius;
    expect(after.joules - start.joules).toBeCloseTo(60 * (500 - loss), -2);
    expect(after.coldJoules).toBe(0);
    const cold = runPot({ ...start, coldJoules: 20_000 }, Math.log(500), standing, 0, 20, path, 12);
    expect(cold.joules).toBe(1000);
    expect(cold.coldJoules).toBeLessThan(20_000 - 20 * 420);
    expect(cold.coldJoules).toBeGreaterThan(20_000 - 20 * 520);
    // A dial of 12 s is behind a steady rise by that rise's 12 seconds.
    const steady = runPot({ ...start, coldJoules: 200_000 }, Math.log(500), standing, 0, 120, path, 12);
    const perSecond = (200_000 - steady.coldJoules) / path.warmingAt(1000) / 120;
    expect(steady.behindKelvin / (12 * perSecond)).toBeCloseTo(1, 1);
    // Under a lid nothing is boiled away.
    expect(runPot(start, Math.log(500), { ...standing, lidOn: true }, 0, 60, path, 12).joules).toBe(1000);
  });
});

describe('a reading', () => {
  it('is expected where the syrup is, less what the dial is behind, and with what the dial is off', () => {
    const { celsius, variance } = expectation(boiling, path, hob);
    const off = { ...boiling, behindKelvin: boiling.behindKelvin + 2 };
    expect(expectation(off, path, hob).celsius).toBeCloseTo(celsius - 2, 9);
    const mean = boiling.mean.map((value, row) => (row === dialBias ? value + 3 : value));
    expect(expectation({ ...boiling, mean }, path, hob).celsius).toBeCloseTo(celsius + 3, 6);
    expect(variance).toBeGreaterThan(readingSdOf(hob) ** 2);
  });

  it('as expected moves nothing and narrows; higher than expected moves the belief up, by less than the difference', () => {
    const { celsius } = expectation(boiling, path, hob);
    const same = weigh(boiling, celsius, expectation(boiling, path, hob), path, hob);
    same.mean.forEach((value, row) => {
      expect(value).toBeCloseTo(boiling.mean[row] ?? Number.NaN, 6);
    });
    for (const row of [0, 2, 3]) {
      const place = row * unknowns + row;
      expect(same.covariance[place]).toBeLessThanOrEqual((boiling.covariance[place] ?? 0) + 1e-9);
    }
    const shown = (reading: number): number =>
      expectation(weigh(boiling, reading, expectation(boiling, path, hob), path, hob), path, hob).celsius;
    expect(shown(celsius + 1)).toBeGreaterThan(celsius + 0.05);
    expect(shown(celsius + 1)).toBeLessThan(celsius + 1);
    expect(shown(celsius - 1)).toBeLessThan(celsius - 0.05);
    // Far off counts for less than in proportion.
    expect(shown(celsius + 12) - celsius).toBeLessThan(12 * (shown(celsius + 1) - celsius));
  });

  it('scatters by 0.65 K where nobody said otherwise, within what a dial can', () => {
    expect(readingSdOf(hob)).toBe(0.65);
    expect(readingSdOf({ ...hob, readingSdKelvin: 0.3 })).toBe(0.3);
    expect(readingSdOf({ ...hob, readingSdKelvin: 0 })).toBe(0.05);
    expect(readingSdOf({ ...hob, readingSdKelvin: 99 })).toBe(10);
  });

  it('surprises nobody where nothing is expected', () => {
    const reading = { t: at + 10, celsius: 130 };
    expect(surprise(boiling, reading, curve, hob)).toBeGreaterThan(3.5);
    for (const silent of [
      { ...boiling, potOn: false },
      { ...boiling, lidOn: true },
      { ...boiling, located: false },
      { ...boiling, unsettledUntil: at + 11 },
      { ...boiling, coldJoules: 1e6 },
    ])
      expect(surprise(silent, reading, curve, hob)).toBeNull();
    expect(surprise({ ...boiling, unsettledUntil: at + 10 }, reading, curve, hob)).not.toBeNull();
  });
});

describe('a cold-water test', () => {
  const { stageFromCelsius: from } = hob;
  const chance = outcomeLikelihood('firm ball', hob);

  it('is likeliest in the middle of its stage, half as likely at its edge, and never impossible', () => {
    const middle = (from['firm ball'] + from['hard ball']) / 2;
    expect(chance(middle)).toBeGreaterThan(chance(from['firm ball']));
    expect(chance(from['firm ball'])).toBeGreaterThan(0.4);
    expect(chance(from['firm ball'])).toBeLessThan(0.55);
    expect(chance(60)).toBeCloseTo(0.002, 6);
    expect(chance(middle)).toBeLessThanOrEqual(1);
  });

  it('of a hard crack holds for what is past it too, and "dissolves" for all that is thinner', () => {
    expect(outcomeLikelihood('hard crack', hob)(from['past hard crack'] + 20)).toBeGreaterThan(0.99);
    expect(outcomeLikelihood('dissolves', hob)(20)).toBeGreaterThan(0.99);
    expect(outcomeLikelihood('soft crack', hob)(from['past hard crack'] + 20)).toBeLessThan(0.01);
  });
});

describe('what earlier cooks taught of the knob', () => {
  const kitchen = { ...defaultKitchen, stove: 'gas' as const, heat: ['low', 'medium', 'high'] };
  const taught = (watts: Readonly<Record<string, { value: number; sd: number }>>) =>
    knownPowers({ ...kitchen, learned: { watts } } as unknown as typeof kitchen);

  it('is as it was seen, and for the other settings in proportion, with the doubt of a label', () => {
    const powers = taught({ medium: { value: 600, sd: 0.1 } });
    expect(powers.map(({ level }) => level)).toEqual([1 / 3, 2 / 3, 1]);
    expect(powers[1]).toEqual({ level: 2 / 3, watts: 600, sd: 0.1 });
    expect(powers[0]?.watts).toBeCloseTo((600 * shareOfFull(1 / 3)) / shareOfFull(2 / 3), 9);
    expect(powers[2]?.watts).toBeCloseTo((600 * shareOfFull(1)) / shareOfFull(2 / 3), 9);
    expect(powers[2]?.sd).toBeCloseTo(Math.hypot(0.1, 0.25), 12);
  });

  it('comes from the nearest setting that was used', () => {
    const powers = taught({ low: { value: 200, sd: 0.1 }, high: { value: 900, sd: 0.2 } });
    expect(powers[0]).toEqual({ level: 1 / 3, watts: 200, sd: 0.1 });
    expect(powers[2]).toEqual({ level: 1, watts: 900, sd: 0.2 });
    expect(taught({ high: { value: 900, sd: 0.2 } })[0]?.watts).toBeCloseTo(900 * shareOfFull(1 / 3), 9);
  });

  it('is nothing where nothing can be made of it', () => {
    expect(knownPowers(kitchen)).toEqual([]);
    expect(taught({})).toEqual([]);
    expect(taught({ off: { value: 300, sd: 0.1 } })).toEqual([]);
    expect(taught({ roaring: { value: 300, sd: 0.1 } })).toEqual([]);
    expect(taught({ high: { value: 0, sd: 0.1 } })).toEqual([]);
  });

  it('is believed at once when the knob is turned there', () => {
    const on = { ...hob, knownPowers: taught({ medium: { value: 640, sd: 0.1 } }) };
    const turned = turn(begin(on), 0, 2 / 3, path, on);
    expect(settledWatts(turned)).toBeCloseTo(640, 6);
    expect(spread(turned)).toBeCloseTo(Math.hypot(0.1, 0.1), 9);
  });
});

describe('numbers', () => {
  it.each([
    [0, 0.5],
    [1, 0.8413447],
    [-1, 0.1586553],
    [1.2815516, 0.9],
    [1.959964, 0.975],
    [9, 1],
  ])('share of the normal distribution below %f: %f (Abramowitz & Stegun, table 26.1)', (z, share) => {
    expect(normalBelow(z)).toBeCloseTo(share, 6);
    if (z < 8) expect(normalQuantile(share)).toBeCloseTo(z, 4);
  });

  it('quantiles lie half way between neighbours, and at the ends beyond them', () => {
    expect(quantile([1, 2, 3, 4], 0.5)).toBe(2.5);
    expect(quantile([1, 2, 3, 4], 0.125)).toBe(1);
    expect(quantile([1, 2, 3, 4], 0.25)).toBe(1.5);
    expect([quantile([1, 2, 3, 4], 0), quantile([1, 2, 3, 4], 1)]).toEqual([1, 4]);
  });

  it('a root times itself is the matrix', () => {
    const lower = root([4, 2, 2, 10], 2);
    expect(lower).toEqual([2, 0, 1, 3]);
    expect(root([0, 0, 0, 9], 2)).toEqual([0, 0, 0, 3]);
  });
});
