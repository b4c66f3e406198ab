import { type BoilingCurve, dissolvedGrams, type Syrup, totalGrams, withWater } from '../sugar/syrup.js';
import type { Pair } from './batch.js';
import { together } from './syrup-of.js';

/** The candy as it leaves the pot at a temperature, with what is added later. */
export type Cooked = {
  /** The syrup in the pot, with the water that is left. */
  readonly inPot: Syrup;
  /** The same with flavour, fold and pull additions. */
  readonly candy: Syrup;
  readonly grams: number;
  /** Water over the whole mass, fat and starch included. */
  readonly moistureFraction: number;
  /** Dissolved over dissolved plus water. */
  readonly solidsFraction: number;
};

/**
 * What the pot holds when it boils at `celsius`. Water never comes back by boiling: a batch that starts drier than
 * that keeps its water.
 */
export const cookedAt = (start: Syrup, later: Syrup, curve: BoilingCurve, celsius: number): Cooked => {
  const inPot = withWater(start, Math.min(start.waterGrams, curve.waterGramsAt(celsius)));
  const candy = together(inPot, later);
  const grams = totalGrams(candy);
  const dissolved = dissolvedGrams(candy);
  return {
    inPot,
    candy,
    grams,
    moistureFraction: candy.waterGrams / grams,
    solidsFraction: dissolved / (dissolved + candy.waterGrams),
  };
};

/** Two numbers as an ascending pair. */
export const ascending = (one: number, other: number): Pair => (one <= other ? [one, other] : [other, one]);
