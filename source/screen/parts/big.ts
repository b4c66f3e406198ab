import type { Look } from '../looks.js';
import { type Line, padded, type Span, span } from '../text.js';

/** A number to be read from two metres, and what it is. */
export type Big = { readonly text: string; readonly label: string; readonly look: Look };

/** Digits are what is read from afar: the unit stands in the label. */
export const withoutUnit = (text: string): string => text.replace(/\s*°?[CF]$/, '').trim();

/** How wide each of so many columns is, by where they begin as shares of the width. */
export const columnCells = (
  columnsAt: readonly number[],
  count: number,
  width: number,
): readonly number[] => {
  const from = columnsAt.map((share) => Math.floor(share * width));
  return Array.from({ length: count }, (_, nth) => (from[nth + 1] ?? width) - (from[nth] ?? 0));
};

/** Between two columns nothing stands, cells. */
export const columnGap = 2;

/** Rows of drawings side by side, standing on one ground line. */
export const onOneGround = (
  drawn: readonly (readonly string[])[],
  bigs: readonly Big[],
  cells: readonly number[],
): readonly Line[] => {
  const height = Math.max(0, ...drawn.map((one) => one.length));
  return Array.from({ length: height }, (_, index) =>
    bigs.map((big, nth): Span => {
      const one = drawn[nth] ?? [];
      return span(padded(one[index - (height - one.length)] ?? '', cells[nth] ?? 0), big.look);
    }),
  );
};

/** All of them could be drawn. */
export const allDrawn = (
  drawn: readonly (readonly string[] | null)[],
): drawn is readonly (readonly string[])[] => drawn.every((one) => one !== null);
