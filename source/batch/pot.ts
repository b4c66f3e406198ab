import type { Batch } from './batch.js';

/**
 * A boiling batch rises to several times its volume: the pot holds four times the dissolved syrup.
 * About four times for molasses: Household Discoveries c. 1908; 3-4 times in recipe pages; a museum recipe 4.1-5.4.
 */
export const potTimesVolume = 4;

export type PotQuestion = {
  /** Volume of the batch when everything is dissolved and it begins to boil, millilitres. */
  readonly startMillilitres: number;
  /** Volume when it reaches its target, millilitres, without foam. */
  readonly endMillilitres: number;
  readonly litres: number | null;
  readonly diameterMillimetres: number | null;
  /** How deep the thermometer must stand in the syrup. */
  readonly stemMillimetres: number | null;
};

const depthMillimetres = (millilitres: number, diameterMillimetres: number): number =>
  (millilitres * 1000) / ((Math.PI / 4) * diameterMillimetres ** 2);

/** Whether the batch fits the pot without foaming over, how deep it stands, and whether it covers the stem at the end. */
export const potFor = (question: PotQuestion): Batch['pot'] => {
  const { startMillilitres, endMillilitres, litres, diameterMillimetres, stemMillimetres } = question;
  const neededLitres = (potTimesVolume * startMillilitres) / 1000;
  const depths: Batch['pot']['depthMillimetres'] =
    diameterMillimetres === null
      ? null
      : [
          depthMillimetres(startMillilitres, diameterMillimetres),
          depthMillimetres(endMillilitres, diameterMillimetres),
        ];
  return {
    neededLitres,
    haveLitres: litres,
    fits: litres === null ? null : neededLitres <= litres * (1 + 1e-9),
    depthMillimetres: depths,
    stemCovered: depths === null || stemMillimetres === null ? null : depths[1] >= stemMillimetres,
  };
};
