import type { Advice } from '../cook/advice.js';
import { type Message, message } from '../texts/message.js';
import { otherUnit, parseScaleWord, type TemperatureUnit } from '../units/temperature.js';

/**
 * Which scale is read first is a habit of the person at this screen: no event, and never how a bare number is read,
 * for 250 taken as Celsius would be a burnt pot.
 */
export type ScaleChoice = TemperatureUnit | null;

/** "show c", "show f": the scale that is asked for. Null: that was not meant. */
export const scaleTyped = (typed: string): TemperatureUnit | null => {
  const word = /^show\s+(.+)$/i.exec(typed.trim())?.[1];
  return word === undefined ? null : parseScaleWord(word);
};

/** The scale that is not first now. */
export const switched = (choice: ScaleChoice, { typing }: Pick<Advice, 'typing'>): TemperatureUnit =>
  otherUnit(choice ?? typing.unit);

/** What to say of a scale that was asked for. */
export const scaleSaid = (shown: TemperatureUnit, { typing }: Pick<Advice, 'typing'>): Message =>
  message('scale.now', { shown, bare: typing.unit });
