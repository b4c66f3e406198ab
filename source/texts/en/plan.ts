import { recipeNoteTexts, substitutionTexts } from './recipes.js';
export const planTexts = {
  ...recipeNoteTexts,
  ...substitutionTexts,
} as const;
