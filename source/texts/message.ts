import type { Printer } from '../units/printer.js';
import { en } from './en.js';

/** A language: every sentence by id, each a string or a function of SI values and a printer. */
export type Texts = {
  readonly [Id in keyof typeof en]: (typeof en)[Id] extends (...inputs: infer Inputs) => string
    ? (...inputs: Inputs) => string
    : string;
};

export type TextId = keyof Texts;

/** The SI values that the sentence `Id` needs; `undefined` for a sentence without any. */
export type ValuesOf<Id extends TextId> = Texts[Id] extends (values: infer Values, printer: Printer) => string
  ? Values
  : undefined;

/**
 * What is to be said, before it is words: an id of a text and its SI values.
 * Celsius here is the syrup's true temperature today; the printer turns it into the number on the dial.
 */
export type Message = { readonly id: TextId; readonly values?: unknown };

/** Make a message whose values fit its text (checked by the compiler). */
export const message = <Id extends TextId>(
  id: Id,
  ...values: ValuesOf<Id> extends undefined ? [] : [ValuesOf<Id>]
): Message => (values.length === 0 ? { id } : { id, values: values[0] });

/** The sentence of a message in a language, with numbers as `printer` writes them. */
export const words = (said: Message, printer: Printer, texts: Texts = en): string => {
  const text = texts[said.id] as string | ((values: unknown, printer: Printer) => string);
  return typeof text === 'string' ? text : text(said.values, printer);
};
