import type { Spread } from '../batch/batch.js';
import { plannedFor } from '../batch/planned-for.js';
import type { RunSheet } from '../batch/run-sheet.js';
import { headline } from '../cook/candy.js';
import type { Cook } from '../cook/cook.js';
import { type PhaseId, phaseIds } from '../recipe/recipe.js';
import type { Instant } from './walk.js';

/** One stretch in which a phase was the headline, seconds since the opening. */
export type Span = { readonly phase: PhaseId; readonly from: number; readonly to: number };

export type PhaseTold = {
  readonly phase: PhaseId;
  readonly from: number;
  readonly to: number;
  /** As the headline; the phases' seconds add up to the whole cook. */
  readonly seconds: number;
  /** How often it was entered. */
  readonly times: number;
  readonly planned: Spread | null;
  readonly plannedBy: 'run sheet' | 'trade' | null;
  readonly against: 'quicker' | 'as planned' | 'slower' | null;
};

/** The headline's stretches, in order; none of no length except the last. */
export const spansOf = (instants: readonly Instant[]): readonly Span[] => {
  const spans: { phase: PhaseId; from: number; to: number }[] = [];
  for (const { t, cook } of instants) {
    const phase = headline(cook);
    const last = spans.at(-1);
    if (last !== undefined) last.to = t;
    if (last?.phase !== phase) spans.push({ phase, from: t, to: t });
  }
  return spans.filter(({ from, to }, index) => to > from || index === spans.length - 1);
};

const judged = (seconds: number, planned: Spread | null): PhaseTold['against'] => {
  if (planned === null) return null;
  if (seconds < planned.low) return 'quicker';
  return seconds > planned.high ? 'slower' : 'as planned';
};

/** Each phase that was lived through, with its minutes against what is usual. */
export const phasesOf = (spans: readonly Span[], cook: Cook, sheet: RunSheet | null): readonly PhaseTold[] =>
  phaseIds.flatMap((phase) => {
    const own = spans.filter((span) => span.phase === phase);
    const [first] = own;
    const last = own.at(-1);
    if (phase === 'over' || first === undefined || last === undefined) return [];
    const seconds = own.reduce((sum, { from, to }) => sum + to - from, 0);
    const planned = plannedFor(phase, cook, sheet);
    // A phase that was not finished is not judged for being quick.
    const finished = cook.leftAt[phase] !== undefined && headline(cook) !== phase && !cook.stopped;
    return [
      {
        phase,
        from: first.from,
        to: last.to,
        seconds,
        times: own.length,
        planned: planned?.seconds ?? null,
        plannedBy: planned?.by ?? null,
        against: finished ? judged(seconds, planned?.seconds ?? null) : null,
      },
    ];
  });
