import { message } from '../texts/message.js';
import { clockOf } from './clock-habit.js';
import { findCookOrRehearsal } from './cooks-shelf.js';
import { type DebriefFormat, debrief, debriefFormats } from './debrief.js';
import { type ExitCode, fail } from './io.js';
import { boolean, flag, parse } from './options.js';
import type { World } from './world.js';

export const run = async (argv: readonly string[], world: World): Promise<ExitCode> => {
  const { words, given } = parse(argv, {
    markdown: boolean,
    json: boolean,
    csv: boolean,
    html: boolean,
    chapters: boolean,
  });
  const [cook, extra] = words;
  if (extra !== undefined)
    return fail(world, 2, message('command.too-many', { found: extra, command: 'debrief' }));
  const formats: readonly DebriefFormat[] = debriefFormats.filter((format) => flag(given[format]));
  return debrief(formats, {
    language: world.language,
    clock: (await clockOf(world)) ?? undefined,
    out: world.out,
    err: world.err,
    // The last column stays free: some terminals wrap there.
    columns: world.stdout.isTTY ? (world.stdout.columns ?? 80) - 1 : undefined,
    find: () => findCookOrRehearsal(world.env, cook),
  });
};
