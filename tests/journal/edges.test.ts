import { appendFileSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { LockAnswer } from '../../source/files/lock.js';
import { type Followed, followJournal } from '../../source/journal/follow.js';
import { diskIo } from '../../source/journal/io.js';
import { listCooks } from '../../source/journal/list.js';
import { openJournal } from '../../source/journal/open.js';
import { bytesOf, event, freeLock, opened, sample, scratch } from './sample.js';

const isOver = (): boolean => false;

describe('the list of cooks', () => {
  it('ends after as many as were asked for, the newest first', async () => {
    const folder = scratch();
    for (const id of ['a', 'c', 'd', 'b']) writeFileSync(join(folder, `${id}.jsonl`), bytesOf(sample));
    const ids = async (most?: number) =>
      (await listCooks(folder, { isOver, ...(most === undefined ? {} : { most }) })).map(({ id }) => id);
    expect(await ids(2)).toEqual(['d', 'c']);
    expect(await ids()).toEqual(['d', 'c', 'b', 'a']);
  });

  it('has no name for a recipe whose name is none, and knows its last moment by its last event', async () => {
    const folder = scratch();
    for (const [id, recipe] of [
      ['number', { name: 7 }],
      ['nothing', null],
    ] as const)
      writeFileSync(join(folder, `${id}.jsonl`), bytesOf([{ ...opened, recipe }, event(9)]));
    const cooks = await listCooks(folder, { isOver });
    expect(cooks.map(({ recipeName }) => recipeName)).toEqual([null, null]);
    expect(cooks[0]).toMatchObject({ startedAt: opened.at, lastAt: event(9).at });
  });

  it('hands over every event of a short journal, each once', async () => {
    const folder = scratch();
    const filling = Array.from({ length: 40 }, (_, i) => event(i + 2, 'note', { text: 'y'.repeat(50_000) }));
    writeFileSync(join(folder, 'long-enough.jsonl'), bytesOf([opened, ...filling]));
    let seen: readonly number[] = [];
    await listCooks(folder, {
      isOver: (entries) => {
        seen = entries.map(({ seq }) => seq);
        return false;
      },
    });
    expect(seen).toEqual([opened, ...filling].map(({ seq }) => seq));
  });
});

describe('following a journal', () => {
  it('looks again by itself, and stops at once when it is told to', async () => {
    const path = join(scratch(), 'cook.jsonl');
    writeFileSync(path, bytesOf([opened]));
    const stop = new AbortController();
    const heard: Followed[] = [];
    for await (const item of followJournal(path, { signal: stop.signal })) {
      heard.push(item);
      if (item.what !== 'upToDate') continue;
      if (heard.length === 2) appendFileSync(path, bytesOf([event(2)]));
      else setImmediate(() => stop.abort());
    }
    expect(heard.map((item) => (item.what === 'entry' ? item.entry.seq : item.what))).toEqual([
      1,
      'upToDate',
      2,
      'upToDate',
    ]);
  });

  it('says of a line without end that it is too long, not that its sum is wrong', async () => {
    const path = join(scratch(), 'cook.jsonl');
    writeFileSync(
      path,
      Buffer.concat([
        bytesOf([opened]),
        Buffer.alloc(3 * 1024 * 1024, 'x'),
        Buffer.from('\n'),
        bytesOf([event(2)]),
      ]),
    );
    const damaged: unknown[] = [];
    const stop = new AbortController();
    for await (const item of followJournal(path, { signal: stop.signal })) {
      if (item.what === 'damaged') damaged.push(item.damaged);
      if (item.what === 'upToDate') stop.abort();
    }
    expect(damaged).toEqual([{ line: 3, why: 'tooLong' }]);
  });

  it('tells a large journal in one go, without waiting in between', async () => {
    const path = join(scratch(), 'cook.jsonl');
    const filling = Array.from({ length: 30 }, (_, i) => event(i + 2, 'note', { text: 'y'.repeat(60_000) }));
    writeFileSync(path, bytesOf([opened, ...filling]));
    const stop = new AbortController();
    let [entries, upToDate] = [0, 0];
    for await (const { what } of followJournal(path, {
      signal: stop.signal,
      wait: async () => stop.abort(),
    })) {
      if (what === 'entry') entries += 1;
      if (what === 'upToDate') upToDate += 1;
    }
    expect([entries, upToDate]).toEqual([31, 1]);
  });
});

describe('the place of a journal', () => {
  it('is nothing where no file is, and an error where no file can be', async () => {
    const folder = scratch();
    writeFileSync(join(folder, 'file'), '');
    expect(await diskIo.look(join(folder, 'none'))).toBeNull();
    await expect(diskIo.look(join(folder, 'file', 'inside'))).rejects.toMatchObject({ code: 'ENOTDIR' });
    expect(await diskIo.look(join(folder, 'file'))).toEqual({
      bytes: 0,
      isFile: true,
      identity: expect.stringMatching(/^\d+:\d+$/),
    });
  });

  it('that holds something else is refused by name, also while it cannot be locked', async () => {
    const path = join(scratch(), 'shopping.txt');
    writeFileSync(path, 'sugar, syrup\n');
    const error = Object.assign(new Error('full'), { code: 'ENOSPC' });
    const noLock = async () =>
      ({ problem: { id: 'files.notWritten', values: {} }, error }) as unknown as LockAnswer;
    for (const lock of [freeLock, noLock]) {
      const answer = await openJournal({ path, lock });
      expect(answer).toMatchObject({ problem: { id: 'journal.notAJournal', values: { path } } });
    }
  });

  it('that is a folder is a problem, and no new journal', async () => {
    const path = join(scratch(), 'cook.jsonl');
    mkdirSync(path);
    expect(await openJournal({ path, lock: freeLock })).toHaveProperty('problem.id');
  });
});
