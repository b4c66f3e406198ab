import type { Advice } from '../cook/advice.js';
import { typedWords } from '../cook/interpret.js';
import type { Session } from '../session/session.js';
import { type Message, message, words } from '../texts/message.js';
import type { Printer } from '../units/printer.js';
import { linesBetween, wrapped } from './lines.js';
import { asksFor } from './own-words.js';
import { type ScaleChoice, scaleSaid, scaleTyped } from './scales.js';

export type LineModeOptions = {
  readonly session: Pick<Session, 'type' | 'advice' | 'now' | 'onSaving' | 'onGap'>;
  readonly printerNow: () => Printer;
  readonly lines: AsyncIterable<string>;
  readonly write: (text: string) => void;
  /** Width to break words at; null: lines are left whole, for a pipe. */
  readonly columns: () => number | null;
  /** A prompt is shown, because somebody types here. */
  readonly prompts: boolean;
  /** Seconds of the cook per second of the wall: 1 unless a rehearsal runs fast. */
  readonly pace?: number;
  /** Calls back when something happened that nobody typed, with what is to be said of it; returns how to stop. */
  readonly onHappening?: (listener: (said: readonly Message[]) => void) => () => void;
  /** Calls back after each reading of a feed, with what is to be said of the feed itself; returns how to stop. */
  readonly onFeed?: (listener: (said: readonly Message[]) => void) => () => void;
};

/** A timer is never set for longer: advice that changes later is looked at again. */
const longestSleepMilliseconds = 60_000;
/** What a feed reads is said no more often than this, seconds: a screen reader shall not talk all the time. */
const fedSeconds = 60;

/**
 * The cook, led line by line: what is new is appended and nothing is written twice, so that it works over any
 * terminal, a pipe and a screen reader. Ends when the input ends or "leave" is typed.
 */
export class LineMode {
  #before: Advice | null = null;
  #timer: NodeJS.Timeout | null = null;
  #fedAt = Number.NEGATIVE_INFINITY;
  /** The scale that was asked for; null: the thermometer's. */
  #scale: ScaleChoice = null;
  readonly #options: LineModeOptions;

  constructor(options: LineModeOptions) {
    this.#options = options;
  }

  async run(): Promise<void> {
    const { session, lines } = this.#options;
    const stopListening = session.onSaving(({ problem }) => {
      if (this.#options.prompts) this.#options.write('\n');
      this.#say(problem ?? message('line.saving-again'), '!! ');
      this.#prompt();
    });
    const stopWatching = session.onGap(() => {
      this.#show(session.advice(), false);
      this.#prompt();
    });
    const stopHappening = this.#options.onHappening?.((said) => {
      if (this.#options.prompts) this.#options.write('\n');
      for (const one of said) this.#say(one, '~  ');
      this.#show(session.advice(), said.length === 0);
      this.#prompt();
    });
    const stopFeed = this.#options.onFeed?.((said) => this.#fed(said));
    this.#show(session.advice(), false);
    this.#prompt();
    for await (const line of lines) {
      const typed = line.trim();
      if (asksFor('leave', typed)) break;
      await this.#take(typed);
      this.#prompt();
    }
    stopListening();
    stopWatching();
    stopHappening?.();
    stopFeed?.();
    if (this.#timer !== null) clearTimeout(this.#timer);
  }

  async #take(typed: string): Promise<void> {
    const { session } = this.#options;
    if (typed === '') return;
    if (asksFor('help', typed)) {
      this.#say(message('line.help', { words: [...typedWords, 'show c', 'show f'] }));
      return;
    }
    const scale = scaleTyped(typed);
    if (scale !== null) {
      const advice = session.advice();
      this.#scale = scale;
      this.#say(scaleSaid(scale, advice), '    ');
      this.#show(advice, true);
      return;
    }
    const outcome = await session.type(typed);
    if (outcome.kind === 'queried') {
      this.#say(outcome.queried.because, '?  ');
      return;
    }
    this.#show(outcome.advice, true);
    if (outcome.saved === 'held') this.#say(message('line.held'), '    ');
  }

  /** Nothing is written for a reading that changes nothing. */
  #fed(said: readonly Message[]): void {
    const advice = this.#options.session.advice();
    const printer = this.#printer();
    const meaning = advice.now - this.#fedAt < fedSeconds || advice.readAt === null ? null : advice.meaning;
    const isNews = linesBetween(this.#before, advice, printer).length > 0;
    if ((said.length > 0 || meaning !== null) && this.#options.prompts) this.#options.write('\n');
    for (const one of said) this.#say(one, '~  ');
    if (meaning !== null) {
      this.#say(meaning, '    ');
      this.#fedAt = advice.now;
    }
    this.#show(advice, false);
    if (said.length > 0 || meaning !== null || isNews) this.#prompt();
  }

  /** Append what is new, and wake when the advice changes by itself. */
  #show(advice: Advice, answered: boolean): void {
    const printer = this.#printer();
    const lines = linesBetween(this.#before, advice, printer, { answered });
    // Nobody asked for this: it must not stand behind what is being typed.
    if (!answered && lines.length > 0 && this.#before !== null && this.#options.prompts)
      this.#options.write('\n');
    for (const line of lines) this.#line(line);
    this.#before = advice;
    this.#sleep(advice);
  }

  #sleep(advice: Advice): void {
    if (this.#timer !== null) clearTimeout(this.#timer);
    if (advice.changesAt === null) return;
    const ahead = ((advice.changesAt - this.#options.session.now()) * 1000) / (this.#options.pace ?? 1);
    this.#timer = setTimeout(
      () => {
        const before = this.#before;
        this.#show(this.#options.session.advice(), false);
        if (before !== null) this.#prompt();
      },
      Math.min(longestSleepMilliseconds, Math.max(50, ahead)),
    );
    // The input keeps the program alive; a timer alone does not.
    this.#timer.unref();
  }

  #printer(): Printer {
    const printer = this.#options.printerNow();
    return this.#scale === null ? printer : printer.inScale(this.#scale);
  }

  #say(said: Message, mark = ''): void {
    this.#line(`${mark}${words(said, this.#printer())}`);
  }

  #line(line: string): void {
    const columns = this.#options.columns();
    this.#options.write(`${columns === null ? line : wrapped(line, columns)}\n`);
  }

  #prompt(): void {
    if (this.#options.prompts) this.#options.write('> ');
  }
}
