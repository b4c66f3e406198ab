import { within } from './out-of-range.js';
import type { Syrup } from './syrup.js';

/**
 * Sucrose in a saturated solution in water, fraction of the mass, by temperature.
 * Sources: 0 to 100 °C CRC Handbook of Chemistry and Physics, solubility of sucrose in water; 120 and 140 °C a Russian
 * table of the properties of sucrose (k-mashzavod, Svoystva saharozy 5).
 */
const saturated: ReadonlyArray<readonly [celsius: number, fraction: number]> = [
  [0, 0.6418],
  [10, 0.6558],
  [20, 0.6709],
  [25, 0.6789],
  [30, 0.688],
  [40, 0.7042],
  [50, 0.7225],
  [60, 0.7418],
  [70, 0.7622],
  [80, 0.7836],
  [90, 0.8061],
  [100, 0.8297],
  [120, 0.8689],
  [140, 0.9146],
];

/** Sucrose fraction of a saturated solution, 0 to 140 °C, straight between the table's rows; OutOfRange outside. */
export const sucroseSolubility = (celsius: number): number => {
  within('celsius', celsius, 0, 140);
  const upper = Math.max(
    1,
    saturated.findIndex(([at]) => at >= celsius),
  );
  const [[fromCelsius, fromFraction], [toCelsius, toFraction]] = [saturated[upper - 1], saturated[upper]] as [
    readonly [number, number],
    readonly [number, number],
  ];
  return fromFraction + ((celsius - fromCelsius) / (toCelsius - fromCelsius)) * (toFraction - fromFraction);
};

/**
 * Supersaturation coefficient of sucrose: sucrose per water in the mix over sucrose per water in a saturated solution
 * at `celsius`; above 1 crystals can grow. Other sugars lower the true solubility a little: a floor, not the value.
 * Infinity for a syrup without water.
 */
export const supersaturation = (syrup: Syrup, celsius: number): number => {
  const fraction = sucroseSolubility(celsius);
  return syrup.sucroseGrams / syrup.waterGrams / (fraction / (1 - fraction));
};

/**
 * What keeps sucrose from graining, per gram of sucrose: dry glucose syrup solids and invert. `invertedFraction` of the
 * sucrose has turned into invert on the way. Infinity where there is no sucrose.
 */
export const doctorRatio = (syrup: Syrup, invertedFraction = 0): number => {
  const solids = syrup.glucoseSolids.reduce((sum, part) => sum + part.grams, 0);
  const inverted = syrup.sucroseGrams * invertedFraction;
  return (
    (solids + syrup.invertGrams + inverted * invertGramsPerSucroseGram) / (syrup.sucroseGrams - inverted)
  );
};

/** One molecule of water is taken up: 360.312 g of invert from 342.297 g of sucrose. */
export const invertGramsPerSucroseGram = 360.312 / 342.2965;

export type GrainRisk = 'low' | 'some' | 'high';

/**
 * From this ratio up a batch that is handled well does not grain: sucrose to syrup solids of 80 to 20 is the leanest that
 * Hartel 2012, The Manufacturing Confectioner, September, p. 70 gives; 75 sugar to 25 corn syrup as it is (0.27 in
 * solids) will not grain after Knott's Pop Corn Book.
 */
export const enoughDoctor = 0.25;
/** Below this a batch is expected to turn to cream: published pulled candies start at 0.33; our judgement. */
export const tooLittleDoctor = 0.12;

/** Risk that the batch grains in pot or hands, by the doctor ratio. Stirring late and seeds on the wall add to it. */
export const grainRisk = (ratio: number): GrainRisk => {
  if (ratio >= enoughDoctor) return 'low';
  return ratio >= tooLittleDoctor ? 'some' : 'high';
};

/** Grams of dry glucose syrup solids (or invert) still missing for `ratio`; 0 where there is enough. */
export const doctorNeeded = (syrup: Syrup, ratio = enoughDoctor): number => {
  const present = syrup.glucoseSolids.reduce((sum, part) => sum + part.grams, 0) + syrup.invertGrams;
  return Math.max(0, ratio * syrup.sucroseGrams - present);
};
