import { thermometerFor } from '../kitchen/air.js';
import type { PhaseId } from '../recipe/recipe.js';
import { wallCare } from '../recipe/wall-care.js';
import { heatAlongCurve, otherGrams, warmingJoule } from '../sugar/heat.js';
import { latentJoulePerGram } from '../sugar/water.js';
import type { Batch, Spread } from './batch.js';

/** What this kitchen's earlier cooks showed; each part replaces what is usual. */
export type Pace = {
  /** Net power into the boiling batch, watts: `low` is the weakest. */
  readonly boilWatts?: Spread | undefined;
  /** Seconds that a phase took here. */
  readonly seconds?: Readonly<Partial<Record<TimedPhase, Spread>>> | undefined;
};

export const timedPhases = [
  'mix',
  'dissolve',
  'boil',
  'test',
  'flavour',
  'pour',
  'fold',
  'pull',
  'cut',
  'wrap',
] as const satisfies readonly PhaseId[];
export type TimedPhase = (typeof timedPhases)[number];

const minute = 60;
const minutes = (low: number, typical: number, high: number): Spread => ({
  low: low * minute,
  typical: typical * minute,
  high: high * minute,
});
export const plus = (...spreads: readonly Spread[]): Spread => ({
  low: spreads.reduce((sum, { low }) => sum + low, 0),
  typical: spreads.reduce((sum, { typical }) => sum + typical, 0),
  high: spreads.reduce((sum, { high }) => sum + high, 0),
});

/**
 * Net power of a home burner into a boiling batch, watts. Two published boils come to about 270 W (2 cups of sugar,
 * 1 of syrup, 1 of water, 40 min on medium heat to 265 F) and 410 W (2 cups of sugar, 1 of water, 20 min to the hard
 * ball: a little candy book of about 1907). The ends: our judgement.
 */
export const homeBoilWatts: Spread = { low: 240, typical: 380, high: 600 };
/** Below the boil hardly any steam carries heat away, so more of it stays. Our judgement. */
const homeWarmingWatts: Spread = { low: 400, typical: 600, high: 900 };
/** No boil is planned shorter, seconds. Our judgement. */
const shortestBoilSeconds = 4 * minute;

const overWatts = (joule: number, watts: Spread): Spread => ({
  low: joule / watts.high,
  typical: joule / watts.typical,
  high: joule / watts.low,
});
const atLeast = (one: Spread, other: Spread): Spread => ({
  low: Math.max(one.low, other.low),
  typical: Math.max(one.typical, other.typical),
  high: Math.max(one.high, other.high),
});

/** Heat between two temperatures of the boil, joule; both are moved into what the curve knows. */
const boilJoule = (batch: Batch, fromCelsius: number, toCelsius: number): number => {
  const heat = heatAlongCurve(batch.curve, otherGrams(batch.syrup));
  const [low, high] = heat.validCelsius;
  const within = (celsius: number): number => Math.min(high, Math.max(low, celsius));
  return Math.max(0, heat.jouleAt(within(toCelsius)) - heat.jouleAt(within(fromCelsius)));
};

/**
 * Seconds that the boil may take, from its start to the take-off: its heat over a home burner's net power, or over
 * what this kitchen showed. Not shorter than the latent heat of the water that has to leave.
 */
export const boilSeconds = (batch: Batch, watts: Spread = homeBoilWatts): Spread => {
  const { boil, target } = batch;
  const latent = Math.max(0, boil.waterToBoilAwayGrams[0]) * latentJoulePerGram(boil.startsCelsius);
  const joule = Math.max(latent, boilJoule(batch, boil.startsCelsius, target.takeOffCelsius));
  const shortest = { low: shortestBoilSeconds, typical: shortestBoilSeconds, high: shortestBoilSeconds };
  return atLeast(overWatts(joule, watts), shortest);
};

/** Seconds from so many kelvin below the take-off to the take-off. */
export const lastKelvinSeconds = (batch: Batch, kelvin: number, watts: Spread = homeBoilWatts): Spread => {
  const { takeOffCelsius } = batch.target;
  return overWatts(boilJoule(batch, takeOffCelsius - kelvin, takeOffCelsius), watts);
};

