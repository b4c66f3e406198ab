import { randomBytes } from 'node:crypto';
import { link, lstat, unlink } from 'node:fs/promises';
import { setTimeout as pause } from 'node:timers/promises';
import { type Message, message } from '../texts/message.js';
import { shownPath } from './names.js';
import { hasEnded, isThisMachine, ownIdentity, type ProcessIdentity } from './process.js';
import { readNamedFile } from './read.js';
import { codeOf, readProblem, writeProblem } from './trouble.js';
import { besideName, createSynced } from './write.js';

/** Who holds a lock, and since when (wall clock, ISO 8601, for people only: nothing is ever decided by it). */
export type Holder = ProcessIdentity & { readonly since: string; readonly token: string };

export type Lock = {
  readonly path: string;
  /** Whether the lock is still ours on the disk: its folder may have been removed. */
  isHeld(): Promise<boolean>;
  /** Give it back. Never rejects; somebody else's lock is left alone. */
  release(): Promise<void>;
};

export type LockAnswer =
  | { readonly lock: Lock }
  | { readonly heldBy: Holder; readonly sameHost: boolean }
  | { readonly problem: Message; readonly error: unknown };

type Options = { readonly self?: ProcessIdentity; readonly now?: () => Date };

const lockBytes = 4096;
const mostTries = 100;
const mostClaims = 3;

type Found =
  | { readonly holder: Holder }
  | 'none'
  | 'unreadable'
  | { readonly problem: Message; readonly error: unknown };

const holderFrom = (text: string): Holder | null => {
  try {
    const { pid, host, start, since, token } = JSON.parse(text) as Record<string, unknown>;
    const whole =
      Number.isSafeInteger(pid) &&
      (pid as number) > 0 &&
      typeof host === 'string' &&
      (start === null || typeof start === 'string') &&
      typeof since === 'string' &&
      typeof token === 'string';
    return whole ? { pid: pid as number, host, start: start as string | null, since, token } : null;
  } catch {
    return null;
  }
};

const look = async (path: string): Promise<Found> => {
  try {
    if (!(await lstat(path)).isFile()) {
      return { problem: message('files.notAFile', { path: shownPath(path) }), error: { code: 'ELOOP' } };
    }
  } catch (error) {
    return codeOf(error) === 'ENOENT' ? 'none' : { problem: readProblem(error, path), error };
  }
  const read = await readNamedFile(path, lockBytes, { noLink: true });
  const holder = 'text' in read ? holderFrom(read.text) : null;
  return holder === null ? 'unreadable' : { holder };
};

/** A lock that is being written somewhere without hard links is empty for a moment; one that stays so names nobody. */
const lookTwice = async (path: string): Promise<Found> => {
  let found = await look(path);
  for (let tries = 0; found === 'unreadable' && tries < 5; tries += 1) {
    await pause(50);
    found = await look(path);
  }
  return found;
};

const withoutHardLinks = new Set(['EPERM', 'ENOTSUP', 'EOPNOTSUPP', 'ENOSYS', 'EMLINK']);

/** Put the lock there with its content in one step, so that nobody ever reads half of it. False: one is there. */
const place = async (path: string, holder: Holder): Promise<boolean> => {
  const text = `${JSON.stringify(holder)}\n`;
  const temporary = besideName(path);
  try {
    await createSynced(temporary, text);
    await link(temporary, path);
    return true;
  } catch (error) {
    if (codeOf(error) === 'EEXIST') return false;
    if (!withoutHardLinks.has(codeOf(error))) throw error;
  } finally {
    await unlink(temporary).catch(() => undefined);
  }
  try {
    await createSynced(path, text);
    return true;
  } catch (error) {
    if (codeOf(error) === 'EEXIST') return false;
    throw error;
  }
};

const sameLock = (one: Found, other: Found): boolean =>
  typeof one === 'object' && typeof other === 'object' && 'holder' in one && 'holder' in other
    ? one.holder.token === other.holder.token
    : one === other;

/**
 * Remove a lock whose process is gone. Of several consoles that find it at once, one gets the claim (itself a
 * lock); it looks again before it removes, so that a lock placed meanwhile by a quicker one is never removed.
 */
const clear = async (path: string, stale: Found, self: ProcessIdentity, depth: number): Promise<void> => {
  const claim = await take(`${path}.claim`, self, () => new Date(), depth + 1);
  if (!('lock' in claim)) {
    await pause(20);
    return;
  }
  try {
    if (sameLock(await look(path), stale)) await unlink(path);
  } finally {
    await claim.lock.release();
  }
};

const lockAt = (path: string, token: string): Lock => {
  const isHeld = async () => {
    const found = await look(path);
    return typeof found === 'object' && 'holder' in found && found.holder.token === token;
  };
  return {
    path,
    isHeld,
    release: async () => {
      try {
        if (await isHeld()) await unlink(path);
      } catch {
        // A lock that cannot be removed names a process that will be gone: the next console takes it over.
      }
    },
  };
};

const take = async (path: string, self: ProcessIdentity, now: () => Date, depth = 0): Promise<LockAnswer> => {
  const holder: Holder = {
    ...self,
    since: now().toISOString(),
    token: randomBytes(8).toString('hex'),
  };
  for (let tries = 0; ; tries += 1) {
    if (await place(path, holder)) return { lock: lockAt(path, holder.token) };
    const found = await lookTwice(path);
    if (found === 'none' && tries < mostTries) continue;
    if (typeof found === 'object' && 'problem' in found) return found;
    const held = typeof found === 'object' ? found.holder : null;
    const patienceOver = tries >= mostTries || depth >= mostClaims;
    if (held !== null && (patienceOver || !(await hasEnded(held, self)))) {
      return { heldBy: held, sameHost: isThisMachine(held, self) };
    }
    if (patienceOver) throw Object.assign(new Error('the lock changes all the time'), { code: 'EBUSY' });
    await clear(path, found, self, depth);
  }
};

/**
 * Take the lock file `path`. It holds pid, host and process start. One whose process has ended is taken over at
 * once, never by age; one held on another machine stays held. Symbolic links are refused. Never rejects.
 */
export const takeLock = async (path: string, options: Options = {}): Promise<LockAnswer> => {
  try {
    return await take(path, options.self ?? (await ownIdentity()), options.now ?? (() => new Date()));
  } catch (error) {
    return { problem: writeProblem(error, path), error };
  }
};

/** Who holds a lock at this moment, for an onlooker: nothing is taken, removed or waited for. Null: nobody who lives. Never rejects. */
export const livingHolder = async (path: string): Promise<Holder | null> => {
  const found = await look(path);
  if (typeof found !== 'object' || !('holder' in found)) return null;
  const self = await ownIdentity();
  return (await hasEnded(found.holder, self)) ? null : found.holder;
};
