import { afterAll, expect, it } from 'vitest';
import { troublesByUrgency } from '../../source/screen/input/choosers.js';
import { en } from '../../source/texts/en.js';
import { atTheStart, closeAll } from './fixture.js';

afterAll(closeAll);

const quoted = (text: string): RegExp => new RegExp(text.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&'));

it.concurrent.each([
  [80, 24, troublesByUrgency],
  [120, 40, ['burn', 'fire', 'overshoot', 'soft']],
] as const)(
  'every trouble is a key and a letter away, and over with one key, at %ix%i',
  async (columns, rows, names) => {
    const cook = await atTheStart({ columns, rows });
    for (const name of names) {
      cook.passes(5);
      const cause = String(en[`hazard.${name}.cause`]);
      cook.press('!');
      await cook.says(/What is wrong\? One letter/);
      cook.press('abcdefghijklmnop'[troublesByUrgency.indexOf(name)] ?? '');
      await cook.until(`trouble ${name}`, (text) => text.includes(`trouble ${name}`) && text.includes(cause));
      // The first action is written in letters of several rows, before anything else on the screen.
      const letters = cook.rows
        .slice(2, 14)
        .filter((row) => /[▐▌█▀▄┏┗┃]/.test(row.slice(22)) || /^[ ▐▌█▀▄▖▗▘▝┏┗┃╹╻]+[▐▌█▀▄┏┗┃]/.test(row));
      expect(letters.length, name).toBeGreaterThanOrEqual(3);
      if (name === 'burn') await cook.says(/cool running water (20:00|19:5\d)/);
      cook.press('x');
      await cook.until(`over ${name}`, (text) => text.includes(`over ${name}`));
      await cook.saysNoMore(quoted(cause));
    }
  },
);

it.concurrent('the first-aid timer runs beside the cook, which goes on', async () => {
  const cook = await atTheStart();
  cook.press('!');
  await cook.says(/What is wrong/);
  cook.press('a');
  await cook.says(/cool running water (20:00|19:5\d)/);
  for (const [done, next] of [
    [/Cool running water/, /Rings, watch and sleeve off/],
    [/Rings/, /Call for help/],
    [/Call/, /Keep the person warm/],
  ] as const) {
    expect(cook.flat).toMatch(done);
    await cook.isDone(next);
  }
  cook.passes(120);
  await cook.says(/cool running water (18:00|17:5\d)/);
});
