import { deflateRawSync, inflateRawSync } from 'node:zlib';

const pieceBytes = 64 * 1024;

/**
 * Everything that was saved, kept in memory too, so that the journal can be written again when its file is
 * removed under the running cook. Packed: 50,000 readings take about a megabyte.
 */
export class Kept {
  readonly #packed: Buffer[] = [];
  #loose: Uint8Array[] = [];
  #looseBytes = 0;
  #bytes = 0;

  get bytes(): number {
    return this.#bytes;
  }

  add(bytes: Uint8Array): void {
    this.#loose.push(bytes);
    this.#looseBytes += bytes.length;
    this.#bytes += bytes.length;
    if (this.#looseBytes < pieceBytes) return;
    this.#packed.push(deflateRawSync(Buffer.concat(this.#loose), { level: 1 }));
    this.#loose = [];
    this.#looseBytes = 0;
  }

  /** All of it, in order, piece by piece. */
  *pieces(): Generator<Buffer> {
    for (const packed of this.#packed) yield inflateRawSync(packed);
    if (this.#looseBytes > 0) yield Buffer.concat(this.#loose);
  }
}
