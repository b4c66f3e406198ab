import { message } from '../../texts/message.js';
import { verdictOf } from '../verdict.js';
import { heatPause } from './gates.js';
import { type Phase, potIsOff, step } from './phase.js';

/** The cold-water test, with the pot off the ring. Its outcome sends the cook on, or back to the boil. */
export const test: Phase = {
  id: 'test',
  gates: [heatPause],
  steps: [
    step('test.off', {
      again: true,
      doneBy: potIsOff,
      means: { kind: 'pot', on: false },
      cautions: ['molten-sugar', 'glowing-ring'],
    }),
    step('test.drop', {
      again: true,
      // Steadily in the window by the thermometer, the test may be left out.
      endless: (cook) => cook.reachedAt === null,
      doneBy: (cook) => verdictOf(cook) !== null && verdictOf(cook) !== 'again',
      values: ({ cook, batch }) => ({
        feels: batch.target.feels,
        again: verdictOf(cook) === 'again',
      }),
      cautions: ['cold-test', 'cold-vessel', 'glowing-ring'],
      items: () => [
        message('feels.dissolves'),
        message('feels.thread'),
        message('feels.soft ball'),
        message('feels.firm ball'),
        message('feels.hard ball'),
        message('feels.soft crack'),
        message('feels.hard crack'),
        message('feels.unsure'),
      ],
      timers: ({ cook }) =>
        cook.potOn === null ? [] : [{ id: 'off-the-ring', from: cook.potOn.t, until: null }],
    }),
    step('test.back', {
      again: true,
      wanted: (cook) => verdictOf(cook) === 'short',
      means: { kind: 'pot', on: true },
      values: ({ cook, batch }) => ({
        outcome: cook.lastTest?.outcome ?? 'unsure',
        feels: batch.target.feels,
        nextCelsius: cook.thermometer ? cook.takeOffCelsius : null,
      }),
    }),
  ],
};
