import { setTimeout as pause } from 'node:timers/promises';
import { codeOf } from '../files/trouble.js';
import type { Entry } from './line.js';
import { readPart, withJournal } from './read.js';
import { type DamagedLine, LineReader, longestLineBytes } from './recover.js';

/** What an outside reader learns as the journal grows. After `startedOver` everything said before is void. */
export type Followed =
  | { readonly what: 'entry'; readonly entry: Entry }
  | { readonly what: 'damaged'; readonly damaged: DamagedLine }
  | { readonly what: 'startedOver' }
  /** All there is for now has been told. */
  | { readonly what: 'upToDate' };

type Options = {
  readonly signal?: AbortSignal;
  /** Wait until it is worth looking again. */
  readonly wait?: (signal: AbortSignal | undefined) => Promise<void>;
};

const stepBytes = 256 * 1024;

const halfASecond = async (signal: AbortSignal | undefined): Promise<void> => {
  await pause(500, undefined, { signal }).catch(() => undefined);
};

/** Cuts what is read into lines; what has no newline yet waits. Holds at most one line of the greatest length. */
class Lines {
  #rest: Buffer = Buffer.alloc(0);
  #skipping = false;
  readonly #reader = new LineReader();

  *add(bytes: Buffer): Generator<Followed> {
    const all = Buffer.concat([this.#rest, bytes]);
    let start = 0;
    for (let end = all.indexOf(0x0a); end >= 0; end = all.indexOf(0x0a, start)) {
      const { entries, damage } = this.#reader.read(this.#skipping ? null : all.subarray(start, end));
      this.#skipping = false;
      if (damage !== null) yield { what: 'damaged', damaged: damage };
      for (const entry of entries) yield { what: 'entry', entry };
      start = end + 1;
    }
    this.#rest = all.subarray(start);
    // Twice the bound: a flipped newline may have run two good lines together.
    if (this.#rest.length <= 2 * longestLineBytes) return;
    this.#rest = Buffer.alloc(0);
    this.#skipping = true;
  }
}

/**
 * Read a journal from outside while a cook goes on: uses the bytes up to the last newline only and starts over when
 * the file got shorter or is another one. Ends when `signal` is aborted. A file that is not there yet is waited for;
 * any other error rejects.
 */
export async function* followJournal(path: string, options: Options = {}): AsyncGenerator<Followed> {
  const { signal, wait = halfASecond } = options;
  let lines = new Lines();
  let position = 0;
  let identity: string | null = null;
  while (!signal?.aborted) {
    const part = await withJournal(path, async (handle, found) => {
      const startsOver = found.bytes < position || (identity !== null && found.identity !== identity);
      const from = startsOver ? 0 : position;
      const bytes = await readPart(handle, from, Math.min(found.bytes, from + stepBytes));
      return { startsOver, identity: found.identity, bytes, more: from + bytes.length < found.bytes };
    }).catch((error: unknown) => {
      if (codeOf(error) === 'ENOENT') return null;
      throw error;
    });
    if (part === null) {
      // Its successor may be given the same inode: what comes next is another file whatever it looks like.
      if (position > 0) identity = 'gone';
    } else {
      identity = part.identity;
      if (part.startsOver) {
        lines = new Lines();
        position = 0;
        yield { what: 'startedOver' };
      }
      position += part.bytes.length;
      yield* lines.add(part.bytes);
      if (part.more && part.bytes.length > 0) continue;
      yield { what: 'upToDate' };
    }
    if (!signal?.aborted) await wait(signal);
  }
}
