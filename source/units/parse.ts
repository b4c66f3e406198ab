import { textAt } from './at.js';
import { type NumberAndWord, readNumber } from './number.js';
import { type Unread, unread, type Wanted } from './problem.js';
import {
  altitudeUnits,
  type Cups,
  countWords,
  durationUnits,
  lengthUnits,
  massUnits,
  pressureUnits,
  type UnitRow,
  volumeUnits,
} from './tables.js';

export type Mass = { readonly kind: 'mass'; readonly grams: number };
export type Volume = { readonly kind: 'volume'; readonly millilitres: number };
export type CountedThing = keyof typeof countWords;
export type Count = { readonly kind: 'count'; readonly n: number; readonly of: CountedThing };
export type Amount = Mass | Volume | Count;
export type Length = { readonly kind: 'length'; readonly millimetres: number };
export type Altitude = { readonly kind: 'altitude'; readonly metres: number };
export type Pressure = { readonly kind: 'pressure'; readonly pascal: number };
export type Humidity = { readonly kind: 'humidity'; readonly fraction: number };
export type Duration = { readonly kind: 'duration'; readonly seconds: number };

const countedThings = Object.keys(countWords) as readonly CountedThing[];
const longestEcho = 40;
const echo = (typed: string): string => {
  const text = typed.trim();
  return text.length > longestEcho ? `${text.slice(0, longestEcho)}...` : text;
};

const symbols = (units: readonly UnitRow[]): readonly string[] => units.map((unit) => unit.symbol);
const wordOf = (word: string): string => word.toLowerCase().replaceAll(/\s+/g, ' ');
const unitOf = (units: readonly UnitRow[], word: string): UnitRow | undefined => {
  const wanted = wordOf(word);
  return units.find((unit) => unit.words.includes(wanted) || unit.words.includes(wanted.replace(/\.$/, '')));
};
const countedOf = (word: string): CountedThing | undefined =>
  countedThings.find((thing) => (countWords[thing] as readonly string[]).includes(wordOf(word)));

type Rules = { readonly wanted: Wanted; readonly allowed: readonly string[]; readonly negative?: boolean };

const numberOf = (typed: string, rules: Rules): NumberAndWord | Unread => {
  const values = { wanted: rules.wanted, found: echo(typed), allowed: rules.allowed };
  const number = readNumber(typed);
  if (number === null) return unread({ id: 'units.no-number', values });
  if (number.word === '') return unread({ id: 'units.no-unit', values });
  if (rules.negative !== true && !(number.value > 0)) return unread({ id: 'units.not-positive', values });
  return number;
};

const unknownUnit = (typed: string, word: string, rules: Rules): Unread =>
  unread({
    id: 'units.unknown-unit',
    values: { wanted: rules.wanted, found: echo(typed), allowed: rules.allowed, unit: echo(word) },
  });

/** "1,500 kg" can be meant two ways that differ a thousandfold: asked, not guessed. */
const sized = (typed: string, number: NumberAndWord, unit: UnitRow, rules: Rules): number | Unread => {
  if (number.comma !== 'thousands or decimal' || unit.thousands === true) return number.value * unit.size;
  return unread({
    id: 'units.comma',
    values: {
      wanted: rules.wanted,
      found: echo(typed),
      allowed: rules.allowed,
      either: [`${number.value} ${unit.symbol}`, `${number.value / 1000} ${unit.symbol}`],
    },
  });
};

const parseIn = (
  typed: string,
  units: readonly UnitRow[],
  wanted: Wanted,
  negative = false,
): number | Unread => {
  const rules = { wanted, allowed: symbols(units), negative };
  const number = numberOf(typed, rules);
  if ('kind' in number) return number;
  const unit = unitOf(units, number.word);
  return unit === undefined ? unknownUnit(typed, number.word, rules) : sized(typed, number, unit, rules);
};

const amountRules = (cups: Cups): Rules => ({
  wanted: 'amount',
  allowed: [...symbols(massUnits), ...symbols(volumeUnits[cups]), 'drops', 'pinch', 'pieces'],
});

/**
 * An ingredient's amount: "300 g", "1 1/4 cup", "½ tsp", "20 drops", "a pinch". Grams, millilitres, or a count.
 * Cups and spoons are US customary unless `cups` says metric. Nothing, zero and negative amounts are problems.
 */
