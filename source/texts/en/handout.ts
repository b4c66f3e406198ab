import { learnedTexts } from './learned.js';

export const handoutTexts = {
  ...learnedTexts,
} as const;
