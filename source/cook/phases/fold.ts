import type { Cook } from '../cook.js';
import { handsGate } from './gates.js';
import { amountOf } from './mix.js';
import { type Phase, step } from './phase.js';

const additions = (cook: Cook) => cook.batch.recipe.ingredients.filter((one) => one.phase === 'fold');
const pouredAt = (cook: Cook): number => cook.pouredAt ?? cook.enteredAt.fold ?? cook.t;

/** Tools start folding two to three minutes after pouring, hands far later. Common practice, no source. */
const firstFoldSeconds = 150;
const betweenFoldsSeconds = 180;

export const fold: Phase = {
  id: 'fold',
  steps: [
    step('fold.wait', {
      cautions: ['hot-middle'],
      timers: ({ cook }) => [
        { id: 'first-fold', from: pouredAt(cook), until: pouredAt(cook) + firstFoldSeconds },
      ],
      next: () => ({ id: 'fold.next.pot' }),
    }),
    step('fold.turn', {
      cautions: ['hot-middle'],
    }),
    step('fold.pot', {
      cautions: ['emptied-pot'],
      timers: ({ cook }) => [
        { id: 'emptied-pot', from: pouredAt(cook), until: pouredAt(cook) + firstFoldSeconds },
      ],
    }),
    step('fold.again', {
      cautions: ['hot-middle'],
      timers: ({ cook }) => {
        const from = cook.done['fold.turn'] ?? pouredAt(cook);
        return [{ id: 'next-fold', from, until: from + betweenFoldsSeconds }];
      },
    }),
    step('fold.add', {
      wanted: (cook) => additions(cook).length > 0,
      items: ({ cook }) => additions(cook).map(amountOf),
      cautions: ['hot-middle'],
    }),
    ...handsGate,
  ],
};
