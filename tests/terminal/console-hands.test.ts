import { afterAll, expect, it } from 'vitest';
import { atTheStart, closeAll, type TimedCook } from './fixture.js';

afterAll(closeAll);

/** Something that is always answered at once, so that what came before it is known to have been heard. */
const andThen = async (cook: TimedCook): Promise<void> => {
  cook.press('4');
  await cook.says(/> 4/);
  cook.press('\u007f');
  await cook.saysNoMore(/> 4/);
};

it.concurrent('a hand laid on the keyboard does nothing', async () => {
  const cook = await atTheStart();
  for (const key of 'hjkl uiop bnm') cook.press(key);
  await cook.says(/Several keys at once: nothing was done/);
  await andThen(cook);
  expect(cook.text).toMatch(/Set everything out/);
  expect(cook.text).not.toMatch(/One letter/);
  expect(cook.text).not.toMatch(/bell off/);
});

it.concurrent('a held space bar is one done', async () => {
  const cook = await atTheStart();
  cook.press(' ');
  const held = setInterval(() => cook.press(' '), 30);
  await cook.says(/Say aloud who does what/);
  // Long enough for a keyboard that has been repeating for a while.
  await new Promise((resolve) => setTimeout(resolve, 1500));
  clearInterval(held);
  await andThen(cook);
  expect(cook.text).toMatch(/Say aloud who does what/);
});

it.concurrent('a paste is offered, not done; Enter takes it, Escape throws it away', async () => {
  const cook = await atTheStart();
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

it.concurrent('what a terminal sends unasked is no key', async () => {
  const cook = await atTheStart();
  cook.press('\u001b[I\u001b[O\u001b[<0;10;10M\u001b[M !!\u001b[12;40R\u001bOP\u001b[15~');
  await andThen(cook);
  expect(cook.text).toMatch(/Set everything out/);
});

it.concurrent('a letter typed by mistake is taken back by u, and an arrow key is nothing', async () => {
  const cook = await atTheStart();
  cook.press(' ');
  await cook.says(/Say aloud who does what/);
  cook.press('\u001b[A\u001b[B');
  cook.press('u');
  await cook.says(/Set everything out/);
});

it.concurrent('a reading is seen large before it is taken, and asked about when it can not be', async () => {
  const cook = await atTheStart();
  cook.press('61');
  await cook.says(/> 61/);
  cook.press('8');
  await cook.says(/> 618/);
  cook.press('\r');
  await cook.says(/Is it right\? yes, or no/);
  cook.press('n');
  await cook.saysNoMore(/Is it right\?/);
});

it.concurrent('Ctrl+Z comes back with the whole screen, twice', async () => {
  const cook = await atTheStart();
  for (let time = 0; time < 2; time += 1) {
    const before = cook.raw.length;
    cook.press('\u001a');
    await cook.until('the shell', () => cook.raw.slice(before).includes('\u001b[?1049l'));
    // Until the program really stands still, SIGCONT would be too early.
    await cook.stands();
    cook.kill('SIGCONT');
    await cook.until('the screen again', () => cook.raw.slice(before).includes('\u001b[?1049h'));
    await cook.says(/Set everything out/);
    await andThen(cook);
  }
  expect(cook.onTheOtherScreen).toBe(true);
});
