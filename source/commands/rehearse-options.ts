import { paceRange, usualPace } from '../rehearsal/clock.js';
import {
  anySurprise,
  isSurprise,
  nearestSurprise,
  type SurpriseName,
  surpriseNames,
} from '../rehearsal/surprises.js';
import { type Message, message } from '../texts/message.js';
import type { ClockHabit } from '../units/wall-clock.js';
import { flag, text } from './options.js';
import { readStart, type Start } from './start-time.js';

export type RehearseOptions = {
  readonly seed: number;
  readonly pace: number;
  readonly surprise: SurpriseName | null;
  /** When the real pulling is to be. */
  readonly at: Start | null;
  readonly auto: boolean;
  readonly headless: boolean;
  readonly json: boolean;
};

const largestSeed = 2 ** 32 - 1;

const seedOf = (given: string | undefined, otherwise: number): number | Message => {
  if (given === undefined) return otherwise;
  const seed = /^\d{1,10}$/.test(given.trim()) ? Number(given) : Number.NaN;
  return seed <= largestSeed ? seed : message('rehearsal.bad.seed', { found: given });
};

const paceOf = (given: string | undefined): number | Message => {
  if (given === undefined) return usualPace;
  const pace = /^\d{1,3}(\.\d{1,3})?$/.test(given.trim()) ? Number(given) : Number.NaN;
  return pace >= paceRange[0] && pace <= paceRange[1]
    ? pace
    : message('rehearsal.bad.pace', { found: given });
};

const surpriseOf = (given: string | undefined, seed: number): SurpriseName | null | Message => {
  if (given === undefined) return null;
  const name = given.trim().toLowerCase();
  if (name === 'none') return null;
  if (name === 'any') return anySurprise(seed);
  return isSurprise(name)
    ? name
    : message('rehearsal.bad.surprise', {
        found: given,
        nearest: nearestSurprise(name),
        names: surpriseNames,
      });
};

const isMessage = (value: unknown): value is Message =>
  typeof value === 'object' && value !== null && 'id' in value;

const startOf = (
  given: string | undefined,
  now: number,
  clock: ClockHabit | null,
): Start | null | Message => {
  if (given === undefined) return null;
  const start = readStart(given, now, clock);
  return 'problem' in start ? start.problem : start.value;
};

/** What was asked for, or what is wrong with it. The seed, when none is named, is drawn from `now`, milliseconds. */
export const readRehearseOptions = (
  given: Readonly<Record<string, unknown>>,
  now: number,
  clock: ClockHabit | null = null,
): RehearseOptions | Message => {
  const seed = seedOf(text(given.seed), now % 100_000);
  if (isMessage(seed)) return seed;
  const pace = paceOf(text(given.pace));
  if (isMessage(pace)) return pace;
  const surprise = surpriseOf(text(given.surprise), seed);
  if (isMessage(surprise)) return surprise;
  const at = startOf(text(given.at), now, clock);
  if (isMessage(at)) return at;
  const [auto, headless, json] = [flag(given.auto), flag(given.headless), flag(given.json)];
  if (headless && !auto) return message('rehearsal.bad.headless');
  return { seed, pace, surprise, at, auto, headless, json };
};
