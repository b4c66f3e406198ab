import { message } from '../texts/message.js';
import { type ExitCode, fail } from './io.js';
import { shelfOf } from './named.js';
import { flag, parse } from './options.js';
import { recipes } from './recipes.js';
import type { World } from './world.js';

const help = `
  Examples
    $ kettlehand recipes                  list them
    $ kettlehand recipes show mint-pull   one, with its reasons
    $ kettlehand recipes check mine.yaml  is my file right?
    $ kettlehand recipes instead mint-pull honey   the same candy with another syrup
    $ kettlehand recipes items            what ingredients are known

  Options
    --json   one JSON object
`;

export const run = async (argv: readonly string[], world: World): Promise<ExitCode> => {
  const { words, given } = parse(argv, help, { json: { type: 'boolean' } }, world);
  const extra = words[words[0] === 'instead' ? 3 : 2];
  if (extra !== undefined)
    return fail(world, 2, message('command.too-many', { found: extra, command: 'recipes' }));
  return recipes(
    words,
    { json: flag(given.json) },
    { language: world.language, out: world.out, err: world.err, ...shelfOf(world) },
  );
};
