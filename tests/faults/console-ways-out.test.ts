import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { spawn } from '@lydell/node-pty';
import { afterAll, describe, expect, it } from 'vitest';
import { CookAtTheScreen, modesLeftOn } from '../terminal/driver.js';
import { type ConsoleInAShell, closeAll, homeWithKitchen, newConsole, resumedConsole } from './console.js';
import { entriesOf, Piped, program, scratch } from './program.js';

afterAll(closeAll);

const inject = ['--import', join(import.meta.dirname, 'inject.mjs')];
const noStack = /\n\s+at .*\d+:\d+/;

/** The shell has its terminal as it was. */
const givenBack = (cook: ConsoleInAShell): void => {
  expect(modesLeftOn(cook.raw)).toEqual([]);
  expect(cook.onTheOtherScreen).toBe(false);
  expect(cook.after).toBe(cook.before);
  expect(cook.raw).not.toMatch(noStack);
};

describe('every way out of the shipped console gives the terminal back and keeps what was shown', () => {
  it.concurrent.each([
    ['SIGHUP', 129],
    ['SIGINT', 130],
    ['SIGTERM', 143],
    ['SIGQUIT', 130],
  ] as const)('%s: ends with %i', async (signal, code) => {
    const cook = await newConsole(scratch());
    await cook.takes(71);
    expect(cook.now).not.toBe(cook.before);
    cook.kill(signal);
    expect(await cook.ended()).toEqual({ code, signal: 0 });
    givenBack(cook);
    expect(cook.entries.at(-1)).toMatchObject({ kind: 'reading', value: 71 });
  });

  it.concurrent.each(['exception', 'rejection'])(
    'an uncaught %s of the program itself: ends with 1 and a sentence',
    async (kind) => {
      const cook = await newConsole(scratch(), { node: inject, env: { FAULT_THROWS: kind } });
      await cook.takes(71);
      cook.kill('SIGUSR2');
      expect(await cook.ended()).toEqual({ code: 1, signal: 0 });
      givenBack(cook);
      expect(cook.text.trim()).toBe('That failed: broke on purpose. Nothing that was saved is lost.');
      expect(cook.entries.at(-1)).toMatchObject({ kind: 'reading', value: 71 });
    },
  );

  it.concurrent('while it still asks something, and twice at once', async () => {
    const home = scratch();
    const first = await newConsole(home);
    await first.takes(71);
    first.kill('SIGKILL');
    // Nothing can be given back then; the cook is kept.
    expect(await first.ended()).toEqual({ code: 137, signal: 0 });
    const again = await resumedConsole(home, { answers: false });
    again.kill('SIGTERM');
    again.kill('SIGHUP');
    expect([129, 143]).toContain((await again.ended()).code);
    givenBack(again);
    expect(again.entries.map(({ kind }) => kind)).toEqual(['opened', 'reading']);
  });

  it.concurrent('Ctrl+Z: the shell has its terminal while it is stopped, and fg goes on, in another size too', async () => {
    const cook = await newConsole(scratch());
    const inCook = cook.now;
    cook.press('\u001a');
    await cook.stands();
    await cook.until('the shell', () => modesLeftOn(cook.raw).length === 0);
    const from = cook.raw.length;
    expect(cook.now).toBe(cook.before);
    // What is typed now is the shell's.
    cook.resize(100, 30);
    cook.kill('SIGCONT');
    await cook.until('the screen again', () => cook.raw.slice(from).includes('\u001b[?2004h'));
    await cook.says(/Set everything out/);
    expect(cook.now).toBe(inCook);
    await cook.takes(72);
    await cook.until('keys on the last of 30 rows', () => cook.rows[29]?.startsWith('0-9 reading') === true);
    cook.kill('SIGTERM');
    expect((await cook.ended()).code).toBe(143);
    givenBack(cook);
    expect(cook.entries.at(-1)).toMatchObject({ value: 72 });
  });

  // By itself: a terminal that a program of another test has inherited does not go away.
  it('the window is closed: it ends by itself, and the cook goes on in the next', async () => {
    const home = scratch();
    const cook = await newConsole(home);
    await cook.takes(71);
    await cook.closesTheWindow();
    await cook.shellGoesOn();
    expect(cook.code).toBe(129);
    expect(cook.entries.at(-1)).toMatchObject({ value: 71 });
    const again = await resumedConsole(home);
    await again.until('what was there before', () => again.lastEvents.includes(' 71 '));
  });
});

