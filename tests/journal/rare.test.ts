import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { followJournal } from '../../source/journal/follow.js';
import { diskIo, type JournalIo } from '../../source/journal/io.js';
import { retryMilliseconds } from '../../source/journal/journal.js';
import { openJournal } from '../../source/journal/open.js';
import { bytesOf, event, freeLock, handClock, opened, scratch, settle } from './sample.js';

/** A disk whose handles do the first thing wrong that they are asked to: nothing is moved, and no error reported. */
const oddIo = (wrong: 'write' | 'read'): JournalIo => {
  let left = 1;
  const nothing = async (): Promise<number> => {
    left -= 1;
    return 0;
  };
  return {
    ...diskIo,
    open: async (path) => {
      const handle = await diskIo.open(path);
      return {
        ...handle,
        write: (bytes, at) => (wrong === 'write' && left > 0 ? nothing() : handle.write(bytes, at)),
        read: (into, at) => (wrong === 'read' && left > 0 ? nothing() : handle.read(into, at)),
      };
    },
  };
};

it('a disk that takes nothing and reports no error is not believed', async () => {
  const path = join(scratch(), 'cook.jsonl');
  const clock = handClock();
  const io = oddIo('write');
  const answer = await openJournal({ path, io, scheduler: clock, lock: freeLock });
  if ('problem' in answer) throw new Error(answer.problem.id);
  expect(await answer.journal.append(opened)).toBe('held');
  expect(answer.journal.state.problem?.values).toMatchObject({ trouble: 'device' });
  clock.pass(retryMilliseconds);
  await settle(() => answer.journal.state.saving);
  expect(readFileSync(path)).toEqual(bytesOf([opened]));
  await answer.journal.close();
});

it('a file that ends before the length it names is not written into', async () => {
  const path = join(scratch(), 'cook.jsonl');
  writeFileSync(path, bytesOf([opened]));
  const clock = handClock();
  const io = oddIo('read');
  const answer = await openJournal({ path, io, scheduler: clock, lock: freeLock });
  if ('problem' in answer) throw new Error(answer.problem.id);
  expect(await answer.journal.append(event(2))).toBe('held');
  expect(answer.journal.state.problem?.values).toMatchObject({ trouble: 'replaced' });
  clock.pass(retryMilliseconds);
  await settle(() => answer.journal.state.saving);
  expect(readFileSync(path)).toEqual(bytesOf([opened, event(2)]));
  await answer.journal.close();
});

it('a name that stands for a folder by the time of writing holds events back', async () => {
  const path = join(scratch(), 'cook.jsonl');
  const clock = handClock();
  const answer = await openJournal({ path, scheduler: clock, lock: freeLock });
  if ('problem' in answer) throw new Error(answer.problem.id);
  mkdirSync(path);
  expect(await answer.journal.append(opened)).toBe('held');
  expect(answer.journal.state).toMatchObject({ saving: false, heldCount: 1 });
  await answer.journal.close();
});

it('following a folder is refused, not waited for', async () => {
  const folder = scratch();
  await expect(followJournal(folder).next()).rejects.toThrow();
});

it('closing does not wait for a disk that hangs, and says so to whoever waits for an answer', async () => {
  const path = join(scratch(), 'cook.jsonl');
  const clock = handClock();
  let hangs = false;
  const io: JournalIo = {
    ...diskIo,
    open: async (name) => {
      const handle = await diskIo.open(name);
      return {
        ...handle,
        datasync: () => (hangs ? new Promise<void>(() => undefined) : handle.datasync()),
      };
    },
  };
  const answer = await openJournal({ path, io, scheduler: clock, lock: freeLock });
  if ('problem' in answer) throw new Error(answer.problem.id);
  await answer.journal.append(opened);
  hangs = true;
  const waiting = answer.journal.append(event(2));
  const closed = answer.journal.close();
  await settle(() => clock.waiting >= 2);
  clock.pass(5000);
  expect(await waiting).toBe('held');
  await closed;
});
