import { type Message, message } from '../texts/message.js';
import { type Damage, decodeLine, type Entry, lineBounds } from './line.js';

export type DamagedLine = { readonly line: number; readonly why: Damage };

export type Recovered = {
  /** What could be read, in the order of the file, each `seq` once. */
  readonly entries: readonly Entry[];
  /** The first hundred damaged lines, counted from 1 as an editor does. */
  readonly damaged: readonly DamagedLine[];
  readonly damagedCount: number;
  /** Bytes follow the last newline: a line was cut off while it was written. They are not used. */
  readonly torn: boolean;
  /** Bytes up to and with the last newline. */
  readonly bytesUsed: number;
};

const newline = 0x0a;
const listedDamage = 100;
const lineStart = Buffer.from('{"seq":');

/** Reads lines one after the other; remembers which events it has seen. Total: no bytes make it throw. */
export class LineReader {
  #line = 0;
  readonly #seen = new Set<number>();

  /** One line without its newline (null: one longer than any line may be). */
  read(bytes: Uint8Array | null): { entries: Entry[]; damage: DamagedLine | null } {
    this.#line += 1;
    const decoded = bytes === null ? { why: 'tooLong' as const } : decodeLine(bytes);
    if ('entry' in decoded) return this.#keep([decoded.entry], null);
    const salvaged = bytes === null || bytes.length < lineStart.length ? [] : this.#salvage(bytes);
    return this.#keep(salvaged, salvaged.length > 0 ? 'joined' : decoded.why);
  }

  #keep(found: readonly Entry[], why: Damage | null): { entries: Entry[]; damage: DamagedLine | null } {
    const entries = found.filter((entry) => !this.#seen.has(entry.seq));
    for (const entry of entries) this.#seen.add(entry.seq);
    return { entries, damage: why === null ? null : { line: this.#line, why } };
  }

  /**
   * A flipped newline runs two lines together, which could cost both copies of the first event.
   * Each half still carries its own checksum, so that a half is used only where it is whole.
   */
  #salvage(bytes: Uint8Array): Entry[] {
    const line = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
    const at = line.indexOf(lineStart, 1);
    if (at < 0) return [];
    return [line.subarray(0, at - 1), line.subarray(at)].flatMap((half) => {
      const decoded = decodeLine(half);
      return 'entry' in decoded ? [decoded.entry] : [];
    });
  }
}

/**
 * The entries of a journal's bytes. Damaged lines are reported and the rest kept; the second copy of an event is
 * skipped; what follows the last newline is left out. Total: no bytes make it throw. Linear in time and memory.
 */
export const recover = (bytes: Uint8Array): Recovered => {
  const reader = new LineReader();
  const entries: Entry[] = [];
  const damaged: DamagedLine[] = [];
  let damagedCount = 0;
  let start = 0;
  for (let end = bytes.indexOf(newline); end >= 0; end = bytes.indexOf(newline, start)) {
    const read = reader.read(bytes.subarray(start, end));
    for (const entry of read.entries) entries.push(entry);
    if (read.damage !== null) {
      damagedCount += 1;
      if (damaged.length < listedDamage) damaged.push(read.damage);
    }
    start = end + 1;
  }
  return { entries, damaged, damagedCount, torn: start < bytes.length, bytesUsed: start };
};

/**
 * What makes a torn end a line of its own. A cut-off line needs only its newline: its checksum is missing.
 * A whole line that lacks only the newline was left out by every reader so far and must not come back to life
 * once the newline is there, so it is spoilt first.
 */
export const mendingBytes = (bytes: Uint8Array, recovered: Recovered): Buffer => {
  if (!recovered.torn) return Buffer.alloc(0);
  const wholeAfterAll = 'entry' in decodeLine(bytes.subarray(recovered.bytesUsed));
  return Buffer.from(wholeAfterAll ? '#\n' : '\n');
};

/** Whether these bytes are a journal, or the beginning of one: anything else must not be written to. */
export const looksLikeJournal = (bytes: Uint8Array, recovered: Recovered): boolean => {
  const length = Math.min(bytes.length, lineStart.length);
  return recovered.entries.length > 0 || lineStart.subarray(0, length).equals(bytes.subarray(0, length));
};

/** What to tell the person about a journal that was not whole, most important first. */
export const damageNotes = (recovered: Recovered): readonly Message[] => {
  const lines = recovered.damaged.slice(0, 10).map(({ line }) => line);
  return [
    ...(lines.length > 0
      ? [message('journal.damaged', { lines, more: recovered.damagedCount - lines.length })]
      : []),
    ...(recovered.torn ? [message('journal.torn')] : []),
  ];
};

/** The longest a line can be, newline not counted, bytes. */
export const longestLineBytes = lineBounds.openedBytes;
