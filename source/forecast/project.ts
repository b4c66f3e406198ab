import type { BoilingCurve } from '../sugar/syrup.js';
import { numberAt } from '../units/at.js';
import {
  carryOn,
  lossWattsPerKelvin,
  type Standing,
  standingOf,
  steamWatts,
  syrupCelsius,
  wanderPerRootMinute,
  wattsAt,
} from './advance.js';
import { carryOverKelvinOf } from './carry-over.js';
import {
  curveBias,
  type Estimate,
  joulesDone,
  joulesToBoil,
  logWatts,
  momentOf,
  unknowns,
} from './estimate.js';
import type { Forecast, Hob, SecondsAhead, Target } from './forecast.js';
import { clamp, normalPoints, quantile, root } from './numbers.js';
import { type Path, pathOf } from './path.js';

const futures = normalPoints(96, unknowns + 2);
const legs = 14;
/** Nobody boils syrup for longer: a time beyond it is given as this. */
const longestSeconds = 6 * 3600;
const leastWatts = 1;
/** What the model leaves out of a temperature: a lag that is known to a third, syrup unevenly hot. Our judgement. */
const leftOutKelvin = 0.45;

/** Seconds from the estimate's own time until this pot has crossed `celsius`. Constant time. */
const secondsTo = (
  celsius: number,
  point: readonly number[],
  coldJoules: number,
  standing: Standing,
  t: number,
  path: Path,
): number => {
  const start = numberAt(point, joulesDone);
  const goal = path.joulesAt(celsius - numberAt(point, curveBias));
  const settled = numberAt(point, logWatts);
  if (goal <= start && coldJoules <= 0) return 0;
  let seconds = 0;
  const leg = (joules: number, at: number, steaming: number): void => {
    const power = wattsAt(standing, settled, t + seconds, at, path) - steaming;
    const first = joules / Math.max(leastWatts, power);
    const better = wattsAt(standing, settled, t + seconds + first / 2, at, path) - steaming;
    seconds += joules / Math.max(leastWatts, better);
  };
  const startCelsius = path.celsiusAt(start);
  for (let index = 0; index < 4 && coldJoules > 0; index++) {
    const below = (coldJoules / path.warmingAt(start)) * (1 - (index + 0.5) / 4);
    leg(coldJoules / 4, startCelsius - below, steamWatts(below));
  }
  const way = Math.max(0, goal - start);
  for (let index = 0; index < legs && way > 0; index++) {
    leg(way / legs, path.celsiusAt(start + (way * (index + 0.5)) / legs), 0);
  }
  return Math.min(seconds, longestSeconds);
};

/** The pot as it will stand from now on: a lid comes off for the boil. */
const uncovered = (estimate: Estimate, hob: Hob): Standing => ({
  ...standingOf(estimate, hob),
  lidOn: false,
});

const waysTo = (celsius: number, estimate: Estimate, hob: Hob, path: Path): number[] => {
  const lower = root(estimate.covariance, unknowns);
  const standing = uncovered(estimate, hob);
  const coldJoules = joulesToBoil(estimate);
  return futures
    .map((z) => {
      const point = estimate.mean.map((value, row) => {
        let sum = value;
        for (let column = 0; column <= row; column++)
          sum += numberAt(lower, row * unknowns + column) * numberAt(z, column);
        return sum;
      });
      const goal = celsius + numberAt(z, unknowns + 1) * leftOutKelvin;
      const seconds = secondsTo(goal, point, coldJoules, standing, estimate.t, path);
      // The burner wanders on the way as well; a walk seen as a mean over the way has a third of its variance.
      return seconds * Math.exp(-numberAt(z, unknowns) * wanderPerRootMinute * Math.sqrt(seconds / 180));
    })
    .sort((a, b) => a - b);
};

type Ways = {
  readonly celsius: number;
  readonly hob: Hob;
  readonly path: Path;
  readonly seconds: readonly number[];
};

/** Between two events the estimate is the same and only time passes: its ways are not walked again at every look. */
const walked = new WeakMap<Estimate, readonly Ways[]>();
const mostWays = 4;

const knownWaysTo = (celsius: number, estimate: Estimate, hob: Hob, path: Path): readonly number[] => {
  const ways = walked.get(estimate) ?? [];
  const known = ways.find((one) => one.celsius === celsius && one.hob === hob && one.path === path);
  if (known !== undefined) return known.seconds;
  const seconds = waysTo(celsius, estimate, hob, path);
  walked.set(estimate, [...ways.slice(1 - mostWays), { celsius, hob, path, seconds }]);
  return seconds;
};

const ahead = (ways: readonly number[], since: number): SecondsAhead => {
  const seconds = (share: number): number => Math.max(0, quantile(ways, share) - since);
  return { low: seconds(0.1), typical: seconds(0.5), high: seconds(0.9) };
};

/** Where time is counted from: a pot that stands still (lid) waits, any other moves on. */
const sinceOf = (estimate: Estimate, now: number): number => Math.max(0, now - estimate.t);

const nextReading = (estimate: Estimate, takeOff: SecondsAhead, celsiusLeft: number, now: number): number => {
  const asked =
    takeOff.typical <= 60
      ? 10
      : clamp(
          Math.min(takeOff.low / 4, celsiusLeft < 8 ? 60 : 300),
          20,
          estimate.acceptedReadings < 4 ? 60 : 300,
        );
  const waited = estimate.lastReading === null ? 0 : now - estimate.lastReading.t;
  return Math.max(0, asked - Math.max(0, waited));
};

