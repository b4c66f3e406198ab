import type { BoilingCurve } from '../sugar/syrup.js';
import { addWater, cover, movePot, turn } from './acts.js';
import { carryOn } from './advance.js';
import { testCold } from './cold-water.js';
import { type Estimate, joulesToBoil, momentOf } from './estimate.js';
import { expectation, surpriseOf } from './expectation.js';
import type { Evidence, Hob } from './forecast.js';
import { pathOf } from './path.js';
import { read } from './reading.js';

/**
 * What is believed once one more thing was seen or done. Constant time; total: evidence out of order counts as of the
 * latest time known, numbers that are none are passed over.
 */
export const observe = (estimate: Estimate, evidence: Evidence, curve: BoilingCurve, hob: Hob): Estimate => {
  const path = pathOf(curve, hob);
  const t = momentOf(estimate, evidence.t);
  const now = carryOn(estimate, t, path, hob);
  switch (evidence.kind) {
    case 'reading':
      return read(now, { ...evidence, t }, path, hob);
    case 'cold water':
      return testCold(now, evidence.outcome, path, hob);
    case 'heat':
      return turn(now, t, evidence.level, path, hob);
    case 'pot':
      return movePot(now, t, evidence.on, path, hob);
    case 'lid':
      return cover(now, t, evidence.on);
    case 'water':
      return addWater(now, t, evidence.grams, path);
  }
};

/**
 * How improbable a reading is before it is taken in: its distance from what the dial should show, in spreads, with
 * sign; beyond ±3.5 `observe` leaves it out at first. Null while nothing is expected (no place on the curve yet, pot
 * off the ring, lid on, cooled).
 */
export const surprise = (
  estimate: Estimate,
  reading: { readonly t: number; readonly celsius: number },
  curve: BoilingCurve,
  hob: Hob,
): number | null => {
  const path = pathOf(curve, hob);
  const now = carryOn(estimate, Math.max(reading.t, estimate.t), path, hob);
  const silent =
    !now.located || !now.potOn || now.lidOn || reading.t < now.unsettledUntil || joulesToBoil(now) > 0;
  return silent ? null : surpriseOf(expectation(now, path, hob), reading.celsius).spreads;
};
