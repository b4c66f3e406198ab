import type { Batch } from '../batch/batch.js';
import type { Belief, Forecast } from '../forecast/forecast.js';
import type { Cook } from './cook.js';

/** What a phase or a hazard may look at: the cook, the moment, and what the evidence means at that moment. */
export type View = {
  readonly cook: Cook;
  readonly batch: Batch;
  /** Seconds since the cook opened. */
  readonly now: number;
  readonly belief: Belief | null;
  readonly forecast: Forecast | null;
  /** The pot should come off the ring. */
  readonly offTheHeat: boolean;
};
