/** How long nothing has come, seconds, against how long it usually takes; null: too little has come to tell. */
export type FeedSilence = {
  readonly seconds: number;
  readonly usualSeconds: number | null;
  readonly because: 'stalled' | 'no writer';
};

const remembered = 20;
/** Fewer say nothing of what is usual. */
const leastIntervals = 2;
/** Lines that come together came at one moment, seconds. */
const togetherSeconds = 0.05;
/** So many times the usual interval, and at least so long, is clearly longer, seconds. Our judgement. */
const clearlyLonger = { times: 3, leastSeconds: 5 } as const;
/** How long the first lines may take, seconds. Our judgement. */
const patienceSeconds = 60;

/** When lines came, and so when one is missed. Times are seconds of one clock that never falls. */
export class Arrivals {
  readonly #intervals: number[] = [];
  #lastAt: number | null = null;
  #beganAt: number | null = null;
  #ofThisWriter = 0;
  #hasEnded = false;
  any = false;

  begin(now: number): void {
    this.#beganAt = now;
    this.#ofThisWriter = 0;
    this.#hasEnded = false;
  }

  /** Its writer is gone. */
  ended(): void {
    this.#hasEnded = true;
  }

  came(now: number): void {
    const since = this.#lastAt === null ? 0 : now - this.#lastAt;
    if (since > togetherSeconds) this.#intervals.push(since);
    if (this.#intervals.length > remembered) this.#intervals.shift();
    this.#lastAt = now;
    this.#ofThisWriter += 1;
    this.any = true;
  }

  silence(now: number): FeedSilence | null {
    const since = Math.max(this.#lastAt ?? 0, this.#beganAt ?? 0);
    const seconds = now - since;
    const usualSeconds = this.#usual();
    // Somebody who opens the pipe for each line is not gone in between.
    if (this.#hasEnded && (!this.any || this.#ofThisWriter > 1))
      return { seconds, usualSeconds, because: 'no writer' };
    if (this.#lastAt === null && this.#beganAt === null) return null;
    const limit =
      usualSeconds === null
        ? patienceSeconds
        : Math.max(clearlyLonger.leastSeconds, clearlyLonger.times * usualSeconds);
    if (seconds <= limit) return null;
    return { seconds, usualSeconds, because: this.#hasEnded ? 'no writer' : 'stalled' };
  }

  /** The median: one pause does not make it slow. */
  #usual(): number | null {
    if (this.#intervals.length < leastIntervals) return null;
    const sorted = this.#intervals.toSorted((one, other) => one - other);
    return sorted[Math.floor((sorted.length - 1) / 2)] ?? null;
  }
}
