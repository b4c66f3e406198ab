import { headline } from '../cook/candy.js';
import { readProblem } from '../files/trouble.js';
import type { TerminalOptions } from '../screen/options.js';
import { isSpoken } from '../screen/style.js';
import { WatchLines } from '../screen/watch-lines.js';
import { watchedIn } from '../screen/watch-sight.js';
import { Audience } from '../session/audience.js';
import { machineClock } from '../session/machine.js';
import { cookOf } from '../session/start.js';
import { message } from '../texts/message.js';
import { exitCodes, terminalFlags, terminalSettings } from './console-settings.js';
import { cooksFolder, findCookOrRehearsal, rehearsalsFolder } from './cooks-shelf.js';
import { fail } from './io.js';
import { boolean, flag, parse } from './options.js';
import type { World } from './world.js';

/** The journal cannot be read any more. */
type Broken = { readonly error: unknown };

/** Sooner than this nothing is looked at again, milliseconds. */
const glanceMilliseconds = 1000;

const columnsOf = ({ stdout }: World): number | null => (stdout.isTTY ? (stdout.columns ?? 80) : null);

/** The journal of the cook or rehearsal that was named, not over; or the exit code after a sentence. */
const named = async (typed: string, world: World): Promise<string | number> => {
  const found = await findCookOrRehearsal(world.env, typed);
  if ('problem' in found) return fail(world, found.wrongUse ? 2 : 1, found.problem);
  const cook = cookOf(found.recovered.entries);
  if (cook === null) return fail(world, 1, message('watch.unreadable', { path: found.path }));
  if (headline(cook) !== 'over') return found.path;
  return fail(
    world,
    1,
    message('watch.ended', { recipe: cook.batch.recipe.name, id: found.id ?? found.path }),
  );
};

/** Until a signal or the reader of our lines ends it. */
const leadLines = async (audience: Audience, isNamed: boolean, world: World): Promise<number> => {
  const lines = new WatchLines(world.out, () => columnsOf(world));
  const look = (): void => lines.see(watchedIn(audience.sight, world.language));
  return new Promise<number>((resolve) => {
    const stops: (() => void)[] = [];
    const leave = (code: number): void => {
      for (const stop of stops) stop();
      resolve(code);
    };
    const onSight = (): void => {
      look();
      if (isNamed && audience.isOver) leave(0);
    };
    stops.push(audience.onChange(onSight));
    const timer = setInterval(onSight, glanceMilliseconds);
    stops.push(() => clearInterval(timer));
    for (const [signal, how] of [
      ['SIGINT', 'interrupted'],
      ['SIGTERM', 'terminated'],
      ['SIGHUP', 'hung up'],
    ] as const) {
      const heard = (): void => leave(exitCodes[how]);
      process.on(signal, heard);
      stops.push(() => process.off(signal, heard));
    }
    look();
  });
};

const leadScreen = async (
  audience: Audience,
  settings: TerminalOptions,
  world: World,
  broken: Promise<Broken>,
): Promise<number | Broken> => {
  const { openTerminal } = await import('../screen/console.js');
  const terminal = openTerminal(settings);
  try {
    const seen = terminal.watch({ audience, language: world.language }).then((exit) => exitCodes[exit]);
    return await Promise.race([seen, broken]);
  } finally {
    await terminal.close();
  }
};

const lookOnce = async (audience: Audience, world: World): Promise<number> => {
  const sight = await audience.once();
  if (sight.path === null) return fail(world, 1, message('watch.none-running'));
  if (sight.cook === null) return fail(world, 1, message('watch.unreadable', { path: sight.path }));
  new WatchLines(world.out, () => columnsOf(world)).see(watchedIn(sight, world.language));
  return 0;
};

export const run = async (argv: readonly string[], world: World): Promise<number> => {
  const { words: typed, given } = parse(argv, { once: boolean, plain: boolean, ...terminalFlags });
  const [cook, extra] = typed;
  if (extra !== undefined)
    return fail(world, 2, message('command.too-many', { found: extra, command: 'watch' }));
  const path = cook === undefined ? null : await named(cook, world);
  if (typeof path === 'number') return path;
  const folders = [cooksFolder(world.env), rehearsalsFolder(world.env)];
  const audience = new Audience({ folders, path, clock: machineClock });
  if (flag(given.once)) return lookOnce(audience, world);
  const isTerminal = world.stdin.isTTY === true && world.stdout.isTTY === true && world.env.TERM !== 'dumb';
  const settings = isTerminal && !flag(given.plain) ? terminalSettings(given, world) : null;
  if (settings !== null && 'id' in settings) return fail(world, 2, settings);
  const broken = audience.run().then(
    () => new Promise<never>(() => undefined),
    (error: unknown): Broken => ({ error }),
  );
  const left =
    // A screen reader is read to line by line.
    settings === null || isSpoken(settings)
      ? await Promise.race([leadLines(audience, path !== null, world), broken])
      : await leadScreen(audience, settings, world, broken);
  audience.end();
  if (typeof left === 'number') return left;
  return fail(world, 1, readProblem(left.error, audience.sight.path ?? cooksFolder(world.env)));
};
