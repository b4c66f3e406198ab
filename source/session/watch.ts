import type { Clock } from './clock.js';

/** Time in which nothing could be heard; `sure`: measured by the machine's own clock. */
export type Silence = { readonly seconds: number; readonly sure: boolean };

/** A time in which anything may have happened to the pot, seconds. Our judgement. */
export const longGapSeconds = 120;
/** How often the program looks at the clock for the sake of looking, seconds. */
const beatSeconds = 5;

/** Long enough, or of unknown length: then it is asked what became of the pot. */
export const isLong = ({ seconds, sure }: Silence): boolean => seconds > longGapSeconds || !sure;

/**
 * Notices that the machine slept or the program was stopped: the clock that counts sleep has gone much further
 * between two looks than it should.
 */
export class Watch {
  #lookedAt: number | null = null;
  #stop: () => void = () => undefined;

  constructor(private readonly clock: Clock) {}

  /** From now on; `onBeat` is called every few seconds. */
  begin(onBeat: () => void): void {
    this.#lookedAt = this.clock.up();
    this.#stop = this.clock.every?.(beatSeconds, onBeat) ?? this.#stop;
  }

  end(): void {
    this.#stop();
    this.#lookedAt = null;
  }

  /** The time slept or stopped since the last look, when it was long; null otherwise. */
  look(): Silence | null {
    if (this.#lookedAt === null || this.clock.every === undefined) return null;
    const up = this.clock.up();
    const silence = { seconds: up - this.#lookedAt, sure: true };
    this.#lookedAt = up;
    return isLong(silence) ? silence : null;
  }
}
