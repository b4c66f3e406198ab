import type { FileProblem } from '../recipe/document.js';
import { type Message, message, words } from '../texts/message.js';
import type { Language } from '../units/language.js';
import type { Printer } from '../units/printer.js';
import { printer } from '../units/printer.js';
import type { ClockHabit } from '../units/wall-clock.js';

/** Where a command writes, whole texts, each ending in a newline; and what it is read in: English where nothing is said. */
export type CommandIo = {
  readonly language?: Language | undefined;
  /** How times of day are read; left out where neither kitchen nor locale says. */
  readonly clock?: ClockHabit | undefined;
  out(text: string): void;
  err(text: string): void;
};

/** A file that was named by a person: its text, or why there is none. `wrongUse`: no such name, rather than unreadable. */
export type NamedText =
  | { readonly text: string; readonly name: string }
  | { readonly problem: Message; readonly wrongUse: boolean };

/** 0 success, 1 something failed or a file is unreadable or invalid, 2 wrong use. */
export type ExitCode = 0 | 1 | 2;

/** Without a kitchen behind it: Celsius, no correction. */
export const plainIn = ({ language }: Pick<CommandIo, 'language'>): Printer =>
  printer({ language, unit: 'C', toShownCelsius: (celsius) => celsius });

/** The same in English. */
export const plainPrinter: Printer = plainIn({});

/** Say one sentence on standard error and end. */
export const fail = (
  io: CommandIo,
  code: ExitCode,
  said: Message,
  print: Printer = plainIn(io),
): ExitCode => {
  io.err(`${words(said, print)}\n`);
  return code;
};

/** Say everything that is wrong with a file, one line each, and end. */
export const failFile = (io: CommandIo, problems: readonly FileProblem[]): ExitCode => {
  const print = plainIn(io);
  for (const { file, line, field, message: said } of problems)
    io.err(`${words(message('yaml.place', { file, line, field }), print)}${words(said, print)}\n`);
  return 1;
};
