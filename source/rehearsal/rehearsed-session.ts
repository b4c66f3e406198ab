import type { Advice } from '../cook/advice.js';
import type { CookEvent } from '../cook/event.js';
import type { Outcome, Session } from '../session/session.js';
import { type Message, message, type TextId } from '../texts/message.js';
import { isAlarming, keepsUp, presses } from './breath.js';
import type { FastClock } from './clock.js';
import type { Senses, Shown, SimulatedCook } from './table.js';

export type RehearsedOptions = {
  readonly session: Session;
  readonly table: SimulatedCook;
  readonly clock: FastClock;
  /** The pot types what its thermometer shows whenever the advice asks for it. */
  readonly auto: boolean;
};

/** What a person may type to the rehearsal itself. */
export const rehearsalWords = ['pause', 'go', 'skip', 'look'] as const;

/** Somebody looks at the pot this often when time is skipped, seconds of the cook. */
const skipStepSeconds = 2;
const longestSkipSeconds = 3600;
/** A middle is measured again no sooner. */
const betweenMiddlesSeconds = 60;

type Listener = (seen: readonly Message[]) => void;

/**
 * A session whose pot is simulated: the same loop, the same words, a fast clock. Whatever is typed is done to the
 * simulated pot; what can be seen there is told to whoever listens. A screen needs nothing but this.
 */
export class RehearsedSession {
  readonly #options: RehearsedOptions;
  readonly #listeners = new Set<Listener>();
  #measuredAt = Number.NEGATIVE_INFINITY;
  #startledAt = Number.NEGATIVE_INFINITY;
  #asked: { readonly what: string; readonly at: number } = { what: '', at: 0 };
  #dueAt: number | null = null;
  #turn: Promise<void> = Promise.resolve();

  constructor(options: RehearsedOptions) {
    this.#options = options;
  }

  get cook() {
    return this.#options.session.cook;
  }

  get saving() {
    return this.#options.session.saving;
  }

  now(): number {
    return this.#options.session.now();
  }

  advice(now = this.now()): Advice {
    return this.#options.session.advice(now);
  }

  onSaving(listener: Parameters<Session['onSaving']>[0]): () => void {
    return this.#options.session.onSaving(listener);
  }

  onGap(listener: () => void): () => void {
    return this.#options.session.onGap(listener);
  }

  /** Calls back whenever something can be seen at the pot, or the pot has typed a reading. */
  onHappening(listener: Listener): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  /** What the thermometer in the simulated pot shows now, or that in the middle of the mass; null without one. */
  dialNow(): Shown | null {
    const { table } = this.#options;
    table.advanceTo(this.now());
    return this.cook.pouredAt === null ? table.dial() : table.middle();
  }

  async type(typed: string, t?: number): Promise<Outcome> {
    const own = await this.#own(typed.trim().toLowerCase());
    if (own !== null)
      return { kind: 'queried', queried: { kind: 'queried', typed, because: own }, advice: this.advice() };
    await this.look();
    const outcome = this.#done(await this.#options.session.type(typed, t));
    if (outcome.kind === 'event') this.#startledAt = Number.NEGATIVE_INFINITY;
    this.#slowDown();
    return outcome;
  }

  /** Brings pot and slab to this moment. Called several times a second by whoever drives the clock. */
  look(): Promise<void> {
    this.#turn = this.#turn.then(() => this.#look());
    return this.#turn;
  }

  async #look(): Promise<void> {
    const { session, table } = this.#options;
    table.advanceTo(session.now());
    const sights = table.notices().map(({ sight }) => sight);
    if (sights.some(isAlarming)) this.#startledAt = session.now();
    const seen = sights.map((sight): Message => ({ id: `rehearsal.sees.${sight}` satisfies TextId }));
    const read = await this.#autoReading();
    this.#slowDown();
    if (seen.length > 0 || read) for (const listener of this.#listeners) listener(seen);
  }

  /** The clock never runs away from a person who has something to do. */
  #slowDown(): void {
    const { clock, auto } = this.#options;
    const advice = this.advice();
    const what = `${advice.step} ${advice.question?.id ?? ''} ${advice.urgent}`;
    if (what !== this.#asked.what) this.#asked = { what, at: advice.now };
    const due = advice.nextReadingSeconds !== null && advice.nextReadingSeconds <= 0;
    this.#dueAt = due ? (this.#dueAt ?? advice.now) : null;
    const since = {
      asked: advice.now - this.#asked.at,
      startled: advice.now - this.#startledAt,
      due: this.#dueAt === null ? 0 : advice.now - this.#dueAt,
    };
    clock.noFasterThan(keepsUp(advice, !auto, since));
  }

