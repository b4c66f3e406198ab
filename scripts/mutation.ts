import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { setPriority } from 'node:os';
import { parseArgs } from 'node:util';

/**
 * Changes the program in small ways, one at a time, and asks whether the tests of that room notice: in sugar, journal,
 * forecast and cook. A change that no test notices has survived. What is asked of it:
 *
 *   npm run mutation                       all four rooms (an hour or more: one room after the other, at low priority)
 *   npm run mutation sugar                 one room
 *   npm run mutation cook -- --sample 12   12 files of the room, drawn by the seed that is said
 *   npm run mutation sugar -- --files source/sugar/glass.ts
 *   npm run mutation sugar -- --static     also what is worked out while a module loads: every test for each
 *   npm run mutation sugar -- --read       no new run: says again what the last one found
 *
 * The whole report is left in coverage/mutation/<room>.json; the copy that is worked in is removed.
 */
const rooms = ['sugar', 'journal', 'forecast', 'cook'];

interface Mutant {
  readonly mutatorName: string;
  readonly replacement?: string;
  readonly status: string;
  readonly static?: boolean;
  readonly location: { readonly start: Place; readonly end: Place };
}
interface Place {
  readonly line: number;
  readonly column: number;
}
interface Report {
  readonly files: Readonly<Record<string, { readonly source: string; readonly mutants: readonly Mutant[] }>>;
}

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    sample: { type: 'string' },
    seed: { type: 'string', default: '1450' },
    files: { type: 'string' },
    static: { type: 'boolean', default: false },
    read: { type: 'boolean', default: false },
  },
});

const say = (line: string): void => {
  process.stdout.write(`${line}\n`);
};

/** Park and Miller's generator (1988): the same files for the same seed. */
function drawn(from: readonly string[], count: number, seed: number): readonly string[] {
  let state = (seed % 2_147_483_646) + 1;
  const ranked = from.map((file) => {
    state = (state * 48_271) % 2_147_483_647;
    return { file, rank: state };
  });
  return ranked
    .sort((a, b) => a.rank - b.rank)
    .slice(0, count)
    .map(({ file }) => file)
    .sort();
}

const filesOf = (room: string): readonly string[] => {
  if (values.files !== undefined) return values.files.split(',');
  const all = readdirSync(`source/${room}`, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => `source/${room}/${name.replaceAll('\\', '/')}`)
    .sort();
  return values.sample === undefined ? all : drawn(all, Number(values.sample), Number(values.seed));
};

const percent = (part: number, whole: number): string =>
  whole === 0 ? '-' : `${((100 * part) / whole).toFixed(1)} %`;

/** A mutant counts as noticed when a test failed, or did not come to an end. */
const count = (mutants: readonly Mutant[]) => {
  const of = (...statuses: readonly string[]): number =>
    mutants.filter(({ status }) => statuses.includes(status)).length;
  const noticed = of('Killed', 'Timeout');
  const missed = of('Survived', 'NoCoverage');
  return { noticed, missed, all: noticed + missed, untried: of('Ignored', 'CompileError', 'RuntimeError') };
};

const inOneLine = (text: string): string => {
  const flat = text.replace(/\s+/g, ' ');
  return flat.length > 90 ? `${flat.slice(0, 89)}…` : flat;
};

function cutFrom(source: string, { start, end }: Mutant['location']): string {
  const lines = source.split('\n').slice(start.line - 1, end.line);
  const last = lines.length - 1;
  return lines
    .map((line, at) => line.slice(at === 0 ? start.column - 1 : 0, at === last ? end.column - 1 : undefined))
    .join('\n');
}

function tell(room: string): void {
  const report: Report = JSON.parse(readFileSync(`coverage/mutation/${room}.json`, 'utf8'));
  const files = Object.entries(report.files);
  for (const [file, { source, mutants }] of files) {
    for (const mutant of mutants.filter(({ status }) => status === 'Survived' || status === 'NoCoverage')) {
      const { line, column } = mutant.location.start;
      const became = inOneLine(mutant.replacement ?? mutant.mutatorName);
      const unseen = mutant.status === 'NoCoverage' ? '  (no test comes here)' : '';
      say(
        `${file}:${line}:${column}  ${inOneLine(cutFrom(source, mutant.location))}  ->  ${became}${unseen}`,
      );
    }
  }
  say('');
  for (const [file, { mutants }] of files) {
    const { noticed, all } = count(mutants);
    say(`${percent(noticed, all).padStart(8)}  ${noticed} of ${all}  ${file}`);
  }
  const { noticed, all, untried } = count(files.flatMap(([, { mutants }]) => mutants));
  say(
    `${percent(noticed, all).padStart(8)}  ${noticed} of ${all} changes noticed in ${room}; ${untried} not tried`,
  );
}

function run(room: string): boolean {
  const files = filesOf(room);
  say(
    `${room}: ${files.length} files${values.sample === undefined ? '' : `, seed ${values.seed}: ${files.join(' ')}`}`,
  );
  const sandbox = `coverage/mutation/${room}-sandbox`;
  mkdirSync('coverage/mutation', { recursive: true });
  const { status } = spawnSync('npx', ['stryker', 'run'], {
    stdio: ['ignore', 'inherit', 'inherit'],
    env: {
      ...process.env,
      MUTATE: room,
      MUTATE_FILES: files.join(','),
      MUTATE_STATIC: values.static ? '1' : '0',
    },
  });
  rmSync(sandbox, { recursive: true, force: true });
  return status === 0;
}

const unknown = positionals.filter((room) => !rooms.includes(room));
if (unknown.length > 0) {
  say(`no room ${unknown.join(', ')} here; there are ${rooms.join(', ')}`);
  process.exitCode = 2;
} else {
  setPriority(15);
  for (const room of positionals.length === 0 ? rooms : positionals) {
    if (values.read || run(room)) tell(room);
    else process.exitCode = 1;
  }
}
