import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { type Clock, secondsSince } from '../../source/session/clock.js';
import { cookOf, startKept } from '../../source/session/start.js';
import { hall, opened } from '../cook/play.js';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'kettlehand-start-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const clock: Clock = { up: () => 1000, wall: () => 1_800_000_000_000 };
const opening = { ...opened({ kitchen: hall }) };
const path = () => join(folder, 'cook.jsonl');

const problemOf = async (opens: typeof opening | null): Promise<string | null> => {
  const started = await startKept(path(), opens, clock);
  if ('problem' in started) return started.problem.id;
  await started.session.close();
  return null;
};

it('takes up nothing where there is nothing, and leaves no lock behind', async () => {
  expect(await problemOf(null)).toBe('command.journal-other');
  expect(await problemOf(opening)).toBeNull();
  expect(await problemOf(null)).toBeNull();
});

it('without its first event, in both copies, a journal is told and left as it is', async () => {
  const first = await startKept(path(), opening, clock);
  if ('problem' in first) throw new Error(first.problem.id);
  await first.session.type('note one');
  await first.session.close();
  const hurt = readFileSync(path(), 'utf8').replaceAll('"kind":"opened"', '"kind":"opencd"');
  writeFileSync(path(), hurt);
  expect(await problemOf(opening)).toBe('command.journal-other');
  expect(readFileSync(path(), 'utf8')).toBe(hurt);
  // One copy is enough.
  writeFileSync(path(), hurt.replace('"kind":"opencd"', '"kind":"opened"'));
  const again = await startKept(path(), opening, clock);
  if ('problem' in again) throw new Error(again.problem.id);
  expect(again.notes.map(({ id }) => id)).toEqual(['journal.damaged']);
  expect(again.session.cook.length).toBe(2);
  await again.session.close();
});

it('is no cook without its opening', () => {
  expect(cookOf([])).toBeNull();
  expect(cookOf([{ seq: 1, t: 0, at: 'x', up: null, kind: 'note', text: 'x' }])).toBeNull();
});

it.each([
  [
    'a stamp without up-time, as from a system that has none',
    { t: 0, up: null, at: '2027-01-15T07:59:00.000Z' },
    60,
    false,
  ],
  ['a wall clock that cannot be read', { t: 0, up: null, at: 'yesterday' }, 0, false],
  [
    'the same run of the machine, whatever the wall clock says',
    { t: 0, up: 900, at: '1999-01-01T00:00:00.000Z', boot: 'a' },
    100,
    true,
  ],
  ['another run', { t: 0, up: 900, at: '2027-01-15T07:00:00.000Z', boot: 'b' }, 3600, false],
] as const)('%s', (_what, last, seconds, sure) => {
  expect(secondsSince(last, { ...clock, boot: 'a' })).toEqual({ seconds, sure });
});
