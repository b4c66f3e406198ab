import { type ColdWaterOutcome, type Stage, stages } from '../sugar/stages.js';
import { numberAt } from '../units/at.js';
import { syrupCelsius } from './advance.js';
import { curveBias, dialBias, type Estimate, joulesDone, joulesToBoil } from './estimate.js';
import type { Hob } from './forecast.js';
import { locate } from './locate.js';
import { clamp, normalBelow } from './numbers.js';
import type { Path } from './path.js';
import { average, type Shown, spreadPoints, varianceAbout, weighIn } from './points.js';

/** A tester takes half a stage for its neighbour. Our judgement; never under 1.5 K or over 5 K. */
const stagesOfDoubt = 0.5;
const doubtRangeKelvin = [1.5, 5] as const;
/** The same hands in the same water err the same way: each further test counts for less. Our judgement. */
const worthOfTest = (testsBefore: number): number => 1 / (1 + 0.4 * testsBefore);
/** Below this chance of the outcome at what the thermometer shows, test and thermometer disagree. */
const disagreeBelow = 0.15;

export const bounds = (stage: Stage, hob: Hob): readonly [from: number, to: number] => {
  const index = stages.indexOf(stage);
  const next = stages[index + 1];
  const from = index === 0 ? -Infinity : hob.stageFromCelsius[stage];
  return [from, next === undefined ? Infinity : hob.stageFromCelsius[next]];
};

const share = (from: number, to: number, centre: number, sd: number): number =>
  Math.max(0, normalBelow((to - centre) / sd) - normalBelow((from - centre) / sd));

/** Chance of an outcome for syrup of a true temperature. */
export const outcomeLikelihood = (outcome: ColdWaterOutcome, hob: Hob): ((celsius: number) => number) => {
  const [from, to] = bounds(outcome, hob);
  // Who feels a hard crack may hold what is past it.
  const upper = outcome === 'hard crack' ? Infinity : to;
  const width = Number.isFinite(from) && Number.isFinite(to) ? to - from : 2 * doubtRangeKelvin[1];
  const doubt = clamp(stagesOfDoubt * width, ...doubtRangeKelvin);
  return (celsius) => 0.002 + 0.998 * share(from, upper, celsius, doubt);
};

type Believed = Shown & { readonly sd: number };

const believed = ({ mean, covariance }: Estimate, coldJoules: number, path: Path): Believed => {
  const points = spreadPoints(mean, covariance);
  const shown = points.map(
    (point) =>
      syrupCelsius({ joules: numberAt(point, joulesDone), coldJoules }, path) + numberAt(point, curveBias),
  );
  const celsius = average(shown);
  return { points, shown, celsius, sd: Math.sqrt(Math.max(varianceAbout(shown, celsius), 1e-6)) };
};

/** The syrup's true temperature as believed at the estimate's own time. */
export const temperatureOf = (estimate: Estimate, path: Path): Believed =>
  believed(estimate, joulesToBoil(estimate), path);

/**
 * What it boils at by the water left in it, however far it has cooled on the trivet: what stages, windows and fingers go
 * by. Its temperature until its place on the curve has been found: there may be sugar in it yet that has not dissolved.
 */
export const boilingPointOf = (estimate: Estimate, path: Path): Believed =>
  believed(estimate, estimate.located ? 0 : joulesToBoil(estimate), path);

export const stageShares = (celsius: number, sd: number, hob: Hob): Record<Stage, number> => {
  const shares = stages.map((stage) => share(...bounds(stage, hob), celsius, sd));
  const sum = shares.reduce((total, value) => total + value, 0);
  return Object.fromEntries(stages.map((stage, index) => [stage, numberAt(shares, index) / sum])) as Record<
    Stage,
    number
  >;
};

const quadraturePoints = 81;
const quadratureReach = 5;

/** Mean and variance of a normal belief once the likelihood has been weighed in, by sums over a fixed grid. */
const weighed = (celsius: number, sd: number, likelihood: (celsius: number) => number) => {
  let total = 0;
  let sum = 0;
  let squares = 0;
  for (let index = 0; index < quadraturePoints; index++) {
    const z = quadratureReach * ((2 * index) / (quadraturePoints - 1) - 1);
    const weight = Math.exp(-(z * z) / 2) * likelihood(celsius + z * sd);
    total += weight;
    sum += weight * z;
    squares += weight * z * z;
  }
  const shift = sum / total;
  return {
    celsius: celsius + shift * sd,
    variance: sd * sd * Math.max(0.01, squares / total - shift * shift),
  };
};

/** Weighs a cold-water outcome in: it tells of the syrup itself, and so, against the readings, of the thermometer. */
export const testCold = (estimate: Estimate, outcome: ColdWaterOutcome, path: Path, hob: Hob): Estimate => {
  const chance = outcomeLikelihood(outcome, hob);
  const tests = estimate.coldWater.tests;
  if (!estimate.located) {
    if (outcome === 'dissolves') return { ...estimate, coldWater: { tests: tests + 1, disagreed: 0 } };
    const found = locate(estimate, { kind: 'test', likelihood: chance }, null, path);
    return { ...found, coldWater: { tests: tests + 1, disagreed: 0 } };
  }
  const worth = worthOfTest(tests);
  // Fingers feel how much water is left, not how hot it still is.
  const before = boilingPointOf(estimate, path);
  const after = weighed(before.celsius, before.sd, (celsius) => chance(celsius) ** worth);
  const { mean, covariance } = weighIn(before, {
    total: before.sd ** 2,
    off: after.celsius - before.celsius,
    shrunk: before.sd ** 2 - after.variance,
  });
  mean[joulesDone] = clamp(numberAt(mean, joulesDone), path.lowestJoules, path.highestJoules);
  // What the thermometer says at its face, without what was already found out about it.
  const face = before.celsius + numberAt(estimate.mean, dialBias);
  const disagrees = estimate.acceptedReadings > 0 && chance(face) < disagreeBelow;
  return {
    ...estimate,
    mean,
    covariance,
    coldWater: { tests: tests + 1, disagreed: estimate.coldWater.disagreed + (disagrees ? 1 : 0) },
  };
};
