import { execFileSync } from 'node:child_process';
import { mkdirSync, readFileSync, renameSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { LockAnswer } from '../../source/files/lock.js';
import { followJournal } from '../../source/journal/follow.js';
import type { JournalIo } from '../../source/journal/io.js';
import { retryMilliseconds } from '../../source/journal/journal.js';
import { openJournal } from '../../source/journal/open.js';
import { readPart, withJournal } from '../../source/journal/read.js';
import { recover } from '../../source/journal/recover.js';
import { bytesOf, event, freeLock, handClock, opened, sample, scratch, settle } from './sample.js';

const openedOn = async (
  path: string,
  more: { io?: JournalIo; lock?: (path: string) => Promise<LockAnswer> },
) => {
  const clock = handClock();
  const answer = await openJournal({ path, scheduler: clock, lock: freeLock, ...more });
  if ('problem' in answer) throw new Error(answer.problem.id);
  return { journal: answer.journal, clock };
};

describe('what others do to the journal meanwhile', () => {
  it('another console that locked it first, while the folder was away, keeps it', async () => {
    const path = join(scratch(), 'cook.jsonl');
    const error = Object.assign(new Error('gone'), { code: 'ENOENT' });
    const other = { pid: 77, host: 'hall', since: '2026-12-05T18:00:00.000Z' };
    const away = { problem: { id: 'files.notWritten', values: {} }, error } as unknown as LockAnswer;
    const taken = { heldBy: other, sameHost: true } as unknown as LockAnswer;
    const answers = [away, taken, taken];
    const lock = async (): Promise<LockAnswer> => answers.shift() ?? taken;
    const { journal } = await openedOn(path, { lock });
    expect(await journal.append(opened)).toBe('held');
    expect(journal.state).toMatchObject({
      saving: false,
      heldCount: 1,
      problem: { values: { trouble: 'taken' } },
    });
    await journal.close();
  });

  it('a pipe put in its place is not written to', async () => {
    const path = join(scratch(), 'cook.jsonl');
    const { journal } = await openedOn(path, {});
    execFileSync('mkfifo', [path]);
    expect(await journal.append(opened)).toBe('held');
    expect(journal.state.problem?.values).toMatchObject({ trouble: 'notAFile' });
    await journal.close();
  });

  it('a folder that becomes a file between two events: held, and saved once it is back', async () => {
    const folder = join(scratch(), 'cooks');
    mkdirSync(folder);
    const path = join(folder, 'cook.jsonl');
    const { journal, clock } = await openedOn(path, {});
    expect(await journal.append(opened)).toBe('saved');
    renameSync(folder, `${folder}.away`);
    writeFileSync(folder, '');
    expect(await journal.append(event(2))).toBe('held');
    expect(journal.state.saving).toBe(false);
    renameSync(folder, `${folder}.file`);
    renameSync(`${folder}.away`, folder);
    clock.pass(retryMilliseconds);
    await settle(() => journal.state.saving);
    expect(readFileSync(path)).toEqual(bytesOf([opened, event(2)]));
    await journal.close();
  });

  it('a file cut short between looking at its length and reading gives what is left', async () => {
    const path = join(scratch(), 'cook.jsonl');
    writeFileSync(path, bytesOf(sample));
    const read = await withJournal(path, async (handle, { bytes }) => {
      truncateSync(path, 300);
      return readPart(handle, 100, bytes);
    });
    expect(read).toEqual(bytesOf(sample).subarray(100, 300));
  });

  it('who follows it and has heard enough is not kept waiting', async () => {
    const path = join(scratch(), 'cook.jsonl');
    writeFileSync(path, bytesOf(sample));
    const stop = new AbortController();
    const heard: string[] = [];
    const wait = async (): Promise<void> => {
      heard.push('waited');
    };
    for await (const { what } of followJournal(path, { signal: stop.signal, wait })) {
      heard.push(what);
      if (what === 'upToDate') stop.abort();
    }
    expect(heard).toEqual([...sample.map(() => 'entry'), 'upToDate']);
  });

  it('a line longer than any may be is told as too long, and what follows is kept', () => {
    const bytes = Buffer.concat([
      bytesOf([opened]),
      Buffer.alloc(1_048_577, 'x'),
      Buffer.from('\n'),
      bytesOf([event(2)]),
    ]);
    const { entries, damaged } = recover(bytes);
    expect(entries.map(({ seq }) => seq)).toEqual([1, 2]);
    expect(damaged).toEqual([{ line: 3, why: 'tooLong' }]);
  });
});
