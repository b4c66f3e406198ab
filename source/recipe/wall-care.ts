import { itemById } from './items.js';
import type { Ingredient, Recipe } from './recipe.js';

/** What keeps sugar off the wall of the pot. `none-late-stir`: no lid, no brush; scraped cold and stirred late. */
export type WallCare = 'lid' | 'brush' | 'none-late-stir';

const inThePot = (ingredient: Ingredient): boolean =>
  ingredient.phase === 'mix' || ingredient.phase === 'boil';

/** An item declared in the file counts as clear when nothing in it clouds, foams or scorches. */
const isClear = (ingredient: Ingredient): boolean =>
  itemById(ingredient.item)?.clear ??
  (!ingredient.scorches && ingredient.composition.fat === 0 && ingredient.composition.other <= 0.005);

/**
 * The lid for 2-3 min belongs to clear syrups only; under it molasses, honey, milk and cream climb out of the
 * pot, and starch catches. Sources: Cakes, Cookies and Confections (California Home Economics Association, 1920)
 * for the lid; Bradley, The Candy Cook Book (1917), ch. 7 for late stirring; brush for starch and butter: our
 * judgement.
 */
export const wallCare = (recipe: Recipe): WallCare => {
  const boiled = recipe.ingredients.filter(inThePot);
  if (recipe.stir === 'late' || boiled.some((ingredient) => ingredient.scorches)) return 'none-late-stir';
  return boiled.every(isClear) ? 'lid' : 'brush';
};
