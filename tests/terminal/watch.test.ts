import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import {
  appendFileSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, describe, expect, it } from 'vitest';
import { CookAtTheScreen, modesLeftOn } from './driver.js';
import { Typist } from './typist.js';

const program = process.env.KETTLEHAND_PROGRAM ?? 'bin/kettlehand.mjs';
const folder = mkdtempSync(join(tmpdir(), 'kettlehand-watch-'));
const open: CookAtTheScreen[] = [];
afterEach(async () => {
  await Promise.all(open.splice(0).map((one) => one.close()));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

let made = 0;
const freshHome = (): string => {
  made += 1;
  return join(folder, `home-${made}`);
};

const watch = (home: string, size: { columns?: number; rows?: number } = {}, ...args: string[]) => {
  const screen = new CookAtTheScreen({
    ...size,
    command: [process.execPath, program, 'watch', ...args],
    env: { KETTLEHAND_HOME: home },
  });
  open.push(screen);
  return screen;
};

const cookIn = (home: string): Typist =>
  Typist.cooks(home, ['hill-hall-ginger-pull', '--kitchen', 'recipes/kitchens/hill-hall.yaml']);

const run = (home: string, ...args: string[]) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, [program, 'watch', ...args], {
    encoding: 'utf8',
    env: { ...process.env, KETTLEHAND_HOME: home },
  });
  return { code: status, out: stdout, err: stderr };
};

const journalOf = (home: string): string => {
  const [file = ''] = readdirSync(join(home, 'cooks')).filter((name) => name.endsWith('.jsonl'));
  return join(home, 'cooks', file);
};

/** Every file with its size and its time of change. */
const filesIn = (home: string): readonly string[] =>
  readdirSync(home, { recursive: true, encoding: 'utf8' })
    .sort()
    .map((name) => {
      const { size, mtimeMs } = statSync(join(home, name));
      return `${name} ${size} ${mtimeMs}`;
    });

describe('the second screen of the room', () => {
  it('waits for a cook, follows it live, and says when nobody leads it any more', async () => {
    const home = freshHome();
    const room = watch(home);
    await room.says(/Waiting for a cook/);
    const cook = cookIn(home);
    await cook.sees('Set everything out');
    await room.says(/The cook lays out all the tools/);
    await cook.types('done', 'Say aloud');
    await cook.types('done', 'Read this aloud');
    await room.says(/reads a list out loud/);
    await cook.types('yes', 'Stir the dry things');
    await room.says(/into the cold pot/);
    expect(room.text).not.toContain('nobody at the keyboard');
    cook.key('leave\r');
    await cook.ended;
    await room.says(/nobody at the keyboard/);
    room.press('q');
    expect(await room.ended()).toMatchObject({ code: 0 });
    expect(modesLeftOn(room.raw)).toEqual([]);
  });

  it('is drawn in ASCII alone where that is asked', async () => {
    const home = freshHome();
    const cook = cookIn(home);
    await cook.sees('Set everything out');
    const room = watch(home, { columns: 120, rows: 40 }, '--ascii');
    await room.says(/lays out/);
    expect(room.text).toMatch(/^[\n -~]*$/);
    room.press('q');
    await room.ended();
    cook.key('leave\r');
    await cook.ended;
  });

  it.each([
    ['q', 0],
    ['\u001b', 0],
    ['\u0003', 130],
  ])('no key but leaving does anything: %j ends with %i', async (key, code) => {
    const home = freshHome();
    const cook = cookIn(home);
    await cook.sees('Set everything out');
    const room = watch(home);
    await room.says(/lays out/);
    const before = readFileSync(journalOf(home), 'utf8');
    room.press('238');
    room.press(' ');
    room.press('y!uhp');
    room.press('\r');
    room.press(key);
    expect(await room.ended()).toMatchObject({ code });
    expect(readFileSync(journalOf(home), 'utf8')).toBe(before);
    cook.key('leave\r');
    expect(await cook.ended).toBe(0);
  });

  it('is not noticed by the cook when it is killed, and has written and locked nothing', async () => {
    const home = freshHome();
    const cook = cookIn(home);
    await cook.sees('Set everything out');
    const before = filesIn(home);
    const room = watch(home);
    await room.says(/lays out/);
    expect(filesIn(home)).toEqual(before);
    room.kill('SIGKILL');
    await room.ended();
    expect(filesIn(home)).toEqual(before);
    await cook.types('done', 'Say aloud who does what');
    expect(cook.text).not.toMatch(/NOTHING IS BEING SAVED|holds this cook/);
    cook.key('leave\r');
    expect(await cook.ended).toBe(0);
  });

  it('outlives a journal that is torn, emptied and written anew', async () => {
    const home = freshHome();
    const cook = cookIn(home);
    await cook.sees('Set everything out');
    await cook.types('done', 'Say aloud');
    cook.kill('SIGKILL');
    await cook.ended;
    const path = journalOf(home);
    const whole = readFileSync(path);
    const room = watch(home, {}, path);
    await room.says(/reads a list out loud/);
    appendFileSync(path, '{"seq":99,"t":');
    truncateSync(path, 0);
    await room.says(/Waiting for the rest of this cook/);
    writeFileSync(path, whole);
    await room.says(/reads a list out loud/);
    room.press('q');
    expect(await room.ended()).toMatchObject({ code: 0 });
  });

  it('takes up the next cook when the one before is left', async () => {
    const home = freshHome();
    const first = cookIn(home);
    await first.sees('Set everything out');
    const room = watch(home, { columns: 120, rows: 40 });
    await room.says(/Hill hall ginger pull/);
    first.kill('SIGKILL');
    await first.ended;
    const second = Typist.cooks(home, ['mint-pull', '--new', '--kitchen', 'recipes/kitchens/hill-hall.yaml']);
    await second.sees('Set everything out');
    await room.says(/Mint pull|mint/i);
    second.key('leave\r');
    await second.ended;
  });
});

