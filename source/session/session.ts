import type { Advice } from '../cook/advice.js';
import { advise } from '../cook/advise.js';
import type { Cook, Doubt } from '../cook/cook.js';
import type { CookEvent, Happened } from '../cook/event.js';
import { interpret, type Queried } from '../cook/interpret.js';
import { step } from '../cook/step.js';
import type { Journal, JournalState } from '../journal/journal.js';
import { type Clock, cookClock } from './clock.js';

/** What became of something typed. */
export type Outcome =
  | { readonly kind: 'queried'; readonly queried: Queried; readonly advice: Advice }
  | {
      readonly kind: 'event';
      readonly event: Happened;
      readonly saved: 'saved' | 'held' | 'not kept';
      /** This very reading is doubted. */
      readonly doubt: Doubt | null;
      readonly advice: Advice;
    };

export type SessionOptions = {
  readonly cook: Cook;
  /** Null: nothing is kept (a feed without a journal). */
  readonly journal: Journal | null;
  readonly clock: Clock;
  /** Seconds since the opening at which this session begins. */
  readonly startsAt: number;
};

const wellSaved: JournalState = { saving: true, heldCount: 0, problem: null };

/**
 * The one loop that all drivers share: typed → interpret → append → step → advise. It knows no screen. Everything
 * typed is handled in its turn, with the time of its key.
 */
export class Session {
  #cook: Cook;
  #queue: Promise<unknown> = Promise.resolve();
  readonly #clock: Clock;
  readonly #journal: Journal | null;
  readonly #seconds: () => number;

  constructor({ cook, journal, clock, startsAt }: SessionOptions) {
    this.#cook = cook;
    this.#journal = journal;
    this.#clock = clock;
    this.#seconds = cookClock(clock, Math.max(startsAt, cook.t));
  }

  get cook(): Cook {
    return this.#cook;
  }

  get saving(): JournalState {
    return this.#journal?.state ?? wellSaved;
  }

  /** Seconds since the cook opened. */
  now(): number {
    return this.#seconds();
  }

  advice(now = this.now()): Advice {
    return advise(this.#cook, now);
  }

  /** A line by hands, at this moment or at `t`. */
  type(typed: string, t = this.now()): Promise<Outcome> {
    return this.#inTurn(async () => {
      const read = interpret(typed, advise(this.#cook, t));
      if (read.kind === 'queried') return { kind: 'queried', queried: read, advice: advise(this.#cook, t) };
      return this.#happen(read, t);
    });
  }

  /** An event that nobody typed: a feed's reading, a simulated pot. */
  happen(event: CookEvent, t = this.now()): Promise<Outcome> {
    return this.#inTurn(() => this.#happen(event, t));
  }

  onSaving(listener: (state: JournalState) => void): () => void {
    return this.#journal?.onChange(listener) ?? (() => undefined);
  }

  async close(): Promise<void> {
    await this.#queue;
    await this.#journal?.close();
  }

  async #happen(event: CookEvent, t: number): Promise<Outcome> {
    const seq = Math.max(this.#journal?.nextSeq ?? 0, (this.#cook.log[this.#cook.length - 1]?.seq ?? 0) + 1);
    const happened: Happened = { seq, t, ...event };
    const stamp = { at: new Date(this.#clock.wall()).toISOString(), up: this.#clock.up() };
    // On the disk first: nothing is ever shown that a kill could take away again.
    const saved = this.#journal === null ? 'not kept' : await this.#journal.append({ ...happened, ...stamp });
    this.#cook = step(this.#cook, happened);
    const { doubt } = this.#cook;
    return {
      kind: 'event',
      event: happened,
      saved,
      doubt: doubt?.seq === seq ? doubt : null,
      advice: advise(this.#cook, t),
    };
  }

  #inTurn<Result>(work: () => Promise<Result>): Promise<Result> {
    const result = this.#queue.then(work);
    this.#queue = result.catch(() => undefined);
    return result;
  }
}
