import { dirname } from 'node:path';
import { makeFolder } from '../files/folder.js';
import { writeWhole } from '../files/write.js';
import type { ExitCode } from './io.js';
import { kitchen } from './kitchen.js';
import { kitchenPath, namedKitchen } from './named.js';
import { flag, parse } from './options.js';
import { taughtKitchen } from './taught.js';
import type { World } from './world.js';

const help = `
  Examples
    $ kettlehand kitchen                          what is known of your kitchen
    $ kettlehand kitchen set altitude "1450 m"    tell it
    $ kettlehand kitchen set stove gas
    $ kettlehand kitchen set learned.carry-over "3 F"   instead of what earlier cooks taught; none forgets it
    $ kettlehand kitchen path                     where the file is

  Options
    --json   one JSON object
`;

export const run = async (argv: readonly string[], world: World): Promise<ExitCode> => {
  const { words, given } = parse(argv, help, { json: { type: 'boolean' } }, world);
  const path = kitchenPath(world);
  return kitchen(
    words,
    { json: flag(given.json) },
    {
      language: world.language,
      out: world.out,
      err: world.err,
      kitchenPath: path,
      taught: (kitchen) => taughtKitchen(kitchen, world),
      readKitchen: async () => namedKitchen(undefined, world),
      writeKitchen: async (text) => {
        const made = await makeFolder(dirname(path));
        if (made !== 'made') return made;
        const saved = await writeWhole(path, text);
        return saved === 'saved' ? null : saved;
      },
    },
  );
};
