import { join } from 'node:path';

// Controls, zero-width and bidirectional marks, line and paragraph separators, lone surrogates:
// what would move the cursor, hide itself or turn the rest of the line around.
const unsafe =
  /[\u0000-\u001f\u007f-\u009f\u00ad\u061c\u180e\u200b-\u200f\u2028-\u202e\u2060-\u206f\ufeff\ufff9-\ufffb]|\p{Cs}/gu;

const longestShown = 300;

/** A file name or path as it may be printed: one line, nothing hidden ("a\nb" → "a\u{a}b"), at most 300 characters. */
export const shownPath = (path: string): string => {
  const shown = path.replace(unsafe, (mark) => `\\u{${(mark.codePointAt(0) ?? 0).toString(16)}}`);
  return shown.length <= longestShown ? shown : `${shown.slice(0, 140)}...${shown.slice(-150)}`;
};

const plain = /^[\p{L}\p{N}][\p{L}\p{N}._ -]{0,99}$/u;

/** A name that is one file in one folder and nothing else: letters, digits, `.`, `_`, `-`, space; up to 100 characters. */
export const isPlainName = (name: string): boolean => plain.test(name) && !name.includes('..');

/** `name` in `folder`, or null when the name could lead anywhere else. */
export const pathInside = (folder: string, name: string): string | null =>
  isPlainName(name) ? join(folder, name) : null;
