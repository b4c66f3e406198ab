import type { BigIntStats } from 'node:fs';
import { lstat, open } from 'node:fs/promises';
import { makeFolder } from '../files/folder.js';
import { O_CREAT, O_NOFOLLOW, O_NONBLOCK, O_RDWR } from '../files/open-flags.js';
import { codeOf } from '../files/trouble.js';
import { syncFolder } from '../files/write.js';

export type FileFacts = {
  readonly bytes: number;
  readonly isFile: boolean;
  /** Equal for two looks at one file, different for another file under the same name. */
  readonly identity: string;
};

/** What the journal needs of an open file; positions and lengths in bytes. Each may reject with the system's error. */
export type JournalHandle = {
  read(into: Uint8Array, position: number): Promise<number>;
  write(bytes: Uint8Array, position: number): Promise<number>;
  datasync(): Promise<void>;
  facts(): Promise<FileFacts>;
  close(): Promise<void>;
};

/** What the journal needs of the disk. Tests make the n-th call fail. */
export type JournalIo = {
  /** Open for reading and writing; create it for the owner only when it is not there; never through a symbolic link. */
  open(path: string): Promise<JournalHandle>;
  /** What the name stands for now, or null when there is nothing. */
  look(path: string): Promise<FileFacts | null>;
  makeFolder(folder: string): Promise<void>;
  syncFolder(folder: string): Promise<void>;
};

const factsOf = (found: BigIntStats): FileFacts => ({
  bytes: Number(found.size),
  isFile: found.isFile(),
  identity: `${found.dev}:${found.ino}`,
});

export const diskIo: JournalIo = {
  open: async (path) => {
    const handle = await open(path, O_RDWR | O_CREAT | O_NOFOLLOW | O_NONBLOCK, 0o600);
    return {
      read: async (into, position) => (await handle.read(into, 0, into.length, position)).bytesRead,
      write: async (bytes, position) => (await handle.write(bytes, 0, bytes.length, position)).bytesWritten,
      datasync: () => handle.datasync(),
      facts: async () => factsOf(await handle.stat({ bigint: true })),
      close: () => handle.close(),
    };
  },
  look: async (path) => {
    try {
      return factsOf(await lstat(path, { bigint: true }));
    } catch (error) {
      if (codeOf(error) === 'ENOENT') return null;
      throw error;
    }
  },
  makeFolder: async (folder) => {
    await makeFolder(folder);
  },
  syncFolder,
};
