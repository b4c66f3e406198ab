import type { Batch } from './batch.js';

/** For a batch that would foam over the pot: what to cook instead, as shares of the batch. */
export type Split = {
  /** How many equal batches make the whole, and the share of each. */
  readonly batches: number;
  readonly share: number;
  /** The largest share that fits, if it is cooked once. */
  readonly mostShare: number;
};

/** Null where it fits or the pot is not known. Batches are of equal size, so that each is the same cook. */
export const splitFor = ({ neededLitres, haveLitres, fits }: Batch['pot']): Split | null => {
  if (fits !== false || haveLitres === null) return null;
  const batches = Math.ceil(neededLitres / haveLitres - 1e-9);
  return { batches, share: 1 / batches, mostShare: haveLitres / neededLitres };
};
