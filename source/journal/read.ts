import { type FileHandle, open } from 'node:fs/promises';
import { O_NOFOLLOW, O_NONBLOCK, O_RDONLY } from '../files/open-flags.js';
import { FileTroubleError } from '../files/trouble.js';

export type OpenedToRead = { readonly bytes: number; readonly identity: string };

/** Look into a journal that somebody else may be writing. Rejects with the system's error. */
export const withJournal = async <Result>(
  path: string,
  work: (handle: FileHandle, found: OpenedToRead) => Promise<Result>,
): Promise<Result> => {
  const handle = await open(path, O_RDONLY | O_NONBLOCK | O_NOFOLLOW);
  try {
    const found = await handle.stat();
    if (!found.isFile()) throw new FileTroubleError('notAFile');
    return await work(handle, {
      bytes: found.size,
      identity: `${found.dev}:${found.ino}`,
    });
  } finally {
    await handle.close().catch(() => undefined);
  }
};

/** Bytes `from` up to `to`, or fewer when the file ends before. */
export const readPart = async (handle: FileHandle, from: number, to: number): Promise<Buffer> => {
  const bytes = Buffer.alloc(Math.max(0, to - from));
  let done = 0;
  while (done < bytes.length) {
    const { bytesRead } = await handle.read(bytes, done, bytes.length - done, from + done);
    if (bytesRead === 0) break;
    done += bytesRead;
  }
  return bytes.subarray(0, done);
};
