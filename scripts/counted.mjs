import { readFile } from 'node:fs/promises';
import { createInstrumenter } from 'istanbul-lib-instrument';

/** Where every process that ran leaves its counts. */
export const countsFolder = `${process.cwd()}/coverage/counts`;

const instrumenter = (plugins) =>
  createInstrumenter({
    esModules: true,
    produceSourceMap: true,
    compact: false,
    parserPlugins: plugins,
    coverageGlobalScope: 'globalThis',
    coverageGlobalScopeFunc: false,
  });
const ofTs = instrumenter(['typescript']);
const ofTsx = instrumenter(['typescript', 'jsx']);

const isSource = /[\\/]source[\\/].*\.tsx?$/;

/** A source file with counters, its map, and the counts of a file that never ran. */
export const withCounters = (code, path) => {
  const one = path.endsWith('x') ? ofTsx : ofTs;
  return { code: one.instrumentSync(code, path), map: one.lastSourceMap(), unrun: one.lastFileCoverage() };
};

/** For the tests' own process. */
export const countingInVite = {
  name: 'count',
  enforce: 'pre',
  transform: (code, id) => {
    const path = id.split('?')[0];
    if (!isSource.test(path)) return null;
    const { code: counted, map } = withCounters(code, path);
    return { code: counted, map };
  },
};

/** Leaves the counts of its process when that ends in order. It is built in, as the first thing that `entry` does. */
const leaveCounts = `
import { writeFileSync as leave } from 'node:fs';
process.on('exit', () => {
  try {
    leave(\`${countsFolder}/\${process.pid}-\${Date.now()}.json\`, JSON.stringify(globalThis.__coverage__));
  } catch {}
});
`;

/** For a built program, which the tests start as a person would: every source file, and what is in the entry. */
export const countingInEsbuild = (entry) => ({
  name: 'count',
  setup: ({ onLoad }) => {
    onLoad({ filter: /\.tsx?$/ }, async ({ path }) => {
      const code = await readFile(path, 'utf8');
      const counted = isSource.test(path) ? withCounters(code, path).code : code;
      return {
        contents: path.endsWith(entry) ? leaveCounts + counted : counted,
        loader: path.endsWith('x') ? 'tsx' : 'ts',
      };
    });
  },
});
