export const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

/** The words as a sentence of their own. */
export const sentence = (words: string): string => `${capital(words)}.`;
