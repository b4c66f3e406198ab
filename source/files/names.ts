import { join } from 'node:path';
import { escapeForTerminal } from '../units/escape.js';

const longestShown = 300;

/** A file name or path as it may be printed: on one line, nothing hidden, at most 300 characters. */
export const shownPath = (path: string): string => {
  const shown = escapeForTerminal(path);
  return shown.length <= longestShown ? shown : `${shown.slice(0, 140)}...${shown.slice(-150)}`;
};

const plain = /^[\p{L}\p{N}][\p{L}\p{N}._ -]{0,99}$/u;

/** A name that is one file in one folder and nothing else: letters, digits, `.`, `_`, `-`, space; up to 100 characters. */
export const isPlainName = (name: string): boolean => plain.test(name) && !name.includes('..');

/** `name` in `folder`, or null when the name could lead anywhere else. */
export const pathInside = (folder: string, name: string): string | null =>
  isPlainName(name) ? join(folder, name) : null;
