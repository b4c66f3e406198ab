import type { Printer } from '../units/printer.js';
import { textsIn } from './languages.js';
import type { Texts } from './texts.js';

export type { Texts } from './texts.js';

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

/** The sentence of a message, in the language and with numbers as `printer` writes them. */
export const words = (said: Message, printer: Printer): string => {
  const text = textsIn(printer.language)[said.id] as string | ((values: unknown, printer: Printer) => string);
  return typeof text === 'string' ? text : text(said.values, printer);
};
