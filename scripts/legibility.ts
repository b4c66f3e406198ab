/** Writes the table of letter heights into docs/LEGIBILITY.md, between its marks. */
import { readFileSync, writeFileSync } from 'node:fs';
import { heightsMarkdown } from '../source/screen/legibility.js';

const path = new URL('../docs/LEGIBILITY.md', import.meta.url);
const [open, close] = ['<!-- heights -->', '<!-- /heights -->'];

const page = readFileSync(path, 'utf8');
const [before, rest] = [page.slice(0, page.indexOf(open)), page.slice(page.indexOf(close))];
writeFileSync(path, `${before}${open}\n${heightsMarkdown()}\n${rest}`);
