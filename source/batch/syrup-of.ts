import type { Composition, Ingredient, IngredientPhase, Recipe } from '../recipe/recipe.js';
import type { Syrup } from '../sugar/syrup.js';

/** What is in the pot while it boils; what goes in later never boils and keeps its water. */
const inTheBoil: ReadonlySet<IngredientPhase> = new Set(['mix', 'boil']);

export const boils = (ingredient: Ingredient): boolean => inTheBoil.has(ingredient.phase);

type Part = Pick<Ingredient, 'grams' | 'de' | 'composition'>;

const sum = (ingredients: readonly Part[], part: keyof Composition): number =>
  ingredients.reduce((total, { grams, composition }) => total + grams * composition[part], 0);

/** Where a file declares glucose solids without saying which: an ordinary confectioner's syrup. */
const usualDe = 42;

/** Everything stirred together. Grams; ingredients of the same DE are one entry. */
export const syrupFrom = (ingredients: readonly Part[]): Syrup => {
  const byDe = new Map<number, number>();
  for (const { grams, de, composition } of ingredients) {
    if (composition.glucoseSolids <= 0) continue;
    const known = de ?? usualDe;
    byDe.set(known, (byDe.get(known) ?? 0) + grams * composition.glucoseSolids);
  }
  return {
    sucroseGrams: sum(ingredients, 'sucrose'),
    glucoseSolids: [...byDe].map(([de, grams]) => ({ grams, de })),
    invertGrams: sum(ingredients, 'invert'),
    saltGrams: sum(ingredients, 'salt'),
    waterGrams: sum(ingredients, 'water'),
    fatGrams: sum(ingredients, 'fat'),
    inertGrams: sum(ingredients, 'other'),
  };
};

/** The syrup in the pot, before heating: everything that goes in at mix and boil. Grams. */
export const syrupOf = (recipe: Recipe): Syrup => syrupFrom(recipe.ingredients.filter(boils));

/** What is added after the boil (flavour, fold, pull), as a syrup of its own. Grams. */
export const laterOf = (recipe: Recipe): Syrup =>
  syrupFrom(recipe.ingredients.filter((ingredient) => !boils(ingredient)));

/** Two syrups poured together. */
export const together = (one: Syrup, other: Syrup): Syrup => ({
  sucroseGrams: one.sucroseGrams + other.sucroseGrams,
  glucoseSolids: [...one.glucoseSolids, ...other.glucoseSolids],
  invertGrams: one.invertGrams + other.invertGrams,
  saltGrams: one.saltGrams + other.saltGrams,
  waterGrams: one.waterGrams + other.waterGrams,
  fatGrams: one.fatGrams + other.fatGrams,
  inertGrams: one.inertGrams + other.inertGrams,
});
