import type { FileTrouble } from '../texts/file-trouble.js';
import { type Message, message } from '../texts/message.js';
import { shownPath } from './names.js';

const byCode: Readonly<Record<string, FileTrouble>> = {
  ENOSPC: 'full',
  EDQUOT: 'quota',
  EROFS: 'readOnly',
  EACCES: 'notAllowed',
  EPERM: 'notAllowed',
  ENOENT: 'missing',
  ENOTDIR: 'missing',
  EIO: 'device',
  ENXIO: 'device',
  ENODEV: 'device',
  ESTALE: 'device',
  ELOOP: 'link',
  EISDIR: 'notAFile',
};

/** The system's error code ("ENOSPC"), or "unknown" where the error carries none. */
export const codeOf = (error: unknown): string => {
  const code: unknown = typeof error === 'object' && error !== null ? Reflect.get(error, 'code') : undefined;
  return typeof code === 'string' ? code : 'unknown';
};

/** An error with a trouble of our own finding, where the system reports none (a replaced file, a slow disk). */
export class FileTroubleError extends Error {
  constructor(readonly trouble: FileTrouble) {
    super(trouble);
  }
}

export const troubleOf = (error: unknown): FileTrouble =>
  error instanceof FileTroubleError ? error.trouble : (byCode[codeOf(error)] ?? 'other');

/** What to tell a person when `path` could not be read. */
export const readProblem = (error: unknown, path: string): Message =>
  message('files.notRead', { path: shownPath(path), trouble: troubleOf(error), code: codeOf(error) });

/** What to tell a person when `path` could not be written. */
export const writeProblem = (error: unknown, path: string): Message =>
  message('files.notWritten', { path: shownPath(path), trouble: troubleOf(error), code: codeOf(error) });
