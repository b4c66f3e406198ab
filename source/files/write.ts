import { randomBytes } from 'node:crypto';
import { type FileHandle, lstat, open, rename, unlink } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { type Message, message } from '../texts/message.js';
import { shownPath } from './names.js';
import { O_CREAT, O_EXCL, O_NOFOLLOW, O_RDONLY, O_WRONLY } from './open-flags.js';
import { codeOf, writeProblem } from './trouble.js';

/** Make a new, renamed or removed name in `folder` last through a power cut, where the system can (not on Windows). */
export const syncFolder = async (folder: string): Promise<void> => {
  if (process.platform === 'win32') return;
  const handle = await open(folder, O_RDONLY);
  try {
    await handle.sync();
  } catch (error) {
    // Some file systems (network, FUSE) cannot sync a folder at all; the file itself is safe there.
    if (!['EINVAL', 'ENOTSUP', 'EBADF', 'EISDIR'].includes(codeOf(error))) throw error;
  } finally {
    await handle.close();
  }
};

/** Create `path`, which must not exist, readable by the owner only, with `text` on the disk before this returns. */
export const createSynced = async (path: string, text: string): Promise<void> => {
  const handle: FileHandle = await open(path, O_WRONLY | O_CREAT | O_EXCL | O_NOFOLLOW, 0o600);
  try {
    await handle.writeFile(text, 'utf8');
    await handle.sync();
  } finally {
    await handle.close();
  }
};

/** A name beside `path` that nobody uses: in the same folder, so that a rename stays within one file system. */
export const besideName = (path: string): string =>
  join(dirname(path), `.${basename(path).slice(0, 60)}.${randomBytes(6).toString('hex')}.tmp`);

const occupied = async (path: string): Promise<boolean> => {
  try {
    return !(await lstat(path)).isFile();
  } catch (error) {
    if (codeOf(error) === 'ENOENT') return false;
    throw error;
  }
};

/**
 * Write a file whole or not at all, readable by the owner only. Whoever reads `path` meanwhile sees the old
 * text or the new one. A symbolic link, folder or device in its place is refused, never written through.
 */
export const writeWhole = async (
  path: string,
  text: string,
): Promise<'saved' | { readonly problem: Message }> => {
  const temporary = besideName(path);
  try {
    if (await occupied(path)) return { problem: message('files.notAFile', { path: shownPath(path) }) };
    await createSynced(temporary, text);
    await rename(temporary, path);
    await syncFolder(dirname(path));
    return 'saved';
  } catch (error) {
    await unlink(temporary).catch(() => undefined);
    return { problem: writeProblem(error, path) };
  }
};
