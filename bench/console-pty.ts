import { readdirSync, readFileSync } from 'node:fs';
import { type IPty, spawn } from '@lydell/node-pty';
import headless from '@xterm/headless';

const frameEnds = '\u001b[?2026l';
/** Longer than this nobody waits: a failure, milliseconds. */
const patience = 60_000;

export const columns = 120;
export const rows = 40;

const personsEnv = (extra: Readonly<Record<string, string>>): Record<string, string> => {
  const { CI: _ci, NO_COLOR: _colour, FORCE_COLOR: _force, COLORTERM: _term, ...env } = process.env;
  return { ...env, TERM: 'xterm-256color', LANG: 'C.UTF-8', LC_ALL: '', ...extra } as Record<string, string>;
};

export const pause = (milliseconds: number): Promise<void> =>
  new Promise((resolve) => setTimeout(resolve, milliseconds));

export type Struck = { readonly milliseconds: number; readonly bytes: number };

/** A program in a real pseudo-terminal of 120x40, its clock and its processor time. */
export class Program {
  /** Those that have not ended. */
  static readonly running = new Set<Program>();
  readonly #pty: IPty;
  readonly #started = performance.now();
  #waiting: (() => void) | null = null;
  #over = false;
  /** All that it wrote. */
  raw = '';
  /** Milliseconds from its start to its first byte; null: not yet. */
  firstByte: number | null = null;

  constructor(command: readonly string[], env: Readonly<Record<string, string>> = {}) {
    this.#pty = spawn(process.execPath, [...command], {
      name: 'xterm-256color',
      cols: columns,
      rows,
      env: personsEnv(env),
    });
    this.#pty.onData((data) => {
      this.firstByte ??= performance.now() - this.#started;
      this.raw += data;
      this.#waiting?.();
    });
    Program.running.add(this);
    this.#pty.onExit(() => {
      this.#over = true;
      Program.running.delete(this);
      this.#waiting?.();
    });
  }

  /** Milliseconds since its start when the output from `from` on is so, at the end of a frame. */
  async until(what: string, isSo: (written: string) => boolean, from = 0): Promise<number> {
    const until = performance.now() + patience;
    for (;;) {
      const written = this.raw.slice(from);
      if (isSo(written)) return performance.now() - this.#started;
      if (this.#over || performance.now() > until)
        throw new Error(
          `${what} was never seen; the last of the screen: ${JSON.stringify(this.raw.slice(-800))}`,
        );
      await new Promise<void>((resolve) => {
        const timer = setTimeout(resolve, patience);
        this.#waiting = () => {
          clearTimeout(timer);
          resolve();
        };
      });
      this.#waiting = null;
    }
  }

  /** A key, and the end of the first frame behind it that shows `mark`. */
  async strike(key: string, mark: string | RegExp): Promise<Struck> {
    const from = this.raw.length;
    const at = performance.now();
    this.#pty.write(key);
    await this.until(`what ${JSON.stringify(key)} does`, (written) => framed(written, mark), from);
    return { milliseconds: performance.now() - at, bytes: Buffer.byteLength(this.raw.slice(from)) };
  }

  press(key: string): void {
    this.#pty.write(key);
  }

  /** Nothing written for so long. */
  async quiet(milliseconds: number): Promise<void> {
    for (let length = -1; length !== this.raw.length; ) {
      length = this.raw.length;
      await pause(milliseconds);
    }
  }

  /** Processor time of all its threads, milliseconds. */
  get processor(): number {
    const tasks = `/proc/${this.#pty.pid}/task`;
    const nanoseconds = readdirSync(tasks).map((task) =>
      Number(readFileSync(`${tasks}/${task}/schedstat`, 'utf8').split(' ')[0]),
    );
    return nanoseconds.reduce((sum, one) => sum + one, 0) / 1e6;
  }

  /** How often its main thread gave the processor up and was woken again. */
  get wakes(): number {
    const status = readFileSync(`/proc/${this.#pty.pid}/status`, 'utf8');
    return Number(/^voluntary_ctxt_switches:\s+(\d+)/m.exec(status)?.[1] ?? Number.NaN);
  }

  /** Memory that it holds, megabytes. */
  get memory(): number {
    const status = readFileSync(`/proc/${this.#pty.pid}/status`, 'utf8');
    return Number(/^VmRSS:\s+(\d+)/m.exec(status)?.[1] ?? Number.NaN) / 1024;
  }

  /** The screen as it stands, read by a terminal emulator. */
  async screen(): Promise<headless.Terminal> {
    const terminal = new headless.Terminal({ cols: columns, rows, allowProposedApi: true });
    await new Promise<void>((resolve) => terminal.write(this.raw, resolve));
    return terminal;
  }

  /** Milliseconds from its start to its end. */
  ended(): Promise<number> {
    return this.until('its end', () => this.#over);
  }

  async end(): Promise<void> {
    if (this.#over) return;
    this.#pty.kill('SIGKILL');
    await this.until('its end', () => this.#over);
  }
}

/** Whether `mark` was written and the frame around it is whole. */
export const framed = (written: string, mark: string | RegExp): boolean => {
  const at = typeof mark === 'string' ? written.indexOf(mark) : (mark.exec(written)?.index ?? -1);
  return at >= 0 && written.indexOf(frameEnds, at) >= 0;
};
