import { readFileSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { type ConsoleInAShell, closeAll, newConsole, resumedConsole } from './console.js';
import { scratch } from './program.js';

afterAll(closeAll);

const inject = ['--import', join(import.meta.dirname, 'inject.mjs')];

const kept = (cook: ConsoleInAShell): readonly unknown[] =>
  cook.entries.map(({ value, kind }) => value ?? kind);

it.concurrent('a disk that fails is said on the screen until it is over, whatever is typed; then all of it is saved', async () => {
  const home = scratch();
  const fault = join(home, 'fault');
  const cook = await newConsole(home, { node: inject, env: { FAULT_FILE: fault } });
  await cook.takes(71);
  writeFileSync(fault, 'ENOSPC write');
  await cook.takes(72);
  await cook.says(/NOTHING IS BEING SAVED/);
  await cook.isDone(/Say aloud who does what/);
  await cook.takes(73);
  expect(cook.flat).toMatch(/NOTHING IS BEING SAVED/);
  expect(kept(cook)).toEqual(['opened', 71]);
  writeFileSync(fault, '');
  await cook.saysNoMore(/NOTHING IS BEING SAVED/);
  expect(kept(cook)).toEqual(['opened', 71, 72, 'done', 73]);
});

it.concurrent('a second console is told who holds the cook, asleep or not, and may begin another', async () => {
  const home = scratch();
  const first = await newConsole(home);
  await first.takes(71);
  const pid = first.pid;
  first.kill('SIGSTOP');
  utimesSync(`${first.journal}.lock`, 0, 0);
  const { journal: path } = first;
  const journal = readFileSync(path, 'utf8');
  const says = new RegExp(`process ${pid}\\b`);
  const second = await newConsole(home, { says });
  await second.says(/Begin a new cook/);
  second.press('l');
  expect((await second.ended()).code).toBe(1);
  expect(second.journals).toHaveLength(1);
  const beside = await newConsole(home, { says });
  beside.press('n');
  await beside.says(/Set everything out/);
  expect(beside.journals).toHaveLength(2);
  beside.kill('SIGTERM');
  expect((await beside.ended()).code).toBe(143);
  process.kill(pid, 'SIGCONT');
  first.reads(72);
  await first.until('the reading', () => first.lastEvents.includes(' 72 '));
  expect(readFileSync(path, 'utf8').startsWith(journal)).toBe(true);
  process.kill(pid, 'SIGKILL');
  await first.ended();
  const third = await resumedConsole(home);
  await third.until('what was there', () => third.lastEvents.includes(' 72 '));
});
