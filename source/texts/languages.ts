import type { Language } from '../units/language.js';
import { de } from './de.js';
import { en } from './en.js';
import type { Texts } from './texts.js';

/** Every language by its id, each whole: a sentence that is missing fails the type check. */
export const languages: Readonly<Record<Language, Texts>> = { en, de };
