import { mkdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Entry } from '../../source/journal/line.js';
import { journalPath, listCooks, newCookId, unfinishedCooks } from '../../source/journal/list.js';
import { bytesOf, event, opened, sample, scratch } from './sample.js';

const isOver = (entries: readonly Entry[]): boolean => entries.at(-1)?.kind === 'stop';

const folderWith = (files: Readonly<Record<string, Uint8Array>>): string => {
  const folder = scratch();
  for (const [name, bytes] of Object.entries(files)) writeFileSync(join(folder, name), bytes);
  return folder;
};

const bytes = {
  over: bytesOf([...sample, event(6, 'stop')]),
  going: bytesOf(sample),
  rehearsal: bytesOf([{ ...opened, seed: 7 }, event(2)]),
  headless: bytesOf(sample.slice(1)),
};

/** A cook whose last event was at this time of one day. */
const leftAt = (time: string): Uint8Array =>
  bytesOf([opened, event(2, 'note', { at: `2026-12-06T${time}:00.000Z` })]);

/** What is offered at this time of that day. */
const offered = async (
  files: Readonly<Record<string, Uint8Array>>,
  time = '12:00',
): Promise<readonly string[]> => {
  const now = Date.parse(`2026-12-06T${time}:00.000Z`);
  return (await unfinishedCooks(folderWith(files), { isOver, now })).map(({ id }) => id);
};

describe('the cooks in the data folder', () => {
  it('are listed newest first, with what a person knows them by', async () => {
    const folder = folderWith({ 'a.jsonl': bytes.over, 'b.jsonl': bytes.rehearsal, 'c.jsonl': bytes.going });
    const cooks = await listCooks(folder, { isOver });
    expect(cooks.map(({ id, isOver: over, isRehearsal }) => [id, over, isRehearsal])).toEqual([
      ['c', false, false],
      ['b', false, true],
      ['a', true, false],
    ]);
    expect(cooks[0]).toMatchObject({
      recipeName: 'Hill hall ginger pull',
      startedAt: opened.at,
      lastAt: sample.at(-1)?.at,
    });
  });

  it('passes over what is no journal of a cook', async () => {
    const folder = folderWith({
      'noise.jsonl': Buffer.from('x'.repeat(5000)),
      'empty.jsonl': Buffer.alloc(0),
      'cook.jsonl.lock': Buffer.from('{}'),
      'odd\nname.jsonl': bytes.going,
      '..jsonl': bytes.going,
      'real.jsonl': bytes.going,
    });
    mkdirSync(join(folder, 'folder.jsonl'));
    symlinkSync(join(folder, 'real.jsonl'), join(folder, 'link.jsonl'));
    expect((await listCooks(folder, { isOver })).map(({ id }) => id)).toEqual(['real']);
    expect(await listCooks(join(folder, 'nowhere'), { isOver })).toEqual([]);
  });

  it('offers the newest cook that is not over to be resumed: no rehearsal, none without its recipe', async () => {
    const files = {
      'a.jsonl': bytes.going,
      'b.jsonl': bytes.over,
      'c.jsonl': bytes.rehearsal,
      'd.jsonl': bytes.headless,
    };
    expect(await offered(files)).toEqual(['a']);
    expect(await offered({ 'b.jsonl': bytes.over })).toEqual([]);
    expect(await unfinishedCooks(join(scratch(), 'nowhere'), { isOver, now: 0 })).toEqual([]);
  });

  it('offers first the cook that was last at work, however late another was opened beside it', async () => {
    const files = {
      'a.jsonl': leftAt('16:30'),
      'b.jsonl': leftAt('16:20'),
      'c.jsonl': bytesOf([opened]),
      'd.jsonl': leftAt('10:00'),
    };
    // Another that is unfinished too is asked for on its day; one that only was opened hides none with a cook in it.
    expect(await offered(files, '17:00')).toEqual(['a', 'b', 'd']);
    expect(await offered(files, '23:00')).toEqual(['a', 'b']);
    expect(await offered({ 'c.jsonl': bytesOf([opened]) }, '17:00')).toEqual(['c']);
    const { 'a.jsonl': a, 'b.jsonl': b, 'd.jsonl': d } = files;
    const four = { 'a.jsonl': a, 'b.jsonl': b, 'd.jsonl': d, 'e.jsonl': leftAt('16:10') };
    expect(await offered(four, '17:00')).toEqual(['a', 'b', 'e']);
  });

  it('reads the two ends of a long journal only, and still knows how it began and ended', async () => {
    const filling = Array.from({ length: 60 }, (_, i) => event(i + 2, 'note', { text: 'y'.repeat(60_000) }));
    const folder = folderWith({ 'long.jsonl': bytesOf([opened, ...filling, event(99, 'stop')]) });
    let seen = 0;
    const cooks = await listCooks(folder, {
      isOver: (entries) => {
        seen = entries.length;
        return isOver(entries);
      },
    });
    expect(cooks[0]).toMatchObject({ opened, isOver: true });
    expect(seen).toBeLessThan(45);
  });

  it('names cooks so that they sort by time and stay in their folder', () => {
    const id = newCookId(new Date('2026-12-05T17:30:09.120Z'));
    expect(id).toMatch(/^2026-12-05-173009-[0-9a-f]{4}$/);
    expect(journalPath('/data', id)).toBe(`/data/${id}.jsonl`);
    for (const bad of [
      '../x',
      'a/b',
      '/etc/x',
      '',
      '.',
      '..',
      'a\nb',
      'a\0b',
      '.hidden',
      'a\u202eb',
      'x'.repeat(300),
    ]) {
      expect(journalPath('/data', bad)).toBeNull();
    }
  });
});
