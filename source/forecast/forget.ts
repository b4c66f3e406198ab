import { numberAt } from '../units/at.js';
import { begin, diagonal, type Estimate, joulesDone, momentOf, unknowns } from './estimate.js';
import type { Hob } from './forecast.js';

/**
 * What is left to believe of a pot that nobody watched up to `t`, seconds: the stove's power, the thermometer's and
 * the curve's errors as far as they were learned; knob, ring and lid as they were last told. Where the syrup is has
 * to be found anew.
 */
export const forget = (estimate: Estimate, t: number, hob: Hob): Estimate => {
  const start = begin(hob);
  const spread = (row: number): number => numberAt(estimate.covariance, row * unknowns + row);
  return {
    ...start,
    t: momentOf(estimate, t),
    mean: estimate.mean.map((value, row) => (row === joulesDone ? 0 : value)),
    covariance: diagonal(...estimate.mean.map((_, row) => (row === joulesDone ? 0 : spread(row)))),
    potOn: estimate.potOn,
    lidOn: estimate.lidOn,
    heating: estimate.heating,
    level: estimate.level,
    knownLevels: estimate.knownLevels,
    coldWater: { tests: 0, disagreed: estimate.coldWater.disagreed },
  };
};
