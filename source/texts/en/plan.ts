import { kitchenAskTexts, kitchenNoteTexts, kitchenShowTexts } from './kitchens.js';
import { batchNoteTexts, planProblemTexts } from './batch.js';
import { planExplainTexts } from './plan-explain.js';
import { planSheetTexts } from './plan-sheet.js';
import { recipeNoteTexts, shelfTexts, substitutionTexts } from './recipes.js';
import { syrupTexts } from './syrup.js';
export const planTexts = {
  ...batchNoteTexts,
  ...planProblemTexts,
  ...planSheetTexts,
  ...planExplainTexts,
  ...syrupTexts,
  ...recipeNoteTexts,
  ...kitchenNoteTexts,
  ...kitchenAskTexts,
  ...kitchenShowTexts,
  ...substitutionTexts,
  ...shelfTexts,
} as const;
