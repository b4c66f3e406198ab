export const problemTexts = {} as const;
