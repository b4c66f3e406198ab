import { defaultKitchen } from '../kitchen/default.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import { parseKitchen } from '../kitchen/parse.js';
import { message } from '../texts/message.js';
import { cooksFolder, findCook } from './cooks-shelf.js';
import { type ExitCode, fail, failFile } from './io.js';
import { labels } from './labels.js';
import { namedKitchen, recipeNames, shelfOf } from './named.js';
import { parse, string, text, texts } from './options.js';
import { findRecipe } from './shelf.js';
import type { World } from './world.js';

const kitchenOf = async (given: string | undefined, world: World): Promise<Kitchen | ExitCode> => {
  const named = await namedKitchen(given, world);
  if (named === null) return defaultKitchen;
  if ('problem' in named) return fail(world, 1, named.problem);
  const parsed = parseKitchen(named.text, named.name);
  return 'problems' in parsed ? failFile(world, parsed.problems) : parsed.kitchen;
};

export const run = async (argv: readonly string[], world: World): Promise<ExitCode> => {
  const { words, given } = parse(argv, {
    cook: string,
    pieces: string,
    net: string,
    date: string,
    kitchen: string,
    checked: { type: 'string', isMultiple: true },
  });
  const [recipe, extra] = words;
  const cook = text(given.cook);
  if (extra !== undefined)
    return fail(world, 2, message('command.too-many', { found: extra, command: 'labels' }));
  if (recipe !== undefined && cook !== undefined) return fail(world, 2, message('label.bad.both'));
  if (recipe === undefined && cook === undefined)
    return fail(world, 2, message('label.bad.neither', { names: await recipeNames(world) }));
  return labels(
    {
      pieces: text(given.pieces),
      net: text(given.net),
      date: text(given.date),
      checked: texts(given.checked),
    },
    {
      language: world.language,
      out: world.out,
      err: world.err,
      now: () => new Date(),
      source:
        recipe === undefined
          ? { kind: 'cook', find: () => findCook(cooksFolder(world.env), cook) }
          : {
              kind: 'recipe',
              read: () => findRecipe(recipe, shelfOf(world)),
              kitchen: () => kitchenOf(text(given.kitchen), world),
            },
    },
  );
};
