import { scaleAmount } from './amount.js';
import type { Recipe } from './recipe.js';

/**
 * The same candy, `factor` times as much: every ingredient by the same factor, target and piece as they were.
 * `factor` is positive and finite, RangeError otherwise. Scaling by k and then by 1/k gives the grams back;
 * the amounts as written are rounded to what a spoon or a scale can show.
 */
export const scaleRecipe = (recipe: Recipe, factor: number): Recipe => {
  if (!(factor > 0 && Number.isFinite(factor)))
    throw new RangeError(`factor ${factor} is not a positive number`);
  if (factor === 1) return recipe;
  return {
    ...recipe,
    ingredients: recipe.ingredients.map((ingredient) => ({
      ...ingredient,
      grams: ingredient.grams * factor,
      amount: scaleAmount(ingredient.amount, factor),
    })),
  };
};
