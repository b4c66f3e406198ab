export const screenTexts = {} as const;
