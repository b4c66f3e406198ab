import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The folder of the package that this code is part of: the nearest one upwards that has bundled recipes. */
const packageFolder = (from: string): string => {
  const parent = dirname(from);
  if (existsSync(join(from, 'recipes')) && existsSync(join(from, 'package.json'))) return from;
  return parent === from ? from : packageFolder(parent);
};

export const bundledFolder = (): string =>
  join(packageFolder(dirname(fileURLToPath(import.meta.url))), 'recipes');
