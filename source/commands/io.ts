import type { FileProblem } from '../recipe/document.js';
import { type Message, message, words } from '../texts/message.js';
import type { Printer } from '../units/printer.js';
import { printer } from '../units/printer.js';

/** Where a command writes: whole texts, each ending in a newline. */
export type CommandIo = {
  out(text: string): void;
  err(text: string): void;
};

/** A file that was named by a person: its text, or why there is none. `wrongUse`: no such name, rather than unreadable. */
export type NamedText =
  | { readonly text: string; readonly name: string }
  | { readonly problem: Message; readonly wrongUse: boolean };

/** 0 success, 1 something failed or a file is unreadable or invalid, 2 wrong use. */
export type ExitCode = 0 | 1 | 2;

/** Numbers without a kitchen behind them: Celsius, no correction. */
export const plainPrinter: Printer = printer({ unit: 'C', toShownCelsius: (celsius) => celsius });

/** Say one sentence on standard error and end. */
export const fail = (
  io: CommandIo,
  code: ExitCode,
  said: Message,
  print: Printer = plainPrinter,
): ExitCode => {
  io.err(`${words(said, print)}\n`);
  return code;
};

/** Say everything that is wrong with a file, one line each, and end. */
export const failFile = (io: CommandIo, problems: readonly FileProblem[]): ExitCode => {
  for (const { file, line, field, message: said } of problems)
    io.err(
      `${words(message('yaml.place', { file, line, field }), plainPrinter)}${words(said, plainPrinter)}\n`,
    );
  return 1;
};
