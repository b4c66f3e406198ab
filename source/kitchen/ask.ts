import { saturationPascal } from '../sugar/water.js';
import { type Message, message } from '../texts/message.js';
import { parseAltitude } from '../units/parse.js';
import { otherUnit, parseTemperature, type TemperatureUnit, toCelsius } from '../units/temperature.js';
import { inside, plausibleBoilingCelsius } from './air.js';
import { defaultKitchen } from './default.js';
import type { Kitchen, StoveKind, Thermometer } from './kitchen.js';
import { kitchenAltitudeMetres, stoveKinds, thermometerKinds } from './parse.js';
import { fillers, noneSaid, seaLevelSaid, stovesSaid, thermometersSaid } from './said.js';

type QuestionId = 'place' | 'stove' | 'thermometer';

/** One question of a first run: the sentence, why it is asked, and what Enter alone means. */
export type FirstRunQuestion = {
  readonly id: QuestionId;
  readonly ask: Message;
  readonly why: Message;
  readonly skip: Message;
};

/** The three that change the advice most, in this order. Everything else has a default and can be set later. */
export const firstRunQuestions: readonly FirstRunQuestion[] = [
  {
    id: 'place',
    ask: message('kitchen.ask.place'),
    why: message('kitchen.ask.place.why'),
    skip: message('kitchen.ask.place.skip'),
  },
  {
    id: 'stove',
    ask: message('kitchen.ask.stove'),
    why: message('kitchen.ask.stove.why'),
    skip: message('kitchen.ask.stove.skip'),
  },
  {
    id: 'thermometer',
    ask: message('kitchen.ask.thermometer'),
    why: message('kitchen.ask.thermometer.why'),
    skip: message('kitchen.ask.thermometer.skip'),
  },
];

/** What was typed, as typed; empty or missing: the default. */
export type FirstRunAnswers = Readonly<Partial<Record<QuestionId, string>>>;

type Place = Pick<Kitchen, 'altitudeMetres'> & { readonly boilsShownCelsius: number | null };
type Instrument = { readonly kind: Thermometer['kind']; readonly unit: TemperatureUnit };
type Answered<T> = { readonly value: T } | { readonly problem: Message };

const nowhere: Place = { altitudeMetres: null, boilsShownCelsius: null };

const boilsBefore = /^(?:water\s+|wasser\s+)?(?:boils|kocht)(?:\s+(?:at|bei))?\s+/i;

/** The boiling point in water; without a unit the one in which water can boil at that, the thermometer's own first. */
const boilingPoint = (text: string, unit: TemperatureUnit): number | null => {
  const read = parseTemperature(text.replace(boilsBefore, ''));
  if (read === null || (read.unit === null && !boilsBefore.test(text))) return null;
  const units = read.unit === null ? [unit, otherUnit(unit)] : [read.unit];
  const celsius = units.map((one) => toCelsius(read.value, one));
  return celsius.find((one) => inside(one, plausibleBoilingCelsius)) ?? null;
};

const placeOf = (typed: string, unit: TemperatureUnit): Answered<Place> => {
  const text = typed.trim().replaceAll(fillers, '');
  if (text === '') return { value: nowhere };
  if (seaLevelSaid.includes(text.toLowerCase())) return { value: { ...nowhere, altitudeMetres: 0 } };
  const altitude = parseAltitude(text);
  if (altitude.kind === 'altitude') {
    const [low, high] = kitchenAltitudeMetres;
    return inside(altitude.metres, kitchenAltitudeMetres)
      ? { value: { ...nowhere, altitudeMetres: altitude.metres } }
      : { problem: message('kitchen.altitude-range', { metres: altitude.metres, low, high }) };
  }
  const celsius = boilingPoint(text, unit);
  if (celsius !== null) return { value: { ...nowhere, boilsShownCelsius: celsius } };
  const found = typed.trim().slice(0, 40);
  return {
    problem: /^\d{1,5}$/.test(text)
      ? message('kitchen.ask.bare.place', { found: text })
      : message('kitchen.ask.not-understood.place', { found }),
  };
};

