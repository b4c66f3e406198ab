import type { BoilingCurve } from '../sugar/syrup.js';
import {
  carryOn,
  covarianceOf,
  lossWattsPerKelvin,
  meanOf,
  spreadPoints,
  standingOf,
  steamWatts,
  syrupCelsius,
  wattsAt,
} from './advance.js';
import { testCold } from './cold-water.js';
import { curveBias, dialBias, type Estimate, joulesDone, logWatts, unknowns } from './estimate.js';
import type { Evidence, Hob } from './forecast.js';
import { locate, type Watched } from './locate.js';
import { clamp } from './numbers.js';
import { type Path, pathOf } from './path.js';
import { shareOfFull, stoveHabits } from './stoves.js';

/** What a careful reading of a kitchen thermometer in bubbling syrup scatters by, kelvin. Our judgement. */
const usualReadingSdKelvin = 0.65;
/** The lag of a dial is known to about a third. Our judgement. */
const lagDoubt = 0.33;
/** No kitchen thermometer in a syrup shows anything outside. */
const readableCelsius = [-30, 400] as const;
const mostGramsAdded = 20_000;
const settleSeconds = 60;
const labelDoubt = 0.25;
const mostKnownLevels = 8;
/** A reading this many spreads away is improbable. */
const improbable = 3.5;
/** Nothing boils this far below where the boil starts, whatever the biases. */
const coldKelvin = 3;

type Reading = Extract<Evidence, { kind: 'reading' }>;

const at = (estimate: Estimate, row: number): number => estimate.mean[row] ?? 0;

const readingSdOf = (hob: Hob): number => clamp(hob.readingSdKelvin ?? usualReadingSdKelvin, 0.05, 10);

const readingVariance = (estimate: Estimate, hob: Hob): number =>
  readingSdOf(hob) ** 2 + (lagDoubt * estimate.behindKelvin) ** 2;

/** What the dial should show, and how far from it a reading may be: kelvin. */
const expectation = (estimate: Estimate, path: Path, hob: Hob) => {
  const points = spreadPoints(estimate.mean, estimate.covariance);
  const coldJoules = estimate.coldJoules ?? 0;
  const shown = points.map(
    (point) =>
      syrupCelsius({ joules: point[joulesDone] ?? 0, coldJoules, behindKelvin: 0 }, path) -
      estimate.behindKelvin +
      (point[curveBias] ?? 0) +
      (point[dialBias] ?? 0),
  );
  const celsius = shown.reduce((sum, value) => sum + value, 0) / shown.length;
  const variance =
    shown.reduce((sum, value) => sum + (value - celsius) ** 2, 0) / shown.length +
    readingVariance(estimate, hob);
  return { points, shown, celsius, variance };
};

/** Kalman's update through the points; an unlikely reading counts less, as under Student's t with four degrees. */
const weigh = (estimate: Estimate, reading: number, path: Path, hob: Hob): Estimate => {
  const { points, shown, celsius, variance } = expectation(estimate, path, hob);
  const off = reading - celsius;
  const extra = readingVariance(estimate, hob) * Math.max(0, (4 + off ** 2 / variance) / 5 - 1);
  const total = variance + extra;
  const mean = meanOf(points);
  const gains = mean.map(
    (centre, row) =>
      points.reduce(
        (sum, point, index) => sum + ((point[row] ?? 0) - centre) * ((shown[index] ?? 0) - celsius),
        0,
      ) /
      points.length /
      total,
  );
  const covariance = covarianceOf(points, mean).map(
    (value, place) =>
      value - (gains[Math.floor(place / unknowns)] ?? 0) * (gains[place % unknowns] ?? 0) * total,
  );
  for (let row = 0; row < unknowns; row++) {
    const place = row * unknowns + row;
    covariance[place] = Math.max(covariance[place] ?? 0, 1e-9);
  }
  const updated = mean.map((value, row) => value + (gains[row] ?? 0) * off);
  updated[joulesDone] = clamp(updated[joulesDone] ?? 0, path.lowestJoules, path.highestJoules);
  return { ...estimate, mean: updated, covariance };
};

const widen = (estimate: Estimate, row: number, variance: number): Estimate => {
  const covariance = [...estimate.covariance];
  covariance[row * unknowns + row] = (covariance[row * unknowns + row] ?? 0) + variance;
  return { ...estimate, covariance };
};

