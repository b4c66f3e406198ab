export const cookTexts = {} as const;
