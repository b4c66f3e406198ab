import { unknowns } from './estimate.js';
import { type Matrix, root, type Vector } from './numbers.js';

/**
 * A normal distribution of the four unknowns carried by eight points that all weigh the same, so that what is not linear
 * can be asked of each. Plain loops over places that are there: a feed brings a reading a second, and a journal of a whole
 * day is folded at once, a seventh faster so than through `numberAt`.
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
        point[row] = (mean[row] as number) + reach * (lower[row * unknowns + column] as number);
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
    for (const point of points) sum += point[row] as number;
    mean.push(sum / points.length);
  }
  return mean;
};

export const covarianceOf = (points: readonly Vector[], mean: Vector): number[] => {
  const covariance: number[] = [];
  for (let row = 0; row < unknowns; row++)
    for (let column = 0; column < unknowns; column++) {
      if (column < row) {
        covariance.push(covariance[column * unknowns + row] as number);
        continue;
      }
      let sum = 0;
      for (const point of points)
        sum +=
          ((point[row] as number) - (mean[row] as number)) *
          ((point[column] as number) - (mean[column] as number));
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
      sum += ((point[row] as number) - (mean[row] as number)) * ((shown[index] as number) - celsius);
      index += 1;
    }
    gains.push(sum / points.length / total);
  }
  const less: number[] = [];
  for (let row = 0; row < unknowns; row++)
    for (let column = 0; column < unknowns; column++)
      less.push(
        (covariance[row * unknowns + column] as number) -
          (gains[row] as number) * (gains[column] as number) * shrunk,
      );
  return { mean: mean.map((value, row) => value + (gains[row] as number) * off), covariance: less };
};
