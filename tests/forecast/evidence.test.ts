import { describe, expect, it } from 'vitest';
import {
  believe,
  crossing,
  type Estimate,
  type Evidence,
  project,
  surprise,
} from '../../source/forecast/index.js';
import { curve, estimateAfter, hob, plainBoil, target } from './hall.js';

const boiling = estimateAfter(plainBoil);
const boilShare = (estimate: Estimate, now: number): number =>
  project(estimate, target, now, curve, hob)?.boilShare ?? Number.NaN;
const seconds = (estimate: Estimate, now: number): number =>
  project(estimate, target, now, curve, hob)?.seconds.typical ?? Number.NaN;

describe('a plain boil', () => {
  it('says nothing of time before two readings were taken', () => {
    expect(project(estimateAfter(plainBoil.slice(0, 2)), target, 240, curve, hob)).toBeNull();
    expect(project(estimateAfter(plainBoil.slice(0, 3)), target, 420, curve, hob)).not.toBeNull();
  });

  it('has a bar that moves on evenly, while the temperature crawls first and then runs', () => {
    const shares = [520, 580, 640, 700, 760, 820].map((t) =>
      boilShare(estimateAfter(plainBoil.filter((seen) => seen.t <= t)), t),
    );
    const steps = shares.slice(1).map((share, index) => share - (shares[index] ?? 0));
    for (const step of steps) expect(step).toBeGreaterThan(0.04);
    for (const step of steps) expect(step).toBeLessThan(0.2);
    expect(boilShare(estimateAfter(plainBoil.slice(0, 3)), 430)).toBeLessThan(0.08);
  });

  it('counts the seconds down as they pass, and narrows towards the end', () => {
    expect(seconds(boiling, 820) - seconds(boiling, 850)).toBeCloseTo(30, 6);
    const early = project(estimateAfter(plainBoil.slice(0, 5)), target, 580, curve, hob)?.seconds;
    const late = project(boiling, target, 820, curve, hob)?.seconds;
    expect((late?.high ?? 0) - (late?.low ?? 0)).toBeLessThan((early?.high ?? 0) - (early?.low ?? 0));
  });

  it('ends at 0 and stays there', () => {
    const past = project(boiling, target, 3000, curve, hob);
    expect(past?.seconds).toEqual({ low: 0, typical: 0, high: 0 });
    expect(past?.boilShare).toBe(1);
  });

  it('says when the syrup will cross a temperature, in line with the time to the window', () => {
    const when = crossing(boiling, target.floorCelsius, 820, curve, hob) ?? 0;
    expect(Math.abs(when - 820 - seconds(boiling, 820))).toBeLessThan(0.1 * seconds(boiling, 820));
    const sooner = crossing(boiling, target.floorCelsius - 8, 820, curve, hob) ?? 0;
    expect(sooner).toBeLessThan(when);
    const then = believe(boiling, target, when, curve, hob)?.celsius ?? 0;
    expect(Math.abs(then - target.floorCelsius)).toBeLessThan(0.5);
  });

  it('asks for readings more often as the window nears, and then to stay with the pot', () => {
    const asked = (now: number): number => {
      const seen: Estimate = { ...boiling, lastReading: { t: now, celsius: 111 } };
      return project(seen, target, now, curve, hob)?.nextReadingSeconds ?? Number.NaN;
    };
    const left = seconds(boiling, 820);
    expect(asked(820)).toBeGreaterThanOrEqual(20);
    expect(asked(820)).toBeLessThanOrEqual(300);
    expect(asked(820 + left - 40)).toBeLessThanOrEqual(10);
    expect(project(boiling, target, 825, curve, hob)?.nextReadingSeconds).toBeCloseTo(asked(820) - 5, 0);
  });
});

describe('readings that say nothing of the water left', () => {
  const idle: ReadonlyArray<readonly [string, readonly Evidence[]]> = [
    [
      'with the pot off the ring',
      [
        { kind: 'pot', t: 825, on: false },
        { kind: 'reading', t: 850, celsius: 109 },
        { kind: 'reading', t: 880, celsius: 106.5 },
      ],
    ],
    [
      'within a minute of its return',
      [
        { kind: 'pot', t: 825, on: false },
        { kind: 'pot', t: 880, on: true },
        { kind: 'reading', t: 900, celsius: 107 },
        { kind: 'reading', t: 930, celsius: 108 },
      ],
    ],
    [
      'under a lid',
      [
        { kind: 'lid', t: 825, on: true },
        { kind: 'reading', t: 850, celsius: 104 },
        { kind: 'reading', t: 900, celsius: 103 },
      ],
    ],
  ];
  it.each(idle)('%s never move progress back', (_, evidence) => {
    const before = boilShare(boiling, 825);
    const back = estimateAfter(
      [...evidence, { kind: 'pot', t: 935, on: true }, { kind: 'lid', t: 935, on: false }],
      hob,
      boiling,
    );
    expect(boilShare(back, 935)).toBeGreaterThanOrEqual(before - 0.005);
  });

  it('stand still under a lid', () => {
    const covered = estimateAfter([{ kind: 'lid', t: 825, on: true }], hob, boiling);
    expect(boilShare(covered, 1000)).toBeCloseTo(boilShare(covered, 830), 6);
    expect(Math.abs(seconds(covered, 1000) - seconds(covered, 830))).toBeLessThan(5);
  });

  it('before the boil leave the whole boil to be done', () => {
    const cold = estimateAfter(plainBoil.slice(0, 3));
    expect(boilShare(estimateAfter([{ kind: 'reading', t: 425, celsius: 97 }], hob, cold), 425)).toBeLessThan(
      0.02,
    );
  });
});

