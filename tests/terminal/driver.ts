import { readFileSync } from 'node:fs';
import { spawn as spawnInTerminal } from '@lydell/node-pty';
import { Unicode11Addon } from '@xterm/addon-unicode11';
import headless from '@xterm/headless';

/** As long as commands are held back: source/screen/input/reducer.ts. */
const burstMilliseconds = 150;
const esc = '\u001b';
const enter = '\r';
const frameBegins = `${esc}[?2026h`;
const frameEnds = `${esc}[?2026l`;

export type Opening = {
  readonly columns?: number;
  readonly rows?: number;
  readonly env?: Readonly<Record<string, string | undefined>>;
  /** What is run: a program and its arguments. */
  readonly command: readonly string[];
};

/** Longest that a screen may take to say something on a busy machine, milliseconds: a failure, not a pause. */
const patience = 20_000;

/** The program's environment: a person's terminal, not a test machine's. */
const personsEnv = (extra: Opening['env'] = {}): Record<string, string> => {
  const { CI: _ci, NO_COLOR: _noColor, FORCE_COLOR: _force, VITEST: _vitest, ...env } = process.env;
  const all = { ...env, TERM: 'xterm-256color', LANG: 'C.UTF-8', LC_ALL: '', ...extra };
  return Object.fromEntries(
    Object.entries(all).filter((pair): pair is [string, string] => pair[1] !== undefined),
  );
};

/**
 * A person in front of the program in a real pseudo-terminal, with a terminal emulator for eyes. Says what is done in
 * a cook's words; waits for what the screen shows, never for a time.
 */
export class CookAtTheScreen {
  readonly #terminal: headless.Terminal;
  readonly #pty: ReturnType<typeof spawnInTerminal>;
  readonly #lookers = new Set<() => void>();
  readonly #ended: Promise<{ code: number; signal: number }>;
  #over = false;
  /** The end of what the emulator has drawn so far. */
  #drawn = '';
  /** Everything that was written to the terminal. */
  raw = '';

