import { lstat, readdir, unlink } from 'node:fs/promises';
import { join } from 'node:path';

/** What `besideName` makes: a hidden name that ends in twelve hex digits and `.tmp`. */
const leftover = /^\..{1,60}\.[0-9a-f]{12}\.tmp$/;
/** A file that is being written is never this old. Our judgement. */
const oldMilliseconds = 3_600_000;

/**
 * Remove what a program left behind that was killed while it wrote: our own hidden temporary files in `folder`, older
 * than an hour. They are harmless, only in the way. Nothing else is touched; never rejects.
 */
export const sweepLeftovers = async (folder: string, nowMilliseconds: number): Promise<void> => {
  const names = await readdir(folder).catch(() => []);
  for (const name of names.filter((one) => leftover.test(one))) {
    const path = join(folder, name);
    try {
      const found = await lstat(path);
      if (found.isFile() && nowMilliseconds - found.mtimeMs > oldMilliseconds) await unlink(path);
    } catch {
      // Gone already, or not ours to remove.
    }
  }
};
