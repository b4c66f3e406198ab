import { heatPause } from './gates.js';
import { isDone, type Phase, potIsOff, step } from './phase.js';

export const dissolve: Phase = {
  id: 'dissolve',
  gates: [heatPause],
  steps: [
    step('dissolve.heat', {
      // A boil or a heat setting shows that the ring is on.
      doneBy: (cook) => (cook.heat !== null && cook.heat.level !== 0) || cook.boilsSince !== null,
      values: ({ batch }) => ({ heat: batch.kitchen.heat }),
      cautions: ['molten-sugar'],
    }),
    step('dissolve.back', {
      act: true,
      wanted: potIsOff,
      means: { kind: 'pot', on: true },
    }),
    step('dissolve.stir', {
      values: ({ batch }) => ({
        late: batch.recipe.stir === 'late',
        startsCelsius: batch.boil.startsCelsius,
      }),
      timers: ({ cook }) => [{ id: 'dissolving', from: cook.enteredAt.dissolve ?? cook.t, until: null }],
      next: ({ batch }) => (batch.recipe.stir === 'late' ? null : { id: 'dissolve.next' }),
    }),
    step('dissolve.spoon-out', {
      wanted: (cook) => cook.batch.recipe.stir === 'until-boil' && isDone(cook, 'dissolve.stir'),
    }),
  ],
};
