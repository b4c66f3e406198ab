import type { TextProps } from 'ink';
import type { Look } from './looks.js';

/** What is behind the text, where it is known: most terminals do not tell. */
export type Background = 'dark' | 'light' | 'unknown';
/** How many colours the terminal has: none, its own sixteen, or enough for colours of our own. */
export type Depth = 'none' | 'sixteen' | 'many';

export type Paint = Pick<TextProps, 'bold' | 'inverse' | 'color' | 'backgroundColor'>;
export type Paints = Readonly<Record<Look, Paint>>;

const block: Paint = { bold: true, inverse: true };

/** Weight and marks alone: what is faint is only not bold, because terminals dim to less than can be read. */
export const monochrome: Paints = {
  plain: {},
  strong: { bold: true },
  faint: {},
  key: { bold: true },
  due: block,
  'alarm block': block,
  alarm: { bold: true },
  'alarm letters': { bold: true },
  'caution block': block,
  caution: { bold: true },
  entry: { bold: true },
};

/** The terminal's own red and yellow, which nobody can know; text only on them, never in them. */
const sixteen: Paints = {
  ...monochrome,
  due: { bold: true, color: 'black', backgroundColor: 'yellow' },
  'alarm block': { bold: true, color: 'whiteBright', backgroundColor: 'red' },
  'alarm letters': { bold: true, color: 'whiteBright', backgroundColor: 'red' },
  'caution block': { bold: true, color: 'black', backgroundColor: 'yellow' },
};

/** Our own: a block brings its background along, so that it is the same on any. */
const anyBackground: Paints = {
  ...monochrome,
  due: { bold: true, color: '#000000', backgroundColor: '#ffc400' },
  'alarm block': { bold: true, color: '#ffffff', backgroundColor: '#960018' },
  // No red is far enough from every dark and every light background, for all eyes.
  'alarm letters': { bold: true, color: '#ffffff', backgroundColor: '#960018' },
  'caution block': { bold: true, color: '#000000', backgroundColor: '#ffc400' },
};

const many: Readonly<Record<Background, Paints>> = {
  unknown: anyBackground,
  dark: {
    ...anyBackground,
    faint: { color: '#b2b2b2' },
    alarm: { bold: true, color: '#ff9e96' },
    'alarm letters': { bold: true, color: '#ff9e96' },
    caution: { bold: true, color: '#ffd75f' },
  },
  light: {
    ...anyBackground,
    faint: { color: '#585858' },
    alarm: { bold: true, color: '#960018' },
    'alarm letters': { bold: true, color: '#960018' },
    caution: { bold: true, color: '#6b4700' },
  },
};

/**
 * Colours by what a piece of text is. Each is at least 4.5 to 1 against what is behind it (WCAG 2.2, success
 * criterion 1.4.3), also as it is seen without the red, the green or the blue receptors; docs/LEGIBILITY.md has the
 * numbers, a test computes them.
 */
export const paintsFor = (depth: Depth, background: Background): Paints => {
  if (depth === 'none') return monochrome;
  return depth === 'sixteen' ? sixteen : many[background];
};

/** Darker ones of the sixteen are a dark background. */
const darkest = 6;
const darkGrey = 8;

/** "15;0", foreground and background of the sixteen, as some terminals tell in COLORFGBG. */
export const backgroundIn = (env: NodeJS.ProcessEnv): Background => {
  const number = /;(\d{1,2})$/.exec(env.COLORFGBG ?? '')?.[1];
  if (number === undefined || Number(number) > 15) return 'unknown';
  return Number(number) <= darkest || Number(number) === darkGrey ? 'dark' : 'light';
};

/** From the bits of a colour, as Node tells them of a terminal: 1, 4, 8 or 24. */
export const depthOf = (bits: number): Depth => {
  if (bits < 4) return 'none';
  return bits === 4 ? 'sixteen' : 'many';
};
