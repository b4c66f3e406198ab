export const planTexts = {} as const;
