import { afterAll, describe, expect, it } from 'vitest';
import { printerOf } from '../../source/commands/cook-printer.js';
import { advise } from '../../source/cook/advise.js';
import type { Cook } from '../../source/cook/cook.js';
import { interpret } from '../../source/cook/interpret.js';
import type { Entry } from '../../source/journal/line.js';
import { lastEvents } from '../../source/screen/last-events.js';
import { cookOf } from '../../source/session/start.js';
import { words } from '../../source/texts/message.js';
import { type ConsoleInAShell, closeAll, newConsole, resumedConsole } from './console.js';
import { chance, scratch, seed, times } from './program.js';

afterAll(closeAll);

const passes = (milliseconds: number): Promise<void> =>
  new Promise((resolve) => setTimeout(resolve, milliseconds));

const kills = times(3, 40);

const cookIn = (entries: readonly Entry[]): Cook => {
  const cook = cookOf(entries);
  if (cook === null) throw new Error('no cook in the journal');
  return cook;
};

const flat = (text: string): string => text.replaceAll(/\s+/g, ' ').trim().toLowerCase();
/** Numbers run. */
const still = (text: string): string => flat(text).replaceAll(/\d+/g, '#');

/** The row of what happened last begins as this journal makes it. */
const showsLast = (cook: ConsoleInAShell, entries: readonly Entry[]): boolean => {
  if (cook.isFar) return true;
  const state = cookIn(entries);
  const printer = printerOf(state);
  const [latest, earlier] = lastEvents(state).map(({ said }) => flat(words(said, printer)));
  const row = flat(cook.lastEvents);
  if (latest === undefined) return row === '';
  return (
    row.includes(` ${latest} `.trimEnd()) &&
    (earlier === undefined || row.includes(earlier) || row.length > 60)
  );
};

/** And so does what is to be done now. */
const shows = (cook: ConsoleInAShell, entries: readonly Entry[]): boolean => {
  const state = cookIn(entries);
  const since = (Date.now() - Date.parse(entries.at(-1)?.at ?? '')) / 1000;
  const say = still(words(advise(state, state.t + since).say, printerOf(state)));
  return still(cook.flat).includes(say) && showsLast(cook, entries);
};

/** What a person may type next: what leads on, readings that differ each time, and what can be undone. */
const likely = (cook: Cook, nth: number, random: () => number): string => {
  const { question, canBeDone, phase } = advise(cook, cook.t);
  if (random() < 0.6) {
    if (question !== null) return question.answers[0] ?? 'ok';
    if (canBeDone) return 'done';
  }
  const boils = ['boil', 'test'].includes(phase ?? '');
  const reading = boils ? `${222 + (nth % 20)}.${nth % 10}` : `${61 + (nth % 30)}`;
  return (
    [reading, reading, `water ${10 + nth}g`, `count ${40 + nth}`, 'heat medium', 'undo'][
      Math.floor(random() * 6)
    ] ?? reading
  );
};

/** The events that these lines make, at the times that the journal gives them: nothing else may be there. */
const areThese = (before: readonly Entry[], after: readonly Entry[], typed: readonly string[]): void => {
  let state = before;
  const left = [...typed];
  for (const entry of after.slice(before.length)) {
    const advice = advise(cookIn(state), entry.t);
    const meant = () => {
      const read = interpret(left[0] ?? '', advice);
      return read.kind === 'queried' ? null : read;
    };
    while (left.length > 0 && meant() === null) left.shift();
    expect(entry).toMatchObject({ ...meant() });
    left.shift();
    state = after.slice(0, state.length + 1);
  }
};

describe('the console that is killed in its terminal', () => {
  it(`shows nothing that is not in its journal, ${kills} times, and stands where it stood when it comes back`, {
    timeout: 60_000 + kills * 8000,
  }, async () => {
    const random = chance(seed + 23);
    const home = scratch();
    let cook = await newConsole(home);
    let shown = 0;
    let lines = 0;
    const next = (cook: Cook): string => {
      lines += 1;
      return likely(cook, lines, random);
    };
    let kept = 0;
    for (let kill = 0; kill < kills; kill += 1) {
      const before = cook.entries;
      const typed: string[] = [];
      const some = 1 + Math.floor(random() * 3);
      for (let n = 0; n < some; n += 1) {
        const known = cook.entries;
        const state = cookIn(known);
        const line = next(state);
        // What would only be queried is tried in the fast part.
        if (interpret(line, advise(state, state.t)).kind === 'queried') continue;
        typed.push(line);
        cook.types(line);
        await cook.until(`what "${line}" leads to`, () => {
          const now = cook.entries;
          return now.length > known.length && shows(cook, now);
        });
      }
      const seen = cook.entries;
      // Then as fast as a terminal sends, and an end anywhere in it.
      const fast = Array.from({ length: 1 + Math.floor(random() * 4) }, () => next(cookIn(seen)));
      typed.push(...fast);
      for (const line of fast) cook.types(line);
      // By what it has done rather than by time, so that a slow machine is hit in the same places; some are queried.
      const heard = Math.floor(random() * (fast.length + 1));
      for (let tries = 0; tries < 40 && cook.entries.length < seen.length + heard; tries += 1)
        await passes(10);
      await passes(random() * 15);
      cook.kill('SIGKILL');
      expect(await cook.ended()).toEqual({ code: 137, signal: 0 });
      const after = cook.entries;
      // Everything that was seen, in the same words; beyond it only what was typed, in its order.
      expect(after.slice(0, seen.length)).toEqual(seen);
      areThese(before, after, typed);
      // The last frame that was drawn is one that a beginning of this journal makes.
      const drawn = after.findLastIndex(
        (_, index) => index + 1 >= seen.length && showsLast(cook, after.slice(0, index + 1)),
      );
      expect(drawn).toBeGreaterThanOrEqual(seen.length - 1);
      shown += drawn + 1 - before.length;
      kept += after.length - before.length;
      cook = await resumedConsole(home);
      await cook.until('the same as before', () => shows(cook, after));
      expect(cook.entries).toEqual(after);
    }
    console.log(
      `${kills} kills of the console in the pseudo-terminal, ${kept} events kept, ${shown} of them shown, none lost (seed ${seed})`,
    );
  });
});
