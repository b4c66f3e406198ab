import type { Cook } from '../cook/cook.js';
import { makeFolder } from '../files/folder.js';
import { journalPath, newCookId } from '../journal/list.js';
import { fastClock } from '../rehearsal/clock.js';
import { rehearse } from '../rehearsal/rehearse.js';
import { RehearsedSession } from '../rehearsal/rehearsed-session.js';
import { simulatedCook } from '../rehearsal/simulated-cook.js';
import type { Truth } from '../rehearsal/table.js';
import { rehearsalVerdict } from '../rehearsal/verdict.js';
import { LineMode } from '../screen/line-mode.js';
import { wrapped } from '../screen/lines.js';
import type { ConsoleExit } from '../screen/options.js';
import { linesOf } from '../session/lines-in.js';
import { machineClock } from '../session/machine.js';
import { startKept } from '../session/start.js';
import { message, words } from '../texts/message.js';
import { clockOf } from './clock-habit.js';
import { type ConsoleHostOptions, exitCodes, terminalFlags, terminalSettings } from './console-settings.js';
import { printerOf } from './cook-printer.js';
import { rehearsalsFolder } from './cooks-shelf.js';
import { type ExitCode, fail } from './io.js';
import { exampleRecipe, type Loaded, load } from './named.js';
import { boolean, flag, parse, string, text } from './options.js';
import { type RehearseOptions, readRehearseOptions } from './rehearse-options.js';
import { type RehearsalPlan, rehearsalPlan } from './rehearse-plan.js';
import { rehearsalJson, rehearsalText } from './rehearse-report.js';
import type { World } from './world.js';

/** The pot is looked at so often, milliseconds of the wall. */
const lookEveryMilliseconds = 200;

/** What the rehearsal came to, as it was asked for. */
const resultOf = (
  cook: Cook,
  truth: Truth,
  { surprise, json }: RehearseOptions,
  { pull }: RehearsalPlan,
  world: World,
): string => {
  const verdict = rehearsalVerdict(cook, truth, surprise);
  const printer = printerOf(cook, world);
  return json
    ? `${JSON.stringify(rehearsalJson(cook, verdict, surprise, printer))}\n`
    : rehearsalText(cook, verdict, surprise, pull, printer);
};

const headless = (loaded: Loaded, options: RehearseOptions, world: World): ExitCode => {
  const { recipe, kitchen } = loaded;
  const { seed, surprise, at } = options;
  const plan = rehearsalPlan(loaded, at);
  const { runSheet } = plan;
  const { cook, truth } = rehearse({ recipe, kitchen, seed, surprise, runSheet, version: world.version });
  world.out(resultOf(cook, truth, options, plan, world));
  return 0;
};

type Opened = { readonly rehearsed: RehearsedSession; readonly finish: () => Promise<string> };

/** The rehearsal on its fast clock; `finish` closes it and says what it came to. */
const openRehearsal = async (
  loaded: Loaded,
  options: RehearseOptions,
  world: World,
): Promise<Opened | ExitCode> => {
  const { recipe, kitchen } = loaded;
  const { seed, surprise, pace, auto, at } = options;
  const clock = fastClock(machineClock, pace);
  const folder = rehearsalsFolder(world.env);
  await makeFolder(folder);
  const id = newCookId(new Date(machineClock.wall()));
  const path = journalPath(folder, id);
  if (path === null) return fail(world, 1, message('command.failed', { what: folder }));
  const plan = rehearsalPlan(loaded, at);
  const { runSheet } = plan;
  const opening = { recipe, kitchen, runSheet, seed, version: world.version, from: null };
  const started = await startKept(path, opening, clock);
  if ('problem' in started) return fail(world, 1, started.problem);
  const { session } = started;
  const table = simulatedCook(session.cook.batch, seed, surprise);
  const rehearsed = new RehearsedSession({ session, table, clock, auto });
  const timer = setInterval(() => void rehearsed.look(), lookEveryMilliseconds);
  return {
    rehearsed,
    finish: async () => {
      clearInterval(timer);
      await session.close();
      const result = resultOf(session.cook, table.truth(), options, plan, world);
      if (options.json) return result;
      const kept = words(message('rehearsal.kept', { id }), printerOf(session.cook, world));
      return `${result}\n${kept}\n`;
    },
  };
};

