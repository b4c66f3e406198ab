import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { printerOf } from '../source/commands/cook-printer.js';
import { advise } from '../source/cook/advise.js';
import { interpret } from '../source/cook/interpret.js';
import { openCook } from '../source/cook/open.js';
import { step } from '../source/cook/step.js';
import { parseKitchen } from '../source/kitchen/parse.js';
import { parseRecipe } from '../source/recipe/parse.js';
import { linesBetween, wrapped } from '../source/screen/lines.js';
import { words } from '../source/texts/message.js';

/** A cook at the winter fair: readings from the simulated pot, everything else as a person types it. Invented, for show. */
const typed = readFileSync('tests/cooks/hill-hall.jsonl', 'utf8')
  .trimEnd()
  .split('\n')
  .map((line) => JSON.parse(line) as { t: number; typed: string });

const opened = () => {
  const recipe = parseRecipe(readFileSync('recipes/hill-hall-ginger-pull.yaml', 'utf8'), 'recipe');
  const kitchen = parseKitchen(readFileSync('recipes/kitchens/hill-hall.yaml', 'utf8'), 'kitchen');
  if ('problems' in recipe || 'problems' in kitchen) throw new Error('the bundled example cannot be read');
  return openCook({
    kind: 'opened',
    recipe: recipe.recipe,
    kitchen: kitchen.kitchen,
    runSheet: null,
    seed: null,
    version: '0.1.0',
    from: null,
    seq: 1,
    t: 0,
  });
};

/** The cook as the line mode appends it, waking wherever the advice changes by itself. */
const capture = (): {
  readonly text: string;
  readonly queried: readonly string[];
  readonly phase: string;
} => {
  let cook = opened();
  let before = advise(cook, 0);
  const text = [...linesBetween(null, before, printerOf(cook))];
  const queried: string[] = [];
  for (const [index, line] of typed.entries()) {
    for (let at = before.changesAt; at !== null && at < line.t; at = before.changesAt) {
      const woken = advise(cook, at);
      text.push(...linesBetween(before, woken, printerOf(cook)));
      before = woken;
    }
    text.push(`> ${line.typed}`);
    const read = interpret(line.typed, advise(cook, line.t));
    if (read.kind === 'queried') {
      queried.push(line.typed);
      text.push(`?  ${words(read.because, printerOf(cook))}`);
      continue;
    }
    cook = step(cook, { ...read, seq: index + 2, t: line.t });
    const after = advise(cook, line.t);
    text.push(...linesBetween(before, after, printerOf(cook), { answered: true }));
    before = after;
  }
  const lines = text.map((line) => wrapped(line, 100).trimEnd());
  return { text: `${lines.join('\n')}\n`, queried, phase: before.phase };
};

it('leads the winter fair from the checklist to wrapped pieces, as docs/a-whole-cook.txt shows it', async () => {
  const { text, queried, phase } = capture();
  expect(queried).toEqual([]);
  expect(phase).toBe('over');
  expect(text).toContain('OFF THE HEAT now');
  expect(text).toContain('Softer candy, not a failure');
  await expect(text).toMatchFileSnapshot('../docs/a-whole-cook.txt');
});
