/** The languages that people can read the program in. */
export const languageIds = ['en', 'de'] as const;

export type Language = (typeof languageIds)[number];

export const isLanguage = (found: string): found is Language =>
  (languageIds as readonly string[]).includes(found);
