import { chmod, rename, rm } from 'node:fs/promises';
import { build } from 'esbuild';

// One small entry that answers at once; each command and the screen are loaded after it, in shared pieces.
// Built beside the old one and put in its place whole: a build that fails leaves what works.
const fresh = `dist-${process.pid}`;
await build({
  entryPoints: { cli: 'source/cli.ts' },
  outdir: fresh,
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
await rm('dist', { recursive: true, force: true });
await rename(fresh, 'dist');
await chmod('bin/kettlehand.mjs', 0o755);
