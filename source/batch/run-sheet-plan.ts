import type { PhaseId } from '../recipe/recipe.js';
import { handLimitCelsius } from '../sugar/skin.js';
import type { Batch, Pair, Spread } from './batch.js';
import { endsAt, plannedOn, type RunSheet, runSheetOf, shifted } from './run-sheet.js';
import {
  lastKelvinSeconds,
  type Pace,
  phaseSeconds,
  restSeconds,
  setOutSeconds,
  type TimedPhase,
  wrappingSeconds,
} from './run-sheet-times.js';

export const momentIds = [
  'set-out',
  'mix',
  'light',
  'still',
  'list',
  'quiet',
  'off',
  'pour',
  'fold',
  'second',
  'pull',
  'cut',
  'rest',
  'wrap',
  'end',
] as const;
export type MomentId = (typeof momentIds)[number];

/** One line of the run sheet; seconds from the moment at which the first batch is pulled. */
export type Moment = {
  readonly id: MomentId;
  readonly phase: PhaseId;
  /** Counted from 1. */
  readonly batch: number;
  readonly at: number;
  /** Earliest and latest; null where the clock says when. */
  readonly between: Pair | null;
};

/** Who cooks: one who does nothing but the pot, one at the slab and some who wrap; or one person for all of it. */
export type Crew = 'several' | 'alone';

/** Whose hands are needed, from when to when. */
export type Busy = {
  readonly who: 'pot' | 'slab' | 'papers' | 'alone';
  readonly batch: number;
  readonly from: number;
  readonly to: number;
};

/** A batch that a helper poured earlier and keeps warm, to be pulled instead of the one on the hob or before it. */
export type HeldBatch = {
  readonly keepCelsius: Pair;
  /** When it was poured, earliest and latest: before, it would be kept too long; after, it would still be too hot. */
  readonly pouredBetween: Pair;
  /** On the slab at this moment to be ready for hands at the pulling. */
  readonly slabAt: number;
  readonly slabBetween: Pair;
  readonly limitCelsius: number;
};

/** What it costs to run so late. */
export type Late = { readonly seconds: number; readonly pullsAt: number };

export type RunPlan = {
  readonly sheets: readonly RunSheet[];
  readonly moments: readonly Moment[];
  readonly busy: readonly Busy[];
  readonly crew: Crew;
  /** From one batch's pulling to the next; null with one batch. */
  readonly everySeconds: number | null;
  /** How far apart batches are for either crew. */
  readonly apartSeconds: Readonly<Record<Crew, number>>;
  /** When the last piece is wrapped with either crew. */
  readonly endsAtFor: Readonly<Record<Crew, number>>;
  readonly held: HeldBatch;
  readonly rest: { readonly seconds: Spread; readonly damp: boolean };
  readonly late: readonly Late[];
  readonly endsAt: number;
};

/** The presenter is silent from this far below the take-off, kelvin, and the list before pouring is read before that. */
export const quietKelvin = 6;
const listKelvin = 8;
/** More batches than this on one hob are no demonstration. Our judgement. */
export const mostBatches = 8;

/** The emptied pot stands, soaks and is rinsed before the next batch goes in. Common practice, no source. */
const potAgainSeconds = 13 * 60;
/** Between two batches, so that what runs late does not meet what comes next. Our judgement. */
const betweenBatchesSeconds = 5 * 60;

/** A batch is kept warm at this, and not for longer. Pulled sugar is kept near 50-55 C (McGee 2004); our judgement. */
const keepCelsius: Pair = [55, 60];
const longestKeptSeconds = 30 * 60;
/** Turning it out, folding it once and measuring takes so long at least. Our judgement. */
const shortestOnSlabSeconds = 3 * 60;

const startOf = (sheet: RunSheet, phase: TimedPhase): number => plannedOn(sheet, phase).startsAt;

/** Newton's law of cooling: seconds from one temperature to another, at the rate at which a batch cools on the slab. */
const coolingSeconds = (batch: Batch, foldSeconds: number, from: number, to: number): number => {
  const room = Math.min(batch.kitchen.room.celsius ?? 20, 35);
  const poured = batch.target.takeOffCelsius - room;
  const hands = handLimitCelsius(batch.kitchen.hands) - room;
  const rate = Math.log(poured / hands) / foldSeconds;
  return from <= to ? 0 : Math.log((from - room) / (to - room)) / rate;
};

/** When a batch kept warm was poured, and when it goes to the slab to be ready at zero. */
const heldBatchOf = (batch: Batch, pace: Pace): HeldBatch => {
  const fold = phaseSeconds(batch, 'fold', pace);
  const limitCelsius = handLimitCelsius(batch.kitchen.hands);
  const [low, high] = keepCelsius;
  const toHands = (from: number, seconds: number): number =>
    Math.max(shortestOnSlabSeconds, coolingSeconds(batch, seconds, from, limitCelsius));
  const slabAt = -toHands((low + high) / 2, fold.typical);
  const cooled = coolingSeconds(batch, fold.high, batch.target.takeOffCelsius, high);
  return {
    keepCelsius,
    pouredBetween: [slabAt - cooled - longestKeptSeconds, slabAt - cooled],
    slabAt,
    slabBetween: [-toHands(high, fold.high), -toHands(low, fold.low)],
    limitCelsius,
  };
};

/**
 * One pair of hands has a batch from the mixing to the last cut without a break, and again for wrapping; the rest of
 * the pieces between is for the pot, which soaked meanwhile, and for a chair.
 */
