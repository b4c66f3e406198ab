import { message } from '../texts/message.js';
import { type ExitCode, fail } from './io.js';
import { shelfOf } from './named.js';
import { boolean, flag, parse } from './options.js';
import { recipes } from './recipes.js';
import type { World } from './world.js';

export const run = async (argv: readonly string[], world: World): Promise<ExitCode> => {
  const { words, given } = parse(argv, { json: boolean });
  const extra = words[words[0] === 'instead' ? 3 : 2];
  if (extra !== undefined)
    return fail(world, 2, message('command.too-many', { found: extra, command: 'recipes' }));
  return recipes(
    words,
    { json: flag(given.json) },
    { language: world.language, out: world.out, err: world.err, ...shelfOf(world) },
  );
};