export const parseAmount = (typed: string, cups: Cups = 'us'): Amount | Unread => {
  const rules = amountRules(cups);
  const number = numberOf(typed.trim().replace(/^an?\s+/i, '1 '), rules);
  if ('kind' in number) return number;
  const counted = countedOf(number.word);
  if (counted !== undefined) return { kind: 'count', n: number.value, of: counted };
  const massUnit = unitOf(massUnits, number.word);
  const volumeUnit = unitOf(volumeUnits[cups], number.word);
  const unit = massUnit ?? volumeUnit;
  if (unit === undefined) return unknownUnit(typed, number.word, rules);
  const size = sized(typed, number, unit, rules);
  if (typeof size !== 'number') return size;
  return massUnit === undefined ? { kind: 'volume', millilitres: size } : { kind: 'mass', grams: size };
};

/** A mass: "1.5 kg" → grams. */
export const parseMass = (typed: string): Mass | Unread => {
  const grams = parseIn(typed, massUnits, 'mass');
  return typeof grams === 'number' ? { kind: 'mass', grams } : grams;
};

/** A volume: "3 l" → millilitres. */
export const parseVolume = (typed: string, cups: Cups = 'us'): Volume | Unread => {
  const millilitres = parseIn(typed, volumeUnits[cups], 'volume');
  return typeof millilitres === 'number' ? { kind: 'volume', millilitres } : millilitres;
};

/** A length: "50 mm", "2 in" → millimetres. */
export const parseLength = (typed: string): Length | Unread => {
  const millimetres = parseIn(typed, lengthUnits, 'length');
  return typeof millimetres === 'number' ? { kind: 'length', millimetres } : millimetres;
};

/** "1.450 m" as half of Europe writes it: nobody knows how high a kitchen lies to a millimetre. Of kilometres it may be. */
const groupedByPoint = /^(\s*[-+−]?\d{1,2})\.(\d{3})(?!\d|\s*k)/i;

/** An altitude above sea level, also below it: "1450m", "1.450 m", "4750ft", "-430 m" → metres. */
export const parseAltitude = (typed: string): Altitude | Unread => {
  const metres = parseIn(typed.replace(groupedByPoint, '$1$2'), altitudeUnits, 'altitude', true);
  return typeof metres === 'number' ? { kind: 'altitude', metres } : metres;
};

/** An air pressure: "850hPa", "29.9 inHg" → pascal. */
export const parsePressure = (typed: string): Pressure | Unread => {
  const pascal = parseIn(typed, pressureUnits, 'pressure');
  return typeof pascal === 'number' ? { kind: 'pressure', pascal } : pascal;
};

const percentWord = /^(%|percent|per cent)\s*(rh|r\.h\.)?$/i;

/** A relative humidity: "45 %", or a bare number above 1 taken as percent → fraction 0 to 1. */
export const parseHumidity = (typed: string): Humidity | Unread => {
  const values = { wanted: 'humidity', found: echo(typed), allowed: ['%'] } as const;
  const number = readNumber(typed);
  if (number === null) return unread({ id: 'units.no-number', values });
  if (number.word !== '' && !percentWord.test(number.word))
    return unread({ id: 'units.unknown-unit', values: { ...values, unit: echo(number.word) } });
  const bareFraction = number.word === '' && number.value > 0 && number.value <= 1;
  if (bareFraction || number.value < 0 || number.value > 100)
    return unread({ id: 'units.humidity-range', values });
  return { kind: 'humidity', fraction: number.value / 100 };
};

const durationPart = /(\d+(?:[.,]\d+)?)\s*([a-z]+)\.?/gi;

/** A duration: "40 s", "4 min", "1 h 10 min" → seconds. */
export const parseDuration = (typed: string): Duration | Unread => {
  const rules = { wanted: 'duration', allowed: symbols(durationUnits) } as const;
  const parts = [...typed.slice(0, 80).matchAll(durationPart)];
  const rest = typed.replaceAll(durationPart, '').trim();
  if (parts.length < 2 || rest !== '') {
    const seconds = parseIn(typed, durationUnits, 'duration');
    return typeof seconds === 'number' ? { kind: 'duration', seconds } : seconds;
  }
  let seconds = 0;
  for (const part of parts) {
    const word = textAt(part, 2);
    const unit = unitOf(durationUnits, word);
    if (unit === undefined) return unknownUnit(typed, word, rules);
    seconds += Number(textAt(part, 1).replace(',', '.')) * unit.size;
  }
  return { kind: 'duration', seconds };
};
