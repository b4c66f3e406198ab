import type { Story } from '../lessons/story.js';

/** Seconds to the take-off as foreseen at `t` (seconds since the opening), an 80 % interval. */
export type Foreseen = {
  readonly t: number;
  readonly low: number;
  readonly typical: number;
  readonly high: number;
};

/** The forecast's own track, and when the pot had to come off. */
export type ForeseenTrack = {
  readonly points: readonly Foreseen[];
  /** The first of them. */
  readonly from: number;
  readonly came: number;
};

/** With fewer there is nothing to follow. */
const leastPoints = 3;

/** The boil's forecasts up to the moment at which the pot first had to come off; null where it said too little. */
export const foreseenOf = ({ track, offs }: Pick<Story, 'track' | 'offs'>): ForeseenTrack | null => {
  const off = offs.find(({ askedAt }) => askedAt !== null);
  const came = off?.askedAt ?? off?.t ?? null;
  if (came === null) return null;
  const points = track.flatMap(({ t, takeOffSeconds }) =>
    takeOffSeconds === null || t > came ? [] : [{ t, ...takeOffSeconds }],
  );
  const [first] = points;
  return first === undefined || points.length < leastPoints ? null : { points, from: first.t, came };
};

/** The top of a drawing of it, seconds. A first guess may be far off: what lies beyond twice the truth is cut. */
export const mostSeconds = ({ points, from, came }: ForeseenTrack): number => {
  const whole = came - from;
  return Math.min(Math.max(120, 2 * whole), Math.max(whole, ...points.map(({ high }) => high)));
};
