import { forget } from '../forecast/index.js';
import { message } from '../texts/message.js';
import type { Asked } from './advice.js';
import { headline } from './candy.js';
import type { Cook } from './cook.js';
import type { CookEvent, Stamp } from './event.js';
import { potIsOff } from './phases/phase.js';
import type { View } from './view.js';

/** Before the pour, with heat or with hot syrup, nobody can say what became of the pot. */
const potMatters = (cook: Cook): boolean => {
  if (cook.pouredAt !== null || cook.stopped) return false;
  const ringIsOn = cook.heat !== null && cook.heat.level !== 0;
  return ringIsOn || ['dissolve', 'boil', 'test', 'flavour', 'pour'].includes(headline(cook));
};

/** Time in which nobody could be heard: what was believed of the syrup, and asked for by it, no longer stands. */
export const afterGap = (cook: Cook, event: Extract<CookEvent, { kind: 'gap' }> & Stamp): Cook => {
  const heard = { ...cook, heardAt: event.t };
  if (!potMatters(cook)) return heard;
  return {
    ...heard,
    gap: {
      seconds: event.seconds + (cook.gap?.seconds ?? 0),
      sure: event.sure && (cook.gap?.sure ?? true),
    },
    estimate: forget(cook.estimate, event.t, cook.hob),
    lastReading: null,
    readBefore: [],
    leftAlone: [],
    readingsTaken: 0,
    doubt: null,
    offSince: null,
    offBy: null,
  };
};

/** The pot has to be looked at before anything else is said; only "off the heat" for a reason found since comes first. */
export const gapComesFirst = ({ cook, offTheHeat }: Pick<View, 'cook' | 'offTheHeat'>): boolean =>
  cook.gap !== null && !offTheHeat;

export const gapHeadline = (cook: Cook, { seconds, sure }: NonNullable<Cook['gap']>) => ({
  step: 'gap.look',
  canBeDone: false,
  say: message('gap.look.say', { thermometer: cook.thermometer, read: cook.readingsTaken > 0 }),
  why: message('gap.look.why', { seconds, sure, on: !potIsOff(cook) }),
  shout: message('gap.look.shout'),
  urgent: !potIsOff(cook),
  told: false,
});

export const gapQuestion = (): Asked => ({
  id: 'gap',
  text: message('gap.ask'),
  answers: ['pot on', 'pot off', 'at fold', 'stop'],
  safe: 'pot off',
  kind: 'what is true now',
});
