import { covarianceOf, meanOf, spreadPoints, syrupCelsius } from './advance.js';
import { curveBias, dialBias, type Estimate, joulesDone, unknowns } from './estimate.js';
import type { Hob } from './forecast.js';
import { clamp } from './numbers.js';
import type { Path } from './path.js';

/** What a careful reading of a kitchen thermometer in bubbling syrup scatters by, kelvin. Our judgement. */
const usualReadingSdKelvin = 0.65;

/** The lag of a dial is known to about a third. Our judgement. */
export const lagDoubt = 0.33;

export const readingSdOf = (hob: Hob): number => clamp(hob.readingSdKelvin ?? usualReadingSdKelvin, 0.05, 10);

export const readingVariance = (estimate: Estimate, hob: Hob): number =>
  readingSdOf(hob) ** 2 + (lagDoubt * estimate.behindKelvin) ** 2;

/** What the dial should show, and how far from it a reading may be: kelvin. */
export const expectation = (estimate: Estimate, path: Path, hob: Hob) => {
  const points = spreadPoints(estimate.mean, estimate.covariance);
  const coldJoules = estimate.coldJoules ?? 0;
  const shown = points.map(
    (point) =>
      syrupCelsius({ joules: point[joulesDone] ?? 0, coldJoules, behindKelvin: 0 }, path) -
      estimate.behindKelvin +
      (point[curveBias] ?? 0) +
      (point[dialBias] ?? 0),
  );
  const celsius = shown.reduce((sum, value) => sum + value, 0) / shown.length;
  const variance =
    shown.reduce((sum, value) => sum + (value - celsius) ** 2, 0) / shown.length +
    readingVariance(estimate, hob);
  return { points, shown, celsius, variance };
};

/** Kalman's update through the points; an unlikely reading counts less, as under Student's t with four degrees. */
export const weigh = (estimate: Estimate, reading: number, path: Path, hob: Hob): Estimate => {
  const { points, shown, celsius, variance } = expectation(estimate, path, hob);
  const off = reading - celsius;
  const extra = readingVariance(estimate, hob) * Math.max(0, (4 + off ** 2 / variance) / 5 - 1);
  const total = variance + extra;
  const mean = meanOf(points);
  const gains = mean.map(
    (centre, row) =>
      points.reduce(
        (sum, point, index) => sum + ((point[row] ?? 0) - centre) * ((shown[index] ?? 0) - celsius),
        0,
      ) /
      points.length /
      total,
  );
  const covariance = covarianceOf(points, mean).map(
    (value, place) =>
      value - (gains[Math.floor(place / unknowns)] ?? 0) * (gains[place % unknowns] ?? 0) * total,
  );
  for (let row = 0; row < unknowns; row++) {
    const place = row * unknowns + row;
    covariance[place] = Math.max(covariance[place] ?? 0, 1e-9);
  }
  const updated = mean.map((value, row) => value + (gains[row] ?? 0) * off);
  updated[joulesDone] = clamp(updated[joulesDone] ?? 0, path.lowestJoules, path.highestJoules);
  return { ...estimate, mean: updated, covariance };
};

export const widen = (estimate: Estimate, row: number, variance: number): Estimate => {
  const covariance = [...estimate.covariance];
  covariance[row * unknowns + row] = (covariance[row * unknowns + row] ?? 0) + variance;
  return { ...estimate, covariance };
};

/** How many spreads a reading at the estimate's own time is away from what was expected, with its sign; null if nothing was. */
export const surpriseNow = (
  estimate: Estimate,
  celsius: number,
  path: Path,
  hob: Hob,
): { spreads: number; kelvin: number } => {
  const expected = expectation(estimate, path, hob);
  const kelvin = celsius - expected.celsius;
  return { spreads: kelvin / Math.sqrt(expected.variance), kelvin };
};
