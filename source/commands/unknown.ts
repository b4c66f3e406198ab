import { nearest } from '../recipe/items.js';
import { message, words } from '../texts/message.js';
import { plainPrinter } from './io.js';
import { UnknownOption } from './options.js';

export const unknownCommand = (
  found: string,
  names: readonly string[],
  err: (text: string) => void,
): number => {
  err(
    `${words(message('command.unknown', { found, nearest: nearest(found, names), names }), plainPrinter)}\n`,
  );
  return 2;
};

/** Says which option there is not, and which there are; ends with 2. Null for any other error. */
export const unknownOption = (
  error: unknown,
  command: string,
  err: (text: string) => void,
): number | null => {
  if (!(error instanceof UnknownOption)) return null;
  const { found, names } = error;
  const said = message('command.unknown-option', { found, command, nearest: nearest(found, names), names });
  err(`${words(said, plainPrinter)}\n`);
  return 2;
};
