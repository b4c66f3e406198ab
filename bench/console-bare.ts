import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type headless from '@xterm/headless';
import { build } from 'esbuild';
import { terminalProgram } from '../scripts/build-options.mjs';
import type { Row } from './bare/bare.js';
import { columns, rows } from './console-pty.js';

/** The bare program, built as the console is, on the library as it is published: what ours changes in it is ours. */
export const buildBare = async (folder: string): Promise<string> => {
  const outfile = join(folder, 'bare.mjs');
  await build({ ...terminalProgram, entryPoints: ['bench/bare/bare.tsx'], outfile });
  return outfile;
};

const nameOf = (cell: headless.IBufferCell): string | null => {
  if (cell.isFgDefault()) return null;
  const color = cell.getFgColor();
  return cell.isFgRGB() ? `#${color.toString(16).padStart(6, '0')}` : `ansi256(${color})`;
};

/** A screen as rows of pieces of one look each, for the bare program to show. */
const rowsOf = (terminal: headless.Terminal): readonly Row[] =>
  Array.from({ length: rows }, (_, y) => {
    const line = terminal.buffer.active.getLine(terminal.buffer.active.baseY + y);
    const width = line?.translateToString(true).length ?? 0;
    const row: { text: string; bold: boolean; dim: boolean; color: string | null }[] = [];
    for (let x = 0; x < Math.min(width, columns); x += 1) {
      const cell = line?.getCell(x);
      if (cell === undefined) continue;
      const look = { bold: cell.isBold() !== 0, dim: cell.isDim() !== 0, color: nameOf(cell) };
      const last = row.at(-1);
      const text = cell.getChars() || ' ';
      if (last?.bold === look.bold && last.dim === look.dim && last.color === look.color) last.text += text;
      else row.push({ text, ...look });
    }
    return row;
  });

/** Keep the rows of a screen where the bare program finds them. */
export const keepRows = (folder: string, name: string, terminal: headless.Terminal): string => {
  const path = join(folder, `${name}.json`);
  writeFileSync(path, JSON.stringify(rowsOf(terminal)));
  return path;
};
