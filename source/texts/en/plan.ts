import { batchNoteTexts, planProblemTexts } from './batch.js';
import { cardTexts } from './card.js';
import { kitchenAskTexts, kitchenNoteTexts, kitchenShowTexts } from './kitchens.js';
import { planExplainTexts } from './plan-explain.js';
import { planSheetTexts } from './plan-sheet.js';
import { recipeNoteTexts, shelfTexts, substitutionTexts } from './recipes.js';
import { runSheetTexts } from './run-sheet.js';
import { syrupTexts } from './syrup.js';
export const planTexts = {
  ...batchNoteTexts,
  ...cardTexts,
  ...planProblemTexts,
  ...planSheetTexts,
  ...planExplainTexts,
  ...runSheetTexts,
  ...syrupTexts,
  ...recipeNoteTexts,
  ...kitchenNoteTexts,
  ...kitchenAskTexts,
  ...kitchenShowTexts,
  ...substitutionTexts,
  ...shelfTexts,
} as const;
