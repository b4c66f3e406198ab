import { afterEach, expect, it } from 'vitest';
import { TimedCook } from './fixture.js';

let cook: TimedCook;
const open = async (options: Parameters<typeof TimedCook.open>[0] = {}): Promise<void> => {
  cook = TimedCook.open(options);
  await cook.says(/Set everything out/);
};
afterEach(async () => cook.close());

/** Something that is always answered at once, so that what came before it is known to have been heard. */
const andThen = async (): Promise<void> => {
  cook.press('4');
  await cook.says(/> 4/);
  cook.press('\u007f');
  await cook.saysNoMore(/> 4/);
};

it('a hand laid on the keyboard does nothing', async () => {
  await open();
  for (const key of 'hjkl uiop bnm') cook.press(key);
  await cook.says(/Several keys at once: nothing was done/);
  await andThen();
  expect(cook.text).toMatch(/Set everything out/);
  expect(cook.text).not.toMatch(/One letter/);
  expect(cook.text).not.toMatch(/bell off/);
});

it('a held space bar is one done', async () => {
  await open();
  cook.press(' ');
  await cook.says(/Say aloud who does what/);
  const held = setInterval(() => cook.press(' '), 30);
  await cook.until('nothing new under a held space bar', () => cook.text.includes('set it all out'));
  await new Promise((resolve) => setTimeout(resolve, 900));
  clearInterval(held);
  await andThen();
  expect(cook.text).toMatch(/Say aloud who does what/);
});

it('a paste is offered, not done; Enter takes it, Escape throws it away', async () => {
  await open();
  cook.pastes('done\rdone\ryes\r');
  await cook.says(/Pasted, not yet taken/);
  await cook.says(/: done done yes/);
  expect(cook.text).toMatch(/Set everything out/);
  cook.press('\u001b');
  await cook.saysNoMore(/done done yes/);
  cook.pastes('done');
  await cook.says(/: done/);
  cook.press('\r');
  await cook.says(/Say aloud who does what/);
});

it('what a terminal sends unasked is no key', async () => {
  await open();
  cook.press('\u001b[I\u001b[O\u001b[<0;10;10M\u001b[M !!\u001b[12;40R\u001bOP\u001b[15~');
  await andThen();
  expect(cook.text).toMatch(/Set everything out/);
});

it('a letter typed by mistake is taken back by u, and an arrow key is nothing', async () => {
  await open();
  cook.press(' ');
  await cook.says(/Say aloud who does what/);
  cook.press('\u001b[A\u001b[B');
  cook.press('u');
  await cook.says(/Set everything out/);
});

it('a reading is seen large before it is taken, and asked about when it can not be', async () => {
  await open();
  cook.press('61');
  await cook.says(/> 61/);
  cook.press('8');
  await cook.says(/> 618/);
  cook.press('\r');
  await cook.says(/Is it right\? yes, or no/);
  cook.press('n');
  await cook.saysNoMore(/Is it right\?/);
});

it('Ctrl+Z comes back with the whole screen, twice', async () => {
  await open();
  for (let time = 0; time < 2; time += 1) {
    const before = cook.raw.length;
    cook.press('\u001a');
    await cook.until('the shell', () => cook.raw.slice(before).includes('\u001b[?1049l'));
    // Until the program really stands still, SIGCONT would be too early.
    await cook.stands();
    cook.kill('SIGCONT');
    await cook.until('the screen again', () => cook.raw.slice(before).includes('\u001b[?1049h'));
    await cook.says(/Set everything out/);
    await andThen();
  }
  expect(cook.onTheOtherScreen).toBe(true);
});
