import { numberAt } from '../units/at.js';
import { unknowns } from './estimate.js';
import { type Matrix, root, type Vector } from './numbers.js';

/**
 * A normal distribution of the four unknowns carried by eight points that all weigh the same, so that what is not linear
 * can be asked of each. Plain loops: a feed brings a reading a second, and a journal of a whole day is folded at once.
 * Source: Julier & Uhlmann 1997, A new extension of the Kalman filter to nonlinear systems, without the centre.
 */
export const spreadPoints = (mean: Vector, covariance: Matrix): number[][] => {
  const lower = root(covariance, unknowns);
  const scale = Math.sqrt(unknowns);
  const points: number[][] = [];
  for (const reach of [scale, -scale])
    for (let column = 0; column < unknowns; column++) {
      const point = mean.slice();
      for (let row = column; row < unknowns; row++)
        point[row] = numberAt(mean, row) + reach * numberAt(lower, row * unknowns + column);
      points.push(point);
    }
  return points;
};

export const average = (values: Vector): number => {
  let sum = 0;
  for (const value of values) sum += value;
  return sum / values.length;
};

/** Mean square distance from `centre`. */
export const varianceAbout = (values: Vector, centre: number): number => {
  let sum = 0;
  for (const value of values) sum += (value - centre) ** 2;
  return sum / values.length;
};

export const meanOf = (points: readonly Vector[]): number[] => {
  const mean: number[] = [];
  for (let row = 0; row < unknowns; row++) {
    let sum = 0;
    for (const point of points) sum += numberAt(point, row);
    mean.push(sum / points.length);
  }
  return mean;
};

export const covarianceOf = (points: readonly Vector[], mean: Vector): number[] => {
  const covariance: number[] = [];
  for (let row = 0; row < unknowns; row++)
    for (let column = 0; column < unknowns; column++) {
      if (column < row) {
        covariance.push(numberAt(covariance, column * unknowns + row));
        continue;
      }
      let sum = 0;
      for (const point of points)
        sum +=
          (numberAt(point, row) - numberAt(mean, row)) * (numberAt(point, column) - numberAt(mean, column));
      covariance.push(sum / points.length);
    }
  return covariance;
};

/** What the points show, and how it is spread. */
export type Shown = {
  readonly points: readonly Vector[];
  /** One value a point, and their mean. */
  readonly shown: Vector;
  readonly celsius: number;
};

/**
 * Kalman's update: what is shown was found `off` from its mean, with a variance `total` of it and of the finding, and is
 * known better by the variance `shrunk` afterwards.
 */
export const weighIn = (
  { points, shown, celsius }: Shown,
  { total, off, shrunk }: { readonly total: number; readonly off: number; readonly shrunk: number },
): { mean: number[]; covariance: number[] } => {
  const mean = meanOf(points);
  const covariance = covarianceOf(points, mean);
  const gains: number[] = [];
  for (let row = 0; row < unknowns; row++) {
    let sum = 0;
    let index = 0;
    for (const point of points) {
      sum += (numberAt(point, row) - numberAt(mean, row)) * (numberAt(shown, index) - celsius);
      index += 1;
    }
    gains.push(sum / points.length / total);
  }
  const less: number[] = [];
  for (let row = 0; row < unknowns; row++)
    for (let column = 0; column < unknowns; column++)
      less.push(
        numberAt(covariance, row * unknowns + column) -
          numberAt(gains, row) * numberAt(gains, column) * shrunk,
      );
  return { mean: mean.map((value, row) => value + numberAt(gains, row) * off), covariance: less };
};
