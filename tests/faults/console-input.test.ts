import { copyFileSync, mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { printerOf } from '../../source/commands/cook-printer.js';
import { advise } from '../../source/cook/advise.js';
import { lastEvents } from '../../source/screen/last-events.js';
import { cookOf } from '../../source/session/start.js';
import { words } from '../../source/texts/message.js';
import { modesLeftOn } from '../terminal/driver.js';
import { type ConsoleInAShell, closeAll, newConsole, resumedConsole } from './console.js';
import { chance, scratch, seed, times } from './program.js';

afterAll(closeAll);

const passes = (milliseconds: number): Promise<void> =>
  new Promise((resolve) => setTimeout(resolve, milliseconds));

const noStack = /\n\s+at .*\d+:\d+/;

const isWhole = (cook: ConsoleInAShell): boolean =>
  (cook.isFar || /^\[[A-Z]+\]|^[a-z]+ .*\[[A-Z]+\]/.test(cook.rows[0] ?? '')) &&
  /reading|Enter takes it/.test(cook.rows.at(-1) ?? '') &&
  cook.rows.filter((row) => /^0-9 reading/.test(row)).length <= 1;

/** What its journal says happened last is what stands on the row of last events: nothing shown is missing there. */
const showsItsJournal = (cook: ConsoleInAShell): boolean => {
  const state = cookOf(cook.entries);
  if (state === null) return false;
  const [latest] = lastEvents(state);
  const said = latest === undefined ? '' : words(latest.said, printerOf(state)).replaceAll('\n', ' ');
  return cook.lastEvents.toLowerCase().includes(said.toLowerCase());
};

const hasEnded = (cook: ConsoleInAShell): boolean => {
  try {
    process.kill(cook.pid, 0);
    return /^State:\s+Z/m.test(readFileSync(`/proc/${cook.pid}/status`, 'utf8'));
  } catch {
    return true;
  }
};

/** Whatever half-typed thing there is, it is thrown away; false: it has ended by itself. */
const becomesCalm = async (cook: ConsoleInAShell): Promise<boolean> => {
  // Twice: what came last may still be on its way.
  for (let calm = 0, tries = 0; calm < 2; tries += 1) {
    if (tries > 100) throw new Error(`never calm:\n${cook.text}`);
    await passes(250);
    if (hasEnded(cook)) return false;
    if (cook.isFar) cook.press('v');
    const isCalm = !cook.isFar && isWhole(cook) && /^0-9 reading/.test(cook.rows.at(-1) ?? '');
    calm = isCalm ? calm + 1 : 0;
    if (!isCalm) cook.press('\u001b');
  }
  return true;
};

/** A remark is made, shown and kept. */
const stillWorks = async (cook: ConsoleInAShell): Promise<void> => {
  const noted = () => cook.entries.filter(({ kind }) => kind === 'note').length;
  const before = noted();
  await becomesCalm(cook);
  cook.types('note still here');
  await cook.until('the remark', () => noted() > before && showsItsJournal(cook));
  expect(cook.entries.filter(({ kind }) => kind === 'note').at(-1)).toMatchObject({ text: 'still here' });
};

const leaves = async (cook: ConsoleInAShell): Promise<void> => {
  cook.kill('SIGTERM');
  expect((await cook.ended()).code).toBe(143);
  expect(modesLeftOn(cook.raw)).toEqual([]);
  expect(cook.after).toBe(cook.before);
  expect(cook.raw).not.toMatch(noStack);
};

const memoryMegabytes = (cook: ConsoleInAShell): number =>
  Number(/VmHWM:\s+(\d+) kB/.exec(readFileSync(`/proc/${cook.pid}/status`, 'utf8'))?.[1]) / 1024;

describe('a window that changes its size', () => {
  const sizes = times(60, 200);

  it.concurrent(`${sizes} times from 1x1 to 300x100: the last frame is right, and what is typed then is kept`, async () => {
    const random = chance(seed + 31);
    const cook = await newConsole(scratch());
    await cook.takes(71);
    const before = cook.rows;
    const one = (most: number): number => 1 + Math.floor(random() * most);
    for (let n = 0; n < sizes; n += 1) {
      const [columns, rows] = n === 0 ? [1, 1] : n === 1 ? [300, 100] : [one(300), one(100)];
      cook.resize(columns, rows);
      // Some are drawn, some are passed over.
      await passes(random() * 20);
    }
    cook.resize(137, 41);
    await cook.until('a whole frame of 137x41', () => isWhole(cook) && cook.rows.length === 41);
    await cook.takes(72);
    cook.resize(80, 24);
    await cook.until(
      'the frame that was there before',
      () => isWhole(cook) && cook.lastEvents.includes(' 72 '),
    );
    const shape = (rows: readonly string[]): string =>
      rows.slice(1, -2).join('\n').replaceAll(/7[12]/g, '##');
    await cook.until('the same rows', () => shape(cook.rows) === shape(before));
    expect(cook.entries.map(({ kind, value }) => value ?? kind)).toEqual(['opened', 71, 72]);
    await leaves(cook);
  });
});

describe('a megabyte is pasted', () => {
  const megabyte = 'done\ryes\r238\r! \u0003q y\u001b[A'.repeat(40_000).slice(0, 1_000_000);

  it.concurrent.each([
    ['marked as a paste', '\u001b[200~', '\u001b[201~'],
    ['not marked', '', ''],
    ['with a beginning but no end', '\u001b[200~', ''],
  ])('%s: nothing of it acts, nothing freezes, memory stays', async (_, begins, ends) => {
    const cook = await newConsole(scratch());
    await cook.takes(71);
    const memory = memoryMegabytes(cook);
    const drawn = cook.raw.length;
    cook.press(`${begins}${megabyte}${ends}`);
    await cook.says(/Pasted, not yet taken/);
    expect(cook.entries.map(({ kind }) => kind)).toEqual(['opened', 'reading']);
    expect(memoryMegabytes(cook) - memory).toBeLessThan(60);
    expect(cook.raw.length - drawn).toBeLessThan(40_000);
    await stillWorks(cook);
    await leaves(cook);
  });
});

/** One journal for each phase; the newest cook of its home, so that it is offered. */
const phases = readdirSync('tests/journals/0.1.0')
  .filter((name) => !/whole|stopped/.test(name))
  .map((name) => join('tests/journals/0.1.0', name));

const resumed = async (journal: string): Promise<ConsoleInAShell> => {
  const home = scratch();
  mkdirSync(join(home, 'cooks'), { recursive: true });
  copyFileSync(journal, join(home, 'cooks', `2026-11-25-100000-${'abcd'}.jsonl`));
  const cook = await resumedConsole(home);
  await cook.until('the cook', () => isWhole(cook));
  return cook;
};

const suspend = 26;

/** Send it in pieces as fast as they come or as slow as hands; true while it is there. */
const hears = async (cook: ConsoleInAShell, bytes: Buffer, random: () => number): Promise<boolean> => {
  for (let from = 0; from < bytes.length; ) {
    const to = from + 1 + Math.floor(random() * random() * 40);
    // Ctrl+Z comes by itself below: what is sent behind it would be the shell's.
    cook.sends(bytes.subarray(from, to).filter((byte) => byte !== suspend) as Buffer);
    from = to;
    if (random() < 0.3) await passes(random() * 30);
    if (hasEnded(cook)) return false;
  }
  return true;
};

/** Ctrl+Z and fg. */
const stopsAndComesBack = async (cook: ConsoleInAShell): Promise<void> => {
  cook.press('\u001a');
  await cook.stands();
  const from = cook.raw.length;
  cook.kill('SIGCONT');
  await cook.until('the screen again', () => cook.raw.slice(from).includes('\u001b[?2004h'));
};

/**
 * Leaving is a key like any other: asked for and answered by chance, it is meant. Once the terminal is given back,
 * it acts itself on what still comes (Ctrl+C, Ctrl+\\).
 */
const leftByItself = async (cook: ConsoleInAShell): Promise<void> => {
  expect([0, 130, 131]).toContain((await cook.ended()).code);
  expect(modesLeftOn(cook.raw)).toEqual([]);
  expect(cook.after).toBe(cook.before);
};

const shuffledBytes = (random: () => number): Buffer =>
  Buffer.from(
    Array.from({ length: 256 }, (_, value) => ({ value, at: random() }))
      .sort((one, other) => one.at - other.at)
      .map(({ value }) => value),
  );

const randomUnicode = (random: () => number): Buffer =>
  Buffer.from(
    Array.from({ length: 120 }, () => {
      const most = random() < 0.4 ? 0x80 : random() < 0.5 ? 0x3000 : 0x10ffff;
      const point = Math.floor(random() * most);
      return point >= 0xd800 && point <= 0xdfff ? 'x' : String.fromCodePoint(point);
    }).join(''),
  );

/** Whole characters, some of their bytes lost or doubled on the way. */
const brokenUtf8 = (random: () => number): Buffer => {
  const whole = randomUnicode(random);
  return Buffer.from(
    [...whole].flatMap((byte) => (random() < 0.1 ? [] : random() < 0.1 ? [byte, byte] : [byte])),
  );
};

const kinds = [
  ['all byte values', shuffledBytes],
  ['random Unicode', randomUnicode],
  ['broken UTF-8', brokenUtf8],
] as const;

describe('a keyboard that sends anything', () => {
  const rounds = times(1, 8);
  let typed = 0;
  let events = 0;

  it.concurrent.each(phases.map((path) => [basename(path, '.jsonl'), path]))(
    `in the cook "%s", ${rounds} times: no crash, no event lost, the terminal given back`,
    { timeout: 60_000 + rounds * 30_000 },
    async (name, path) => {
      const random = chance(seed + name.length * 101);
      let cook = await resumed(path);
      for (let round = 0; round < rounds; round += 1) {
        for (const [, make] of kinds) {
          const bytes = make(random);
          typed += bytes.length;
          if (await hears(cook, bytes, random)) continue;
          await leftByItself(cook);
          expect(cook.raw).not.toMatch(noStack);
          cook = await resumedConsole(cook.home);
        }
      }
      while (!(await becomesCalm(cook))) {
        await leftByItself(cook);
        cook = await resumedConsole(cook.home);
      }
      await stopsAndComesBack(cook);
      const known = cook.entries.length;
      await stillWorks(cook);
      const { entries } = cook;
      expect(entries.length).toBeGreaterThan(known);
      expect(entries.map(({ seq }) => seq)).toEqual(entries.map((_, index) => index + 1));
      const state = cookOf(entries);
      expect(state === null ? null : advise(state, state.t).step).not.toBeNull();
      events += entries.length;
      await leaves(cook);
    },
  );

  afterAll(() => {
    console.log(
      `${typed} bytes of anything typed in ${phases.length} cooks: ${events} events kept, none lost`,
    );
  });
});
