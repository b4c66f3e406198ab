import { numberAt } from '../units/at.js';
import { syrupCelsius } from './advance.js';
import { curveBias, dialBias, type Estimate, joulesDone, joulesToBoil, unknowns } from './estimate.js';
import type { Hob } from './forecast.js';
import { clamp } from './numbers.js';
import type { Path } from './path.js';
import { average, type Shown, spreadPoints, varianceAbout, weighIn } from './points.js';

export type Expectation = Shown & { readonly variance: number };

/** What a careful reading of a kitchen thermometer in bubbling syrup scatters by, kelvin. Our judgement. */
const usualReadingSdKelvin = 0.65;

/** The lag of a dial is known to about a third. Our judgement. */
export const lagDoubt = 0.33;

export const readingSdOf = (hob: Hob): number => clamp(hob.readingSdKelvin ?? usualReadingSdKelvin, 0.05, 10);

export const readingVariance = (estimate: Estimate, hob: Hob): number =>
  readingSdOf(hob) ** 2 + (lagDoubt * estimate.behindKelvin) ** 2;

/** What the dial should show, and how far from it a reading may be: kelvin. */
export const expectation = (estimate: Estimate, path: Path, hob: Hob): Expectation => {
  const points = spreadPoints(estimate.mean, estimate.covariance);
  const coldJoules = joulesToBoil(estimate);
  const shown = points.map(
    (point) =>
      syrupCelsius({ joules: numberAt(point, joulesDone), coldJoules }, path) -
      estimate.behindKelvin +
      numberAt(point, curveBias) +
      numberAt(point, dialBias),
  );
  const celsius = average(shown);
  const variance = varianceAbout(shown, celsius) + readingVariance(estimate, hob);
  return { points, shown, celsius, variance };
};

/** Weighs a reading in; an unlikely one counts less, as under Student's t with four degrees. */
export const weigh = (
  estimate: Estimate,
  reading: number,
  expected: Expectation,
  path: Path,
  hob: Hob,
): Estimate => {
  const off = reading - expected.celsius;
  const extra = readingVariance(estimate, hob) * Math.max(0, (4 + off ** 2 / expected.variance) / 5 - 1);
  const total = expected.variance + extra;
  const { mean, covariance } = weighIn(expected, { total, off, shrunk: total });
  for (let row = 0; row < unknowns; row++) {
    const place = row * unknowns + row;
    covariance[place] = Math.max(numberAt(covariance, place), 1e-9);
  }
  mean[joulesDone] = clamp(numberAt(mean, joulesDone), path.lowestJoules, path.highestJoules);
  return { ...estimate, mean, covariance };
};

export const widen = (estimate: Estimate, row: number, variance: number): Estimate => {
  const covariance = [...estimate.covariance];
  covariance[row * unknowns + row] = numberAt(covariance, row * unknowns + row) + variance;
  return { ...estimate, covariance };
};

/** How far a reading is from what was expected: kelvin, and spreads, with its sign. */
export const surpriseOf = (expected: Expectation, celsius: number): { spreads: number; kelvin: number } => {
  const kelvin = celsius - expected.celsius;
  return { spreads: kelvin / Math.sqrt(expected.variance), kelvin };
};
