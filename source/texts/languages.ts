import type { Language } from '../units/language.js';
import { de } from './de.js';
import { en } from './en.js';
import type { Texts } from './texts.js';

/** Every language by its id. What is not translated yet is said in English. */
export const languages: Readonly<Record<Language, Texts>> = { en, de: { ...en, ...de } };
