import type { BoilingCurve } from '../sugar/syrup.js';
import { carryOn } from './advance.js';
import { stageShares, temperatureOf } from './cold-water.js';
import { dialBias, dialSdOf, type Estimate, unknowns } from './estimate.js';
import type { Belief, Hob, Target } from './forecast.js';
import { normalBelow } from './numbers.js';
import { pathOf } from './path.js';

/** A thermometer is doubted from the second disagreement on, if the size stands clear of its doubt and of 1 K. */
const disagreementsToDoubt = 2;
const leastBiasKelvin = 1;
const clearSpreads = 1.2;
/** A cold pot is not stirred evenly. Our judgement. */
const unevenColdKelvin = 2;

/**
 * What is believed of the syrup at `now`: null before any evidence of its temperature. Celsius is true temperature;
 * the shares of the stages sum to 1. Constant time.
 */
export const believe = (
  estimate: Estimate,
  target: Target,
  now: number,
  curve: BoilingCurve,
  hob: Hob,
): Belief | null => {
  if (estimate.lastReading === null && estimate.coldWater.tests === 0) return null;
  const path = pathOf(curve, hob);
  const moment = Number.isFinite(now) ? Math.max(now, estimate.t) : estimate.t;
  const present = carryOn(estimate, moment, path, hob);
  const { celsius, sd: spread } = temperatureOf(present, path);
  const sd = present.located ? spread : Math.hypot(spread, dialSdOf(hob), unevenColdKelvin);
  const kelvin = present.mean[dialBias] ?? 0;
  const biasSd = Math.sqrt(Math.max(0, present.covariance[dialBias * unknowns + dialBias] ?? 0));
  const doubted =
    estimate.coldWater.disagreed >= disagreementsToDoubt &&
    Math.abs(kelvin) >= leastBiasKelvin &&
    Math.abs(kelvin) >= clearSpreads * biasSd;
  return {
    celsius,
    sd,
    stages: stageShares(celsius, sd, hob),
    reachedProbability: 1 - normalBelow((target.floorCelsius - celsius) / sd),
    dialBias: doubted ? { kelvin, sd: biasSd } : null,
  };
};
