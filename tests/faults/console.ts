import { execFileSync } from 'node:child_process';
import { copyFileSync, existsSync, mkdirSync, readdirSync, readFileSync, readlinkSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { CookAtTheScreen } from '../terminal/driver.js';
import { entriesOf, kitchenFile, program } from './program.js';

const shell = join(import.meta.dirname, 'in-shell.sh');

/** All of the terminal's state but the size of its window. */
const withoutSize = (stty: string): string => stty.replace(/rows \d+; columns \d+;/, '').trim();

type Opening = {
  readonly args?: readonly string[];
  readonly columns?: number;
  readonly rows?: number;
  readonly env?: Readonly<Record<string, string>>;
  /** Another terminal that it writes to. */
  readonly stdout?: string;
  /** Arguments of node itself. */
  readonly node?: readonly string[];
};

const opened: ConsoleInAShell[] = [];

/** Where nobody is asked about the kitchen any more. */
export const homeWithKitchen = (home: string): string => {
  mkdirSync(home, { recursive: true });
  copyFileSync(kitchenFile, join(home, 'kitchen.yaml'));
  return home;
};

/** The shipped program in its full screen, started from a shell as a person does it, with a kitchen already saved. */
export class ConsoleInAShell extends CookAtTheScreen {
  private constructor(
    readonly home: string,
    { args = [], node = [], env = {}, stdout = '', ...size }: Opening,
  ) {
    super({
      ...size,
      env: { KETTLEHAND_HOME: home, STDOUT: stdout, ...env },
      command: ['bash', shell, home, process.execPath, ...node, resolve(program), 'cook', ...args],
    });
  }

  static open(home: string, opening: Opening = {}): ConsoleInAShell {
    const console = new ConsoleInAShell(homeWithKitchen(home), opening);
    opened.push(console);
    return console;
  }

  override get pid(): number {
    return Number(readFileSync(join(this.home, 'pid'), 'utf8'));
  }

  /** The state of the terminal before the program began. */
  get before(): string {
    return withoutSize(readFileSync(join(this.home, 'before'), 'utf8'));
  }

  /** And when it was back in the shell. */
  get after(): string {
    return withoutSize(readFileSync(join(this.home, 'after'), 'utf8'));
  }

  /** The code that the shell was given, also when the window is gone. */
  get code(): number {
    return Number(readFileSync(join(this.home, 'code'), 'utf8'));
  }

  /** Until the shell has noted how the program ended, in a window that is gone. */
  async shellGoesOn(): Promise<void> {
    for (let tries = 0; !existsSync(join(this.home, 'code')); tries += 1) {
      if (tries > 1000) throw new Error('the shell never went on');
      await new Promise((next) => setTimeout(next, 20));
    }
  }

  /** And now, the program's process being there. */
  get now(): string {
    const terminal = readlinkSync(`/proc/${this.pid}/fd/0`);
    return withoutSize(execFileSync('stty', ['-a', '-F', terminal], { encoding: 'utf8' }));
  }

  /** Of all cooks in its home, the oldest first. */
  get journals(): readonly string[] {
    const folder = join(this.home, 'cooks');
    const names = existsSync(folder) ? readdirSync(folder).filter((name) => name.endsWith('.jsonl')) : [];
    return names.sort().map((name) => join(folder, name));
  }

  get journal(): string {
    return this.journals.at(-1) ?? join(this.home, 'cooks', 'none');
  }

  get entries() {
    return entriesOf(this.journal);
  }

  /** The view for two metres has no row of what happened last. */
  get isFar(): boolean {
    return /near view/.test(this.rows.at(-1) ?? '');
  }

  /** The row of what happened last. */
  get lastEvents(): string {
    return this.rows.at(-2) ?? '';
  }

  /** A reading, known to be taken when the row of last events shows it. */
  async takes(degrees: number): Promise<void> {
    this.reads(degrees);
    await this.until(`reading ${degrees}`, () => this.lastEvents.includes(` ${degrees} `));
  }
}

/** At the first step of a new cook; `says` null: it is not waited for. */
export const newConsole = async (
  home: string,
  { says = /Set everything out/, ...opening }: Opening & { readonly says?: RegExp | null } = {},
): Promise<ConsoleInAShell> => {
  const console = ConsoleInAShell.open(home, opening);
  if (says !== null) await console.says(says);
  return console;
};

/** The unfinished cook of this home is gone on with, unless that is not to be answered. */
export const resumedConsole = async (
  home: string,
  { answers = true, ...opening }: Opening & { readonly answers?: boolean } = {},
): Promise<ConsoleInAShell> => {
  const console = ConsoleInAShell.open(home, opening);
  await console.says(/unfinished/i);
  if (answers) console.press('g');
  return console;
};

export const closeAll = async (): Promise<void> => {
  await Promise.all(opened.splice(0).map((console) => console.close()));
};