const byLines = async (loaded: Loaded, options: RehearseOptions, world: World): Promise<ExitCode> => {
  const opened = await openRehearsal(loaded, options, world);
  if (typeof opened === 'number') return opened;
  const { rehearsed, finish } = opened;
  const { seed, pace } = options;
  // The result alone goes to standard output where a program reads it.
  const say = options.json ? world.err : world.out;
  const columns = (): number | null => (world.stdout.isTTY ? (world.stdout.columns ?? 80) : null);
  const opening = words(
    message('rehearsal.opened', { recipe: loaded.recipe.name, seed, pace }),
    printerOf(rehearsed.cook, world),
  );
  const width = columns();
  say(`${width === null ? opening : wrapped(opening, width)}\n`);
  const mode = new LineMode({
    session: rehearsed,
    printerNow: () => printerOf(rehearsed.cook, world),
    lines: linesOf(world.stdin),
    write: say,
    columns,
    prompts: world.stdin.isTTY === true,
    pace,
    onHappening: (listener) => rehearsed.onHappening(listener),
  });
  try {
    await mode.run();
  } finally {
    say('\n');
    world.out(await finish());
  }
  return 0;
};

/** The pot changes all the time: the screen looks at it so often, milliseconds of the wall. */
const glanceEveryMilliseconds = 1000;

/** The very same console, on the simulated pot and the fast clock. */
const onScreen = async (
  loaded: Loaded,
  options: RehearseOptions,
  world: World,
  settings: ConsoleHostOptions,
): Promise<number> => {
  const { openTerminal } = await import('../screen/console.js');
  const opened = await openRehearsal(loaded, options, world);
  if (typeof opened === 'number') return opened;
  const { rehearsed, finish } = opened;
  const terminal = openTerminal(settings.terminal);
  let exit: ConsoleExit = 'left';
  try {
    exit = await terminal.cook({
      session: rehearsed,
      language: world.language,
      pace: options.pace,
      quiet: settings.quiet,
      onHappening: (listener) => {
        const timer = setInterval(listener, glanceEveryMilliseconds);
        const stop = rehearsed.onHappening(listener);
        return () => {
          clearInterval(timer);
          stop();
        };
      },
    });
  } finally {
    await terminal.close();
    const said = await finish();
    if (exit === 'left') world.out(said);
  }
  return exitCodes[exit];
};

export const run = async (argv: readonly string[], world: World): Promise<number> => {
  const { words: given, given: flags } = parse(argv, {
    kitchen: string,
    surprise: string,
    seed: string,
    pace: string,
    at: string,
    auto: boolean,
    plain: boolean,
    quiet: boolean,
    ...terminalFlags,
    headless: boolean,
    json: boolean,
  });
  const [recipe = exampleRecipe, extra] = given;
  if (extra !== undefined)
    return fail(world, 2, message('command.too-many', { found: extra, command: 'rehearse' }));
  const clock = flags.at === undefined ? null : await clockOf(world);
  const options = readRehearseOptions(flags, machineClock.wall(), clock);
  if ('id' in options) return fail(world, 2, options);
  const loaded = await load(recipe, text(flags.kitchen), world);
  if (typeof loaded === 'number') return loaded;
  if (options.headless) return headless(loaded, options, world);
  const isTerminal = world.stdin.isTTY === true && world.stdout.isTTY === true && world.env.TERM !== 'dumb';
  if (!isTerminal || flag(flags.plain)) return byLines(loaded, options, world);
  const terminal = terminalSettings(flags, world);
  if ('id' in terminal) return fail(world, 2, terminal);
  return onScreen(loaded, options, world, { quiet: flag(flags.quiet), terminal });
};
