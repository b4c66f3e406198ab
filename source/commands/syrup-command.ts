import { message } from '../texts/message.js';
import { type ExitCode, fail } from './io.js';
import { boolean, flag, parse, string, text, texts } from './options.js';
import { syrup } from './syrup.js';
import type { World } from './world.js';

export const run = async (argv: readonly string[], world: World): Promise<ExitCode> => {
  const { words, given } = parse(argv, {
    item: { type: 'string', isMultiple: true },
    pressure: string,
    altitude: string,
    celsius: string,
    solids: string,
    json: boolean,
  });
  if (words[0] !== undefined)
    return fail(world, 2, message('command.too-many', { found: words[0], command: 'syrup' }));
  return syrup(
    {
      items: texts(given.item),
      altitude: text(given.altitude),
      pressure: text(given.pressure),
      celsius: text(given.celsius),
      solids: text(given.solids),
      json: flag(given.json),
    },
    world,
  );
};
