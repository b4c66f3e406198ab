import * as z from 'zod/mini';
import { echo, type Field, type FileProblem, openDocument, versionFits } from '../recipe/document.js';
import { pressureRangePascal } from '../sugar/syrup.js';
import { message } from '../texts/message.js';
import { weightHabits } from '../units/household.js';
import { languageIds } from '../units/language.js';
import { parseAltitude, parseHumidity, parseLength, parsePressure, parseVolume } from '../units/parse.js';
import { parseTemperature, type TemperatureUnit, toCelsius } from '../units/temperature.js';
import { clockHabits } from '../units/wall-clock.js';
import { defaultKitchen } from './default.js';
import type { HandsKind, Kitchen, StoveKind, Thermometer } from './kitchen.js';
import { kitchenSchema } from './kitchen-schema.js';
import { readLearned } from './learned-fields.js';

export type KitchenProblem = FileProblem;
export type ParsedKitchen = { readonly kitchen: Kitchen } | { readonly problems: readonly KitchenProblem[] };

export const kitchenKeys = [
  'kettlehand-kitchen',
  'altitude',
  'pressure',
  'stove',
  'heat',
  'pot',
  'thermometers',
  'room',
  'unit',
  'hands',
  'language',
  'weights',
  'clock',
  'learned',
] as const;
const potKeys = ['volume', 'diameter'] as const;
const roomKeys = ['temperature', 'humidity'] as const;
const thermometerKeys = ['id', 'kind', 'use', 'unit', 'ice', 'boils', 'checked', 'stem'] as const;

export const stoveKinds: readonly StoveKind[] = ['gas', 'coil', 'glass-ceramic', 'induction'];
export const handsKinds: readonly HandsKind[] = ['visitors', 'bare', 'gloved', 'children'];
export const thermometerKinds: readonly Thermometer['kind'][] = ['dial', 'digital', 'glass', 'infrared'];
const uses: readonly Thermometer['use'][] = ['pot', 'middle', 'both'];
const unitLetters = ['c', 'f'] as const;

/** Our judgement: from a cup for a taste to the largest pot that one person lifts. */
const limits = {
  potMillilitres: [300, 40_000],
  potMillimetres: [80, 600],
  stemMillimetres: [10, 500],
  roomCelsius: [-20, 50],
  shownCelsius: [-30, 300],
  knob: [2, 20],
  labels: [1, 20],
  labelCharacters: 12,
  thermometers: 8,
  idCharacters: 40,
  measureCharacters: 30,
} as const;

/** From the lowest shore on Earth (the Dead Sea, -430 m) to where people live highest and the boiling curve is known. */
export const kitchenAltitudeMetres = [-450, 5500] as const;

const inside = (value: number, [low, high]: readonly [number, number]): boolean =>
  value >= low && value <= high;

/** A temperature in words; a bare number is in `unit`. */
const parseCelsius = (
  field: Field,
  unit: TemperatureUnit,
  range: readonly [number, number],
): number | null => {
  if (field.missing) return null;
  const written = field.text(limits.measureCharacters);
  if (written === null) return null;
  const read = parseTemperature(written);
  const celsius = read === null ? Number.NaN : toCelsius(read.value, read.unit ?? unit);
  return inside(celsius, range)
    ? celsius
    : field.fail(message('kitchen.temperature', { found: echo(written) }));
};

const parseUnit = (field: Field): TemperatureUnit | null => {
  const letter = field.choice(unitLetters);
  return letter === null ? null : letter === 'f' ? 'F' : 'C';
};

const written = (field: Field): string | null =>
  field.missing ? null : field.text(limits.measureCharacters);

const parseAltitudeField = (field: Field): number | null => {
  const text = written(field);
  if (text === null) return null;
  const read = parseAltitude(text);
  if (read.kind === 'problem') return field.fail(read.problem);
  const [low, high] = kitchenAltitudeMetres;
  return inside(read.metres, kitchenAltitudeMetres)
    ? read.metres
    : field.fail(message('kitchen.altitude-range', { metres: read.metres, low, high }));
};

