import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { open } from 'node:fs/promises';
import { join } from 'node:path';
import { openJournal } from '../source/journal/open.js';
import { stampOf } from '../source/session/clock.js';
import { machineClock } from '../source/session/machine.js';

/**
 * Milliseconds of an event put on the disk by the journal, and of the same bytes by a bare write and fdatasync, in turn.
 * The event comes to the journal with its stamp, which the session makes; how long that takes stands apart.
 */
export const appends = async (
  folder: string,
  times: number,
): Promise<{ readonly ours: number[]; readonly theirs: number[]; readonly stamps: number[] }> => {
  mkdirSync(folder, { recursive: true });
  const opened = await openJournal({ path: join(folder, 'journal.jsonl') });
  if ('problem' in opened) throw new Error('the journal could not be opened');
  const bare = await open(join(folder, 'bare.jsonl'), 'w');
  const ours: number[] = [];
  const theirs: number[] = [];
  const stamps: number[] = [];
  let position = 0;
  const event = () => ({
    seq: opened.journal.nextSeq,
    t: times,
    ...stampOf(machineClock),
    kind: 'reading',
    value: 238,
    unit: 'F',
    of: 'syrup',
    by: 'hands',
  });
  const line = Buffer.from(`${JSON.stringify(event())},"sum":"01234567"}\n`);
  const timed = async (work: () => Promise<unknown>): Promise<number> => {
    const from = performance.now();
    await work();
    return performance.now() - from;
  };
  const write = async (): Promise<void> => {
    position += (await bare.write(line, 0, line.length, position)).bytesWritten;
    await bare.datasync();
  };
  for (let nth = -20; nth < times; nth += 1) {
    const from = performance.now();
    const stamped = event();
    const stamp = performance.now() - from;
    const append = (): Promise<unknown> => opened.journal.append(stamped);
    // Both files come to a new block at the same time, and whoever is first then pays the file system for both: turn about.
    const [mine, other] =
      nth % 2 === 0
        ? [await timed(append), await timed(write)]
        : ([await timed(write), await timed(append)].reverse() as [number, number]);
    // The first are for the compiler.
    if (nth < 0) continue;
    stamps.push(stamp);
    ours.push(mine);
    theirs.push(other);
  }
  await opened.journal.close();
  await bare.close();
  return { ours, theirs, stamps };
};

const bytesUnder = (path: string): number =>
  readdirSync(path, { withFileTypes: true }).reduce((sum, one) => {
    const inside = join(path, one.name);
    if (one.isDirectory()) return sum + bytesUnder(inside);
    return one.isFile() ? sum + statSync(inside).size : sum;
  }, 0);

type Locked = { readonly packages: Readonly<Record<string, { readonly dev?: boolean }>> };

const megabyte = 1e6;

/** Megabytes and packages that a person has after installing, and whether the program runs from what is shipped alone. */
export const sizes = (folder: string) => {
  const manifest = JSON.parse(readFileSync('package.json', 'utf8')) as { files: readonly string[] };
  const shipped = [...manifest.files, 'package.json'];
  for (const one of shipped) cpSync(one, join(folder, one), { recursive: true });
  const recipes = execFileSync(process.execPath, [join(folder, 'bin/kettlehand.mjs'), 'recipes'], {
    cwd: folder,
    env: { ...process.env, KETTLEHAND_HOME: join(folder, 'home') },
    encoding: 'utf8',
  });
  const locked = JSON.parse(readFileSync('package-lock.json', 'utf8')) as Locked;
  const running = Object.entries(locked.packages).filter(([path, one]) => path !== '' && one.dev !== true);
  return {
    dist: bytesUnder('dist') / megabyte,
    shipped:
      shipped.reduce(
        (sum, one) => sum + (statSync(one).isDirectory() ? bytesUnder(one) : statSync(one).size),
        0,
      ) / megabyte,
    packages: running.length,
    packagesSize:
      running.reduce((sum, [path]) => {
        try {
          return sum + bytesUnder(path);
        } catch {
          return sum;
        }
      }, 0) / megabyte,
    runsAlone: recipes.includes('hill-hall-ginger-pull'),
  };
};
