import { numberAt } from '../units/at.js';
import { curveBias, dialBias, type Estimate, joulesDone, logWatts, unknowns } from './estimate.js';
import type { Path } from './path.js';

/** Where the syrup would be if it had been watched from the cold: a place on the road, joules, and its spread. */
export type Watched = { readonly joules: number; readonly sd: number };

/** Evidence about the temperature: a reading with its spread, or how likely a test's outcome is at a true temperature. */
export type Sighting =
  | { readonly kind: 'reading'; readonly celsius: number; readonly sd: number }
  | { readonly kind: 'test'; readonly likelihood: (celsius: number) => number };

const gridPoints = 160;
const belowStartKelvin = 1.5;
/** Room for what was not told, beside what was watched. Our judgement. */
const shareOfUnwatched = 0.2;
const leastSdJoules = 1000;

/** Joules per kelvin of the road at a temperature. */
const joulesPerKelvin = (path: Path, celsius: number): number =>
  Math.max(0, path.joulesAt(celsius + 0.5) - path.joulesAt(celsius - 0.5));

const priorDensity = (path: Path, celsius: number, joules: number, watched: Watched | null): number => {
  const flat = 1 / (path.highestCelsius - path.startCelsius + belowStartKelvin);
  if (watched === null) return flat;
  const near =
    Math.exp(-(((joules - watched.joules) / watched.sd) ** 2) / 2) / (watched.sd * Math.sqrt(2 * Math.PI));
  return shareOfUnwatched * flat + (1 - shareOfUnwatched) * joulesPerKelvin(path, celsius) * near;
};

/**
 * Finds the syrup's place on the curve from one sighting, without trusting any earlier place: over a fixed grid of
 * boiling temperatures, each as likely as the next, or near where a watched pot would be. What is known of power and
 * biases is kept; a reading's distance from each place on the grid tells of the biases by linear regression.
 */
export const locate = (
  estimate: Estimate,
  sighting: Sighting,
  watched: Watched | null,
  path: Path,
): Estimate => {
  const held = (row: number, column: number): number =>
    numberAt(estimate.covariance, row * unknowns + column);
  const biases = [curveBias, dialBias] as const;
  const biasMean = numberAt(estimate.mean, curveBias) + numberAt(estimate.mean, dialBias);
  const reach = biases.map((row) => held(row, curveBias) + held(row, dialBias));
  const spread =
    reach.reduce((sum, value) => sum + value, 0) + (sighting.kind === 'reading' ? sighting.sd ** 2 : 0);
  const gains = sighting.kind === 'reading' ? reach.map((value) => value / Math.max(spread, 1e-9)) : [0, 0];

  const low = path.startCelsius - belowStartKelvin;
  const step = (path.highestCelsius - low) / (gridPoints - 1);
  let total = 0;
  const sums = { joules: 0, squares: 0, off: 0, offSquares: 0, cross: 0 };
  for (let index = 0; index < gridPoints; index++) {
    const celsius = low + index * step;
    const joules = Math.max(0, path.joulesAt(celsius));
    const off = sighting.kind === 'reading' ? sighting.celsius - celsius - biasMean : 0;
    const likely =
      sighting.kind === 'reading' ? Math.exp(-(off * off) / (2 * spread)) : sighting.likelihood(celsius);
    const weight = likely * priorDensity(path, celsius, joules, watched);
    total += weight;
    sums.joules += weight * joules;
    sums.squares += weight * joules * joules;
    sums.off += weight * off;
    sums.offSquares += weight * off * off;
    sums.cross += weight * joules * off;
  }
  if (!(total > 1e-12)) return estimate;
  const joules = sums.joules / total;
  const off = sums.off / total;
  const offVariance = Math.max(0, sums.offSquares / total - off * off);
  const cross = sums.cross / total - joules * off;

  const mean = [...estimate.mean];
  mean[joulesDone] = joules;
  const covariance = [...estimate.covariance];
  const put = (row: number, column: number, value: number): void => {
    covariance[row * unknowns + column] = value;
    covariance[column * unknowns + row] = value;
  };
  for (const row of [logWatts, ...biases]) put(joulesDone, row, 0);
  put(joulesDone, joulesDone, Math.max(sums.squares / total - joules * joules, leastSdJoules ** 2));
  biases.forEach((row, place) => {
    const gain = numberAt(gains, place);
    mean[row] = numberAt(estimate.mean, row) + gain * off;
    put(joulesDone, row, gain * cross);
    biases.forEach((column, other) => {
      put(row, column, held(row, column) + gain * numberAt(gains, other) * (offVariance - spread));
    });
  });
  return { ...estimate, mean, covariance, coldJoules: 0, located: true };
};
