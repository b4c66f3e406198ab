import type { Batch } from '../batch/batch.js';
import { latentJoulePerGram } from '../sugar/water.js';

/** Net power into a home batch on medium heat, watts. Our judgement; only for cooks without a thermometer. */
const ordinaryWatts = 600;

/** How long the boil may take, seconds: the heat of the water to boil away over an ordinary burner's power. */
export const expectedBoilSeconds = (batch: Batch): number => {
  const [grams] = batch.boil.waterToBoilAwayGrams;
  return Math.max(240, (grams * latentJoulePerGram(batch.boil.startsCelsius)) / ordinaryWatts);
};