const ownWord = <T>(table: Readonly<Record<string, T>>, word: string): T | undefined =>
  Object.hasOwn(table, word) ? table[word] : undefined;

const stoveOf = (typed: string): Answered<StoveKind> => {
  const text = typed.trim().toLowerCase().replaceAll(/\s+/g, '-');
  if (text === '') return { value: defaultKitchen.stove };
  const stove = ownWord(stovesSaid, text) ?? stoveKinds.find((kind) => kind === text);
  return stove === undefined
    ? { problem: message('kitchen.ask.not-understood.stove', { found: typed.trim().slice(0, 40) }) }
    : { value: stove };
};

const unitWords: Readonly<Record<string, TemperatureUnit>> = {
  c: 'C',
  celsius: 'C',
  f: 'F',
  fahrenheit: 'F',
};

/** What is left of an answer when the unit and the kind are taken from it says nothing, or is not understood. */
const saysNothing: ReadonlySet<string> = new Set(['in', 'thermometer', 'candy', 'sugar', 'grad', 'degrees']);

const instrumentOf = (typed: string): Answered<Instrument | null> => {
  const line = typed.trim().toLowerCase();
  if (line === '') return { value: { kind: 'dial', unit: 'F' } };
  if (noneSaid.includes(line)) return { value: null };
  const words = line
    .replaceAll(/[°,]/g, ' ')
    .split(/\s+/)
    .filter((word) => word !== '');
  const kindOf = (word: string): Thermometer['kind'] | undefined =>
    thermometerKinds.find((one) => one === word) ?? ownWord(thermometersSaid, word);
  const kinds = new Set(words.map(kindOf).filter((kind) => kind !== undefined));
  const units = words.map((word) => ownWord(unitWords, word)).filter((unit) => unit !== undefined);
  const others = words.filter(
    (word) => kindOf(word) === undefined && ownWord(unitWords, word) === undefined && !saysNothing.has(word),
  );
  const [kind = 'dial', ...moreKinds] = kinds;
  const [unit = 'F', ...moreUnits] = units;
  const isSaid = kinds.size + units.length > 0;
  if (!isSaid || others.length + moreKinds.length + moreUnits.length > 0)
    return {
      problem: message('kitchen.ask.not-understood.thermometer', { found: typed.trim().slice(0, 40) }),
    };
  return { value: { kind, unit } };
};

/** Whether one answer is understood; null if so, else the sentence that asks again. */
export const firstRunProblem = (id: QuestionId, typed: string): Message | null => {
  const read = id === 'place' ? placeOf(typed, 'F') : id === 'stove' ? stoveOf(typed) : instrumentOf(typed);
  return 'problem' in read ? read.problem : null;
};

const valueOr = <T>(read: Answered<T>, otherwise: T): T => ('value' in read ? read.value : otherwise);

/**
 * The kitchen of a first run. An answer that is missing, empty or not understood gives the default; ask
 * `firstRunProblem` before. A bare boiling point is in the unit of the thermometer that was named.
 */
export const answerFirstRun = (answers: FirstRunAnswers): Kitchen => {
  const instrument = valueOr(instrumentOf(answers.thermometer ?? ''), null);
  const unit = instrument?.unit ?? 'F';
  const place = valueOr(placeOf(answers.place ?? '', unit), nowhere);
  const thermometers: readonly Thermometer[] =
    instrument === null
      ? []
      : [
          {
            id: `my-${instrument.kind}`,
            kind: instrument.kind,
            use: 'both',
            unit,
            iceShownCelsius: null,
            boilsShownCelsius: place.boilsShownCelsius,
            checked: null,
            stemMillimetres: null,
          },
        ];
  return {
    ...defaultKitchen,
    altitudeMetres: place.altitudeMetres,
    // Without a thermometer of one's own the boiling point is somebody's word: it tells of the air only.
    pressurePascal:
      instrument === null && place.boilsShownCelsius !== null
        ? saturationPascal(place.boilsShownCelsius)
        : null,
    stove: valueOr(stoveOf(answers.stove ?? ''), defaultKitchen.stove),
    thermometers,
    unit,
  };
};
