import type { Advice } from '../../cook/advice.js';
import type { Chance } from '../chance.js';
import type { Senses, SimulatedCook } from '../table.js';
import type { Habits } from './habits.js';
import type { Memory } from './memory.js';

/** What somebody is about to do: the same key goes on, another begins anew. */
export type Intent = {
  readonly key: string;
  readonly seconds: number;
  /** What is typed when it is done; null: only waited. */
  readonly type: (() => string) | null;
  /** Done with the hands and forgotten at the keyboard. */
  readonly untyped?: boolean;
};

export type View = { readonly advice: Advice; readonly senses: Senses; readonly t: number };

/** What somebody would do about one thing; null: nothing. */
export type Rule = (view: View) => Intent | null;

/** One person at work: what they see, remember and are like, and how they say what they do. */
export type Self = {
  readonly table: SimulatedCook;
  readonly habits: Habits;
  readonly memory: Memory;
  readonly chance: Chance;
  /** The knob's settings, weakest first; -1 is off. */
  readonly ladder: readonly string[];
  readonly middleRung: number;
  pace(seconds: number): number;
  say(key: string, seconds: number, word: string): Intent;
  wait(key: string, seconds: number): Intent;
  word(rung: number): string;
  turn(key: string, rung: number): Intent;
};

/** A quick act of the hands with a word typed, seconds. */
export const quick = 4;

type Given = Pick<Self, 'table' | 'habits' | 'memory' | 'chance' | 'ladder'>;

export const selfOf = (given: Given): Self => {
  const { habits, chance, ladder } = given;
  const pace = (seconds: number): number => seconds * habits.pace * Math.exp(0.25 * chance.normal());
  const say: Self['say'] = (key, seconds, word) => ({ key, seconds: pace(seconds), type: () => word });
  const word = (rung: number): string => `heat ${ladder[rung] ?? 'medium'}`;
  return {
    ...given,
    middleRung: Math.floor((ladder.length - 1) / 2),
    pace,
    say,
    wait: (key, seconds) => ({ key, seconds: Math.max(1, seconds), type: null }),
    word,
    turn: (key, rung) => ({
      ...say(`${key} ${rung}`, quick, word(rung)),
      untyped: chance.even() < habits.forgetsHeat,
    }),
  };
};

export const warns = (advice: Advice, id: string): boolean => advice.warnings.some((one) => one.id === id);
export const isOpen = (advice: Advice, name: string): boolean =>
  advice.troubles.some((one) => one.name === name);
/** A timer that is not there holds nobody up. */
export const dueTimer = (advice: Advice, id: string): boolean =>
  advice.timers.find((one) => one.id === id)?.due ?? true;
