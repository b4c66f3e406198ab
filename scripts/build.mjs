import { chmod, rename, rm, writeFile } from 'node:fs/promises';
import { build } from 'esbuild';
import { briskInk } from './brisk-ink.mjs';
import { terminalProgram } from './build-options.mjs';
import { noticesOf, packagesIn } from './notices.mjs';
import { onePiece } from './one-piece.mjs';

// One small entry that answers at once; each command and the screen are loaded after it, in shared pieces.
// Built beside the old one and put in its place whole: a build that fails leaves what works.
// `--counted` is for `npm run coverage`: every statement and branch leaves word that it ran.
const counting = process.argv.includes('--counted') ? await import('./counted.mjs') : null;
const fresh = `dist-${process.pid}`;
const { metafile } = await build({
  ...terminalProgram,
  entryPoints: { cli: 'source/cli.ts' },
  outdir: fresh,
  outExtension: { '.js': '.mjs' },
  splitting: true,
  metafile: true,
  plugins: [
    ...terminalProgram.plugins,
    briskInk,
    counting === null ? onePiece : counting.countingInEsbuild('source/cli.ts'),
  ],
});
// Nothing is installed beside the program: what it is made of is in it, and so is what its makers ask to be told.
await writeFile(`${fresh}/NOTICES.txt`, noticesOf(packagesIn(metafile)));
await rm('dist', { recursive: true, force: true });
await rename(fresh, 'dist');
await chmod('bin/kettlehand.mjs', 0o755);
