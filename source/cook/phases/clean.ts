import type { PhaseId } from '../../recipe/recipe.js';
import { waterIntoScorchedBelowCelsius } from '../../sugar/skin.js';
import type { Cook } from '../cook.js';
import { isDone, type Phase, step } from './phase.js';

const inTheHotPot: readonly PhaseId[] = ['dissolve', 'boil', 'test', 'flavour', 'pour'];
/** Given up with the syrup still in the pot, and the pot was heated. */
const fullPot = (cook: Cook): boolean =>
  cook.stopped &&
  cook.pouredAt === null &&
  (cook.heat !== null || inTheHotPot.some((phase) => cook.enteredAt[phase] !== undefined));
const ringMayBeOn = (cook: Cook): boolean => (cook.heat === null ? fullPot(cook) : cook.heat.level !== 0);

/** Unread, a full pot is left this long before water goes in, seconds. Our judgement. */
const fullPotSeconds = 45 * 60;
const coolFrom = (cook: Cook): number => (cook.enteredAt.clean ?? cook.t) + fullPotSeconds;
const readsCool = (cook: Cook): boolean =>
  cook.lastReading !== null &&
  cook.lastReading.t >= (cook.enteredAt.clean ?? Number.POSITIVE_INFINITY) &&
  cook.lastReading.celsius < waterIntoScorchedBelowCelsius;

export const clean: Phase = {
  id: 'clean',
  steps: [
    step('clean.heat-off', {
      wanted: ringMayBeOn,
      means: { kind: 'heat', setting: 'off' },
      cautions: ['glowing-ring'],
    }),
    step('clean.cool', {
      wanted: fullPot,
      doneBy: readsCool,
      question: {
        id: 'clean.cool',
        answers: ['yes', 'no'],
        safe: 'no',
        passes: 'yes',
        safety: true,
        earliest: coolFrom,
      },
      values: ({ cook, now }) => ({
        belowCelsius: waterIntoScorchedBelowCelsius,
        waitSeconds: Math.max(0, coolFrom(cook) - now),
        thermometer: cook.thermometer,
      }),
      timers: ({ cook }) => [{ id: 'full-pot', from: cook.enteredAt.clean ?? cook.t, until: coolFrom(cook) }],
    }),
    step('clean.pot', {
      cautions: (cook) => (fullPot(cook) || isDone(cook, 'fold.pot') ? [] : ['emptied-pot']),
      values: ({ cook }) => ({ full: fullPot(cook) }),
    }),
    step('clean.tools', {}),
    step('clean.hob', { values: ({ batch }) => ({ stove: batch.kitchen.stove }) }),
  ],
};