const busyOf = (batch: Batch, sheet: RunSheet, number: number, crew: Crew): readonly Busy[] => {
  const setsOut = startOf(sheet, 'dissolve') - plannedOn(sheet, 'mix').seconds.typical;
  const mixes = number === 1 ? setsOut : setsOut + setOutSeconds.typical;
  const wraps = endsAt(sheet) - wrappingSeconds(batch).typical;
  const role = (who: Busy['who'], from: number, to: number): Busy => ({ who, batch: number, from, to });
  if (crew === 'alone')
    return [role('alone', mixes, startOf(sheet, 'wrap')), role('alone', wraps, endsAt(sheet))];
  return [
    role('pot', mixes, startOf(sheet, 'fold') + potAgainSeconds),
    role('slab', startOf(sheet, 'pour'), startOf(sheet, 'wrap')),
    role('papers', Math.max(startOf(sheet, 'wrap'), wraps), endsAt(sheet)),
  ];
};

/**
 * How far apart batches must be so that neither the pot, nor the hands at the slab, nor those that wrap are needed by
 * two of them at once: the longest that any of them is bound by one batch. The one at the pot does nothing else.
 */
const apartFor = (batch: Batch, sheet: RunSheet, crew: Crew): number => {
  const busy = busyOf(batch, sheet, 2, crew);
  const bound = busy.map(({ who, from }) =>
    Math.max(...busy.filter((one) => one.who === who).map(({ to }) => to - from)),
  );
  return Math.max(...bound) + betweenBatchesSeconds;
};

const momentsOf = (batch: Batch, sheet: RunSheet, number: number, pace: Pace): readonly Moment[] => {
  const { startsAt: takenOff, between: takenOffBetween } = plannedOn(sheet, 'test');
  const before = (kelvin: number) => {
    const { low, typical, high } = lastKelvinSeconds(batch, kelvin, pace.boilWatts);
    const [earliest, latest] = takenOffBetween;
    return { at: takenOff - typical, between: [earliest - high, latest - low] as const };
  };
  const at = (id: MomentId, phase: TimedPhase): Moment => ({
    id,
    phase,
    batch: number,
    at: startOf(sheet, phase),
    between: plannedOn(sheet, phase).between,
  });
  const byClock = (id: MomentId, phase: PhaseId, when: number): Moment => ({
    id,
    phase,
    batch: number,
    at: when,
    between: null,
  });
  const rest = restSeconds(batch);
  const lights = startOf(sheet, 'dissolve');
  const mixing = Math.max(0, plannedOn(sheet, 'mix').seconds.typical - setOutSeconds.typical);
  return [
    ...(number === 1 ? [byClock('set-out', 'mix', startOf(sheet, 'mix'))] : []),
    byClock('mix', 'mix', lights - mixing),
    byClock('light', 'dissolve', lights),
    at('still', 'boil'),
    { ...byClock('list', 'boil', 0), ...before(listKelvin) },
    { ...byClock('quiet', 'boil', 0), ...before(quietKelvin) },
    at('off', 'test'),
    at('pour', 'pour'),
    at('fold', 'fold'),
    byClock('pull', 'pull', sheet.pullsAt),
    at('cut', 'cut'),
    ...(rest.high > 0 ? [at('rest', 'wrap')] : []),
    {
      ...at('wrap', 'wrap'),
      at: startOf(sheet, 'wrap') + rest.typical,
      between: [startOf(sheet, 'wrap') + rest.low, startOf(sheet, 'wrap') + rest.high],
    },
    { ...byClock('end', 'wrap', endsAt(sheet)) },
  ];
};

/** Looked at when it runs late, seconds. */
const lateness = [5 * 60, 10 * 60] as const;

/**
 * The run of a demonstration: `batches` cooks on one hob, the first pulled at zero, each with its moments. Pure;
 * `batches` is a whole number of 1 to `mostBatches`.
 */
export const runPlanOf = (batch: Batch, batches = 1, pace: Pace = {}, crew: Crew = 'several'): RunPlan => {
  const first = runSheetOf(batch, pace);
  const apartSeconds = { several: apartFor(batch, first, 'several'), alone: apartFor(batch, first, 'alone') };
  const every = apartSeconds[crew];
  const sheets = Array.from({ length: batches }, (_, index) => shifted(first, index * every));
  const ends = (apart: number): number => endsAt(first) + (batches - 1) * apart;
  const endsAtFor = { several: ends(apartSeconds.several), alone: ends(apartSeconds.alone) };
  const held = heldBatchOf(batch, pace);
  const second: Moment = {
    id: 'second',
    phase: 'fold',
    batch: 1,
    at: held.slabAt,
    between: held.slabBetween,
  };
  const moments = sheets.flatMap((sheet, index) => momentsOf(batch, sheet, index + 1, pace));
  return {
    sheets,
    // Nobody is there who could pour another batch beforehand.
    moments: [...moments, ...(crew === 'alone' ? [] : [second])].toSorted((one, other) => one.at - other.at),
    busy: sheets.flatMap((sheet, index) => busyOf(batch, sheet, index + 1, crew)),
    crew,
    everySeconds: batches > 1 ? every : null,
    held,
    rest: { seconds: restSeconds(batch), damp: batch.room?.damp === true },
    late: lateness.map((seconds) => ({ seconds, pullsAt: Math.max(0, seconds - first.spareSeconds) })),
    endsAt: endsAtFor[crew],
    apartSeconds,
    endsAtFor,
  };
};
