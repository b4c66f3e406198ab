import { type ColdWaterOutcome, coldWaterOutcomes } from '../sugar/stages.js';
import type { ColdWaterTest, Cook } from './cook.js';

/** What a cold-water test says of the batch: short of the mark, there, past it, or to be done again. */
export type Verdict = 'short' | 'there' | 'past' | 'again';

/** How many stages fingers felt it above (+) or below (-) the recipe's own outcome. */
export const stagesFromTarget = (cook: Pick<Cook, 'batch'>, outcome: ColdWaterOutcome): number =>
  coldWaterOutcomes.indexOf(outcome) - coldWaterOutcomes.indexOf(cook.batch.target.feels);

/** Fingers against the recipe's own outcome. */
export const judge = (cook: Pick<Cook, 'batch'>, outcome: ColdWaterTest['outcome']): Verdict => {
  if (outcome === 'unsure') return 'again';
  const stages = stagesFromTarget(cook, outcome);
  if (stages < 0) return 'short';
  return stages === 0 ? 'there' : 'past';
};

/** The verdict of the last test since the pot came off for testing; null before it. */
export const verdictOf = (cook: Cook): Verdict | null => {
  const last = cook.lastTest;
  if (last === null || last.t < (cook.enteredAt.test ?? Number.POSITIVE_INFINITY)) return null;
  return judge(cook, last.outcome);
};

/** By cold water alone a drop that feels right is felt once more. Our judgement. */
const feltTwice = 2;

/**
 * Fingers that err by half a stage, tried again and again on the way up, find the mark too early: without a thermometer
 * one drop is not enough to pour on, and a second costs nothing while the bubbling sinks.
 */
export const wantsSecondDrop = (cook: Cook): boolean =>
  (!cook.thermometer || cook.readingsTaken === 0) &&
  cook.lastTest !== null &&
  cook.lastTest.inARow > 0 &&
  cook.lastTest.inARow < feltTwice;

/** The last test, whenever it was, felt like the window or beyond. */
export const feltDone = (cook: Cook): boolean => {
  const last = cook.lastTest;
  return last !== null && ['there', 'past'].includes(judge(cook, last.outcome));
};
