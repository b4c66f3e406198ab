import { planned, type RunSheet } from '../batch/run-sheet.js';
import type { PhaseId } from '../recipe/recipe.js';
import type { Advice } from './advice.js';
import { headline } from './candy.js';
import type { Cook } from './cook.js';
import type { View } from './view.js';

const runSheetOf = (cook: Cook): RunSheet | null => {
  const [opened] = cook.log;
  return opened?.kind === 'opened' ? opened.runSheet : null;
};

/** When a phase was come to: a boil that a failed test sends back to began on time all the same. */
const cameTo = (cook: Cook, phase: PhaseId): number | null =>
  (phase === 'boil' ? cook.leftAt.dissolve : null) ?? cook.enteredAt[phase] ?? null;

/** The beginning after this one that the sheet has. */
const nextOn = (sheet: RunSheet, phase: PhaseId) =>
  sheet.phases.find(({ startsAt }) => startsAt > (planned(sheet, phase)?.startsAt ?? 0));

/**
 * Ahead of or behind the run sheet. In the boil by the forecast of the take-off, where there is one; otherwise by when
 * the phase began, or, once the next should have begun, by that. Constant time.
 */
export const driftOf = ({ cook, now, forecast }: View): Advice['drift'] => {
  const sheet = runSheetOf(cook);
  const phase = headline(cook);
  const here = sheet === null || cook.stopped ? undefined : planned(sheet, phase);
  if (sheet === null || here === undefined) return null;
  const off = planned(sheet, 'test');
  if (phase === 'boil' && forecast !== null && off !== undefined)
    return { seconds: off.startsAt - (now + forecast.takeOffSeconds.typical), phase: 'test' };
  const came = cameTo(cook, phase);
  const began = came === null ? 0 : here.startsAt - came;
  const next = nextOn(sheet, phase);
  const waited = next === undefined ? Number.POSITIVE_INFINITY : next.startsAt - now;
  return waited < Math.min(0, began) && next !== undefined
    ? { seconds: waited, phase: next.phase }
    : { seconds: began, phase };
};
