import { headline } from '../candy.js';
import type { Cook, Reading } from '../cook.js';
import { potIsOff } from '../phases/phase.js';

/** Over this time a boil that goes on rises by this much, even at its slow beginning: 0.3-0.5 K a minute. Our judgement. */
const slow = { seconds: 360, kelvin: 0.8 } as const;
/** A boil that goes on never falls; a dial scatters by less. Our judgement. */
const falling = { seconds: 120, kelvin: -1.5 } as const;
/** Readings that a stall is told from, at each end. */
const atEachEnd = 2;
/** So many readings are more than the six minutes. */
export const mostLeftAlone = 48;

/** The mean of some readings, at their mean time. */
export const middleOf = (readings: readonly Reading[]): Omit<Reading, 'seq'> => {
  let [t, celsius] = [0, 0];
  for (const reading of readings) {
    t += reading.t;
    celsius += reading.celsius;
  }
  return { t: t / readings.length, celsius: celsius / readings.length };
};

type Risen = { readonly kelvin: number; readonly seconds: number };

/**
 * Kelvin risen over the last minutes (six, or `overSeconds`) in which nothing was done to pot or burner; null where they
 * were not left alone for so long, or not read. Bounded: a few dozen readings.
 */
export const risenWhileLeft = (
  { leftAlone, doubt }: Pick<Cook, 'leftAlone' | 'doubt'>,
  overSeconds: number = slow.seconds,
): Risen | null => {
  const last = leftAlone.at(-1);
  if (doubt !== null || last === undefined) return null;
  const upTo = leftAlone.findLastIndex(({ t }) => last.t - t >= overSeconds) + 1;
  if (upTo < atEachEnd) return null;
  const then = middleOf(leftAlone.slice(upTo - atEachEnd, upTo));
  const now = middleOf(leftAlone.slice(-atEachEnd));
  return { kelvin: now.celsius - then.celsius, seconds: now.t - then.t };
};

/** By cold water alone: so many tests over so long that find it no firmer, with the burner left as it is. Our judgement. */
const felt = { tests: 2, seconds: 480 } as const;

/** Seconds over which fingers have found it no firmer; null where it cooks on, or a thermometer tells. */
export const feltStanding = ({ lastTest, heat, thermometer, readingsTaken }: Cook): number | null => {
  if ((thermometer && readingsTaken > 0) || lastTest === null || lastTest.noFirmer < felt.tests) return null;
  const seconds = lastTest.t - Math.max(lastTest.firmestAt, heat?.t ?? 0);
  return seconds > felt.seconds ? seconds : null;
};

/** It stands on the heat and does not get hotter: too little heat to boil on. */
export const isStalled = (cook: Cook): boolean => {
  if (headline(cook) !== 'boil' || potIsOff(cook) || cook.lidOn?.on === true || cook.heat?.level === 0)
    return false;
  if (feltStanding(cook) !== null) return true;
  const risesLess = (least: { readonly seconds: number; readonly kelvin: number }): boolean => {
    const risen = risenWhileLeft(cook, least.seconds);
    return risen !== null && risen.kelvin < least.kelvin;
  };
  return risesLess(slow) || risesLess(falling);
};
