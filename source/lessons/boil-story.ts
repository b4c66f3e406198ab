import type { Pair } from '../batch/batch.js';
import { usualRoomCelsius } from '../batch/candy.js';
import { effectOf } from '../batch/effect.js';
import { advise } from '../cook/advise.js';
import { headline } from '../cook/candy.js';
import type { Cook } from '../cook/cook.js';
import { type Firmness, firmnessAt, spreadKelvin } from '../sugar/glass.js';
import { stageDistance, stageWithin } from '../sugar/stages.js';
import { type ReadingTold, stageToCelsius, type TestTold } from './reading-story.js';
import type { Instant } from './walk.js';

/** What was believed and foreseen at a moment of the boil. */
export type TrackPoint = {
  readonly t: number;
  /** True Celsius of the syrup and its standard deviation. */
  readonly celsius: number;
  readonly sd: number;
  /** Seconds from then to the take-off, an 80 % interval; null where none was foreseen. */
  readonly takeOffSeconds: { readonly low: number; readonly typical: number; readonly high: number } | null;
  readonly watts: number | null;
};

/** The pot left the ring. */
export type OffTold = {
  readonly t: number;
  /** By the believed temperature at that moment, true Celsius. */
  readonly celsius: number | null;
  /** At which it should have come off. */
  readonly wantedCelsius: number;
  /** When the advice began to ask for it; null: it came off unasked. */
  readonly askedAt: number | null;
  /** Nobody said so: a cold-water test or the pour implies it. */
  readonly implied: boolean;
  /** When it went back; null: it stayed off. */
  readonly backAt: number | null;
};

export type PeakTold = {
  readonly t: number | null;
  readonly celsius: number;
  /** An 80 % interval. */
  readonly between: Pair;
  readonly by: 'reading' | 'cold water';
  /** Against today's window: kelvin above (+) its ceiling or below (-) its floor, 0 within. */
  readonly outsideKelvin: number;
};

export type CandyTold = {
  /** Of the whole mass, by what the peak and the boiling curve are known to. */
  readonly moistureFraction: Pair;
  readonly moisture: number;
  readonly glassTransitionCelsius: number;
  readonly firmness: Firmness;
  readonly firmnessRange: readonly [softest: Firmness, firmest: Firmness];
  /** All that the pot and the later additions hold, without loss, grams. */
  readonly cookedGrams: number;
};

/** What the forecast said so long before the pot came off. */
export type ForecastTold = {
  readonly beforeSeconds: number;
  readonly said: { readonly low: number; readonly typical: number; readonly high: number };
  readonly within: boolean;
};

/** 80 % of a normal distribution lie within so many standard deviations. */
const eightyPercent = 1.2816;

export const trackOf = (instants: readonly Instant[]): readonly TrackPoint[] =>
  instants.flatMap(({ t, advice, cook }) => {
    if (advice.temperature === null || cook.pouredAt !== null) return [];
    return [
      {
        t,
        ...advice.temperature,
        takeOffSeconds: headline(cook) === 'boil' ? (advice.forecast?.takeOffSeconds ?? null) : null,
        watts: advice.forecast?.watts ?? null,
      },
    ];
  });

const isOff = (cook: Cook): boolean => cook.potOn?.on === false;

/** Every time that the pot left the ring before it was poured. */
export const offsOf = (instants: readonly Instant[]): readonly OffTold[] => {
  const offs: OffTold[] = [];
  let before: Instant | null = null;
  let asked: number | null = null;
  for (const instant of instants) {
    const { t, cook, advice, event } = instant;
    const wasOff: boolean = before !== null && isOff(before.cook);
    const wasPoured: boolean = before !== null && before.cook.pouredAt !== null;
    const leaves = !wasOff && isOff(cook) && !wasPoured;
    const pours = event !== null && !wasPoured && cook.pouredAt !== null && !wasOff && !leaves;
    if (before !== null && (leaves || (pours && before.cook.readingsTaken > 0))) {
      // What was believed at the last look is some seconds old.
      const celsius = advise(before.cook, t).temperature?.celsius ?? null;
      offs.push({
        t,
        celsius,
        wantedCelsius: before.cook.takeOffCelsius,
        askedAt: asked,
        implied: pours || cook.potOn?.said !== true,
        backAt: null,
      });
    }
    const last = offs.at(-1);
    if (wasOff && !isOff(cook) && !wasPoured && last !== undefined)
      offs[offs.length - 1] = { ...last, backAt: t };
    asked = advice.offTheHeat ? (asked ?? t) : null;
    before = instant;
  }
  return offs;
};

const outside = (celsius: number, [floor, ceiling]: Pair): number =>
  celsius > ceiling ? celsius - ceiling : Math.min(0, celsius - floor);

/** Without a thermometer: between the ends of the stage that fingers felt last. */
const peakByFingers = (cook: Cook, tests: readonly TestTold[]): PeakTold | null => {
  const last = tests.findLast(({ outcome }) => outcome !== 'unsure');
  if (last === undefined || last.outcome === 'unsure') return null;
  const { stageFromCelsius, target, curve } = cook.batch;
  const low = Math.max(curve.validCelsius[0], stageFromCelsius[last.outcome]);
  const high = Math.max(low, Math.min(curve.validCelsius[1], stageToCelsius(last.outcome, stageFromCelsius)));
  const celsius = (low + high) / 2;
  return {
    t: last.t,
    celsius,
    between: [low, high],
    by: 'cold water',
    outsideKelvin: last.verdict === 'there' ? 0 : outside(celsius, target.todayCelsius),
  };
};

/** What a single reading scatters by beside its thermometer's own doubt, kelvin. As the forecast takes it. */
const readingSdKelvin = 0.65;

