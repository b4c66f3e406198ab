import { mkdtempSync, readdirSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { CookAtTheScreen, modesLeftOn } from './driver.js';

const enter = '\r';
let cook: CookAtTheScreen;
afterEach(async () => cook.close());

const newHome = (): string => mkdtempSync(join(tmpdir(), 'kettlehand-console-'));

/** The program as it is shipped. */
const start = (
  home: string,
  options: { args?: readonly string[]; columns?: number; rows?: number } = {},
): void => {
  const { args = [], columns = 80, rows = 24 } = options;
  cook = new CookAtTheScreen({
    columns,
    rows,
    env: { KETTLEHAND_HOME: home },
    command: [process.execPath, 'bin/kettlehand.mjs', 'cook', ...args],
  });
};

const firstRun = async (home: string): Promise<void> => {
  start(home);
  await cook.says(/1 of 3/);
  cook.press('1450 m\r');
  await cook.says(/2 of 3/);
  cook.press(enter);
  await cook.says(/3 of 3/);
  cook.press(enter);
  await cook.says(/Set everything out/);
};

const journalOf = (home: string): string => {
  const folder = join(home, readdirSync(home).includes('cooks') ? 'cooks' : 'data/cooks');
  const [file] = readdirSync(folder).filter((name) => name.endsWith('.jsonl'));
  return readFileSync(join(folder, file ?? ''), 'utf8');
};

describe('the shipped program, full screen', () => {
  it('asks three questions at most on a first run, and not again', async () => {
    const home = newHome();
    await firstRun(home);
    cook.press('q');
    await cook.says(/Leave now\?/);
    cook.press('y');
    expect(await cook.ended()).toEqual({ code: 0, signal: 0 });
    expect(modesLeftOn(cook.raw)).toEqual([]);
    start(home, { args: ['--new'] });
    await cook.says(/Set everything out/);
  });

  it('killed in mid-cook goes on where it stood, with every answer that was shown', async () => {
    const home = newHome();
    await firstRun(home);
    await cook.isDone(/Say aloud who does what/);
    cook.types('hands visitors');
    await cook.says(/hands visitors/);
    cook.types('done');
    await cook.says(/Hold the thermometer in boiling water|Read this aloud/);
    const shown = cook.text;
    cook.kill('SIGKILL');
    await cook.ended();
    expect(journalOf(home)).toMatch(/"kind":"hands"/);

    start(home);
    await cook.says(/go on|unfinished/i);
    expect(cook.text).not.toMatch(/Set everything out/);
    cook.press('g');
    await cook.says(/Hold the thermometer in boiling water|Read this aloud/);
    for (const event of ['hands visitors', 'set it all out']) {
      expect(shown).toContain(event);
      expect(cook.text).toContain(event);
    }
  });

  it('says in one sentence which command to use where there is no terminal', async () => {
    const home = newHome();
    cook = new CookAtTheScreen({
      env: { KETTLEHAND_HOME: home },
      command: ['sh', '-c', `${process.execPath} bin/kettlehand.mjs cook --new < /dev/null | cat; echo end`],
    });
    await cook.says(/end/);
    expect(cook.raw).not.toContain('\u001b[?1049h');
    expect(cook.raw).not.toMatch(/at \S+ \(.*:\d+:\d+\)/);
  });

  it('--quiet is quiet: no bell, and it is still to be seen', async () => {
    const home = newHome();
    await firstRun(home);
    cook.press('q');
    await cook.says(/Leave now\?/);
    cook.press('y');
    await cook.ended();
    start(home, { args: ['--new', '--quiet'] });
    await cook.says(/Set everything out/);
    cook.press('!');
    await cook.says(/What is wrong/);
    cook.press('a');
    await cook.says(/LOOK NOW/);
    expect(cook.raw).not.toContain('\u0007');
  });

  it('the bell rings three times for look now', async () => {
    const home = newHome();
    await firstRun(home);
    cook.press('!');
    await cook.says(/What is wrong/);
    cook.press('b');
    await cook.says(/LOOK NOW/);
    await cook.hears(3);
  });
});
