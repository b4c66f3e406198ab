import { batchOf } from '../batch/batch-of.js';
import { fromItsBeginning, type RunSheet, runSheetOf } from '../batch/run-sheet.js';
import { paceOf } from '../batch/run-sheet-pace.js';
import { allSetOut } from '../batch/run-sheet-times.js';
import type { PullTime } from '../sheets/run-sheet.js';
import type { Loaded } from './named.js';

/** What a rehearsal is held against. */
export type RehearsalPlan = {
  /** Seconds since the opening. */
  readonly runSheet: RunSheet;
  /** When the real pulling is to be; null: nobody has said, and the plan only counts from the opening. */
  readonly pull: PullTime | null;
};

/**
 * The run sheet of `plan` for this recipe and kitchen, counted from its own beginning: a rehearsal of the evening
 * before opens at the moment at which the real one mixes, whatever the clock says, with everything set out.
 */
export const rehearsalPlan = (
  { recipe, kitchen }: Pick<Loaded, 'recipe' | 'kitchen'>,
  pull: PullTime | null,
): RehearsalPlan => {
  const batch = batchOf(recipe, kitchen);
  return { runSheet: fromItsBeginning(runSheetOf(batch, allSetOut(paceOf(batch) ?? {}))), pull };
};
