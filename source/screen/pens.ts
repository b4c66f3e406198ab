import type { Look } from './looks.js';
import type { Paint, Paints } from './palette.js';
import type { Line } from './text.js';

/** What switches a look on and off again. */
type Pen = { readonly on: string; readonly off: string };
export type Pens = Readonly<Record<Look, Pen>>;

const sgr = (code: string | number): string => `\u001b[${code}m`;

/** The sixteen by name: ECMA-48 (1991), 8.3.117, and the bright ones that came after it. */
const sixteen: Readonly<Record<string, number>> = { black: 30, red: 31, yellow: 33, whiteBright: 97 };
const toBehind = 10;

/** What a cube's six steps are in xterm's 256 colours (its source, 256colres.pl; from memory), and its 24 greys. */
const levels = [0, 95, 135, 175, 215, 255] as const;
const grey = { first: 232, darkest: 8, step: 10 } as const;

/** The nearest of the cube, or of the greys where the three are equal. */
const in256 = (red: number, green: number, blue: number): number => {
  const level = (value: number): number => {
    const away = levels.map((one) => Math.abs(one - value));
    return away.indexOf(Math.min(...away));
  };
  const isGrey = red === green && green === blue && red >= grey.darkest && red < levels[5];
  if (isGrey) return grey.first + Math.min(23, Math.round((red - grey.darkest) / grey.step));
  return 16 + 36 * level(red) + 6 * level(green) + level(blue);
};

const trueColorBits = 24;

const ink = (color: string, bits: number, behind: boolean): string => {
  const named = sixteen[color];
  if (named !== undefined) return sgr(named + (behind ? toBehind : 0));
  const part = (at: number): number => Number.parseInt(color.slice(at, at + 2), 16);
  const [red, green, blue] = [part(1), part(3), part(5)];
  const which = bits >= trueColorBits ? `2;${red};${green};${blue}` : `5;${in256(red, green, blue)}`;
  return sgr(`${behind ? 48 : 38};${which}`);
};

const penOf = ({ bold, inverse, color, backgroundColor }: Paint, bits: number): Pen => {
  const strokes: readonly (readonly [string, string])[] = [
    ...(bold ? [[sgr(1), sgr(22)] as const] : []),
    ...(inverse ? [[sgr(7), sgr(27)] as const] : []),
    ...(color === undefined ? [] : [[ink(color, bits, false), sgr(39)] as const]),
    ...(backgroundColor === undefined ? [] : [[ink(backgroundColor, bits, true), sgr(49)] as const]),
  ];
  return {
    on: strokes.map(([on]) => on).join(''),
    off: strokes
      .map(([, off]) => off)
      .reverse()
      .join(''),
  };
};

const none: Pen = { on: '', off: '' };

/** The looks as a terminal is told of them; `bits` of its colours, as Node counts them, and 0 for what is no terminal. */
export const pensFor = (paints: Paints, bits: number): Pens =>
  Object.fromEntries(
    Object.entries(paints).map(([look, paint]) => [look, bits === 0 ? none : penOf(paint, bits)]),
  ) as Pens;

/** A row as it is written. */
export const penned = (line: Line, pens: Pens): string =>
  line
    .map(({ text, look }) => {
      const { on, off } = pens[look];
      return text === '' ? '' : `${on}${text}${off}`;
    })
    .join('');