/** Two readings have shown the power, and it goes into the pot. */
const isProjected = ({ acceptedReadings, potOn, heating }: Estimate): boolean =>
  acceptedReadings >= 2 && potOn && heating;

/** Net watts at the estimate's own time once the burner has settled: the same until something happens, whatever time it is. */
const settledWatts = (estimate: Estimate, hob: Hob, path: Path): number => {
  const joules = numberAt(estimate.mean, joulesDone);
  const celsius = syrupCelsius({ joules, coldJoules: joulesToBoil(estimate) }, path);
  const standing = { ...uncovered(estimate, hob), change: null };
  return wattsAt(standing, numberAt(estimate.mean, logWatts), estimate.t, celsius, path);
};

/**
 * Time to the floor of the window, or null: fewer than two accepted readings, no place on the curve found yet, or no
 * net power into the pot. Never negative, never more than six hours. Constant time.
 */
export const project = (
  estimate: Estimate,
  target: Target,
  now: number,
  curve: BoilingCurve,
  hob: Hob,
): Forecast | null => {
  if (!isProjected(estimate)) return null;
  const path = pathOf(curve, hob);
  if (!(settledWatts(estimate, hob, path) > leastWatts)) return null;
  const moment = momentOf(estimate, now);
  const present = carryOn(estimate, moment, path, hob);
  const joules = numberAt(present.mean, joulesDone);
  const celsius = syrupCelsius({ joules, coldJoules: joulesToBoil(present) }, path);
  const standing = uncovered(present, hob);
  const watts = Math.max(
    leastWatts,
    wattsAt(standing, numberAt(present.mean, logWatts), moment, celsius, path),
  );
  const from = estimate.lidOn ? present : estimate;
  const since = sinceOf(from, moment);
  const seconds = ahead(knownWaysTo(target.floorCelsius, from, hob, path), since);
  const takeOffSeconds = ahead(knownWaysTo(target.takeOffCelsius, from, hob, path), since);
  const bias = numberAt(present.mean, curveBias);
  const whole = path.joulesAt(target.floorCelsius - bias);
  return {
    seconds,
    takeOffSeconds,
    boilShare: whole > 0 ? clamp(joules / whole, 0, 1) : 1,
    watts,
    carryOverKelvin:
      hob.learnedCarryOverKelvin ??
      carryOverKelvinOf(hob.stove, watts, path.joulesAt(target.takeOffCelsius - bias), path).offTheRingKelvin,
    nextReadingSeconds: nextReading(present, takeOffSeconds, target.takeOffCelsius - celsius - bias, moment),
  };
};

/** The pot from which a crossing is counted, at `moment`; null where nothing is projected. */
const runningFrom = (estimate: Estimate, moment: number, path: Path, hob: Hob): Estimate | null => {
  if (!isProjected(estimate)) return null;
  return estimate.lidOn ? carryOn(estimate, moment, path, hob) : estimate;
};

const crossingFrom = (
  from: Estimate,
  celsius: number,
  moment: number,
  path: Path,
  hob: Hob,
): number | null => {
  const seconds = secondsTo(celsius, from.mean, joulesToBoil(from), uncovered(from, hob), from.t, path);
  return seconds >= longestSeconds ? null : Math.max(moment, from.t + seconds);
};

/** The `now` at which the projected syrup crosses `celsius`, by the middle estimate; null where nothing is projected. */
export const crossing = (
  estimate: Estimate,
  celsius: number,
  now: number,
  curve: BoilingCurve,
  hob: Hob,
): number | null => {
  if (!Number.isFinite(celsius)) return null;
  const path = pathOf(curve, hob);
  const moment = momentOf(estimate, now);
  const from = runningFrom(estimate, moment, path, hob);
  return from === null ? null : crossingFrom(from, celsius, moment, path, hob);
};

/** No power that this pot can have from now on is greater, watts: nothing lost to the room, all the ring's glow kept. */
const mostWatts = (from: Estimate, path: Path): number => {
  const joules = numberAt(from.mean, joulesDone);
  const celsius = syrupCelsius({ joules, coldJoules: joulesToBoil(from) }, path);
  const settled = Math.exp(clamp(numberAt(from.mean, logWatts), -3, 10));
  const gross = Math.max(leastWatts, settled, from.change?.watts ?? 0);
  return gross + lossWattsPerKelvin * Math.max(0, path.startCelsius - celsius);
};

/**
 * The same if the syrup has crossed it by `now`, and null if not: asked after every event, and answered by the heat that
 * is missing where the greatest power could not have brought it.
 */
export const crossingBy = (
  estimate: Estimate,
  celsius: number,
  now: number,
  curve: BoilingCurve,
  hob: Hob,
): number | null => {
  const path = pathOf(curve, hob);
  const moment = momentOf(estimate, now);
  const from = runningFrom(estimate, moment, path, hob);
  if (from === null) return null;
  const missing =
    joulesToBoil(from) +
    Math.max(0, path.joulesAt(celsius - numberAt(from.mean, curveBias)) - numberAt(from.mean, joulesDone));
  if (missing > mostWatts(from, path) * Math.max(0, now - from.t)) return null;
  const crossed = crossingFrom(from, celsius, moment, path, hob);
  return crossed !== null && crossed <= now ? crossed : null;
};
