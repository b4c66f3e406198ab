import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { PassThrough } from 'node:stream';
import type { World } from '../../source/commands/world.js';
import type { Happened } from '../../source/cook/event.js';
import { encodeLine } from '../../source/journal/line.js';
import { scratch } from '../journal/sample.js';
import { eventsOf, fair } from '../lessons/cooks-told.js';

/** The lines of a journal as the program writes them, `opened` twice. */
export const journalLines = (events: readonly Happened[], startedAt: string): readonly Buffer[] => {
  const start = Date.parse(startedAt);
  const lines = events.flatMap(
    (event) =>
      encodeLine({ ...event, at: new Date(start + event.t * 1000).toISOString(), up: 5000 + event.t }) ?? [],
  );
  const [first] = lines;
  return first === undefined ? [] : [first, ...lines];
};

export const ids = {
  whole: '2026-11-25-133502-9f2c',
  half: '2026-12-02-100000-ab12',
  rehearsal: '2026-12-03-100000-77aa',
} as const;

const whole = eventsOf(fair);
const half = whole.filter(({ t }) => t <= 1551);
const rehearsal = whole.map((event) => (event.kind === 'opened' ? { ...event, seed: 7 } : event));

/** A home with a finished cook, an unfinished one and a rehearsal, oldest first. */
export const home = (): { readonly path: string; readonly cooks: string } => {
  const path = scratch();
  const cooks = join(path, 'cooks');
  mkdirSync(cooks);
  const put = (id: string, events: readonly Happened[], startedAt: string): void =>
    writeFileSync(join(cooks, `${id}.jsonl`), Buffer.concat(journalLines(events, startedAt)));
  put(ids.whole, whole, '2026-11-25T13:35:02.000Z');
  put(ids.half, half, '2026-12-02T10:00:00.000Z');
  put(ids.rehearsal, rehearsal, '2026-12-03T10:00:00.000Z');
  return { path, cooks };
};

export type Ran = { readonly code: number; readonly out: string; readonly err: string };

/** Run a command as `cli.ts` would, nobody at the keyboard. */
export const runIn = async (
  path: string,
  run: (argv: readonly string[], world: World) => Promise<number>,
  ...argv: readonly string[]
): Promise<Ran> => {
  let [out, err] = ['', ''];
  const code = await run(argv, {
    env: { KETTLEHAND_HOME: path },
    stdin: new PassThrough() as unknown as NodeJS.ReadStream,
    stdout: new PassThrough() as unknown as NodeJS.WriteStream,
    version: '0.1.0',
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
  });
  return { code, out, err };
};
