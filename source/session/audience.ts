import { setTimeout as pause } from 'node:timers/promises';
import { headline } from '../cook/candy.js';
import type { Cook } from '../cook/cook.js';
import { followJournal } from '../journal/follow.js';
import { journalPath } from '../journal/list.js';
import { isLed, runningCooks } from '../journal/running.js';
import type { Clock } from './clock.js';
import { Onlooker } from './onlooker.js';

/** What the audience looks at. `cook` null: nothing yet; `path` null: no cook has begun. */
export type Sight = {
  readonly path: string | null;
  readonly cook: Cook | null;
  readonly now: number;
  readonly isLed: boolean;
};

export type AudienceOptions = {
  /** Where cooks are kept; what runs in an earlier folder goes before what runs in a later one. */
  readonly folders: readonly string[];
  /** The cook that was named; null: whichever runs, and the next when it is over. */
  readonly path: string | null;
  readonly clock: Clock;
  /** How long to wait between two looks, milliseconds. */
  readonly lookMilliseconds?: number;
};

const usualLookMilliseconds = 500;

/**
 * Follows a cook that somebody else leads. It only ever reads: no lock, no file of its own; the one who leads cannot
 * tell whether anybody looks.
 */
export class Audience {
  readonly #options: AudienceOptions;
  readonly #stop = new AbortController();
  readonly #listeners = new Set<() => void>();
  #path: string | null;
  #onlooker: Onlooker;
  #isLed = false;
  #next: AbortController | null = null;

  constructor(options: AudienceOptions) {
    this.#options = options;
    this.#path = options.path;
    this.#onlooker = new Onlooker(options.clock);
  }

  get sight(): Sight {
    const cook = this.#onlooker.cook;
    return { path: this.#path, cook, now: this.#onlooker.now(), isLed: this.#isLed };
  }

  /** Called when something new can be seen. */
  onChange(listener: () => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  /** Look until `end`. Rejects with the system's error when a named journal cannot be read. */
  async run(): Promise<void> {
    while (!this.#stop.signal.aborted) {
      const path = this.#path ?? (await this.#running());
      if (path === null) {
        await this.#wait(this.#stop.signal);
        continue;
      }
      await this.#follow(path);
    }
  }

  end(): void {
    this.#stop.abort();
    this.#next?.abort();
  }

  /** One look without waiting: what is running now, as far as it is written. */
  async once(): Promise<Sight> {
    const path = this.#path ?? (await this.#running());
    if (path === null) return this.sight;
    const stop = new AbortController();
    this.#path = path;
    this.#isLed = await isLed(path);
    for await (const followed of followJournal(path, { signal: stop.signal })) {
      this.#onlooker.hear(followed);
      if (followed.what === 'upToDate') break;
    }
    return this.sight;
  }

  #tell(): void {
    for (const listener of [...this.#listeners]) listener();
  }

  async #running(): Promise<string | null> {
    for (const folder of this.#options.folders) {
      const [id] = await runningCooks(folder);
      if (id !== undefined) return journalPath(folder, id);
    }
    return null;
  }

  async #wait(signal: AbortSignal | undefined): Promise<void> {
    const milliseconds = this.#options.lookMilliseconds ?? usualLookMilliseconds;
    await pause(milliseconds, undefined, { signal }).catch(() => undefined);
  }

  /** One journal, until `end` or until another cook runs and nobody leads this one. */
  async #follow(path: string): Promise<void> {
    const next = new AbortController();
    this.#next = next;
    if (this.#stop.signal.aborted) next.abort();
    this.#path = path;
    this.#onlooker = new Onlooker(this.#options.clock);
    const wait = async (signal: AbortSignal | undefined): Promise<void> => {
      if (await this.#lookAround(path)) next.abort();
      await this.#wait(signal);
    };
    for await (const followed of followJournal(path, { signal: next.signal, wait })) {
      if (this.#onlooker.hear(followed)) this.#tell();
    }
  }

  /** Whether it is still led; true when another one is to be followed instead. */
  async #lookAround(path: string): Promise<boolean> {
    const led = await isLed(path);
    if (led !== this.#isLed) {
      this.#isLed = led;
      this.#tell();
    }
    if ((led && !this.isOver) || this.#options.path !== null) return false;
    const other = await this.#running();
    if (other === null || other === path) return false;
    this.#path = null;
    return true;
  }

  /** Nothing more happens in it. */
  get isOver(): boolean {
    const { cook } = this.#onlooker;
    return cook !== null && headline(cook) === 'over';
  }
}
