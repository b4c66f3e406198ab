import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import {
  appendFileSync,
  closeSync,
  mkdtempSync,
  openSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
  writeSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { recover } from '../../source/journal/recover.js';
import { CookAtTheScreen } from './driver.js';
import { Typist } from './typist.js';

const program = process.env.KETTLEHAND_PROGRAM ?? 'bin/kettlehand.mjs';
const folder = mkdtempSync(join(tmpdir(), 'kettlehand-feed-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

let made = 0;
const fresh = (name: string): string => {
  made += 1;
  return join(folder, `${name}-${made}`);
};
const pipe = (): string => {
  const path = fresh('pipe');
  execFileSync('mkfifo', [path]);
  return path;
};

const readingsIn = (home: string): readonly (readonly [unknown, unknown])[] => {
  const [file = ''] = readdirSync(join(home, 'cooks')).filter((name) => name.endsWith('.jsonl'));
  const { entries } = recover(readFileSync(join(home, 'cooks', file)));
  return entries.flatMap((entry) => (entry.kind === 'reading' ? [[entry.value, entry.by] as const] : []));
};

/** Wait until so many readings are in the journal. */
const readingOf = async (home: string, count: number): Promise<void> => {
  for (let tries = 0; readingsIn(home).length < count; tries += 1) {
    if (tries > 200) throw new Error(`never ${count} readings`);
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
};

const kitchen = ['--kitchen', 'recipes/kitchens/hill-hall.yaml'];
const fedBy = (path: string, home = fresh('home')): { cook: Typist; home: string } => ({
  cook: Typist.cooks(home, ['mint-pull', ...kitchen, '--feed', path]),
  home,
});

const leave = async (cook: Typist): Promise<void> => {
  cook.key('leave\r');
  expect(await cook.ended).toBe(0);
};

describe('a feed beside the keyboard', () => {
  it('of a file: what is appended becomes readings by the feed, and the person types the rest', async () => {
    const path = fresh('readings');
    writeFileSync(path, '200\n');
    const { cook, home } = fedBy(path);
    await cook.sees(/Readings also come from.*> $/);
    appendFileSync(path, '70.5\n');
    await cook.sees('71 °F');
    await cook.types('done', 'Say aloud who does what');
    appendFileSync(path, '25c\n');
    await readingOf(home, 2);
    await cook.types('72', '72 °F');
    await cook.types('undo', '77 °F');
    await leave(cook);
    expect(readingsIn(home)).toEqual([
      [70.5, 'feed'],
      [25, 'feed'],
      [72, 'hands'],
    ]);
  });

  it('of a pipe without a writer holds nobody up; one comes, is killed, and that is said', async () => {
    const path = pipe();
    const { cook, home } = fedBy(path);
    await cook.sees(/Nobody writes into .* yet/);
    await cook.types('done', 'Say aloud who does what');
    const writer: ChildProcess = spawn('sh', [
      '-c',
      `exec > "${path}"; while :; do echo 71; sleep 0.3; done`,
    ]);
    await cook.sees('The feed has begun: 71 °F');
    await cook.types('done', 'Read this aloud');
    await new Promise((resolve) => setTimeout(resolve, 900));
    writer.kill('SIGKILL');
    await cook.sees('The feed ended');
    await cook.types('73', '73 °F');
    const again = openSync(path, 'w');
    writeSync(again, '75\n');
    await cook.sees('The feed is back: 75 °F');
    closeSync(again);
    await leave(cook);
    expect(readingsIn(home)).toEqual([
      [71, 'feed'],
      [73, 'hands'],
      [75, 'feed'],
    ]);
  });

  it('that talks rubbish, jumps and stalls: each is said, nothing is asked, and typing goes on', async () => {
    const path = pipe();
    const { cook, home } = fedBy(path);
    await cook.sees(/Nobody writes/);
    const writer = openSync(path, 'w');
    writeSync(writer, 'time;temp\n');
    await cook.sees('"time;temp" is no temperature of syrup');
    // What is usual is known from two pauses on; what comes within 50 ms came at once.
    await new Promise((resolve) => setTimeout(resolve, 300));
    writeSync(
      writer,
      Buffer.concat([Buffer.from([0, 0x1b, 0x5b, 0x32, 0x4a, 255, 10]), Buffer.from('70\n')]),
    );
    await cook.sees('70 °F');
    await new Promise((resolve) => setTimeout(resolve, 1200));
    writeSync(writer, '200\n');
    await cook.sees('The feed jumped to 200 °F');
    expect(cook.text).not.toContain('Question:');
    expect(cook.text).not.toContain('\u001b[2J');
    await cook.sees('The feed stalled');
    await cook.types('done', 'Say aloud who does what');
    closeSync(writer);
    await leave(cook);
    expect(readingsIn(home)).toEqual([
      [70, 'feed'],
      [200, 'feed'],
    ]);
  });

  it('stands on the screen as long as it is so', async () => {
    const path = pipe();
    const home = fresh('home');
    const cook = new CookAtTheScreen({
      command: [process.execPath, program, 'cook', 'mint-pull', ...kitchen, '--feed', path],
      env: { KETTLEHAND_HOME: home },
    });
    await cook.says(/FEED.*Nobody writes into/);
    const writer = openSync(path, 'w');
    writeSync(writer, '70\n');
    await cook.says(/FEED.*has begun: 70 °F/);
    await cook.says(/now.*|70/);
    closeSync(writer);
    cook.kill('SIGTERM');
    expect((await cook.ended()).code).toBe(143);
    await cook.close();
  });

  it.each([
    [['--feed', '.'], 1, 'is neither a file nor a named pipe'],
    [['--feed', '/dev/zero'], 1, 'is neither a file nor a named pipe'],
    [['--feed', ''], 2, '--feed wants the path'],
  ] as const)('%j is refused before anything begins', async (given, code, words) => {
    const cook = Typist.cooks(fresh('home'), ['mint-pull', ...given]);
    await cook.sees(words);
    expect(await cook.ended).toBe(code);
  });
});
