import { copyFileSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { CookAtTheScreen, modesLeftOn } from './driver.js';

const home = mkdtempSync(join(tmpdir(), 'kettlehand-spoken-'));
copyFileSync('recipes/kitchens/hill-hall.yaml', join(home, 'kitchen.yaml'));

let cook: CookAtTheScreen;
afterEach(async () => {
  await cook.close();
  rmSync(home, { recursive: true, force: true });
});

const times = (what: string): number => cook.raw.split(what).length - 1;

describe('the shipped program, for a screen reader', () => {
  it('adds to what was said, reads no list twice, and leaves the terminal as it was', async () => {
    cook = new CookAtTheScreen({
      columns: 100,
      rows: 40,
      env: { KETTLEHAND_HOME: home },
      command: [process.execPath, 'bin/kettlehand.mjs', 'cook', '--screen-reader'],
    });
    await cook.says(/Set everything out before any heat/);
    expect(cook.onTheOtherScreen).toBe(false);
    await cook.isDone(/Say aloud who does what/);
    cook.press('!');
    await cook.says(/What is wrong\? One letter/);
    cook.press('\u007f');
    cook.reads(70);
    await cook.says(/70/);
    cook.types('hands visitors');
    await cook.isDone(/in boiling water|Read this aloud/);
    expect(times('Set everything out before any heat.')).toBe(1);
    expect(times('Scribe: types what the pot says.')).toBe(1);
    cook.press('q');
    await cook.says(/Leave now\?/);
    cook.press('y');
    expect(await cook.ended()).toEqual({ code: 0, signal: 0 });
    expect(modesLeftOn(cook.raw)).toEqual([]);
  });
});
