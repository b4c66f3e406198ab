import type { Ingredient, Recipe } from '../recipe/recipe.js';
import { invertedFraction, type Stretch } from '../sugar/inversion.js';
import { invertGramsPerSucroseGram } from '../sugar/solubility.js';
import type { BoilingCurve, Syrup } from '../sugar/syrup.js';
import { boils } from './syrup-of.js';

/** How sour an acid makes syrup: moles of acid in a gram of the item, and its first dissociation constant as pKa. */
type Acid = { readonly molePerGram: number; readonly pKa: number } | { readonly ph: number };

/**
 * Cream of tartar is its own buffer: between the two constants of tartaric acid, 2.98 and 4.34 (CRC Handbook, from
 * memory). Vinegar 5 % acetic acid; lemon juice 5 % citric acid (common practice, no source).
 */
const acids: Readonly<Record<string, Acid>> = {
  'cream-of-tartar': { ph: (2.98 + 4.34) / 2 },
  vinegar: { molePerGram: 0.05 / 60.05, pKa: 4.76 },
  'lemon-juice': { molePerGram: 0.05 / 192.12, pKa: 3.13 },
  'citric-acid': { molePerGram: 1 / 192.12, pKa: 3.13 },
};

/** Less than this in a thousand parts of sugar is taken up by what sugar and hard water carry. Our judgement. */
const leastShareOfSugar = 0.0005;
/** No syrup is sourer than this by what a kitchen adds, and none is counted that is milder. Our judgement. */
const sourest = 2.8;
const mildest = 6;

/** Usual time from first boil to target, minutes: 15-45 in practice (no source for the middle). */
const boilMinutes = 28;
const stretches = 12;

const phOf = (acid: Acid, grams: number, waterGrams: number): number =>
  'ph' in acid
    ? acid.ph
    : 0.5 * (acid.pKa - Math.log10((acid.molePerGram * grams) / Math.max(0.001, waterGrams / 1000)));

/** The sourest of the acids that boil with the sugar, as pH; null where there is none worth counting. */
export const boilPh = (recipe: Recipe, syrup: Syrup): number | null => {
  const sour = recipe.ingredients
    .filter((ingredient: Ingredient) => boils(ingredient) && ingredient.role === 'acid')
    .flatMap(({ item, grams }) => {
      const acid = acids[item];
      return acid === undefined || grams < leastShareOfSugar * syrup.sucroseGrams
        ? []
        : [phOf(acid, grams, syrup.waterGrams)];
    });
  return sour.length === 0 ? null : Math.min(mildest, Math.max(sourest, ...[Math.min(...sour)]));
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