const parsePressureField = (field: Field): number | null => {
  const text = written(field);
  if (text === null) return null;
  const read = parsePressure(text);
  if (read.kind === 'problem') return field.fail(read.problem);
  const [low, high] = pressureRangePascal;
  return inside(read.pascal, pressureRangePascal)
    ? read.pascal
    : field.fail(message('kitchen.pressure-range', { pascal: read.pascal, low, high }));
};

const parseMillimetres = (field: Field, range: readonly [number, number]): number | null => {
  const text = written(field);
  if (text === null) return null;
  const read = parseLength(text);
  if (read.kind === 'problem') return field.fail(read.problem);
  return inside(read.millimetres, range)
    ? read.millimetres
    : field.fail(
        message('kitchen.size-range', {
          found: echo(text),
          low: `${range[0] / 10} cm`,
          high: `${range[1] / 10} cm`,
        }),
      );
};

const parseLitres = (field: Field): number | null => {
  const text = written(field);
  if (text === null) return null;
  const read = parseVolume(text);
  if (read.kind === 'problem') return field.fail(read.problem);
  const [low, high] = limits.potMillilitres;
  return inside(read.millilitres, limits.potMillilitres)
    ? read.millilitres / 1000
    : field.fail(
        message('kitchen.size-range', {
          found: echo(text),
          low: `${low / 1000} l`,
          high: `${high / 1000} l`,
        }),
      );
};

const parseHumidityField = (field: Field): number | null => {
  const text = written(field);
  if (text === null) return null;
  const read = parseHumidity(text);
  return read.kind === 'problem' ? field.fail(read.problem) : read.fraction;
};

const label = /^[\p{L}\p{N}][\p{L}\p{N}.+-]*$/u;

const parseHeat = (field: Field): readonly string[] | null => {
  if (field.missing) return null;
  if (!field.isList) {
    const top = Number(field.text(limits.measureCharacters) ?? Number.NaN);
    return Number.isInteger(top) && inside(top, limits.knob)
      ? Array.from({ length: top }, (_, place) => String(place + 1))
      : field.fail(message('kitchen.heat', { found: field.found }));
  }
  const labels = field.list(limits.labels[1]).flatMap((one) => {
    const text = one.text(limits.labelCharacters);
    if (text === null) return [];
    return label.test(text) && text.toLowerCase() !== 'off'
      ? text
      : (one.fail(message('kitchen.heat-label', { found: echo(text) })) ?? []);
  });
  const lower = labels.map((one) => one.toLowerCase());
  const twice = lower.find((one, place) => lower.indexOf(one) !== place);
  if (twice !== undefined) return field.fail(message('kitchen.heat-label', { found: twice }));
  return labels.length > 0 ? labels : field.fail(message('kitchen.heat', { found: field.found }));
};

const isoDate = /^\d{4}-\d{2}-\d{2}$/;
const daysIn = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

const parseDate = (field: Field): string | null => {
  const text = written(field);
  if (text === null) return null;
  const [, month = 0, day = 0] = text.split('-').map(Number);
  const exists = isoDate.test(text) && day >= 1 && day <= (daysIn[month - 1] ?? 0);
  return exists ? text : field.fail(message('kitchen.date', { found: echo(text) }));
};

/** "below" where the dial begins above ice: no reading. */
const parseIce = (field: Field, unit: TemperatureUnit): number | null =>
  written(field)?.toLowerCase() === 'below' ? null : parseCelsius(field, unit, limits.shownCelsius);

