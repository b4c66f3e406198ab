import { message } from '../texts/message.js';
import { localeClock } from './clock-habit.js';
import { type ExitCode, fail } from './io.js';
import { namedKitchen, recipeNames, shelfOf } from './named.js';
import { boolean, flag, parse, string, text } from './options.js';
import { plan } from './plan.js';
import { findRecipe } from './shelf.js';
import { taughtKitchen } from './taught.js';
import type { World } from './world.js';

export const run = async (argv: readonly string[], world: World): Promise<ExitCode> => {
  const { words, given } = parse(argv, {
    altitude: string,
    pressure: string,
    kitchen: string,
    pieces: string,
    guests: string,
    children: string,
    batch: string,
    pot: string,
    weights: string,
    json: boolean,
    explain: boolean,
    at: string,
    batches: string,
    alone: boolean,
    card: boolean,
    html: boolean,
  });
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