type Estimated = { readonly t: number; readonly celsius: number; readonly sd: number };

/**
 * The highest reading, where it stands clear above all that was believed: the forecast follows a sudden change slowly,
 * and afterwards a number that was read counts as much. Null where the two agree.
 */
const readAbove = (believed: Estimated, readings: readonly ReadingTold[], since: number, cook: Cook) => {
  const highest = readings
    .filter((one) => one.of === 'syrup' && one.believed && one.t >= since)
    .reduce<ReadingTold | null>(
      (best, one) => (best === null || one.celsius > best.celsius ? one : best),
      null,
    );
  if (highest === null) return null;
  const sd = Math.hypot(readingSdKelvin, cook.batch.dial.sdKelvin);
  const clear = highest.celsius - believed.celsius > eightyPercent * Math.hypot(sd, believed.sd);
  return clear ? { t: highest.t, celsius: highest.celsius, sd } : null;
};

/** Two estimates of one temperature, weighed by their variance; the interval covers both. */
const together = (one: Estimated, other: Estimated): Omit<PeakTold, 'by' | 'outsideKelvin'> => {
  const [weight, otherWeight] = [one.sd ** -2, other.sd ** -2];
  return {
    t: other.t,
    celsius: (one.celsius * weight + other.celsius * otherWeight) / (weight + otherWeight),
    between: [one.celsius - eightyPercent * one.sd, other.celsius + eightyPercent * other.sd],
  };
};

/** The hottest that the syrup got after water was last added: what decides how much water is left. */
export const peakOf = (
  track: readonly TrackPoint[],
  readings: readonly ReadingTold[],
  tests: readonly TestTold[],
  cook: Cook,
): PeakTold | null => {
  if (!readings.some(({ of, believed }) => of === 'syrup' && believed)) return peakByFingers(cook, tests);
  const since = cook.wateredAt ?? Number.NEGATIVE_INFINITY;
  const hottest = track
    .filter(({ t }) => t >= since)
    .reduce<Estimated | null>(
      (best, one) => (best === null || one.celsius > best.celsius ? one : best),
      null,
    );
  if (hottest === null || hottest.celsius < cook.batch.boil.startsCelsius - 1)
    return peakByFingers(cook, tests);
  const read = readAbove(hottest, readings, since, cook);
  const { t, celsius, between } = together(hottest, read ?? hottest);
  return {
    t,
    celsius,
    between,
    by: 'reading',
    outsideKelvin: outside(celsius, cook.batch.target.todayCelsius),
  };
};

/** Published boiling points of one composition span 4 K at 90 % solids (sugar/syrup.ts): half of it to either side. */
const curveKelvin = 2;

/** What the candy is like that got so hot; null for a syrup that was never poured. */
export const candyOfPeak = (peak: PeakTold | null, cook: Cook): CandyTold | null => {
  if (peak === null || cook.pouredAt === null) return null;
  const at = (celsius: number) => effectOf(cook.batch, celsius - cook.batch.target.aimCelsius);
  const [below, above] = [peak.celsius - peak.between[0], peak.between[1] - peak.celsius];
  const [wet, middle, dry] = [
    at(peak.celsius - Math.hypot(below, curveKelvin)),
    at(peak.celsius),
    at(peak.celsius + Math.hypot(above, curveKelvin)),
  ];
  const room = cook.batch.kitchen.room.celsius ?? usualRoomCelsius;
  const glass = middle.glassTransitionCelsius;
  return {
    moistureFraction: [dry.moistureFraction, wet.moistureFraction],
    moisture: middle.moistureFraction,
    glassTransitionCelsius: glass,
    firmness: middle.firmness,
    firmnessRange: [
      firmnessAt(room, glass - Math.hypot(glass - wet.glassTransitionCelsius, spreadKelvin)),
      firmnessAt(room, glass + Math.hypot(dry.glassTransitionCelsius - glass, spreadKelvin)),
    ],
    cookedGrams: middle.grams,
  };
};

const leads = [20, 10, 5, 2] as const;
/** A forecast counts for a lead when it was made within this share of it. */
const leadSlack = 0.2;

/** What was foreseen 20, 10, 5 and 2 minutes before the pot first came off for its temperature. */
export const forecastsOf = (
  track: readonly TrackPoint[],
  offs: readonly OffTold[],
): readonly ForecastTold[] => {
  const off = offs.find(
    ({ askedAt, celsius, wantedCelsius }) =>
      askedAt !== null || (celsius !== null && celsius >= wantedCelsius - 1),
  );
  if (off === undefined) return [];
  const came = off.askedAt ?? off.t;
  return leads.flatMap((minutes) => {
    const wanted = came - minutes * 60;
    const [nearest] = track
      .filter(({ t, takeOffSeconds }) => takeOffSeconds !== null && t < came)
      .toSorted((one, other) => Math.abs(one.t - wanted) - Math.abs(other.t - wanted));
    if (nearest?.takeOffSeconds == null || Math.abs(nearest.t - wanted) > leadSlack * minutes * 60) return [];
    const beforeSeconds = came - nearest.t;
    const said = nearest.takeOffSeconds;
    return [{ beforeSeconds, said, within: beforeSeconds >= said.low && beforeSeconds <= said.high }];
  });
};

/** Stages between what the dial said and what fingers felt, the largest of all tests; 0 where they agree. */
export const worstDisagreement = (tests: readonly TestTold[], cook: Cook): number =>
  tests.reduce((worst, { outcome, celsius }) => {
    if (outcome === 'unsure' || celsius === null) return worst;
    const distance = stageDistance(stageWithin(celsius, cook.batch.stageFromCelsius), outcome);
    return Math.abs(distance) > Math.abs(worst) ? distance : worst;
  }, 0);
