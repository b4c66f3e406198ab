import type { Cook } from '../cook.js';
import type { View } from '../view.js';
import { handsGate } from './gates.js';
import { amountOf } from './mix.js';
import { type Phase, step } from './phase.js';

const additions = (cook: Cook) => cook.batch.recipe.ingredients.filter((one) => one.phase === 'pull');
const startedAt = (cook: Cook): number => cook.done['pull.grease'] ?? cook.enteredAt.pull ?? cook.t;

/** A portion that was pulled hardens: somebody cuts it while the rest is pulled. */
const cutMeanwhile = ({ cook }: View) =>
  (cook.candy.cut ?? 0) > 0 ? ({ id: 'pull.next.cut' } as const) : null;

/** Reminders while pulling, seconds. Common practice, no source. */
export const regreaseEverySeconds = 180;
const firstDroopTestSeconds = 300;
const droopTestEverySeconds = 120;

const droopTestDue = (cook: Cook): number =>
  cook.droops === true
    ? (cook.done['droop.seen'] ?? startedAt(cook)) + droopTestEverySeconds
    : startedAt(cook) + firstDroopTestSeconds;

export const pull: Phase = {
  id: 'pull',
  handsOn: true,
  // When nobody can pull any more, nobody pulls the other portions either.
  moves: (cook) => (cook.armsOut ? 'all' : 'one'),
  gates: handsGate,
  steps: [
    step('pull.grease', {
      again: true,
      values: ({ cook, batch }) => ({
        hands: batch.recipe.hands,
        whose: cook.hands,
        portions: cook.portions,
      }),
      next: cutMeanwhile,
    }),
    step('pull.add', {
      again: true,
      wanted: (cook) => additions(cook).length > 0,
      items: ({ cook }) => additions(cook).map(amountOf),
    }),
    step('pull.stretch', {
      again: true,
      doneBy: (cook) => cook.droops === false || cook.armsOut,
      values: ({ cook }) => ({ still: cook.droops === true, portions: cook.candy.pull ?? 1 }),
      timers: ({ cook }) => [
        { id: 'droop-test', from: startedAt(cook), until: droopTestDue(cook) },
        ...(cook.batch.recipe.hands === 'dry'
          ? []
          : [{ id: 'regrease', from: startedAt(cook), until: null, every: regreaseEverySeconds }]),
      ],
      next: cutMeanwhile,
      watch: ({ batch }) => (batch.recipe.hands === 'dry' ? null : { id: 'pull.watch.grease' }),
    }),
    step('pull.droop', {
      again: true,
      doneBy: (cook) => cook.droops === false || cook.armsOut,
    }),
    step('pull.stiff', {
      again: true,
      doneBy: (cook) => cook.armsOut,
    }),
    step('pull.softer', {
      again: true,
      wanted: (cook) => cook.armsOut && cook.droops !== false,
    }),
  ],
};
