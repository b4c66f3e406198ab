import { dirname } from 'node:path';
import { makeFolder } from '../files/folder.js';
import { writeWhole } from '../files/write.js';
import type { ExitCode } from './io.js';
import { kitchen } from './kitchen.js';
import { kitchenPath, namedKitchen } from './named.js';
import { boolean, flag, parse } from './options.js';
import { taughtKitchen } from './taught.js';
import type { World } from './world.js';

export const run = async (argv: readonly string[], world: World): Promise<ExitCode> => {
  const { words, given } = parse(argv, { json: boolean });
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
