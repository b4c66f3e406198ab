import { kitchenAskTexts, kitchenNoteTexts } from './kitchens.js';
import { batchNoteTexts, planProblemTexts } from './batch.js';
import { planExplainTexts } from './plan-explain.js';
import { planSheetTexts } from './plan-sheet.js';
import { recipeNoteTexts, substitutionTexts } from './recipes.js';
export const planTexts = {
  ...batchNoteTexts,
  ...planProblemTexts,
  ...planSheetTexts,
  ...planExplainTexts,
  ...recipeNoteTexts,
  ...kitchenNoteTexts,
  ...kitchenAskTexts,
  ...substitutionTexts,
} as const;
