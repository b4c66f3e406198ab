import { headline } from '../candy.js';
import type { Cook } from '../cook.js';
import { potIsOff } from '../phases/phase.js';

/** Over this time a boil that goes on rises by this much, even at its slow beginning: 0.3-0.5 K a minute. Our judgement. */
const slow = { seconds: 360, kelvin: 0.8 } as const;
/** A boil that goes on never falls; a dial scatters by less. Our judgement. */
const falling = { seconds: 120, kelvin: -1.5 } as const;
/** Readings that a stall is told from, at each end. */
const atEachEnd = 2;
/** So many readings are more than the six minutes. */
export const mostLeftAlone = 48;

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

type Risen = { readonly kelvin: number; readonly seconds: number };

/**
 * Kelvin risen over the last minutes (six, or `overSeconds`) in which nothing was done to pot or burner; null where they
 * were not left alone for so long, or not read. Bounded: a few dozen readings.
 */
export const risenWhileLeft = (
  { leftAlone, doubt }: Pick<Cook, 'leftAlone' | 'doubt'>,
  overSeconds: number = slow.seconds,
): Risen | null => {
  const [first, last] = [leftAlone[0], leftAlone.at(-1)];
  if (doubt !== null || first === undefined || last === undefined || last.t - first.t < overSeconds)
    return null;
  const then = leftAlone.filter(({ t }) => last.t - t >= overSeconds).slice(-atEachEnd);
  if (then.length < atEachEnd) return null;
  const now = leftAlone.slice(-atEachEnd);
  const seconds = mean(now.map(({ t }) => t)) - mean(then.map(({ t }) => t));
  const kelvin = mean(now.map(({ celsius }) => celsius)) - mean(then.map(({ celsius }) => celsius));
  return { kelvin, seconds };
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
  const risen = risenWhileLeft(cook);
  const lately = risenWhileLeft(cook, falling.seconds);
  return (
    (risen !== null && risen.kelvin < slow.kelvin) || (lately !== null && lately.kelvin < falling.kelvin)
  );
};
