import { type BoilingCurve, boilingCurve, type Syrup } from '../../source/sugar/syrup.js';

/** Only water; tests put in what they need. */
export const onlyWater: Syrup = {
  sucroseGrams: 0,
  glucoseSolids: [],
  invertGrams: 0,
  saltGrams: 0,
  waterGrams: 100,
  fatGrams: 0,
  inertGrams: 0,
};

/** 100 g of sucrose and water at `waterPercent`. */
export const sucrose = (waterPercent = 50): Syrup => ({
  ...onlyWater,
  sucroseGrams: 100 - waterPercent,
  waterGrams: waterPercent,
});

/** 64 parts sucrose to 36 parts dry 42 DE syrup solids, a common pulled candy, in 100 g. */
export const pulledCandy = (waterPercent = 50): Syrup => ({
  ...onlyWater,
  sucroseGrams: 0.64 * (100 - waterPercent),
  glucoseSolids: [{ grams: 0.36 * (100 - waterPercent), de: 42 }],
  waterGrams: waterPercent,
});

export const seaLevel = 101_325;
export const sucroseCurve: BoilingCurve = boilingCurve(sucrose(), seaLevel);
export const pulledCandyCurve: BoilingCurve = boilingCurve(pulledCandy(), seaLevel);
export const celsiusOf = (fahrenheit: number): number => (fahrenheit - 32) / 1.8;

/** One published number. `disagrees`: why it is known not to be met; then the test must fail, and says so. */
export type Row<At> = {
  readonly at: At;
  readonly value: number;
  readonly tolerance: number;
  readonly source: string;
  readonly disagrees?: string;
};
