import { readFileSync } from 'node:fs';
import type { Kitchen } from '../../source/kitchen/kitchen.js';
import { parseKitchen } from '../../source/kitchen/parse.js';
import { parseRecipe } from '../../source/recipe/parse.js';
import type { PhaseId, Recipe } from '../../source/recipe/recipe.js';
import type { Style } from '../../source/screen/context.js';
import { ConsoleModel, type Outside } from '../../source/screen/model.js';
import { monochrome } from '../../source/screen/palette.js';
import type { Line } from '../../source/screen/text.js';
import type { Session } from '../../source/session/session.js';
import { startUnkept } from '../../source/session/start.js';
import type { Language } from '../../source/units/language.js';

const read = (path: string): string => readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8');

export const recipeNamed = (name: string): Recipe => {
  const parsed = parseRecipe(read(`recipes/${name}.yaml`), `${name}.yaml`);
  if (!('recipe' in parsed)) throw new Error(`recipes/${name}.yaml has problems`);
  return parsed.recipe;
};

export const kitchenNamed = (name: string): Kitchen => {
  const parsed = parseKitchen(read(`recipes/kitchens/${name}.yaml`), `${name}.yaml`);
  if (!('kitchen' in parsed)) throw new Error(`recipes/kitchens/${name}.yaml has problems`);
  return parsed.kitchen;
};

/** A clock that goes only when told, in milliseconds; what was asked for later runs in its turn. */
export class FakeTime implements Outside {
  now = 0;
  bells = 0;
  #queue: { at: number; run: () => void }[] = [];

  milliseconds = (): number => this.now;
  bell = (): void => {
    this.bells += 1;
  };
  after = (milliseconds: number, run: () => void): (() => void) => {
    const one = { at: this.now + milliseconds, run };
    this.#queue.push(one);
    return () => {
      this.#queue = this.#queue.filter((other) => other !== one);
    };
  };

  /** Let time go on; promises that a key started are settled in between. */
  async pass(milliseconds: number): Promise<void> {
    const until = this.now + milliseconds;
    for (;;) {
      await settled();
      const next = this.#queue.filter((one) => one.at <= until).sort((one, other) => one.at - other.at)[0];
      if (next === undefined) break;
      this.#queue = this.#queue.filter((one) => one !== next);
      this.now = Math.max(this.now, next.at);
      next.run();
    }
    this.now = until;
    await settled();
  }

  get sleeping(): readonly number[] {
    return this.#queue.map((one) => one.at - this.now);
  }
}

const settled = async (): Promise<void> => {
  for (let turn = 0; turn < 20; turn += 1) await Promise.resolve();
};

export type Bench = { readonly session: Session; readonly time: FakeTime };

export const bench = (
  options: { recipe?: string; kitchen?: Kitchen; from?: PhaseId; rehearsal?: boolean } = {},
): Bench => {
  const time = new FakeTime();
  const session = startUnkept(
    {
      recipe: recipeNamed(options.recipe ?? 'hill-hall-ginger-pull'),
      kitchen: options.kitchen ?? kitchenNamed('hill-hall'),
      runSheet: null,
      seed: options.rehearsal ? 1 : null,
      version: '0',
      from: options.from ?? null,
    },
    { up: () => time.now / 1000, wall: () => 1_800_000_000_000 + time.now },
  );
  return { session, time };
};

export const modelOn = (
  { session, time }: Bench,
  options: {
    language?: Language;
    quiet?: boolean;
    onLeave?: (how: string) => void;
    onFail?: (error: unknown) => void;
  } = {},
): ConsoleModel =>
  new ConsoleModel({
    session,
    outside: time,
    language: options.language,
    quiet: options.quiet ?? false,
    pace: 1,
    onLeave: options.onLeave ?? (() => undefined),
    onSuspend: () => undefined,
    onFail: options.onFail ?? (() => undefined),
  });

/** Something typed after so many seconds: `[seconds, line]`, or a line alone after five. */
export type Typed = string | readonly [seconds: number, line: string];

/** A whole cook as a person would type it, from the cold pot to the end. */
export const wholeCook: readonly Typed[] = [
  'done', // all set out
  'hands visitors',
  'done', // roles said
  'done', // thermometer checked before
  'yes', // pause before heat
  'done',
  'done',
  'done', // walls scraped
  'heat medium',
  'done',
  [240, 'done'], // no grit
  'done', // spoon out
  [60, '222'],
  'done', // brush
  [60, '224'],
  [120, '229'],
  [120, '233'],
  [120, '238'],
  [60, '241'],
  'yes', // pause before pouring
  [60, '243'],
  [60, '246'],
  [40, '248'],
  [20, '249'],
  [10, 'pot off'],
  [20, 'firm ball'],
  'pot on',
  [60, '250'],
  [30, '251'],
  [10, 'pot off'],
  [20, 'hard ball'],
  'done',
  'heat off',
  [60, 'done'],
  [20, 'done'],
  'yes',
  [10, 'done'],
  [150, 'done'],
  [60, 'done'],
  [60, 'done'],
  [120, 'done'],
  [300, 'middle 120f'],
  [300, 'middle 110f'],
  'yes',
  [10, 'done'],
  [300, 'done'],
  [60, 'done'],
  [60, 'done'],
  [120, 'done'],
  [300, 'done'],
  [600, 'done'],
  [300, 'done'],
  'weigh 980g',
  'count 140',
  'done',
  'done',
  'done',
  'done',
  'done',
  'done',
];

/** Type a list of lines, each after its seconds; `each` sees the bench after every one. */
export const play = async (
  { session, time }: Bench,
  typed: readonly Typed[],
  each: (line: string) => void | Promise<void> = () => undefined,
): Promise<void> => {
  for (const one of typed) {
    const [seconds, line] = typeof one === 'string' ? [5, one] : one;
    time.now += seconds * 1000;
    await session.type(line);
    await each(line);
  }
};

export const plainText = (lines: readonly Line[]): string =>
  lines
    .map((line) =>
      line
        .map(({ text }) => text)
        .join('')
        .trimEnd(),
    )
    .join('\n');

export const unicode: Style = { ascii: false, paints: monochrome, still: false };
