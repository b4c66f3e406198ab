import { join } from 'node:path';
import { batchOf } from '../batch/batch-of.js';
import { headline } from '../cook/candy.js';
import { dataFolder, makeFolder } from '../files/folder.js';
import { sweepLeftovers } from '../files/sweep.js';
import { cannotTail } from '../files/tail.js';
import { readProblem, troubleOf } from '../files/trouble.js';
import { writeWhole } from '../files/write.js';
import { journalPath, newCookId, unfinishedCooks } from '../journal/list.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import { kitchenToYaml } from '../kitchen/write.js';
import type { Feed } from '../session/feed.js';
import { feedFrom } from '../session/feed-from.js';
import { machineClock } from '../session/machine.js';
import { cookOf, type Started, startKept } from '../session/start.js';
import { type Message, message } from '../texts/message.js';
import { clockOf } from './clock-habit.js';
import { terminalFlags, terminalSettings } from './console-settings.js';
import { type Host, hasLeft, type Left } from './host.js';
import { fail } from './io.js';
import { exampleRecipe, kitchenPath, type Loaded, load } from './named.js';
import { boolean, flag, parse, string, text } from './options.js';
import { readRun, runOf } from './plan-run.js';
import { runSheetFor, type Start } from './start-time.js';
import { taughtKitchen } from './taught.js';
import type { World } from './world.js';

const isOver = (entries: Parameters<typeof cookOf>[0]): boolean => {
  const cook = cookOf(entries);
  return cook === null || headline(cook) === 'over';
};

/** Lines where somebody asked for them or the terminal can do no more; the full screen otherwise. */
const hostFor = async (given: Readonly<Record<string, unknown>>, world: World): Promise<Host | Message> => {
  const isTerminal = world.stdin.isTTY === true && world.stdout.isTTY === true;
  if (flag(given.plain) || (isTerminal && world.env.TERM === 'dumb')) {
    const { lineHost } = await import('./line-host.js');
    return lineHost(world);
  }
  if (!isTerminal) return message('command.no-terminal', { command: 'cook' });
  const terminal = terminalSettings(given, world);
  if ('id' in terminal) return terminal;
  const { consoleHost } = await import('./console-host.js');
  return consoleHost({ quiet: flag(given.quiet), terminal, language: world.language });
};

/** The unfinished cook that is wanted, if there is one; whoever finds only what cannot be taken up decides. */
const resume = async (host: Host, folder: string): Promise<Started | Left | null> => {
  const unfinished = await host.waitFor(unfinishedCooks(folder, { isOver, now: machineClock.wall() }));
  let refused: Message | null = null;
  for (const [index, { path }] of unfinished.entries()) {
    const started = await host.waitFor(startKept(path, null, machineClock));
    if ('problem' in started) {
      refused ??= started.problem;
      continue;
    }
    const others = unfinished.length - index - 1;
    const wanted = await host.goOn(started.session.cook, started.resumedAfter?.seconds ?? 0, others);
    if (wanted === true) return started;
    await started.session.close();
    if (wanted !== false) return wanted;
  }
  return refused === null ? null : host.beginAnother(refused);
};

const firstKitchen = async (host: Host, world: World): Promise<Kitchen | Left | null> => {
  const kitchen = await host.askKitchen();
  if (kitchen === null || hasLeft(kitchen)) return kitchen;
  const path = kitchenPath(world);
  const made = await makeFolder(join(path, '..'));
  const saved = made === 'made' ? await writeWhole(path, kitchenToYaml(kitchen)) : made;
  const left = saved === 'saved' ? null : await host.tell(saved.problem);
  return left ?? kitchen;
};

const begin = async (
  host: Host,
  loaded: Loaded,
  start: Start | null,
  folder: string,
  world: World,
): Promise<Started | Left> => {
  const first = loaded.firstRun ? await firstKitchen(host, world) : null;
  if (hasLeft(first)) return first;
  const path = journalPath(folder, newCookId(new Date(machineClock.wall())));
  const kitchen = await taughtKitchen(first ?? loaded.kitchen, world);
  const opening = {
    recipe: loaded.recipe,
    kitchen,
    runSheet:
      start === null ? null : runSheetFor(batchOf(loaded.recipe, kitchen), start, machineClock.wall()),
    seed: null,
    version: world.version,
    from: null,
  };
  const started =
    path === null
      ? { problem: message('command.failed', { what: folder }) }
      : await host.waitFor(startKept(path, opening, machineClock));
  if (!('problem' in started)) return started;
  return (await host.tell(started.problem)) ?? { left: 1 };
};

/** Lead with the feed beside the keyboard, for as long as the person stays. */
const leadWith = async (host: Host, started: Started, path: string | undefined): Promise<number> => {
  if (path === undefined) return host.lead(started, null);
  const { feed, end } = feedFrom(started.session, path, machineClock);
  try {
    return await host.lead(started, feed satisfies Feed);
  } finally {
    await end();
  }
};

/** What is wrong with the path of a feed from the start; one that is not there yet is waited for. */
const feedRefused = async (path: string | undefined): Promise<{ problem: Message; code: 1 | 2 } | null> => {
  if (path === undefined) return null;
  if (path.trim() === '') return { problem: message('feed.bad.empty'), code: 2 };
  const error = await cannotTail(path);
  if (error === null) return null;
  const isOther = troubleOf(error) === 'notAFile';
  return { problem: isOther ? message('feed.bad.kind', { path }) : readProblem(error, path), code: 1 };
};

/** An unfinished cook is offered first; then a new one begins. */
const cookWith = async (
  host: Host,
  loaded: Loaded,
  start: Start | null,
  given: { readonly isNew: boolean; readonly feed: string | undefined },
  world: World,
): Promise<number> => {
  const folder = join(dataFolder(world.env), 'cooks');
  await makeFolder(folder);
  await sweepLeftovers(folder, machineClock.wall());
  const resumed = given.isNew ? null : await resume(host, folder);
  const started = resumed ?? (await begin(host, loaded, start, folder, world));
  if (hasLeft(started)) return started.left;
  try {
    await started.session.attend();
    return await leadWith(host, started, given.feed);
  } finally {
    await started.session.close();
  }
};

export const run = async (argv: readonly string[], world: World): Promise<number> => {
  const { words: given, given: options } = parse(argv, {
    kitchen: string,
    at: string,
    feed: string,
    plain: boolean,
    new: boolean,
    quiet: boolean,
    ...terminalFlags,
  });
  const [recipe = exampleRecipe, extra] = given;
  if (extra !== undefined)
    return fail(world, 2, message('command.too-many', { found: extra, command: 'cook' }));
  const clock = options.at === undefined ? null : await clockOf(world);
  const asked = readRun({ at: text(options.at) }, machineClock.wall(), clock);
  if ('problem' in asked) return fail(world, 2, asked.problem);
  const feed = text(options.feed);
  const refused = await feedRefused(feed);
  if (refused !== null) return fail(world, refused.code, refused.problem);
  const host = await hostFor(options, world);
  if ('id' in host) return fail(world, 2, host);
  // Read before the screen is taken: what is wrong with a file is said where it stays to be read.
  const loaded = await load(recipe, text(options.kitchen), world);
  if (typeof loaded === 'number') return loaded;
  const possible = asked.value === null ? null : runOf(batchOf(loaded.recipe, loaded.kitchen), asked.value);
  if (possible !== null && 'problem' in possible) return fail(world, 2, possible.problem);
  try {
    return await cookWith(
      host,
      loaded,
      asked.value?.start ?? null,
      { isNew: flag(options.new), feed },
      world,
    );
  } finally {
    await host.close();
  }
};
