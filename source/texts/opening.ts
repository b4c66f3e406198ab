import type { Language } from '../units/language.js';

/**
 * What stands there while the rest is loaded, in letters that every terminal has. Apart from the other texts because
 * nothing else may be loaded for it.
 */
export const openingLine: Readonly<Record<Language, string>> = {
  en: 'Loading the cook.   ! trouble   ? keys   q leave',
  de: 'Der Kochgang wird geladen.   ! Problem   ? Tasten   q verlassen',
};
