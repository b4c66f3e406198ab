import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { sweepLeftovers } from '../../source/files/sweep.js';
import type { Entry } from '../../source/journal/line.js';
import { openJournal } from '../../source/journal/open.js';
import { Session } from '../../source/session/session.js';
import { canMount, onSmallDisk } from '../files/small-disk.js';
import { faultyIo, freeLock, handClock } from '../journal/sample.js';
import { entriesOf, followArgs, kitchenFile, Piped, scratch, times } from './program.js';
import { Uninterrupted } from './uninterrupted.js';

const inject = ['--import', join(import.meta.dirname, 'inject.mjs')];
const cookArgs = ['cook', '--plain', '--kitchen', kitchenFile];

const journalIn = (home: string): string => {
  const folder = join(home, 'cooks');
  const names = existsSync(folder) ? readdirSync(folder) : [];
  return join(folder, names.find((name) => name.endsWith('.jsonl')) ?? 'none');
};
const notesIn = (home: string): readonly unknown[] =>
  entriesOf(journalIn(home)).flatMap(({ kind, text }) => (kind === 'note' ? [text] : []));

/** Counts what was said so far, so that one waits for it to be said again. */
const said = (cook: Piped, words: string): number => cook.out.split(words).length - 1;

const notSaving = 'NOTHING IS BEING SAVED';
const savingAgain = 'Saving works again';

const starts = async (home: string, env: Record<string, string> = {}, node: readonly string[] = []) => {
  const cook = new Piped(cookArgs, { KETTLEHAND_HOME: home, ...env }, node);
  await cook.until(() => cook.out.includes('Set everything out'));
  return cook;
};

const faults = [
  ['EIO', 'datasync'],
  ['EDQUOT', 'write'],
  ['EIO', 'write'],
  ['ENOSPC', 'write'],
  ['EROFS', 'write'],
].slice(0, times(2, 5));

// Each waits for the program's own next try: they may wait at the same time.
describe.concurrent('a cook while the disk fails, led line by line', () => {
  it.each(faults)(
    '%s on %s: goes on, says so until it is over, then saves what it held back',
    { timeout: 60_000 },
    async (code, operation) => {
      const home = scratch();
      const fault = join(home, 'fault');
      const cook = await starts(home, { FAULT_FILE: fault }, inject);
      cook.type('note before');
      await cook.until(() => notesIn(home).length === 1);
      writeFileSync(fault, `${code} ${operation}`);
      cook.type('done', 'note during');
      await cook.until(() => said(cook, notSaving) > 0 && said(cook, 'Held in memory') === 2);
      expect(cook.out).toContain('Say aloud who does what');
      // Longer than the first try to save again.
      await new Promise((resolve) => setTimeout(resolve, times(0, 4000)));
      expect(said(cook, savingAgain)).toBe(0);
      writeFileSync(fault, '');
      await cook.until(() => said(cook, savingAgain) === 1);
      expect(notesIn(home)).toEqual(['before', 'during']);
      expect(await cook.finish()).toBe(0);
      expect(cook.err).toBe('');
    },
  );

  it.skipIf(!canMount)('a disk that is really full', { timeout: 60_000 }, async () => {
    await onSmallDisk(96, async (home) => {
      const cook = await starts(home);
      writeFileSync(join(home, 'ballast'), Buffer.alloc(16 * 1024));
      let sent = 0;
      while (said(cook, notSaving) === 0 && sent < 400) {
        const before = said(cook, '\n');
        cook.type(`note ${sent} ${'x'.repeat(480)}`);
        sent += 1;
        await cook.until(() => said(cook, '\n') > before);
      }
      expect(sent).toBeLessThan(400);
      cook.type('done');
      await cook.until(() => cook.out.includes('Say aloud who does what'));
      rmSync(join(home, 'ballast'));
      await cook.until(() => said(cook, savingAgain) === 1);
      expect(await cook.finish()).toBe(0);
      expect(notesIn(home)).toHaveLength(sent);
      expect(entriesOf(journalIn(home)).map(({ seq }) => seq)).toEqual(
        Array.from({ length: sent + 2 }, (_, index) => index + 1),
      );
    });
  });

  it.skipIf(!canMount)('a folder that can only be read, then written', { timeout: 60_000 }, async () => {
    await onSmallDisk(256, async (home) => {
      execFileSync('mount', ['-o', 'remount,ro', home]);
      const cook = await starts(home);
      await cook.until(() => said(cook, notSaving) > 0);
      cook.type('note held', 'done');
      await cook.until(() => cook.out.includes('Say aloud who does what'));
      execFileSync('mount', ['-o', 'remount,rw', home]);
      await cook.until(() => said(cook, savingAgain) === 1);
      expect(notesIn(home)).toEqual(['held']);
      expect(await cook.finish()).toBe(0);
    });
  });

  it('a folder that is removed under the cook comes back with everything', { timeout: 60_000 }, async () => {
    const home = scratch();
    const cook = await starts(home);
    cook.type('note before');
    await cook.until(() => notesIn(home).length === 1);
    rmSync(join(home, 'cooks'), { recursive: true });
    cook.type('note after');
    await cook.until(() => notesIn(home).length === 2);
    expect(notesIn(home)).toEqual(['before', 'after']);
    expect(await cook.finish()).toBe(0);
    expect(cook.err).toBe('');
  });
});

