import type { Tailed } from './tail.js';

/** Nobody's thermometer writes a longer line, bytes. */
export const longestTailedLine = 1000;
/** As much of a line that is none as is worth showing, bytes. */
const sampleBytes = 80;

const isEnd = (byte: number | undefined): boolean => byte === 0x0a || byte === 0x0d;

const textOf = (bytes: Buffer): string => bytes.toString('utf8').replace(/^\ufeff/, '');

/** Cuts bytes into lines; what has no end yet waits, at most one line of the greatest length. Empty lines are none. */
export class TailLines {
  #rest: Buffer = Buffer.alloc(0);
  /** Up to the next end of a line nothing counts. */
  #skipping = false;

  skip(): void {
    this.#skipping = true;
  }

  *add(bytes: Buffer): Generator<Tailed> {
    const all = Buffer.concat([this.#rest, bytes]);
    let start = 0;
    for (let at = 0; at < all.length; at += 1) {
      if (!isEnd(all[at])) continue;
      yield* this.#line(all.subarray(start, at));
      start = at + 1;
    }
    this.#rest = Buffer.from(all.subarray(start));
    if (this.#rest.length <= longestTailedLine) return;
    yield* this.#line(this.#rest);
    this.#rest = Buffer.alloc(0);
    this.#skipping = true;
  }

  /** Nobody will write the rest of the line: "23" may have been the beginning of "238". */
  *end(): Generator<Tailed> {
    const text = textOf(this.#rest.subarray(0, sampleBytes));
    if (text.trim() !== '' && !this.#skipping) yield { what: 'no line', text, because: 'unfinished' };
    this.#rest = Buffer.alloc(0);
    this.#skipping = false;
  }

  *#line(bytes: Buffer): Generator<Tailed> {
    const skipped = this.#skipping;
    this.#skipping = false;
    if (skipped) return;
    if (bytes.length > longestTailedLine) {
      yield { what: 'no line', text: textOf(bytes.subarray(0, sampleBytes)), because: 'too long' };
      return;
    }
    const text = textOf(bytes);
    if (text.trim() !== '') yield { what: 'line', text };
  }
}
