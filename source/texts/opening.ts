import type { Language } from '../units/language.js';

/**
 * What stands there while the rest is loaded, in letters that every terminal has. Apart from the other texts because
 * nothing else may be loaded for it.
 */
export const openingLine: Readonly<Record<Language, string>> = {
  en: 'One moment.   ! trouble   ? keys   q leave',
  de: 'Einen Moment.   ! Problem   ? Tasten   q verlassen',
};
