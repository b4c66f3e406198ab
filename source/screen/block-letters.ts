import figlet from 'figlet';
import ascii9 from 'figlet/importable-fonts/ASCII 9.js';
import future from 'figlet/importable-fonts/Future.js';
import mono9 from 'figlet/importable-fonts/Mono 9.js';
import mono12 from 'figlet/importable-fonts/Mono 12.js';
import smallAscii9 from 'figlet/importable-fonts/Small ASCII 9.js';
import smallMono9 from 'figlet/importable-fonts/Small Mono 9.js';

/** Letters in heights of 3, 5, 6 and 8 rows, and a comma's tail. */
export type LetterSize = 'slim' | 'small' | 'large' | 'huge';

const fonts = {
  unicode: { slim: future, small: smallMono9, large: mono9, huge: mono12 },
  // The smallest and the largest have no like in ASCII.
  ascii: { slim: smallAscii9, small: smallAscii9, large: ascii9, huge: ascii9 },
} as const;

const loaded = new Set<string>();

const fontName = (size: LetterSize, ascii: boolean): string => {
  const name = `${ascii ? 'ascii' : 'unicode'} ${size}`;
  if (!loaded.has(name)) {
    // In the built program a font is unpacked by being made a text.
    figlet.parseFont(name, String(fonts[ascii ? 'ascii' : 'unicode'][size]));
    loaded.add(name);
  }
  return name;
};

const remembered = new Map<string, readonly string[]>();

/** One line of text as rows of block letters, without the empty rows above and below. */
const lettersOf = (text: string, size: LetterSize, ascii: boolean): readonly string[] => {
  const key = `${size}${ascii}${text}`;
  const known = remembered.get(key);
  if (known !== undefined) return known;
  const rows = figlet.textSync(text, { font: fontName(size, ascii) as never }).split('\n');
  const trimmed = rows.map((row) => row.trimEnd());
  while (trimmed.length > 0 && trimmed[0] === '') trimmed.shift();
  while (trimmed.length > 0 && trimmed.at(-1) === '') trimmed.pop();
  if (remembered.size > 2000) remembered.clear();
  remembered.set(key, trimmed);
  return trimmed;
};

/** Whether every letter of a text has a shape. */
export const canSpell = (text: string, size: LetterSize, ascii: boolean): boolean =>
  [...text].every((char) => /\s/.test(char) || lettersOf(char, size, ascii).length > 0);

/** Text of one or more lines in block letters; null where it is wider than `columns` or a letter has no shape. */
export const blockLetters = (
  text: string,
  size: LetterSize,
  columns: number,
  ascii: boolean,
): readonly string[] | null => {
  if (!canSpell(text, size, ascii)) return null;
  const blocks = text.split('\n').map((line) => lettersOf(line, size, ascii));
  const between = size === 'slim' ? [] : [''];
  const rows = blocks.flatMap((block, index) => (index === 0 ? block : [...between, ...block]));
  return rows.some((row) => [...row].length > columns) ? null : rows;
};
