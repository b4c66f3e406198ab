import type { Advice } from '../cook/advice.js';

const minute = 60;
const second = 1000;
/** A change that is due is never waited for less than this, so that a stuck moment can't spin. */
const shortestMilliseconds = 20;

/** How often a running number moves on where little is to move. Our judgement. */
const stillSeconds = 10;

/** A number on the screen that runs by the second. */
const runs = (advice: Advice): boolean =>
  advice.timers.length > 0 || advice.nextReadingSeconds !== null || advice.forecast !== null;

/**
 * When to look again although nobody does anything, in milliseconds of the wall; the cook's clock runs `pace` times
 * as fast. At the moment that the advice names; each second while a number runs, each tenth second where little is to
 * move; else when the clock's minute is full.
 */
export const nextGlance = (advice: Advice, pace: number, still = false): number => {
  const inMilliseconds = (seconds: number): number => (seconds / pace) * second;
  const change = advice.changesAt === null ? Number.POSITIVE_INFINITY : advice.changesAt - advice.now;
  const step = still ? stillSeconds * second : second;
  const tick = runs(advice) ? step : Math.max(step, inMilliseconds(minute - (advice.now % minute)));
  return Math.min(minute * second, tick, Math.max(shortestMilliseconds, inMilliseconds(change)));
};
