import type { Advice } from '../cook/advice.js';
import { warningsShown } from './keys.js';

/** `look`: three rings, look now. `next`: one ring, the next thing is due. */
export type Ring = 'look' | 'next';

export const ringsOf: Readonly<Record<Ring, number>> = { look: 3, next: 1 };
/** Between two rings of one pattern: closer ones melt into one on most terminals. Our judgement. */
export const ringGapMilliseconds = 250;

const loud = (advice: Advice): readonly string[] => [
  ...warningsShown({ advice }).flatMap((one) => (one.level === 'note' ? [] : [`warning ${one.id}`])),
  ...(advice.urgent ? [`urgent ${advice.step}`] : []),
  ...(advice.offTheHeat ? ['off'] : []),
];

const due = (advice: Advice): readonly string[] => [
  ...advice.timers.flatMap((timer) => (timer.due ? [`timer ${timer.id} ${timer.until}`] : [])),
  ...(advice.nextReadingSeconds !== null && advice.nextReadingSeconds <= 0 ? ['reading'] : []),
  ...(advice.question === null ? [] : [`question ${advice.question.id}`]),
];

const adds = (before: readonly string[], after: readonly string[]): boolean =>
  after.some((reason) => !before.includes(reason));

/**
 * What the change from one advice to the next calls for; null: nothing. `byTime`: nobody typed anything, so a new
 * step or question is news to the person too.
 */
export const ringFor = (before: Advice, after: Advice, byTime: boolean): Ring | null => {
  if (adds(loud(before), loud(after))) return 'look';
  if (!byTime) return null;
  return adds(due(before), due(after)) || before.step !== after.step ? 'next' : null;
};
