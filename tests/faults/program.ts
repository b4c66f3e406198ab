import { type ChildProcessWithoutNullStreams, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';
import type { Entry } from '../../source/journal/line.js';
import { recover } from '../../source/journal/recover.js';

/** The built program. Another build may be named, so that one that is being made is not hit. */
export const program = process.env.KETTLEHAND_PROGRAM ?? 'bin/kettlehand.mjs';
export const kitchenFile = 'recipes/kitchens/hill-hall.yaml';
export const exampleRecipe = 'hill-hall-ginger-pull';

/** How many of something: the long number in the torture run, the short one in the test run. */
export const times = (short: number, long: number): number =>
  process.env.KETTLEHAND_TORTURE === undefined ? short : long;

/** A folder of its own, removed when the test file is done. */
export const scratch = (): string => {
  const folder = mkdtempSync(join(tmpdir(), 'kettlehand-faults-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
};

export const entriesOf = (path: string): readonly Entry[] => {
  try {
    return recover(readFileSync(path)).entries;
  } catch {
    return [];
  }
};

export type Env = Readonly<Record<string, string | undefined>>;

/** A child with pipes, by lines. */
export class Piped {
  readonly child: ChildProcessWithoutNullStreams;
  readonly ended: Promise<number>;
  out = '';
  err = '';
  #waiting: (() => void) | null = null;

  constructor(args: readonly string[], env: Env = {}, node: readonly string[] = []) {
    this.child = spawn(process.execPath, [...node, program, ...args], { env: { ...process.env, ...env } });
    this.child.stdout.setEncoding('utf8').on('data', (chunk: string) => {
      this.out += chunk;
      this.#waiting?.();
    });
    this.child.stderr.setEncoding('utf8').on('data', (chunk: string) => {
      this.err += chunk;
      this.#waiting?.();
    });
    // A program that was killed does not read.
    this.child.stdin.on('error', () => undefined);
    this.ended = once(this.child, 'close').then(([code, signal]) => {
      this.#waiting?.();
      return signal === null ? Number(code) : -1;
    });
  }

  /** Lines written out whole. */
  get lines(): readonly string[] {
    return this.out
      .slice(0, this.out.lastIndexOf('\n') + 1)
      .split('\n')
      .slice(0, -1);
  }

  type(...lines: readonly string[]): this {
    for (const line of lines) this.child.stdin.write(`${line}\n`);
    return this;
  }

  /** Wait until this holds; false when the program ended before. */
  async until(holds: () => boolean, seconds = 20): Promise<boolean> {
    const deadline = Date.now() + seconds * 1000;
    while (!holds()) {
      if (this.child.exitCode !== null || this.child.signalCode !== null) {
        await this.ended;
        return holds();
      }
      if (Date.now() > deadline) throw new Error(`never came:\n${this.out.slice(-1500)}\n${this.err}`);
      await new Promise<void>((resolve) => {
        const late = setTimeout(resolve, 50);
        this.#waiting = () => {
          clearTimeout(late);
          resolve();
        };
      });
    }
    return true;
  }

  async kill(): Promise<void> {
    this.child.kill('SIGKILL');
    await this.ended;
  }

  /** The end of the input, then of the program. */
  async finish(): Promise<number> {
    this.child.stdin.end();
    return this.ended;
  }
}

export const followArgs = (journal: string, recipe = exampleRecipe): readonly string[] => [
  'follow',
  recipe,
  '--kitchen',
  kitchenFile,
  '--journal',
  journal,
  '--json',
];

/** A small random number generator with a seed (mulberry32, public domain): a failing run can be run again. */
export const chance = (seed: number): (() => number) => {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
};

/** Different in every torture run, said so that it can be run again. */
export const seed = Number(process.env.KETTLEHAND_SEED ?? 20_261_205);
