import { boxShare as usualShare } from '../batch/yield.js';
import { thermometerFor } from '../kitchen/air.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import { crewPhases, type Learned, type Lesson, overridden, saidByPerson } from '../kitchen/learned.js';
import { heatLevel, shareOfFull, stoveTraits } from '../kitchen/stove.js';
import { type CookLesson, type FinishedCook, lessonOf } from './learn-cook.js';
import { type Prior, pooled, type Said } from './learn-pool.js';

/** The latest cooks that count: an older one belongs to another season, crew or pot. Our judgement. */
export const mostCooks = 8;

/**
 * What is believed before any cook, and how cooks in one kitchen differ. All our judgement: mains voltage within 5 %
 * moves a ring's power by 10 %; losses of 8 to 20 % (batch/yield.ts); trade practice gives phases a third either way.
 */
const priors = {
  thermometer: { mean: 0, sd: 6, betweenCooksSd: 0.5 },
  logWatts: { sd: 0.5, betweenCooksSd: 0.1 },
  carryOver: { sd: 0.8, betweenCooksSd: 0.5 },
  boxShare: { mean: usualShare.typical, sd: 0.05, betweenCooksSd: 0.035 },
  logMinutes: { sd: 0.35, betweenCooksSd: 0.2 },
} as const;

/**
 * The same hands in the same water err the same way at every cook, and published stages differ by some kelvin: no
 * number of tests gets below this, kelvin. A quarter of the hard ball's width; our judgement.
 */
const testersSdKelvin = 2.5;
/** The angle at which a person reads a thermometer stays, kelvin; so does what no check shows. */
const checksSdKelvin = 0.7;

type Dated<Value> = { readonly value: Value; readonly date: string | null };

const latest = (dates: readonly (string | null)[]): string | null =>
  dates
    .filter((date) => date !== null)
    .toSorted()
    .at(-1) ?? null;

const lesson = (
  said: readonly Dated<Said>[],
  prior: Prior,
  back: (value: number) => number,
): Lesson | null => {
  const together = pooled(
    said.map(({ value }) => value),
    prior,
  );
  return together === null
    ? null
    : {
        value: back(together.value),
        sd: together.sd,
        cooks: said.length,
        date: latest(said.map(({ date }) => date)),
        by: 'cooks',
      };
};

const same = (value: number): number => value;

const each = <Value>(
  lessons: readonly CookLesson[],
  of: (one: CookLesson) => Value | null | undefined,
): readonly Dated<Value>[] =>
  lessons.flatMap((one) => {
    const value = of(one);
    return value == null ? [] : [{ value, date: one.date }];
  });

const known = (one: number | null, other: number | null): boolean =>
  one === null || other === null || one === other;

/** The same ring under the same pot, as far as both are known. */
const isSameStove = (one: Kitchen, other: Kitchen): boolean =>
  one.stove === other.stove &&
  known(one.pot.litres, other.pot.litres) &&
  known(one.pot.diameterMillimetres, other.pot.diameterMillimetres);

const isSameKnob = (one: Kitchen, other: Kitchen): boolean =>
  isSameStove(one, other) && one.heat.join('|').toLowerCase() === other.heat.join('|').toLowerCase();

/** Two independent judgements of one error, each with what no number of cooks takes away. */
const thermometerOf = (lessons: readonly CookLesson[], id: string | null): Learned['thermometer'] => {
  if (id === null) return null;
  const own = lessons.filter((one) => one.thermometerId === id);
  const sorts = [
    { floor: checksSdKelvin, said: each(own, (one) => one.errorByChecks) },
    { floor: testersSdKelvin, said: each(own, (one) => one.errorByTests) },
  ].flatMap(({ floor, said }) => {
    const one = lesson(said, priors.thermometer, same);
    return one === null ? [] : [{ ...one, sd: Math.hypot(one.sd, floor) }];
  });
  const [first, second] = sorts;
  if (first === undefined) return null;
  const precision = sorts.reduce((sum, { sd }) => sum + 1 / sd ** 2, 0);
  return {
    id,
    value: sorts.reduce((sum, { value, sd }) => sum + value / sd ** 2, 0) / precision,
    sd: Math.sqrt(1 / precision),
    cooks: Math.max(first.cooks, second?.cooks ?? 0),
    date: latest([first.date, second?.date ?? null]),
    by: 'cooks',
  };
};

