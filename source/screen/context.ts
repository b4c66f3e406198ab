import { type Message, words } from '../texts/message.js';
import type { Printer } from '../units/printer.js';
import { asciiSigns, type Signs, toAscii, unicodeSigns } from './looks.js';
import type { Shown } from './model.js';
import type { Paints } from './palette.js';

/** The signs that this terminal can show. */
export type Script = { readonly ascii: boolean };
/** How this terminal is written to. */
export type Style = Script & {
  readonly paints: Paints;
  /** Nothing moves by itself but what has to. */
  readonly still: boolean;
};
export type Size = { readonly columns: number; readonly rows: number };

/** What every part of the frame is drawn from. */
export type Context = {
  readonly shown: Shown;
  readonly ascii: boolean;
  readonly signs: Signs;
  /** A message in words that this terminal can show. */
  say(message: Message): string;
  /** The same with the other scale behind each temperature. */
  sayBoth(message: Message): string;
  /** Any other text that this terminal can show. */
  show(text: string): string;
};

/** Words as this terminal can show them. */
export const wordsFor = (printer: Printer, { ascii }: Script): Pick<Context, 'say' | 'show'> => {
  const show = ascii ? toAscii : (text: string): string => text;
  return { say: (message) => show(words(message, printer)), show };
};

export const contextOf = (shown: Shown, script: Script): Context => ({
  shown,
  ascii: script.ascii,
  signs: script.ascii ? asciiSigns : unicodeSigns,
  ...wordsFor(shown.printer, script),
  sayBoth: (message) => wordsFor(shown.printer.inBoth(), script).say(message),
});
