import { readFileSync } from 'node:fs';
import { batchOf } from '../../source/batch/batch-of.js';
import { parseKitchen } from '../../source/kitchen/parse.js';
import { parseRecipe } from '../../source/recipe/parse.js';
import { type Moment, rehearse } from '../../source/rehearsal/rehearse.js';
import type { SurpriseName } from '../../source/rehearsal/surprises.js';

const read = () => {
  const recipe = parseRecipe(readFileSync('recipes/hill-hall-ginger-pull.yaml', 'utf8'), 'recipe');
  const kitchen = parseKitchen(readFileSync('recipes/kitchens/hill-hall.yaml', 'utf8'), 'kitchen');
  if ('problems' in recipe || 'problems' in kitchen) throw new Error('the bundled example cannot be read');
  return { recipe: recipe.recipe, kitchen: kitchen.kitchen };
};

/** The winter fair in the hill village hall. */
export const hall = read();
export const hallBatch = batchOf(hall.recipe, hall.kitchen);

export const rehearsal = (
  seed: number,
  surprise: SurpriseName | null = null,
  onTyped?: (moment: Moment) => void,
) => rehearse({ ...hall, seed, surprise, version: 'test', ...(onTyped === undefined ? {} : { onTyped }) });
