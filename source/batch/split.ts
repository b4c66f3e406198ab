import type { Batch } from './batch.js';

/** For a batch that would foam over the pot: the size that fits and how many such batches make the whole. */
export type Split = { readonly batches: number; readonly factor: number };

/** Null where it fits or the pot is not known. Batches are of equal size, so that each is the same cook. */
export const splitFor = ({ neededLitres, haveLitres, fits }: Batch['pot']): Split | null => {
  if (fits !== false || haveLitres === null) return null;
  const batches = Math.ceil(neededLitres / haveLitres - 1e-9);
  return { batches, factor: 1 / batches };
};
