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
  '½': '1/2',
  '¼': '1/4',
  '…': '...',
  '·': '/',
};

const umlauts: Readonly<Record<string, string>> = { ä: 'ae', ö: 'oe', ü: 'ue', ß: 'ss' };
/** As German writes them without their marks: "Öl" is "Oel", "LÖFFEL" is "LOEFFEL". */
const withoutUmlauts = (text: string): string =>
  text
    .replaceAll(/[äöüß]/g, (letter) => umlauts[letter] ?? letter)
    .replaceAll(/([ÄÖÜ])(\p{Ll})?/gu, (_, letter: string, next = '') => {
      const pair = umlauts[letter.toLowerCase()] ?? letter;
      return next === '' ? pair.toUpperCase() : `${pair[0]?.toUpperCase()}${pair.slice(1)}${next}`;
    });

/** Text for a terminal that shows nothing but ASCII, its lines kept; what has no like is a question mark. */
export const toAscii = (text: string): string =>
  withoutUmlauts(text.normalize('NFC'))
    .normalize('NFKD')
    .replaceAll(/\p{M}/gu, '')
    .replaceAll(/[^\n\u0020-\u007e]/gu, (sign) => inAscii[sign] ?? '?');
