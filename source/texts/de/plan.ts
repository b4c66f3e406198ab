import { deBatchNotes, dePlanProblems } from './batch.js';
import { deCard } from './card.js';
import { deKitchenAsk, deKitchenNotes, deKitchenShow } from './kitchens.js';
import { dePlanExplain } from './plan-explain.js';
import { dePlanSheet } from './plan-sheet.js';
import { deRecipeNotes, deShelf, deSubstitution } from './recipes.js';
import { deRunSheet } from './run-sheet.js';
import { deSyrup } from './syrup.js';

export const dePlan = {
  ...deBatchNotes,
  ...deCard,
  ...dePlanProblems,
  ...dePlanSheet,
  ...dePlanExplain,
  ...deRunSheet,
  ...deSyrup,
  ...deRecipeNotes,
  ...deKitchenNotes,
  ...deKitchenAsk,
  ...deKitchenShow,
  ...deSubstitution,
  ...deShelf,
} as const;
