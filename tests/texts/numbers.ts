import type { Language } from '../../source/units/language.js';

/** The numbers in a sentence, as text with a decimal point, sorted: what must be the same in every language. */
export const numbersIn = (text: string, language: Language): readonly string[] => {
  const joined = text
    .replaceAll(/(\d)\u00a0(?=\d{3})/g, '$1')
    .replaceAll(/\b(\d{1,3}),(?=\d{3}\b)/g, language === 'en' ? '$1' : '$1,');
  const plain = language === 'de' ? joined.replaceAll(/(\d),(?=\d)/g, '$1.') : joined;
  return [...plain.matchAll(/\d+(?:\.\d+)?/g)].map(([number]) => String(Number(number))).toSorted();
};
