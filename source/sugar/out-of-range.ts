import { type Message, message } from '../texts/message.js';

/** What can be asked of the physics, with the unit in which the numbers are given. */
export type Asked = 'solids fraction' | 'celsius' | 'pascal' | 'metres' | 'dissolved grams' | 'joule';

/** A question outside the range in which a formula is known to hold. Carries the numbers and a sentence. */
export class OutOfRange extends RangeError {
  readonly said: Message;

  constructor(
    readonly asked: Asked,
    readonly value: number,
    readonly low: number,
    readonly high: number,
  ) {
    super(`${asked} ${value} is outside ${low} to ${high}`);
    this.name = 'OutOfRange';
    this.said = message('sugar.out-of-range', { asked, value, low, high });
  }
}

/** `value` if it lies within the range (a hair outside counts as the edge itself), else OutOfRange. */
export const within = (asked: Asked, value: number, low: number, high: number, hair = 0): number => {
  if (!(value >= low - hair && value <= high + hair)) throw new OutOfRange(asked, value, low, high);
  return Math.min(high, Math.max(low, value));
};
