import { readFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import { build } from 'esbuild';

/** What the first screen of a cook needs. */
const needed = ['source/commands/cook.ts', 'source/commands/console-host.ts'];

/** What is asked for before it is known that anything is cooked, or instead. */
const light = ['source/commands/language.ts', 'source/commands/unknown.ts', 'source/texts/help.ts'];

/** Which file imports which, at once or later, as esbuild finds it. */
const importsOf = async () => {
  const { metafile } = await build({
    entryPoints: ['source/cli.ts'],
    bundle: true,
    packages: 'external',
    format: 'esm',
    platform: 'node',
    outdir: 'dist',
    write: false,
    metafile: true,
    logLevel: 'error',
  });
  const all = Object.entries(metafile.inputs).flatMap(([from, { imports }]) =>
    imports.filter(({ external }) => !external).map(({ path, kind }) => ({ from, to: path, kind })),
  );
  return {
    atOnce: all.filter(({ kind }) => kind !== 'dynamic-import'),
    later: all.filter(({ kind }) => kind === 'dynamic-import'),
  };
};

const reachedFrom = (starts, imports) => {
  const reached = new Set(starts);
  for (const one of reached) for (const { from, to } of imports) if (from === one) reached.add(to);
  return reached;
};

/**
 * The build cuts the program where pieces are loaded later, and what several of these share into as many files as there
 * are ways of sharing: seventy small ones before the first screen, and each takes a millisecond to find and link. So every
 * piece that is loaded later asks for what a cook needs: shared by all, that is a few files.
 */
export const onePiece = {
  name: 'one-piece',
  setup: async ({ onLoad }) => {
    const { atOnce, later } = await importsOf();
    // What is among it already would ask for itself.
    const among = reachedFrom([...needed, ...light], atOnce);
    const asking = new Set(
      later
        .map(({ to }) => to)
        .filter((path) => !among.has(path))
        .map((path) => resolve(path)),
    );
    const asks = needed.map((path) => `\nimport ${JSON.stringify(resolve(path))};`).join('');
    onLoad({ filter: /[\\/]source[\\/].*\.tsx?$/ }, async ({ path }) =>
      asking.has(path)
        ? { contents: (await readFile(path, 'utf8')) + asks, loader: path.endsWith('x') ? 'tsx' : 'ts' }
        : null,
    );
  },
};
