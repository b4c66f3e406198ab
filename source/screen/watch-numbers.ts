import type { Advice } from '../cook/advice.js';
import type { Cook } from '../cook/cook.js';
import { handLimit } from '../cook/phases/gates.js';
import { stageShown } from '../cook/readings.js';
import { type Message, message, type TextId } from '../texts/message.js';
import type { Printer } from '../units/printer.js';
import { otherUnit } from '../units/temperature.js';
import { measuredIn } from './measured.js';

/** What is written as large as the window has room for, and what stands small below each. */
export type WatchNumbers = {
  readonly number: string | null;
  readonly numberLabel: Message | null;
  readonly word: Message;
  readonly wordLabel: Message | null;
  /** How long it still takes, in words. */
  readonly left: Message | null;
  readonly share: number | null;
};

const ofSyrup = (cook: Cook, advice: Advice, own: Printer): Pick<WatchNumbers, 'number' | 'numberLabel'> => {
  const { lastReading } = cook;
  if (lastReading === null || !cook.thermometer)
    return { number: null, numberLabel: cook.thermometer ? message('watch.no-reading') : null };
  return {
    number: own.dial(lastReading.celsius),
    numberLabel: message('watch.reading', {
      ago: advice.now - lastReading.t,
      other: own.inScale(otherUnit(own.unit)).dial(lastReading.celsius),
    }),
  };
};

const ofMiddle = (cook: Cook, own: Printer): Pick<WatchNumbers, 'number' | 'numberLabel'> =>
  cook.middle === null
    ? { number: null, numberLabel: null }
    : {
        number: own.degrees(cook.middle.celsius),
        numberLabel: message('watch.middle-reads', { limit: own.degrees(handLimit(cook)) }),
      };

/** The next thing that is waited for; a hurt hand's timer is nobody's business. */
const waited = (advice: Advice, own: Printer): Message | null => {
  const running = advice.timers
    .filter(({ id, until, due }) => until !== null && !due && !id.startsWith('trouble.'))
    .map(({ until }) => (until ?? 0) - advice.now);
  const seconds = Math.min(...running, advice.waits === null ? Infinity : advice.waits.until - advice.now);
  return Number.isFinite(seconds) ? message('watch.wait', { clock: own.clock(Math.ceil(seconds)) }) : null;
};

const leftOf = (advice: Advice, own: Printer): Message | null => {
  if (advice.offTheHeat) return message('watch.left.now');
  if (advice.forecast !== null)
    return message('watch.left', { about: own.about(advice.forecast.takeOffSeconds) });
  return waited(advice, own);
};

/** At the end: what was counted; nothing that was only computed. */
const outcome = ({ counted }: Cook): Message =>
  counted === null ? message('watch.done') : message('watch.pieces', { pieces: counted });

/** Pure: the temperature as the cook's own thermometer shows it, the stage or the phase, and the time left. */
export const watchNumbers = (cook: Cook, advice: Advice, own: Printer): WatchNumbers => {
  const { phase } = advice;
  const named = { word: { id: `phase.${phase}` as TextId }, wordLabel: null };
  const left = {
    left: leftOf(advice, own),
    share: advice.offTheHeat ? null : (advice.forecast?.boilShare ?? null),
  };
  if (phase === 'over' && !cook.stopped)
    return { number: null, numberLabel: null, word: outcome(cook), wordLabel: null, left: null, share: null };
  const measured = measuredIn(phase);
  if (measured === 'middle') return { ...ofMiddle(cook, own), ...named, ...left };
  if (measured === null) return { number: null, numberLabel: null, ...named, ...left };
  const { lastReading } = cook;
  const read = ofSyrup(cook, advice, own);
  if (read.number === null || lastReading === null || cook.boilsSince === null || phase === 'flavour')
    return { ...read, ...named, ...left };
  const stage = stageShown(cook, lastReading.celsius);
  return {
    ...read,
    word: message('watch.stage.word', { stage }),
    wordLabel: { id: `watch.stage.${stage}` },
    ...left,
  };
};
