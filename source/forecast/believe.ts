import type { BoilingCurve } from '../sugar/syrup.js';
import { numberAt } from '../units/at.js';
import { carryOn } from './advance.js';
import { boilingPointOf, stageShares, temperatureOf } from './cold-water.js';
import { dialBias, dialSdOf, type Estimate, momentOf, unknowns } from './estimate.js';
import type { Belief, Hob, Target } from './forecast.js';
import { normalBelow } from './numbers.js';
import { type Path, pathOf } from './path.js';

/** A thermometer is doubted from the second disagreement on, if the size stands clear of its doubt and of 1 K. */
const disagreementsToDoubt = 2;
const leastBiasKelvin = 1;
const clearSpreads = 1.2;
/** A cold pot is not stirred evenly. Our judgement. */
const unevenColdKelvin = 2;

const hasEvidence = (estimate: Estimate): boolean =>
  estimate.lastReading !== null || estimate.coldWater.tests > 0;

const presentOf = (estimate: Estimate, now: number, path: Path, hob: Hob): Estimate =>
  carryOn(estimate, momentOf(estimate, now), path, hob);

type Normal = { readonly celsius: number; readonly sd: number };

const withDoubt = (present: Estimate, hob: Hob, { celsius, sd }: Normal): Normal => ({
  celsius,
  sd: present.located ? sd : Math.hypot(sd, dialSdOf(hob), unevenColdKelvin),
});

const reached = (floorCelsius: number, celsius: number, sd: number): number =>
  1 - normalBelow((floorCelsius - celsius) / sd);

/**
 * What the syrup truly boils at by all evidence at `now`, also while it cools on the trivet; before any, what the batch
 * was as it was weighed. Constant time.
 */
export const believedBoilCelsius = (
  estimate: Estimate,
  now: number,
  curve: BoilingCurve,
  hob: Hob,
): number => {
  const path = pathOf(curve, hob);
  return boilingPointOf(presentOf(estimate, now, path, hob), path).celsius;
};

/** The chance that the syrup is at or above the floor of the window at `now`; 0 before any evidence. Constant time. */
export const reachedProbability = (
  estimate: Estimate,
  { floorCelsius }: Target,
  now: number,
  curve: BoilingCurve,
  hob: Hob,
): number => {
  if (!hasEvidence(estimate)) return 0;
  const path = pathOf(curve, hob);
  const present = presentOf(estimate, now, path, hob);
  const { celsius, sd } = withDoubt(present, hob, boilingPointOf(present, path));
  return reached(floorCelsius, celsius, sd);
};

/**
 * What is believed of the syrup at `now`: null before any evidence of its temperature. Celsius is true temperature; the
 * shares of the stages, by the water left in it, sum to 1. Constant time.
 */
export const believe = (
  estimate: Estimate,
  target: Target,
  now: number,
  curve: BoilingCurve,
  hob: Hob,
): Belief | null => {
  if (!hasEvidence(estimate)) return null;
  const path = pathOf(curve, hob);
  const present = presentOf(estimate, now, path, hob);
  const { celsius, sd } = withDoubt(present, hob, temperatureOf(present, path));
  const boils = withDoubt(present, hob, boilingPointOf(present, path));
  const kelvin = numberAt(present.mean, dialBias);
  const biasSd = Math.sqrt(Math.max(0, numberAt(present.covariance, dialBias * unknowns + dialBias)));
  const doubted =
    estimate.coldWater.disagreed >= disagreementsToDoubt &&
    Math.abs(kelvin) >= leastBiasKelvin &&
    Math.abs(kelvin) >= clearSpreads * biasSd;
  return {
    celsius,
    sd,
    stages: stageShares(boils.celsius, boils.sd, hob),
    reachedProbability: reached(target.floorCelsius, boils.celsius, boils.sd),
    dialBias: doubted ? { kelvin, sd: biasSd } : null,
  };
};
