import { existsSync } from 'node:fs';
import { readdir } from 'node:fs/promises';
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

const extension = '.yaml';

/** Names of the bundled recipes, without extension, sorted. */
export const bundledNames = async (): Promise<readonly string[]> => {
  const files = await readdir(bundledFolder()).catch(() => []);
  return files
    .filter((file) => file.endsWith(extension))
    .map((file) => file.slice(0, -extension.length))
    .sort();
};

export const bundledPath = (name: string): string => join(bundledFolder(), `${name}${extension}`);

/** A path rather than the name of a bundled recipe. */
export const looksLikePath = (given: string): boolean => /[\\/]|\.ya?ml$/i.test(given);
