import { escapeForTerminal } from '../units/escape.js';

/** What somebody typed or named, as it is said again: harmless to a terminal, of so many characters at most. */
export const quotedUpTo =
  (most: number) =>
  (text: string): string =>
    `"${escapeForTerminal(text.slice(0, most))}"`;

export const quoted = quotedUpTo(Number.POSITIVE_INFINITY);

/** The same, with a sign that it goes on. */
export const quotedBeginning = (typed: string): string =>
  `"${escapeForTerminal(typed.length > 60 ? `${typed.slice(0, 57)}...` : typed)}"`;

/** A path by both its ends, of 60 characters at most. */
export const quotedPath = (path: string): string => {
  const shown = escapeForTerminal(path);
  return `"${shown.length <= 60 ? shown : `${shown.slice(0, 30)}...${shown.slice(-25)}`}"`;
};

/** The beginning of a line that a machine wrote. */
export const quotedLine = (line: string): string => {
  const shown = escapeForTerminal(line.trim());
  return `"${shown.length <= 32 ? shown : `${shown.slice(0, 32)}...`}"`;
};

/** What somebody wrote, without quotes: a name on a page, a word on a label. */
export const own = (text: string): string => escapeForTerminal(text).trim();
