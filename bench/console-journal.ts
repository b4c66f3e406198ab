import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { advise } from '../source/cook/advise.js';
import type { Cook } from '../source/cook/cook.js';
import type { CookEvent, Happened } from '../source/cook/event.js';
import { interpret } from '../source/cook/interpret.js';
import { openCook } from '../source/cook/open.js';
import { step } from '../source/cook/step.js';
import { encodeLine } from '../source/journal/line.js';
import { parseKitchen } from '../source/kitchen/parse.js';
import { parseRecipe } from '../source/recipe/parse.js';
import { stampOf } from '../source/session/clock.js';
import { machineClock } from '../source/session/machine.js';

const read = (path: string): string => readFileSync(new URL(`../${path}`, import.meta.url), 'utf8');
const kitchenFile = 'recipes/kitchens/hill-hall.yaml';

const opening = (): Happened => {
  const recipe = parseRecipe(read('recipes/hill-hall-ginger-pull.yaml'), 'recipe');
  const kitchen = parseKitchen(read(kitchenFile), 'kitchen');
  if ('problems' in recipe || 'problems' in kitchen) throw new Error('the bundled example cannot be read');
  return {
    kind: 'opened',
    recipe: recipe.recipe,
    kitchen: kitchen.kitchen,
    runSheet: null,
    seed: null,
    version: '0.1.0',
    from: null,
    seq: 1,
    t: 0,
  };
};

/** The bundled cook as it was typed, up to the middle of the boil. */
const untilTheBoil = (): { readonly cook: Cook; readonly events: readonly Happened[] } => {
  const first = opening();
  if (first.kind !== 'opened') throw new Error('a cook begins with its opening');
  let cook = openCook(first);
  const events = [first as Happened];
  for (const line of read('tests/cooks/hill-hall.jsonl').trimEnd().split('\n')) {
    const { t, typed } = JSON.parse(line) as { t: number; typed: string };
    if (cook.log.length > 1 && advise(cook, t).phase === 'boil' && Number(typed) > 226) break;
    const read = interpret(typed, advise(cook, t));
    if (read.kind === 'queried') continue;
    const event: Happened = { ...read, seq: events.length + 1, t };
    cook = step(cook, event);
    events.push(event);
  }
  return { cook, events };
};

/** `count` readings of a slow boil behind it, a second apart: 225 to 229 F. */
const withReadings = (events: readonly Happened[], count: number): readonly Happened[] => {
  const last = events.at(-1)?.t ?? 0;
  const reading = (nth: number): CookEvent => ({
    kind: 'reading',
    value: 225 + Math.floor((40 * nth) / count) / 10,
    unit: 'F',
    of: 'syrup',
    by: 'hands',
  });
  return [
    ...events,
    ...Array.from({ length: count }, (_, nth) => ({
      ...reading(nth),
      seq: events.length + 1 + nth,
      t: last + 1 + nth,
    })),
  ];
};

/** A folder as the program keeps it, with one unfinished cook of so many readings (null: no cook); its last event is of now. */
export const homeWith = (folder: string, readings: number | null): string => {
  mkdirSync(join(folder, 'cooks'), { recursive: true });
  writeFileSync(join(folder, 'kitchen.yaml'), read(kitchenFile));
  if (readings === null) return folder;
  const events = withReadings(untilTheBoil().events, readings);
  const now = stampOf(machineClock);
  const end = events.at(-1)?.t ?? 0;
  const lines = events.map((event) =>
    encodeLine({
      ...event,
      ...now,
      at: new Date(Date.parse(now.at) - 1000 * (end - event.t)).toISOString(),
      up: Math.max(0, now.up - (end - event.t)),
    }),
  );
  if (lines.some((line) => line === null)) throw new Error('a line of the journal is too long');
  const [first, ...rest] = lines as Buffer[];
  // The opening is written twice.
  writeFileSync(
    join(folder, 'cooks', '2026-11-25-100000-abcd.jsonl'),
    Buffer.concat([first, first, ...rest] as Buffer[]),
  );
  return folder;
};
