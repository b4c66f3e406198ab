import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { buildSync } from 'esbuild';
import { afterAll, describe, expect, it } from 'vitest';
import { terminalProgram } from '../../scripts/build-options.mjs';
import { printerOf } from '../../source/commands/cook-printer.js';
import type { Cook } from '../../source/cook/cook.js';
import { linesBetween } from '../../source/screen/lines.js';
import type { Clock } from '../../source/session/clock.js';
import type { Session } from '../../source/session/session.js';
import { startKept } from '../../source/session/start.js';
import { hall, opened } from '../cook/play.js';
import { scratch, times } from './program.js';

const inTorture = times(0, 1) === 1;
const readings = times(400, 50_000);
const hours = times(1, 12);

setFlagsFromString('--expose-gc');
const collect = runInNewContext('gc') as () => void;
const heapMegabytes = (): number => {
  collect();
  collect();
  return process.memoryUsage().heapUsed / 1e6;
};

const inMemory = (): string => {
  if (!existsSync('/dev/shm')) return scratch();
  const folder = mkdtempSync('/dev/shm/kettlehand-watch-');
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
};

/** A clock that goes when it is told, with the beat that listens for sleep. */
class Hands implements Clock {
  seconds = 1000;
  #beats = new Set<{ every: number; at: number; run: () => void }>();
  up = (): number => this.seconds;
  wall = (): number => 1_800_000_000_000 + this.seconds * 1000;
  every = (every: number, run: () => void): (() => void) => {
    const beat = { every, at: this.seconds + every, run };
    this.#beats.add(beat);
    return () => this.#beats.delete(beat);
  };

  pass(seconds: number): void {
    const until = this.seconds + seconds;
    while (this.seconds < until) {
      this.seconds = Math.min(until, this.seconds + 5);
      for (const beat of this.#beats) {
        if (beat.at > this.seconds) continue;
        beat.at += beat.every;
        beat.run();
      }
    }
  }
}

const atTheBoil = async (path: string, clock: Hands): Promise<Session> => {
  const { recipe, runSheet, seed, version, from } = opened();
  const started = await startKept(path, { recipe, kitchen: hall, runSheet, seed, version, from }, clock);
  if ('problem' in started) throw new Error(started.problem.id);
  const { session } = started;
  await session.attend();
  for (const line of ['done', 'done', 'yes', 'done', 'done', 'done', 'heat medium', 'done', 'done']) {
    clock.pass(20);
    await session.type(line);
  }
  expect(session.advice().phase).toBe('boil');
  return session;
};

/** How long a key takes without the disk: what is typed becomes advice and words; the median of many, milliseconds. */
const latency = (session: Session): number => {
  const spent = Array.from({ length: 101 }, () => {
    const start = performance.now();
    const advice = session.advice();
    linesBetween(null, advice, printerOf(session.cook));
    return performance.now() - start;
  });
  return spent.sort((a, b) => a - b)[50] ?? 0;
};

type Replay = Pick<Cook, 'length' | 'lastReading'> & { readonly read: number; readonly fold: number };

const replayed = (path: string): Replay => {
  const outfile = join(scratch(), 'replay.cjs');
  buildSync({
    ...terminalProgram,
    plugins: [],
    banner: {},
    format: 'cjs',
    entryPoints: ['tests/faults/replay.ts'],
    outfile,
  });
  return JSON.parse(execFileSync(process.execPath, [outfile, path], { encoding: 'utf8' }));
};

describe('a long watch', () => {
  it(`${hours} hours of nothing, then ${readings} readings: nothing grows that should not, nothing is lost`, {
    timeout: 600_000,
  }, async () => {
    // In memory where that can be had: how fast the disk syncs is not what is asked here.
    const path = join(inMemory(), 'cook.jsonl');
    const clock = new Hands();
    const session = await atTheBoil(path, clock);
    const idleFrom = heapMegabytes();
    for (let minute = 0; minute < hours * 60; minute += 1) {
      clock.pass(60);
      const advice = session.advice();
      linesBetween(null, advice, printerOf(session.cook));
    }
    const idleGrowth = heapMegabytes() - idleFrom;
    const stateBefore = JSON.stringify({ ...session.cook, log: [] }).length;
    let warm = 0;
    let early = 0;
    for (let n = 0; n < readings; n += 1) {
      clock.pass(1);
      const value = 222 + (n % 9) * 0.2;
      await session.happen({ kind: 'reading', value, unit: 'F', of: 'syrup', by: 'feed' });
      if (n !== Math.floor(readings / 10)) continue;
      warm = heapMegabytes();
      early = latency(session);
    }
    const growth = heapMegabytes() - warm;
    const late = latency(session);
    // The state itself is as small as it was; only the list of events is longer.
    expect(JSON.stringify({ ...session.cook, log: [] }).length).toBeLessThan(stateBefore * 1.5 + 2000);
    expect(session.cook.length).toBe(10 + readings);
    expect(session.saving.saving).toBe(true);
    await session.close();

    const replay = replayed(path);
    expect(replay.lastReading).toEqual(session.cook.lastReading);
    expect(replay.length).toBe(session.cook.length);
    console.log(
      [
        `${hours} h idle: heap ${idleGrowth.toFixed(1)} MB; ${readings} readings: ${growth.toFixed(1)} MB after a tenth of them`,
        `a look takes ${early.toFixed(2)} ms after a tenth of them, ${late.toFixed(2)} ms at the end`,
        `replay: read ${replay.read.toFixed(0)} ms, fold ${replay.fold.toFixed(0)} ms; ${(statSync(path).size / 1e6).toFixed(1)} MB`,
      ].join('\n'),
    );
    if (!inTorture) return;
    expect(idleGrowth).toBeLessThan(20);
    expect(growth).toBeLessThan(20);
    expect(late).toBeLessThan(early * 3 + 1);
    // Under a second by itself (docs/RELIABILITY.md); twice that where other work shares the cores.
    expect(replay.read + replay.fold).toBeLessThan(2000);
  });
});
