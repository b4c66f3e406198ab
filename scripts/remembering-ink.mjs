import { readFile } from 'node:fs/promises';

/** Rows that are remembered: some windows full. Then all are forgotten at once, which costs one ordinary frame. */
const rowsRemembered = 200;

/**
 * Ink measures and takes apart each row of the screen again for every frame, though all but a few are as they were. Here
 * it remembers them from one frame to the next, where it already does from one row to the next. By file: what stands there
 * and what stands there instead. Another version of the library, where that is not to be found, ends the build.
 */
const changes = [
  {
    file: /[\\/]ink[\\/]build[\\/]output\.js$/,
    from: 'caches = new OutputCaches();',
    to: 'caches = remembered();',
    with: `
let rows = new OutputCaches();
const remembered = () => {
  if (rows.styledChars.size > ${rowsRemembered}) rows = new OutputCaches();
  return rows;
};`,
  },
  {
    file: /[\\/]widest-line[\\/]index\.js$/,
    from: 'export default function widestLine(string) {',
    to: 'function measured(string) {',
    with: `
const widths = new Map();
export default function widestLine(string) {
  let width = widths.get(string);
  if (width === undefined) {
    if (widths.size > ${rowsRemembered}) widths.clear();
    width = measured(string);
    widths.set(string, width);
  }
  return width;
}`,
  },
];

export const rememberingInk = {
  name: 'remembering-ink',
  setup: ({ onLoad }) => {
    for (const { file, from, to, with: added } of changes)
      onLoad({ filter: file }, async ({ path }) => {
        const source = await readFile(path, 'utf8');
        if (source.split(from).length !== 2) throw new Error(`${path} has not once: ${from}`);
        return { contents: source.replace(from, to) + added };
      });
  },
};
