import { nearest } from '../recipe/items.js';
import { message, words } from '../texts/message.js';
import { plainPrinter } from './io.js';

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
