import type { Ingredient } from '../../recipe/recipe.js';
import type { Cook } from '../cook.js';
import type { HazardId } from '../hazards/hazard.js';
import { wantsSecondDrop } from '../verdict.js';
import { heatPause } from './gates.js';
import { amountOf } from './mix.js';
import { type Phase, potIsOff, step } from './phase.js';

const additions = (cook: Cook) => cook.batch.recipe.ingredients.filter((one) => one.phase === 'flavour');

const isFlavour = (one: Ingredient): boolean => one.role !== 'leavening';

const cautions = (cook: Cook): readonly HazardId[] => [
  ...(additions(cook).some((one) => one.alcohol) ? (['alcohol'] as const) : []),
  ...(additions(cook).some((one) => one.role === 'leavening') ? (['soda'] as const) : []),
  ...(additions(cook).some(isFlavour) ? (['steam-flavour'] as const) : []),
  'glowing-ring',
];

export const flavour: Phase = {
  id: 'flavour',
  gates: [heatPause],
  steps: [
    step('flavour.off', {
      // A cold-water test only implies that the pot is off: now somebody says so.
      doneBy: (cook) => potIsOff(cook) && cook.potOn?.said === true,
      means: { kind: 'pot', on: false },
      cautions: ['molten-sugar', 'glowing-ring'],
    }),
    step('flavour.sink', {
      again: true,
      means: { kind: 'heat', setting: 'off' },
      values: ({ batch, cook }) => ({
        stove: batch.kitchen.stove,
        again: wantsSecondDrop(cook) ? batch.target.feels : null,
      }),
      cautions: ['glowing-ring'],
      timers: ({ cook }) =>
        cook.potOn === null ? [] : [{ id: 'off-the-ring', from: cook.potOn.t, until: null }],
    }),
    step('flavour.add', {
      wanted: (cook) => additions(cook).length > 0,
      cautions,
      values: ({ cook }) => ({ flavour: additions(cook).some(isFlavour) }),
      items: ({ cook }) => additions(cook).map(amountOf),
    }),
  ],
};
