/**
 * Lines and branches that ran, by room: in the tests' own processes and in the program that they start, as far as that
 * ended in order (nothing is left by `kill -9`).
 *
 *   npm run coverage                       the whole suite
 *   npm run coverage -- tests/commands     what these tests run
 *   npm run coverage -- --left screen      of the last run, each line of a room with a branch that did not
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import { build } from 'esbuild';
import istanbul, { type CoverageMap, type FileCoverage } from 'istanbul-lib-coverage';
import { fixtureOptions } from '../tests/terminal/fixture-options.js';
import { countingInEsbuild, countsFolder, withCounters } from './counted.mjs';

const { createCoverageMap } = istanbul;
const fixture = resolve('node_modules/.cache/kettlehand-fixture-counted.mjs');

const node = (words: readonly string[], env: NodeJS.ProcessEnv = {}): number =>
  spawnSync(process.execPath, words, { stdio: 'inherit', env: { ...process.env, ...env } }).status ?? 1;

const run = (files: readonly string[]): number => {
  rmSync(countsFolder, { recursive: true, force: true });
  mkdirSync(countsFolder, { recursive: true });
  if (node(['scripts/build.mjs', '--counted']) !== 0) return 1;
  const tests = ['node_modules/vitest/vitest.mjs', 'run', '--config', 'vitest.coverage.config.ts', ...files];
  const code = node(tests, { KETTLEHAND_FIXTURE: fixture });
  return node(['scripts/build.mjs']) || code;
};

const sourceFiles = (): readonly string[] =>
  readdirSync('source', { recursive: true, encoding: 'utf8' })
    .filter((path) => /(?<!\.d)\.tsx?$/.test(path))
    .map((path) => resolve('source', path));

const gathered = (): CoverageMap => {
  const all = createCoverageMap({});
  for (const path of sourceFiles()) all.addFileCoverage(withCounters(readFileSync(path, 'utf8'), path).unrun);
  for (const name of readdirSync(countsFolder))
    all.merge(JSON.parse(readFileSync(join(countsFolder, name), 'utf8')));
  return all;
};

type Counted = { readonly total: number; readonly covered: number };
const percent = ({ covered, total }: Counted): string =>
  `${(total === 0 ? 100 : (100 * covered) / total).toFixed(1)} %`.padStart(9);

const roomOf = (path: string): string => {
  const [room = '', ...rest] = relative('source', path).split('/');
  return rest.length === 0 ? 'cli.ts' : room;
};

const byRoom = (all: CoverageMap): void => {
  const rooms = new Map<string, CoverageMap>();
  for (const path of all.files()) {
    const one = rooms.get(roomOf(path)) ?? createCoverageMap({});
    one.addFileCoverage(all.fileCoverageFor(path));
    rooms.set(roomOf(path), one);
  }
  const row = (name: string, map: CoverageMap): string => {
    const { lines, branches } = map.getCoverageSummary().data;
    const left = branches.total - branches.covered;
    return `${name.padEnd(16)}${percent(lines)}  ${percent(branches)}  ${left} of ${branches.total}\n`;
  };
  process.stdout.write('room                lines   branches  branches not run\n');
  for (const [room, map] of [...rooms].sort(([one], [other]) => one.localeCompare(other)))
    process.stdout.write(row(room, map));
  process.stdout.write(row('all of source/', all));
};

const left = (file: FileCoverage): readonly string[] => {
  const lines = readFileSync(file.path, 'utf8').split('\n');
  return Object.entries(file.branchMap).flatMap(([id, { type, locations, loc }]) =>
    (file.b[id] ?? []).flatMap((count, nth) => {
      if (count > 0) return [];
      const line = locations[nth]?.start.line ?? loc.start.line;
      return [`${relative('.', file.path)}:${line}  ${type} ${nth}  ${(lines[line - 1] ?? '').trim()}`];
    }),
  );
};

const [first, ...more] = process.argv.slice(2);
if (first === '--left') {
  const all = gathered();
  for (const path of all.files())
    if (more.includes(roomOf(path)))
      for (const line of left(all.fileCoverageFor(path))) process.stdout.write(`${line}\n`);
} else {
  await build({ ...fixtureOptions(fixture), plugins: [countingInEsbuild('fixtures/console.ts')] });
  process.exitCode = run(process.argv.slice(2));
  byRoom(gathered());
}
