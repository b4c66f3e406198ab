import type { Language } from '../units/language.js';
import { helpPages as de } from './de/help.js';
import { helpPages as en } from './en/help.js';
import type { Translated } from './texts.js';

/** A page that is missing in a language fails the type check. */
const pages: Readonly<Record<Language, Translated<typeof en>>> = { en, de };

const isPage = (name: string): name is keyof typeof en => Object.hasOwn(en, name);

/** The page of a command, else of the program. Apart from the other texts: loaded when it is asked for. */
export const helpOf = (name: string, language: Language): string =>
  pages[language][isPage(name) ? name : 'program'];
