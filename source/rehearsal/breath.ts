import type { Advice } from '../cook/advice.js';
import type { Sight } from './happenings.js';

/**
 * Seconds that a person needs, on the wall's clock: to type a reading, the dial looked at; to do what one instruction
 * says; to say what has just gone wrong; to read a list aloud. Whoever takes longer is not waited for. Our judgement.
 */
const needs = { reading: 4, act: 20, startled: 60, list: 60 } as const;

const alarming: ReadonlySet<Sight> = new Set<Sight>([
  'foam-high',
  'foam-over',
  'smell',
  'smokes',
  'grains',
  'power-gone',
  'called-away',
  'touched',
]);
export const isAlarming = (sight: Sight): boolean => alarming.has(sight);

/** A trouble is being waited out: the burn under water, the pot that cools. */
const waitsItOut = ({ troubles, now }: Advice): boolean =>
  troubles.some(({ until }) => until !== null && until > now);

/** Hands are wanted at this very moment, for the pot or for what went wrong. */
export const presses = (advice: Advice): boolean =>
  advice.urgent && (advice.canBeDone || advice.offTheHeat) && !waitsItOut(advice);

/** One of the things that a trouble asks for is still to be done. */
const isTold = (advice: Advice): boolean =>
  advice.canBeDone && advice.troubles.some(({ instruction }) => instruction !== null);

/** Between two readings, seconds; null where none is asked for, or nobody has typed it for long. */
const readingInterval = ({ nextReadingSeconds, readAt, now }: Advice, sinceDue: number): number | null =>
  nextReadingSeconds === null || sinceDue > needs.list
    ? null
    : Math.max(0, nextReadingSeconds) + (readAt === null ? 0 : now - readAt);

/** Seconds since the headline came to what it says, since something went wrong in sight, and since a reading is due. */
export type Since = { readonly asked: number; readonly startled: number; readonly due: number };

/**
 * How fast the clock may run for a person to keep up, times the wall's pace: as in the real cook while a list is read
 * aloud, while hands are wanted at once or something has just gone wrong; slower where readings come thick. A rehearsal
 * in which thirty seconds are over in one and a half teaches nothing.
 */
export const keepsUp = (advice: Advice, typesReadings: boolean, since: Since): number => {
  if (since.startled < needs.startled) return 1;
  if (advice.question?.kind === 'pause' && since.asked < needs.list) return 1;
  if ((presses(advice) || isTold(advice)) && since.asked < needs.act) return 1;
  const interval = typesReadings ? readingInterval(advice, since.due) : null;
  return interval === null ? Number.POSITIVE_INFINITY : Math.max(1, interval / needs.reading);
};
