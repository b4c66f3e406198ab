import { type FileHandle, open } from 'node:fs/promises';
import { type Message, message } from '../texts/message.js';
import { shownPath } from './names.js';
import { O_NOFOLLOW, O_NONBLOCK, O_RDONLY } from './open-flags.js';
import { readProblem } from './trouble.js';

/** Bounds for files that a person names, bytes. Our judgement: a hundred times what such a file needs. */
export const bounds = { recipe: 256 * 1024, kitchen: 64 * 1024, journal: 32 * 1024 * 1024 } as const;

export type FileText = { readonly text: string } | { readonly problem: Message };
export type FileBytes = { readonly bytes: Buffer } | { readonly problem: Message };

type Options = {
  /** A named pipe is read as well; opening it waits for its writer. */
  readonly pipe?: boolean;
  /** A symbolic link at the end of the path is refused. */
  readonly noLink?: boolean;
};

const chunkBytes = 64 * 1024;

const readAtMost = async (handle: FileHandle, maxBytes: number): Promise<Buffer> => {
  const chunks: Buffer[] = [];
  let left = maxBytes;
  while (left > 0) {
    const { bytesRead, buffer } = await handle.read(
      Buffer.alloc(Math.min(left, chunkBytes)),
      0,
      Math.min(left, chunkBytes),
      null,
    );
    if (bytesRead === 0) break;
    chunks.push(buffer.subarray(0, bytesRead));
    left -= bytesRead;
  }
  return Buffer.concat(chunks);
};

/**
 * The bytes of a regular file of at most `maxBytes`. Never waits on a device or a pipe that was not asked for,
 * never reads more than one byte beyond the bound, whatever the file claims its size to be.
 */
export const readBytes = async (
  path: string,
  maxBytes: number,
  options: Options = {},
): Promise<FileBytes> => {
  let handle: FileHandle | undefined;
  try {
    handle = await open(path, O_RDONLY | (options.pipe ? 0 : O_NONBLOCK) | (options.noLink ? O_NOFOLLOW : 0));
    const found = await handle.stat();
    if (!found.isFile() && !(options.pipe && found.isFIFO())) {
      return { problem: message('files.notAFile', { path: shownPath(path) }) };
    }
    const tooLarge = { problem: message('files.tooLarge', { path: shownPath(path), maxBytes }) };
    if (found.size > maxBytes) return tooLarge;
    const bytes = await readAtMost(handle, maxBytes + 1);
    return bytes.length > maxBytes ? tooLarge : { bytes };
  } catch (error) {
    return { problem: readProblem(error, path) };
  } finally {
    await handle?.close().catch(() => undefined);
  }
};

const strict = new TextDecoder('utf-8', { fatal: true });

const decoded = (bytes: Uint8Array): string | null => {
  try {
    return strict.decode(bytes);
  } catch {
    return null;
  }
};

const firstBrokenLine = (bytes: Buffer): number => {
  let start = 0;
  for (let line = 1; ; line += 1) {
    const end = bytes.indexOf(0x0a, start);
    if (end < 0 || decoded(bytes.subarray(start, end)) === null) return line;
    start = end + 1;
  }
};

/**
 * The text of a file that a person named: regular, at most `maxBytes`, whole UTF-8 (a byte order mark is dropped).
 * Symbolic links are followed: a person may keep recipes wherever they like, and nothing is written here.
 */
export const readNamedFile = async (
  path: string,
  maxBytes: number,
  options: Options = {},
): Promise<FileText> => {
  const read = await readBytes(path, maxBytes, options);
  if ('problem' in read) return read;
  const text = decoded(read.bytes);
  return text === null
    ? { problem: message('files.notUtf8', { path: shownPath(path), line: firstBrokenLine(read.bytes) }) }
    : { text };
};
