/**
 * Words of a sentence as they are spoken: numbers count as one word of as many syllables as their digits are few, signs
 * as none.
 */
const wordsIn = (text: string): readonly string[] =>
  text
    .replaceAll(/°[CF]/g, ' degrees ')
    .split(/[^\p{L}\p{N}']+/u)
    .filter((word) => word !== '');

const vowelRuns = /[aeiouy]+/g;

/** Syllables by rule: runs of vowels, without a silent e at the end; at least one. Numbers: one for each digit. */
export const syllablesIn = (word: string): number => {
  if (/^\d/.test(word)) return word.replaceAll(/\D/g, '').length;
  const plain = word.toLowerCase().replaceAll("'", '');
  const silent =
    /[^aeiouyl]es?$|[^aeiouydt]ed$|[aeiouy][^aeiouy]les$/.test(plain) && !/(s|x|z|ch|sh|c|g)es$/.test(plain);
  const runs = plain.match(vowelRuns)?.length ?? 0;
  return Math.max(1, runs - (silent ? 1 : 0));
};

const sentencesIn = (text: string): readonly string[] =>
  text.split(/[.!?:;](?:\s|$)/).filter((sentence) => wordsIn(sentence).length > 0);

/**
 * School grade by Flesch and Kincaid: 0.39 words a sentence + 11.8 syllables a word - 15.59. Kincaid, Fishburne,
 * Rogers & Chissom 1975, Derivation of New Readability Formulas for Navy Enlisted Personnel, Research Branch Report
 * 8-75. A twelve-year-old is in grade 6 or 7.
 */
export const fleschKincaidGrade = (texts: readonly string[]): number => {
  const sentences = texts.flatMap(sentencesIn);
  const words = sentences.flatMap(wordsIn);
  const syllables = words.reduce((sum, word) => sum + syllablesIn(word), 0);
  return 0.39 * (words.length / sentences.length) + 11.8 * (syllables / words.length) - 15.59;
};
