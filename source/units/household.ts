import { textAt } from './at.js';
import type { Language } from './language.js';
import { massUnits, volumeUnits } from './tables.js';

/** What a person weighs with. Sums are always computed in grams. */
export const weightHabits = ['grams', 'ounces'] as const;
export type Weights = (typeof weightHabits)[number];
export const isWeights = (found: string): found is Weights =>
  (weightHabits as readonly string[]).includes(found);

/** A mass, its volume where its density is known, and how the recipe writes it. */
export type Amount = {
  readonly grams: number;
  readonly millilitres: number | null;
  readonly written?: string | undefined;
};

const sizeOf = (
  rows: readonly { readonly symbol: string; readonly size: number }[],
  symbol: string,
): number => rows.find((row) => row.symbol === symbol)?.size ?? Number.NaN;

const ounceGrams = sizeOf(massUnits, 'oz');
const poundOunces = 16;
/** Below this many ounces no pounds are said: a kitchen scale shows both. Our judgement. */
const poundsFrom = 2 * poundOunces;
/** US customary: NIST Handbook 44, Appendix C. */
const cupMillilitres = sizeOf(volumeUnits.us, 'cup');
const tablespoonMillilitres = cupMillilitres / 16;
const teaspoonMillilitres = cupMillilitres / 48;
const quartLitres = (4 * cupMillilitres) / 1000;

type MeasureWords = {
  readonly cup: string;
  readonly cups: string;
  readonly tablespoon: string;
  readonly teaspoon: string;
  readonly pinch: string;
  readonly pinches: string;
  readonly drop: string;
  readonly drops: string;
  readonly quarts: string;
  readonly or: string;
};

const measureWords: Readonly<Record<Language, MeasureWords>> = {
  en: {
    cup: 'cup',
    cups: 'cups',
    tablespoon: 'tbsp',
    teaspoon: 'tsp',
    pinch: 'a pinch',
    pinches: 'pinches',
    drop: 'drop',
    drops: 'drops',
    quarts: 'quarts',
    or: 'or',
  },
  de: {
    cup: 'US-Tasse',
    cups: 'US-Tassen',
    tablespoon: 'EL',
    teaspoon: 'TL',
    pinch: 'eine Prise',
    pinches: 'Prisen',
    drop: 'Tropfen',
    drops: 'Tropfen',
    quarts: 'Quarts',
    or: 'oder',
  },
};

const quarters = ['', '1/4', '1/2', '3/4'] as const;

/** In quarters, at least one: 2.3 is "2 1/4". */
const inQuarters = (value: number): string => {
  const count = Math.max(1, Math.round(value * 4));
  const [whole, part] = [Math.floor(count / 4), textAt(quarters, count % 4)];
  return [whole === 0 ? '' : String(whole), part].filter((one) => one !== '').join(' ');
};

/** Measuring cups come in these sizes. */
const cupParts = [
  [0.25, '1/4'],
  [1 / 3, '1/3'],
  [0.5, '1/2'],
  [2 / 3, '2/3'],
  [0.75, '3/4'],
] as const;
type CupPart = (typeof cupParts)[number];

const nearestPart = (rest: number): string =>
  cupParts.reduce<CupPart>(
    (nearest, part) => (Math.abs(part[0] - rest) < Math.abs(nearest[0] - rest) ? part : nearest),
    cupParts[0],
  )[1];

const inCups = (cups: number, { cup, cups: several }: MeasureWords): string => {
  const whole = Math.floor(cups + 0.1);
  const rest = Math.max(0, cups - whole);
  if (rest < 0.1) return `${whole} ${whole === 1 ? cup : several}`;
  return whole === 0 ? `${nearestPart(rest)} ${cup}` : `${whole} ${nearestPart(rest)} ${several}`;
};

/** Of a teaspoon, by eighths: there quarters would be too coarse. */
const smallSpoons: readonly (string | undefined)[] = ['', '1/8', '1/4', '3/8'];

/** From a few grains to a bucket, by the measures of a US kitchen: "2 1/2 cups", "1 1/2 tbsp", "1/4 tsp". */
export const householdVolume = (millilitres: number, language: Language = 'en'): string => {
  const words = measureWords[language];
  if (millilitres >= 0.23 * cupMillilitres) return inCups(millilitres / cupMillilitres, words);
  if (millilitres >= 0.95 * tablespoonMillilitres)
    return `${inQuarters(Math.round((2 * millilitres) / tablespoonMillilitres) / 2)} ${words.tablespoon}`;
  const teaspoons = millilitres / teaspoonMillilitres;
  if (teaspoons < 0.09) return words.pinch;
  const small = smallSpoons[Math.max(1, Math.round(teaspoons * 8))] ?? inQuarters(teaspoons);
  return `${small} ${words.teaspoon}`;
};

/** "2 quarts" or more: what a pot has to hold. */
export const quarts = (litres: number, language: Language = 'en'): string =>
  `${inQuarters(Math.ceil((litres / quartLitres) * 2) / 2)} ${measureWords[language].quarts}`;

/** "17 3/4 oz", "2 lb 3 1/4 oz": quarters of an ounce up to five pounds, then whole ounces. A trace is in tenths. */
export const ounces = (grams: number): string => {
  const all = grams / ounceGrams;
  if (all < 0.2) return `${all.toFixed(1)} oz`;
  const step = all < 5 * poundOunces ? 4 : 1;
  const rounded = Math.round(all * step) / step;
  if (rounded < poundsFrom) return `${inQuarters(rounded)} oz`;
  const pounds = Math.floor(rounded / poundOunces);
  const rest = rounded - pounds * poundOunces;
  return rest === 0 ? `${pounds} lb` : `${pounds} lb ${inQuarters(rest)} oz`;
};

/** Kitchen scales in ounces tell no less than this well, grams. Our judgement. */
const leastWeighed = 25;
const counted = /^(\d+|a)\s*(drops?|pinch(?:es)?)\b/i;

/** "20 drops", "a pinch": so little is counted and not weighed. Null for any other amount. */
export const countedAmount = (written: string, language: Language = 'en'): string | null => {
  const [found, number = '', word = ''] = counted.exec(written.trim()) ?? [];
  if (found === undefined) return null;
  const words = measureWords[language];
  if (language === 'en') return written.trim();
  const ofDrops = word.toLowerCase().startsWith('drop');
  const one = number === '1' || number.toLowerCase() === 'a';
  if (one) return ofDrops ? `1 ${words.drop}` : words.pinch;
  return `${number} ${ofDrops ? words.drops : words.pinches}`;
};

/**
 * An amount by ounces and cups: "17 3/4 oz or 2 1/2 cups"; so little that a scale in ounces does not tell it is
 * measured by spoon, "1 1/2 tsp", where its density is known; what the recipe counts stays counted.
 */
export const householdAmount = (
  { grams, millilitres, written = '' }: Amount,
  language: Language = 'en',
): string => {
  const few = countedAmount(written, language);
  if (few !== null) return few;
  const volume = millilitres === null ? null : householdVolume(millilitres, language);
  if (volume === null) return ounces(grams);
  return grams < leastWeighed ? volume : `${ounces(grams)} ${measureWords[language].or} ${volume}`;
};

/** Less than this is said in grams by everybody. Our judgement: no kitchen scale in ounces tells it. */
const leastInOunces = 10;

/** A mass as it is read by somebody who weighs in ounces: "25 oz", "7 g". */
export const inOunces = (grams: number): string | null => (grams < leastInOunces ? null : ounces(grams));