const wattsOf = (lessons: readonly CookLesson[], kitchen: Kitchen): Learned['watts'] => {
  const own = lessons.filter((one) => isSameKnob(one.kitchen, kitchen));
  return Object.fromEntries(
    kitchen.heat.flatMap((label) => {
      const key = label.toLowerCase();
      const mean = Math.log(
        shareOfFull(heatLevel(kitchen, label) ?? 1) * stoveTraits[kitchen.stove].fullWatts,
      );
      const one = lesson(
        each(own, ({ logWatts }) => logWatts[key]),
        { mean, ...priors.logWatts },
        Math.exp,
      );
      return one === null ? [] : [[key, one] as const];
    }),
  );
};

/** Usual minutes of folding, of pulling one portion, of a hundred pieces: batch/run-sheet-times.ts. */
const usualMinutes = { fold: 16, pull: 11, cut: 10 } as const;

/** How well one cook tells a crew's minutes, relative: an interruption, a story told. Our judgement. */
const minutesSd = 0.15;

const minutesOf = (lessons: readonly CookLesson[], kitchen: Kitchen): Learned['minutes'] => {
  const own = lessons.filter((one) => one.kitchen.hands === kitchen.hands);
  return Object.fromEntries(
    crewPhases.flatMap((phase) => {
      const took = each(own, ({ minutes }) => minutes[phase]).map(({ value, date }) => ({
        value: { value: Math.log(value), sd: minutesSd },
        date,
      }));
      const one = lesson(took, { mean: Math.log(usualMinutes[phase]), ...priors.logMinutes }, Math.exp);
      return one === null ? [] : [[phase, one] as const];
    }),
  );
};

/** A scale is read to a gram or two and some is eaten before it is weighed. Our judgement. */
const weighedSd = 0.02;

/**
 * What finished cooks teach a kitchen, newest first or last; what a person said in the kitchen file stands before it.
 * Cooks with another stove, pot or knob say nothing of burner and carry-over, with another thermometer nothing of this
 * one, with other hands nothing of minutes. The 8 latest count. Pure.
 */
export const learnFrom = (lessons: readonly CookLesson[], kitchen: Kitchen): Learned => {
  const counted = lessons
    .toSorted((one, other) => (other.date ?? '').localeCompare(one.date ?? ''))
    .slice(0, mostCooks);
  const here = counted.filter((one) => isSameStove(one.kitchen, kitchen));
  const climbed = lesson(
    each(here, ({ carryOverKelvin }) => carryOverKelvin),
    { mean: stoveTraits[kitchen.stove].carryOverKelvin, ...priors.carryOver },
    (kelvin) => Math.max(0, kelvin),
  );
  const shares = each(counted, ({ boxShare }) =>
    boxShare === null ? null : { value: boxShare, sd: weighedSd },
  );
  const taught: Learned = {
    thermometer: thermometerOf(counted, thermometerFor(kitchen, 'pot')?.id ?? null),
    watts: wattsOf(counted, kitchen),
    carryOverKelvin: climbed,
    boxShare: lesson(shares, priors.boxShare, (share) => Math.min(1, share)),
    minutes: minutesOf(counted, kitchen),
  };
  return overridden(taught, saidByPerson(kitchen.learned));
};

/** The same from the cooks themselves; rehearsals and cooks that were not finished teach nothing. */
export const learn = (cooks: readonly FinishedCook[], kitchen: Kitchen): Learned =>
  learnFrom(
    cooks.flatMap((cook) => lessonOf(cook) ?? []),
    kitchen,
  );
