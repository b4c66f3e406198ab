import {
  type Color,
  filterDeficiencyDeuter,
  filterDeficiencyProt,
  filterDeficiencyTrit,
  formatHex,
  parse,
  wcagContrast,
} from 'culori';
import type { Look } from '../source/screen/looks.js';
import { type Background, type Paint, type Paints, paintsFor } from '../source/screen/palette.js';

const seen = (receptors: (colour: Color) => Color | undefined, colour: string): string | undefined => {
  const parsed = parse(colour);
  return parsed === undefined ? undefined : formatHex(receptors(parsed));
};

/** How colours are seen: WCAG's contrast by culori, receptors missing by its simulation after Machado et al. (2009). */
export const eyes = {
  'all receptors': (colour: string) => colour,
  'without red': (colour: string) => seen(filterDeficiencyProt(1), colour),
  'without green': (colour: string) => seen(filterDeficiencyDeuter(1), colour),
  'without blue': (colour: string) => seen(filterDeficiencyTrit(1), colour),
} as const;

/** Backgrounds and text of terminals as they come: plain, and those of widely used colour schemes. From memory. */
export const terminals: Readonly<
  Record<Exclude<Background, 'unknown'>, readonly { readonly behind: string; readonly text: string }[]>
> = {
  dark: [
    { behind: '#000000', text: '#cccccc' },
    { behind: '#1e1e1e', text: '#d4d4d4' },
    { behind: '#002b36', text: '#93a1a1' },
    { behind: '#282828', text: '#ebdbb2' },
    { behind: '#2e3440', text: '#d8dee9' },
  ],
  light: [
    { behind: '#ffffff', text: '#000000' },
    { behind: '#fdf6e3', text: '#586e75' },
    { behind: '#f0f0f0', text: '#333333' },
    { behind: '#eeeeee', text: '#222222' },
  ],
};

/** The terminal's own sixteen differ: black, red, yellow and bright white as common terminals have them. From memory. */
export const sixteens = {
  xterm: { black: '#000000', red: '#cd0000', yellow: '#cdcd00', whiteBright: '#ffffff' },
  VGA: { black: '#000000', red: '#aa0000', yellow: '#aa5500', whiteBright: '#ffffff' },
  'Windows console': { black: '#0c0c0c', red: '#c50f1f', yellow: '#c19c00', whiteBright: '#f2f2f2' },
  'GNOME terminal': { black: '#171421', red: '#c01c28', yellow: '#a2734c', whiteBright: '#ffffff' },
  Solarized: { black: '#073642', red: '#dc322f', yellow: '#b58900', whiteBright: '#fdf6e3' },
} as const;

export const looks = Object.keys(paintsFor('none', 'unknown')) as readonly Look[];
export const blocks: readonly Look[] = ['due', 'alarm block', 'caution block'];

/** Text and what is behind it, of what brings one colour at least of its own; null where both are the terminal's. */
export const pairOf = (
  { color, backgroundColor }: Paint,
  terminal: { readonly behind: string; readonly text: string },
): readonly [string, string] | null =>
  color === undefined && backgroundColor === undefined
    ? null
    : [color ?? terminal.text, backgroundColor ?? terminal.behind];

type Eye = (colour: string) => string | undefined;

export const seenContrast = ([text, behind]: readonly [string, string], eye: Eye): number =>
  wcagContrast(eye(text) ?? text, eye(behind) ?? behind);

/** The least contrast of a look over all terminals of a background. */
export const leastContrast = (paints: Paints, look: Look, background: 'dark' | 'light', eye: Eye): number =>
  Math.min(
    ...terminals[background].map((terminal) => {
      const pair = pairOf(paints[look], terminal);
      return pair === null ? Number.POSITIVE_INFINITY : seenContrast(pair, eye);
    }),
  );

const cell = (ratio: number): string => (Number.isFinite(ratio) ? ratio.toFixed(1) : "the terminal's own");

/** The table of docs/LEGIBILITY.md. */
export const contrastMarkdown = (): string => {
  const names = Object.keys(eyes) as (keyof typeof eyes)[];
  const rows = (['dark', 'light'] as const).flatMap((background) =>
    looks
      .filter((look) => Object.keys(paintsFor('many', background)[look]).some((key) => /color/i.test(key)))
      .map((look) => {
        const ratios = names.map((eye) =>
          cell(leastContrast(paintsFor('many', background), look, background, eyes[eye])),
        );
        return `| ${background} | ${look} | ${ratios.join(' | ')} |`;
      }),
  );
  return [
    `| background | what | ${names.join(' | ')} |`,
    `| --- | --- | ${names.map(() => '---:').join(' | ')} |`,
    ...rows,
  ].join('\n');
};
