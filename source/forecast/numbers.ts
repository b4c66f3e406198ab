import { numberAt } from '../units/at.js';

/** Four unknowns are estimated together; vectors and matrices are plain arrays, so that an estimate is plain data. */
export type Vector = readonly number[];
/** Rows one after another. */
export type Matrix = readonly number[];

export const clamp = (value: number, low: number, high: number): number =>
  value >= low ? Math.min(value, high) : low;

/**
 * Share of the standard normal distribution below z, absolute error under 7.5e-8.
 * Source: Abramowitz & Stegun 1964, Handbook of Mathematical Functions, 26.2.17.
 */
export const normalBelow = (z: number): number => {
  if (z < 0) return 1 - normalBelow(-z);
  if (z > 8) return 1;
  const k = 1 / (1 + 0.2316419 * z);
  const tail = ((((1.330274429 * k - 1.821255978) * k + 1.781477937) * k - 0.356563782) * k + 0.31938153) * k;
  return 1 - (tail * Math.exp(-(z * z) / 2)) / Math.sqrt(2 * Math.PI);
};

/** The z that has the share p below it, 0 < p < 1; by halving, to 1e-9. */
export const normalQuantile = (p: number): number => {
  let low = -8;
  let high = 8;
  for (let step = 0; step < 36; step++) {
    const middle = (low + high) / 2;
    if (normalBelow(middle) < p) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};

/** Lower triangular root of a covariance; a direction without spread gets none. */
export const root = (matrix: Matrix, size: number): number[] => {
  const lower: number[] = [];
  for (let row = 0; row < size; row++) {
    for (let column = 0; column < size; column++) {
      let sum = matrix[row * size + column] as number;
      for (let k = 0; k < Math.min(row, column); k++)
        sum -= (lower[row * size + k] as number) * (lower[column * size + k] as number);
      if (column > row) lower.push(0);
      else if (row === column) lower.push(Math.sqrt(Math.max(sum, 0)));
      else {
        const pivot = lower[column * size + column] as number;
        lower.push(pivot > 1e-12 ? sum / pivot : 0);
      }
    }
  }
  return lower;
};

const coprime = [2, 3, 5, 7, 11, 13] as const;

/** Radical inverse of `index` in `base`: the digits mirrored behind the point. Source: Halton 1960, Numer. Math. 2:84. */
const mirrored = (index: number, base: number): number => {
  let value = 0;
  let share = 1 / base;
  for (let rest = index; rest > 0; rest = Math.floor(rest / base)) {
    value += share * (rest % base);
    share /= base;
  }
  return value;
};

/** `count` points that fill a standard normal distribution of `size` (at most 6) dimensions evenly; the same each time. */
export const normalPoints = (count: number, size: number): readonly Vector[] =>
  Array.from({ length: count }, (_, index) =>
    coprime.slice(0, size).map((base) => normalQuantile(mirrored(index + 1, base))),
  );

/** Value at a share (0-1) of sorted values, straight between neighbours. */
export const quantile = (sorted: readonly number[], share: number): number => {
  const place = clamp(share * sorted.length - 0.5, 0, sorted.length - 1);
  const below = numberAt(sorted, Math.floor(place));
  const above = numberAt(sorted, Math.ceil(place));
  return below + (above - below) * (place - Math.floor(place));
};