describe('what is done to the pot', () => {
  it('water costs the time to boil it away again', () => {
    const watered = estimateAfter([{ kind: 'water', t: 825, grams: 50 }], hob, boiling);
    const watts = project(boiling, target, 825, curve, hob)?.watts ?? 1;
    const cost = seconds(watered, 825) - seconds(boiling, 825);
    expect(cost).toBeGreaterThan((50 * 2250) / watts);
    expect(cost).toBeLessThan((50 * 2900) / watts);
    expect(boilShare(watered, 825)).toBeLessThan(boilShare(boiling, 825) - 0.15);
  });

  it('no forecast with the burner off or the pot on its trivet', () => {
    expect(
      project(estimateAfter([{ kind: 'heat', t: 825, level: 0 }], hob, boiling), target, 830, curve, hob),
    ).toBeNull();
    expect(
      project(estimateAfter([{ kind: 'pot', t: 825, on: false }], hob, boiling), target, 830, curve, hob),
    ).toBeNull();
  });

  it('a lower burner takes longer, arrives late on a coil, and is less certain', () => {
    const lower = estimateAfter([{ kind: 'heat', t: 825, level: 0.5 }], hob, boiling);
    const watts = (now: number): number => project(lower, target, now, curve, hob)?.watts ?? 0;
    const before = project(boiling, target, 825, curve, hob)?.watts ?? 0;
    expect(watts(826)).toBeGreaterThan(0.95 * before);
    expect(watts(1000)).toBeLessThan(0.8 * before);
    expect(seconds(lower, 825)).toBeGreaterThan(1.15 * seconds(boiling, 825));
    const spread = (estimate: Estimate): number => {
      const ahead = project(estimate, target, 825, curve, hob)?.seconds;
      return ((ahead?.high ?? 0) - (ahead?.low ?? 0)) / (ahead?.typical ?? 1);
    };
    expect(spread(lower)).toBeGreaterThan(spread(boiling));
  });

  it('a setting that was seen before comes back with the power it had', () => {
    const there = estimateAfter(
      [
        { kind: 'heat', t: 825, level: 0.5 },
        { kind: 'heat', t: 826, level: 1 },
      ],
      hob,
      boiling,
    );
    const settled = project(there, target, 1000, curve, hob)?.watts ?? 0;
    const never = project(boiling, target, 1000, curve, hob)?.watts ?? 1;
    expect(settled / never).toBeCloseTo(1, 1);
  });
});

describe('improbable readings', () => {
  it('one alone, 8 K off, is left out', () => {
    for (const celsius of [104, 120]) {
      expect(Math.abs(surprise(boiling, { t: 840, celsius }, curve, hob) ?? 0)).toBeGreaterThan(3.5);
      const strayed = estimateAfter([{ kind: 'reading', t: 840, celsius }], hob, boiling);
      expect(seconds(strayed, 840)).toBeCloseTo(seconds(boiling, 840), 0);
    }
  });

  it('two that agree high are believed', () => {
    const high = estimateAfter(
      [
        { kind: 'reading', t: 840, celsius: 117 },
        { kind: 'reading', t: 855, celsius: 117.6 },
      ],
      hob,
      boiling,
    );
    expect(believe(high, target, 855, curve, hob)?.celsius).toBeGreaterThan(115);
  });

  it('one that a person stands by is believed at once', () => {
    const sure = estimateAfter([{ kind: 'reading', t: 840, celsius: 117, sure: true }], hob, boiling);
    expect(believe(sure, target, 840, curve, hob)?.celsius).toBeGreaterThan(115);
  });

  it('are not said of a plain one', () => {
    expect(Math.abs(surprise(boiling, { t: 880, celsius: 113.8 }, curve, hob) ?? 9)).toBeLessThan(2);
  });
});
