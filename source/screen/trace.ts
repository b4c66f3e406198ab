import type { Advice } from '../cook/advice.js';
import { pathAhead, type Waypoint } from '../cook/ahead.js';
import type { Cook } from '../cook/cook.js';
import type { CookEvent, Happened } from '../cook/event.js';
import { fromDial } from '../cook/middle.js';
import { stepById } from '../cook/phases/index.js';
import { toCelsius } from '../units/temperature.js';

/** Readings of one stretch of time, summed up: true Celsius; `t` of the last of them. */
export type Bucket = {
  readonly t: number;
  readonly low: number;
  readonly high: number;
  readonly last: number;
};

/** Something that was done or tested: `celsius` where the syrup was then by its last reading, null if not known. */
export type TraceMark = {
  readonly t: number;
  readonly kind: 'test' | 'heat' | 'pot';
  readonly word: string;
  readonly celsius: number | null;
};

/** The projected way of the syrup, and the 80 % interval of the time to each point of it, as shares of that time. */
export type Ahead = {
  readonly from: number;
  readonly path: readonly Waypoint[];
  readonly lowShare: number;
  readonly highShare: number;
};

/** All that a plot of the cook needs, of bounded size. The same object as long as nothing happened. */
export type Trace = {
  readonly syrup: readonly Bucket[];
  readonly middle: readonly Bucket[];
  readonly marks: readonly TraceMark[];
  /** A reading that nobody has stood by yet. */
  readonly doubted: { readonly t: number; readonly celsius: number } | null;
  readonly ahead: Ahead | null;
};

const mostBuckets = 512;
const mostMarks = 64;
const waypoints = 10;

/** Readings as buckets of equal time. When there are too many, two and two become one: amortised constant time. */
class Series {
  #seconds = 1;
  #buckets: Bucket[] = [];

  add(t: number, celsius: number): void {
    this.#put({ t, low: celsius, high: celsius, last: celsius });
    if (this.#buckets.length <= mostBuckets) return;
    const all = this.#buckets;
    this.#seconds *= 2;
    this.#buckets = [];
    for (const one of all) this.#put(one);
  }

  #put(one: Bucket): void {
    const before = this.#buckets.at(-1);
    const same =
      before !== undefined && Math.floor(before.t / this.#seconds) === Math.floor(one.t / this.#seconds);
    if (!same) {
      this.#buckets.push(one);
      return;
    }
    this.#buckets[this.#buckets.length - 1] = {
      t: one.t,
      low: Math.min(before.low, one.low),
      high: Math.max(before.high, one.high),
      last: one.last,
    };
  }

  get buckets(): readonly Bucket[] {
    return this.#buckets;
  }
}

/** What an event means where it is only the answer to a step: "done" at "take it off" is "pot off". */
const meant = (event: Happened): CookEvent =>
  event.kind === 'done' ? (stepById(event.step)?.means ?? event) : event;

const aheadOf = (cook: Cook, { forecast, temperature, now }: Advice): Ahead | null => {
  if (forecast === null || temperature === null || forecast.seconds.typical <= 0) return null;
  const [floor, ceiling] = cook.batch.target.todayCelsius;
  const from = temperature.celsius;
  if (from >= floor) return null;
  const temperatures = Array.from(
    { length: waypoints },
    (_, index) => from + ((index + 1) / waypoints) * (ceiling - from),
  );
  const path = [{ t: now, celsius: from }, ...pathAhead(cook, now, temperatures)];
  const { low, typical, high } = forecast.seconds;
  return { from: now, path, lowShare: low / typical, highShare: high / typical };
};

/** Follows the list of what happened, each event once; only an undo begins anew. */
export class Tracer {
  #cook: Cook | null = null;
  #read = 0;
  #syrup = new Series();
  #middle = new Series();
  #marks: TraceMark[] = [];
  #last: number | null = null;
  #held: Happened | null = null;
  #trace: Trace = { syrup: [], middle: [], marks: [], doubted: null, ahead: null };

  /** The trace of this state; the same as before if it is the same state. */
  of(cook: Cook, advice: Advice): Trace {
    const before = this.#cook;
    if (before === cook) return this.#trace;
    const grown = before !== null && cook.length >= this.#read && cook.voided.length === before.voided.length;
    if (!grown) this.#begin();
    this.#cook = cook;
    const voided = new Set(grown ? [] : cook.voided);
    for (; this.#read < cook.length; this.#read += 1) {
      const event = cook.log[this.#read];
      if (event !== undefined && !voided.has(event.seq)) this.#take(event, cook);
    }
    this.#settle(cook);
    const { doubt } = cook;
    this.#trace = {
      syrup: this.#syrup.buckets,
      middle: this.#middle.buckets,
      marks: this.#marks,
      doubted: doubt === null ? null : { t: doubt.t, celsius: doubt.celsius },
      ahead: aheadOf(cook, advice),
    };
    return this.#trace;
  }

  #begin(): void {
    this.#read = 0;
    this.#syrup = new Series();
    this.#middle = new Series();
    this.#marks = [];
    this.#last = null;
    this.#held = null;
  }

  #take(event: Happened, cook: Cook): void {
    const said = meant(event);
    if (event.kind !== 'answer') this.#settle(cook);
    if (event.kind === 'reading') this.#held = event;
    else if (event.kind === 'answer' && event.question === 'reading.doubt') {
      // Nobody stands by it: it is not drawn.
      if (event.answer === 'no') this.#held = null;
    } else if (said.kind === 'cold water') this.#mark({ t: event.t, kind: 'test', word: said.outcome });
    else if (said.kind === 'heat') this.#mark({ t: event.t, kind: 'heat', word: `heat ${said.setting}` });
    else if (said.kind === 'pot')
      this.#mark({ t: event.t, kind: 'pot', word: `pot ${said.on ? 'on' : 'off'}` });
  }

  #mark(mark: Omit<TraceMark, 'celsius'>): void {
    this.#marks = [...this.#marks, { ...mark, celsius: this.#last }].slice(-mostMarks);
  }

  /** The latest reading is drawn once it is known that it is not doubted. */
  #settle(cook: Cook): void {
    const held = this.#held;
    if (held?.kind !== 'reading' || cook.doubt?.seq === held.seq) return;
    this.#held = null;
    const shown = toCelsius(held.value, held.unit);
    if (held.of === 'syrup') {
      this.#last = cook.batch.dial.toTrueCelsius(shown);
      this.#syrup.add(held.t, this.#last);
    }
    if (held.of === 'middle') this.#middle.add(held.t, fromDial(cook, shown));
  }
}
