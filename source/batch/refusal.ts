import { airOf, type Checks, noChecks } from '../kitchen/air.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import type { Recipe } from '../recipe/recipe.js';
import { dissolvedGrams, pressureRangePascal } from '../sugar/syrup.js';
import { type Message, message } from '../texts/message.js';
import { syrupOf } from './syrup-of.js';

/** Why no plan can be made of this, in a sentence; null where one can. `batchOf` holds for everything not refused. */
export const refusalOf = (recipe: Recipe, kitchen: Kitchen, checks: Checks = noChecks): Message | null => {
  if (!(dissolvedGrams(syrupOf(recipe)) > 0)) return message('plan.bad.nothing-boils');
  const { pressurePascal } = airOf(kitchen, checks);
  const [low, high] = pressureRangePascal;
  return pressurePascal < low || pressurePascal > high
    ? message('plan.bad.air', { pressurePascal, lowPascal: low, highPascal: high })
    : null;
};