  /** To the next moment at which there is something to do or to see: how far that was, seconds. */
  async skip(): Promise<number> {
    const { clock } = this.#options;
    const from = this.now();
    const before = this.advice();
    if (this.#wants(before)) return 0;
    let seen = false;
    const stop = this.onHappening((sights) => {
      seen = seen || sights.length > 0;
    });
    while (!seen && this.now() - from < longestSkipSeconds) {
      clock.skip(skipStepSeconds);
      await this.look();
      const after = this.advice();
      if (this.#wants(after) || isOther(before, after)) break;
    }
    stop();
    return this.now() - from;
  }

  /** Something to do now, with nothing to wait for. */
  #wants(advice: Advice): boolean {
    if (presses(advice) || advice.question !== null) return true;
    const reading = advice.nextReadingSeconds;
    if (reading !== null) return reading <= 0 && !this.#options.auto;
    const waits = advice.changesAt !== null || advice.waits !== null || advice.step === 'hands.measure';
    return !waits || advice.timers.some(({ due }) => due);
  }

  async #own(typed: string): Promise<Message | null> {
    const { clock } = this.#options;
    switch (typed) {
      case 'pause':
        // One key pauses and resumes.
        if (clock.paused()) {
          clock.go();
          return message('rehearsal.going');
        }
        clock.pause();
        return message('rehearsal.paused');
      case 'go':
        clock.go();
        return message('rehearsal.going');
      case 'skip': {
        const seconds = await this.skip();
        return seconds > 0 ? message('rehearsal.skipped', { seconds }) : message('rehearsal.nothing-to-skip');
      }
      case 'look':
        return this.sight();
      default:
        return null;
    }
  }

  /** What a person would see and feel at this moment. */
  sight(): Message {
    const { table, clock } = this.#options;
    const { phase, step } = this.advice();
    const shown = this.dialNow();
    const senses = table.senses();
    const fingers = step === 'test.drop' ? table.coldWater() : null;
    return message('rehearsal.look', {
      paused: clock.paused(),
      wrong: wrongIn(senses),
      dial: shown,
      poured: this.cook.pouredAt !== null,
      boils: senses.boils,
      dissolved: senses.dissolved,
      fullShare: senses.fullShare,
      fingers,
      rope: phase === 'pull' ? (senses.stiff ? 'stiff' : senses.droops ? 'droops' : 'holds') : null,
      crumbIsComfortable: step === 'hands.crumb' ? senses.crumbIsComfortable : null,
    });
  }

  #done(outcome: Outcome): Outcome {
    if (outcome.kind === 'event') this.#options.table.happened(outcome.event);
    return outcome;
  }

  async #autoReading(): Promise<boolean> {
    const { auto, session } = this.#options;
    if (!auto) return false;
    const advice = this.advice();
    const due = advice.nextReadingSeconds !== null && advice.nextReadingSeconds <= 0;
    const middle = advice.step === 'hands.measure' && this.now() - this.#measuredAt >= betweenMiddlesSeconds;
    const shown = due || middle ? this.dialNow() : null;
    if (shown === null) return false;
    if (middle) this.#measuredAt = this.now();
    const of = middle ? 'middle' : 'syrup';
    const event: CookEvent = { kind: 'reading', ...shown, of, by: 'pot' };
    this.#done(await session.happen(event));
    return true;
  }
}

/** What nobody at the pot could miss, for as long as it stands. */
const wrongIn = (senses: Senses) => [
  ...(senses.calledAway ? (['called-away'] as const) : []),
  ...(senses.burnt ? (['touched'] as const) : []),
  ...(senses.power ? [] : (['power-gone'] as const)),
  ...(senses.smells ? (['smell'] as const) : []),
  ...(senses.smokes ? (['smokes'] as const) : []),
  ...(senses.grains ? (['grains'] as const) : []),
];

/** Another thing is asked of the person. */
const isOther = (before: Advice, after: Advice): boolean =>
  before.step !== after.step ||
  before.question?.id !== after.question?.id ||
  after.warnings.some(({ id }) => !before.warnings.some((one) => one.id === id)) ||
  after.timers.some(({ id, due }) => due && !before.timers.some((one) => one.id === id && one.due));
