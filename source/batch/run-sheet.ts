import type { Batch, Pair, Spread } from './batch.js';
import { type Pace, phaseSeconds, type TimedPhase, timedPhases } from './run-sheet-times.js';

export type PlannedPhase = {
  readonly phase: TimedPhase;
  /** Planned beginning; the sheet says from which moment it counts. */
  readonly startsAt: number;
  /** Earliest and latest likely beginning. */
  readonly between: Pair;
  readonly seconds: Spread;
};

/**
 * The planned times of one cook, seconds. As it is made, zero is the moment at which the pulling begins in front of
 * the audience, and what comes before is negative; `shifted` moves the zero to where a cook was opened.
 */
export type RunSheet = {
  readonly pullsAt: number;
  /** Kept free before the pulling, so that a slow hob costs nothing. */
  readonly spareSeconds: number;
  readonly phases: readonly PlannedPhase[];
};

/** Kept free before the pulling. Our judgement: candy that is ready early waits so long on the slab without harm. */
export const spareSeconds = 5 * 60;

/** These begin by the clock, whatever went before; the others when the one before them is over. */
const byTheClock: ReadonlySet<TimedPhase> = new Set(['mix', 'dissolve', 'pull']);

const squared = (value: number): number => value * value;

/** Beginnings relative to the first, with how far they spread if the phases vary independently. */
const chained = (batch: Batch, pace: Pace) => {
  let [at, early, late] = [0, 0, 0];
  return timedPhases.map((phase) => {
    if (byTheClock.has(phase)) [early, late] = [0, 0];
    if (phase === 'pull') at += spareSeconds;
    const seconds = phaseSeconds(batch, phase, pace);
    const planned = { phase, at, early: Math.sqrt(early), late: Math.sqrt(late), seconds };
    at += seconds.typical;
    early += squared(seconds.typical - seconds.low);
    late += squared(seconds.high - seconds.typical);
    return planned;
  });
};

/** Counts back from the moment at which the pulling begins, which is zero. Pure and total. */
export const runSheetOf = (batch: Batch, pace: Pace = {}): RunSheet => {
  const phases = chained(batch, pace);
  const pull = phases.find(({ phase }) => phase === 'pull')?.at ?? 0;
  return {
    pullsAt: 0,
    spareSeconds,
    phases: phases.map(({ phase, at, early, late, seconds }) => ({
      phase,
      startsAt: at - pull,
      between: [at - pull - early, at - pull + late],
      seconds,
    })),
  };
};

/** The same plan with all its moments so many seconds later. */
export const shifted = (sheet: RunSheet, seconds: number): RunSheet => ({
  ...sheet,
  pullsAt: sheet.pullsAt + seconds,
  phases: sheet.phases.map((one) => ({
    ...one,
    startsAt: one.startsAt + seconds,
    between: [one.between[0] + seconds, one.between[1] + seconds],
  })),
});

/** Counted from the moment at which its first phase begins. */
export const fromItsBeginning = (sheet: RunSheet): RunSheet =>
  shifted(sheet, -(sheet.phases[0]?.startsAt ?? 0));

/** The planned phase; undefined where a sheet from elsewhere has none. */
export const planned = (sheet: RunSheet, phase: string): PlannedPhase | undefined =>
  sheet.phases.find((one) => one.phase === phase);

/** The planned phase of a sheet that was made here, and so has all of them. */
export const plannedOn = (sheet: RunSheet, phase: TimedPhase): PlannedPhase =>
  planned(sheet, phase) ?? {
    phase,
    startsAt: sheet.pullsAt,
    between: [sheet.pullsAt, sheet.pullsAt],
    seconds: { low: 0, typical: 0, high: 0 },
  };

/** When the last piece is wrapped. */
export const endsAt = (sheet: RunSheet): number => {
  const last = plannedOn(sheet, 'wrap');
  return last.startsAt + last.seconds.typical;
};

/** From the cold pot to the pulling: as planned, and at the quickest, with everything set out before; seconds. */
export const leadSeconds = (sheet: RunSheet): { readonly planned: number; readonly quickest: number } => {
  const before = sheet.phases.filter(({ startsAt }) => startsAt < sheet.pullsAt);
  const first = before[0]?.startsAt ?? sheet.pullsAt;
  const afterMix = before.filter(({ phase }) => phase !== 'mix');
  const early = Math.sqrt(
    afterMix.reduce((sum, { seconds }) => sum + squared(seconds.typical - seconds.low), 0),
  );
  const typical = afterMix.reduce((sum, { seconds }) => sum + seconds.typical, 0);
  return { planned: sheet.pullsAt - first, quickest: Math.max(0, typical - early) };
};
