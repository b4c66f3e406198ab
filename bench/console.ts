/**
 * The console's speed in a real pseudo-terminal of 120x40, side by side with a bare program of the same rows on the
 * same library, built the same way, turn about in one run: only ratios mean anything on a busy machine.
 *
 *   npm run bench:console            measure, and say what got worse since the baseline
 *   npm run bench:console -- --keep  and keep the ratios as the new baseline
 */
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { buildBare, keepRows } from './console-bare.js';
import { appends, sizes } from './console-disk.js';
import { homeWith } from './console-journal.js';
import { framed, Program, pause } from './console-pty.js';
import { medianOf, Report } from './console-report.js';

const program = 'bin/kettlehand.mjs';
/** The keys on the last row: the end of a frame that is whole. */
const lastRow = '0-9';
const cursor = '▌';
/** What only the frame of a first digit says, and only the frame of a reading that was taken; written afresh as a whole. */
const entryBegins = 'corrects';
const entryEnds = 'trouble';

const folder = mkdtempSync(join(tmpdir(), 'kettlehand-bench-'));
// A file system in memory: what a disk takes is measured apart.
const inMemory = existsSync('/dev/shm') ? mkdtempSync('/dev/shm/kettlehand-bench-') : folder;
const bare = await buildBare(folder);
const report = new Report();

const cookIn = (home: string, ...more: readonly string[]): Program =>
  new Program([program, 'cook', ...more], { KETTLEHAND_HOME: home });

/** A cook of so many readings, taken up where it stood. */
const resumed = async (name: string, readings: number): Promise<Program> => {
  const cook = cookIn(homeWith(join(inMemory, name), readings));
  await cook.until('the choice', (written) => framed(written, 'Go on'));
  cook.press('g');
  await cook.until('the cook', (written) => framed(written, lastRow));
  return cook;
};

const firstWords = async (): Promise<void> => {
  report.heading('Start, until something is to be read (wall, ms)');
  const home = homeWith(join(inMemory, 'start'), null);
  const node: number[] = [];
  const version: number[] = [];
  const words: number[] = [];
  for (let nth = 0; nth < 25; nth += 1) {
    const one = new Program(['-e', '0']);
    node.push(await one.ended());
    const other = new Program([program, '--version']);
    version.push(await other.ended());
    const cook = cookIn(home, '--new');
    words.push(await cook.until('a word', (written) => /\w{3}/.test(written)));
    await cook.end();
  }
  report.compare({
    name: '--version against node -e 0',
    ours: version,
    theirs: node,
    unit: 'ms',
    median: 1.3,
    decimals: 0,
  });
  report.compare({
    name: 'first words of a cook against node -e 0',
    ours: words,
    theirs: node,
    unit: 'ms',
    median: 1.3,
    decimals: 0,
  });
};

const firstFrame = async (): Promise<void> => {
  report.heading('First full frame');
  const home = homeWith(join(inMemory, 'frame'), null);
  const wall = { ours: [] as number[], theirs: [] as number[] };
  const processor = { ours: [] as number[], theirs: [] as number[] };
  const settled = { ours: [] as number[], theirs: [] as number[] };
  const once = async (one: Program, into: 'ours' | 'theirs'): Promise<void> => {
    wall[into].push(await one.until('its first frame', (written) => framed(written, lastRow)));
    processor[into].push(one.processor);
    await one.quiet(120);
    settled[into].push(one.processor);
    await one.end();
  };
  const seen = cookIn(home, '--new');
  await seen.until('its first frame', (written) => framed(written, lastRow));
  await seen.quiet(300);
  const rows = keepRows(folder, 'first', await seen.screen());
  await seen.end();
  for (let nth = 0; nth < 15; nth += 1) {
    await once(cookIn(home, '--new'), 'ours');
    await once(new Program([bare, rows]), 'theirs');
  }
  report.compare({ name: 'first full frame, wall', ...wall, unit: 'ms', median: 1.3, decimals: 0 });
  report.compare({ name: 'first full frame, processor', ...processor, unit: 'ms', median: 1.3, decimals: 0 });
  report.compare({ name: 'ready and idle, processor', ...settled, unit: 'ms', median: null, decimals: 0 });
};

const keys = async (): Promise<void> => {
  report.heading('A key, after 10,000 readings (journal in memory; a digit makes no event)');
  const cook = await resumed('readings', 10_000);
  await cook.quiet(200);
  // The bare program shows what stands there while somebody types.
  await cook.strike('2', entryBegins);
  await cook.quiet(120);
  const rows = keepRows(folder, 'boil', await cook.screen());
  await cook.strike('\u007f', entryEnds);
  // The console counts the seconds since the last reading; so it has a second hand too.
  const other = new Program([bare, rows, 'clock']);
  await other.until('its first frame', (written) => framed(written, entryBegins));
  const digit = { ours: [] as number[], theirs: [] as number[] };
  const first: number[] = [];
  const more: number[] = [];
  const busy = { ours: 0, theirs: 0 };
  // Again and again: one moment says little, for each tidies up when it likes.
  const memory = { ours: [] as number[], theirs: [] as number[] };
  const both = [
    ['ours', cook],
    ['theirs', other],
  ] as const;
  const rounds = 100;
  for (let nth = -10; nth < rounds; nth += 1) {
    for (const [into, one] of both) {
      // Past the 33 ms in which Ink holds a second frame back, and clear of the frame of the second hand.
      await pause(45);
      const before = one.processor;
      const struck = [await one.strike('2', into === 'ours' ? entryBegins : `2${cursor}`)];
      await pause(45);
      struck.push(await one.strike('3', `3${cursor}`));
      const spent = one.processor - before;
      for (let back = 0; back < 2; back += 1) {
        await pause(40);
        one.press('\u007f');
      }
      if (nth < 0) continue;
      digit[into].push(...struck.map(({ milliseconds }) => milliseconds));
      memory[into].push(one.memory);
      busy[into] += spent;
      if (into === 'ours') {
        first.push(struck[0]?.bytes ?? 0);
        more.push(struck[1]?.bytes ?? 0);
      }
    }
  }
  report.compare({ name: 'digit to frame, wall', ...digit, unit: 'ms', median: 1.5, p99: 1.5 });
  report.compare({
    name: 'digit to frame, processor (mean)',
    ours: [busy.ours / (2 * rounds)],
    theirs: [busy.theirs / (2 * rounds)],
    unit: 'ms',
    median: 1.5,
  });
  report.count('bytes of a digit behind the first, as block letters', medianOf(more), 'bytes', 600);
  report.count('bytes of the first digit (the action makes room)', medianOf(first), 'bytes', null);
  await readings(cook, other);
  report.compare({ name: 'memory meanwhile', ...memory, unit: 'MB', median: 1.3, decimals: 0 });
  await Promise.all([cook.end(), other.end()]);
};

