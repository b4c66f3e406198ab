export const hazardTexts = {} as const;
