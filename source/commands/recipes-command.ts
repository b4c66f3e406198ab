import type { ExitCode } from './io.js';
import { shelfOf } from './named.js';
import { boolean, flag, parse } from './options.js';
import { recipes } from './recipes.js';
import type { World } from './world.js';

export const run = async (argv: readonly string[], world: World): Promise<ExitCode> => {
  const { words, given } = parse(argv, { json: boolean });
  return recipes(
    words,
    { json: flag(given.json) },
    { language: world.language, out: world.out, err: world.err, ...shelfOf(world) },
  );
};
