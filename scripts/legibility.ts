/** Writes the tables of letter heights and of contrasts into docs/LEGIBILITY.md, between their marks. */
import { readFileSync, writeFileSync } from 'node:fs';
import { heightsMarkdown } from '../source/screen/legibility.js';
import { contrastMarkdown } from './contrast.js';

const path = new URL('../docs/LEGIBILITY.md', import.meta.url);

const filled = (page: string, name: string, table: string): string => {
  const [open, close] = [`<!-- ${name} -->`, `<!-- /${name} -->`];
  return `${page.slice(0, page.indexOf(open))}${open}\n${table}\n${page.slice(page.indexOf(close))}`;
};

const tables = { heights: heightsMarkdown(), contrasts: contrastMarkdown() };
const page = readFileSync(path, 'utf8');
writeFileSync(
  path,
  Object.entries(tables).reduce((text, [name, table]) => filled(text, name, table), page),
);
