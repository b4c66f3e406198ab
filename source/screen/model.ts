import type { Advice } from '../cook/advice.js';
import type { Message } from '../texts/message.js';
import type { Language } from '../units/language.js';
import type { Printer } from '../units/printer.js';
import { type Ring, ringFor, ringGapMilliseconds, ringsOf } from './bell.js';
import { type Facts, factsOf, printerOf } from './facts.js';
import type { Key } from './input/key.js';
import {
  type Effect,
  type InputEvent,
  type InputState,
  startingInput,
  stepInput,
  wakesAt,
} from './input/reducer.js';
import { lastEvents, type PastEvent } from './last-events.js';
import type { ConsoleSession } from './options.js';
import { type Trace, Tracer } from './trace.js';
import { nextGlance } from './waking.js';

/** Everything a frame shows. */
export type Shown = {
  readonly advice: Advice;
  readonly facts: Facts;
  readonly printer: Printer;
  readonly input: InputState;
  readonly events: readonly PastEvent[];
  readonly saving: ConsoleSession['saving'];
  /** The cook so far, for a curve. */
  readonly trace: Trace;
  /** Where the forecast sees the syrup in a minute, true Celsius. */
  readonly ghostCelsius: number | null;
  /** The last ring that nobody has answered with a key. */
  readonly rang: Ring | null;
  /** An event has been on its way to the disk for longer than a person notices. */
  readonly waiting: boolean;
  /** A rehearsal's pot, as one would see it. */
  readonly sight: Message | null;
  /** What stands to be known beside the cook itself. */
  readonly notices: readonly Message[];
};

/** The outside that the model needs; replaced in tests. */
export type Outside = {
  /** Milliseconds of a clock that never falls. */
  milliseconds(): number;
  /** Run once after so many milliseconds; returns how to stop. */
  after(milliseconds: number, run: () => void): () => void;
  bell(): void;
};

export type ModelOptions = {
  readonly session: ConsoleSession;
  readonly outside: Outside;
  readonly language?: Language | undefined;
  readonly quiet: boolean;
  readonly pace: number;
  /** Running numbers move on every ten seconds only. */
  readonly still?: boolean;
  readonly notices?: (() => readonly Message[]) | undefined;
  readonly onLeave: (how: 'left' | 'interrupted') => void;
  readonly onSuspend: () => void;
  /** The session itself broke: nothing can go on. */
  readonly onFail: (error: unknown) => void;
};

const minute = 60;
/** A disk that takes longer is waited for in sight. Our judgement. */
const noticedMilliseconds = 400;

/**
 * The console behind its looks: keys in, one picture of everything out. Re-computes on events, on the moment that
 * the advice names, and at most once a second while a running number is shown; otherwise it sleeps.
 */
export class ConsoleModel {
  readonly #tracer = new Tracer();
  #shown: Shown;
  #busy = 0;
  readonly #held: { readonly event: InputEvent; readonly at: number }[] = [];
  readonly #listeners = new Set<() => void>();
  #cancelWake: () => void = () => undefined;
  readonly #cancelBells = new Set<() => void>();
  readonly #stopSaving: () => void;
  #closed = false;

  constructor(private readonly options: ModelOptions) {
    const { session, quiet } = options;
    const advice = session.advice();
    this.#shown = this.#look(advice, startingInput({ bell: !quiet, step: advice.step }), null);
    this.#stopSaving = session.onSaving(() => this.#refresh(false));
    this.#sleep();
  }

  get shown(): Shown {
    return this.#shown;
  }

