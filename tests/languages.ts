import { bring } from '../source/texts/languages.js';
import { languageIds } from '../source/units/language.js';

/** The program loads the language of its reader; a test may read in any. */
for (const language of languageIds) await bring(language);
