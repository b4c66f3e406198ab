export const planExplainTexts = {} as const;
