import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { buildSync } from 'esbuild';
import { describe, expect, it } from 'vitest';
import { recover } from '../../source/journal/recover.js';
import { scratch } from './sample.js';

const kills = Number(process.env.KETTLEHAND_KILLS ?? 20);

const program = (folder: string): string => {
  const outfile = join(folder, 'appender.mjs');
  buildSync({
    entryPoints: [join(import.meta.dirname, 'appender.ts')],
    bundle: true,
    platform: 'node',
    format: 'esm',
    outfile,
  });
  return outfile;
};

const start = (file: string, path: string): { child: ChildProcess; said: () => string[] } => {
  const child = spawn(process.execPath, [file, path], { stdio: ['ignore', 'pipe', 'inherit'] });
  let heard = '';
  child.stdout?.on('data', (chunk: Buffer) => {
    heard += chunk.toString();
  });
  return { child, said: () => heard.slice(0, heard.lastIndexOf('\n') + 1).split('\n') };
};

describe('a program that is killed while it writes', () => {
  it('leaves every event that it called saved in the journal, kill after kill', {
    timeout: 120_000 + kills * 5000,
  }, async () => {
    const folder = scratch();
    const file = program(folder);
    const path = join(folder, 'cook.jsonl');
    const acknowledged = new Set<number>();
    for (let kill = 0; kill < kills; kill += 1) {
      const { child, said } = start(file, path);
      // Every fourth is killed while it starts: while it takes the lock over, mends the torn line, opens the file.
      if (kill % 4 !== 3) await once(child.stdout ?? child, 'data');
      await new Promise((resolve) => setTimeout(resolve, Math.random() * (kill % 4 === 3 ? 250 : 60)));
      child.kill('SIGKILL');
      await once(child, 'close');
      expect(said()[0]).toMatch(/^resumed |^$/);
      for (const line of said()) if (line.startsWith('saved ')) acknowledged.add(Number(line.slice(6)));
      const { entries, damaged } = recover(readFileSync(path));
      const present = new Set(entries.map(({ seq }) => seq));
      expect([...acknowledged].filter((seq) => !present.has(seq))).toEqual([]);
      expect(damaged.length).toBeLessThanOrEqual(kill);
    }
    expect(acknowledged.size).toBeGreaterThan(kills);
    console.log(`${kills} kills, ${acknowledged.size} events acknowledged, none lost`);
  });
});
