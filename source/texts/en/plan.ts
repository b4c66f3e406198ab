import { kitchenAskTexts, kitchenNoteTexts } from './kitchens.js';
import { batchNoteTexts, planProblemTexts } from './batch.js';
import { recipeNoteTexts, substitutionTexts } from './recipes.js';
export const planTexts = {
  ...batchNoteTexts,
  ...planProblemTexts,
  ...recipeNoteTexts,
  ...kitchenNoteTexts,
  ...kitchenAskTexts,
  ...substitutionTexts,
} as const;
