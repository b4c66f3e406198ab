/** A number by its place; 0 where there is none. */
export const numberAt = (values: readonly number[], place: number): number => values[place] ?? 0;

/** A text by its place, also a group of a match; '' where there is none or where the group took no part. */
export const textAt = (texts: readonly (string | undefined)[], place: number): string => texts[place] ?? '';
