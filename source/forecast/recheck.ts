import { dialBias, dialSdOf, type Estimate, unknowns } from './estimate.js';
import type { Hob } from './forecast.js';

/**
 * The estimate after the thermometer was checked in ice or boiling water: its error is known as well as `hob` says. Once
 * it was read in the syrup, those readings stand as they were corrected then, and nothing changes.
 */
export const recheckDial = (estimate: Estimate, hob: Hob): Estimate => {
  if (estimate.lastReading !== null || estimate.coldWater.tests > 0) return estimate;
  const covariance = estimate.covariance.map((value, place) => {
    const [row, column] = [Math.floor(place / unknowns), place % unknowns];
    if (row !== dialBias && column !== dialBias) return value;
    return row === column ? dialSdOf(hob) ** 2 : 0;
  });
  return { ...estimate, mean: estimate.mean.map((value, row) => (row === dialBias ? 0 : value)), covariance };
};
