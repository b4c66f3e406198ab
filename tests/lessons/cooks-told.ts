import { readFileSync } from 'node:fs';
import { advise } from '../../source/cook/advise.js';
import type { Cook } from '../../source/cook/cook.js';
import type { Happened } from '../../source/cook/event.js';
import { interpret } from '../../source/cook/interpret.js';
import { openCook } from '../../source/cook/open.js';
import { step } from '../../source/cook/step.js';
import { type Story, storyOf } from '../../source/lessons/story.js';
import { rehearse } from '../../source/rehearsal/rehearse.js';
import type { SurpriseName } from '../../source/rehearsal/surprises.js';
import { hall, opened, recipe } from '../cook/play.js';

export const startedAt = '2026-11-25T13:35:02.000Z';

export type Typed = { readonly t: number; readonly typed: string };

/** What was typed at the winter fair. */
export const fair: readonly Typed[] = readFileSync('tests/cooks/hill-hall.jsonl', 'utf8')
  .trimEnd()
  .split('\n')
  .map((line) => JSON.parse(line) as Typed);

/** The hall's cook after each beginning of a list of lines: most lists of a test begin alike. */
const begun = new Map<string, Cook>();

const key = (lines: readonly Typed[], length: number): string => JSON.stringify(lines.slice(0, length));

/** The events that typed lines make in the hall; a line that is not taken is an error of the test. */
export const eventsOf = (lines: readonly Typed[]): readonly Happened[] => {
  let done = lines.length;
  while (done > 0 && !begun.has(key(lines, done))) done -= 1;
  let cook = begun.get(key(lines, done)) ?? openCook(opened({ kitchen: hall }));
  for (const [index, { t, typed }] of lines.entries()) {
    if (index < done) continue;
    const read = interpret(typed, advise(cook, t));
    if (read.kind === 'queried') throw new Error(`"${typed}" at ${t} was not taken`);
    cook = step(cook, { ...read, seq: index + 2, t });
    begun.set(key(lines, index + 1), cook);
  }
  return cook.log.slice(0, cook.length);
};

/** The fair with more lines typed in between, each in its place in time. */
export const fairWith = (...more: readonly Typed[]): readonly Typed[] =>
  [...fair, ...more].toSorted((one, other) => one.t - other.t);

export const fairStory = (...more: readonly Typed[]): Story =>
  storyOf(eventsOf(fairWith(...more)), startedAt);

const told = new Map<string, Story>();

export const rehearsed = (surprise: SurpriseName | null, seed = 5): Story => {
  const name = `${surprise} ${seed}`;
  const known = told.get(name);
  if (known !== undefined) return known;
  const { cook } = rehearse({
    recipe: recipe('hill-hall-ginger-pull'),
    kitchen: hall,
    seed,
    surprise,
    version: '0.1.0',
  });
  const story = storyOf(cook.log.slice(0, cook.length), startedAt);
  told.set(name, story);
  return story;
};
