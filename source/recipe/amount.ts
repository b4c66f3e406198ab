import type { Amount as HouseholdAmount } from '../units/household.js';
import { readNumber } from '../units/number.js';
import type { Amount } from '../units/parse.js';
import type { Ingredient } from './recipe.js';

/** A sixteenth of a US teaspoon, millilitres: common practice, no source. */
const pinchMillilitres = 4.92892159375 / 16;

type Measured = { readonly densityKilogramPerLitre: number | null; readonly dropGrams: number | null };

/** Grams of an amount of something, or what is not known of it: its density, or the mass of a drop or of a piece. */
export const gramsOf = (amount: Amount, item: Measured): number | 'density' | 'drop' | 'piece' => {
  if (amount.kind === 'mass') return amount.grams;
  const density = item.densityKilogramPerLitre;
  if (amount.kind === 'volume') return density === null ? 'density' : amount.millilitres * density;
  if (amount.of === 'piece') return 'piece';
  if (amount.of === 'drop') return item.dropGrams === null ? 'drop' : amount.n * item.dropGrams;
  return density === null ? 'density' : amount.n * pinchMillilitres * density;
};

/** What a kitchen without a scale needs to know of an ingredient. */
export const measuredAmount = ({
  amount,
  grams,
  densityKilogramPerLitre: density,
}: Pick<Ingredient, 'amount' | 'grams' | 'densityKilogramPerLitre'>): HouseholdAmount & {
  readonly written: string;
} => ({ grams, millilitres: density === null ? null : grams / density, written: amount });

const spoons = /^(cups?|tbsp|tablespoons?|tsp|teaspoons?|tbs|tbsps|tsps)\b/i;
const counted = /^(drops?|pinch(es)?|pieces?)\b/i;
const plurals: Readonly<Record<string, readonly [one: string, many: string]>> = {
  drop: ['drop', 'drops'],
  drops: ['drop', 'drops'],
  cup: ['cup', 'cups'],
  cups: ['cup', 'cups'],
  pinch: ['pinch', 'pinches'],
  pinches: ['pinch', 'pinches'],
};

const fractions: ReadonlyArray<readonly [number, string]> = [
  [1 / 8, '1/8'],
  [1 / 4, '1/4'],
  [1 / 3, '1/3'],
  [3 / 8, '3/8'],
  [1 / 2, '1/2'],
  [5 / 8, '5/8'],
  [2 / 3, '2/3'],
  [3 / 4, '3/4'],
  [7 / 8, '7/8'],
];

/** As a spoon or a cup can measure it: whole and eighths or thirds, within 3 %; else a decimal. */
const inSpoons = (value: number): string => {
  const whole = Math.floor(value + 1e-9);
  const rest = value - whole;
  if (whole > 0 && rest < 0.03 * value) return String(whole);
  const near = fractions.find(([size]) => Math.abs(size - rest) <= 0.03 * value);
  if (near !== undefined) return whole === 0 ? near[1] : `${whole} ${near[1]}`;
  return String(Number(value.toPrecision(2)));
};

/**
 * An amount as written, `factor` times as much: "1/2 tsp" by 3 is "1 1/2 tsp", "500 g" by 1.5 is "750 g". Rounded to
 * what a spoon, a scale or a bottle can give; the exact grams stand beside it in the recipe.
 */
export const scaleAmount = (amount: string, factor: number): string => {
  const read = readNumber(amount.trim().replace(/^an?\s+/i, '1 '));
  if (read === null) return amount;
  const value = read.value * factor;
  const [first = '', ...rest] = read.word.split(' ');
  if (counted.test(read.word)) {
    const n = Math.max(1, Math.round(value));
    const word = plurals[first.toLowerCase()]?.[n === 1 ? 0 : 1] ?? first;
    return [n, word, ...rest].join(' ');
  }
  if (spoons.test(read.word)) {
    const word = plurals[first.toLowerCase()]?.[value > 1 ? 1 : 0] ?? first;
    return [inSpoons(value), word, ...rest].join(' ');
  }
  return `${Number(value.toPrecision(value < 10 ? 2 : value < 100 ? 3 : 4))} ${read.word}`.trim();
};
