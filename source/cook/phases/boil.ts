import { wallCare } from '../../recipe/wall-care.js';
import { message } from '../../texts/message.js';
import type { Cook } from '../cook.js';
import { nextTestDue } from '../next-test.js';
import type { View } from '../view.js';
import { heatPause, pourPause } from './gates.js';
import { type Phase, potIsOff, step, type Timer } from './phase.js';

const late = (cook: Cook): boolean => cook.batch.recipe.stir === 'late';
const blind = (cook: Cook): boolean => !cook.thermometer;
/** Wash the wall while the syrup is thin, true Celsius; a batch that starts boiling hotter, as it starts. Common practice. */
const brushBefore = (cook: Cook): number => Math.max(108, cook.batch.boil.startsCelsius + 3);
const isThin = (cook: Cook): boolean =>
  cook.nearSince === null && (cook.lastReading?.celsius ?? Number.NEGATIVE_INFINITY) < brushBefore(cook);

const blindTimer = ({ cook }: View): readonly Timer[] =>
  blind(cook) ? [{ id: 'test-due', from: cook.enteredAt.boil ?? cook.t, until: nextTestDue(cook) }] : [];

const stillValues = (view: View) => ({
  late: late(view.cook),
  thermometer: view.cook.thermometer,
  nextSeconds: view.forecast?.nextReadingSeconds ?? null,
  takeOffCelsius: view.cook.takeOffCelsius,
  feels: view.batch.target.feels,
  testSeconds: Math.max(0, nextTestDue(view.cook) - view.now),
});

/** Kelvin below the take-off at which the cup for the first cold-water test should stand ready. Our judgement. */
const firstTestKelvin = 3;

/** Shown from anywhere before the test once the pot has to come off. */
export const boilOff = step('boil.off', {
  act: true,
  doneBy: potIsOff,
  means: { kind: 'pot', on: false },
  values: ({ cook, batch }) => ({
    celsius: cook.lastReading?.celsius ?? null,
    stove: batch.kitchen.stove,
    windowCelsius: batch.target.todayCelsius,
  }),
  cautions: ['molten-sugar', 'glowing-ring'],
});

export const boil: Phase = {
  id: 'boil',
  gates: [heatPause],
  steps: [
    step('boil.back', {
      act: true,
      // Off the ring for a trouble, not for a test.
      wanted: (cook) => potIsOff(cook) && cook.offSince === null,
      means: { kind: 'pot', on: true },
    }),
    step('boil.heat', {
      act: true,
      // Turned off for a trouble, and the pot stands on the ring again.
      wanted: (cook) => cook.heat?.level === 0,
      means: { kind: 'heat', setting: 'low' },
      cautions: ['molten-sugar'],
    }),
    step('boil.start', {
      doneBy: (cook) => cook.boilsSince !== null || cook.nearSince !== null,
      values: ({ batch }) => ({ startsCelsius: batch.boil.startsCelsius }),
      watch: () => message('boil.watch.foam'),
    }),
    step('boil.lid', {
      wanted: (cook) => wallCare(cook.batch.recipe) === 'lid' && cook.nearSince === null,
      doneBy: (cook) => cook.lidOn !== null,
      means: { kind: 'lid', on: true },
      watch: () => message('boil.watch.foam'),
    }),
    step('boil.lid-off', {
      wanted: (cook) => wallCare(cook.batch.recipe) === 'lid' && cook.lidOn !== null,
      doneBy: (cook) => cook.lidOn?.on === false,
      means: { kind: 'lid', on: false },
      cautions: ['steam-lid'],
      timers: ({ cook }) => {
        const from = cook.lidOn?.t ?? cook.t;
        return [{ id: 'lid', from, until: from + 150 }];
      },
      watch: () => message('boil.watch.foam'),
    }),
    step('boil.brush', {
      wanted: (cook) => wallCare(cook.batch.recipe) === 'brush' && isThin(cook),
      values: ({ cook }) => ({ beforeCelsius: brushBefore(cook) }),
      watch: () => message('boil.watch.foam'),
    }),
    step('boil.probe', {
      wanted: (cook) => cook.thermometer && cook.readingsTaken < 2,
      cautions: ['cold-vessel'],
      watch: () => message('boil.watch.foam'),
    }),
    step('boil.still', {
      again: true,
      endless: true,
      doneBy: (cook) => cook.nearSince !== null,
      values: stillValues,
      timers: blindTimer,
      next: ({ batch, cook }) =>
        cook.thermometer
          ? message('boil.next.test', {
              nearCelsius: cook.takeOffCelsius - firstTestKelvin,
              takeOffCelsius: cook.takeOffCelsius,
              feels: batch.target.feels,
            })
          : message('boil.next.blind-test'),
      watch: ({ cook }) => (late(cook) ? message('boil.watch.scorch') : message('boil.watch.foam')),
    }),
    pourPause,
    step('boil.last', {
      again: true,
      endless: true,
      doneBy: (cook) => cook.offSince !== null,
      values: stillValues,
      timers: blindTimer,
      next: () => message('boil.next.trivet'),
      watch: ({ cook }) => (late(cook) ? message('boil.watch.scorch') : message('boil.watch.run')),
    }),
    boilOff,
  ],
};
