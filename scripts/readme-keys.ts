/** Writes the key list into the README, between its marks. With --check: fails if it is not up to date. */
import { readFileSync, writeFileSync } from 'node:fs';
import { keyListMarkdown } from '../source/screen/keys.js';

const path = new URL('../README.md', import.meta.url);
const [open, close] = ['<!-- keys -->', '<!-- /keys -->'];

const readme = readFileSync(path, 'utf8');
const [before, rest] = [readme.slice(0, readme.indexOf(open)), readme.slice(readme.indexOf(close))];
if (!readme.includes(open) || !readme.includes(close)) {
  console.error(`README.md has no place for the key list: ${open} ... ${close}`);
  process.exit(1);
}
const wanted = `${before}${open}\n${keyListMarkdown()}\n${rest}`;
if (wanted === readme) process.exit(0);
if (process.argv.includes('--check')) {
  console.error('The key list in README.md is out of date. Run: npx tsx scripts/readme-keys.ts');
  process.exit(1);
}
writeFileSync(path, wanted);
