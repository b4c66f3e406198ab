import { echo, type Field } from '../recipe/document.js';
import { message } from '../texts/message.js';
import { readNumber } from '../units/number.js';
import type { TemperatureUnit } from '../units/temperature.js';
import { crewPhases, type Learned, type Lesson, nothingLearned } from './learned.js';

const longest = 30;
const keys = ['thermometer', 'carry-over', 'losses', ...crewPhases, 'watts'] as const;
const entryKeys = ['value', 'date', 'id'] as const;

/** How a quantity is written: the words of its unit with what one of them is worth in SI, and what can be meant. */
type Measure = {
  readonly units: Readonly<Record<string, number>>;
  readonly range: readonly [number, number];
  readonly example: string;
  /** Doubt that is left when a person says so. Our judgement: small, so that what was said counts. */
  readonly sd: number;
};

const kelvinUnits = (unit: TemperatureUnit): Measure['units'] => ({
  '': unit === 'F' ? 1 / 1.8 : 1,
  f: 1 / 1.8,
  '°f': 1 / 1.8,
  c: 1,
  '°c': 1,
  k: 1,
});
const minuteUnits = { '': 1, min: 1, minute: 1, minutes: 1 } as const;

/** "3 F high" and "3 F low": a value that begins with a sign is taken for an option on the command line. */
const signed = (units: Measure['units']): Measure['units'] => ({
  ...units,
  ...Object.fromEntries(Object.entries(units).map(([word, worth]) => [`${word} high`.trim(), worth])),
  ...Object.fromEntries(Object.entries(units).map(([word, worth]) => [`${word} low`.trim(), -worth])),
});

const thermometerError = (unit: TemperatureUnit): Measure => ({
  units: signed(kelvinUnits(unit)),
  range: [-12, 12],
  example: '3 F high',
  sd: 0.4,
});
const carryOver = (unit: TemperatureUnit): Measure => ({
  units: kelvinUnits(unit),
  range: [0, 12],
  example: '2 F',
  sd: 0.4,
});
const losses: Measure = { units: { '': 0.01, '%': 0.01 }, range: [0, 0.6], example: '12 %', sd: 0.03 };
const minutes: Measure = { units: minuteUnits, range: [1, 120], example: '18 min', sd: 0.2 };
const watts: Measure = {
  units: { '': 1, w: 1, watt: 1, watts: 1 },
  range: [20, 4000],
  example: '600 W',
  sd: 0.1,
};

const isoDate = /^\d{4}-\d{2}-\d{2}$/;

/** `2 F`, or `{ value: 2 F, date: 2026-11-25 }`. */
const readLesson = (field: Field, measure: Measure): Lesson | null => {
  if (field.missing) return null;
  const fields = field.isMap ? field.map(entryKeys) : null;
  const place = fields === null ? field : field.of(fields, 'value');
  if (fields !== null && !place.required()) return null;
  const written = place.text(longest);
  if (written === null) return null;
  const read = readNumber(written);
  const worth = read === null ? undefined : measure.units[read.word.toLowerCase()];
  const value = read === null || worth === undefined ? Number.NaN : read.value * worth;
  const [low, high] = measure.range;
  if (!(value >= low && value <= high))
    return place.fail(message('learned.value', { found: echo(written), example: measure.example }));
  const when = fields === null ? null : field.of(fields, 'date');
  const date = when === null || when.missing ? null : when.text(longest);
  if (date !== null && !isoDate.test(date))
    return when?.fail(message('kitchen.date', { found: echo(date) })) ?? null;
  return { value, sd: measure.sd, cooks: 0, date, by: 'person' };
};

const readThermometer = (
  field: Field,
  unit: TemperatureUnit,
  firstId: string | null,
): Learned['thermometer'] => {
  const lesson = readLesson(field, thermometerError(unit));
  const fields = field.isMap ? field.map(entryKeys) : null;
  const written = fields === null ? null : field.of(fields, 'id');
  const id = written === null || written.missing ? firstId : written.text(40);
  return lesson === null || id === null ? null : { ...lesson, id };
};

/**
 * The `learned:` block of a kitchen file: what a person says instead of what earlier cooks taught. Undefined where
 * there is none. Bare temperature differences are in `unit`; `firstId` is the thermometer that is meant without an id.
 */
export const readLearned = (
  field: Field,
  unit: TemperatureUnit,
  heat: readonly string[],
  firstId: string | null,
): Learned | undefined => {
  if (field.missing) return undefined;
  const fields = field.map(keys);
  const get = (key: (typeof keys)[number]): Field => field.of(fields, key);
  const powers = get('watts').map([...new Set(heat.flatMap((label) => [label, label.toLowerCase()]))]);
  const lost = readLesson(get('losses'), losses);
  const timed = crewPhases.flatMap((phase) => {
    const lesson = readLesson(get(phase), minutes);
    return lesson === null ? [] : [[phase, lesson] as const];
  });
  const powered = [...powers].flatMap(([label, power]) => {
    const lesson = readLesson(power, watts);
    return lesson === null ? [] : [[label.toLowerCase(), lesson] as const];
  });
  return {
    ...nothingLearned,
    thermometer: readThermometer(get('thermometer'), unit, firstId),
    carryOverKelvin: readLesson(get('carry-over'), carryOver(unit)),
    boxShare: lost === null ? null : { ...lost, value: 1 - lost.value },
    minutes: Object.fromEntries(timed),
    watts: Object.fromEntries(powered),
  };
};

const tidy = (value: number, decimals: number): number => Number(value.toFixed(decimals));

/** A block that `readLearned` reads back; null where a person said nothing. */
export const learnedBlock = (learned: Learned): Record<string, unknown> | null => {
  const entry = (lesson: Lesson | null | undefined, value: (si: number) => string, id?: string) =>
    lesson == null
      ? null
      : {
          value: value(lesson.value),
          ...(lesson.date === null ? {} : { date: lesson.date }),
          ...(id === undefined ? {} : { id }),
        };
  const kelvin = (value: number): string => `${tidy(value, 2)} K`;
  const block = {
    thermometer: entry(learned.thermometer, kelvin, learned.thermometer?.id),
    'carry-over': entry(learned.carryOverKelvin, kelvin),
    losses: entry(learned.boxShare, (share) => `${tidy(100 * (1 - share), 1)} %`),
    ...Object.fromEntries(
      crewPhases.map((phase) => [phase, entry(learned.minutes[phase], (value) => `${tidy(value, 1)} min`)]),
    ),
    watts:
      Object.keys(learned.watts).length === 0
        ? null
        : Object.fromEntries(
            Object.entries(learned.watts).map(([label, lesson]) => [
              label,
              entry(lesson, (value) => `${tidy(value, 0)} W`),
            ]),
          ),
  };
  const known = Object.entries(block).filter(([, value]) => value !== null);
  return known.length === 0 ? null : Object.fromEntries(known);
};
