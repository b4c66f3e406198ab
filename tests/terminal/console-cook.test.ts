import { afterAll, expect, it } from 'vitest';
import { modesLeftOn } from './driver.js';
import { closeAll, TimedCook } from './fixture.js';
import { follow } from './stranger.js';

afterAll(closeAll);

const clearsScreen = /\u001b\[[23]J/g;

it.concurrent.each([
  [80, 24],
  [120, 40],
])(
  'a stranger who does what the screen says finishes a cook at %ix%i',
  { timeout: 60_000 },
  async (columns, rows) => {
    const cook = TimedCook.open({ columns, rows });
    try {
      await cook.says(/Set everything out/);
      const before = cook.raw.length;
      const { moves, screens } = await follow(cook, /Done: .* pieces\./);
      if (process.env.SHOW) console.log(screens.join('\n=====\n'));
      // Every phase was led through, none of them skipped.
      for (const phase of [
        'MIX',
        'DISSOLVE',
        'BOIL',
        'TEST',
        'FLAVOUR',
        'POUR',
        'FOLD',
        'PULL',
        'CUT',
        'WRAP',
        'CLEAN',
      ])
        expect(
          screens.some((screen) => screen.includes(`[${phase}]`)),
          phase,
        ).toBe(true);
      // Three lists were read aloud.
      for (const list of [/Pause before heat/, /Pause before pouring/, /Pause before hands/])
        expect(
          screens.some((screen) => list.test(screen)),
          String(list),
        ).toBe(true);
      expect(moves).toBeLessThan(90);
      // Calm: after the first frame the screen was never cleared, and a key changed only what it changed.
      const drawn = cook.raw.slice(before);
      expect(drawn.match(clearsScreen)).toBeNull();
      expect(drawn.length / moves).toBeLessThan(columns * rows * 6);
      cook.press('q');
      expect(await cook.ended()).toEqual({ code: 0, signal: 0 });
      expect(modesLeftOn(cook.raw)).toEqual([]);
      expect(cook.text).toContain('exit: left');
    } finally {
      await cook.close();
    }
  },
);
