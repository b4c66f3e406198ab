import type { Kitchen } from '../kitchen/kitchen.js';
import type { Recipe } from '../recipe/recipe.js';
import { scaleRecipe } from '../recipe/scale.js';
import type { Batch } from './batch.js';
import { type BatchOptions, batchOf } from './batch-of.js';

/** How much is wanted. Children are counted among the guests. */
export type Want =
  | { readonly kind: 'pieces'; readonly pieces: number }
  | { readonly kind: 'guests'; readonly guests: number; readonly children: number }
  | { readonly kind: 'batch'; readonly factor: number }
  | { readonly kind: 'pot'; readonly litres: number };

/**
 * What one guest pulls, grams: about six pieces of 7 g, a walnut-sized lump that a first-timer can work in ten minutes;
 * a child's is smaller. Our judgement.
 */
export const portionGrams = { adult: 40, child: 25 } as const;

/** Grams in the box that the guests' portions ask for. */
export const gramsForGuests = (guests: number, children: number): number =>
  (guests - children) * portionGrams.adult + children * portionGrams.child;

const factorFor = (batch: Batch, want: Want): number => {
  switch (want.kind) {
    case 'batch':
      return want.factor;
    case 'pieces':
      return (want.pieces * batch.recipe.piece.grams) / batch.yield.expectedGrams.typical;
    case 'guests':
      return gramsForGuests(want.guests, want.children) / batch.yield.expectedGrams.typical;
    case 'pot':
      return want.litres / batch.pot.neededLitres;
  }
};

/**
 * The recipe in the size that is wanted, here and today: everything by one factor, because what a batch gives and the
 * pot it needs grow in proportion. Sizes count typical losses. `want` is positive and finite.
 */
export const scaledFor = (
  recipe: Recipe,
  kitchen: Kitchen,
  want: Want,
  options: BatchOptions = {},
): { readonly recipe: Recipe; readonly factor: number } => {
  const factor = factorFor(batchOf(recipe, kitchen, options), want);
  return { recipe: scaleRecipe(recipe, factor), factor };
};
