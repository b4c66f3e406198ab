import { numberAt } from '../units/at.js';
import { dialBias, dialSdOf, type Estimate, logWatts, unknowns } from './estimate.js';
import type { Hob } from './forecast.js';

type Known = { readonly mean: number; readonly sd: number };

const of = (estimate: Estimate, row: number): Known => ({
  mean: numberAt(estimate.mean, row),
  sd: Math.sqrt(Math.max(0, numberAt(estimate.covariance, row * unknowns + row))),
});

/**
 * What a boil has shown of what outlasts it: the logarithm of the net watts behind the present setting, where the boil
 * began, and by how much the thermometer reads high, kelvin, beyond its known correction.
 */
export const learnedOf = (estimate: Estimate): { readonly logWatts: Known; readonly dialBias: Known } => ({
  logWatts: of(estimate, logWatts),
  dialBias: of(estimate, dialBias),
});

/** Less was learned than this share of what was not known: nothing worth telling. Our judgement. */
const leastGain = 0.02;

/**
 * What the evidence alone said of the thermometer's error, without the prior with which the estimate began: precisions
 * subtracted (Gelman et al. 2013, Bayesian Data Analysis, eq. 2.12, solved for the evidence). Null where it said nothing.
 */
export const dialEvidence = (estimate: Estimate, begunWith: Hob): Known | null => {
  const { mean, sd } = of(estimate, dialBias);
  const before = 1 / dialSdOf(begunWith) ** 2;
  const after = 1 / Math.max(sd, 1e-3) ** 2;
  if (!(after > before * (1 + leastGain))) return null;
  return { mean: (mean * after) / (after - before), sd: Math.sqrt(1 / (after - before)) };
};
