import { stoveTraits } from '../kitchen/stove.js';
import { numberAt } from '../units/at.js';
import { type Estimate, joulesDone, logWatts, unknowns } from './estimate.js';
import type { Hob } from './forecast.js';
import { clamp } from './numbers.js';
import type { Path } from './path.js';
import { average, covarianceOf, meanOf, spreadPoints } from './points.js';

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

export const syrupCelsius = (
  { joules, coldJoules }: Pick<PotState, 'joules' | 'coldJoules'>,
  path: Path,
): number =>
  coldJoules === 0 ? path.celsiusAt(joules) : path.celsiusAt(joules) - coldJoules / path.warmingAt(joules);

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
    celsius = syrupCelsius({ joules, coldJoules }, path);
    behindKelvin = behindKelvin * kept + ((celsius - before) / step) * lag * (1 - kept);
  }
  return { joules, coldJoules, behindKelvin };
};

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
  const movesOn = standing.potOn && !standing.lidOn;
  const points = spreadPoints(estimate.mean, estimate.covariance);
  const runs = points.map((point) => ({
    point,
    after: runPot(
      { joules: numberAt(point, joulesDone), coldJoules, behindKelvin: estimate.behindKelvin },
      numberAt(point, logWatts),
      standing,
      estimate.t,
      seconds,
      path,
      hob.dialLagSeconds,
    ),
  }));
  const coldAfter = average(runs.map(({ after }) => after.coldJoules));
  // What still has to be warmed differs from point to point; the difference is carried as heat done.
  for (const { point, after } of runs)
    point[joulesDone] = movesOn ? after.joules + coldAfter - after.coldJoules : after.joules;
  const mean = meanOf(points);
  const covariance = covarianceOf(points, mean);
  if (standing.potOn && standing.heating) {
    const power = logWatts * unknowns + logWatts;
    covariance[power] = Math.min(1, numberAt(covariance, power) + wanderPerRootMinute ** 2 * (seconds / 60));
    const done = joulesDone * unknowns + joulesDone;
    if (movesOn) covariance[done] = numberAt(covariance, done) + joulesPerRootSecond ** 2 * seconds;
  }
  // Each field named, as in cook/step.ts: copies of copies are slow.
  return {
    t,
    mean,
    covariance,
    coldJoules: coldAfter,
    behindKelvin: average(runs.map(({ after }) => after.behindKelvin)),
    moved: estimate.moved,
    potOn: estimate.potOn,
    lidOn: estimate.lidOn,
    heating: estimate.heating,
    level: estimate.level,
    change: estimate.change,
    knownLevels: estimate.knownLevels,
    unsettledUntil: estimate.unsettledUntil,
    located: estimate.located,
    acceptedReadings: estimate.acceptedReadings,
    lastReading: estimate.lastReading,
    suspects: estimate.suspects,
    coldWater: estimate.coldWater,
  };
};
