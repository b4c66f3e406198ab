import { message } from '../texts/message.js';
import { type ExitCode, fail } from './io.js';
import { flag, parse, text, texts } from './options.js';
import { syrup } from './syrup.js';
import type { World } from './world.js';

const help = `
  Examples
    $ kettlehand syrup --item granulated-sugar=400g --item water=100g
    $ kettlehand syrup --item granulated-sugar=400g --item glucose-syrup:42=200g --celsius 124
    $ kettlehand syrup --item granulated-sugar=400g --solids 0.92 --altitude 1450m --json

  Options
    --item ITEM=AMOUNT      repeatable; glucose-syrup:42=200g has its DE
    --pressure, --altitude  where (default: sea level)
    --celsius T, --solids F one of them replaces the water given
    --json                  one JSON object
`;

export const run = async (argv: readonly string[], world: World): Promise<ExitCode> => {
  const string = { type: 'string' } as const;
  const { words, given } = parse(
    argv,
    help,
    {
      item: { type: 'string', isMultiple: true },
      pressure: string,
      altitude: string,
      celsius: string,
      solids: string,
      json: { type: 'boolean' },
    },
    world,
  );
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