/** Learns the power from two readings of a pot that only warms. */
const learnWhileCold = (estimate: Estimate, reading: Reading, path: Path): Estimate => {
  const last = estimate.lastReading;
  const seconds = last === null ? 0 : reading.t - last.t;
  const rise = last === null ? 0 : reading.celsius - last.celsius;
  if (last === null || seconds < 15 || rise < 1 || estimate.lidOn) return estimate;
  const below = path.startCelsius - (reading.celsius + last.celsius) / 2;
  const watts = Math.max(
    20,
    (rise * path.warmingAt(0)) / seconds - lossWattsPerKelvin * below + steamWatts(below),
  );
  const doubt = 0.25 ** 2 + (1.5 / rise) ** 2;
  const place = logWatts * unknowns + logWatts;
  const gain = (estimate.covariance[place] ?? 0) / ((estimate.covariance[place] ?? 0) + doubt);
  const mean = [...estimate.mean];
  mean[logWatts] = at(estimate, logWatts) + gain * (Math.log(watts) - at(estimate, logWatts));
  const covariance = [...estimate.covariance];
  covariance[place] = (covariance[place] ?? 0) * (1 - gain);
  return { ...estimate, mean, covariance, heating: true };
};

/** A place read off a cold pot: how evenly it is warm, and so when it will boil, is known to about 3 K. Our judgement. */
const coldSdKelvin = 3;

/** While it only warms, each reading says afresh how far it is from the boil, and nothing of the water left. */
const readCold = (estimate: Estimate, reading: Reading, path: Path): Estimate => {
  const learned = learnWhileCold(estimate, reading, path);
  const warming = path.warmingAt(0);
  const celsius = reading.celsius + clamp(learned.behindKelvin, 0, 8);
  const mean = [...learned.mean];
  mean[joulesDone] = 0;
  const covariance = learned.covariance.map((value, place) =>
    Math.floor(place / unknowns) === joulesDone || place % unknowns === joulesDone ? 0 : value,
  );
  covariance[joulesDone * unknowns + joulesDone] = (coldSdKelvin * warming) ** 2;
  const coldJoules = clamp(path.startCelsius - celsius, 0, 200) * warming;
  return accept({ ...learned, mean, covariance, coldJoules }, reading);
};

const accept = (estimate: Estimate, reading: Reading): Estimate => ({
  ...estimate,
  acceptedReadings: estimate.acceptedReadings + 1,
  lastReading: { t: reading.t, celsius: reading.celsius },
  suspects: { count: 0, kelvin: 0 },
});

/** Water that steams off before the boil, and what was weighed wrong: grams over all. Our judgement. */
const lostBeforeBoil = { grams: 6, sdGrams: 8 } as const;
const evaporationJoulePerGram = 2250;

/** A pot that was seen cold, and heated since, has not boiled for longer than its power allows. */
const watchedPot = (estimate: Estimate): Watched | null => {
  if (estimate.acceptedReadings === 0 || !estimate.heating) return null;
  const variance = Math.max(0, estimate.covariance[joulesDone * unknowns + joulesDone] ?? 0);
  return {
    joules: Math.max(0, at(estimate, joulesDone)) + lostBeforeBoil.grams * evaporationJoulePerGram,
    sd: Math.hypot(lostBeforeBoil.sdGrams * evaporationJoulePerGram, Math.sqrt(variance)),
  };
};

/** Not on the ring, under a lid or hardly back: how far below its boil the syrup has cooled, never how much water left. */
const readUnsettled = (estimate: Estimate, reading: Reading, path: Path, hob: Hob): Estimate => {
  const below = expectation({ ...estimate, coldJoules: 0 }, path, hob).celsius - reading.celsius;
  const warming = path.warmingAt(at(estimate, joulesDone));
  const coldJoules = 0.5 * (estimate.coldJoules ?? 0) + 0.5 * clamp(below, 0, 60) * warming;
  return { ...estimate, coldJoules, lastReading: { t: reading.t, celsius: reading.celsius } };
};

/**
 * An improbable reading. One alone is left out. Two low ones in a row: the syrup is below its boil, and progress stands.
 * Two high ones, or more low ones: something was not told, and the syrup's place is sought anew.
 */
