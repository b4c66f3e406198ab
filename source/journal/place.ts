import { dirname } from 'node:path';
import { FileTroubleError } from '../files/trouble.js';
import type { JournalHandle, JournalIo } from './io.js';
import type { Kept } from './kept.js';

const writeAll = async (handle: JournalHandle, bytes: Uint8Array, position: number): Promise<void> => {
  for (let done = 0; done < bytes.length; ) {
    const written = await handle.write(bytes.subarray(done), position + done);
    if (written <= 0) throw Object.assign(new Error('nothing was written'), { code: 'EIO' });
    done += written;
  }
};

const readAll = async (handle: JournalHandle, length: number, position: number): Promise<Buffer> => {
  const bytes = Buffer.alloc(length);
  for (let done = 0; done < length; ) {
    const read = await handle.read(bytes.subarray(done), position + done);
    if (read <= 0) throw new FileTroubleError('replaced');
    done += read;
  }
  return bytes;
};

/**
 * The file under the journal's name. Always written at the place where the last good byte ended: what a write
 * that failed half way left there is overwritten by the same bytes, so that no line is ever there twice or in half.
 */
export class JournalPlace {
  #open: { handle: JournalHandle; identity: string } | null = null;

  constructor(
    private readonly path: string,
    private readonly io: JournalIo,
    private readonly kept: Kept,
  ) {}

  /** Add `bytes` after all that is kept; on the disk, and under its name, when this resolves. Rejects otherwise. */
  async add(bytes: Uint8Array): Promise<void> {
    try {
      const handle = await this.#opened(bytes);
      await writeAll(handle, bytes, this.kept.bytes);
      await handle.datasync();
    } catch (error) {
      await this.close();
      throw error;
    }
  }

  /** Never rejects: what matters was synced before. */
  async close(): Promise<void> {
    const open = this.#open;
    this.#open = null;
    await open?.handle.close().catch(() => undefined);
  }

  async #opened(next: Uint8Array): Promise<JournalHandle> {
    if (this.#open === null) this.#open = await this.#reopen(next);
    else await this.#lookAgain(this.#open.identity);
    return this.#open.handle;
  }

  /**
   * Writing into a file that was removed succeeds and is lost: the name must still stand for it. And as long as it was:
   * in one that was emptied, writing on would leave a hole of zeros. What happens to it after this look is found by the next.
   */
  async #lookAgain(identity: string): Promise<void> {
    const found = await this.io.look(this.path);
    if (found?.identity !== identity || found.bytes !== this.kept.bytes) throw new FileTroubleError('gone');
  }

  async #reopen(next: Uint8Array): Promise<{ handle: JournalHandle; identity: string }> {
    const handle = await this.io.open(this.path);
    try {
      const { bytes, isFile, identity } = await handle.facts();
      if (!isFile) throw new FileTroubleError('notAFile');
      await this.#makeOurs(handle, bytes, next);
      await this.io.syncFolder(dirname(this.path));
      return { handle, identity };
    } catch (error) {
      await handle.close().catch(() => undefined);
      throw error;
    }
  }

  /** A file that holds the beginning of ours gets the rest of what is kept; one that holds anything else is left alone. */
  async #makeOurs(handle: JournalHandle, found: number, next: Uint8Array): Promise<void> {
    if (found > this.kept.bytes + next.length) throw new FileTroubleError('replaced');
    let position = 0;
    for (const piece of this.kept.pieces()) {
      const there = Math.max(0, Math.min(piece.length, found - position));
      await this.#compare(handle, piece.subarray(0, there), position);
      await writeAll(handle, piece.subarray(there), position + there);
      position += piece.length;
    }
    await this.#compare(handle, next.subarray(0, Math.max(0, found - position)), position);
  }

  async #compare(handle: JournalHandle, ours: Uint8Array, position: number): Promise<void> {
    if (ours.length === 0) return;
    const theirs = await readAll(handle, ours.length, position);
    if (!theirs.equals(ours)) throw new FileTroubleError('replaced');
  }
}
