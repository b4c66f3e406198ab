import { within } from './out-of-range.js';
import { dissolvedGrams, type Syrup } from './syrup.js';

/**
 * Density of liquid water, kg/m3, -10 to 150 °C.
 * Source: Kell 1975, J. Chem. Eng. Data 20:97, the formula of the abstract.
 */
export const waterKilogramPerCubicMetre = (celsius: number): number =>
  (999.83952 +
    celsius *
      (16.945176 +
        celsius *
          (-7.9870401e-3 +
            celsius * (-46.170461e-6 + celsius * (105.56302e-9 + celsius * -280.54253e-12))))) /
  (1 + 16.87985e-3 * celsius);

/**
 * Coefficients of the excess over water: one row for each power of (t - 20 °C)/100, from the zeroth, in it one for
 * each power of the solids fraction, from the first.
 * Source: the polynomial of the PTB/ICUMSA form as coded in public process code; checked against CRC and NBS C440.
 */
const excess = [
  [385.1761, 135.3705, 40.9299, -3.9643, 13.4853, -17.289],
  [-46.272, -7.172, 1.1597, 5.1126, 17.5254],
  [59.7712, 7.2491, 12.363, -35.4791],
  [-47.2207, -21.6977, 27.6301],
  [18.3184, 12.3081],
] as const;

const horner = (factors: readonly number[], at: number): number =>
  factors.reduceRight((sum, factor) => (sum + factor) * at, 0);

/** The polynomial's own range ends at 80 °C; to boiling candy it is extrapolated along its value there. */
const highestFitted = 80;

const fitted = (solidsFraction: number, celsius: number): number =>
  waterKilogramPerCubicMetre(celsius) +
  excess.reduce((sum, row, power) => sum + horner(row, solidsFraction) * ((celsius - 20) / 100) ** power, 0);

/**
 * Density of a sugar solution, kilograms per litre, for solids fractions 0 to 1 and 0 to 170 °C; OutOfRange outside.
 * Measured to about 85 % solids and 80 °C; hotter, the expansion between 60 and 80 °C is carried on (our judgement).
 * Glucose syrup solids and invert are taken as sucrose: they differ by less than 1 %.
 */
export const solutionKilogramPerLitre = (solidsFraction: number, celsius: number): number => {
  within('solids fraction', solidsFraction, 0, 1);
  within('celsius', celsius, 0, 170);
  if (celsius <= highestFitted) return fitted(solidsFraction, celsius) / 1000;
  const atEnd = fitted(solidsFraction, highestFitted);
  const perKelvin = (atEnd - fitted(solidsFraction, highestFitted - 20)) / 20;
  return (atEnd + perKelvin * (celsius - highestFitted)) / 1000;
};

/** Liquid butter fat and oils at 40 to 60 °C; from memory, common tables give 0.89 to 0.92. */
const fatKilogramPerLitre = 0.9;
/** Starch and milk protein, dry; from memory, common tables give 1.4 to 1.5. */
const inertKilogramPerLitre = 1.45;

/** Litres that a batch fills at rest (without foam), everything in it, at `celsius`. */
export const syrupLitres = (syrup: Syrup, celsius: number): number => {
  const dissolved = dissolvedGrams(syrup);
  const solution = dissolved + syrup.waterGrams;
  const solutionLitres =
    solution > 0 ? solution / 1000 / solutionKilogramPerLitre(dissolved / solution, celsius) : 0;
  return (
    solutionLitres +
    syrup.fatGrams / 1000 / fatKilogramPerLitre +
    syrup.inertGrams / 1000 / inertKilogramPerLitre
  );
};