const parseThermometer = (field: Field, kitchenUnit: TemperatureUnit, place: number): Thermometer | null => {
  if (!field.isMap) {
    if (field.missing) field.required();
    else field.map(thermometerKeys);
    return null;
  }
  const fields = field.map(thermometerKeys);
  const get = (key: (typeof thermometerKeys)[number]) => field.of(fields, key);
  const unit = parseUnit(get('unit')) ?? kitchenUnit;
  const id = get('id').text(limits.idCharacters);
  const kind = get('kind').choice(thermometerKinds) ?? 'dial';
  return {
    id: id === null || id === '' ? `thermometer-${place}` : id,
    kind,
    use: get('use').choice(uses) ?? 'both',
    unit,
    iceShownCelsius: parseIce(get('ice'), unit),
    boilsShownCelsius: parseCelsius(get('boils'), unit, limits.shownCelsius),
    checked: parseDate(get('checked')),
    stemMillimetres: parseMillimetres(get('stem'), limits.stemMillimetres),
  };
};

/** Nothing said: the usual unchecked one, in the unit of the kitchen. An empty list: there is none. */
const parseThermometers = (field: Field, unit: TemperatureUnit): readonly Thermometer[] => {
  if (field.missing) return defaultKitchen.thermometers.map((thermometer) => ({ ...thermometer, unit }));
  const seen = new Set<string>();
  return field.list(limits.thermometers).flatMap((line, place) => {
    const read = parseThermometer(line, unit, place + 1);
    if (read === null) return [];
    if (seen.has(read.id)) line.fail(message('kitchen.same-thermometer', { found: read.id }));
    seen.add(read.id);
    return read;
  });
};

/**
 * A kitchen file of format version 1, text in, value out; never throws. What it does not say is as in
 * `defaultKitchen`. `problems` names file, line (from 1), field and what is allowed.
 */
export const parseKitchen = (text: string, fileName: string): ParsedKitchen => {
  const { root, problems } = openDocument(text, fileName);
  if (problems.length > 0) return { problems };
  const top = root.map(null);
  if (top.has('kettlehand') && !top.has('kettlehand-kitchen')) {
    root.fail(message('kitchen.recipe-file'));
    return { problems };
  }
  if (!versionFits(root, top, 'kettlehand-kitchen')) return { problems };
  const fields = root.map(kitchenKeys);
  const get = (key: (typeof kitchenKeys)[number]) => root.of(fields, key);
  const unit = parseUnit(get('unit')) ?? defaultKitchen.unit;
  const pot = get('pot').map(potKeys);
  const room = get('room').map(roomKeys);
  const heat = parseHeat(get('heat')) ?? defaultKitchen.heat;
  const thermometers = parseThermometers(get('thermometers'), unit);
  const potDial = thermometers.find(({ use }) => use !== 'middle') ?? null;
  const learned = readLearned(get('learned'), potDial?.unit ?? unit, heat, potDial?.id ?? null);
  const language = get('language').choice(languageIds);
  const weights = get('weights').choice(weightHabits);
  const clock = get('clock').choice(clockHabits);
  const kitchen: Kitchen = {
    altitudeMetres: parseAltitudeField(get('altitude')),
    pressurePascal: parsePressureField(get('pressure')),
    stove: get('stove').choice(stoveKinds) ?? defaultKitchen.stove,
    heat,
    pot: {
      litres: parseLitres(get('pot').of(pot, 'volume')),
      diameterMillimetres: parseMillimetres(get('pot').of(pot, 'diameter'), limits.potMillimetres),
    },
    thermometers,
    room: {
      celsius: parseCelsius(get('room').of(room, 'temperature'), unit, limits.roomCelsius),
      humidity: parseHumidityField(get('room').of(room, 'humidity')),
    },
    unit,
    hands: get('hands').choice(handsKinds) ?? defaultKitchen.hands,
    ...(language === null ? {} : { language }),
    ...(weights === null ? {} : { weights }),
    ...(clock === null ? {} : { clock }),
    ...(learned === undefined ? {} : { learned }),
  };
  if (problems.length > 0) return { problems: problems.toSorted((one, other) => one.line - other.line) };
  const checked = z.safeParse(kitchenSchema, kitchen);
  for (const issue of checked.error?.issues ?? [])
    root.fail(message('recipe.value', { field: issue.path.join('.'), code: issue.code }));
  return checked.success ? { kitchen } : { problems };
};
