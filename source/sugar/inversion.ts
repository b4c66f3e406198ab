import { solutionKilogramPerLitre } from './density.js';
import { zeroCelsiusKelvin } from './water.js';

/**
 * Rate at which acid splits sucrose into glucose and fructose, per minute.
 * Source: Vukov 1965 (constant and slope as cited after Rein 2012; pH and g/cm3 from memory): log10 k = 16.91 + log10(water, g/cm3) - 5670/T - pH. Measured in thin juice
 * up to about 130 °C; in boiling candy extrapolated, good for the order of magnitude. (Some later codes use g/100 cm3,
 * which is a hundred times too fast.)
 */
export const inversionPerMinute = (celsius: number, ph: number, solidsFraction: number): number => {
  const waterGramPerCubicCentimetre =
    (1 - solidsFraction) * solutionKilogramPerLitre(solidsFraction, celsius);
  return 10 ** (16.91 + Math.log10(waterGramPerCubicCentimetre) - 5670 / (celsius + zeroCelsiusKelvin) - ph);
};

/** One stretch of a cook at one temperature. */
export type Stretch = { readonly minutes: number; readonly celsius: number; readonly solidsFraction: number };

/** Fraction of the sucrose that is inverted after the stretches, 0 to 1: first order, rate by rate. */
export const invertedFraction = (stretches: Iterable<Stretch>, ph: number): number => {
  let exponent = 0;
  for (const { minutes, celsius, solidsFraction } of stretches)
    exponent += minutes * inversionPerMinute(celsius, ph, solidsFraction);
  return -Math.expm1(-exponent);
};
