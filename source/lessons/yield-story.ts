import type { Spread } from '../batch/batch.js';
import type { Cook } from '../cook/cook.js';
import type { Instant } from './walk.js';

export type YieldTold = {
  /** Of the whole batch; null: it was not weighed. */
  readonly weighedGrams: number | null;
  /** What the pot could give without loss, at the temperature it reached. */
  readonly cookedGrams: number;
  readonly expectedGrams: Spread;
  /** Weighed over what the pot could give. */
  readonly share: number | null;
  readonly lostGrams: number | null;
};

export type PiecesTold = {
  readonly counted: number | null;
  readonly expected: Spread;
  /** What the recipe wants one to weigh. */
  readonly wantedGrams: number;
  /** Of one piece, by pieces that were weighed together, else by the whole over the count. */
  readonly meanGrams: number | null;
  readonly meanBy: 'weighed together' | 'whole over count' | null;
  /** Of each handful that was weighed: how many, and grams of one. */
  readonly handfuls: readonly { readonly pieces: number; readonly grams: number }[];
  /** Lightest and heaviest mean of a handful; null with fewer than two. */
  readonly between: readonly [number, number] | null;
  /** Standard deviation of single pieces over their mean, from at least three handfuls. */
  readonly variation: number | null;
};

export const yieldTold = (cook: Cook, cookedGrams: number | null): YieldTold => {
  const { yield: planned } = cook.batch;
  const cooked = cookedGrams ?? planned.cookedGrams;
  const weighedGrams = cook.weighed?.grams ?? null;
  return {
    weighedGrams,
    cookedGrams: cooked,
    expectedGrams: planned.expectedGrams,
    share: weighedGrams === null || cooked <= 0 ? null : weighedGrams / cooked,
    lostGrams: weighedGrams === null ? null : cooked - weighedGrams,
  };
};

const leastHandfuls = 3;

/**
 * Spread of single pieces from the means of handfuls: the mean of n pieces scatters by their spread over the root of
 * n (any textbook of statistics). The unbiased estimate with n - 1.
 */
const variationOf = (handfuls: PiecesTold['handfuls'], mean: number): number | null => {
  if (handfuls.length < leastHandfuls || mean <= 0) return null;
  const squares = handfuls.reduce((sum, { pieces, grams }) => sum + pieces * (grams - mean) ** 2, 0);
  return Math.sqrt(squares / (handfuls.length - 1)) / mean;
};

export const piecesTold = (cook: Cook, instants: readonly Instant[]): PiecesTold => {
  const handfuls = instants.flatMap(({ event }) =>
    event?.kind === 'weigh' && event.pieces !== null && event.pieces > 0
      ? [{ pieces: event.pieces, grams: event.grams / event.pieces }]
      : [],
  );
  const many = handfuls.reduce((sum, { pieces }) => sum + pieces, 0);
  const together = handfuls.reduce((sum, { pieces, grams }) => sum + pieces * grams, 0) / many;
  const counted = cook.counted;
  const whole =
    cook.weighed !== null && counted !== null && counted > 0 ? cook.weighed.grams / counted : null;
  const meanGrams = handfuls.length > 0 ? together : whole;
  const each = handfuls.map(({ grams }) => grams);
  return {
    counted,
    expected: cook.batch.yield.pieces,
    wantedGrams: cook.batch.recipe.piece.grams,
    meanGrams,
    meanBy: handfuls.length > 0 ? 'weighed together' : whole === null ? null : 'whole over count',
    handfuls,
    between: each.length < 2 ? null : [Math.min(...each), Math.max(...each)],
    variation: meanGrams === null ? null : variationOf(handfuls, meanGrams),
  };
};
