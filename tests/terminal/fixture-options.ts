import type { BuildOptions } from 'esbuild';

/** How the console on a cook that nothing keeps is built: one file, as the program itself is shipped, started in a third of the time. */
export const fixtureOptions = (outfile: string) =>
  ({
    entryPoints: ['tests/terminal/fixtures/console.ts'],
    outfile,
    bundle: true,
    format: 'esm',
    platform: 'node',
    target: 'node20',
    jsx: 'automatic',
    define: {
      'process.env.NODE_ENV': '"production"',
      'process.env.DEV': '"false"',
      'import.meta.url': JSON.stringify(`file://${process.cwd()}/tests/screen/kit.ts`),
    },
    alias: { 'react-devtools-core': './scripts/nothing.mjs' },
    banner: {
      js: `import { createRequire as makeRequire } from 'node:module';\nconst require = makeRequire(${JSON.stringify(`file://${outfile}`)});`,
    },
    logLevel: 'error',
  }) satisfies BuildOptions;
