import type { en } from './en.js';

/** The same sentences in another language: the same ids, and functions of the same values. */
export type Translated<Original> = {
  readonly [Id in keyof Original]: Original[Id] extends (...inputs: infer Inputs) => string
    ? (...inputs: Inputs) => string
    : string;
};

/** A language: every sentence by id, each a string or a function of SI values and a printer. */
export type Texts = Translated<typeof en>;
