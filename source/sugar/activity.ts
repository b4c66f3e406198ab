import { logWaterActivity, moleFractionOf, type Solute, soluteOf } from './solution.js';
import type { Syrup } from './syrup.js';
import { zeroCelsiusKelvin } from './water.js';

/**
 * Coefficients of the later form: ln a = ln(1-x) + alpha x^2 (1 + b1 x + b2 x^2), alpha a function of T/298.15 K.
 * Source: Starzak & Mathlouthi 2006, Food Chemistry 96:346-370 (-15 to 150 °C, to 98 %); coefficients from memory.
 */
const [a0, a1, a2, a3, a4] = [-268.59, -861.42, -1102.3, 1399.9, -277.88] as const;
const [b1, b2] = [-1.9831, 0.9273] as const;

const laterLogActivity = (solute: Solute, moleFraction: number, celsius: number): number => {
  const theta = (celsius + zeroCelsiusKelvin) / 298.15;
  const alpha = a0 / theta + a1 + a2 * Math.log(theta) + a3 * theta + a4 * theta * theta;
  const x = solute.weight * moleFraction;
  return Math.log1p(-moleFraction) + alpha * x * x * (1 + b1 * x + b2 * x * x);
};

/** Water activity by both forms; equals the relative humidity of air in which the candy neither dries nor sticks. */
export type WaterActivity = {
  readonly starzakPeacock: number;
  readonly starzakMathlouthi: number;
};

const solutionOf = (syrup: Syrup): { readonly solute: Solute; readonly moleFraction: number } => {
  const solute = soluteOf(syrup);
  return { solute, moleFraction: moleFractionOf(solute, solute.grams / (solute.grams + syrup.waterGrams)) };
};

/** Water activity of a syrup at room temperature, 0 to 1; the water in `syrup` counts. 10 to 40 °C, our judgement. */
export const waterActivity = (syrup: Syrup, celsius: number): WaterActivity => {
  const { solute, moleFraction } = solutionOf(syrup);
  return {
    starzakPeacock: Math.exp(logWaterActivity(solute, moleFraction, celsius)),
    starzakMathlouthi: Math.exp(laterLogActivity(solute, moleFraction, celsius)),
  };
};

/** How far the equilibrium humidity may be off: the forms differ by 0.07 in hard candy, products scatter as much. */
export const humidityBand = 0.08;

/**
 * Equilibrium relative humidity of a candy, [low, high], fractions: Starzak & Mathlouthi, which lies closer to published
 * products below 8 % water, give and take 0.08, widened where the other form falls outside.
 */
export const equilibriumHumidity = (syrup: Syrup, celsius: number): readonly [number, number] => {
  const { starzakPeacock, starzakMathlouthi } = waterActivity(syrup, celsius);
  const low = Math.min(starzakMathlouthi - humidityBand, starzakPeacock);
  const high = Math.max(starzakMathlouthi + humidityBand, starzakPeacock);
  return [Math.max(0, low), Math.min(1, high)];
};
