import { crossing } from '../forecast/index.js';
import type { Cook } from './cook.js';

/** A place on the way that the syrup is projected to go: true Celsius at `t` seconds since the opening. */
export type Waypoint = { readonly t: number; readonly celsius: number };

/**
 * When the projected syrup crosses each of these temperatures (true Celsius, rising), by the middle estimate; those that
 * it is not projected to reach are left out. Constant time for each.
 */
export const pathAhead = (cook: Cook, now: number, temperatures: readonly number[]): readonly Waypoint[] =>
  temperatures.flatMap((celsius) => {
    const t = crossing(cook.estimate, celsius, now, cook.batch.curve, cook.hob);
    return t === null ? [] : [{ t, celsius }];
  });
