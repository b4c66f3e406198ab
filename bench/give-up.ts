import type { Advice } from '../source/cook/advice.js';
import { advise } from '../source/cook/advise.js';
import type { Cook } from '../source/cook/cook.js';
import type { Happened } from '../source/cook/event.js';
import { interpret } from '../source/cook/interpret.js';
import { fold, step } from '../source/cook/step.js';

/** What somebody types who only wants to end it safely. */
const wordToEnd = (advice: Advice): string => {
  const { question, canBeDone, typing } = advice;
  if (question !== null)
    return question.answers.find((one) => one === 'yes' || one.endsWith('off')) ?? question.safe;
  const [open] = typing.openTroubles;
  return canBeDone || open === undefined ? 'done' : `over ${open}`;
};

/** Given up, and then led to the end: the phase in which that comes to rest. */
export const givenUp = (state: Cook): string => {
  let cook = state;
  let t = cook.t;
  for (let turn = 0; turn < 60 && advise(cook, t).phase !== 'over'; turn++) {
    t = Math.max(t, advise(cook, t).waits?.until ?? t);
    const advice = advise(cook, t);
    const read = interpret(turn === 0 ? 'stop' : wordToEnd(advice), advice);
    t += 5;
    if (read.kind !== 'queried') cook = step(cook, { ...read, seq: (cook.log.at(-1)?.seq ?? 0) + 1, t });
  }
  return advise(cook, t).phase;
};

/** After how many events of a cook, looked at every so many, giving up does not come to an end. */
export const deadEnds = (log: readonly Happened[], every: number, from = 2): readonly number[] => {
  const ends: number[] = [];
  for (let length = from; length < log.length; length += every)
    if (givenUp(fold(log.slice(0, length))) !== 'over') ends.push(length);
  return ends;
};
