import { message } from '../texts/message.js';
import { localeClock } from './clock-habit.js';
import { type ExitCode, fail } from './io.js';
import { namedKitchen, recipeNames, shelfOf } from './named.js';
import { flag, parse, text } from './options.js';
import { plan } from './plan.js';
import { findRecipe } from './shelf.js';
import { taughtKitchen } from './taught.js';
import type { World } from './world.js';

const help = `
  Examples
    $ kettlehand plan hill-hall-ginger-pull
    $ kettlehand plan mint-pull --altitude 1450m --guests 24 --children 10
    $ kettlehand plan mint-pull --pot 3l --json
    $ kettlehand plan mint-pull --weights ounces
    $ kettlehand plan honey-pull --pressure 850hPa --explain
    $ kettlehand plan hill-hall-ginger-pull --at "tomorrow 15:00" --batches 2
    $ kettlehand plan hill-hall-ginger-pull --card --html > card.html

  What to buy and weigh, how hot on this thermometer here and today, what it gives.

  Options
    --altitude 1450m|4750ft   --pressure 850hPa (station pressure)   --kitchen FILE
    --pieces N   --guests N [--children N]   --batch 1.5   --pot 3l
    --weights grams|ounces   the second: ounces, cups and spoons beside the grams (default: the kitchen's)
    --at 15:00  the run sheet: counted back from when the pulling starts before the audience
                (also 3:30pm, "2026-11-28 15:00")
    --batches N with --at: so many cooks on one hob, one after the other
    --alone     with --at: one person does all of it, so the batches stand further apart
    --card      one page for the wall, for a power cut or a dead laptop; with --html a page to print
    --explain   formulas, inputs, sources, uncertainty
    --json      one JSON object
`;

export const run = async (argv: readonly string[], world: World): Promise<ExitCode> => {
  const string = { type: 'string' } as const;
  const { words, given } = parse(
    argv,
    help,
    {
      altitude: string,
      pressure: string,
      kitchen: string,
      pieces: string,
      guests: string,
      children: string,
      batch: string,
      pot: string,
      weights: string,
      json: { type: 'boolean' },
      explain: { type: 'boolean' },
      at: string,
      batches: string,
      alone: { type: 'boolean' },
      card: { type: 'boolean' },
      html: { type: 'boolean' },
    },
    world,
  );
  const [recipe, extra] = words;
  if (recipe === undefined)
    return fail(
      world,
      2,
      message('command.needs-recipe', { command: 'plan', names: await recipeNames(world) }),
    );
  if (extra !== undefined)
    return fail(world, 2, message('command.too-many', { found: extra, command: 'plan' }));
  return plan(
    {
      altitude: text(given.altitude),
      pressure: text(given.pressure),
      pieces: text(given.pieces),
      guests: text(given.guests),
      children: text(given.children),
      batch: text(given.batch),
      pot: text(given.pot),
      weights: text(given.weights),
      json: flag(given.json),
      explain: flag(given.explain),
      at: text(given.at),
      batches: text(given.batches),
      alone: flag(given.alone),
      card: flag(given.card),
      html: flag(given.html),
    },
    {
      language: world.language,
      out: world.out,
      err: world.err,
      localeClock: () => (given.at === undefined ? null : localeClock(world.env)),
      readRecipe: () => findRecipe(recipe, shelfOf(world)),
      readKitchen: () => namedKitchen(text(given.kitchen), world),
      taught: (kitchen) => taughtKitchen(kitchen, world),
    },
  );
};
