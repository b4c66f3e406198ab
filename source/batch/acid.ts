import type { Recipe } from '../recipe/recipe.js';
import { invertedFraction, type Stretch } from '../sugar/inversion.js';
import { invertGramsPerSucroseGram } from '../sugar/solubility.js';
import type { BoilingCurve, Syrup } from '../sugar/syrup.js';
import { boils } from './syrup-of.js';

/**
 * How sour an acid keeps boiling syrup, as pH, and from which share of the sucrose it is counted at all (less is taken up
 * by what sugar and hard water carry). Cream of tartar is its own buffer, half-way between the two constants of tartaric
 * acid, 2.98 and 4.34 (CRC Handbook, from memory). The others by our judgement: from their dissociation alone they would
 * be sourer, but vinegar leaves with the steam, and published candies with half a cup of it to a pound still set.
 */
type Acid = { readonly ph: number; readonly leastShare: number };
const acids: ReadonlyMap<string, Acid> = new Map([
  ['cream-of-tartar', { ph: (2.98 + 4.34) / 2, leastShare: 0.0005 }],
  ['vinegar', { ph: 3.4, leastShare: 0.01 }],
  ['lemon-juice', { ph: 3.3, leastShare: 0.01 }],
  ['citric-acid', { ph: 3.2, leastShare: 0.0005 }],
]);

/** Usual time from first boil to target, minutes: 15-45 in practice (no source for the middle). */
const boilMinutes = 28;
const stretches = 12;

/** The sourest of the acids that boil with the sugar, as pH; null where there is none worth counting. */
export const boilPh = (recipe: Recipe, syrup: Syrup): number | null => {
  const sour = recipe.ingredients.filter(boils).flatMap(({ item, grams }) => {
    const acid = acids.get(item);
    return acid === undefined || grams < acid.leastShare * syrup.sucroseGrams ? [] : [acid.ph];
  });
  return sour.length === 0 ? null : Math.min(...sour);
};

const boilOf = function* (syrup: Syrup, curve: BoilingCurve, endCelsius: number): Generator<Stretch> {
  const dissolved = curve.dissolvedGrams;
  const endWater = curve.waterGramsAt(endCelsius);
  for (let step = 0; step < stretches; step++) {
    const share = (step + 0.5) / stretches;
    const water = syrup.waterGrams + share * (Math.min(endWater, syrup.waterGrams) - syrup.waterGrams);
    const solidsFraction = dissolved / (dissolved + water);
    yield { minutes: boilMinutes / stretches, celsius: curve.celsiusAt(solidsFraction), solidsFraction };
  }
};

/**
 * Share of the sucrose that acid splits in a boil of usual length, 0 to 1; 0 without acid. Water leaves evenly.
 * Good for the order of magnitude only (see sugar/inversion.ts).
 */
export const invertedInBoil = (
  recipe: Recipe,
  syrup: Syrup,
  curve: BoilingCurve,
  endCelsius: number,
): number => {
  const ph = boilPh(recipe, syrup);
  return ph === null || syrup.sucroseGrams === 0 ? 0 : invertedFraction(boilOf(syrup, curve, endCelsius), ph);
};

/** The syrup after a share of its sucrose was split; the whole mass stays, some water is bound. */
export const afterInversion = (syrup: Syrup, fraction: number): Syrup => {
  const split = syrup.sucroseGrams * fraction;
  const invert = split * invertGramsPerSucroseGram;
  return {
    ...syrup,
    sucroseGrams: syrup.sucroseGrams - split,
    invertGrams: syrup.invertGrams + invert,
    waterGrams: Math.max(0, syrup.waterGrams - (invert - split)),
  };
};
