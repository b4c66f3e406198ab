/** What a piece of text is, never how it looks. Meaning is always in its words or marks too. */
export type Look =
  | 'plain'
  | 'strong'
  | 'faint'
  | 'key'
  | 'due'
  /** Act now: a word on a block, and its sentence. */
  | 'alarm block'
  | 'alarm'
  /** The same in large letters. */
  | 'alarm letters'
  /** Know now, act soon. */
  | 'caution block'
  | 'caution'
  | 'entry';

/** The signs of the frame: in Unicode, each one cell wide everywhere but in East Asian locales; and in ASCII. */
export type Signs = {
  readonly axis: string;
  readonly tick: string;
  readonly band: string;
  readonly here: string;
  readonly ghost: string;
  readonly above: string;
  readonly below: string;
  readonly full: string;
  readonly halves: readonly string[];
  readonly empty: string;
  readonly warning: string;
  readonly bullet: string;
  readonly cursor: string;
  readonly rule: string;
};

export const unicodeSigns: Signs = {
  axis: '│',
  tick: '┤',
  band: '▒▒',
  here: '◄',
  ghost: '◁',
  above: '▲',
  below: '▼',
  full: '█',
  halves: ['', '▏', '▎', '▍', '▌', '▋', '▊', '▉'],
  empty: '░',
  warning: '▲',
  bullet: '·',
  cursor: '▌',
  rule: '─',
};

export const asciiSigns: Signs = {
  axis: '|',
  tick: '+',
  band: '##',
  here: '<',
  ghost: '(',
  above: '^',
  below: 'v',
  full: '#',
  halves: [''],
  empty: '.',
  warning: '!',
  bullet: '-',
  cursor: '_',
  rule: '-',
};

const inAscii: Readonly<Record<string, string>> = {
  '°': '',
  '’': "'",
  '‘': "'",
  '“': '"',
  '”': '"',
  '–': '-',
  '—': '-',
  '×': 'x',
  // What the decomposition of "½" has between its digits.
  '⁄': '/',
  '·': '/',
};

/** As German writes them without their marks: "Öl" is "Oel", "LÖFFEL" is "LOEFFEL". */
const umlauts: readonly (readonly [letter: RegExp, pair: string])[] = [
  [/ä/g, 'ae'],
  [/ö/g, 'oe'],
  [/ü/g, 'ue'],
  [/ß/g, 'ss'],
  [/Ä(?=\p{Ll})/gu, 'Ae'],
  [/Ö(?=\p{Ll})/gu, 'Oe'],
  [/Ü(?=\p{Ll})/gu, 'Ue'],
  [/Ä/g, 'AE'],
  [/Ö/g, 'OE'],
  [/Ü/g, 'UE'],
];
const withoutUmlauts = (text: string): string =>
  umlauts.reduce((told, [letter, pair]) => told.replaceAll(letter, pair), text);

/** Text for a terminal that shows nothing but ASCII, its lines kept; what has no like is a question mark. */
export const toAscii = (text: string): string =>
  withoutUmlauts(text.normalize('NFC'))
    .replaceAll(/(?<=\d)(?=[¼½¾⅐-⅞])/g, ' ')
    .normalize('NFKD')
    .replaceAll(/\p{M}/gu, '')
    .replaceAll(/[^\n\u0020-\u007e]/gu, (sign) => inAscii[sign] ?? '?');
