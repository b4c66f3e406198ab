import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { takeLock } from '../../source/files/lock.js';
import { lockPath } from '../../source/journal/journal.js';
import { isLed, runningCooks } from '../../source/journal/running.js';
import { bytesOf, sample, scratch } from './sample.js';

it('finds the cooks that somebody leads now, newest first, and touches no lock', async () => {
  const folder = scratch();
  const ids = ['2026-12-05-170000-aaaa', '2026-12-05-180000-bbbb', '2026-12-05-190000-cccc'];
  for (const id of ids) writeFileSync(join(folder, `${id}.jsonl`), bytesOf(sample));
  const path = (id: string): string => join(folder, `${id}.jsonl`);
  expect(await runningCooks(folder)).toEqual([]);

  const [first = '', second = ''] = ids;
  const held = await Promise.all([first, second].map((id) => takeLock(lockPath(path(id)))));
  writeFileSync(join(folder, '.jsonl.lock'), '{}');
  writeFileSync(join(folder, 'odd\nname.jsonl.lock'), '{}');
  writeFileSync(join(folder, 'notes.txt'), '');
  mkdirSync(join(folder, '2026-12-05-200000-dddd.jsonl.lock'));
  expect(await runningCooks(folder)).toEqual([second, first]);
  expect(await isLed(path(first))).toBe(true);
  expect(await isLed(path(ids[2] ?? ''))).toBe(false);

  for (const answer of held) if ('lock' in answer) await answer.lock.release();
  expect(await runningCooks(folder)).toEqual([]);
});

it('finds none where there is no folder', async () => {
  expect(await runningCooks(join(scratch(), 'nowhere'))).toEqual([]);
});
