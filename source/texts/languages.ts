import type { Language } from '../units/language.js';
import { en } from './en.js';
import type { Texts } from './texts.js';

/** Every other language by its id, each whole: a sentence that is missing fails the type check. */
const others: Readonly<Record<Exclude<Language, 'en'>, () => Promise<Texts>>> = {
  de: async () => (await import('./de.js')).de,
};

/** English is always at hand: what a program reads is English. */
const atHand: Partial<Record<Language, Texts>> = { en };

/** Loads a language before the first sentence is said in it. Apart, for nobody waits for sentences that nobody reads. */
export const bring = async (language: Language): Promise<void> => {
  if (language !== 'en') atHand[language] ??= await others[language]();
};

/** The sentences of a language; English for one that was not brought. */
export const textsIn = (language: Language): Texts => atHand[language] ?? en;