describe('the lines of the second screen', () => {
  it('are appended where there is no terminal, until it is asked to end', async () => {
    const home = freshHome();
    const cook = cookIn(home);
    await cook.sees('Set everything out');
    const child = spawn(process.execPath, [program, 'watch'], {
      env: { ...process.env, KETTLEHAND_HOME: home },
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    let out = '';
    child.stdout.setEncoding('utf8').on('data', (chunk: string) => {
      out += chunk;
    });
    const sees = async (words: string): Promise<void> => {
      for (let tries = 0; !out.includes(words); tries += 1) {
        if (tries > 200) throw new Error(`never said ${words}:\n${out}`);
        await new Promise((resolve) => setTimeout(resolve, 100));
      }
    };
    await sees('The cook lays out all the tools.');
    await cook.types('done', 'Say aloud');
    await sees('reads a list out loud');
    expect(out).not.toContain('\u001b');
    const ended = once(child, 'exit');
    child.kill('SIGTERM');
    expect((await ended)[0]).toBe(143);
    cook.key('leave\r');
    await cook.ended;
  });

  it('say once what there is to see', async () => {
    const home = freshHome();
    const cook = cookIn(home);
    await cook.sees('Set everything out');
    const { code, out } = run(home, '--once');
    expect(code).toBe(0);
    expect(out).toContain('Hill hall ginger pull');
    expect(out).toContain('The cook lays out all the tools.');
    cook.key('leave\r');
    await cook.ended;
    const rehearsals = join(home, 'rehearsals');
    mkdirSync(rehearsals, { recursive: true });
    renameSync(journalOf(home), join(rehearsals, '2026-11-25-120000-abcd.jsonl'));
    expect(run(home, '--once', '2026-11-25-120000-abcd')).toMatchObject({ code: 0, err: '' });
  });

  it('say clearly when there is nothing: none runs, none of that name, over, damaged, no cook at all', async () => {
    const home = freshHome();
    const cook = cookIn(home);
    await cook.sees('Set everything out');
    await cook.types('stop', /./);
    await cook.types('at over', /./);
    cook.key('leave\r');
    await cook.ended;
    const path = journalOf(home);
    const id = path.slice(path.lastIndexOf('/') + 1, -'.jsonl'.length);
    const damaged = join(home, 'damaged.jsonl');
    writeFileSync(damaged, readFileSync(path, 'utf8').replaceAll('"opened"', '"opxned"'));
    const answers: readonly (readonly [readonly string[], number, string])[] = [
      [['--once'], 1, 'No cook is running.'],
      [['nosuch'], 2, 'There is no cook "nosuch"'],
      [[id], 1, 'That cook is over: Hill hall ginger pull.'],
      [[damaged], 1, 'holds no cook that can be shown'],
      [[join(home, 'nothing.jsonl')], 1, 'could not be read'],
      [['one', 'two'], 2, 'one word too many'],
    ];
    for (const [args, code, words] of answers) {
      const got = run(home, ...args);
      expect(got.err).toContain(words);
      expect(got.err).not.toMatch(/\n\s+at /);
      expect({ args, code: got.code }).toEqual({ args, code });
    }
  });
});
