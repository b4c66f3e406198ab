import type { Cook } from '../cook.js';
import { piecesLeft } from '../pieces.js';
import { type Phase, step } from './phase.js';

/** From this humidity on pieces are wrapped at once. Common cut-off, from memory. */
const dampHumidity = 0.6;
const isDamp = (cook: Cook): boolean => (cook.batch.kitchen.room.humidity ?? 0) >= dampHumidity;
/** Rest before wrapping: Exploratorium says about half an hour; ten minutes is the least. */
const restSeconds = 600;

export const wrap: Phase = {
  id: 'wrap',
  steps: [
    step('wrap.rest', {
      wanted: (cook) => !isDamp(cook),
      values: ({ batch }) => ({ dust: batch.recipe.dust }),
      timers: ({ cook }) => {
        const from = cook.enteredAt.wrap ?? cook.t;
        return [{ id: 'rest', from, until: from + restSeconds }];
      },
    }),
    step('wrap.wrap', {
      values: ({ cook, batch }) => ({ ...piecesLeft(cook), damp: isDamp(cook), dust: batch.recipe.dust }),
    }),
    step('wrap.weigh', {}),
    step('wrap.serve', {
      values: ({ batch }) => ({
        contains: batch.recipe.allergens.contains,
        check: batch.recipe.allergens.check,
        unknown: batch.recipe.allergens.unknown,
      }),
      cautions: ['serving'],
    }),
  ],
};
