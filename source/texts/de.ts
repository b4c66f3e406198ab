/** German: every sentence a person can read, by id. Divided as the English is. */
export const de = {};
