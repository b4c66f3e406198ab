import type { Cook } from './cook.js';

export type PiecesLeft = {
  readonly pieces: number;
  readonly cutMillimetres: number;
  readonly ropeMetres: number;
  readonly squares: number;
};

/** One spare square in ten, and ten more: our judgement. */
const squaresFor = (pieces: number): number => Math.ceil(pieces * 1.1) + 10;

/** What weighs less is no piece of candy but a slip of the finger, grams. Our judgement. */
const leastPieceGrams = 0.1;

/**
 * Rope, cut, pieces and squares from what is really left: weighed if it was weighed, otherwise the batch's
 * typical yield; the mass of ten pieces, if known, sets the piece.
 */
export const piecesLeft = (cook: Cook): PiecesLeft => {
  const { yield: planned, recipe } = cook.batch;
  const grams = cook.weighed?.grams ?? planned.expectedGrams.typical;
  const ten = cook.tenPieces;
  const weighed = ten === null ? 0 : ten.grams / ten.pieces;
  const pieceGrams = weighed < leastPieceGrams ? recipe.piece.grams : weighed;
  const pieces = cook.counted ?? Math.max(0, Math.floor(grams / pieceGrams));
  const share = planned.expectedGrams.typical > 0 ? grams / planned.expectedGrams.typical : 1;
  return {
    pieces,
    cutMillimetres: planned.cutMillimetres,
    ropeMetres: planned.ropeMetres * share,
    squares: squaresFor(pieces),
  };
};
