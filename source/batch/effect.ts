import { type Firmness, firmnessAt, glassTransitionCelsius } from '../sugar/glass.js';
import { afterInversion } from './acid.js';
import type { Batch } from './batch.js';
import { usualRoomCelsius } from './candy.js';
import { cookedAt } from './composition.js';
import { laterOf } from './syrup-of.js';

/** What the candy becomes when it comes to rest at another temperature. */
export type Effect = {
  readonly celsius: number;
  readonly moistureFraction: number;
  readonly glassTransitionCelsius: number;
  readonly firmness: Firmness;
  readonly grams: number;
};

/** The candy cooked `kelvin` further than planned (negative: less), as far as the curve is known. */
export const effectOf = (batch: Batch, kelvin: number): Effect => {
  const { curve, recipe, syrup, kitchen } = batch;
  const [low, high] = curve.validCelsius;
  const celsius = Math.min(high, Math.max(low + 1, batch.target.aimCelsius + kelvin));
  const cooked = cookedAt(syrup, laterOf(recipe), curve, celsius);
  const glass = glassTransitionCelsius(afterInversion(cooked.candy, batch.candy.invertedFraction));
  return {
    celsius,
    moistureFraction: cooked.moistureFraction,
    glassTransitionCelsius: glass,
    firmness: firmnessAt(kitchen.room.celsius ?? usualRoomCelsius, glass),
    grams: cooked.grams,
  };
};
