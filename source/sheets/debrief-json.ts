import type { PeakTold } from '../lessons/boil-story.js';
import type { Story } from '../lessons/story.js';
import { type Message, words } from '../texts/message.js';
import type { Printer } from '../units/printer.js';

const round =
  (decimals: number) =>
  (value: number): number =>
    // With 0 added nothing reads "-0".
    Number(value.toFixed(decimals)) + 0;
const seconds = round(1);
const celsius = round(2);
const grams = round(1);
const fraction = round(4);

const orNull = <T, R>(value: T | null, as: (value: T) => R): R | null => (value === null ? null : as(value));
const pair = (values: readonly [number, number], as: (value: number) => number): [number, number] => [
  as(values[0]),
  as(values[1]),
];
const spread = (values: { low: number; typical: number; high: number }, as: (value: number) => number) => ({
  low: as(values.low),
  typical: as(values.typical),
  high: as(values.high),
});

const peakJson = (peak: PeakTold) => ({
  t: orNull(peak.t, seconds),
  celsius: celsius(peak.celsius),
  between: pair(peak.between, celsius),
  by: peak.by,
  outsideKelvin: celsius(peak.outsideKelvin),
});

const boilOf = (story: Story) => ({
  readings: story.readings.map((one) => ({
    t: seconds(one.t),
    of: one.of,
    celsius: celsius(one.celsius),
    shown: one.shown,
    unit: one.unit,
    by: one.by,
    believed: one.believed,
  })),
  track: story.track.map((one) => ({
    t: seconds(one.t),
    celsius: celsius(one.celsius),
    sd: celsius(one.sd),
    takeOffSeconds: orNull(one.takeOffSeconds, (ahead) => spread(ahead, seconds)),
    watts: orNull(one.watts, round(0)),
  })),
  forecasts: story.forecasts.map((one) => ({
    beforeSeconds: seconds(one.beforeSeconds),
    said: spread(one.said, seconds),
    within: one.within,
  })),
  tests: story.tests.map((one) => ({
    t: seconds(one.t),
    outcome: one.outcome,
    verdict: one.verdict,
    celsius: orNull(one.celsius, celsius),
  })),
  offs: story.offs.map((one) => ({
    t: seconds(one.t),
    celsius: orNull(one.celsius, celsius),
    wantedCelsius: celsius(one.wantedCelsius),
    askedAt: orNull(one.askedAt, seconds),
    implied: one.implied,
    backAt: orNull(one.backAt, seconds),
  })),
  peak: orNull(story.peak, peakJson),
  pouredAt: orNull(story.pouredAt, seconds),
});

const resultOf = ({ candy, yield: yields, pieces }: Story) => ({
  candy: orNull(candy, (one) => ({
    moistureFraction: fraction(one.moisture),
    between: pair(one.moistureFraction, fraction),
    glassTransitionCelsius: celsius(one.glassTransitionCelsius),
    firmness: one.firmness,
    firmnessRange: one.firmnessRange,
  })),
  yield: {
    weighedGrams: orNull(yields.weighedGrams, grams),
    cookedGrams: grams(yields.cookedGrams),
    expectedGrams: spread(yields.expectedGrams, grams),
    share: orNull(yields.share, fraction),
  },
  pieces: {
    counted: pieces.counted,
    expected: pieces.expected,
    wantedGrams: pieces.wantedGrams,
    meanGrams: orNull(pieces.meanGrams, round(2)),
    handfuls: pieces.handfuls.map((one) => ({ pieces: one.pieces, grams: round(2)(one.grams) })),
    variation: orNull(pieces.variation, fraction),
  },
});

/**
 * What `debrief --json` prints, version 1: SI, seconds since the opening, Celsius true and today's, null where nothing
 * is known. `celsius` is the syrup's; `shown` what the thermometer showed, in `unit`.
 */
export const debriefJson = (
  story: Story,
  id: string | null,
  printer: Printer,
  damage: readonly Message[] = [],
) => {
  const say = (said: Message): string => words(said, printer);
  const { batch } = story;
  return {
    version: 1,
    id,
    recipe: batch.recipe.name,
    startedAt: story.startedAt,
    rehearsal: story.rehearsal,
    seed: story.seed,
    from: story.from,
    state: story.state,
    phase: story.phase,
    seconds: seconds(story.seconds),
    damage: damage.map(say),
    kitchen: {
      pressurePascal: round(0)(batch.air.pressurePascal),
      altitudeMetres: orNull(batch.air.altitudeMetres, round(0)),
      waterBoilsCelsius: celsius(batch.air.waterBoilsCelsius),
      stove: batch.kitchen.stove,
      thermometer: batch.dial.id,
      unit: batch.dial.unit,
    },
    target: {
      todayCelsius: pair(batch.target.todayCelsius, celsius),
      takeOffCelsius: celsius(batch.target.takeOffCelsius),
      feels: batch.target.feels,
    },
    ...boilOf(story),
    ...resultOf(story),
    phases: story.phases.map((one) => ({
      phase: one.phase,
      from: seconds(one.from),
      to: seconds(one.to),
      seconds: seconds(one.seconds),
      times: one.times,
      planned: orNull(one.planned, (planned) => spread(planned, seconds)),
      plannedBy: one.plannedBy,
      against: one.against,
    })),
    warnings: story.warnings.map((one) => ({
      id: one.id,
      level: one.level,
      text: say(one.cause),
      raisedAt: seconds(one.raisedAt),
      endedAt: orNull(one.endedAt, seconds),
      endedBy: one.endedBy,
      withinSeconds: one.withinSeconds,
      inTime: one.inTime,
    })),
    troubles: story.troubles.map((one) => ({
      name: one.name,
      phase: one.phase,
      at: seconds(one.at),
      firstSeconds: orNull(one.firstSeconds, seconds),
      withinSeconds: one.withinSeconds,
      inTime: one.inTime,
      order: one.order,
      acts: one.acts.map(({ act, t }) => ({ act, t: seconds(t) })),
      overAt: orNull(one.overAt, seconds),
    })),
    notes: story.notes.map(({ t, text }) => ({ t: seconds(t), text })),
    recordings: story.recordings.map(seconds),
    gaps: story.gaps,
    changes: story.changes.map(({ id: change, action, because }) => ({
      id: change,
      text: say(action),
      because: say(because),
    })),
  };
};

export type DebriefJson = ReturnType<typeof debriefJson>;
