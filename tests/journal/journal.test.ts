import { execFileSync } from 'node:child_process';
import {
  appendFileSync,
  mkdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  symlinkSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import type { LockAnswer } from '../../source/files/lock.js';
import { bounds } from '../../source/files/read.js';
import type { JournalIo } from '../../source/journal/io.js';
import { diskIo } from '../../source/journal/io.js';
import { type Journal, patienceMilliseconds, retryMilliseconds } from '../../source/journal/journal.js';
import type { Entry } from '../../source/journal/line.js';
import { type OpenAnswer, openJournal } from '../../source/journal/open.js';
import { type Recovered, recover } from '../../source/journal/recover.js';
import { canMount, onSmallDisk } from '../files/small-disk.js';
import {
  bytesOf,
  event,
  type Fault,
  faultyIo,
  freeLock,
  handClock,
  opened,
  sample,
  scratch,
  settle,
} from './sample.js';

const root = scratch();
let count = 0;
let path = '';

beforeEach(() => {
  count += 1;
  path = join(root, String(count), 'cook.jsonl');
  mkdirSync(dirname(path));
});

const opening = (answer: OpenAnswer): { journal: Journal; recovered: Recovered } => {
  if ('problem' in answer) throw new Error(answer.problem.id);
  return answer;
};

const problemOf = (answer: OpenAnswer): string | null => ('problem' in answer ? answer.problem.id : null);

const onDisk = (): readonly Entry[] => recover(readFileSync(path)).entries;

const quiet = (io: JournalIo) => ({ path, io, scheduler: handClock(), lock: freeLock });

const appendAll = async (journal: Journal, entries: readonly Entry[]): Promise<string[]> => {
  const answers: string[] = [];
  for (const entry of entries) answers.push(await journal.append(entry));
  return answers;
};

describe('the journal of a cook', () => {
  it('is on the disk as soon as an event is called saved, for the owner only', async () => {
    const { journal, recovered } = opening(await openJournal({ path }));
    expect(recovered.entries).toEqual([]);
    expect(journal.nextSeq).toBe(1);
    for (const entry of sample) {
      expect(await journal.append(entry)).toBe('saved');
      expect(onDisk().at(-1)).toEqual(entry);
    }
    expect(readFileSync(path).toString()).toEqual(bytesOf(sample).toString());
    expect(statSync(path).mode & 0o777).toBe(0o600);
    expect(journal.state).toEqual({ saving: true, heldCount: 0, problem: null });
    await journal.close();
  });

  it('keeps the order of the calls when nobody waits', async () => {
    const { journal } = opening(await openJournal(quiet(diskIo)));
    const many = [opened, ...Array.from({ length: 300 }, (_, i) => event(i + 2))];
    const answers = await Promise.all(many.map((entry) => journal.append(entry)));
    expect(new Set(answers)).toEqual(new Set(['saved']));
    expect(readFileSync(path).toString()).toEqual(bytesOf(many).toString());
    expect(journal.nextSeq).toBe(302);
    await journal.close();
  });

  it('is resumed with everything that was in it, and goes on behind it', async () => {
    writeFileSync(path, bytesOf(sample));
    const { journal, recovered } = opening(await openJournal({ path }));
    expect(recovered.entries).toEqual(sample);
    expect(journal.nextSeq).toBe(6);
    await journal.append(event(6));
    await journal.close();
    expect(readFileSync(path).toString()).toEqual(bytesOf([...sample, event(6)]).toString());
  });

  it('gets its final newline before anything else when the last line was cut off', async () => {
    const torn = bytesOf(sample).subarray(0, -5);
    writeFileSync(path, torn);
    const { journal, recovered } = opening(await openJournal({ path }));
    expect(recovered.torn).toBe(true);
    expect(readFileSync(path)).toEqual(Buffer.concat([torn, Buffer.from('\n')]));
    await journal.append(event(5, 'again'));
    await journal.close();
    expect(onDisk().map(({ kind }) => kind)).toEqual(['opened', 'reading', 'note', 'heat', 'again']);
    expect(recover(readFileSync(path)).damaged).toEqual([{ line: 6, why: 'checksum' }]);
  });

  it('takes an empty file, or one with the torn beginning of the first line, for a new journal', async () => {
    for (const bytes of [0, 3, 60]) {
      writeFileSync(path, bytesOf(sample).subarray(0, bytes));
      const { journal } = opening(await openJournal({ path }));
      expect(await appendAll(journal, sample)).toEqual(sample.map(() => 'saved'));
      await journal.close();
      expect(onDisk()).toEqual(sample);
    }
  });

  it('is never written into something else', async () => {
    const precious = 'kettlehand: 1\nname: my own recipe\n';
    writeFileSync(path, precious);
    expect(problemOf(await openJournal({ path }))).toBe('journal.notAJournal');
    expect(readFileSync(path, 'utf8')).toBe(precious);

    const link = join(dirname(path), 'link.jsonl');
    writeFileSync(path, bytesOf(sample));
    symlinkSync(path, link);
    expect(problemOf(await openJournal({ path: link }))).toBe('files.notRead');
    expect(problemOf(await openJournal({ path: dirname(path) }))).toBe('files.notAFile');

    const large = join(dirname(path), 'large.jsonl');
    writeFileSync(large, '');
    truncateSync(large, bounds.journal + 1);
    expect(problemOf(await openJournal({ path: large }))).toBe('files.tooLarge');
    expect(readFileSync(path).toString()).toEqual(bytesOf(sample).toString());
  });

  it('says of what comes after its end that it is not saved', async () => {
    const { journal } = opening(await openJournal(quiet(diskIo)));
    await journal.append(opened);
    await journal.close();
    expect(await journal.append(event(2))).toBe('held');
    await journal.close();
    expect(onDisk()).toEqual([opened]);
  });

  it('belongs to one console at a time', async () => {
    const { journal } = opening(await openJournal({ path }));
    const second = await openJournal({ path });
    expect(second).toMatchObject({
      problem: { id: 'journal.heldElsewhere', values: { pid: process.pid, sameHost: true } },
    });
    await journal.close();
    const third = opening(await openJournal({ path }));
    await third.journal.close();
  });
});

describe('a disk that fails', () => {
  /** A cook over a disk with a fault, healed at the end; then what a new program finds. */
  const cookOver = async (io: JournalIo, heal: () => void) => {
    const clock = handClock();
    const { journal } = opening(await openJournal({ path, io, scheduler: clock, lock: freeLock }));
    const states: boolean[] = [];
    journal.onChange(({ saving }) => states.push(saving));
    const answers: string[] = [];
    for (const entry of sample) {
      const answer = await journal.append(entry);
      answers.push(answer);
      if (answer === 'saved') expect(onDisk().at(-1)).toEqual(entry);
    }
    heal();
    clock.pass(retryMilliseconds);
    await settle(() => journal.state.saving);
    expect(journal.state).toEqual({ saving: true, heldCount: 0, problem: null });
    await journal.close();
    return { answers, states };
  };

  it('loses nothing whichever call fails, with whatever error, also half way through a write', async () => {
    const clean = faultyIo(() => null);
    await cookOver(clean, () => undefined);
    const total = clean.calls.length;
    expect(total).toBeGreaterThan(15);
    const faults: Fault[] = [
      { code: 'ENOSPC' },
      { code: 'EIO', after: 1 },
      { code: 'EDQUOT', after: 90 },
      { code: 'EROFS', after: 10_000 },
    ];
    for (let n = 1; n <= total; n += 1) {
      for (const fault of faults) {
        rmSync(path, { force: true });
        await cookOver(
          faultyIo((call) => (call === n ? fault : null)),
          () => undefined,
        );
        expect(readFileSync(path).toString()).toBe(bytesOf(sample).toString());
      }
    }
  });

  it('holds back all that happens from the n-th call on, and saves it in order when the disk is back', async () => {
    for (let n = 1; n <= 16; n += 1) {
      for (const after of [undefined, 25]) {
        rmSync(path, { force: true });
        let broken = true;
        const io = faultyIo((call) =>
          broken && call >= n ? { code: 'ENOSPC', ...(after ? { after } : {}) } : null,
        );
        const { answers, states } = await cookOver(io, () => {
          broken = false;
        });
        expect(answers.at(-1)).toBe('held');
        expect(answers).toEqual([...answers].sort().reverse());
        expect(states).toContain(false);
        expect(readFileSync(path).toString()).toBe(bytesOf(sample).toString());
      }
    }
  });

  it('resumes with every event that was called saved when the program is killed while the disk is broken', async () => {
    for (let n = 1; n <= 25; n += 1) {
      rmSync(path, { force: true });
      const io = faultyIo((call) => (call >= n ? { code: 'EIO', after: n * 7 } : null));
      const { journal } = opening(await openJournal(quiet(io)));
      const answers = await appendAll(journal, sample);
      await io.abandon();
      const saved = sample.filter((_, index) => answers[index] === 'saved');
      const again = opening(await openJournal(quiet(diskIo)));
      expect(again.recovered.entries.slice(0, saved.length)).toEqual(saved);
      const next = event(again.journal.nextSeq, again.journal.nextSeq === 1 ? 'opened' : 'later');
      expect(await again.journal.append(next)).toBe('saved');
      await again.journal.close();
      expect(onDisk()).toEqual([...again.recovered.entries, next]);
    }
  });

  it('says why, how much is held, and that it is over', async () => {
    let broken = true;
    const clock = handClock();
    const io = faultyIo((_, operation) => (broken && operation === 'datasync' ? { code: 'ENOSPC' } : null));
    const { journal } = opening(await openJournal({ path, io, scheduler: clock, lock: freeLock }));
    expect(await appendAll(journal, sample.slice(0, 3))).toEqual(['held', 'held', 'held']);
    expect(journal.state).toMatchObject({
      saving: false,
      heldCount: 3,
      problem: { id: 'journal.notSaved', values: { trouble: 'full', code: 'ENOSPC' } },
    });
    broken = false;
    expect(await journal.append(event(4))).toBe('saved');
    expect(journal.state).toEqual({ saving: true, heldCount: 0, problem: null });
    expect(onDisk()).toEqual([...sample.slice(0, 3), event(4)]);
    await journal.close();
  });

  it('does not keep a key waiting for a disk that hangs', async () => {
    let release: () => void = () => undefined;
    const hanging = new Promise<void>((resolve) => {
      release = resolve;
    });
    const clock = handClock();
    const io: JournalIo = {
      ...diskIo,
      open: async (name) => {
        const handle = await diskIo.open(name);
        return { ...handle, datasync: () => hanging.then(() => handle.datasync()) };
      },
    };
    const { journal } = opening(await openJournal({ path, io, scheduler: clock, lock: freeLock }));
    const first = journal.append(opened);
    clock.pass(patienceMilliseconds);
    expect(await first).toBe('held');
    expect(journal.state.problem?.values).toMatchObject({ trouble: 'slow' });
    expect(await journal.append(event(2))).toBe('held');
    release();
    await settle(() => journal.state.saving);
    expect(onDisk()).toEqual([opened, event(2)]);
    await journal.close();
  });

  it.skipIf(!canMount)('that is really full and then has room again loses nothing', async () => {
    await onSmallDisk(64, async (disk) => {
      path = join(disk, 'cook.jsonl');
      const clock = handClock();
      const { journal } = opening(await openJournal({ path, scheduler: clock }));
      await journal.append(opened);
      writeFileSync(join(disk, 'ballast'), Buffer.alloc(40 * 1024));
      const notes = Array.from({ length: 20 }, (_, i) => event(i + 2, 'note', { text: 'y'.repeat(2000) }));
      const answers = await appendAll(journal, notes);
      expect(new Set(answers)).toEqual(new Set(['saved', 'held']));
      expect(journal.state.problem?.values).toMatchObject({ trouble: 'full' });
      expect(onDisk().length).toBeGreaterThanOrEqual(
        1 + answers.filter((answer) => answer === 'saved').length,
      );
      rmSync(join(disk, 'ballast'));
      clock.pass(retryMilliseconds);
      await settle(() => journal.state.saving);
      expect(readFileSync(path).toString()).toEqual(bytesOf([opened, ...notes]).toString());
      await journal.close();
    });
  });

  it.skipIf(!canMount)('that becomes read-only holds events back until it can be written again', async () => {
    await onSmallDisk(256, async (disk) => {
      path = join(disk, 'cook.jsonl');
      const { journal } = opening(await openJournal({ path, scheduler: handClock() }));
      await journal.append(opened);
      await journal.close();
      execFileSync('mount', ['-o', 'remount,ro', disk]);
      const again = opening(await openJournal({ path, scheduler: handClock() }));
      expect(again.recovered.entries).toEqual([opened]);
      expect(await again.journal.append(event(2))).toBe('held');
      expect(again.journal.state.problem?.values).toMatchObject({ trouble: 'readOnly' });
      execFileSync('mount', ['-o', 'remount,rw', disk]);
      expect(await again.journal.append(event(3))).toBe('saved');
      expect(onDisk()).toEqual([opened, event(2), event(3)]);
      await again.journal.close();
    });
  });

  it('that lets nobody take the lock lets the cook go on, and says so from the start', async () => {
    let broken = true;
    const lock = async (name: string): Promise<LockAnswer> =>
      broken ? { problem: { id: 'journal.torn' }, error: { code: 'EROFS' } } : freeLock(name);
    const { journal } = opening(await openJournal({ path, scheduler: handClock(), lock }));
    expect(journal.state).toMatchObject({ saving: false, problem: { values: { trouble: 'readOnly' } } });
    expect(await journal.append(opened)).toBe('held');
    broken = false;
    expect(await journal.append(event(2))).toBe('saved');
    expect(onDisk()).toEqual([opened, event(2)]);
    await journal.close();
  });

  it('makes the name of a new journal last, too', async () => {
    const io = faultyIo(() => null);
    const { journal } = opening(await openJournal(quiet(io)));
    await journal.append(opened);
    expect(io.calls).toContain('syncFolder');
    expect(io.calls.lastIndexOf('datasync')).toBeGreaterThan(io.calls.lastIndexOf('write'));
    await journal.close();
  });

  it('is not asked for more than the largest journal that can be read again', async () => {
    const noise = Buffer.alloc(bounds.journal - 2000, `${'x'.repeat(9999)}\n`);
    writeFileSync(path, Buffer.concat([bytesOf([opened]), noise]));
    truncateSync(path, bounds.journal - 300);
    const { journal } = opening(await openJournal({ path, scheduler: handClock() }));
    expect(await journal.append(event(2))).toBe('saved');
    expect(await journal.append(event(3, 'note', { text: 'y'.repeat(300) }))).toBe('held');
    expect(journal.state).toMatchObject({ saving: false, problem: { id: 'journal.full' } });
    await journal.close();
    expect(statSync(path).size).toBeLessThanOrEqual(bounds.journal);
    expect(problemOf(await openJournal({ path }))).toBeNull();
  });

  it('refuses one event that is too long and saves the others', async () => {
    const { journal } = opening(await openJournal(quiet(diskIo)));
    await journal.append(opened);
    expect(await journal.append(event(2, 'note', { text: 'x'.repeat(100_000) }))).toBe('held');
    expect(journal.state).toMatchObject({ saving: true, problem: { id: 'journal.tooLong' } });
    expect(await journal.append(event(3))).toBe('saved');
    expect(journal.state.problem).toBeNull();
    expect(onDisk()).toEqual([opened, event(3)]);
    await journal.close();
  });
});

describe('a file that is meddled with under the running cook', () => {
  it('is written again as a whole when it was removed', async () => {
    const { journal } = opening(await openJournal({ path, scheduler: handClock() }));
    await appendAll(journal, sample.slice(0, 3));
    rmSync(path);
    expect(await appendAll(journal, sample.slice(3))).toEqual(['saved', 'saved']);
    expect(readFileSync(path).toString()).toEqual(bytesOf(sample).toString());
    await journal.close();
  });

  it('is written again as a whole when it was emptied or cut', async () => {
    for (const left of [0, 7, 300]) {
      rmSync(path, { force: true });
      const clock = handClock();
      const { journal } = opening(await openJournal({ path, scheduler: clock }));
      await appendAll(journal, sample.slice(0, 4));
      truncateSync(path, left);
      await journal.append(event(5, 'undo', { voids: 4 }));
      await journal.close();
      expect(readFileSync(path).toString()).toEqual(bytesOf(sample).toString());
    }
  });

  it('comes back with its folder, and the lock too', async () => {
    const clock = handClock();
    const { journal } = opening(await openJournal({ path, scheduler: clock }));
    await appendAll(journal, sample.slice(0, 3));
    rmSync(dirname(path), { recursive: true });
    expect(await journal.append(event(4, 'heat', { setting: 'medium' }))).toBe('held');
    expect(journal.state.problem?.values).toMatchObject({ trouble: 'missing' });
    clock.pass(retryMilliseconds);
    await settle(() => journal.state.saving);
    expect(statSync(dirname(path)).mode & 0o777).toBe(0o700);
    expect(problemOf(await openJournal({ path }))).toBe('journal.heldElsewhere');
    expect(await journal.append(event(5, 'undo', { voids: 4 }))).toBe('saved');
    expect(readFileSync(path).toString()).toEqual(bytesOf(sample).toString());
    await journal.close();
  });

  it('is left alone when somebody else wrote behind it', async () => {
    for (const foreign of ['x', 'x'.repeat(5000)]) {
      rmSync(path, { force: true });
      const { journal } = opening(await openJournal({ path, scheduler: handClock() }));
      await appendAll(journal, sample.slice(0, 3));
      appendFileSync(path, foreign);
      expect(await journal.append(event(4))).toBe('held');
      expect(journal.state.problem?.values).toMatchObject({ trouble: 'replaced' });
      expect(readFileSync(path, 'utf8')).toBe(`${bytesOf(sample.slice(0, 3))}${foreign}`);
      await journal.close();
    }
  });

  it('is left alone when another file has taken its name', async () => {
    const clock = handClock();
    const { journal } = opening(await openJournal({ path, scheduler: clock }));
    await appendAll(journal, sample.slice(0, 3));
    renameSync(path, `${path}.aside`);
    writeFileSync(path, 'somebody wrote here\n');
    expect(await journal.append(event(4, 'heat', { setting: 'medium' }))).toBe('held');
    expect(journal.state.problem?.values).toMatchObject({ trouble: 'replaced' });
    expect(readFileSync(path, 'utf8')).toBe('somebody wrote here\n');
    rmSync(path);
    const outside = join(root, `outside-${count}`);
    writeFileSync(outside, '');
    symlinkSync(outside, path);
    clock.pass(retryMilliseconds);
    await settle(() => JSON.stringify(journal.state.problem).includes('"link"'));
    expect(readFileSync(outside, 'utf8')).toBe('');
    rmSync(path);
    expect(await journal.append(event(5, 'undo', { voids: 4 }))).toBe('saved');
    expect(readFileSync(path).toString()).toEqual(bytesOf(sample).toString());
    await journal.close();
  });
});
