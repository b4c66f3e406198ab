import type headless from '@xterm/headless';
import { inPalette } from './xterm.js';

/** One cell of the terminal in picture units. */
const cell = { width: 9, height: 18 } as const;
const margin = 12;

const colours = {
  ground: '#16181d',
  text: '#c3c7cf',
  strong: '#ffffff',
  faint: '#757b87',
} as const;

const colourOf = (isPalette: boolean, isRgb: boolean, value: number): string | null => {
  if (isRgb) return `#${value.toString(16).padStart(6, '0')}`;
  return isPalette ? inPalette(value) : null;
};

type Paint = { readonly ink: string; readonly ground: string | null; readonly bold: boolean };

const paintOf = (at: headless.IBufferCell): Paint => {
  const hue = colourOf(at.isFgPalette(), at.isFgRGB(), at.getFgColor());
  const behind = colourOf(at.isBgPalette(), at.isBgRGB(), at.getBgColor());
  const ink = hue ?? (at.isDim() ? colours.faint : at.isBold() ? colours.strong : colours.text);
  return at.isInverse()
    ? { ink: colours.ground, ground: ink, bold: at.isBold() !== 0 }
    : { ink, ground: behind, bold: at.isBold() !== 0 };
};

/** Quarters of a cell: upper left, upper right, lower left, lower right. */
const quarters: Readonly<Record<string, readonly [number, number, number, number]>> = {
  '▀': [1, 1, 0, 0],
  '▄': [0, 0, 1, 1],
  '█': [1, 1, 1, 1],
  '▌': [1, 0, 1, 0],
  '▐': [0, 1, 0, 1],
  '▖': [0, 0, 1, 0],
  '▗': [0, 0, 0, 1],
  '▘': [1, 0, 0, 0],
  '▝': [0, 1, 0, 0],
  '▙': [1, 0, 1, 1],
  '▚': [1, 0, 0, 1],
  '▛': [1, 1, 1, 0],
  '▜': [1, 1, 0, 1],
  '▞': [0, 1, 1, 0],
  '▟': [0, 1, 1, 1],
};
const eighths = '▏▎▍▌▋▊▉';
const shades: Readonly<Record<string, number>> = { '░': 0.25, '▒': 0.5, '▓': 0.75 };
/** Lines from the middle of a cell: up, right, down, left; 1 light, 2 heavy. */
const arms: Readonly<Record<string, readonly [number, number, number, number]>> = {
  '│': [1, 0, 1, 0],
  '─': [0, 1, 0, 1],
  '┤': [1, 0, 1, 1],
  '━': [0, 2, 0, 2],
  '┃': [2, 0, 2, 0],
  '┏': [0, 2, 2, 0],
  '┓': [0, 0, 2, 2],
  '┗': [2, 2, 0, 0],
  '┛': [2, 0, 0, 2],
  '┣': [2, 2, 2, 0],
  '┫': [2, 0, 2, 2],
  '┳': [0, 2, 2, 2],
  '┻': [2, 2, 0, 2],
  '╋': [2, 2, 2, 2],
  '╸': [0, 0, 0, 2],
  '╹': [2, 0, 0, 0],
  '╺': [0, 2, 0, 0],
  '╻': [0, 0, 2, 0],
};

/** Shapes of one colour are one path: a picture of thousands of rectangles is a heavy one. */
class Shapes {
  readonly #paths = new Map<string, string[]>();

  add(x: number, y: number, width: number, height: number, fill: string, opacity = 1): void {
    const key = `fill="${fill}"${opacity === 1 ? '' : ` opacity="${opacity}"`}`;
    const path = this.#paths.get(key) ?? [];
    path.push(`M${x} ${y}h${width}v${height}h-${width}z`);
    this.#paths.set(key, path);
  }

