import { numberAt } from '../units/at.js';
import { lossWattsPerKelvin, steamWatts } from './advance.js';
import { type Estimate, joulesDone, joulesToBoil, logWatts, unknowns } from './estimate.js';
import {
  expectation,
  lagDoubt,
  readingSdOf,
  readingVariance,
  surpriseOf,
  weigh,
  widen,
} from './expectation.js';
import type { Evidence, Hob } from './forecast.js';
import { locate, type Watched } from './locate.js';
import { clamp } from './numbers.js';
import type { Path } from './path.js';

/** No kitchen thermometer in a syrup shows anything outside. */
const readableCelsius = [-30, 400] as const;

/** A reading this many spreads away is improbable. */
const improbable = 3.5;
/** Nothing boils this far below where the boil starts, whatever the biases. */
const coldKelvin = 3;

export type Reading = Extract<Evidence, { kind: 'reading' }>;

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
  const gain = numberAt(estimate.covariance, place) / (numberAt(estimate.covariance, place) + doubt);
  const mean = [...estimate.mean];
  mean[logWatts] =
    numberAt(estimate.mean, logWatts) + gain * (Math.log(watts) - numberAt(estimate.mean, logWatts));
  const covariance = [...estimate.covariance];
  covariance[place] = numberAt(covariance, place) * (1 - gain);
  return { ...estimate, mean, covariance, heating: estimate.level !== 0 };
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
  const variance = Math.max(0, numberAt(estimate.covariance, joulesDone * unknowns + joulesDone));
  return {
    joules: Math.max(0, numberAt(estimate.mean, joulesDone)) + lostBeforeBoil.grams * evaporationJoulePerGram,
    sd: Math.hypot(lostBeforeBoil.sdGrams * evaporationJoulePerGram, Math.sqrt(variance)),
  };
};

/** Not on the ring, under a lid or hardly back: how far below its boil the syrup has cooled, never how much water left. */
const readUnsettled = (estimate: Estimate, reading: Reading, path: Path, hob: Hob): Estimate => {
  const below = expectation({ ...estimate, coldJoules: 0 }, path, hob).celsius - reading.celsius;
  const warming = path.warmingAt(numberAt(estimate.mean, joulesDone));
  const coldJoules = 0.5 * joulesToBoil(estimate) + 0.5 * clamp(below, 0, 60) * warming;
  return { ...estimate, coldJoules, lastReading: { t: reading.t, celsius: reading.celsius } };
};

/**
 * An improbable reading. One alone is left out. Two low ones in a row: the syrup is below its boil, and progress stands.
 * Two high ones, or more low ones: something was not told, and the syrup's place is sought anew.
 */
const suspect = (estimate: Estimate, reading: Reading, off: number, path: Path, hob: Hob): Estimate => {
  const same = estimate.suspects.count > 0 && Math.sign(off) === Math.sign(estimate.suspects.kelvin);
  const count = (same ? estimate.suspects.count : 0) + (reading.sure === true ? 2 : 1);
  const noted: Estimate = {
    ...estimate,
    suspects: { count, kelvin: off },
    lastReading: { t: reading.t, celsius: reading.celsius },
  };
  if (count < 2) return noted;
  if (off < 0 && count < 4) {
    return {
      ...noted,
      coldJoules: joulesToBoil(estimate) - off * path.warmingAt(numberAt(estimate.mean, joulesDone)),
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

/** Power learned from a pot that only warmed holds this well for one that boils. Our judgement. */
const boilDoubt = 0.12;

/** The first reading of a pot that boils. A dial that came up with the cold pot is still behind. */
const findBoil = (estimate: Estimate, reading: Reading, path: Path, hob: Hob): Estimate => {
  const watched = watchedPot(estimate);
  const behindKelvin = watched === null ? 0 : clamp(estimate.behindKelvin, 0, 8);
  const sd = Math.hypot(readingSdOf(hob), watched === null ? 0 : lagDoubt * behindKelvin);
  const sighting = { kind: 'reading', celsius: reading.celsius + behindKelvin, sd } as const;
  const doubted = watched === null ? estimate : widen(estimate, logWatts, boilDoubt ** 2);
  const found = locate({ ...doubted, heating: estimate.level !== 0 }, sighting, watched, path);
  if (watched === null) return { ...found, behindKelvin: 0 };
  const covariance = [...found.covariance];
  const place = joulesDone * unknowns + joulesDone;
  covariance[place] = Math.max(
    numberAt(covariance, place),
    (lostBeforeBoil.sdGrams * evaporationJoulePerGram) ** 2,
  );
  return { ...found, covariance, behindKelvin };
};

export const read = (estimate: Estimate, reading: Reading, path: Path, hob: Hob): Estimate => {
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
    joulesToBoil(estimate) > 0
  ) {
    return readUnsettled(estimate, reading, path, hob);
  }
  const expected = expectation(estimate, path, hob);
  const { spreads, kelvin } = surpriseOf(expected, reading.celsius);
  if (Math.abs(spreads) > improbable) return suspect(estimate, reading, kelvin, path, hob);
  return accept(weigh(estimate, reading.celsius, expected, path, hob), reading);
};