  constructor({ columns = 80, rows = 24, env, command: [program = 'node', ...args] }: Opening) {
    this.#terminal = new headless.Terminal({ cols: columns, rows, allowProposedApi: true, scrollback: 500 });
    this.#terminal.loadAddon(new Unicode11Addon() as never);
    this.#terminal.unicode.activeVersion = '11';
    this.#pty = spawnInTerminal(program, args, {
      cols: columns,
      rows,
      // It takes the name for TERM.
      name: env?.TERM ?? 'xterm-256color',
      env: personsEnv(env),
    });
    this.#pty.onData((data) => {
      this.raw += data;
      this.#terminal.write(data, () => {
        this.#drawn = (this.#drawn + data).slice(-4096);
        this.#look();
      });
    });
    // The emulator answers what a program asks of a terminal.
    this.#terminal.onData((answer) => {
      if (!this.#over) this.#pty.write(answer);
    });
    this.#ended = new Promise((resolve) => {
      this.#pty.onExit(({ exitCode, signal }) => {
        this.#over = true;
        // Data that is still on its way is drawn first.
        setTimeout(
          () => this.#terminal.write('', () => resolve({ code: exitCode, signal: signal ?? 0 })),
          50,
        );
      });
    });
  }

  get terminal(): headless.Terminal {
    return this.#terminal;
  }

  /** The program's process. */
  get pid(): number {
    return this.#pty.pid;
  }

  /** The rows of the screen as text. */
  get rows(): readonly string[] {
    const { active } = this.#terminal.buffer;
    return Array.from(
      { length: this.#terminal.rows },
      (_, row) => active.getLine(active.baseY + row)?.translateToString(true) ?? '',
    );
  }

  get text(): string {
    return this.rows.join('\n');
  }

  /** The same as one line: sentences that were broken are whole. */
  get flat(): string {
    return flat(this.text);
  }

  get onTheOtherScreen(): boolean {
    return this.#terminal.buffer.active.type === 'alternate';
  }

  /** A frame that is half drawn is no screen: the program says where each begins and ends. */
  #look(): void {
    if (this.#drawn.lastIndexOf(frameBegins) > this.#drawn.lastIndexOf(frameEnds)) return;
    for (const looker of [...this.#lookers]) looker();
  }

  /** Wait until the screen is so. */
  async until(what: string, isSo: (text: string) => boolean): Promise<void> {
    await new Promise<void>((resolve, reject) => {
      const giveUp = setTimeout(() => {
        this.#lookers.delete(look);
        reject(new Error(`the screen never showed ${what}:\n${this.text}`));
      }, patience);
      const look = (): void => {
        if (!isSo(this.text)) return;
        clearTimeout(giveUp);
        this.#lookers.delete(look);
        resolve();
      };
      this.#lookers.add(look);
      look();
    });
  }

  /** Wait until the screen says this; line breaks within a sentence don't matter. */
  async says(what: RegExp): Promise<void> {
    await this.until(String(what), (text) => what.test(text) || what.test(flat(text)));
  }

  /** Wait until the bell has rung so many times. */
  async hears(rings: number): Promise<void> {
    await this.until(`${rings} rings`, () => this.raw.split('\u0007').length - 1 >= rings);
  }

  async saysNoMore(what: RegExp): Promise<void> {
    await this.until(`no ${what}`, (text) => !what.test(flat(text)));
  }

  /** Keys as they come from the keyboard. */
  press(keys: string): void {
    this.#pty.write(keys);
  }

  /** Bytes as they are, also such as are no text. */
  sends(bytes: Buffer): void {
    // Its types know text only; it writes a buffer as it is.
    this.#pty.write(bytes as unknown as string);
  }

  /** A typed line: a colon, the words, Enter. */
  types(line: string): void {
    this.press(/^\d/.test(line) ? `${line}${enter}` : `:${line}${enter}`);
  }

  reads(degrees: string | number): void {
    this.press(`${degrees}${enter}`);
  }

  /** Keys, again as long as they come too soon after what is shown and nothing comes of them. */
  async pressesUntil(keys: string, isSo: () => boolean): Promise<void> {
    let nudges = 0;
    const nudge = setInterval(() => {
      nudges += 1;
      this.press(keys);
    }, 650);
    this.press(keys);
    try {
      await this.until(`an answer to ${JSON.stringify(keys)}`, isSo);
    } finally {
      clearInterval(nudge);
    }
    // A late one and what is pressed next must not be a hand on the keyboard together.
    if (nudges > 0) await new Promise((resolve) => setTimeout(resolve, 2 * burstMilliseconds));
  }

  /** The space bar. */
  async isDone(then: RegExp): Promise<void> {
    await this.pressesUntil(' ', () => then.test(this.flat));
  }

  pastes(text: string): void {
    this.press(`${esc}[200~${text}${esc}[201~`);
  }

  resize(columns: number, rows: number): void {
    this.#terminal.resize(columns, rows);
    this.#pty.resize(columns, rows);
  }

  /** Wait until the program is stopped, as the shell would see it. */
  async stands(): Promise<void> {
    const state = (): string => readFileSync(`/proc/${this.pid}/stat`, 'utf8').split(') ')[1]?.[0] ?? '';
    while (state() !== 'T') await new Promise((resolve) => setTimeout(resolve, 10));
  }

  kill(signal: NodeJS.Signals): void {
    process.kill(this.pid, signal);
  }

  /** The terminal goes away under the program; resolves when the program is gone too. */
  async closesTheWindow(): Promise<void> {
    (this.#pty as unknown as { destroy(): void }).destroy();
    const lives = (): boolean => {
      try {
        process.kill(this.pid, 0);
        return !/^State:\s+Z/m.test(readFileSync(`/proc/${this.pid}/status`, 'utf8'));
      } catch {
        return false;
      }
    };
    const until = Date.now() + patience;
    while (lives()) {
      if (Date.now() > until) throw new Error('it runs on without a terminal');
      await new Promise((resolve) => setTimeout(resolve, 20));
    }
  }

  /** How the program ended. */
  async ended(): Promise<{ code: number; signal: number }> {
    const late = new Promise<never>((_, reject) =>
      setTimeout(() => reject(new Error(`it never ended:\n${this.text}`)), patience).unref(),
    );
    return Promise.race([this.#ended, late]);
  }

  /** At the end of a test: nothing is left running. */
  async close(): Promise<void> {
    try {
      if (!this.#over) this.kill('SIGKILL');
    } catch {
      // It ended by itself, a moment ago.
    }
    await this.#ended;
    this.#terminal.dispose();
  }
}

const flat = (text: string): string =>
  text
    // The column of glass stands between the parts of a sentence.
    .replaceAll(/^.{0,5}[│┤◄◁▲▼].{0,16}/gm, '')
    .replaceAll(/\s+/g, ' ');

/** Modes that a terminal is left in: all off and the cursor to be seen is clean. */
export const modesLeftOn = (raw: string): readonly string[] => {
  const left: string[] = [];
  for (const [mode, name] of [
    ['1049', 'alternate screen'],
    ['2004', 'bracketed paste'],
    ['1004', 'focus reports'],
    ['1000', 'mouse'],
  ] as const) {
    const on = raw.lastIndexOf(`${esc}[?${mode}h`);
    if (on >= 0 && raw.lastIndexOf(`${esc}[?${mode}l`) < on) left.push(name);
  }
  const hidden = raw.lastIndexOf(`${esc}[?25l`);
  if (hidden >= 0 && raw.lastIndexOf(`${esc}[?25h`) < hidden) left.push('hidden cursor');
  return left;
};