const suspect = (estimate: Estimate, reading: Reading, off: number, path: Path, hob: Hob): Estimate => {
  const same = estimate.suspects.count > 0 && Math.sign(off) === Math.sign(estimate.suspects.kelvin);
  const count = same ? estimate.suspects.count + 1 : 1;
  const noted: Estimate = {
    ...estimate,
    suspects: { count, kelvin: off },
    lastReading: { t: reading.t, celsius: reading.celsius },
  };
  if (count < 2) return noted;
  if (off < 0 && count < 4) {
    return {
      ...noted,
      coldJoules: (estimate.coldJoules ?? 0) - off * path.warmingAt(at(estimate, joulesDone)),
    };
  }
  if (reading.celsius < path.startCelsius - coldKelvin) return noted;
  const doubted = widen(noted, logWatts, 0.25 ** 2);
  return accept(
    locate(
      doubted,
      { kind: 'reading', celsius: reading.celsius, sd: Math.sqrt(readingVariance(estimate, hob)) },
      null,
      path,
    ),
    reading,
  );
};

/** How many spreads a reading at the estimate's own time is away from what was expected, with its sign; null if nothing was. */
const surpriseNow = (
  estimate: Estimate,
  celsius: number,
  path: Path,
  hob: Hob,
): { spreads: number; kelvin: number } => {
  const expected = expectation(estimate, path, hob);
  const kelvin = celsius - expected.celsius;
  return { spreads: kelvin / Math.sqrt(expected.variance), kelvin };
};

/** Power learned from a pot that only warmed holds this well for one that boils. Our judgement. */
const boilDoubt = 0.12;

/** The first reading of a pot that boils. A dial that came up with the cold pot is still behind. */
const findBoil = (estimate: Estimate, reading: Reading, path: Path, hob: Hob): Estimate => {
  const watched = watchedPot(estimate);
  const behindKelvin = watched === null ? 0 : clamp(estimate.behindKelvin, 0, 8);
  const sd = Math.hypot(readingSdOf(hob), watched === null ? 0 : lagDoubt * behindKelvin);
  const sighting = { kind: 'reading', celsius: reading.celsius + behindKelvin, sd } as const;
  const doubted = watched === null ? estimate : widen(estimate, logWatts, boilDoubt ** 2);
  const found = locate({ ...doubted, heating: true }, sighting, watched, path);
  if (watched === null) return { ...found, behindKelvin: 0 };
  const covariance = [...found.covariance];
  const place = joulesDone * unknowns + joulesDone;
  covariance[place] = Math.max(
    covariance[place] ?? 0,
    (lostBeforeBoil.sdGrams * evaporationJoulePerGram) ** 2,
  );
  return { ...found, covariance, behindKelvin };
};

const read = (estimate: Estimate, reading: Reading, path: Path, hob: Hob): Estimate => {
  if (!(reading.celsius >= readableCelsius[0] && reading.celsius <= readableCelsius[1])) return estimate;
  const below = reading.celsius < path.startCelsius - coldKelvin;
  if (!estimate.located) {
    if (below) return readCold(estimate, reading, path);
    return accept(findBoil(estimate, reading, path, hob), reading);
  }
  if (
    !estimate.potOn ||
    estimate.lidOn ||
    reading.t < estimate.unsettledUntil ||
    (estimate.coldJoules ?? 0) > 0
  ) {
    return readUnsettled(estimate, reading, path, hob);
  }
  const { spreads, kelvin } = surpriseNow(estimate, reading.celsius, path, hob);
  if (Math.abs(spreads) > improbable) return suspect(estimate, reading, kelvin, path, hob);
  return accept(weigh(estimate, reading.celsius, path, hob), reading);
};

