import { nearest } from '../recipe/items.js';
import { message } from '../texts/message.js';
import { type CommandIo, type ExitCode, fail } from './io.js';
import { UnknownOption } from './options.js';

export const unknownCommand = (found: string, names: readonly string[], io: CommandIo): ExitCode =>
  fail(io, 2, message('command.unknown', { found, nearest: nearest(found, names), names }));

/** Says which option there is not, and which there are; ends with 2. Null for any other error. */
export const unknownOption = (error: unknown, command: string, io: CommandIo): ExitCode | null => {
  if (!(error instanceof UnknownOption)) return null;
  const { found, names } = error;
  return fail(
    io,
    2,
    message('command.unknown-option', { found, command, nearest: nearest(found, names), names }),
  );
};
