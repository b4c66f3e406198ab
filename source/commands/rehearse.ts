import { join } from 'node:path';
import { dataFolder, makeFolder } from '../files/folder.js';
import { journalPath, newCookId } from '../journal/list.js';
import { fastClock } from '../rehearsal/clock.js';
import { rehearse } from '../rehearsal/rehearse.js';
import { RehearsedSession } from '../rehearsal/rehearsed-session.js';
import { simulatedCook } from '../rehearsal/simulated-cook.js';
import { rehearsalVerdict } from '../rehearsal/verdict.js';
import { LineMode } from '../screen/line-mode.js';
import { wrapped } from '../screen/lines.js';
import { linesOf } from '../session/lines-in.js';
import { machineClock } from '../session/machine.js';
import { startKept } from '../session/start.js';
import { type Message, message, words } from '../texts/message.js';
import { printerOf } from './cook-printer.js';
import { type ExitCode, fail } from './io.js';
import { exampleRecipe, type Loaded, load } from './named.js';
import { parse, text } from './options.js';
import { type RehearseOptions, readRehearseOptions } from './rehearse-options.js';
import { rehearsalJson, rehearsalText } from './rehearse-report.js';
import type { World } from './world.js';

const help = `
  Examples
    $ kettlehand rehearse                                 the bundled example, in about 4 minutes
    $ kettlehand rehearse mint-pull --surprise foam-over  meet the foam before anyone watches
    $ kettlehand rehearse --surprise any --seed 7         something, the same each time for the same seed
    $ kettlehand rehearse --auto                          the pot types its own readings
    $ kettlehand rehearse --auto --headless --json        a simulated person types everything, for scripts

  The same cook, on a simulated pot and a clock that runs fast. "look" says what the dial shows and what is
  to be seen, "skip" goes to the next thing to do, "pause" and "go" stop and start the clock.

  Options
    --surprise NAME  foam-over, hot-hob, weak-hob, thermometer-off, interruption, grains, overshoot,
                     power-cut, early-touch, burning-smell, or any (default: none)
    --seed N         the same number makes the same rehearsal
    --pace N         1 to 60 times as fast (default 20)
    --kitchen FILE   where it is cooked (default: the saved kitchen)
    --auto           the pot types the readings
    --headless       with --auto: a simulated person, no screen
    --json           with --headless: journal and result as one JSON object
`;

/** The pot is looked at so often, milliseconds of the wall. */
const lookEveryMilliseconds = 200;

const headless = ({ recipe, kitchen }: Loaded, options: RehearseOptions, world: World): ExitCode => {
  const { seed, surprise } = options;
  const { cook, truth } = rehearse({ recipe, kitchen, seed, surprise, version: world.version });
  const verdict = rehearsalVerdict(cook, truth, surprise);
  const printer = printerOf(cook);
  world.out(
    options.json
      ? `${JSON.stringify(rehearsalJson(cook, verdict, surprise, printer))}\n`
      : rehearsalText(cook, verdict, surprise, printer),
  );
  return 0;
};

const byLines = async (loaded: Loaded, options: RehearseOptions, world: World): Promise<ExitCode> => {
  const { recipe, kitchen } = loaded;
  const { seed, surprise, pace, auto } = options;
  const clock = fastClock(machineClock, pace);
  // Apart from the real cooks: an unfinished rehearsal is never offered as a cook.
  const folder = join(dataFolder(world.env), 'rehearsals');
  await makeFolder(folder);
  const path = journalPath(folder, newCookId(new Date(machineClock.wall())));
  if (path === null) return fail(world, 1, message('command.failed', { what: folder }));
  const opening = { recipe, kitchen, runSheet: null, seed, version: world.version, from: null };
  const started = await startKept(path, opening, clock);
  if ('problem' in started) return fail(world, 1, started.problem);
  const { session } = started;
  const table = simulatedCook(session.cook.batch, seed, surprise);
  const rehearsed = new RehearsedSession({ session, table, clock, auto });
  const columns = (): number | null => (world.stdout.isTTY ? (world.stdout.columns ?? 80) : null);
  const say = (said: Message): void => {
    const line = words(said, printerOf(session.cook));
    const width = columns();
    world.out(`${width === null ? line : wrapped(line, width)}\n`);
  };
  say(message('rehearsal.opened', { recipe: recipe.name, seed, pace }));
  const timer = setInterval(() => void rehearsed.look(), lookEveryMilliseconds);
  const mode = new LineMode({
    session: rehearsed,
    printerNow: () => printerOf(session.cook),
    lines: linesOf(world.stdin),
    write: world.out,
    columns,
    prompts: world.stdin.isTTY === true,
    pace,
    onHappening: (listener) => rehearsed.onHappening(listener),
  });
  try {
    await mode.run();
  } finally {
    clearInterval(timer);
    await session.close();
  }
  const verdict = rehearsalVerdict(session.cook, table.truth(), surprise);
  world.out(`\n${rehearsalText(session.cook, verdict, surprise, printerOf(session.cook))}`);
  return 0;
};

export const run = async (argv: readonly string[], world: World): Promise<ExitCode> => {
  const string = { type: 'string' } as const;
  const boolean = { type: 'boolean' } as const;
  const { words: given, given: flags } = parse(
    argv,
    help,
    {
      kitchen: string,
      surprise: string,
      seed: string,
      pace: string,
      auto: boolean,
      headless: boolean,
      json: boolean,
    },
    world,
  );
  const [recipe = exampleRecipe, extra] = given;
  if (extra !== undefined)
    return fail(world, 2, message('command.too-many', { found: extra, command: 'rehearse' }));
  const options = readRehearseOptions(flags, machineClock.wall() % 100_000);
  if ('id' in options) return fail(world, 2, options);
  const loaded = await load(recipe, text(flags.kitchen), world);
  if (typeof loaded === 'number') return loaded;
  return options.headless ? headless(loaded, options, world) : byLines(loaded, options, world);
};
