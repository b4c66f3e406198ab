export { believe } from './believe.js';
export { carryOver } from './carry-over.js';
export { begin } from './estimate.js';
export type { Belief, Estimate, Evidence, Forecast, Hob, SecondsAhead, Target } from './forecast.js';
export { forget } from './forget.js';
export { knownPowers } from './known-powers.js';
export { dialEvidence, learnedOf } from './learned-of.js';
export { observe, surprise } from './observe.js';
export { crossing, project } from './project.js';
