import { saturationPascal } from '../sugar/water.js';
import { type Message, message } from '../texts/message.js';
import { parseAltitude } from '../units/parse.js';
import { parseTemperature, type TemperatureUnit, toCelsius } from '../units/temperature.js';
import { inside, plausibleBoilingCelsius } from './air.js';
import { defaultKitchen } from './default.js';
import type { Kitchen, StoveKind, Thermometer } from './kitchen.js';
import { kitchenAltitudeMetres, stoveKinds, thermometerKinds } from './parse.js';

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

const placeOf = (typed: string, unit: TemperatureUnit): Answered<Place> => {
  const text = typed.trim();
  if (text === '') return { value: nowhere };
  const altitude = parseAltitude(text);
  if (altitude.kind === 'altitude') {
    const [low, high] = kitchenAltitudeMetres;
    return inside(altitude.metres, kitchenAltitudeMetres)
      ? { value: { ...nowhere, altitudeMetres: altitude.metres } }
      : { problem: message('kitchen.altitude-range', { metres: altitude.metres, low, high }) };
  }
  const boils = parseTemperature(text.replace(/^(water\s+)?boils(\s+at)?\s+/i, ''));
  const celsius = boils === null ? Number.NaN : toCelsius(boils.value, boils.unit ?? unit);
  const typedAsTemperature = boils !== null && (boils.unit !== null || /^(water\s+)?boils/i.test(text));
  return typedAsTemperature && inside(celsius, plausibleBoilingCelsius)
    ? { value: { ...nowhere, boilsShownCelsius: celsius } }
    : { problem: message('kitchen.ask.not-understood.place', { found: text.slice(0, 40) }) };
};

const stoveOf = (typed: string): Answered<StoveKind> => {
  const text = typed.trim().toLowerCase().replaceAll(/\s+/g, '-');
  if (text === '') return { value: defaultKitchen.stove };
  const stove = stoveKinds.find((kind) => kind === text);
  return stove === undefined
    ? { problem: message('kitchen.ask.not-understood.stove', { found: typed.trim().slice(0, 40) }) }
    : { value: stove };
};

const instrumentOf = (typed: string): Answered<Instrument | null> => {
  const words = typed
    .trim()
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '');
  if (words.length === 0) return { value: { kind: 'dial', unit: 'F' } };
  if (words.length === 1 && words[0] === 'none') return { value: null };
  const kind = thermometerKinds.find((one) => words.includes(one));
  const unit = words.includes('f') ? 'F' : words.includes('c') ? 'C' : null;
  const others = words.filter((word) => word !== kind && word !== 'c' && word !== 'f');
  if (kind === undefined || others.length > 0)
    return {
      problem: message('kitchen.ask.not-understood.thermometer', { found: typed.trim().slice(0, 40) }),
    };
  return { value: { kind, unit: unit ?? 'F' } };
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
