import { stoveTraits } from '../kitchen/stove.js';
import { type Estimate, joulesDone, logWatts, unknowns } from './estimate.js';
import type { Hob } from './forecast.js';
import { clamp, type Matrix, root, type Vector } from './numbers.js';
import type { Path } from './path.js';

/** Losses to the room grow by this much for each kelvin: 0.08 m2 of wall and rim at 12 W/(m2 K). Our judgement. */
export const lossWattsPerKelvin = 1;
/** A pot standing on a trivet: the same with the surface, where water still leaves. Our judgement. */
const trivetWattsPerKelvin = 2;
const roomCelsius = 20;
/** How far a burner wanders: 7 % in a minute, growing with the root of time. Our judgement. */
export const wanderPerRootMinute = 0.07;
/** What the balance leaves out, joules after one second. Our judgement. */
const joulesPerRootSecond = 60;
const longestStepSeconds = 8;
const mostSteps = 40;
/** Whatever happens in a longer silence has happened by then. */
const longestSilenceSeconds = 12 * 3600;

/** The pot as it stands between two events: known but for the unknowns. */
export type Standing = Pick<Estimate, 'potOn' | 'lidOn' | 'heating' | 'change'> & {
  readonly lagSeconds: number;
};
export type PotState = {
  readonly joules: number;
  readonly coldJoules: number;
  readonly behindKelvin: number;
};

export const standingOf = (estimate: Estimate, hob: Hob): Standing => ({
  potOn: estimate.potOn,
  lidOn: estimate.lidOn,
  heating: estimate.heating,
  change: estimate.change,
  lagSeconds: stoveTraits[hob.stove].lagSeconds,
});

/** Net watts into the pot at time `t` with the burner settled at exp(`settledLogWatts`), the syrup at `celsius`. */
export const wattsAt = (
  standing: Standing,
  settledLogWatts: number,
  t: number,
  celsius: number,
  path: Path,
): number => {
  if (!standing.potOn) return -trivetWattsPerKelvin * Math.max(0, celsius - roomCelsius);
  const off = -lossWattsPerKelvin * Math.max(0, path.startCelsius - roomCelsius);
  const settled = standing.heating ? Math.exp(clamp(settledLogWatts, -3, 10)) : off;
  const { change } = standing;
  const arrived = change === null ? 1 : 1 - Math.exp(-Math.max(0, t - change.t) / standing.lagSeconds);
  const gross = change === null ? settled : settled * arrived + change.watts * (1 - arrived);
  // Cold walls lose nothing yet; above the start of the boil they lose more.
  return gross - lossWattsPerKelvin * (celsius - path.startCelsius);
};

/** What leaves as steam from a syrup still below its boil; it doubles about every 17 K. Our judgement for a 20 cm pot. */
const steamWattsAtBoil = 70;
const steamFoldKelvin = 24;
export const steamWatts = (belowKelvin: number): number =>
  belowKelvin > 0 ? steamWattsAtBoil * Math.exp(-belowKelvin / steamFoldKelvin) : 0;

export const syrupCelsius = (state: PotState, path: Path): number =>
  path.celsiusAt(state.joules) - state.coldJoules / path.warmingAt(state.joules);

/** One pot, its unknowns taken as known, from `t` over `seconds`. Constant time: at most 40 steps. */
export const runPot = (
  start: PotState,
  settledLogWatts: number,
  standing: Standing,
  t: number,
  seconds: number,
  path: Path,
  dialLagSeconds: number,
): PotState => {
  const steps = clamp(Math.ceil(seconds / longestStepSeconds), 1, mostSteps);
  const step = seconds / steps;
  const lag = Math.max(0.01, dialLagSeconds);
  const kept = Math.exp(-step / lag);
  let { joules, coldJoules, behindKelvin } = start;
  let celsius = syrupCelsius(start, path);
  const warmingPerKelvin = path.warmingAt(joules);
  for (let index = 0; index < steps; index++) {
    const steaming = standing.potOn && !standing.lidOn ? steamWatts(coldJoules / warmingPerKelvin) : 0;
    const heat =
      step * (wattsAt(standing, settledLogWatts, t + (index + 0.5) * step, celsius, path) - steaming);
    const warming = heat > 0 ? Math.min(heat, coldJoules) : heat;
    coldJoules -= warming;
    if (!standing.lidOn && heat > warming) joules = Math.min(joules + heat - warming, path.highestJoules);
    const before = celsius;
    celsius = syrupCelsius({ joules, coldJoules, behindKelvin }, path);
    behindKelvin = behindKelvin * kept + ((celsius - before) / step) * lag * (1 - kept);
  }
  return { joules, coldJoules, behindKelvin };
};

