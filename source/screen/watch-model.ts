import type { Language } from '../units/language.js';
import type { WatchOptions } from './options.js';
import { nextGlance } from './waking.js';
import type { Watched } from './watch-frame.js';
import { watchedIn } from './watch-sight.js';

/** What an onlooker sees, from moment to moment: anew when something happened, when a number runs, else it sleeps. */
export class WatchModel {
  #watched: Watched;
  #timer: NodeJS.Timeout | null = null;
  readonly #listeners = new Set<() => void>();
  readonly #stop: () => void;

  constructor(
    private readonly audience: WatchOptions['audience'],
    private readonly language: Language | undefined,
  ) {
    this.#watched = watchedIn(audience.sight, language);
    this.#stop = audience.onChange(() => this.#look());
    this.#sleep();
  }

  /** For React's useSyncExternalStore. */
  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };
  readonly snapshot = (): Watched => this.#watched;

  close(): void {
    this.#stop();
    if (this.#timer !== null) clearTimeout(this.#timer);
    this.#listeners.clear();
  }

  #look(): void {
    this.#watched = watchedIn(this.audience.sight, this.language);
    this.#sleep();
    for (const listener of [...this.#listeners]) listener();
  }

  #sleep(): void {
    if (this.#timer !== null) clearTimeout(this.#timer);
    this.#timer = null;
    const watched = this.#watched;
    // Where there is nothing to run, only what happens wakes.
    if (watched.kind === 'waiting' || watched.advice.phase === 'over') return;
    this.#timer = setTimeout(() => this.#look(), nextGlance(watched.advice, 1));
  }
}
