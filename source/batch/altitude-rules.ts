import { seaLevelPascal } from '../sugar/atmosphere.js';
import { saturationCelsius } from '../sugar/water.js';
import type { Batch, Pair } from './batch.js';
import { ascending } from './composition.js';

/** How far below the recipe's sea-level target three ways of reckoning put today's, kelvin. */
export type AltitudeRules = {
  /** By the boiling curve of this very syrup: what the plan uses. */
  readonly curveKelvin: Pair;
  /** One degree Fahrenheit for every 500 ft; null where the altitude is not known. */
  readonly perFeetKelvin: number | null;
  /** What boiling water reads low, taken off the target. */
  readonly boilingWaterKelvin: number;
};

const metresPerFoot = 0.3048;

/**
 * The rules of thumb beside the curve.
 * 1 F per 500 ft, that is 2 F per 1000 ft: Colorado State University Extension, Candy Making at High Elevation.
 * Subtracting what boiling water reads low: Utah State University Extension.
 */
export const altitudeRules = ({ target, air }: Batch): AltitudeRules => ({
  curveKelvin: ascending(
    target.seaLevelCelsius[0] - target.todayCelsius[0],
    target.seaLevelCelsius[1] - target.todayCelsius[1],
  ),
  perFeetKelvin: air.altitudeMetres === null ? null : air.altitudeMetres / metresPerFoot / 500 / 1.8,
  boilingWaterKelvin: saturationCelsius(seaLevelPascal) - air.waterBoilsCelsius,
});
