import { spawn } from 'node:child_process';

/**
 * The long versions of the fault tests: hundreds of kills, tens of thousands of random cooks, half a day's watch.
 * Bounded: ended after ten minutes, and then it has failed. The seed is said, so that a run can be run again:
 * KETTLEHAND_SEED=1234 npm run torture
 */
const mostMinutes = 10;
const seed = process.env.KETTLEHAND_SEED ?? String(Date.now() % 1_000_000_000);

const files = [
  'tests/faults',
  'tests/session',
  'tests/journals',
  'tests/journal/kill.test.ts',
  'tests/journal/recover.test.ts',
  'tests/cook/properties.test.ts',
  ...process.argv.slice(2),
];

const started = Date.now();
process.stdout.write(`torture, seed ${seed}, at most ${mostMinutes} minutes\n`);

const run = spawn('npx', ['vitest', 'run', '--maxWorkers=2', ...files], {
  stdio: ['ignore', 'pipe', 'inherit'],
  // A group of its own, so that its workers end with it.
  detached: true,
  env: {
    ...process.env,
    NO_COLOR: '1',
    KETTLEHAND_TORTURE: '1',
    KETTLEHAND_SEED: seed,
    KETTLEHAND_KILLS: '60',
    KETTLEHAND_RUNS: '10000',
  },
});

const end = (): void => {
  if (run.pid !== undefined) process.kill(-run.pid, 'SIGKILL');
};
const late = setTimeout(() => {
  process.stdout.write(`not finished after ${mostMinutes} minutes\n`);
  end();
}, mostMinutes * 60_000);
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.once(signal, end);

let said = '';
run.stdout.setEncoding('utf8').on('data', (chunk: string) => {
  said += chunk;
  process.stdout.write(chunk);
});

run.on('close', (code) => {
  clearTimeout(late);
  const counts = said
    .split('\n')
    .filter((line) => /\d+ kills|none lost|h idle|after a tenth|replay:|^\s*(Test Files|Tests)\s/.test(line));
  process.stdout.write(
    `\n${counts.join('\n')}\n${code === 0 ? 'held' : 'FAILED'} after ${Math.round((Date.now() - started) / 1000)} s, seed ${seed}\n`,
  );
  process.exitCode = code === 0 ? 0 : 1;
});
