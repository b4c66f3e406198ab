import { seaLevelPascal } from './atmosphere.js';
import { OutOfRange, within } from './out-of-range.js';
import {
  bindingJoulePerGram,
  logWaterActivity,
  logWaterActivitySlope,
  moleFractionOf,
  moleFractionSlope,
  type Solute,
  solidsFractionOf,
  soluteOf,
} from './solution.js';
import { latentJoulePerGram, saturationCelsius, saturationPascal } from './water.js';

/** A syrup by mass. `glucoseSolids` lists dry solids by dextrose equivalent; fat and inert do not dissolve. */
export type Syrup = {
  readonly sucroseGrams: number;
  readonly glucoseSolids: ReadonlyArray<{ readonly grams: number; readonly de: number }>;
  readonly invertGrams: number;
  readonly saltGrams: number;
  readonly waterGrams: number;
  readonly fatGrams: number;
  readonly inertGrams: number;
};

/** The boiling curve of one syrup at one air pressure. Fractions count dissolved solids over solids plus water. */
export type BoilingCurve = {
  readonly pressurePascal: number;
  readonly waterBoilsCelsius: number;
  /** Grams of what is dissolved: sugars, syrup solids, salt. */
  readonly dissolvedGrams: number;
  /** Range of solids fractions in which the curve may be asked. */
  readonly validSolidsFraction: readonly [number, number];
  readonly validCelsius: readonly [number, number];
  /** Boiling temperature at a solids fraction; RangeError outside the valid range. */
  celsiusAt(solidsFraction: number): number;
  /** Solids fraction that boils at `celsius`; RangeError outside the valid range. */
  solidsAt(celsius: number): number;
  /** Grams of water left in the pot when it boils at `celsius`. */
  waterGramsAt(celsius: number): number;
  /**
   * Here and today's temperature of the syrup that would boil at `seaLevelCelsius` under 101 325 Pa.
   * Outside the valid range the shift at the nearest end of it is kept, so that every stage has a bound.
   */
  fromSeaLevel(seaLevelCelsius: number): number;
  /** Slope of the curve: kelvin per unit of solids fraction (divide by 100 for kelvin per per cent). */
  kelvinPerSolidsFraction(solidsFraction: number): number;
  /** Heat that evaporates one gram of water out of this syrup as it boils at a solids fraction, joule. */
  evaporationJoulePerGram(solidsFraction: number): number;
};

/** The curve is asked for nothing drier: above, published points scatter by 5 K and more, and sugar decomposes. */
export const highestSolidsFraction = 0.985;
/** Air pressures of -500 to 5000 m with weather on top. */
export const pressureRangePascal = [50_000, 110_000] as const;

const hairFraction = 1e-9;
const hairKelvin = 1e-6;
const forwardSteps = 12;
const backwardSteps = 60;

/**
 * Temperature at which the water of the syrup has the vapour pressure `pascal`.
 * The activity changes so little with temperature that each round shrinks the error at least twentyfold.
 */
const boilsAt = (solute: Solute, solidsFraction: number, pascal: number): number => {
  const moleFraction = moleFractionOf(solute, solidsFraction);
  let celsius = saturationCelsius(pascal);
  for (let step = 0; step < forwardSteps; step++) {
    const next = saturationCelsius(pascal / Math.exp(logWaterActivity(solute, moleFraction, celsius)));
    if (Math.abs(next - celsius) < 1e-10) return next;
    celsius = next;
  }
  return celsius;
};

/** By the implicit function: along the curve the logarithm of activity times vapour pressure stays the same. */
const boilingSlope = (solute: Solute, solidsFraction: number, celsius: number): number => {
  const moleFraction = moleFractionOf(solute, solidsFraction);
  const bySolids =
    logWaterActivitySlope(solute, moleFraction, celsius) * moleFractionSlope(solute, solidsFraction);
  const step = 0.01;
  const byKelvin = (at: number): number =>
    Math.log(saturationPascal(at)) + logWaterActivity(solute, moleFraction, at);
  return (-bySolids * 2 * step) / (byKelvin(celsius + step) - byKelvin(celsius - step));
};

/** The inverse: Newton's method on the mole fraction, kept between brackets, halving where it would leave them. */
const solidsThatBoilAt = (solute: Solute, celsius: number, pascal: number, highest: number): number => {
  const wanted = Math.log(pascal / saturationPascal(celsius));
  let low = 0;
  let high = moleFractionOf(solute, highest);
  let moleFraction = Math.min(high, 1 - Math.exp(wanted));
  for (let step = 0; step < backwardSteps; step++) {
    const excess = logWaterActivity(solute, moleFraction, celsius) - wanted;
    if (excess > 0) low = moleFraction;
    else high = moleFraction;
    const newton = moleFraction - excess / logWaterActivitySlope(solute, moleFraction, celsius);
    const next = newton >= low && newton <= high ? newton : (low + high) / 2;
    if (Math.abs(next - moleFraction) < 1e-14) return solidsFractionOf(solute, next);
    moleFraction = next;
  }
  return solidsFractionOf(solute, moleFraction);
};