/** Points that carry mean and spread of the unknowns; all weigh the same. Source: Julier & Uhlmann 1997, without centre. */
export const spreadPoints = (mean: Vector, covariance: Matrix): Vector[] => {
  const lower = root(covariance, unknowns);
  const scale = Math.sqrt(unknowns);
  return Array.from({ length: 2 * unknowns }, (_, index) => {
    const column = index % unknowns;
    const sign = index < unknowns ? scale : -scale;
    return mean.map((value, row) => value + sign * (lower[row * unknowns + column] ?? 0));
  });
};

export const meanOf = (points: readonly Vector[]): number[] =>
  Array.from(
    { length: unknowns },
    (_, row) => points.reduce((sum, point) => sum + (point[row] ?? 0), 0) / points.length,
  );

export const covarianceOf = (points: readonly Vector[], mean: Vector): number[] =>
  Array.from({ length: unknowns * unknowns }, (_, place) => {
    const row = Math.floor(place / unknowns);
    const column = place % unknowns;
    return (
      points.reduce(
        (sum, point) =>
          sum + ((point[row] ?? 0) - (mean[row] ?? 0)) * ((point[column] ?? 0) - (mean[column] ?? 0)),
        0,
      ) / points.length
    );
  });

export const coldAtStart = (hob: Hob, path: Path): number =>
  Math.max(0, path.startCelsius - (Number.isFinite(hob.celsiusAtStart) ? hob.celsiusAtStart : roomCelsius)) *
  path.warmingAt(0);

/** The estimate carried on to `t` with nothing new known; unchanged when `t` is not later. */
export const carryOn = (estimate: Estimate, t: number, path: Path, hob: Hob): Estimate => {
  const coldJoules = estimate.coldJoules ?? coldAtStart(hob, path);
  const seconds = Math.min(t - estimate.t, longestSilenceSeconds);
  if (!(seconds > 0)) return estimate.coldJoules === null ? { ...estimate, coldJoules } : estimate;
  // Before there is any sign of heat the pot stays as it is.
  if (estimate.potOn && !estimate.heating && estimate.change === null) return { ...estimate, t, coldJoules };
  const standing = standingOf(estimate, hob);
  const runs = spreadPoints(estimate.mean, estimate.covariance).map((point) => ({
    point,
    after: runPot(
      { joules: point[joulesDone] ?? 0, coldJoules, behindKelvin: estimate.behindKelvin },
      point[logWatts] ?? 0,
      standing,
      estimate.t,
      seconds,
      path,
      hob.dialLagSeconds,
    ),
  }));
  const average = (of: (state: PotState) => number): number =>
    runs.reduce((sum, { after }) => sum + of(after), 0) / runs.length;
  const coldAfter = average((state) => state.coldJoules);
  // What still has to be warmed differs from point to point; the difference is carried as heat done.
  const points = runs.map(({ point, after }) => {
    const moved = [...point];
    moved[joulesDone] =
      standing.potOn && !standing.lidOn ? after.joules + coldAfter - after.coldJoules : after.joules;
    return moved;
  });
  const mean = meanOf(points);
  const covariance = covarianceOf(points, mean);
  const minutes = seconds / 60;
  const wander = joulesDone * unknowns + joulesDone;
  if (standing.potOn && standing.heating) {
    covariance[logWatts * unknowns + logWatts] = Math.min(
      1,
      (covariance[logWatts * unknowns + logWatts] ?? 0) + wanderPerRootMinute ** 2 * minutes,
    );
    if (!standing.lidOn) covariance[wander] = (covariance[wander] ?? 0) + joulesPerRootSecond ** 2 * seconds;
  }
  return {
    ...estimate,
    t,
    mean,
    covariance,
    coldJoules: coldAfter,
    behindKelvin: average((s) => s.behindKelvin),
  };
};
