import { dirname } from 'node:path';
import type { Lock, LockAnswer } from '../files/lock.js';
import { shownPath } from '../files/names.js';
import { bounds } from '../files/read.js';
import { codeOf, FileTroubleError, troubleOf } from '../files/trouble.js';
import { type Message, message } from '../texts/message.js';
import type { JournalIo } from './io.js';
import type { Kept } from './kept.js';
import { encodeLine, longestLine, type Stamped } from './line.js';
import { JournalPlace } from './place.js';

export type JournalState = {
  /** False from the first event that could not be saved until all are. */
  readonly saving: boolean;
  /** Events that happened and are not on the disk yet. */
  readonly heldCount: number;
  /** Why not; or a last event that can never be saved. Null when all is well. */
  readonly problem: Message | null;
};

export type Journal = {
  readonly path: string;
  /** The `seq` that the next event must carry. Rises at once when `append` is called. */
  readonly nextSeq: number;
  readonly state: JournalState;
  /**
   * Put an event on the list. `saved`: it is on the disk and survives a kill. `held`: not yet; the journal keeps it
   * in its place and saves it by itself as soon as it can. Never rejects; events are saved in the order of the calls.
   */
  append<Event extends Stamped>(event: Event): Promise<'saved' | 'held'>;
  /** Call `listener` after every change of `state`; returns how to stop. */
  onChange(listener: (state: JournalState) => void): () => void;
  /** Try once more to save what is held, then give file and lock back. Never rejects, never waits for ever. */
  close(): Promise<void>;
};

/** Runs `work` after so many milliseconds unless cancelled; must not keep the program alive. */
export type Scheduler = { after(milliseconds: number, work: () => void): () => void };

export type OpenOptions = {
  readonly path: string;
  readonly io?: JournalIo;
  readonly scheduler?: Scheduler;
  readonly lock?: (path: string) => Promise<LockAnswer>;
};

/** Our judgement: short enough that a person sees it heal, long enough to cost nothing on a broken disk. */
export const retryMilliseconds = 3000;
/** A key must never wait longer for a disk that hangs. Our judgement. */
export const patienceMilliseconds = 3000;

export const lockPath = (path: string): string => `${path}.lock`;

type Pending = {
  readonly bytes: Buffer;
  readonly isEvent: boolean;
  answer: ((how: 'saved' | 'held') => void) | null;
};

const well: JournalState = { saving: true, heldCount: 0, problem: null };

/** The journal of a cook that goes on; made by `openJournal`. */
export class OpenJournal implements Journal {
  #state = well;
  #queue: Pending[] = [];
  #running: Promise<void> | null = null;
  #cancelRetry: (() => void) | null = null;
  #listeners = new Set<(state: JournalState) => void>();
  #lock: Lock | null;
  readonly #place: JournalPlace;
  #closed = false;
  #queuedBytes = 0;
  #nextSeq: number;

  constructor(
    private readonly options: Required<OpenOptions>,
    private readonly kept: Kept,
    lock: Lock | null,
    nextSeq: number,
  ) {
    this.#lock = lock;
    this.#nextSeq = nextSeq;
    this.#place = new JournalPlace(options.path, options.io, kept);
  }

  get path(): string {
    return this.options.path;
  }

  get nextSeq(): number {
    return this.#nextSeq;
  }

  get state(): JournalState {
    return this.#state;
  }

  onChange(listener: (state: JournalState) => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  async append<Event extends Stamped>(event: Event): Promise<'saved' | 'held'> {
    this.#nextSeq = Math.max(this.#nextSeq, event.seq + 1);
    if (this.#closed) return 'held';
    const line = encodeLine(event);
    if (line === null) {
      const maxBytes = longestLine(event.kind);
      return this.#refuse(
        message('journal.tooLong', { kind: shownPath(event.kind), maxBytes }),
        this.#state.saving,
      );
    }
    const bytes = event.kind === 'opened' ? Buffer.concat([line, line]) : line;
    if (this.kept.bytes + this.#queuedBytes + bytes.length > bounds.journal) {
      return this.#refuse(message('journal.full', { maxBytes: bounds.journal }), false);
    }
    return this.#add(bytes, true);
  }

  /** Bring a journal that was torn back in order, before anything is added. */
  async mend(bytes: Buffer): Promise<void> {
    if (bytes.length > 0) await this.#add(bytes, false);
  }

  /** The journal could not even be locked: held from the start, tried again like everything else. */
  startHeld(error: unknown): void {
    this.#fail(error);
  }

  async close(): Promise<void> {
    const ended = await this.#withinPatience(this.#flush().then(() => this.#place.close()));
    this.#closed = true;
    this.#cancelRetry?.();
    if (!ended) this.#answerHeld();
    await this.#lock?.release();
  }

  #withinPatience(work: Promise<void>): Promise<boolean> {
    return new Promise((resolve) => {
      const cancel = this.options.scheduler.after(patienceMilliseconds, () => resolve(false));
      void work.then(() => {
        cancel();
        resolve(true);
      });
    });
  }

