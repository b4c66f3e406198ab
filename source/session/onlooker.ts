import type { Cook } from '../cook/cook.js';
import type { Happened } from '../cook/event.js';
import { openCook } from '../cook/open.js';
import { readEvent } from '../cook/read-event.js';
import { step } from '../cook/step.js';
import type { Followed } from '../journal/follow.js';
import type { Entry } from '../journal/line.js';
import { type Clock, type LastStamp, secondsSince } from './clock.js';

const stampOfEntry = (entry: Entry): LastStamp => ({
  t: entry.t,
  up: entry.up,
  at: entry.at,
  boot: typeof entry.boot === 'string' ? entry.boot : null,
});

/** The cook as it stands after one more event; null before its first. */
const after = (cook: Cook | null, event: Happened): Cook | null => {
  if (cook !== null) return step(cook, event);
  return event.kind === 'opened' ? openCook(event) : null;
};

/**
 * A cook as it is seen from outside, from its journal alone. Between events its time runs on by the machine's up-time,
 * or by the wall clock where the journal is written on another machine.
 */
export class Onlooker {
  #reading: Cook | null = null;
  #cook: Cook | null = null;
  #last: LastStamp | null = null;
  #latest = 0;
  #isNew = false;

  constructor(private readonly clock: Clock) {}

  /** As far as all of its journal has been read; null before its first event. */
  get cook(): Cook | null {
    return this.#cook;
  }

  /** Seconds since the cook opened; never falls while the same journal is read. */
  now(): number {
    if (this.#last === null) return 0;
    const { seconds } = secondsSince(this.#last, this.clock);
    this.#latest = Math.max(this.#latest, this.#last.t + seconds);
    return this.#latest;
  }

  /** One thing more of its journal; true when there is something new to see. */
  hear(followed: Followed): boolean {
    switch (followed.what) {
      case 'entry':
        this.#entry(followed.entry);
        return false;
      case 'startedOver':
        this.#reading = null;
        this.#last = null;
        this.#latest = 0;
        this.#isNew = true;
        return false;
      case 'upToDate': {
        const isNew = this.#isNew;
        this.#cook = this.#reading;
        this.#isNew = false;
        return isNew;
      }
      default:
        return false;
    }
  }

  #entry(entry: Entry): void {
    const event = readEvent(entry);
    this.#last = stampOfEntry(entry);
    if (event === null) return;
    this.#reading = after(this.#reading, event);
    this.#isNew = true;
  }
}