describe('in a shell with jobs', () => {
  it.concurrent('Ctrl+Z stops it, fg takes it up, and the shell is left as it was', async () => {
    const home = homeWithKitchen(scratch());
    const shell = new CookAtTheScreen({
      env: { KETTLEHAND_HOME: home, PS1: 'shell> ', HISTFILE: undefined },
      command: ['bash', '--norc', '--noprofile', '-i'],
    });
    try {
      await shell.says(/shell> $/);
      // Behind something that stands on the line already.
      shell.press(`printf 'half a line'; ${process.execPath} ${resolve(program)} cook\r`);
      await shell.says(/Set everything out/);
      expect(shell.rows[0]).toMatch(/^\[MIX\] dissolve/);
      shell.press('\u001a');
      await shell.says(/Stopped/);
      expect(shell.onTheOtherScreen).toBe(false);
      shell.press('echo $((6*7)) here\r');
      await shell.says(/42 here/);
      shell.press("printf 'half a line'; fg\r");
      await shell.says(/Set everything out/);
      expect(shell.rows[0]).toMatch(/^\[MIX\] dissolve/);
      shell.press('71\r');
      await shell.until('the reading', () => shell.rows.at(-2)?.includes(' 71 ') === true);
      shell.press('\u0003\u0003');
      await shell.says(/shell> $/);
      shell.press('echo ended $?\r');
      await shell.says(/ended 130/);
    } finally {
      await shell.close();
    }
  });
});

describe('no terminal, or half of one', () => {
  it('the terminal that is written to goes away: ends with 0, the keyboard given back', async () => {
    const other = spawn('sleep', ['60'], { cols: 80, rows: 24, env: {} });
    const cook = await newConsole(scratch(), {
      stdout: (other as unknown as { _pty: string })._pty,
      says: null,
    });
    await new Promise<void>((drawn) => {
      other.onData((data) => {
        if (data.includes('reading')) drawn();
      });
    });
    expect(cook.now).not.toBe(cook.before);
    (other as unknown as { destroy(): void }).destroy();
    cook.press('71\r');
    expect(await cook.ended()).toEqual({ code: 0, signal: 0 });
    expect(cook.after).toBe(cook.before);
    expect(cook.raw).not.toMatch(noStack);
  });

  it.concurrent.each(['>&-', '| true', '< /dev/null'])('cook %s says what to do instead', async (what) => {
    const home = homeWithKitchen(scratch());
    const shell = new CookAtTheScreen({
      env: { KETTLEHAND_HOME: home },
      command: ['bash', '-c', `set -o pipefail; ${process.execPath} ${resolve(program)} cook ${what}`],
    });
    expect(await shell.ended()).toEqual({ code: 2, signal: 0 });
    expect(shell.flat).toContain('needs a terminal');
    expect(modesLeftOn(shell.raw)).toEqual([]);
    expect(shell.raw).not.toMatch(/\u001b\[\?/);
    await shell.close();
  });

  it.concurrent('TERM=dumb is led line by line without being asked for, and without any escape sequence', async () => {
    const cook = await newConsole(scratch(), { env: { TERM: 'dumb' } });
    cook.press('done\r');
    await cook.says(/Say aloud who does what/);
    cook.press('leave\r');
    expect(await cook.ended()).toEqual({ code: 0, signal: 0 });
    expect(cook.raw).not.toContain('\u001b');
    expect(cook.entries.map(({ kind }) => kind)).toEqual(['opened', 'done']);
  });

  it.concurrent('a plan read by head ends quietly; one that finds no room says so', () => {
    const plan = `"${process.execPath}" "${resolve(program)}" plan hill-hall-ginger-pull`;
    const bash = (line: string) =>
      execFileSync('bash', ['-c', line], { encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
    const [first = '', codes] = bash(`${plan} | head -n 1; echo "\${PIPESTATUS[*]}"`).trimEnd().split('\n');
    expect(first).not.toBe('');
    expect(codes).toBe('0 0');
    const [said = '', code] = bash(`${plan} 2>&1 > /dev/full; echo $?`).trimEnd().split('\n');
    expect(said).toMatch(/^That failed: ENOSPC/);
    expect(code).toBe('1');
  });

  it.concurrent('a feed whose reader goes away ends with 0, and what was answered is kept', async () => {
    const path = join(scratch(), 'cook.jsonl');
    const feed = new Piped(['follow', 'mint-pull', '--json', '--journal', path]);
    feed.type('done');
    await feed.until(() => feed.lines.length === 1);
    feed.child.stdout.destroy();
    for (let n = 0; n < 100 && feed.child.exitCode === null; n += 1) {
      feed.type('note more');
      await new Promise((next) => setTimeout(next, 20));
    }
    expect(await feed.ended).toBe(0);
    expect(feed.err).toBe('');
    expect(entriesOf(path)[1]).toMatchObject({ kind: 'done' });
    expect(readFileSync(path, 'utf8').endsWith('\n')).toBe(true);
  });
});
