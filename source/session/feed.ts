import { syrupRangeCelsius } from '../cook/readings.js';
import type { Tailed } from '../files/tail.js';
import { readProblem, troubleOf } from '../files/trouble.js';
import { type Message, message } from '../texts/message.js';
import { parseTemperature, type TemperatureUnit, toCelsius } from '../units/temperature.js';
import type { Clock } from './clock.js';
import { Arrivals } from './feed-arrivals.js';
import { FeedNotices } from './feed-notices.js';
import type { Session } from './session.js';

export type FeedOptions = {
  readonly session: Pick<Session, 'happen' | 'cook' | 'advice' | 'now'>;
  readonly path: string;
  readonly lines: AsyncIterable<Tailed>;
  readonly clock: Pick<Clock, 'up'>;
};

type Shown = { readonly value: number; readonly unit: TemperatureUnit };
/** A reading that waits for its turn, with when it came: by this machine's clock, and by the cook's. */
type Pending = Shown & { readonly at: number; readonly t: number };
type Taken = { readonly at: number; readonly celsius: number };

/** One reading a second at most; one every so often at least; sooner when it moves by so much, kelvin. Our judgement. */
const leastSeconds = 1;
const usualSeconds = 10;
const movedKelvin = 1;

/** A number that no syrup has is an open wire or a fault code: left out, where a person would be asked. */
const isOfSyrup = (celsius: number): boolean =>
  celsius >= syrupRangeCelsius[0] && celsius <= syrupRangeCelsius[1];

/**
 * A thermometer that writes by itself, beside the keyboard: its lines become readings by the feed, as often as is
 * worth keeping. That it stalls, jumps, ends or talks rubbish is noticed here; it never asks and never stops the
 * typing. Of the syrup only: after the pour nobody knows what the probe lies in.
 */
export class Feed {
  readonly #options: FeedOptions;
  readonly #notices: FeedNotices;
  readonly #arrivals = new Arrivals();
  readonly #listeners = new Set<(said: readonly Message[]) => void>();
  #pending: Pending | null = null;
  #taken: Taken | null = null;
  /** The cook had a thermometer before somebody said that it has none any more. */
  #hadThermometer = false;

  constructor(options: FeedOptions) {
    this.#options = options;
    this.#notices = new FeedNotices(options.path);
  }

  /** Take lines until there are no more. Never rejects. */
  async run(): Promise<void> {
    try {
      for await (const one of this.#options.lines) await this.hear(one);
    } catch (error) {
      // Whatever breaks here, the cook goes on.
      this.#notices.unreadable(this.#unreadable(error), this.#now());
    }
  }

  /** What has to be known of the feed at this moment, most important first. */
  notices(): readonly Message[] {
    return this.#notices.standing(this.#now());
  }

  /** Called after each reading that was taken, and whenever something is to be said of the feed. */
  onChange(listener: (said: readonly Message[]) => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  async hear(one: Tailed): Promise<void> {
    const now = this.#now();
    switch (one.what) {
      case 'line':
        this.#line(one.text, now);
        break;
      case 'no line':
        this.#arrivals.came(now);
        this.#notices.rubbish(one.text, one.because === 'unfinished', now);
        break;
      case 'there':
        this.#arrivals.begin(now);
        this.#notices.begins(now);
        break;
      case 'writer':
        this.#arrivals.begin(now);
        this.#notices.found();
        break;
      case 'no writer':
        this.#arrivals.ended();
        break;
      case 'missing':
        this.#notices.lost('missing', now);
        break;
      case 'unreadable':
        this.#notices.unreadable(this.#unreadable(one.error), now);
        break;
      case 'started over':
        this.#notices.pass(message('feed.started-over'), now);
        break;
      case 'skipped':
        this.#notices.pass(message('feed.skipped'), now);
        break;
      case 'looked':
        this.#silence(now);
        break;
    }
    const taken = await this.#takeIfDue(now);
    const said = this.#notices.toSay(now);
    if (taken || said.length > 0 || this.#notices.changed(now))
      for (const listener of [...this.#listeners]) listener(said);
  }

  #now(): number {
    return this.#options.clock.up();
  }

  #unreadable(error: unknown): Message {
    const { path } = this.#options;
    return troubleOf(error) === 'notAFile' ? message('feed.bad.kind', { path }) : readProblem(error, path);
  }

  #line(text: string, now: number): void {
    this.#arrivals.came(now);
    const read = this.#readingIn(text);
    if (read === null) {
      this.#notices.rubbish(text, false, now);
      return;
    }
    this.#notices.good();
    if (this.#pending !== null) this.#notices.often(now);
    this.#pending = { ...read, at: now, t: this.#options.session.now() };
  }

  /** A bare number is in the thermometer's unit. */
  #readingIn(text: string): Shown | null {
    const read = parseTemperature(text);
    if (read === null) return null;
    const { session } = this.#options;
    const shown = { value: read.value, unit: read.unit ?? session.advice().typing.unit };
    return isOfSyrup(toCelsius(shown.value, shown.unit)) ? shown : null;
  }

  #silence(now: number): void {
    if (this.#notWanted() !== null) return;
    const silence = this.#arrivals.silence(now);
    if (silence === null) return;
    if (silence.because === 'no writer') this.#notices.lost('no writer', now, this.#arrivals.any);
    else this.#notices.silent(silence, now);
  }

  /** Why its readings are of no use to the cook at this moment; null where they are. */
  #notWanted(): 'feed.poured' | 'feed.no-thermometer' | null {
    const { cook } = this.#options.session;
    if (cook.pouredAt !== null || cook.stopped) return 'feed.poured';
    this.#hadThermometer ||= cook.thermometer;
    return this.#hadThermometer && !cook.thermometer ? 'feed.no-thermometer' : null;
  }

  async #takeIfDue(now: number): Promise<boolean> {
    if (this.#pending === null) return false;
    const notWanted = this.#notWanted();
    if (notWanted !== null) {
      this.#pending = null;
      this.#notices.notWanted(notWanted, now);
      return false;
    }
    const { session } = this.#options;
    const { at, t, ...shown } = this.#pending;
    const celsius = session.cook.batch.dial.toTrueCelsius(toCelsius(shown.value, shown.unit));
    if (!this.#isDue(celsius, at, now)) return false;
    this.#pending = null;
    this.#taken = { at: now, celsius };
    const outcome = await session.happen({ kind: 'reading', ...shown, of: 'syrup', by: 'feed' }, t);
    const doubted = outcome.kind === 'event' && outcome.doubt !== null;
    this.#notices.read(celsius, { doubted, at, now });
    return true;
  }

  /** Often enough to follow the pot, seldom enough that noise is not taken for a rise. */
  #isDue(celsius: number, at: number, now: number): boolean {
    if (this.#taken === null) return true;
    const since = now - this.#taken.at;
    if (since < leastSeconds) return false;
    if (this.#notices.awaits(at)) return true;
    const { takeOffCelsius } = this.#options.session.cook;
    const crosses = celsius >= takeOffCelsius && this.#taken.celsius < takeOffCelsius;
    return since >= usualSeconds || Math.abs(celsius - this.#taken.celsius) >= movedKelvin || crosses;
  }
}
