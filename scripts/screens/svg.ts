import type headless from '@xterm/headless';

/** One cell of the terminal in picture units. */
const cell = { width: 9, height: 18 } as const;
const margin = 12;

const colours = {
  ground: '#16181d',
  text: '#c3c7cf',
  strong: '#ffffff',
  faint: '#757b87',
  red: '#ff6b5e',
  yellow: '#f5c451',
} as const;

type Paint = { readonly ink: string; readonly ground: string | null; readonly bold: boolean };

const paintOf = (at: headless.IBufferCell): Paint => {
  const hue = at.isFgPalette()
    ? ({ 1: colours.red, 3: colours.yellow } as Record<number, string>)[at.getFgColor()]
    : undefined;
  const ink = hue ?? (at.isDim() ? colours.faint : at.isBold() ? colours.strong : colours.text);
  return at.isInverse()
    ? { ink: colours.ground, ground: ink, bold: at.isBold() !== 0 }
    : { ink, ground: null, bold: at.isBold() !== 0 };
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

const rect = (x: number, y: number, width: number, height: number, fill: string, opacity = 1): string =>
  `<rect x="${x}" y="${y}" width="${width}" height="${height}" fill="${fill}"${opacity === 1 ? '' : ` opacity="${opacity}"`}/>`;

const drawn = (char: string, x: number, y: number, ink: string): string | null => {
  const quarter = quarters[char];
  if (quarter !== undefined) {
    const [w, h] = [cell.width / 2, cell.height / 2];
    return quarter
      .map((full, index) => (full ? rect(x + (index % 2) * w, y + Math.floor(index / 2) * h, w, h, ink) : ''))
      .join('');
  }
  const part = eighths.indexOf(char);
  if (part >= 0) return rect(x, y, (cell.width * (part + 1)) / 8, cell.height, ink);
  const shade = shades[char];
  if (shade !== undefined) return rect(x, y, cell.width, cell.height, ink, shade);
  const arm = arms[char];
  if (arm === undefined) return null;
  const [cx, cy] = [x + cell.width / 2, y + cell.height / 2];
  const thick = (weight: number): number => (weight === 2 ? 3 : 1);
  const [up, right, down, left] = arm;
  return [
    up ? rect(cx - thick(up) / 2, y, thick(up), cell.height / 2 + thick(up) / 2, ink) : '',
    down
      ? rect(cx - thick(down) / 2, cy - thick(down) / 2, thick(down), cell.height / 2 + thick(down) / 2, ink)
      : '',
    left ? rect(x, cy - thick(left) / 2, cell.width / 2 + thick(left) / 2, thick(left), ink) : '',
    right
      ? rect(
          cx - thick(right) / 2,
          cy - thick(right) / 2,
          cell.width / 2 + thick(right) / 2,
          thick(right),
          ink,
        )
      : '',
  ].join('');
};

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

/** What stands in a terminal, as a picture: letters as text, blocks and lines as shapes, so that it looks alike everywhere. */
export const svgOf = (terminal: headless.Terminal, title: string): string => {
  const { cols, rows, buffer } = terminal;
  const parts: string[] = [];
  for (let row = 0; row < rows; row += 1) {
    const line = buffer.active.getLine(buffer.active.baseY + row);
    const y = margin + row * cell.height;
    let run: { x: number; text: string; paint: Paint } | null = null;
    const flush = (): void => {
      if (run !== null && run.text.trim() !== '') {
        const { x, text, paint } = run;
        const kept = text.trimEnd();
        parts.push(
          `<text x="${x}" y="${y + 13.5}" fill="${paint.ink}"${paint.bold ? ' font-weight="bold"' : ''} textLength="${kept.length * cell.width}" xml:space="preserve">${escaped(kept)}</text>`,
        );
      }
      run = null;
    };
    for (let column = 0; column < cols; column += 1) {
      const at = line?.getCell(column);
      if (at === undefined) continue;
      const char = at.getChars() || ' ';
      const paint = paintOf(at);
      const x = margin + column * cell.width;
      if (paint.ground !== null) parts.push(rect(x, y, cell.width, cell.height, paint.ground));
      const shape = drawn(char, x, y, paint.ink);
      if (shape !== null) {
        flush();
        parts.push(shape);
        continue;
      }
      if (
        run !== null &&
        (run as { paint: Paint }).paint.ink === paint.ink &&
        (run as { paint: Paint }).paint.bold === paint.bold
      ) {
        (run as { text: string }).text += char;
      } else {
        flush();
        if (char !== ' ') run = { x, text: char, paint };
      }
    }
    flush();
  }
  const [width, height] = [cols * cell.width + 2 * margin, rows * cell.height + 2 * margin];
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img" font-family="DejaVu Sans Mono, Menlo, Consolas, monospace" font-size="15" shape-rendering="crispEdges">
<title>${escaped(title)}</title>
${rect(0, 0, width, height, colours.ground)}
${parts.join('\n')}
</svg>
`;
};
