import type { Look } from '../looks.js';
import { type Line, type Span, span } from '../text.js';

/** One cell: a sign of its own, or dots; what is drawn later decides its look. */
type Cell = { sign: string; dots: number; look: Look };

/** The bit of a dot in a braille cell, two wide and four high; the lowest row came last: Unicode chapter 21, block U+2800. */
const dotBit = (across: number, down: number): number =>
  down < 3 ? 1 << (down + 3 * across) : 0x40 << across;
const firstBraille = 0x2800;

/**
 * A small drawing in characters, cleared at first. Dots lie on a grid of its own, finer than cells where there is
 * braille: `across` by `down` dots a cell.
 */
export class Canvas {
  readonly across: number;
  readonly down: number;
  readonly #cells: Cell[];

  constructor(
    readonly columns: number,
    readonly rows: number,
    private readonly ascii: boolean,
  ) {
    this.across = ascii ? 1 : 2;
    this.down = ascii ? 1 : 4;
    this.#cells = Array.from({ length: columns * rows }, () => ({ sign: ' ', dots: 0, look: 'faint' }));
  }

  #cell(column: number, row: number): Cell | undefined {
    const isInside = column >= 0 && column < this.columns && row >= 0 && row < this.rows;
    return isInside ? this.#cells[row * this.columns + column] : undefined;
  }

  /** A sign over a whole cell. */
  sign(column: number, row: number, sign: string, look: Look): void {
    const cell = this.#cell(column, row);
    if (cell !== undefined) Object.assign(cell, { sign, look, dots: 0 });
  }

  /** A sign where nothing stands yet. */
  under(column: number, row: number, sign: string, look: Look): void {
    const cell = this.#cell(column, row);
    if (cell !== undefined && cell.sign === ' ' && cell.dots === 0) Object.assign(cell, { sign, look });
  }

  /** One dot, from the upper left; in ASCII a sign of its own. */
  dot(x: number, y: number, look: Look, inAscii: string): void {
    const [column, row] = [Math.floor(x / this.across), Math.floor(y / this.down)];
    if (this.ascii) {
      this.sign(column, row, inAscii, look);
      return;
    }
    const cell = this.#cell(column, row);
    const bit = dotBit(((x % 2) + 2) % 2, ((y % 4) + 4) % 4);
    if (cell !== undefined) Object.assign(cell, { dots: cell.dots | bit, look });
  }

  /** A straight line of dots, both ends included. */
  line(
    from: readonly [x: number, y: number],
    to: readonly [x: number, y: number],
    look: Look,
    inAscii: string,
  ): void {
    const steps = Math.max(Math.abs(to[0] - from[0]), Math.abs(to[1] - from[1]), 1);
    for (let step = 0; step <= steps; step += 1) {
      const share = step / steps;
      this.dot(
        Math.round(from[0] + share * (to[0] - from[0])),
        Math.round(from[1] + share * (to[1] - from[1])),
        look,
        inAscii,
      );
    }
  }

  /** One row as spans of one look each. */
  row(index: number): Line {
    const spans: Span[] = [];
    let text = '';
    let look: Look = 'faint';
    for (const cell of this.#cells.slice(index * this.columns, (index + 1) * this.columns)) {
      if (cell.look !== look && text !== '') {
        spans.push(span(text, look));
        text = '';
      }
      look = cell.look;
      text += cell.dots === 0 ? cell.sign : String.fromCodePoint(firstBraille + cell.dots);
    }
    return [...spans, span(text, look)];
  }
}
