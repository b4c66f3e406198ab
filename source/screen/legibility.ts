import { blockLetters, type LetterSize } from './block-letters.js';

/**
 * Heights of capitals as an eye sees them, minutes of arc. 16 at least, 20 to 22 preferred: NUREG-0700 Rev. 2 (O'Hara,
 * Brown, Lewis & Persensky 2002, Human-System Interface Design Review Guidelines), 1.3.1-4; the same figures stand in
 * ISO 9241-3:1992 (its successor is ISO 9241-303) and in the FAA's human factors web course ("Character and symbol
 * size": below 18 legibility begins to fall). The guideline's 45 as an upper end for groups of characters is for reading
 * text at a desk; letters that shout may be larger.
 */
export const leastArcMinutes = 16;
export const preferredArcMinutes = 20;

/** A screen that the terminal fills without a frame, millimetres. */
export type Screen = { readonly widthMillimetres: number; readonly heightMillimetres: number };

/** A laptop of 14 inches, 16:9. */
export const laptop: Screen = { widthMillimetres: 310, heightMillimetres: (310 * 9) / 16 };
export const twoMetres = 2000;

/** The angle under which a height is seen from a distance, both in the same unit, in minutes of arc. */
export const arcMinutes = (height: number, distance: number): number =>
  (2 * Math.atan(height / (2 * distance)) * 180 * 60) / Math.PI;

/** Where the ink of a sign begins and ends in its cell: 0 its upper edge, 1 its lower. */
type Ink = readonly [top: number, end: number];

const blocks: readonly (readonly [signs: string, ink: Ink])[] = [
  ['█▌▐▙▛▜▟▚▞┃┣┫╋╂', [0, 1]],
  ['▀▘▝┗┛┻╹', [0, 0.5]],
  ['▄▖▗┏┓┳╻', [0.5, 1]],
  ['━╸╺', [0.5, 0.5]],
  // Letters of a usual terminal font, as shares of the cell: ground line at 0.8, capitals up to 0.1. Our judgement.
  ['"\'`', [0.1, 0.4]],
  ['.,', [0.7, 0.9]],
  ['mnbd', [0.3, 0.8]],
];
const asLetter: Ink = [0.1, 0.8];

const inkOf = (sign: string): Ink => blocks.find(([signs]) => signs.includes(sign))?.[1] ?? asLetter;

/** Rows of the screen from the highest to the lowest ink of what is drawn; 0 where there is none. */
export const inkedRows = (rows: readonly string[]): number => {
  const edges = rows.flatMap((row, index) =>
    [...row].filter((sign) => sign !== ' ').map((sign) => ({ index, ink: inkOf(sign) })),
  );
  if (edges.length === 0) return 0;
  const tops = edges.map(({ index, ink: [top] }) => index + top);
  const ends = edges.map(({ index, ink: [, end] }) => index + end);
  return Math.max(...ends) - Math.min(...tops);
};

/** How many rows a capital is high, part rows counted. */
export const capitalRows = (size: LetterSize, ascii: boolean): number =>
  inkedRows(blockLetters('H', size, 100, ascii) ?? []);

/** The height of a block letter's capital as it is seen, minutes of arc. */
export const seenArcMinutes = (
  size: LetterSize,
  {
    rows,
    ascii = false,
    screen = laptop,
    distance = twoMetres,
  }: {
    readonly rows: number;
    readonly ascii?: boolean;
    readonly screen?: Screen;
    readonly distance?: number;
  },
): number => arcMinutes((capitalRows(size, ascii) * screen.heightMillimetres) / rows, distance);

/** Windows that people have, as characters. */
const windows = [
  { columns: 80, rows: 24 },
  { columns: 100, rows: 30 },
  { columns: 120, rows: 36 },
  { columns: 120, rows: 40 },
  { columns: 160, rows: 48 },
  { columns: 200, rows: 60 },
] as const;

const sizes = ['slim', 'small', 'large', 'huge'] as const;

/** The heights of all letters in all windows: a table in Markdown, for docs/LEGIBILITY.md. */
export const heightsMarkdown = (): string => {
  const row = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
  const seen = (height: number, distance = twoMetres): string => arcMinutes(height, distance).toFixed(1);
  const capital = (size: LetterSize): string => `${size}: ${capitalRows(size, false)} rows`;
  return [
    row(['window', 'one row', ...sizes.map(capital), 'ASCII']),
    row(['---', '---:', ...sizes.map(() => '---:'), '---:']),
    ...windows.map(({ columns, rows }) =>
      row([
        `${columns}x${rows}`,
        `${(laptop.heightMillimetres / rows).toFixed(2)} mm, ${seen(laptop.heightMillimetres / rows)}'`,
        ...sizes.map((size) => `${seenArcMinutes(size, { rows }).toFixed(1)}'`),
        `${seenArcMinutes('small', { rows, ascii: true }).toFixed(1)}'`,
      ]),
    ),
  ].join('\n');
};
