import { describe, expect, it } from 'vitest';
import type { Cook } from '../../source/cook/cook.js';
import { feltStanding, isStalled, middleOf, risenWhileLeft } from '../../source/cook/hazards/stalled.js';
import { blind, Play } from './play.js';

/** Readings a minute apart, from `t` on. */
const minutes = (t: number, ...celsius: readonly number[]) =>
  celsius.map((value, at) => ({ seq: at + 2, t: t + 60 * at, celsius: value }));
const left = (...celsius: readonly number[]) => ({ leftAlone: minutes(100, ...celsius), doubt: null });
const boiling = (change: Partial<Cook> = {}): Cook => ({
  ...new Play({ from: 'boil' }).type('heat medium').cook,
  ...change,
});

describe('what a pot that was left alone has risen by', () => {
  it('is told from the middle of two readings at each end', () => {
    expect(middleOf(minutes(0, 110, 112))).toEqual({ t: 30, celsius: 111 });
    // Over six minutes: the newest two against the two of which the later is six minutes older than the newest.
    expect(risenWhileLeft(left(110, 111, 112, 113, 114, 115, 116, 117))).toEqual({ kelvin: 6, seconds: 360 });
    expect(risenWhileLeft(left(110, 114, 112, 112, 112, 112, 112, 112))).toEqual({ kelvin: 0, seconds: 360 });
  });

  it('is nothing before two readings lie so far back, without any, and while one is doubted', () => {
    expect(risenWhileLeft(left(110, 111, 112, 113, 114, 115, 116))).toBeNull();
    expect(risenWhileLeft(left())).toBeNull();
    const { leftAlone } = left(110, 110, 110, 110, 110, 110, 110, 110);
    const doubt = new Play({ from: 'boil' }).reads(60, 110, 112).reads(1, 131).cook.doubt;
    expect(doubt).not.toBeNull();
    expect(risenWhileLeft({ leftAlone, doubt })).toBeNull();
  });

  it('over two minutes is told sooner', () => {
    expect(risenWhileLeft(left(112, 111, 110, 109), 120)).toEqual({ kelvin: -2, seconds: 120 });
    expect(risenWhileLeft(left(112, 111, 110), 120)).toBeNull();
  });
});

describe('a boil that stands', () => {
  const standing = left(112, 112, 112.1, 112, 112.2, 112.1, 112.3, 112.2).leftAlone;

  it('rises by less than 0.8 K in six minutes', () => {
    expect(isStalled(boiling({ leftAlone: standing }))).toBe(true);
    const slow = left(112, 112, 112.2, 112.3, 112.5, 112.6, 112.7, 112.9).leftAlone;
    expect(risenWhileLeft({ leftAlone: slow, doubt: null })?.kelvin).toBeCloseTo(0.8, 6);
    expect(isStalled(boiling({ leftAlone: left(112, 112, 112, 112, 112, 112, 112.8, 113).leftAlone }))).toBe(
      false,
    );
    expect(
      isStalled(boiling({ leftAlone: left(112, 112, 112, 112, 112, 112, 112.7, 112.7).leftAlone })),
    ).toBe(true);
  });

  it('or falls by more than 1.5 K in two', () => {
    expect(isStalled(boiling({ leftAlone: left(114, 114, 112.4, 112.4).leftAlone }))).toBe(true);
    expect(isStalled(boiling({ leftAlone: left(114, 114, 112.6, 112.6).leftAlone }))).toBe(false);
  });

  it('is none before the boil, off the ring, under the lid, or with the burner off', () => {
    expect(isStalled({ ...new Play({ from: 'dissolve' }).cook, leftAlone: standing })).toBe(false);
    const where = { t: 0, said: true };
    expect(isStalled(boiling({ leftAlone: standing, potOn: { ...where, on: false } }))).toBe(false);
    expect(isStalled(boiling({ leftAlone: standing, potOn: { ...where, on: true } }))).toBe(true);
    expect(isStalled(boiling({ leftAlone: standing, lidOn: { t: 0, on: true } }))).toBe(false);
    expect(isStalled(boiling({ leftAlone: standing, lidOn: { t: 0, on: false } }))).toBe(true);
    expect(isStalled(boiling({ leftAlone: standing, heat: { setting: 'off', level: 0, t: 0 } }))).toBe(false);
    expect(isStalled(boiling({ leftAlone: standing, heat: null }))).toBe(true);
  });
});

describe('by cold water alone', () => {
  const test = {
    t: 1000,
    outcome: 'soft ball',
    celsius: null,
    inARow: 0,
    firmest: 'soft ball',
    firmestAt: 500,
    noFirmer: 2,
  } as const;
  const felt = (change: Partial<Cook> = {}): Cook => ({
    ...new Play({ from: 'boil', kitchen: blind }).cook,
    lastTest: test,
    ...change,
  });
  const heat = (t: number) => ({ setting: 'medium', level: 0.5, t });

  it('two tests that find it no firmer, for more than eight minutes since it was firmest', () => {
    expect(feltStanding(felt())).toBe(500);
    expect(isStalled(felt())).toBe(true);
    expect(feltStanding(felt({ lastTest: { ...test, firmestAt: 520 } }))).toBeNull();
    expect(feltStanding(felt({ lastTest: { ...test, noFirmer: 1 } }))).toBeNull();
    expect(feltStanding(felt({ lastTest: null }))).toBeNull();
  });

  it('count from when the burner was last turned', () => {
    expect(feltStanding(felt({ heat: heat(400) }))).toBe(500);
    expect(feltStanding(felt({ heat: heat(510) }))).toBe(490);
    expect(feltStanding(felt({ heat: heat(600) }))).toBeNull();
  });

  it('say nothing where a thermometer is read; one that nobody reads tells nothing', () => {
    expect(feltStanding(felt({ thermometer: true, readingsTaken: 1 }))).toBeNull();
    expect(feltStanding(felt({ thermometer: true, readingsTaken: 0 }))).toBe(500);
    // Read before it broke.
    expect(feltStanding(felt({ thermometer: false, readingsTaken: 4 }))).toBe(500);
  });
});