  /** For React's useSyncExternalStore. */
  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };
  readonly snapshot = (): Shown => this.#shown;

  key(key: Key): void {
    this.#input({ kind: 'key', key });
  }

  paste(text: string): void {
    this.#input({ kind: 'paste', text });
  }

  /** Something happened that was not typed here. */
  readonly happened = (): void => this.#refresh(true);

  close(): void {
    this.#closed = true;
    this.#cancelWake();
    for (const cancel of this.#cancelBells) cancel();
    this.#stopSaving();
    this.#listeners.clear();
  }

  #look(advice: Advice, input: InputState, rang: Ring | null): Shown {
    const { session, language } = this.options;
    const { cook } = session;
    const ahead =
      advice.forecast === null ? null : (session.advice(advice.now + minute).temperature?.celsius ?? null);
    return {
      advice,
      facts: factsOf(cook),
      trace: this.#tracer.of(cook, advice),
      printer: printerOf(cook, language, input.scale),
      input,
      events: lastEvents(cook),
      saving: session.saving,
      ghostCelsius: ahead,
      rang,
      waiting: false,
      sight: session.sight?.() ?? null,
      notices: this.options.notices?.() ?? [],
    };
  }

  /** Keys wait while an event is being saved: what they mean depends on where it leads. */
  #input(event: InputEvent): void {
    const at = this.options.outside.milliseconds();
    const always = event.kind === 'key' && (event.key.kind === 'interrupt' || event.key.kind === 'suspend');
    if (this.#busy > 0 && !always) {
      this.#held.push({ event, at });
      return;
    }
    this.#apply(event, at);
    this.#tell();
  }

  #apply(event: InputEvent, at: number): void {
    const { advice, facts, input } = this.#shown;
    const { state, effects } = stepInput(input, event, at, { advice, facts });
    const answered = event.kind === 'key';
    const printer =
      state.scale === input.scale
        ? this.#shown.printer
        : printerOf(this.options.session.cook, this.options.language, state.scale);
    this.#shown = { ...this.#shown, input: state, printer, rang: answered ? null : this.#shown.rang };
    for (const effect of effects) this.#carryOut(effect);
  }

  #carryOut(effect: Effect): void {
    const { onLeave, onSuspend } = this.options;
    if (effect.kind === 'leave') onLeave(effect.how);
    else if (effect.kind === 'suspend') onSuspend();
    else void this.#type(effect);
  }

  async #type({ typed, at, line }: Extract<Effect, { kind: 'type' }>): Promise<void> {
    const { session, outside, pace } = this.options;
    const late = ((outside.milliseconds() - at) / 1000) * pace;
    this.#busy += 1;
    const notWaiting = outside.after(noticedMilliseconds, () => {
      this.#shown = { ...this.#shown, waiting: true };
      this.#tell();
    });
    let outcome: Awaited<ReturnType<typeof session.type>>;
    try {
      outcome = await session.type(typed, Math.max(0, session.now() - late));
    } catch (error) {
      this.options.onFail(error);
      return;
    } finally {
      notWaiting();
      this.#busy -= 1;
    }
    if (this.#closed) return;
    this.#renew(false);
    if (outcome.kind === 'queried') {
      const { because } = outcome.queried;
      this.#apply({ kind: 'queried', because, typed: line ? typed : null }, outside.milliseconds());
    }
    while (this.#busy === 0) {
      const next = this.#held.shift();
      if (next === undefined) break;
      this.#apply(next.event, next.at);
    }
    this.#tell();
  }

  /** Look again at everything, and ring if that calls for it. */
  #renew(byTime: boolean): void {
    const { session, outside } = this.options;
    const before = this.#shown;
    const advice = session.advice();
    const ring = ringFor(before.advice, advice, byTime);
    this.#shown = this.#look(advice, before.input, ring ?? before.rang);
    if (advice.step !== before.advice.step)
      this.#apply({ kind: 'step', step: advice.step }, outside.milliseconds());
    if (ring !== null && this.#shown.input.bell) this.#ring(ring);
  }

  #refresh(byTime: boolean): void {
    if (this.#closed) return;
    this.#renew(byTime);
    this.#tell();
  }

  #ring(ring: Ring): void {
    const { outside } = this.options;
    for (let nth = 0; nth < ringsOf[ring]; nth += 1) {
      if (nth === 0) {
        outside.bell();
        continue;
      }
      const cancel = outside.after(nth * ringGapMilliseconds, () => {
        this.#cancelBells.delete(cancel);
        outside.bell();
      });
      this.#cancelBells.add(cancel);
    }
  }

  #tell(): void {
    if (this.#closed) return;
    this.#sleep();
    for (const listener of [...this.#listeners]) listener();
  }

  #sleep(): void {
    this.#cancelWake();
    if (this.#closed) return;
    const { outside, pace, still } = this.options;
    const now = outside.milliseconds();
    const input = wakesAt(this.#shown.input);
    const glance = nextGlance(this.#shown.advice, pace, still);
    const delays = [glance, ...(input === null || this.#busy > 0 ? [] : [Math.max(0, input - now)])];
    this.#cancelWake = outside.after(Math.min(...delays), () => this.#wake());
  }

  #wake(): void {
    if (this.#closed) return;
    this.#apply({ kind: 'time' }, this.options.outside.milliseconds());
    this.#refresh(true);
  }
}
