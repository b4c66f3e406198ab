import { EventEmitter } from 'node:events';
import { Inflow } from './inflow.js';

/**
 * Stands between the terminal and Ink, and is all that Ink uses of a terminal's input. Ink collects a paste until its
 * end comes, however long, and takes no key meanwhile; what leaves here has passed `Inflow` before.
 */
class Keyboard extends EventEmitter {
  readonly isTTY = true;
  readonly #inflow = new Inflow();
  #waiting: string[] = [];
  #timer: NodeJS.Timeout | null = null;

  constructor(private readonly source: NodeJS.ReadStream) {
    super();
  }

  setEncoding(): this {
    this.source.setEncoding('utf8');
    return this;
  }

  /** Raw: it is listened to. Else the input belongs to somebody else, and not a key of it is read. */
  setRawMode(on: boolean): this {
    this.source.setRawMode?.(on);
    this.source.off('data', this.#hear);
    if (on) this.source.on('data', this.#hear).resume();
    else this.source.pause();
    return this;
  }

  ref(): this {
    this.source.ref();
    return this;
  }

  unref(): this {
    this.source.unref();
    return this;
  }

  read(): string | null {
    return this.#waiting.shift() ?? null;
  }

  readonly #hear = (chunk: Buffer | string): void => {
    this.#pass(this.#inflow.push(String(chunk), performance.now()));
  };

  #pass(text: string): void {
    if (this.#timer !== null) clearTimeout(this.#timer);
    const due = this.#inflow.wakesAt;
    this.#timer =
      due === null
        ? null
        : setTimeout(
            () => this.#pass(this.#inflow.time(performance.now())),
            Math.max(1, Math.ceil(due - performance.now())),
          );
    this.#timer?.unref();
    if (text === '') return;
    this.#waiting.push(text);
    this.emit('readable');
  }
}

/** The terminal's input as Ink may have it. */
export const keyboardOf = (source: NodeJS.ReadStream): NodeJS.ReadStream =>
  new Keyboard(source) as unknown as NodeJS.ReadStream;
