import { readFileSync } from 'node:fs';
import type { Advice } from '../../source/cook/advice.js';
import { advise } from '../../source/cook/advise.js';
import type { Cook } from '../../source/cook/cook.js';
import type { CookEvent, Happened } from '../../source/cook/event.js';
import { interpret } from '../../source/cook/interpret.js';
import { type Opened, openCook } from '../../source/cook/open.js';
import { step } from '../../source/cook/step.js';
import type { Kitchen } from '../../source/kitchen/kitchen.js';
import { parseKitchen } from '../../source/kitchen/parse.js';
import { parseRecipe } from '../../source/recipe/parse.js';
import type { PhaseId, Recipe } from '../../source/recipe/recipe.js';
import { type Message, words } from '../../source/texts/message.js';
import { type Printer, printer } from '../../source/units/printer.js';

export const recipeNames = [
  'clear-pull',
  'cream-pull',
  'hill-hall-ginger-pull',
  'honey-pull',
  'mint-pull',
  'molasses-pull',
  'rice-syrup-pull',
  'vinegar-pull',
] as const;
export type RecipeName = (typeof recipeNames)[number];

const known = new Map<RecipeName, Recipe>();

export const recipe = (name: RecipeName): Recipe => {
  const before = known.get(name);
  if (before !== undefined) return before;
  const parsed = parseRecipe(readFileSync(`recipes/${name}.yaml`, 'utf8'), name);
  if ('problems' in parsed) throw new Error(`${name} is not a recipe`);
  known.set(name, parsed.recipe);
  return parsed.recipe;
};

const read = (path: string): Kitchen => {
  const parsed = parseKitchen(readFileSync(path, 'utf8'), path);
  if ('problems' in parsed) throw new Error(`${path} is not a kitchen`);
  return parsed.kitchen;
};

/** The village hall at 1,450 m: a coil hob, a borrowed dial that reads a degree high, visitors' hands. */
export const hall = read('recipes/kitchens/hill-hall.yaml');
/** The same pot at the sea, with a dial that is right and reads in Celsius. */
export const seaside: Kitchen = {
  ...hall,
  altitudeMetres: 0,
  unit: 'C',
  thermometers: [
    {
      id: 'right',
      kind: 'dial',
      use: 'both',
      unit: 'C',
      iceShownCelsius: 0,
      boilsShownCelsius: 100,
      checked: null,
      stemMillimetres: 20,
    },
  ],
};
export const blind: Kitchen = { ...hall, thermometers: [] };

export type Opening = {
  readonly recipe?: RecipeName | Recipe;
  readonly kitchen?: Kitchen;
  readonly from?: PhaseId | null;
};

export const opened = (opening: Opening = {}): Opened => ({
  kind: 'opened',
  recipe:
    typeof opening.recipe === 'object' ? opening.recipe : recipe(opening.recipe ?? 'hill-hall-ginger-pull'),
  kitchen: opening.kitchen ?? seaside,
  runSheet: null,
  seed: null,
  version: '0.0.0',
  from: opening.from ?? null,
  seq: 1,
  t: 0,
});

/** A cook played by what somebody types, with the time that passes in between. */
export class Play {
  cook: Cook;
  t = 0;
  seq = 1;

  constructor(opening: Opening = {}) {
    this.cook = openCook(opened(opening));
  }

  get advice(): Advice {
    return advise(this.cook, this.t);
  }

  get printer(): Printer {
    const { dial, kitchen } = this.cook.batch;
    return printer({
      unit: dial.present ? dial.unit : kitchen.unit,
      toShownCelsius: (celsius) => dial.toShownCelsius(celsius),
    });
  }

  words(said: Message): string {
    return words(said, this.printer);
  }

  get say(): string {
    return this.words(this.advice.say);
  }

  get why(): string {
    return this.words(this.advice.why);
  }

  get step(): string | null {
    return this.advice.step;
  }

  get phase(): PhaseId {
    return this.advice.phase;
  }

  get warned(): readonly string[] {
    return this.advice.warnings.map(({ id }) => id);
  }

  get events(): readonly Happened[] {
    return this.cook.log.slice(0, this.cook.length);
  }

  wait(seconds: number): this {
    this.t += seconds;
    return this;
  }

  happen(event: CookEvent): this {
    this.seq += 1;
    this.cook = step(this.cook, { ...event, seq: this.seq, t: this.t });
    return this;
  }

  /** What is said of a line that is not taken; null if it was taken. */
  query(line: string): string | null {
    const event = interpret(line, this.advice);
    if (event.kind === 'queried') return this.words(event.because);
    this.happen(event);
    return null;
  }

  /** Typed one after the other, a second apart; a line that is not taken is an error of the test. */
  type(...lines: readonly string[]): this {
    for (const line of lines) {
      this.t += 1;
      const because = this.query(line);
      if (because !== null) throw new Error(`"${line}" at ${this.phase}/${this.step}: ${because}`);
    }
    return this;
  }

  /** Readings of the syrup in the thermometer's unit, so many seconds apart. */
  reads(everySeconds: number, ...values: readonly number[]): this {
    for (const value of values) this.wait(everySeconds).happen(this.reading(value));
    return this;
  }

  reading(value: number, by: 'hands' | 'feed' = 'hands'): CookEvent {
    return { kind: 'reading', value, unit: this.advice.typing.unit, of: this.advice.typing.bare, by };
  }

  feed(value: number): this {
    return this.happen(this.reading(value, 'feed'));
  }

  /** "done" and the safe passing answers until this phase (or step) is shown. */
  until(target: string): this {
    for (let turn = 0; turn < 60; turn += 1) {
      const { phase, step: shown } = this.advice;
      if (phase === target || shown === target) return this;
      this.wait(20);
      this.forward();
    }
    throw new Error(`never came to ${target}; stands at ${this.phase}/${this.step}: ${this.say}`);
  }

  /** The one word that leads on from here. */
  forward(): void {
    const { question, canBeDone, step: shown, typing, waits, offTheHeat } = this.advice;
    if (waits !== null) this.t = waits.until;
    else if (question?.kind === 'pause' || question?.kind === 'safety') this.type('yes');
    else if (canBeDone) this.type('done');
    else if (shown === 'boil.still' || shown === 'boil.last' || shown === 'test.drop') {
      if (!offTheHeat) this.type(this.cook.batch.target.feels);
    } else if (shown === 'hands.measure') this.type(`middle ${typing.unit === 'F' ? '104f' : '40c'}`);
    else throw new Error(`no way forward at ${shown}`);
  }
}
