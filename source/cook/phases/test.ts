import { message } from '../../texts/message.js';
import type { Cook } from '../cook.js';
import { secondsToNextTest } from '../next-test.js';
import { stagesFromTarget, verdictOf } from '../verdict.js';
import type { View } from '../view.js';
import { heatPause } from './gates.js';
import { type Phase, potIsOff, step } from './phase.js';

/** Fingers err by a stage; from two below, low heat would keep the room waiting. Our judgement. */
const farStages = 2;

/** Far from the mark by the fingers, and by no reading near it. */
const isFar = (cook: Cook): boolean =>
  cook.nearSince === null &&
  cook.lastTest !== null &&
  cook.lastTest.outcome !== 'unsure' &&
  stagesFromTarget(cook, cook.lastTest.outcome) <= -farStages;

const backValues = ({ cook, batch }: View) => ({
  outcome: cook.lastTest?.outcome ?? 'unsure',
  feels: batch.target.feels,
  nextCelsius: cook.thermometer ? cook.takeOffCelsius : null,
  seconds: cook.lastTest === null ? 0 : secondsToNextTest(cook.lastTest),
});

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
      wanted: (cook) => verdictOf(cook) === 'short' && !isFar(cook),
      means: { kind: 'pot', on: true },
      values: backValues,
    }),
    step('test.back-far', {
      again: true,
      wanted: (cook) => verdictOf(cook) === 'short' && isFar(cook),
      means: { kind: 'pot', on: true },
      values: backValues,
    }),
  ],
};
