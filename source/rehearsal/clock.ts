import type { Clock } from '../session/clock.js';

/** As long as the real cook, and as fast as a person can still follow. */
export const paceRange = [1, 60] as const;
/**
 * An 80-minute cook in about 4 minutes where the pot types its readings: two and a half of them by this, the rest for
 * lists read aloud and for what is wanted at once, at the wall's pace (breath.ts).
 */
export const usualPace = 30;

/** A clock that runs `pace` times as fast as another, slower where asked to, stands still when paused, and can be put forward. */
export type FastClock = Clock & {
  readonly pace: number;
  paused(): boolean;
  pause(): void;
  go(): void;
  /** From now on no faster than so many times the other; infinite: at its own pace again. */
  noFasterThan(pace: number): void;
  /** Put forward; never back. */
  skip(seconds: number): void;
};

export const fastClock = (real: Clock, pace: number): FastClock => {
  const upAtStart = real.up();
  const wallAtStart = real.wall();
  let passed = 0;
  let seen = upAtStart;
  let stands = false;
  let most = Number.POSITIVE_INFINITY;
  const catchUp = (): number => {
    const now = real.up();
    if (!stands) passed += Math.max(0, now - seen) * Math.min(pace, most);
    seen = Math.max(seen, now);
    return passed;
  };
  return {
    pace,
    up: () => upAtStart + catchUp(),
    wall: () => wallAtStart + catchUp() * 1000,
    paused: () => stands,
    pause: () => {
      catchUp();
      stands = true;
    },
    go: () => {
      catchUp();
      stands = false;
    },
    noFasterThan: (limit) => {
      catchUp();
      most = Math.max(1, limit);
    },
    skip: (seconds) => {
      catchUp();
      passed += Math.max(0, seconds);
    },
  };
};
