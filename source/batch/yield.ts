import type { HandsKind } from '../kitchen/kitchen.js';
import type { Lesson } from '../kitchen/learned.js';
import type { Batch, Spread } from './batch.js';

/**
 * What reaches the box of what the pot could give; the rest stays on pot, surface and hands or is tasted.
 * Losses of 8 to 20 %; nine published recipes state 69 to 101 % of what their ingredients can give, median 89 %.
 * The typical share is our judgement between the two.
 */
export const boxShare: Spread = { low: 0.8, typical: 0.88, high: 0.92 };

/** Density of pulled candy, g/cm3. No measured value was found: unaerated syrup is 1.45-1.5, pulled 1.1-1.3 by our judgement. */
export const pulledGramsPerCubicCentimetre: Spread = { low: 1.1, typical: 1.2, high: 1.3 };

/** The most that one person pulls well at a time, grams, by whose hands. Our judgement; children get a small piece. */
export const mostGramsForHands: Readonly<Record<HandsKind, number>> = {
  bare: 200,
  visitors: 175,
  gloved: 200,
  children: 60,
};

/** More than this is too much for one pulling pair: it sets before it is pulled. Our judgement, 700-900 g. */
export const mostGramsForAPair = 900;

/** Spares for what tears and what is eaten: our judgement. */
const squaresFor = (pieces: number): number => (pieces > 0 ? Math.ceil(pieces * 1.1 + 10) : 0);

const times = (spread: Spread, factor: number): Spread => ({
  low: spread.low * factor,
  typical: spread.typical * factor,
  high: spread.high * factor,
});

// A hair for sums of fractions: a batch scaled to exactly 100 pieces counts 100.
const wholePieces = (pieces: number): number => Math.floor(pieces + 1e-6);

/** Nobody loses more than half of a batch that was weighed, nor finds more in the box than was in the pot. */
const boxShareRange = [0.4, 1] as const;
/** Eight in ten of a normal distribution lie within so many standard deviations. */
const eightyPercent = 1.2816;

/** What reaches the box in this kitchen, by its earlier cooks; the usual share where none was weighed. */
export const boxShareOf = (lesson: Lesson | null): Spread => {
  if (lesson === null) return boxShare;
  const [least, most] = boxShareRange;
  const at = (spreads: number): number => Math.min(most, Math.max(least, lesson.value + spreads * lesson.sd));
  return { low: at(-eightyPercent), typical: at(0), high: at(eightyPercent) };
};

export type YieldQuestion = {
  /** What the pot and the later additions could give without any loss. */
  readonly cookedGrams: number;
  readonly pieceGrams: number;
  readonly ropeMillimetres: number;
  readonly hands: HandsKind;
  /** How many people pull; null: as many as the batch needs. */
  readonly pullers: number | null;
  /** What reaches the box. */
  readonly boxShare: Spread;
};

/** Cross-section of a round rope, cm2. */
const ropeSquareCentimetres = (millimetres: number): number => (Math.PI / 4) * (millimetres / 10) ** 2;

/** Grams of one piece cut from a round rope; `gramsPerCubicCentimetre` defaults to the typical pulled candy. */
export const pieceGrams = (
  ropeMillimetres: number,
  cutMillimetres: number,
  gramsPerCubicCentimetre = pulledGramsPerCubicCentimetre.typical,
): number => ropeSquareCentimetres(ropeMillimetres) * (cutMillimetres / 10) * gramsPerCubicCentimetre;

/** What a batch gives: mass, pieces, portions for hands, rope and papers. */
export const yieldOf = ({
  cookedGrams,
  pieceGrams: grams,
  ropeMillimetres,
  hands,
  pullers,
  boxShare: share,
}: YieldQuestion): Batch['yield'] => {
  const expectedGrams = times(share, cookedGrams);
  const pieces: Spread = {
    low: wholePieces(expectedGrams.low / grams),
    typical: wholePieces(expectedGrams.typical / grams),
    high: wholePieces(expectedGrams.high / grams),
  };
  const gramsPerMillimetre = pieceGrams(ropeMillimetres, 1);
  const count = pullers ?? Math.max(1, Math.ceil(expectedGrams.typical / mostGramsForHands[hands] - 1e-9));
  return {
    cookedGrams,
    expectedGrams,
    pieces,
    portions: { count, grams: expectedGrams.typical / count },
    ropeMetres: expectedGrams.typical / gramsPerMillimetre / 1000,
    cutMillimetres: grams / gramsPerMillimetre,
    wrappingSquares: squaresFor(pieces.typical),
  };
};
