import { type BoilingCurve } from '../sugar/syrup.js';
import type { Pair } from './batch.js';

/** How three ways of finding today's target differ, in kelvin below the recipe's sea-level target. */
export type AltitudeRules = {
  /** By the boiling curve of this very syrup: what the plan uses. */
  readonly curveKelvin: Pair;
  /** One degree Fahrenheit for every 500 ft; null where the altitude is not known. */
  readonly perFeetKelvin: number | null;
  /** What boiling water reads low, taken off the target. */
  readonly boilingWaterKelvin: number;
};

const feetPerMetre = 1 / 0.3048;

/**
 * The rules of thumb beside the curve.
 * 1 F per 500 ft and 2 F per 1000 ft: Colorado State University Extension, Candy making at high elevation.
 * Subtracting what boiling water reads low: Utah State University Extension.
 */
export const altitudeRules = (
  curve: BoilingCurve,
  seaLevelCelsius: Pair,
  todayCelsius: Pair,
  waterBoilsAtSeaLevelCelsius: number,
  altitudeMetres: number | null,
): AltitudeRules => {
  const shifts = [seaLevelCelsius[0] - todayCelsius[0], seaLevelCelsius[1] - todayCelsius[1]];
  return {
    curveKelvin: [Math.min(...shifts), Math.max(...shifts)],
    perFeetKelvin: altitudeMetres === null ? null : (altitudeMetres * feetPerMetre) / 500 / 1.8,
    boilingWaterKelvin: waterBoilsAtSeaLevelCelsius - curve.waterBoilsCelsius,
  };
};