/** Setting out, checking the thermometer and reading the first list; then mixing cold. */
export const setOutSeconds = minutes(15, 25, 35);
const mixColdSeconds = minutes(2, 3, 5);
/** The same with all of it set out: the lists and who does what, said aloud, and the thermometer looked at. Our judgement. */
const listsSeconds = minutes(2, 3, 5);
/** A cut rope rests before it is wrapped; in damp air not at all. */
export const restSeconds = (batch: Batch): Spread =>
  batch.room?.damp === true ? minutes(0, 0, 0) : minutes(10, 20, 30);
/** Pieces that one person wraps in a minute. Our judgement. */
const wrapsAMinute: Spread = { low: 4, typical: 5, high: 6 };

/** There is a thermometer that can go into the middle of the mass. */
export const canMeasureMiddle = ({ kitchen, dial }: Batch): boolean => {
  const own = thermometerFor(kitchen, 'middle') ?? (dial.present ? thermometerFor(kitchen, 'pot') : null);
  return own !== null && own.kind !== 'infrared';
};

const hasLater = ({ recipe }: Batch, phase: PhaseId): boolean =>
  recipe.ingredients.some((one) => one.phase === phase);

type Row = (batch: Batch, pace: Pace) => Spread;

/**
 * Usual times, collected from books and recipe pages without one common source: mix cold 2-5 min, dissolve 4-12, lid
 * or wash 2-5, a cold-water test 1-2 (one to three of them), additions 0.5-2, cool and fold 8-25, pull 5-20, rope and
 * cut 6-20, rest 10-30. Setting out 15-35: site, weighing, thermometer. The boil and the warming: from their heat.
 * Without a thermometer for the middle: 20 min for a thin layer, 45 for a thick one, our judgement.
 */
const usual: Readonly<Record<TimedPhase, Row>> = {
  mix: () => plus(setOutSeconds, mixColdSeconds),
  dissolve: (batch) => {
    const from = batch.kitchen.room.celsius ?? 20;
    const joule = warmingJoule(batch.syrup, from, Math.min(batch.boil.startsCelsius, 130));
    return atLeast(minutes(4, 7, 12), overWatts(Math.max(0, joule), homeWarmingWatts));
  },
  boil: (batch, { boilWatts }) => {
    const wall = { lid: minutes(2, 3, 5), brush: minutes(0.5, 1, 2), 'none-late-stir': minutes(0, 0, 0) };
    return plus(boilSeconds(batch, boilWatts), wall[wallCare(batch.recipe)]);
  },
  test: () => minutes(1, 3, 6),
  flavour: (batch) => (hasLater(batch, 'flavour') ? minutes(0.5, 1, 2) : minutes(0.2, 0.5, 1)),
  pour: () => minutes(0.3, 0.5, 1),
  fold: (batch) => (canMeasureMiddle(batch) ? minutes(8, 16, 25) : minutes(20, 24, 45)),
  pull: () => minutes(5, 11, 20),
  cut: () => minutes(6, 10, 20),
  wrap: (batch) => plus(restSeconds(batch), wrappingSeconds(batch)),
};

/** One person wrapping all of it. */
export const wrappingSeconds = (batch: Batch): Spread => {
  const pieces = batch.yield.pieces.typical;
  const by = (aMinute: number): number => (pieces / aMinute) * minute;
  return { low: by(wrapsAMinute.high), typical: by(wrapsAMinute.typical), high: by(wrapsAMinute.low) };
};

/** The same pace where everything stands ready, as it does in a rehearsal: nothing is fetched and weighed. */
export const allSetOut = (pace: Pace): Pace => ({
  ...pace,
  seconds: { ...pace.seconds, mix: plus(listsSeconds, mixColdSeconds) },
});

/** Seconds that a phase is planned for: what this kitchen showed, else what is usual. */
export const phaseSeconds = (batch: Batch, phase: TimedPhase, pace: Pace = {}): Spread =>
  pace.seconds?.[phase] ?? usual[phase](batch, pace);
