import { readFileSync } from 'node:fs';
import { printerOf } from '../../source/commands/cook-printer.js';
import { advise } from '../../source/cook/advise.js';
import type { Cook } from '../../source/cook/cook.js';
import { interpret } from '../../source/cook/interpret.js';
import { openCook } from '../../source/cook/open.js';
import { step } from '../../source/cook/step.js';
import { parseKitchen } from '../../source/kitchen/parse.js';
import { parseRecipe } from '../../source/recipe/parse.js';
import { adviceJson } from '../../source/sheets/advice-json.js';
import { exampleRecipe, kitchenFile } from './program.js';

const version = (JSON.parse(readFileSync('package.json', 'utf8')) as { version: string }).version;

/** The same cook without any fault, in the same process as the test: what a killed one is measured by. */
export class Uninterrupted {
  cook: Cook;
  #events = 1;

  constructor() {
    const recipe = parseRecipe(readFileSync(`recipes/${exampleRecipe}.yaml`, 'utf8'), exampleRecipe);
    const kitchen = parseKitchen(readFileSync(kitchenFile, 'utf8'), kitchenFile);
    if ('problems' in recipe || 'problems' in kitchen) throw new Error('the bundled example cannot be read');
    const opening = { recipe: recipe.recipe, kitchen: kitchen.kitchen, runSheet: null, seed: null, version };
    this.cook = openCook({ kind: 'opened', ...opening, from: null, seq: 1, t: 0 });
  }

  get events(): number {
    return this.#events;
  }

  /** Null: it was not taken, and is no event. */
  type(typed: string, t: number): 'event' | null {
    const read = interpret(typed, advise(this.cook, t));
    if (read.kind === 'queried') return null;
    this.#events += 1;
    this.cook = step(this.cook, { ...read, seq: this.#events, t });
    return 'event';
  }

  /** What `follow --json` prints for `{"t": t}`. */
  said(t: number): unknown {
    return JSON.parse(JSON.stringify(adviceJson(advise(this.cook, t), printerOf(this.cook), null)));
  }
}

/** Something that a person might type at this moment: what leads on, more often than not. */
export const likely = (cook: Cook, t: number, random: () => number): string => {
  const { question, canBeDone, typing } = advise(cook, t);
  const reading = `${Math.round(200 + random() * 50)}`;
  const anything = [
    reading,
    reading,
    'heat medium',
    'heat off',
    'pot on',
    'pot off',
    'soft ball',
    'hard ball',
    'note the room got crowded',
    'undo',
    'middle 44c',
    'trouble foam',
    'over',
    'ok',
    'count 63',
    'nonsense',
    'hands children',
    'water 30ml',
  ];
  if (random() < 0.5) {
    if (question !== null) return question.answers.includes('yes') ? 'yes' : (question.answers[0] ?? 'ok');
    if (canBeDone) return 'done';
    if (typing.openTroubles.length > 0) return `over ${typing.openTroubles[0]}`;
  }
  return anything[Math.floor(random() * anything.length)] ?? 'done';
};
