import { planned, type RunSheet } from '../batch/run-sheet.js';
import type { PhaseId } from '../recipe/recipe.js';
import type { Advice } from './advice.js';
import { headline } from './candy.js';
import type { Cook } from './cook.js';
import { openingOf } from './open.js';
import type { View } from './view.js';

/** When a phase was come to: a boil that a failed test sends back to began on time all the same. */
const cameTo = (cook: Cook, phase: PhaseId): number =>
  (phase === 'boil' ? cook.leftAt.dissolve : null) ?? cook.enteredAt[phase] ?? cook.t;

/** The beginning after this one that the sheet has. */
const nextOn = (sheet: RunSheet, here: { readonly startsAt: number }) =>
  sheet.phases.find(({ startsAt }) => startsAt > here.startsAt);

/**
 * Ahead of or behind the run sheet. In the boil by the forecast of the take-off, where there is one; otherwise by when
 * the phase began, or, once the next should have begun, by that. Constant time.
 */
export const driftOf = ({ cook, now, forecast }: View): Advice['drift'] => {
  const sheet = openingOf(cook.log).runSheet;
  const phase = headline(cook);
  const here = sheet === null || cook.stopped ? undefined : planned(sheet, phase);
  if (sheet === null || here === undefined) return null;
  const off = planned(sheet, 'test');
  if (phase === 'boil' && forecast !== null && off !== undefined)
    return { seconds: off.startsAt - (now + forecast.takeOffSeconds.typical), phase: 'test' };
  const began = here.startsAt - cameTo(cook, phase);
  const next = nextOn(sheet, here);
  const waited = next === undefined ? Number.POSITIVE_INFINITY : next.startsAt - now;
  return waited < Math.min(0, began) && next !== undefined
    ? { seconds: waited, phase: next.phase }
    : { seconds: began, phase };
};
