import { readFile } from 'node:fs/promises';

/** Rows that are remembered: some windows full. Then all are forgotten at once, which costs one ordinary frame. */
const rowsRemembered = 200;

/**
 * Ink measures and takes apart each row of the screen again for every frame, though all but a few are as they were. Here
 * it remembers them from one frame to the next, where it already does from one row to the next. And two things took a
 * fifth of the time to the first frame: its layout engine read itself out of a `data:` address, for which Node loads all
 * it has for asking the web, and is unpacked where it stands here; the list of all emoji was made into a pattern before
 * any sign was measured, and is only for signs that can be one here. By file: what stands there and what stands there
 * instead. Another version of a library, where that is not to be found, ends the build.
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
  {
    file: /[\\/]string-width[\\/]index\.js$/,
    from: 'const rgiEmojiRegex = /^\\p{RGI_Emoji}$/v;',
    to: 'const rgiEmojiRegex = { test: isEmoji };',
    with: `
// Every emoji has one of these in it.
const ofEmoji = /[\\p{Extended_Pictographic}\\p{Regional_Indicator}\\p{Emoji_Modifier}\\u20E3]/u;
let emoji;
function isEmoji(segment) {
  if (!ofEmoji.test(segment)) return false;
  emoji ??= new RegExp('^\\\\p{RGI_Emoji}$', 'v');
  return emoji.test(segment);
}`,
  },
  {
    file: /[\\/]yoga-layout[\\/]dist[\\/]binaries[\\/]yoga-wasm-base64-esm\.js$/,
    from: 'if(!ua(H)){',
    to: 'w=w||Buffer.from(H.slice(H.indexOf(",")+1),"base64");if(!ua(H)){',
    with: '',
  },
];

export const briskInk = {
  name: 'brisk-ink',
  setup: ({ onLoad }) => {
    for (const { file, from, to, with: added } of changes)
      onLoad({ filter: file }, async ({ path }) => {
        const source = await readFile(path, 'utf8');
        if (source.split(from).length !== 2) throw new Error(`${path} has not once: ${from}`);
        return { contents: source.replace(from, to) + added };
      });
  },
};