  get svg(): string {
    return [...this.#paths].map(([key, path]) => `<path ${key} d="${path.join('')}"/>`).join('\n');
  }
}

const firstBraille = 0x2800;
/** Dots of a braille cell in the order of their bits: column and row. */
const dots = [
  [0, 0],
  [0, 1],
  [0, 2],
  [1, 0],
  [1, 1],
  [1, 2],
  [0, 3],
  [1, 3],
] as const;
const dotSize = 2;

const drawBraille = (shapes: Shapes, bits: number, x: number, y: number, ink: string): void => {
  dots.forEach(([column, row], bit) => {
    const isSet = (bits >> bit) % 2 === 1;
    const [left, top] = [x + (cell.width * (2 * column + 1)) / 4, y + (cell.height * (2 * row + 1)) / 8];
    if (isSet) shapes.add(left - dotSize / 2, top - dotSize / 2, dotSize, dotSize, ink);
  });
};

/** Draws a block, a line or braille; false for anything else. */
const draw = (shapes: Shapes, char: string, x: number, y: number, ink: string): boolean => {
  const bits = (char.codePointAt(0) ?? 0) - firstBraille;
  if (bits > 0 && bits < 256) {
    drawBraille(shapes, bits, x, y, ink);
    return true;
  }
  const quarter = quarters[char];
  if (quarter !== undefined) {
    const [w, h] = [cell.width / 2, cell.height / 2];
    quarter.forEach((full, index) => {
      if (full) shapes.add(x + (index % 2) * w, y + Math.floor(index / 2) * h, w, h, ink);
    });
    return true;
  }
  const part = eighths.indexOf(char);
  if (part >= 0) shapes.add(x, y, (cell.width * (part + 1)) / 8, cell.height, ink);
  const shade = shades[char];
  if (shade !== undefined) shapes.add(x, y, cell.width, cell.height, ink, shade);
  const arm = arms[char];
  if (arm === undefined) return part >= 0 || shade !== undefined;
  const [cx, cy] = [x + cell.width / 2, y + cell.height / 2];
  const thick = (weight: number): number => (weight === 2 ? 3 : 1);
  const [up, right, down, left] = arm;
  const [across, along] = [cell.width / 2, cell.height / 2];
  if (up) shapes.add(cx - thick(up) / 2, y, thick(up), along + thick(up) / 2, ink);
  if (down) shapes.add(cx - thick(down) / 2, cy - thick(down) / 2, thick(down), along + thick(down) / 2, ink);
  if (left) shapes.add(x, cy - thick(left) / 2, across + thick(left) / 2, thick(left), ink);
  if (right)
    shapes.add(cx - thick(right) / 2, cy - thick(right) / 2, across + thick(right) / 2, thick(right), ink);
  return true;
};

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

type Run = { readonly x: number; text: string; readonly paint: Paint };

/** Words with one space between them: several in a row are one to a browser, and stretch what stands beside them. */
const phrases = /\S+(?: \S+)*/g;

const textsOf = ({ x, text, paint }: Run, y: number): readonly string[] => {
  const bold = paint.bold ? ' font-weight="bold"' : '';
  return [...text.matchAll(phrases)].map(({ 0: phrase, index }) => {
    const length = phrase.length * cell.width;
    return `<text x="${x + index * cell.width}" y="${y + 13.5}" fill="${paint.ink}"${bold} textLength="${length}">${escaped(phrase)}</text>`;
  });
};

type Layers = { readonly under: Shapes; readonly over: Shapes };

/** One row: its grounds, blocks and lines go to the layers, its letters come back as runs of one look. */
const runsOf = (line: headless.IBufferLine, columns: number, y: number, layers: Layers): readonly Run[] => {
  const runs: Run[] = [];
  let current: Run | null = null;
  for (let column = 0; column < columns; column += 1) {
    const at = line.getCell(column);
    if (at === undefined) continue;
    const char = at.getChars() || ' ';
    const paint = paintOf(at);
    const x = margin + column * cell.width;
    if (paint.ground !== null) layers.under.add(x, y, cell.width, cell.height, paint.ground);
    const isSame = current?.paint.ink === paint.ink && current.paint.bold === paint.bold;
    if (draw(layers.over, char, x, y, paint.ink)) current = null;
    else if (current !== null && isSame) current.text += char;
    else {
      current = char === ' ' ? null : { x, text: char, paint };
      if (current !== null) runs.push(current);
    }
  }
  return runs;
};

/** What stands in a terminal, as a picture: letters as text, blocks and lines as shapes, so that it looks alike everywhere. */
export const svgOf = (terminal: headless.Terminal, title: string): string => {
  const { cols, rows, buffer } = terminal;
  const layers: Layers = { under: new Shapes(), over: new Shapes() };
  const texts = Array.from({ length: rows }, (_, row) => {
    const line = buffer.active.getLine(buffer.active.baseY + row);
    const y = margin + row * cell.height;
    return line === undefined ? [] : runsOf(line, cols, y, layers).flatMap((run) => textsOf(run, y));
  }).flat();
  const [width, height] = [cols * cell.width + 2 * margin, rows * cell.height + 2 * margin];
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img" font-family="DejaVu Sans Mono, Menlo, Consolas, monospace" font-size="15" shape-rendering="crispEdges">
<title>${escaped(title)}</title>
<path fill="${colours.ground}" d="M0 0h${width}v${height}h-${width}z"/>
${layers.under.svg}
${layers.over.svg}
${texts.join('\n')}
</svg>
`;
};
