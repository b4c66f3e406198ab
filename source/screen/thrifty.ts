/** A sign in the style that it is written in. */
type Cell = { readonly sign: string; readonly style: string };
type Row = readonly Cell[];

const esc = '\u001b';
/** How Ink begins a frame of which it knows the last: up to the first row. Then each row is passed over or rewritten. */
const upwards = /^\u001b\[([1-9]\d*)A/;
const passedOver = '\u001b[E';
const rewritten = /^\u001b\[1G([^\n]*?)\u001b\[K(\n?)(?=$|\u001b\[E|\u001b\[1G)/;
/** A frame from the beginning, with the erasing of what was there. */
const fromTheTop = /^(?:\u001b\[2K(?:\u001b\[1A)?)*(?:\u001b\[G)?/;
/** Switches of the terminal that move nothing on its screen. */
const switches = /^\u001b\[\?(?!1049)\d+[hl]$/;
const styled = /^\u001b\[(\d+)(?:;[\d;]*)?m/;
const plainStyle = '\u001b[0m';

/** One unit of a string and one cell of the screen, whatever the terminal. */
const single =
  /^[\u0020-\u007e\u00a0-\u00ac\u00ae-\u02ff\u2010-\u2027\u2190-\u21ff\u2500-\u25ff\u2800-\u28ff]$/;

const aspects: readonly { readonly begins: (code: number) => boolean; readonly ends: number }[] = [
  { begins: (code) => code === 1 || code === 2, ends: 22 },
  { begins: (code) => code === 7, ends: 27 },
  { begins: (code) => code === 38 || (code >= 30 && code <= 37) || (code >= 90 && code <= 97), ends: 39 },
  { begins: (code) => code === 48 || (code >= 40 && code <= 47) || (code >= 100 && code <= 107), ends: 49 },
];

/** What is switched on, in the order of `aspects`; null for a style that is none of them. */
const restyled = (on: readonly string[], code: number, sequence: string): readonly string[] | null => {
  const found = aspects.findIndex(({ begins, ends }) => ends === code || begins(code));
  if (found < 0) return null;
  return aspects.map(({ ends }, index) => {
    const now = on[index] ?? '';
    if (index !== found) return now;
    return ends === code ? '' : now + sequence;
  });
};

/** A row as its cells; null where the width of a sign or the meaning of a sequence is not known for sure. */
const cellsOf = (row: string): Row | null => {
  const cells: Cell[] = [];
  let on: readonly string[] = [];
  let style = '';
  for (let at = 0; at < row.length; ) {
    const sign = row.charAt(at);
    if (sign !== esc) {
      if (!single.test(sign)) return null;
      cells.push({ sign, style });
      at += 1;
      continue;
    }
    const [sequence, code] = styled.exec(row.slice(at, at + 32)) ?? [];
    const changed = sequence === undefined ? null : restyled(on, Number(code), sequence);
    if (sequence === undefined || changed === null) return null;
    on = changed;
    style = on.join('');
    at += sequence.length;
  }
  return style === '' ? cells : null;
};

const written = (cells: Row): string => {
  let style = '';
  let text = '';
  for (const cell of cells) {
    if (cell.style !== style) text += (style === '' ? '' : plainStyle) + cell.style;
    style = cell.style;
    text += cell.sign;
  }
  return style === '' ? text : text + plainStyle;
};

/** To jump over fewer cells than this takes as long as to write them. */
const worthAJump = 8;
const space: Cell = { sign: ' ', style: '' };

const same = (one: Cell = space, other: Cell = space): boolean =>
  one.sign === other.sign && one.style === other.style;

/** Only the cells of a row that are not as they were. */
const difference = (before: Row, after: Row): string => {
  let text = '';
  for (let at = 0; at < after.length; at += 1) {
    if (same(before[at], after[at])) continue;
    let end = at + 1;
    for (let next = end; next < after.length && next - end < worthAJump; next += 1)
      if (!same(before[next], after[next])) end = next + 1;
    text += `${esc}[${at + 1}G${written(after.slice(at, end))}`;
    at = end;
  }
  const isShorter = before.slice(after.length).some((cell) => !same(cell));
  return isShorter ? `${text}${esc}[${after.length + 1}G${esc}[K` : text;
};

const down = (rows: number): string => (rows === 0 ? '' : rows === 1 ? passedOver : `${esc}[${rows}E`);

/**
 * Writes no more of a frame than what is new in it: Ink writes a row anew from end to end when one sign of it changed,
 * and steps over each of the others. What this does not know for sure goes through as it came.
 */
export class Thrift {
  #rows: (Row | null)[] = [];
  #size = '';

  /** What to write instead of `text`, in a window of this size. Only for a screen that Ink has from its first row on. */
  of(text: string, size: { readonly columns?: number; readonly rows?: number }): string {
    const named = `${size.columns}x${size.rows}`;
    if (named !== this.#size) this.#rows = [];
    this.#size = named;
    if (text === '' || switches.test(text)) return text;
    const up = upwards.exec(text);
    const shorter = up === null ? null : this.#shorter(text.slice(up[0].length), up[0], size.columns ?? 0);
    if (shorter !== null) return shorter;
    const lines = text.replace(fromTheTop, '').split('\n');
    const isWhole = up === null && lines.length <= (size.rows ?? 0);
    this.#rows = isWhole ? lines.map(cellsOf) : [];
    return text;
  }

  #shorter(rows: string, up: string, columns: number): string | null {
    const known = [...this.#rows];
    let row = 0;
    let cursor = 0;
    let out = '';
    for (let at = 0; at < rows.length; ) {
      if (rows.startsWith(passedOver, at)) {
        row += 1;
        at += passedOver.length;
        continue;
      }
      const [all, content = '', ends] = rewritten.exec(rows.slice(at)) ?? [];
      if (all === undefined) return null;
      const before = known[row] ?? null;
      const after = cellsOf(content);
      const isKnown = before !== null && after !== null && after.length <= columns;
      const change = isKnown ? difference(before, after) : `${esc}[1G${content}${esc}[K`;
      if (change !== '') {
        out += down(row - cursor) + change;
        cursor = row;
      }
      known[row] = after;
      if (ends !== '') row += 1;
      at += all.length;
    }
    this.#rows = known;
    return `${up}${out}${down(row - cursor)}`;
  }
}
