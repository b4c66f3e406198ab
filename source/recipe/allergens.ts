import { itemById } from './items.js';
import type { Ingredient, Recipe } from './recipe.js';

type Allergens = Recipe['allergens'];

const none: Allergens = { contains: [], check: [], unknown: false };

/** What hands and surface bring. Starch is taken as cornstarch. */
const fromGrease = (grease: Recipe['hands']): Allergens =>
  grease === 'dry' ? none : (itemById(grease === 'starch' ? 'cornstarch' : grease)?.allergens ?? none);

const fromDust = (dust: Recipe['dust']): Allergens =>
  dust === 'none' ? none : (itemById(dust === 'starch' ? 'cornstarch' : dust)?.allergens ?? none);

/** All that is named by any of them; what is contained need not be checked as well. */
export const joinAllergens = (all: readonly Allergens[]): Allergens => {
  const contains = [...new Set(all.flatMap((one) => one.contains))];
  const check = [...new Set(all.flatMap((one) => one.check))].filter((word) => !contains.includes(word));
  return { contains, check, unknown: all.some((one) => one.unknown) };
};

/** The allergens of a recipe: what the file says, and what ingredients, hands, surface and dust bring. */
export const allergensOf = (
  ingredients: readonly Ingredient[],
  { hands, surface, dust }: Pick<Recipe, 'hands' | 'surface' | 'dust'>,
  own: Allergens = none,
): Allergens =>
  joinAllergens([
    own,
    ...ingredients.map((ingredient) => ingredient.allergens),
    fromGrease(hands),
    fromGrease(surface),
    fromDust(dust),
  ]);
