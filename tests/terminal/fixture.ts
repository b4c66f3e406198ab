import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { buildSync } from 'esbuild';
import { CookAtTheScreen, type Opening } from './driver.js';
import { fixtureOptions } from './fixture-options.js';

const folder = mkdtempSync(join(tmpdir(), 'kettlehand-screen-'));
/** Another build may be named: the one that counts what runs. */
const named = process.env.KETTLEHAND_FIXTURE;
const program =
  named ??
  join(process.cwd(), 'node_modules', '.cache', `kettlehand-fixture-${process.pid}-${Date.now()}.mjs`);

const built = (): string => {
  if (!existsSync(program)) buildSync(fixtureOptions(program));
  return program;
};

const opened: TimedCook[] = [];

/** A cook whose clock the test holds. */
export class TimedCook extends CookAtTheScreen {
  #seconds = 0;

  private constructor(
    private readonly clock: string,
    opening: Opening,
  ) {
    super(opening);
  }

  static open(options: Omit<Opening, 'command'> = {}): TimedCook {
    const clock = join(folder, `clock-${opened.length}`);
    writeFileSync(clock, '0');
    const cook = new TimedCook(clock, {
      ...options,
      env: { CLOCK_FILE: clock, ...options.env },
      command: [process.execPath, built()],
    });
    opened.push(cook);
    return cook;
  }

  /** So many seconds go by in the kitchen. */
  passes(seconds: number): void {
    this.#seconds += seconds;
    writeFileSync(this.clock, String(this.#seconds));
  }
}

/** A new cook, its first step on the screen. */
export const atTheStart = async (options: Omit<Opening, 'command'> = {}): Promise<TimedCook> => {
  const cook = TimedCook.open(options);
  await cook.says(/Set everything out/);
  return cook;
};

/** At the end of a test file, whose tests may run side by side: nothing is left running, nothing left on the disk. */
export const closeAll = async (): Promise<void> => {
  await Promise.all(opened.splice(0).map((cook) => cook.close()));
  if (named === undefined) rmSync(program, { force: true });
  rmSync(folder, { recursive: true, force: true });
};
