import type { Advice } from '../cook/advice.js';
import { advise } from '../cook/advise.js';
import { headline } from '../cook/candy.js';
import type { Cook, Doubt } from '../cook/cook.js';
import type { CookEvent, Happened } from '../cook/event.js';
import { interpret, type Queried } from '../cook/interpret.js';
import { step } from '../cook/step.js';
import type { Journal, JournalState } from '../journal/journal.js';
import { type Clock, cookClock, stampOf } from './clock.js';
import { isLong, type Silence, Watch } from './watch.js';

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
  /** The time between the last event and the beginning of this session, when the cook is taken up again. */
  readonly away?: Silence | null;
};

const wellSaved: JournalState = { saving: true, heldCount: 0, problem: null };

/**
 * The one loop that all drivers share: typed → interpret → append → step → advise. It knows no screen. Everything
 * typed is handled in its turn, with the time of its key.
 */
export class Session {
  #cook: Cook;
  #queue: Promise<unknown> = Promise.resolve();
  #away: Silence | null;
  readonly #clock: Clock;
  readonly #journal: Journal | null;
  readonly #seconds: () => number;
  readonly #watch: Watch;
  readonly #gapListeners = new Set<() => void>();

  constructor({ cook, journal, clock, startsAt, away = null }: SessionOptions) {
    this.#cook = cook;
    this.#journal = journal;
    this.#clock = clock;
    this.#away = away;
    this.#seconds = cookClock(clock, Math.max(startsAt, cook.t));
    this.#watch = new Watch(clock);
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

  /**
   * From now on time is that of this machine, not of a recorded feed: a long time in which nothing could be heard,
   * before this session or while it runs, becomes an event of its own before anything else does.
   */
  attend(): Promise<void> {
    const away = this.#away;
    this.#away = null;
    return this.#inTurn(async () => {
      this.#watch.begin(() => void this.#notice());
      if (away !== null && isLong(away)) await this.#gap(away);
    });
  }

  /** A line by hands, at this moment or at `t`. */
  type(typed: string, t = this.now()): Promise<Outcome> {
    void this.#notice();
    return this.#inTurn(async () => {
      const at = Math.max(t, this.#cook.t);
      const read = interpret(typed, advise(this.#cook, at));
      if (read.kind === 'queried') return { kind: 'queried', queried: read, advice: advise(this.#cook, at) };
      return this.#happen(read, at);
    });
  }

  /** An event that nobody typed: a feed's reading, a simulated pot. */
  happen(event: CookEvent, t = this.now()): Promise<Outcome> {
    void this.#notice();
    return this.#inTurn(() => this.#happen(event, Math.max(t, this.#cook.t)));
  }

  onSaving(listener: (state: JournalState) => void): () => void {
    return this.#journal?.onChange(listener) ?? (() => undefined);
  }

  /** Called when it was noticed that nothing could be heard for long; returns how to stop. */
  onGap(listener: () => void): () => void {
    this.#gapListeners.add(listener);
    return () => this.#gapListeners.delete(listener);
  }

  async close(): Promise<void> {
    this.#watch.end();
    await this.#queue;
    await this.#journal?.close();
  }

  /** The clock is looked at in the very moment; what is found takes its turn. */
  #notice(): Promise<void> {
    const silence = this.#watch.look();
    return silence === null ? Promise.resolve() : this.#inTurn(() => this.#gap(silence));
  }

  async #gap({ seconds, sure }: Silence): Promise<void> {
    if (headline(this.#cook) === 'over') return;
    await this.#happen({ kind: 'gap', seconds, sure }, Math.max(this.now(), this.#cook.t));
    for (const listener of this.#gapListeners) listener();
  }

  async #happen(event: CookEvent, t: number): Promise<Outcome> {
    const seq = Math.max(this.#journal?.nextSeq ?? 0, (this.#cook.log[this.#cook.length - 1]?.seq ?? 0) + 1);
    const happened: Happened = { seq, t, ...event };
    // On the disk first: nothing is ever shown that a kill could take away again.
    const saved =
      this.#journal === null
        ? 'not kept'
        : await this.#journal.append({ ...happened, ...stampOf(this.#clock) });
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
