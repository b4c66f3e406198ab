import { link, unlink } from 'node:fs/promises';
import { dirname } from 'node:path';
import { type Message, message } from '../texts/message.js';
import { shownPath } from './names.js';
import { codeOf, writeProblem } from './trouble.js';
import { besideName, createSynced, syncFolder } from './write.js';

const withoutHardLinks = new Set(['EPERM', 'ENOTSUP', 'EOPNOTSUPP', 'ENOSYS', 'EMLINK']);

/** Put the whole file under a name that nobody has; without hard links it is written in its place, still exclusively. */
const place = async (path: string, text: string): Promise<void> => {
  const temporary = besideName(path);
  try {
    await createSynced(temporary, text);
    await link(temporary, path);
  } catch (error) {
    if (!withoutHardLinks.has(codeOf(error))) throw error;
    await createSynced(path, text);
  } finally {
    await unlink(temporary).catch(() => undefined);
  }
};

/**
 * Write a file that must not exist yet, whole or not at all, readable by the owner only. Whatever stands under the name,
 * a file, a link or a folder, stays as it is. Never rejects.
 */
export const writeNew = async (
  path: string,
  text: string,
): Promise<'saved' | { readonly problem: Message }> => {
  try {
    await place(path, text);
    await syncFolder(dirname(path));
    return 'saved';
  } catch (error) {
    if (codeOf(error) === 'EEXIST') return { problem: message('files.exists', { path: shownPath(path) }) };
    return { problem: writeProblem(error, path) };
  }
};
