import type { Cook } from '../cook.js';
import { pourPause } from './gates.js';
import { type Phase, step } from './phase.js';

/** The list was read only just now, at the pour: its own answer says that the path is clear. */
const readJustNow = (cook: Cook): boolean =>
  (cook.answers['pour.pause']?.t ?? Number.NEGATIVE_INFINITY) >=
  (cook.enteredAt.pour ?? Number.POSITIVE_INFINITY);

export const pour: Phase = {
  id: 'pour',
  gates: [pourPause],
  steps: [
    step('pour.path', {
      again: true,
      doneBy: readJustNow,
      question: { id: 'pour.path', answers: ['yes', 'no'], safe: 'no', passes: 'yes', safety: true },
      cautions: ['carry'],
    }),
    step('pour.pour', {
      again: true,
      values: ({ batch }) => ({
        scrape: batch.recipe.ingredients.some((one) => one.role === 'starch'),
        surface: batch.recipe.surface,
      }),
      cautions: ['carry'],
    }),
  ],
};
