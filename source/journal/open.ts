import { takeLock } from '../files/lock.js';
import { shownPath } from '../files/names.js';
import { bounds, readBytes } from '../files/read.js';
import { type Message, message } from '../texts/message.js';
import { diskIo } from './io.js';
import { type Journal, lockPath, OpenJournal, type OpenOptions, type Scheduler } from './journal.js';
import { Kept } from './kept.js';
import { looksLikeJournal, mendingBytes, type Recovered, recover } from './recover.js';

export type OpenAnswer =
  | { readonly journal: Journal; readonly recovered: Recovered }
  | { readonly problem: Message };

const timers: Scheduler = {
  after: (milliseconds, work) => {
    const timer = setTimeout(work, milliseconds);
    timer.unref();
    return () => clearTimeout(timer);
  },
};

const nothing = recover(new Uint8Array());

const isMissing = (problem: Message): boolean =>
  problem.id === 'files.notRead' && (problem.values as { trouble: string }).trouble === 'missing';

/**
 * Open the journal `path`, new or to be resumed, and lock it. The answer is a problem when another console holds it,
 * when something else than a journal is in its place, or when it cannot be read. A disk that cannot be written is no
 * problem here: the cook goes on and the journal's state says so. Never rejects.
 */
export const openJournal = async (options: OpenOptions): Promise<OpenAnswer> => {
  const all: Required<OpenOptions> = { io: diskIo, scheduler: timers, lock: takeLock, ...options };
  const { path } = all;
  const answer = await all.lock(lockPath(path));
  if ('heldBy' in answer) {
    const { pid, host, since } = answer.heldBy;
    const values = { pid, host: shownPath(host), since: shownPath(since), sameHost: answer.sameHost };
    return { problem: message('journal.heldElsewhere', values) };
  }
  const lock = 'lock' in answer ? answer.lock : null;
  const refuse = async (problem: Message): Promise<OpenAnswer> => {
    await lock?.release();
    return { problem };
  };
  const read = await readBytes(path, bounds.journal, { noLink: true });
  if ('problem' in read && !isMissing(read.problem)) return refuse(read.problem);
  const bytes = 'bytes' in read ? read.bytes : Buffer.alloc(0);
  const recovered = bytes.length > 0 ? recover(bytes) : nothing;
  if (!looksLikeJournal(bytes, recovered)) {
    return refuse(message('journal.notAJournal', { path: shownPath(path) }));
  }
  const kept = new Kept();
  kept.add(bytes);
  const nextSeq = recovered.entries.reduce((highest, { seq }) => Math.max(highest, seq), 0) + 1;
  const journal = new OpenJournal(all, kept, lock, nextSeq);
  if ('error' in answer) journal.startHeld(answer.error);
  await journal.mend(mendingBytes(bytes, recovered));
  return { journal, recovered };
};
