import { openingLine } from '../texts/opening.js';
import type { Language } from '../units/language.js';

const keepPlace = '\u001b7';
const backThere = '\u001b8';
const clearedBelow = '\u001b[J';

let standsIn: NodeJS.WriteStream | null = null;

/**
 * Loading takes longer than a person likes to look at nothing. On a terminal that can take it away again: not where the
 * line would break, and on the last row move everything up.
 */
export const sayOpening = (stdout: NodeJS.WriteStream, language: Language): void => {
  const line = openingLine[language];
  if (stdout.columns <= line.length) return;
  stdout.write(`${keepPlace}${line}`);
  standsIn = stdout;
};

/** Before anything else is written: the line is as it was, with whatever stood there before. */
export const takeOpeningAway = (): void => {
  standsIn?.write(`${backThere}${clearedBelow}`);
  standsIn = null;
};
