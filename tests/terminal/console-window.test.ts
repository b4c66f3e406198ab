import { afterAll, describe, expect, it } from 'vitest';
import { modesLeftOn } from './driver.js';
import { atTheStart, closeAll, type TimedCook } from './fixture.js';

afterAll(closeAll);

describe('every way out leaves the terminal as it was', () => {
  const ways: readonly (readonly [string, (cook: TimedCook) => void | Promise<void>, number])[] = [
    [
      'q and y',
      async (cook) => {
        cook.press('q');
        await cook.says(/Leave now\?/);
        cook.press('y');
      },
      0,
    ],
    [
      'Ctrl+C twice',
      async (cook) => {
        cook.press('\u0003');
        await cook.says(/The cook is kept/);
        cook.press('\u0003');
      },
      130,
    ],
    [
      'the word quit',
      async (cook) => {
        cook.types('quit');
        await cook.says(/Leave now\?/);
        cook.press('y');
      },
      0,
    ],
  ];
  it.concurrent.each(ways)('%s', async (_, leave, code) => {
    const cook = await atTheStart();
    expect(cook.onTheOtherScreen).toBe(true);
    await leave(cook);
    expect(await cook.ended()).toEqual({ code, signal: 0 });
    expect(modesLeftOn(cook.raw)).toEqual([]);
    expect(cook.onTheOtherScreen).toBe(false);
  });

  it.concurrent('an error of the program itself', async () => {
    const cook = await atTheStart({ env: { BREAKS: '1' } });
    cook.types('note break');
    const { code } = await cook.ended();
    expect(code).toBe(1);
    expect(modesLeftOn(cook.raw)).toEqual([]);
    expect(cook.text).toMatch(/broke on purpose/);
  });
});

describe('the window', () => {
  it.concurrent('is redrawn whole after every change of its size, in mid-cook', async () => {
    const cook = await atTheStart();
    await cook.isDone(/Say aloud who does what/);
    for (const [columns, rows] of [
      [120, 40],
      [100, 30],
      [140, 50],
      [80, 24],
    ] as const) {
      cook.resize(columns, rows);
      const isWhole = (): boolean =>
        cook.rows[0]?.startsWith('[MIX]') === true &&
        cook.rows[rows - 1]?.startsWith('0-9 reading') === true &&
        cook.rows.filter((row) => /^\[MIX\]|^0-9 reading/.test(row)).length === 2;
      await cook.until(`one trail on top and one row of keys below at ${columns}x${rows}`, isWhole);
    }
    cook.press('p');
    await cook.isDone(/Read this aloud|boiling water/);
  });

  it.concurrent('that is too small says so, can be left, and comes back', async () => {
    const cook = await atTheStart();
    cook.resize(60, 20);
    await cook.says(/needs 80x24, has 60x20/);
    cook.resize(80, 24);
    await cook.says(/Set everything out/);
    cook.resize(40, 10);
    await cook.says(/needs 80x24, has 40x10/);
    cook.press('q');
    await cook.says(/Leave now\?|y leaves/);
    cook.press('y');
    expect(await cook.ended()).toEqual({ code: 0, signal: 0 });
  });

  it.concurrent('is live where CI is set in the environment', async () => {
    const cook = await atTheStart({ env: { CI: 'true' } });
    await cook.isDone(/Say aloud who does what/);
  });

  it.concurrent('has no colour with NO_COLOR, and all its words', async () => {
    const cook = await atTheStart({ env: { NO_COLOR: '1' } });
    cook.press('!');
    await cook.says(/What is wrong/);
    cook.press('a');
    await cook.says(/LOOK NOW/);
    // Colours of text and ground, by number or by value; bold, dim and inverse are none.
    expect(cook.raw).not.toMatch(/\u001b\[(?:3[0-8]|4[0-8]|9[0-7]|10[0-7])[;m]/);
  });

  it.concurrent('has colour otherwise, for what is not as it should be', async () => {
    const cook = await atTheStart();
    expect(cook.raw).not.toMatch(/\u001b\[3[0-7]m/);
    cook.press('!');
    await cook.says(/What is wrong/);
    cook.press('a');
    await cook.says(/LOOK NOW/);
    expect(cook.raw).toMatch(/\u001b\[38;5;\d+m/);
  });

  it.concurrent('is ASCII where the locale can do no more', async () => {
    const cook = await atTheStart({ env: { LANG: 'C', LC_ALL: 'C' } });
    expect(cook.text).toMatch(/^[\n\u0020-\u007e]*$/);
  });

  it.concurrent('costs nothing while nothing runs', async () => {
    const cook = await atTheStart();
    // The last that Ink asks of the terminal when it starts comes after the first frame.
    await cook.until('marked pastes', () => cook.raw.includes('\u001b[?2004h'));
    const drawn = cook.raw.length;
    await new Promise((resolve) => setTimeout(resolve, 1500));
    expect(cook.raw.length).toBe(drawn);
  });

  it.concurrent('a digit draws its own rows and not the screen', async () => {
    const cook = await atTheStart({ columns: 120, rows: 40 });
    cook.press('2');
    await cook.says(/> 2/);
    const before = cook.raw.length;
    cook.press('3');
    await cook.says(/> 23/);
    expect(cook.raw.length - before).toBeLessThan(1200);
  });
});
