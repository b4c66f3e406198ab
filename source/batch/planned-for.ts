import type { PhaseId } from '../recipe/recipe.js';
import type { Batch, Spread } from './batch.js';
import { planned, type RunSheet } from './run-sheet.js';
import { phaseSeconds, type TimedPhase, timedPhases } from './run-sheet-times.js';

export type PlannedTime = { readonly seconds: Spread; readonly by: 'run sheet' | 'trade' };

const isTimed = (phase: PhaseId): phase is TimedPhase => (timedPhases as readonly PhaseId[]).includes(phase);

/** Each portion is pulled on its own. */
const times = ({ low, typical, high }: Spread, count: number): Spread => ({
  low: low * count,
  typical: typical * count,
  high: high * count,
});

/**
 * What a phase was planned for, seconds: by the run sheet that the cook was opened with, else what is usual in the
 * trade (run-sheet-times.ts), pulling for as many portions as there were. Null for a phase that nobody times.
 */
export const plannedFor = (
  phase: PhaseId,
  { batch, portions }: { readonly batch: Batch; readonly portions: number },
  sheet: RunSheet | null,
): PlannedTime | null => {
  const own = sheet === null ? undefined : planned(sheet, phase);
  if (own !== undefined) return { seconds: own.seconds, by: 'run sheet' };
  if (sheet !== null || !isTimed(phase)) return null;
  const usual = phaseSeconds(batch, phase);
  return { seconds: phase === 'pull' ? times(usual, Math.max(1, portions)) : usual, by: 'trade' };
};
