import { middleThermometerOf } from '../../kitchen/air.js';
import { handLimitCelsius } from '../../sugar/skin.js';
import type { Message } from '../../texts/message.js';
import { message } from '../../texts/message.js';
import type { Cook } from '../cook.js';
import { answered, type Question, step } from './phase.js';

const pausePoint = (id: string): Question => ({
  id,
  answers: ['yes', 'no'],
  safe: 'no',
  passes: 'yes',
  safety: true,
});

/** Pause point 1: before heat. */
export const heatPause = step('heat.pause', {
  question: pausePoint('heat.pause'),
  values: ({ batch }) => ({ alone: false, neededLitres: batch.pot.neededLitres }),
  items: ({ batch }): readonly Message[] => [
    message('heat.pause.hands'),
    message('heat.pause.people'),
    message('heat.pause.zone'),
    message('heat.pause.water'),
    message('heat.pause.pot', { neededLitres: batch.pot.neededLitres, fits: batch.pot.fits }),
    message('heat.pause.tools', { surface: batch.recipe.surface }),
    message('heat.pause.allergies', {
      contains: batch.recipe.allergens.contains,
      check: batch.recipe.allergens.check,
      unknown: batch.recipe.allergens.unknown,
    }),
  ],
});

/** Pause point 2: before pouring, read in the boil about 8 K below take-off. */
export const pourPause = step('pour.pause', {
  question: pausePoint('pour.pause'),
  items: ({ batch }): readonly Message[] => [
    message('pour.pause.path'),
    message('pour.pause.slab', { surface: batch.recipe.surface }),
    message('pour.pause.trivet'),
    message('pour.pause.who'),
    message('pour.pause.back'),
    message('pour.pause.flavour', {
      items: batch.recipe.ingredients
        .filter((one) => one.phase === 'flavour')
        .map((one) => `${one.amount} ${one.name}`),
    }),
  ],
});

export const handLimit = (cook: Cook): number => handLimitCelsius(cook.hands);

/** The middle was measured at or below the limit for these hands since the mass was last warmed. */
export const middleIsMeasured = (cook: Cook): boolean =>
  measures(cook) &&
  cook.middle !== null &&
  cook.middle.celsius <= handLimit(cook) &&
  cook.middle.t >= (cook.warmedAt ?? Number.NEGATIVE_INFINITY);

const minute = 60;
/** Without a thermometer for the middle: not before this, by the thickness of the layer. Our judgement. */
export const waitUnmeasuredSeconds = { thin: 20 * minute, thick: 45 * minute } as const;

const coolingSince = (cook: Cook): number =>
  Math.max(cook.pouredAt ?? cook.enteredAt.fold ?? cook.enteredAt.pull ?? cook.t, cook.warmedAt ?? 0);

/** After a crumb that was still too hot: try the next one not before, seconds. Our judgement. */
const nextCrumbSeconds = 5 * minute;

export const crumbFrom = (cook: Cook): number => {
  const layer = answered(cook, 'hands.layer', 'yes') ? 'thin' : 'thick';
  const crumb = cook.answers['hands.crumb'];
  return Math.max(
    coolingSince(cook) + waitUnmeasuredSeconds[layer],
    crumb?.answer === 'no' ? crumb.t + nextCrumbSeconds : 0,
  );
};

/** The middle can be measured: there is a thermometer that goes in, and nobody has said that it is gone. */
const measures = (cook: Cook): boolean =>
  cook.middleThermometer && middleThermometerOf(cook.batch.kitchen)?.kind !== 'infrared';

/** Hands touch nothing before the middle of the mass has been measured below the limit. */
export const handsMeasure = step('hands.measure', {
  wanted: measures,
  doneBy: middleIsMeasured,
  endless: true,
  values: ({ cook, now }) => ({
    limitCelsius: handLimit(cook),
    middleCelsius: cook.middle?.celsius ?? null,
    againSeconds: secondsToLimit(cook, now),
    hands: cook.hands,
  }),
  cautions: ['hot-middle'],
  timers: ({ cook }) => [{ id: 'cooling', from: coolingSince(cook), until: null }],
});

/** Newton's law of cooling through pour and last measure: until the middle may be at the limit. Rough; 2-15 min after that measure, then 0. */
export const secondsToLimit = (cook: Cook, now: number): number | null => {
  const { middle } = cook;
  const room = cook.batch.kitchen.room.celsius ?? 20;
  const poured = cook.batch.target.takeOffCelsius;
  if (middle === null || middle.celsius <= handLimit(cook)) return null;
  const elapsed = middle.t - coolingSince(cook);
  if (elapsed <= 0 || middle.celsius >= poured) return null;
  const perSecond = Math.log((poured - room) / (middle.celsius - room)) / elapsed;
  const toGo = Math.log((middle.celsius - room) / Math.max(1, handLimit(cook) - room)) / perSecond;
  const fromMeasure = Math.min(900, Math.max(120, toGo));
  return Math.max(0, fromMeasure - (now - middle.t));
};

export const handsLayer = step('hands.layer', {
  wanted: (cook) => !measures(cook),
  question: { id: 'hands.layer', answers: ['yes', 'no'], safe: 'no', passes: 'either', safety: true },
  cautions: ['hot-middle'],
});

export const handsCrumb = step('hands.crumb', {
  wanted: (cook) => !measures(cook),
  question: {
    id: 'hands.crumb',
    answers: ['yes', 'no'],
    safe: 'no',
    passes: 'yes',
    safety: true,
    earliest: crumbFrom,
  },
  values: ({ cook, now }) => ({ waitSeconds: Math.max(0, crumbFrom(cook) - now) }),
  cautions: ['hot-middle'],
  timers: ({ cook }) => [{ id: 'not-before', from: coolingSince(cook), until: crumbFrom(cook) }],
});

/** Pause point 3: before hands. */
export const handsPause = step('hands.pause', {
  question: pausePoint('hands.pause'),
  values: ({ cook }) => ({ hands: cook.hands, limitCelsius: handLimit(cook) }),
  items: ({ cook, batch }): readonly Message[] => [
    cook.middle !== null && cook.middleThermometer
      ? message('hands.pause.middle', { celsius: cook.middle.celsius, limitCelsius: handLimit(cook) })
      : message('hands.pause.crumb'),
    message('hands.pause.rings'),
    message('hands.pause.prepared', { hands: batch.recipe.hands, whose: cook.hands }),
    message('hands.pause.bowl'),
    message('hands.pause.scissors'),
    message('hands.pause.children'),
    message('hands.pause.eat'),
  ],
});

/** The gate to hands, in order. */
export const handsGate = [handsMeasure, handsLayer, handsCrumb, handsPause] as const;
