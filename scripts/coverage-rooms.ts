import { readFileSync } from 'node:fs';

/**
 * Says what `vitest --coverage` has measured, by room: lines and branches that ran inside the test process. What runs
 * only in the built program under test counts as not run here.
 */
type Counted = { readonly total: number; readonly covered: number };
type Measured = { readonly lines: Counted; readonly branches: Counted };

const summary: Readonly<Record<string, Measured>> = JSON.parse(
  readFileSync('coverage/coverage-summary.json', 'utf8'),
);

const roomOf = (file: string): string => /[\\/]source[\\/](?:([^\\/]+)[\\/])?/.exec(file)?.[1] ?? 'cli.ts';

const sum = (one: Counted, other: Counted): Counted => ({
  total: one.total + other.total,
  covered: one.covered + other.covered,
});

const nothing: Measured = { lines: { total: 0, covered: 0 }, branches: { total: 0, covered: 0 } };

const rooms = new Map<string, Measured>();
for (const [file, { lines, branches }] of Object.entries(summary)) {
  const room = file === 'total' ? 'all of source/' : roomOf(file);
  const before = rooms.get(room) ?? nothing;
  rooms.set(room, { lines: sum(before.lines, lines), branches: sum(before.branches, branches) });
}

const percent = ({ covered, total }: Counted): string =>
  `${(total === 0 ? 100 : (100 * covered) / total).toFixed(1)} %`.padStart(9);

process.stdout.write(
  `${'room'.padEnd(16)}${'lines'.padStart(9)}${'branches'.padStart(11)}  branches not run\n`,
);
for (const [room, { lines, branches }] of [...rooms].sort(([one], [other]) => one.localeCompare(other))) {
  const left = branches.total - branches.covered;
  process.stdout.write(
    `${room.padEnd(16)}${percent(lines)}  ${percent(branches)}  ${left} of ${branches.total}\n`,
  );
}