const script = ['done', 'note one', 'done', 'yes', '70', 'undo', 'note two'];

/** What the script makes of a cook that no fault touches. */
const untouched = (): Uninterrupted => {
  const model = new Uninterrupted();
  for (const [t, typed] of script.entries()) model.type(typed, t);
  return model;
};

describe('the n-th call to the disk fails', () => {
  it('for every n: the loop that all drivers share loses no event, and says the same', async () => {
    const folder = scratch();
    const model = untouched();
    const run = async (path: string, fault: Parameters<typeof faultyIo>[0]) => {
      const io = faultyIo(fault);
      const clock = handClock();
      const opened = await openJournal({ path, io, scheduler: clock, lock: freeLock });
      if ('problem' in opened) throw new Error(opened.problem.id);
      const first = new Uninterrupted().cook;
      await opened.journal.append({ ...first.log[0], at: 'x', up: null } as unknown as Entry);
      const session = new Session({
        cook: first,
        journal: opened.journal,
        clock: { up: () => 0, wall: () => 0 },
        startsAt: 0,
      });
      for (const [t, typed] of script.entries()) await session.type(typed, t);
      expect(session.cook.length).toBe(model.cook.length);
      await session.close();
      return io.calls.length;
    };
    const total = await run(join(folder, 'clean.jsonl'), () => null);
    const clean = readFileSync(join(folder, 'clean.jsonl'), 'utf8');
    expect(total).toBeGreaterThan(20);
    for (let n = 1; n <= total; n += 1) {
      for (const code of ['EIO', 'ENOSPC'].slice(0, times(1, 2))) {
        const path = join(folder, `${n}-${code}.jsonl`);
        await run(path, (call) => (call === n ? { code, ...(n % 2 === 0 ? { after: 20 } : {}) } : null));
        expect(readFileSync(path, 'utf8'), `call ${n}`).toBe(clean);
      }
    }
  });

  it(`through the program itself, for ${times(4, 30)} n`, { timeout: 120_000 }, async () => {
    const folder = scratch();
    const model = untouched();
    const most = times(4, 30);
    for (let n = 1; n <= most; n += 1) {
      const nth = times(3 * n - 2, n);
      const path = join(folder, `${nth}.jsonl`);
      const feed = new Piped(followArgs(path), { FAULT_NTH: String(nth), FAULT_CODE: 'EIO' }, inject);
      feed.type(...script.map((typed, t) => JSON.stringify({ t, typed })), JSON.stringify({ t: 9 }));
      expect(await feed.finish()).toBe(0);
      expect(feed.lines).toHaveLength(script.length + 1);
      expect(JSON.parse(feed.lines.at(-1) ?? '')).toEqual(model.said(9));
      expect(entriesOf(path)).toHaveLength(model.events);
    }
  });
});

describe('what a killed program leaves behind', () => {
  it('hidden temporary files of ours are swept after an hour; nothing else is touched', async () => {
    const folder = scratch();
    const names = [
      '.cook.jsonl.lock.0123456789ab.tmp',
      '.kitchen.yaml.ffffffffffff.tmp',
      '.mine.tmp',
      'cook.0123456789ab.tmp',
      'cook.jsonl',
    ];
    for (const name of [...names, '.young.0123456789ab.tmp']) writeFileSync(join(folder, name), 'x');
    const old = new Date(Date.now() - 2 * 3_600_000);
    for (const name of names) utimesSync(join(folder, name), old, old);
    await sweepLeftovers(folder, Date.now());
    expect(readdirSync(folder).sort()).toEqual(
      ['.mine.tmp', '.young.0123456789ab.tmp', 'cook.0123456789ab.tmp', 'cook.jsonl'].sort(),
    );
    await sweepLeftovers(join(folder, 'nowhere'), Date.now());
  });
});
