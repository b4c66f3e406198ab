import { pathToFileURL } from 'node:url';
import { deflateRawSync } from 'node:zlib';

// What is spoken in block letters: the Latin of European languages and the marks of written sentences. The fonts know 2,900 more signs, and each
// costs time before the first frame.
const spoken = (code) => (code >= 0xa0 && code <= 0x17f) || (code >= 0x2010 && code <= 0x2026);
const asciiAndGerman = 102;

/** A FIGlet or TLF font without the glyphs that nobody asks for. Its comment lines, counted in the header, go too. */
const slimFont = (font) => {
  const lines = font.split('\n');
  const header = lines[0].split(' ');
  const height = Number(header[1]);
  const comments = Number(header[5]);
  const kept = [[...header.slice(0, 5), '0', ...header.slice(6)].join(' ')];
  let at = 1 + comments;
  kept.push(...lines.slice(at, at + asciiAndGerman * height));
  at += asciiAndGerman * height;
  for (; at + height < lines.length; at += height + 1)
    if (spoken(Number(lines[at].split(' ')[0]))) kept.push(...lines.slice(at, at + height + 1));
  return kept.join('\n');
};

/** A font is blanks and blocks for the most part: packed, it is read in no time, and unpacked when a letter of it is asked for. */
const unpacking = (packed) => `import { inflateRawSync } from 'node:zlib';
export default { toString: () => inflateRawSync(Buffer.from(${JSON.stringify(packed)}, 'base64')).toString() };`;

export const slimFonts = {
  name: 'slim-fonts',
  setup: ({ onLoad }) => {
    onLoad({ filter: /figlet[\\/]importable-fonts[\\/].*\.js$/ }, async ({ path }) => {
      const font = (await import(pathToFileURL(path).href)).default;
      const packed = deflateRawSync(slimFont(font), { level: 9 }).toString('base64');
      return { contents: unpacking(packed), resolveDir: import.meta.dirname };
    });
  },
};

/** How a program with a terminal screen is built here: the console itself, and what it is measured against. */
export const terminalProgram = {
  bundle: true,
  format: 'esm',
  platform: 'node',
  target: 'node20',
  minify: true,
  charset: 'utf8',
  jsx: 'automatic',
  define: { 'process.env.NODE_ENV': '"production"', 'process.env.DEV': '"false"' },
  alias: {
    // Only loaded by Ink in development; it is not a dependency of ours.
    'react-devtools-core': './scripts/nothing.mjs',
    // The same library as ES modules: what nobody calls is left out, and the rest starts sooner.
    yaml: './node_modules/yaml/browser/dist/index.js',
  },
  plugins: [slimFonts],
  // Bundled CommonJS packages call require.
  banner: {
    js: "import { createRequire as makeRequire } from 'node:module';\nconst require = makeRequire(import.meta.url);",
  },
  legalComments: 'none',
  logLevel: 'warning',
};
