import { shareOfFull, stoveTraits } from '../kitchen/stove.js';
import { numberAt } from '../units/at.js';
import { standingOf, syrupCelsius, wattsAt } from './advance.js';
import { type Estimate, joulesDone, joulesToBoil, logWatts, unknowns } from './estimate.js';
import type { Hob } from './forecast.js';
import { clamp } from './numbers.js';
import type { Path } from './path.js';

/** What is done to the pot: knob, ring, lid, water. */

/** Readings sooner after the pot is back, or uncovered, say nothing about the water left. */
const settleSeconds = 60;
/** What a knob's label leaves open about the power behind it, relative. Our judgement. */
const labelDoubt = 0.25;
const mostKnownLevels = 20;
const mostGramsAdded = 20_000;

/** The knob: the power behind its label was seen before, or is guessed with doubt; the stove's lag delays it. */
export const turn = (estimate: Estimate, t: number, level: number | null, path: Path, hob: Hob): Estimate => {
  const asked = level === null || !Number.isFinite(level) ? null : clamp(level, 0, 1);
  if (asked !== null && asked === estimate.level && estimate.heating === asked > 0) return estimate;
  const celsius = path.startCelsius;
  const standing = { ...standingOf(estimate, hob), potOn: true };
  const cold = !estimate.heating && estimate.change === null;
  const watts = cold ? 0 : wattsAt(standing, numberAt(estimate.mean, logWatts), t, celsius, path);
  const place = logWatts * unknowns + logWatts;
  const variance = numberAt(estimate.covariance, place);
  const leaving =
    estimate.level === null || estimate.level === 0 || !estimate.located
      ? estimate.knownLevels
      : [
          ...estimate.knownLevels
            .filter((known) => known.level !== estimate.level)
            .slice(1 - mostKnownLevels),
          { level: estimate.level, logWatts: numberAt(estimate.mean, logWatts), sd: Math.sqrt(variance) },
        ];
  const turned: Estimate = {
    ...estimate,
    level: asked,
    knownLevels: leaving,
    change: { t, watts },
    heating: asked !== 0,
  };
  if (asked === 0) return turned;
  const mean = [...estimate.mean];
  const covariance = [...estimate.covariance];
  for (let row = 0; row < unknowns; row++) {
    covariance[row * unknowns + logWatts] = 0;
    covariance[logWatts * unknowns + row] = 0;
  }
  const known = leaving.find((entry) => entry.level === asked);
  if (known !== undefined) {
    mean[logWatts] = known.logWatts;
    covariance[place] = known.sd ** 2 + 0.1 ** 2;
  } else if (asked !== null && cold) {
    mean[logWatts] = Math.log(shareOfFull(asked) * stoveTraits[hob.stove].fullWatts);
    covariance[place] = 0.5 ** 2;
  } else {
    const before = estimate.level;
    const ratio =
      asked === null || before === null || before === 0 ? 1 : shareOfFull(asked) / shareOfFull(before);
    mean[logWatts] = clamp(numberAt(estimate.mean, logWatts) + Math.log(ratio), 1, 9);
    covariance[place] = Math.min(1, variance + labelDoubt ** 2);
  }
  return { ...turned, mean, covariance };
};

/** Most that a ring left alone gives at first, over its usual power. Our judgement. */
const mostGlow = 1.5;

/**
 * Off the ring the pot's base still boils a little off; back on it, the base first has to be heated again, and a ring
 * that went on glowing gives more than usual for a while.
 */
export const movePot = (estimate: Estimate, t: number, on: boolean, path: Path, hob: Hob): Estimate => {
  if (on === estimate.potOn) return estimate;
  const habit = stoveTraits[hob.stove];
  const celsius = syrupCelsius(
    { joules: numberAt(estimate.mean, joulesDone), coldJoules: joulesToBoil(estimate) },
    path,
  );
  if (!on) {
    const standing = standingOf(estimate, hob);
    const watts = Math.max(
      0,
      estimate.heating ? wattsAt(standing, numberAt(estimate.mean, logWatts), t, celsius, path) : 0,
    );
    const mean = [...estimate.mean];
    const boils = estimate.located && !estimate.lidOn && joulesToBoil(estimate) <= 0;
    if (boils)
      mean[joulesDone] = Math.min(
        numberAt(estimate.mean, joulesDone) + watts * habit.baseSeconds,
        path.highestJoules,
      );
    return { ...estimate, mean, potOn: false, moved: { t, watts: boils ? watts : 0 } };
  }
  const away = estimate.moved === null ? 0 : t - estimate.moved.t;
  const before = estimate.moved?.watts ?? 0;
  const settled = Math.exp(numberAt(estimate.mean, logWatts));
  const glow = habit.glows && estimate.heating ? Math.min(mostGlow, away / habit.lagSeconds) : 0;
  return {
    ...estimate,
    potOn: true,
    moved: null,
    unsettledUntil: t + settleSeconds,
    coldJoules: joulesToBoil(estimate) + before * habit.baseSeconds,
    change: glow > 0 ? { t, watts: settled * (1 + glow) } : estimate.change,
  };
};

export const cover = (estimate: Estimate, t: number, on: boolean): Estimate =>
  on === estimate.lidOn
    ? estimate
    : { ...estimate, lidOn: on, unsettledUntil: on ? estimate.unsettledUntil : t + settleSeconds };

export const addWater = (estimate: Estimate, t: number, added: number, path: Path): Estimate => {
  if (!(added > 0)) return estimate;
  const grams = Math.min(added, mostGramsAdded);
  const mean = [...estimate.mean];
  mean[joulesDone] = Math.max(
    path.lowestJoules,
    numberAt(estimate.mean, joulesDone) - grams * (path.joulesPerAddedGram - path.joulesPerWarmedGram),
  );
  return {
    ...estimate,
    mean,
    coldJoules: joulesToBoil(estimate) + grams * path.joulesPerWarmedGram,
    unsettledUntil: Math.max(estimate.unsettledUntil, t + settleSeconds),
  };
};