/** The knob: the power behind its label was seen before, or is guessed with doubt; the stove's lag delays it. */
const turn = (estimate: Estimate, t: number, level: number | null, path: Path, hob: Hob): Estimate => {
  const asked = level === null || !Number.isFinite(level) ? null : clamp(level, 0, 1);
  if (asked !== null && asked === estimate.level && estimate.heating === asked > 0) return estimate;
  const celsius = path.startCelsius;
  const standing = { ...standingOf(estimate, hob), potOn: true };
  const cold = !estimate.heating && estimate.change === null;
  const watts = cold ? 0 : wattsAt(standing, at(estimate, logWatts), t, celsius, path);
  const place = logWatts * unknowns + logWatts;
  const variance = estimate.covariance[place] ?? 0;
  const leaving =
    estimate.level === null || estimate.level === 0 || !estimate.located
      ? estimate.knownLevels
      : [
          ...estimate.knownLevels
            .filter((known) => known.level !== estimate.level)
            .slice(1 - mostKnownLevels),
          { level: estimate.level, logWatts: at(estimate, logWatts), sd: Math.sqrt(variance) },
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
    mean[logWatts] = Math.log(shareOfFull(asked) * stoveHabits[hob.stove].fullWatts);
    covariance[place] = 0.5 ** 2;
  } else {
    const before = estimate.level;
    const ratio =
      asked === null || before === null || before === 0 ? 1 : shareOfFull(asked) / shareOfFull(before);
    mean[logWatts] = clamp(at(estimate, logWatts) + Math.log(ratio), 1, 9);
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
const movePot = (estimate: Estimate, t: number, on: boolean, path: Path, hob: Hob): Estimate => {
  if (on === estimate.potOn) return estimate;
  const habit = stoveHabits[hob.stove];
  const celsius = syrupCelsius(
    { joules: at(estimate, joulesDone), coldJoules: estimate.coldJoules ?? 0, behindKelvin: 0 },
    path,
  );
  if (!on) {
    const standing = standingOf(estimate, hob);
    const watts = Math.max(
      0,
      estimate.heating ? wattsAt(standing, at(estimate, logWatts), t, celsius, path) : 0,
    );
    const mean = [...estimate.mean];
    const boils = estimate.located && !estimate.lidOn && (estimate.coldJoules ?? 0) <= 0;
    if (boils)
      mean[joulesDone] = Math.min(at(estimate, joulesDone) + watts * habit.baseSeconds, path.highestJoules);
    return { ...estimate, mean, potOn: false, moved: { t, watts: boils ? watts : 0 } };
  }
  const away = estimate.moved === null ? 0 : t - estimate.moved.t;
  const before = estimate.moved?.watts ?? 0;
  const settled = Math.exp(at(estimate, logWatts));
  const glow = habit.glows && estimate.heating ? Math.min(mostGlow, away / habit.lagSeconds) : 0;
  return {
    ...estimate,
    potOn: true,
    moved: null,
    unsettledUntil: t + settleSeconds,
    coldJoules: (estimate.coldJoules ?? 0) + before * habit.baseSeconds,
    change: glow > 0 ? { t, watts: settled * (1 + glow) } : estimate.change,
  };
};

const cover = (estimate: Estimate, t: number, on: boolean): Estimate =>
  on === estimate.lidOn
    ? estimate
    : { ...estimate, lidOn: on, unsettledUntil: on ? estimate.unsettledUntil : t + settleSeconds };

const addWater = (estimate: Estimate, t: number, added: number, path: Path): Estimate => {
  if (!(added > 0)) return estimate;
  const grams = Math.min(added, mostGramsAdded);
  const mean = [...estimate.mean];
  mean[joulesDone] = Math.max(
    path.lowestJoules,
    at(estimate, joulesDone) - grams * (path.joulesPerAddedGram - path.joulesPerWarmedGram),
  );
  return {
    ...estimate,
    mean,
    coldJoules: (estimate.coldJoules ?? 0) + grams * path.joulesPerWarmedGram,
    unsettledUntil: Math.max(estimate.unsettledUntil, t + settleSeconds),
  };
};

/**
 * What is believed once one more thing was seen or done. Constant time; total: evidence out of order counts as of the
 * latest time known, numbers that are none are passed over.
 */
export const observe = (estimate: Estimate, evidence: Evidence, curve: BoilingCurve, hob: Hob): Estimate => {
  const path = pathOf(curve, hob);
  const t = Number.isFinite(evidence.t) ? Math.max(evidence.t, estimate.t) : estimate.t;
  const now = carryOn(estimate, t, path, hob);
  switch (evidence.kind) {
    case 'reading':
      return read(now, { ...evidence, t }, path, hob);
    case 'cold water':
      return testCold(now, evidence.outcome, path, hob);
    case 'heat':
      return turn(now, t, evidence.level, path, hob);
    case 'pot':
      return movePot(now, t, evidence.on, path, hob);
    case 'lid':
      return cover(now, t, evidence.on);
    case 'water':
      return addWater(now, t, evidence.grams, path);
  }
};

/**
 * How improbable a reading is before it is taken in: its distance from what the dial should show, in spreads, with
 * sign; beyond ±3.5 `observe` leaves it out at first. Null while nothing is expected (no place on the curve yet, pot
 * off the ring, lid on, cooled).
 */
export const surprise = (
  estimate: Estimate,
  reading: { readonly t: number; readonly celsius: number },
  curve: BoilingCurve,
  hob: Hob,
): number | null => {
  const path = pathOf(curve, hob);
  const now = carryOn(estimate, Math.max(reading.t, estimate.t), path, hob);
  const silent =
    !now.located || !now.potOn || now.lidOn || reading.t < now.unsettledUntil || (now.coldJoules ?? 0) > 0;
  return silent ? null : surpriseNow(now, reading.celsius, path, hob).spreads;
};
