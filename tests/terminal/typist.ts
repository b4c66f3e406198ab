import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type IPty, spawn } from '@lydell/node-pty';

/** A person at the line mode: types lines, waits for words, never for a time. */
export class Typist {
  #text = '';
  #seen = 0;
  #waiting: (() => void) | null = null;
  readonly ended: Promise<number>;

  private constructor(private readonly pty: IPty) {
    pty.onData((data) => {
      this.#text += data;
      this.#waiting?.();
    });
    this.ended = new Promise((resolve) => {
      pty.onExit(({ exitCode, signal }) => resolve(signal ? 128 + signal : exitCode));
    });
  }

  static home(): string {
    return mkdtempSync(join(tmpdir(), 'kettlehand-'));
  }

  static cooks(
    home: string,
    args: readonly string[] = [],
    env: Readonly<Record<string, string>> = {},
  ): Typist {
    const { CI: _ci, NO_COLOR: _colour, ...inherited } = process.env;
    return new Typist(
      spawn(
        process.execPath,
        [process.env.KETTLEHAND_PROGRAM ?? 'bin/kettlehand.mjs', 'cook', '--plain', ...args],
        {
          name: 'xterm-256color',
          cols: 100,
          rows: 40,
          cwd: process.cwd(),
          env: { ...inherited, KETTLEHAND_HOME: home, ...env } as Record<string, string>,
        },
      ),
    );
  }

  get pid(): number {
    return this.pty.pid;
  }

  /** All that was shown, with line ends made plain and wrapped lines joined by single spaces. */
  get text(): string {
    return this.#text.replaceAll('\r\n', '\n');
  }

  /** Wait until these words appear after what was waited for before. */
  async sees(words: string | RegExp): Promise<string> {
    const deadline = Date.now() + 20_000;
    for (;;) {
      const fresh = this.text.slice(this.#seen).replaceAll(/\s+/g, ' ');
      const found = typeof words === 'string' ? fresh.includes(words) : words.test(fresh);
      if (found) {
        this.#seen = this.text.length;
        return fresh;
      }
      if (Date.now() > deadline) throw new Error(`never saw ${String(words)} in:\n${this.text.slice(-3000)}`);
      await new Promise<void>((resolve) => {
        const late = setTimeout(resolve, 200);
        this.#waiting = () => {
          clearTimeout(late);
          resolve();
        };
      });
    }
  }

  async types(line: string, words: string | RegExp): Promise<string> {
    this.pty.write(`${line}\r`);
    return this.sees(words);
  }

  key(bytes: string): void {
    // Its types know text only; it writes a buffer as it is.
    this.pty.write(bytes as unknown as string);
  }

  /** Bytes as they are, also such as are no text. */
  raw(bytes: Buffer): void {
    // Its types know text only; it writes a buffer as it is.
    this.pty.write(bytes as unknown as string);
  }

  kill(signal: string): void {
    process.kill(this.pty.pid, signal);
  }
}
