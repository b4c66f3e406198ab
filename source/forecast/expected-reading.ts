import type { BoilingCurve } from '../sugar/syrup.js';
import { carryOn } from './advance.js';
import type { Estimate } from './estimate.js';
import { expectation } from './expectation.js';
import type { Hob } from './forecast.js';
import { pathOf } from './path.js';

/**
 * What the thermometer should show at `t`, true Celsius after its correction, and how far from it a reading may be;
 * null while nothing is known of the boil. On a trivet the pot cools as it is taken to.
 */
export const expectedReading = (
  estimate: Estimate,
  t: number,
  curve: BoilingCurve,
  hob: Hob,
): { readonly celsius: number; readonly sd: number } | null => {
  if (!estimate.located) return null;
  const path = pathOf(curve, hob);
  const { celsius, variance } = expectation(carryOn(estimate, Math.max(t, estimate.t), path, hob), path, hob);
  return { celsius, sd: Math.sqrt(variance) };
};
