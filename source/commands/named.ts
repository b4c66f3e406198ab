import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { refusalOf } from '../batch/refusal.js';
import { configFolder } from '../files/folder.js';
import { bundledFolder } from '../files/library.js';
import { pathInside } from '../files/names.js';
import { bounds, readNamedFile } from '../files/read.js';
import { defaultKitchen } from '../kitchen/default.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import { parseKitchen } from '../kitchen/parse.js';
import { parseRecipe } from '../recipe/parse.js';
import type { Recipe } from '../recipe/recipe.js';
import type { Message } from '../texts/message.js';
import { type ExitCode, fail, failFile, type NamedText } from './io.js';
import { findRecipe, type ShelfIo, shelf } from './shelf.js';
import type { World } from './world.js';

/** The bundled example: what is cooked when nothing is named. */
export const exampleRecipe = 'hill-hall-ginger-pull';

/** Recipes by name: the person's own folder before the bundled one. */
export const shelfOf = (world: Pick<World, 'env'>): ShelfIo => ({
  listFolder: (path) => readdir(path).catch(() => null),
  readFile: (path) => readNamedFile(path, bounds.recipe),
  inside: pathInside,
  folders: [join(configFolder(world.env), 'recipes'), bundledFolder()],
});

export const recipeNames = async (world: Pick<World, 'env'>): Promise<readonly string[]> =>
  (await shelf(shelfOf(world))).map(({ id }) => id);

export const kitchenPath = (world: Pick<World, 'env'>): string =>
  join(configFolder(world.env), 'kitchen.yaml');

const isMissing = (problem: Message): boolean =>
  problem.id === 'files.notRead' &&
  (problem.values as { trouble?: string } | undefined)?.trouble === 'missing';

/** The kitchen file that was named, else the saved one; null when there is none. */
export const namedKitchen = async (
  given: string | undefined,
  world: Pick<World, 'env'>,
): Promise<NamedText | null> => {
  const path = given ?? kitchenPath(world);
  const read = await readNamedFile(path, bounds.kitchen);
  if (!('problem' in read)) return { text: read.text, name: path };
  return given === undefined && isMissing(read.problem) ? null : { problem: read.problem, wrongUse: false };
};

export type Loaded = { readonly recipe: Recipe; readonly kitchen: Kitchen; readonly firstRun: boolean };

const kitchenFrom = async (
  given: string | undefined,
  world: World,
): Promise<Omit<Loaded, 'recipe'> | ExitCode> => {
  const place = await namedKitchen(given, world);
  if (place === null) return { kitchen: defaultKitchen, firstRun: true };
  if ('problem' in place) return fail(world, 1, place.problem);
  const parsed = parseKitchen(place.text, place.name);
  return 'problems' in parsed
    ? failFile(world, parsed.problems)
    : { kitchen: parsed.kitchen, firstRun: false };
};

/** Recipe and kitchen for a cook, or the exit code after saying what is wrong with them. */
export const load = async (
  recipe: string,
  kitchen: string | undefined,
  world: World,
): Promise<Loaded | ExitCode> => {
  const named = await findRecipe(recipe, shelfOf(world));
  if ('problem' in named) return fail(world, named.wrongUse ? 2 : 1, named.problem);
  const parsed = parseRecipe(named.text, named.name);
  if ('problems' in parsed) return failFile(world, parsed.problems);
  const place = await kitchenFrom(kitchen, world);
  if (typeof place === 'number') return place;
  const refusal = refusalOf(parsed.recipe, place.kitchen);
  return refusal === null ? { recipe: parsed.recipe, ...place } : fail(world, 1, refusal);
};
