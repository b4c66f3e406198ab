import type { Cook } from '../cook.js';
import { handsGate } from './gates.js';
import { amountOf } from './mix.js';
import { type Phase, step } from './phase.js';

const additions = (cook: Cook) => cook.batch.recipe.ingredients.filter((one) => one.phase === 'pull');
const startedAt = (cook: Cook): number => cook.done['pull.grease'] ?? cook.enteredAt.pull ?? cook.t;

/** Reminders while pulling, seconds. Common practice, no source. */
export const regreaseEverySeconds = 180;
const firstDroopTestSeconds = 300;
const droopTestEverySeconds = 120;

const droopTestDue = (cook: Cook): number =>
  cook.droops === true
    ? (cook.done['droop.seen'] ?? startedAt(cook)) + droopTestEverySeconds
    : startedAt(cook) + firstDroopTestSeconds;

/** The next re-grease reminder at or after `now`. */
const regreaseDue = (cook: Cook, now: number): number => {
  const rounds = Math.max(1, Math.ceil((now - startedAt(cook)) / regreaseEverySeconds));
  return startedAt(cook) + rounds * regreaseEverySeconds;
};

export const pull: Phase = {
  id: 'pull',
  handsOn: true,
  moves: 'one',
  gates: handsGate,
  steps: [
    step('pull.grease', {
      again: true,
      values: ({ cook, batch }) => ({
        hands: batch.recipe.hands,
        whose: cook.hands,
        portions: cook.portions,
      }),
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
      timers: ({ cook, now }) => [
        { id: 'droop-test', from: startedAt(cook), until: droopTestDue(cook) },
        ...(cook.batch.recipe.hands === 'dry'
          ? []
          : [{ id: 'regrease', from: startedAt(cook), until: regreaseDue(cook, now) }]),
      ],
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