  #refuse(problem: Message, saving: boolean): 'held' {
    this.#change({ ...this.#state, saving, problem });
    return 'held';
  }

  #add(bytes: Buffer, isEvent: boolean): Promise<'saved' | 'held'> {
    return new Promise((resolve) => {
      const cancel = this.#impatient();
      const answer = (how: 'saved' | 'held') => {
        cancel();
        resolve(how);
      };
      this.#queue.push({ bytes, isEvent, answer });
      this.#queuedBytes += bytes.length;
      if (!this.#state.saving) this.#change({ ...this.#state, heldCount: this.#heldCount() });
      if (!this.#state.saving && this.#running !== null) this.#answerHeld();
      void this.#flush();
    });
  }

  #heldCount(): number {
    return this.#queue.filter(({ isEvent }) => isEvent).length;
  }

  /** A write that hangs (a sleeping disk, a network drive) is left to finish; nobody waits for it. */
  #impatient(): () => void {
    return this.options.scheduler.after(patienceMilliseconds, () => {
      this.#answerHeld();
      this.#troubled(new FileTroubleError('slow'));
    });
  }

  #answerHeld(): void {
    for (const pending of this.#queue) {
      pending.answer?.('held');
      pending.answer = null;
    }
  }

  #flush(mayMakeFolder = false): Promise<void> {
    this.#running ??= this.#work(mayMakeFolder).finally(() => {
      this.#running = null;
    });
    return this.#running;
  }

  async #work(mayMakeFolder: boolean): Promise<void> {
    while (this.#queue.length > 0 && !this.#closed) {
      const batch = [...this.#queue];
      try {
        await this.#save(Buffer.concat(batch.map(({ bytes }) => bytes)), mayMakeFolder);
      } catch (error) {
        this.#fail(error);
        return;
      }
      this.#saved(batch);
    }
  }

  async #save(bytes: Buffer, mayMakeFolder: boolean): Promise<void> {
    if (mayMakeFolder) await this.options.io.makeFolder(dirname(this.path));
    if (this.#lock === null || !this.#state.saving) await this.#holdLock();
    try {
      await this.#place.add(bytes);
    } catch (error) {
      if (troubleOf(error) !== 'gone') throw error;
      await this.#holdLock();
      await this.#place.add(bytes);
    }
  }

  /** Looked at again after a failure only: the lock may have been removed with its folder. */
  async #holdLock(): Promise<void> {
    if (this.#lock !== null && (await this.#lock.isHeld())) return;
    this.#lock = null;
    const answer = await this.options.lock(lockPath(this.path));
    if ('problem' in answer) throw answer.error;
    if ('heldBy' in answer) throw new FileTroubleError('taken');
    this.#lock = answer.lock;
  }

  #saved(batch: readonly Pending[]): void {
    this.#queue = this.#queue.slice(batch.length);
    for (const pending of batch) {
      this.kept.add(pending.bytes);
      this.#queuedBytes -= pending.bytes.length;
    }
    if (this.#queue.length === 0) {
      this.#cancelRetry?.();
      this.#cancelRetry = null;
    }
    const all = this.#queue.length === 0;
    this.#change(all ? well : { ...this.#state, heldCount: this.#state.saving ? 0 : this.#heldCount() });
    for (const pending of batch) pending.answer?.('saved');
  }

  #fail(error: unknown): void {
    this.#answerHeld();
    this.#troubled(error);
    if (this.#closed || this.#cancelRetry !== null) return;
    this.#cancelRetry = this.options.scheduler.after(retryMilliseconds, () => {
      this.#cancelRetry = null;
      void this.#flush(true);
    });
  }

  #troubled(error: unknown): void {
    const problem = message('journal.notSaved', {
      path: shownPath(this.path),
      trouble: troubleOf(error),
      code: codeOf(error),
    });
    this.#change({ saving: false, heldCount: this.#heldCount(), problem });
  }

  #change(state: JournalState): void {
    const { saving, heldCount, problem } = this.#state;
    if (saving === state.saving && heldCount === state.heldCount && problem === state.problem) return;
    this.#state = state;
    for (const listener of this.#listeners) listener(state);
  }
}