/** A reading of three digits, from Enter to the frame that shows it taken: an event, written to a journal in memory. */
const readings = async (cook: Program, other: Program): Promise<void> => {
  const enter = { ours: [] as number[], theirs: [] as number[] };
  for (let nth = 0; nth < 25; nth += 1)
    for (const [into, one] of [
      ['ours', cook],
      ['theirs', other],
    ] as const) {
      await pause(45);
      one.press('229');
      await pause(90);
      enter[into].push((await one.strike('\r', into === 'ours' ? entryEnds : ' ')).milliseconds);
    }
  report.compare({ name: 'a reading taken, journal in memory', ...enter, unit: 'ms', median: 1.5, p99: 1.5 });
};

const secondHand = async (): Promise<void> => {
  report.heading('By itself');
  const seconds = 15;
  const home = homeWith(join(inMemory, 'idle'), null);
  const idle = cookIn(home, '--new');
  await idle.until('its first frame', (written) => framed(written, lastRow));
  const running = await resumed('running', 200);
  const rows = keepRows(folder, 'running', await running.screen());
  const clock = new Program([bare, rows, 'clock']);
  await clock.until('its first frame', (written) => framed(written, lastRow));
  const all = [running, clock, idle];
  for (const one of all) await one.quiet(60);
  await pause(3000);
  const before = all.map((one) => ({ wakes: one.wakes, bytes: one.raw.length }));
  // Second by second: the engine tidies its memory once or twice after a start, which is no second hand's doing.
  const spent = all.map((): number[] => []);
  for (let second = 0; second < seconds; second += 1) {
    const from = all.map((one) => one.processor);
    await pause(1000);
    for (const [nth, one] of all.entries()) spent[nth]?.push(one.processor - (from[nth] ?? 0));
  }
  const [ours = [], theirs = [], none = []] = spent;
  const written = all.map((one, nth) => (one.raw.length - (before[nth]?.bytes ?? 0)) / seconds);
  const meanOf = (values: readonly number[]): number => values.reduce((sum, one) => sum + one, 0) / seconds;
  report.compare({
    name: 'a second hand, processor in each second',
    ours,
    theirs,
    unit: 'ms',
    median: 1.3,
  });
  report.say(
    '',
    `mean ${meanOf(ours).toFixed(1)} against ${meanOf(theirs).toFixed(1)} ms; ${written[0]?.toFixed(0)} against ${written[1]?.toFixed(0)} bytes a second`,
  );
  report.count('no second hand, processor in each second', medianOf(none), 'ms', 0.5, 2);
  report.say(
    '',
    `mean ${meanOf(none).toFixed(2)} ms; ${idle.wakes - (before[2]?.wakes ?? 0)} wakes and ${(written[2] ?? 0) * seconds} bytes in ${seconds} s (the clock moves on once a minute)`,
  );
  report.compare({
    name: 'memory in the boil',
    ours: [running.memory],
    theirs: [clock.memory],
    unit: 'MB',
    median: 1.3,
    decimals: 0,
  });
  report.compare({
    name: 'memory at the start',
    ours: [idle.memory],
    theirs: [clock.memory],
    unit: 'MB',
    median: 1.3,
    decimals: 0,
  });
  await Promise.all(all.map((one) => one.end()));
};

const disk = async (): Promise<void> => {
  report.heading('On the disk');
  const { ours, theirs, stamps } = await appends(join(folder, 'journal'), 1000);
  report.compare({
    name: 'an event saved against write and fdatasync',
    ours,
    theirs,
    unit: 'ms',
    median: 1.5,
    p99: 1.5,
    decimals: 2,
  });
  report.say('its stamp, made before', `${medianOf(stamps).toFixed(3)} ms`);
  const size = sizes(join(folder, 'shipped'));
  report.count('what is shipped', size.shipped, 'MB', null, 1);
  report.say(
    '',
    `of it dist ${size.dist.toFixed(1)} MB; runs without any package: ${size.runsAlone ? 'yes' : 'NO'}`,
  );
  report.say('packages installed beside it', `${size.packages}, ${size.packagesSize.toFixed(1)} MB`);
};

try {
  await firstWords();
  await firstFrame();
  await keys();
  await secondHand();
  await disk();
  if (process.argv.includes('--keep')) report.keep();
} finally {
  for (const one of Program.running) await one.end();
  for (const one of new Set([folder, inMemory])) rmSync(one, { recursive: true, force: true });
}