/**
 * The boiling curve of a syrup under an air pressure of 50 to 110 kPa: a syrup boils where the activity of its water
 * times the vapour pressure of pure water reaches the air's pressure. Fat and what does not dissolve play no part.
 *
 * Sources: activity Starzak & Peacock 1997; vapour pressure IAPWS R7-97 (see solution.ts and water.ts). Published
 * boiling points themselves disagree by 2 K at 80 % solids and 4 K at 90 %: no curve is known better than that.
 * Throws OutOfRange for a pressure outside, and for a syrup in which nothing is dissolved.
 */
export const boilingCurve = (syrup: Syrup, pressurePascal: number): BoilingCurve => {
  const pascal = within('pascal', pressurePascal, ...pressureRangePascal);
  const solute = soluteOf(syrup);
  if (!(solute.grams > 0)) throw new OutOfRange('dissolved grams', solute.grams, Number.MIN_VALUE, Infinity);

  const waterBoilsCelsius = saturationCelsius(pascal);
  const validSolidsFraction = [0, highestSolidsFraction] as const;
  const validCelsius = [waterBoilsCelsius, boilsAt(solute, highestSolidsFraction, pascal)] as const;
  const validSeaLevel = [
    saturationCelsius(seaLevelPascal),
    boilsAt(solute, highestSolidsFraction, seaLevelPascal),
  ] as const;

  const solidsIn = (solidsFraction: number): number =>
    within('solids fraction', solidsFraction, ...validSolidsFraction, hairFraction);
  const celsiusAt = (solidsFraction: number): number => boilsAt(solute, solidsIn(solidsFraction), pascal);
  const solidsAt = (celsius: number): number =>
    solidsThatBoilAt(
      solute,
      within('celsius', celsius, ...validCelsius, hairKelvin),
      pascal,
      highestSolidsFraction,
    );

  return {
    pressurePascal: pascal,
    waterBoilsCelsius,
    dissolvedGrams: solute.grams,
    validSolidsFraction,
    validCelsius,
    celsiusAt,
    solidsAt,
    waterGramsAt: (celsius) => {
      const solidsFraction = solidsAt(celsius);
      return (solute.grams * (1 - solidsFraction)) / solidsFraction;
    },
    fromSeaLevel: (seaLevelCelsius) => {
      if (seaLevelCelsius <= validSeaLevel[0]) return seaLevelCelsius - validSeaLevel[0] + validCelsius[0];
      if (seaLevelCelsius >= validSeaLevel[1]) return seaLevelCelsius - validSeaLevel[1] + validCelsius[1];
      return boilsAt(
        solute,
        solidsThatBoilAt(solute, seaLevelCelsius, seaLevelPascal, highestSolidsFraction),
        pascal,
      );
    },
    kelvinPerSolidsFraction: (solidsFraction) => {
      const fraction = solidsIn(solidsFraction);
      return boilingSlope(solute, fraction, boilsAt(solute, fraction, pascal));
    },
    evaporationJoulePerGram: (solidsFraction) => {
      const fraction = solidsIn(solidsFraction);
      return (
        latentJoulePerGram(boilsAt(solute, fraction, pascal)) +
        bindingJoulePerGram(solute, moleFractionOf(solute, fraction))
      );
    },
  };
};

/** Grams of what dissolves: sugars, syrup solids, salt. */
export const dissolvedGrams = (syrup: Syrup): number => soluteOf(syrup).grams;

/** Dissolved over dissolved plus water, 0 to 1; null for an empty pot. */
export const solidsFraction = (syrup: Syrup): number | null => {
  const dissolved = dissolvedGrams(syrup);
  return dissolved + syrup.waterGrams > 0 ? dissolved / (dissolved + syrup.waterGrams) : null;
};

/** Everything in the pot, grams. */
export const totalGrams = (syrup: Syrup): number =>
  dissolvedGrams(syrup) + syrup.waterGrams + syrup.fatGrams + syrup.inertGrams;

/** The same syrup, `factor` times as much of it. */
export const scaleSyrup = (syrup: Syrup, factor: number): Syrup => ({
  sucroseGrams: syrup.sucroseGrams * factor,
  glucoseSolids: syrup.glucoseSolids.map(({ grams, de }) => ({ grams: grams * factor, de })),
  invertGrams: syrup.invertGrams * factor,
  saltGrams: syrup.saltGrams * factor,
  waterGrams: syrup.waterGrams * factor,
  fatGrams: syrup.fatGrams * factor,
  inertGrams: syrup.inertGrams * factor,
});

/** The same solids with another amount of water. */
export const withWater = (syrup: Syrup, waterGrams: number): Syrup => ({ ...syrup, waterGrams });
