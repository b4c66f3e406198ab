import { batchOf } from '../batch/batch-of.js';
import { headline, isBefore } from '../cook/candy.js';
import type { Cook } from '../cook/cook.js';
import type { Happened } from '../cook/event.js';
import { hobOf, type Opened, openCook } from '../cook/open.js';
import { step } from '../cook/step.js';
import { dialEvidence } from '../forecast/index.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import { type CrewPhase, crewPhases } from '../kitchen/learned.js';
import type { PhaseId } from '../recipe/recipe.js';
import { type BoilSeen, nothingSeen, seeBoil } from './learn-boil.js';
import type { Said } from './learn-pool.js';

/** What one finished cook says of the kitchen it was cooked in. */
export type CookLesson = {
  /** ISO date; null where it is not known. */
  readonly date: string | null;
  readonly kitchen: Kitchen;
  readonly thermometerId: string | null;
  /** Error at candy heat by checks in ice or boiling water during this cook, kelvin; reads high is positive. */
  readonly errorByChecks: Said | null;
  /** The same by cold-water tests against readings. */
  readonly errorByTests: Said | null;
  /** By the knob's label, natural logarithm of net watts. */
  readonly logWatts: BoilSeen['logWatts'];
  readonly carryOverKelvin: Said | null;
  /** Weighed over what the pot could give, 0 to 1. */
  readonly boxShare: number | null;
  /** Folding; pulling one portion; rope and cut of a hundred pieces. */
  readonly minutes: Readonly<Partial<Record<CrewPhase, number>>>;
};

/** A finished cook as it lies in its journal: all its events, in order, and the wall clock of the first. */
export type FinishedCook = { readonly events: readonly Happened[]; readonly startedAt: string | null };

/** Where thermometers are compared, Celsius: where candy is made. */
const candyCelsius = 125;
/** Less in the box, or more, and it was not the whole batch that was weighed. */
const plausibleShare = [0.4, 1.02] as const;
/** Shorter or longer, minutes, and nobody was watching the clock. Our judgement. */
const plausibleMinutes = [1, 120] as const;

const within = (value: number, [low, high]: readonly [number, number]): boolean =>
  value >= low && value <= high;

/** What a cook in a kitchen that has learned nothing would have made of it: a lesson rests on its own cook only. */
const unlearned = (opened: Opened): Opened => ({
  ...opened,
  kitchen: { ...opened.kitchen, learned: undefined },
});

const byChecks = (cook: Cook): Said | null => {
  const { iceShownCelsius, boilsShownCelsius } = cook.checks;
  const { dial } = cook.batch;
  if ((iceShownCelsius ?? boilsShownCelsius) === null || !dial.present || dial.basis === 'taken as right')
    return null;
  return { value: dial.toShownCelsius(candyCelsius) - candyCelsius, sd: dial.sdKelvin };
};

const byTests = (cook: Cook, opened: Opened): Said | null => {
  const { dial } = cook.batch;
  if (!dial.present || cook.estimate.coldWater.tests === 0) return null;
  const begun = hobOf(batchOf(opened.recipe, opened.kitchen));
  const evidence = dialEvidence(cook.estimate, begun);
  if (evidence === null) return null;
  const corrected = dial.toShownCelsius(candyCelsius) - candyCelsius;
  return { value: corrected + evidence.mean, sd: evidence.sd };
};

const shareOf = ({ weighed, batch }: Cook): number | null => {
  const share = weighed === null ? Number.NaN : weighed.grams / batch.yield.cookedGrams;
  return within(share, plausibleShare) ? share : null;
};

/** How much of a usual batch that was: one portion pulled, a hundred pieces cut. */
const usualBatches = (phase: CrewPhase, cook: Cook): number => {
  if (phase === 'pull') return Math.max(1, cook.portions);
  return phase === 'cut' ? (cook.counted ?? cook.batch.yield.pieces.typical) / 100 : 1;
};

const minutesOf = (seconds: Readonly<Partial<Record<PhaseId, number>>>, cook: Cook): CookLesson['minutes'] =>
  Object.fromEntries(
    crewPhases.flatMap((phase) => {
      const minutes = (seconds[phase] ?? Number.NaN) / 60 / usualBatches(phase, cook);
      return within(minutes, plausibleMinutes) ? [[phase, minutes] as const] : [];
    }),
  );

/** Begun from the cold pot, poured, not given up, and past the cutting. */
const isFinished = (cook: Cook): boolean =>
  cook.from === null && cook.pouredAt !== null && !cook.stopped && !isBefore(headline(cook), 'wrap');

/**
 * What a finished cook teaches; null for a rehearsal, one that was given up or left before the candy was cut, one that
 * began in a later phase, or a list that does not begin with `opened`. Pure.
 */
export const lessonOf = ({ events, startedAt }: FinishedCook): CookLesson | null => {
  const [first] = events;
  if (first?.kind !== 'opened' || first.seed !== null || first.from !== null) return null;
  const opened = unlearned(first);
  const gone = new Set(events.flatMap((event) => (event.kind === 'undo' ? [event.voids] : [])));
  const happened = events.slice(1).filter(({ kind, seq }) => kind !== 'undo' && !gone.has(seq));
  const seconds: Partial<Record<PhaseId, number>> = {};
  let cook = openCook(opened);
  let seen = nothingSeen;
  for (const event of happened) {
    const before = cook;
    cook = step(before, event);
    const phase = headline(before);
    // A phase in which nobody could be heard was not timed.
    const passed = event.kind === 'gap' ? Number.POSITIVE_INFINITY : Math.max(0, event.t - before.t);
    seconds[phase] = (seconds[phase] ?? 0) + passed;
    seen = seeBoil(seen, before, cook, event);
  }
  if (!isFinished(cook)) return null;
  return {
    date: startedAt?.slice(0, 10) ?? null,
    kitchen: opened.kitchen,
    thermometerId: cook.batch.dial.id,
    errorByChecks: byChecks(cook),
    errorByTests: byTests(cook, opened),
    logWatts: seen.logWatts,
    carryOverKelvin: seen.carryOverKelvin,
    boxShare: shareOf(cook),
    minutes: minutesOf(seconds, cook),
  };
};
