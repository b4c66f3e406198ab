import type { Cook } from '../cook.js';
import { type Phase, step } from './phase.js';

const ringMayBeOn = (cook: Cook): boolean => cook.heat !== null && cook.heat.level !== 0;
/** Given up with the syrup still in the pot. */
const fullPot = (cook: Cook): boolean =>
  cook.stopped && cook.pouredAt === null && cook.enteredAt.dissolve !== undefined;

export const clean: Phase = {
  id: 'clean',
  steps: [
    step('clean.heat-off', {
      wanted: (cook) => ringMayBeOn(cook) || fullPot(cook),
      doneBy: (cook) => cook.heat !== null && cook.heat.level === 0 && !fullPot(cook),
      means: { kind: 'heat', setting: 'off' },
      cautions: ['glowing-ring'],
    }),
    step('clean.cool', {
      wanted: fullPot,
      values: () => ({ belowCelsius: 90 }),
      timers: ({ cook }) => {
        const from = cook.enteredAt.clean ?? cook.t;
        return [{ id: 'full-pot', from, until: from + 45 * 60 }];
      },
    }),
    step('clean.pot', { values: ({ cook }) => ({ full: fullPot(cook) }) }),
    step('clean.tools', {}),
    step('clean.hob', { values: ({ batch }) => ({ stove: batch.kitchen.stove }) }),
  ],
};
