import { chmod, rm } from 'node:fs/promises';
import { build } from 'esbuild';

// One small entry that answers at once; each command and the screen are loaded after it, in shared pieces.
await rm('dist', { recursive: true, force: true });
await build({
  entryPoints: { cli: 'source/cli.ts' },
  outdir: 'dist',
  outExtension: { '.js': '.mjs' },
  bundle: true,
  splitting: true,
  format: 'esm',
  platform: 'node',
  target: 'node20',
  minifySyntax: true,
  jsx: 'automatic',
  define: { 'process.env.NODE_ENV': '"production"', 'process.env.DEV': '"false"' },
  // Only loaded by Ink in development; it is not a dependency of ours.
  alias: { 'react-devtools-core': './scripts/nothing.mjs' },
  // Bundled CommonJS packages call require.
  banner: {
    js: "import { createRequire as makeRequire } from 'node:module';\nconst require = makeRequire(import.meta.url);",
  },
  legalComments: 'none',
  logLevel: 'warning',
});
await chmod('bin/kettlehand.mjs', 0o755);
