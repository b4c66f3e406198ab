import type { Look } from './looks.js';
import { isNarrow, signsOf } from './signs.js';

export type Span = { readonly text: string; readonly look: Look };
/** One row of the screen. */
export type Line = readonly Span[];

/** East Asian wide and full-width forms, and pictures. */
const wide =
  /^(?:[\u1100-\u115f\u2e80-\u303e\u3041-\u33ff\u3400-\u4dbf\u4e00-\u9fff\ua000-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6]|[\u{1f300}-\u{1faff}]|[\u{20000}-\u{3fffd}])/u;

/** Cells that a text takes. */
export const widthOf = (text: string): number => {
  if (isNarrow(text)) return text.length;
  return signsOf(text).reduce((cells, sign) => cells + (wide.test(sign) ? 2 : 1), 0);
};

export const lineWidth = (line: Line): number => line.reduce((sum, span) => sum + widthOf(span.text), 0);

/** As much of a text as fits into so many cells. */
export const cut = (text: string, cells: number): string => {
  if (widthOf(text) <= cells) return text;
  let kept = '';
  let used = 0;
  for (const sign of signsOf(text)) {
    used += widthOf(sign);
    if (used > cells) break;
    kept += sign;
  }
  return kept;
};

/** As much of a row as fits into so many cells. */
export const clip = (line: Line, cells: number): Line => {
  if (lineWidth(line) <= cells) return line;
  let left = cells;
  return line.flatMap((one) => {
    if (left <= 0) return [];
    const kept = cut(one.text, left);
    left -= widthOf(kept);
    return [{ ...one, text: kept }];
  });
};

export const padded = (text: string, cells: number): string =>
  text + ' '.repeat(Math.max(0, cells - widthOf(text)));

const pieces = (word: string, cells: number): readonly string[] => {
  const all: string[] = [];
  for (let rest = word; rest !== ''; ) {
    const piece = cut(rest, Math.max(1, cells)) || rest.slice(0, 1);
    all.push(piece);
    rest = rest.slice(piece.length);
  }
  return all;
};

/** Spans → lines of at most so many cells, broken between words; `hang` indents all but the first. */
export const wrap = (line: Line, cells: number, hang = 0): readonly Line[] => {
  const lines: Span[][] = [];
  let current: Span[] = [];
  let used = 0;
  const room = Math.max(4, cells);
  const next = (): void => {
    lines.push(current);
    current = hang > 0 ? [{ text: ' '.repeat(hang), look: 'plain' }] : [];
    used = hang;
  };
  for (const { text, look } of line) {
    for (const part of text.split(/(?<= )/)) {
      const width = widthOf(part.trimEnd());
      if (used + width > room && used > hang) next();
      for (const piece of width > room - hang ? pieces(part, room - hang) : [part]) {
        if (used + widthOf(piece.trimEnd()) > room) next();
        const kept = cut(piece, room - used);
        current.push({ text: kept, look });
        used += widthOf(kept);
      }
    }
  }
  if (current.length > 0) lines.push(current);
  return lines;
};

/** The first of these that takes no more lines than the last, which is the shortest to say. */
export const wrapWithin = (richer: Line, plain: Line, cells: number, hang = 0): readonly Line[] => {
  const [rich, least] = [wrap(richer, cells, hang), wrap(plain, cells, hang)];
  return rich.length <= least.length ? rich : least;
};

export const span = (text: string, look: Look = 'plain'): Span => ({ text, look });
export const blank: Line = [];

/** Several short texts on as few rows as they need, with a gap between. */
export const flow = (items: readonly Line[], cells: number, gap: number): readonly Line[] => {
  const rows: Span[][] = [];
  let used = 0;
  for (const item of items) {
    const width = lineWidth(item);
    const row = rows.at(-1);
    if (row === undefined || used + gap + width > cells) {
      rows.push([...item]);
      used = width;
    } else {
      row.push(span(' '.repeat(gap)), ...item);
      used += gap + width;
    }
  }
  return rows;
};
