import type { Alternatives } from './alternatives.js';
import { consoleValues } from './console.js';
import { cookValues } from './cook.js';
import { cooksValues } from './cooks.js';
import { debriefValues } from './debrief.js';
import { fileValues } from './files.js';
import { planValues } from './plan.js';
import { recipeValues } from './recipes.js';
import { sheetValues } from './sheets.js';

/** A new sentence that is made of values fails the type check here until it has some. */
export const alternatives: Alternatives = {
  ...consoleValues,
  ...cookValues,
  ...cooksValues,
  ...debriefValues,
  ...fileValues,
  ...planValues,
  ...recipeValues,
  ...sheetValues,
};
