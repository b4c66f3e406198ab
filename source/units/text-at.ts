/** A text by its place, also a group of a match; '' where there is none or where the group took no part. */
export const textAt = (texts: readonly (string | undefined)[], place: number): string => texts[place] ?? '';
