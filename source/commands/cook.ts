import { join } from 'node:path';
import { headline } from '../cook/candy.js';
import type { Cook } from '../cook/cook.js';
import { dataFolder, makeFolder } from '../files/folder.js';
import { writeWhole } from '../files/write.js';
import { journalPath, newCookId, unfinishedCook } from '../journal/list.js';
import { answerFirstRun, type FirstRunAnswers, firstRunProblem, firstRunQuestions } from '../kitchen/ask.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import { kitchenToYaml } from '../kitchen/write.js';
import { LineMode } from '../screen/line-mode.js';
import { wrapped } from '../screen/lines.js';
import { linesOf } from '../session/lines-in.js';
import { machineClock } from '../session/machine.js';
import { cookOf, type Started, startKept } from '../session/start.js';
import { type Message, message, type TextId, words } from '../texts/message.js';
import { printerOf } from './cook-printer.js';
import { type ExitCode, fail, plainPrinter } from './io.js';
import { exampleRecipe, kitchenPath, load } from './named.js';
import { flag, parse, text } from './options.js';
import type { World } from './world.js';

const help = `
  Examples
    $ kettlehand cook                     the bundled example
    $ kettlehand cook mint-pull           another recipe, by name
    $ kettlehand cook ./mine.yaml         your own, by path
    $ kettlehand cook mint-pull --plain   line by line: any terminal, a pipe, a screen reader

  Leads a cook from the cold pot to wrapped pieces. Every answer is saved at once; leave by any means,
  start again, and it goes on where it stood.

  Options
    --kitchen FILE   where it is cooked (default: the saved kitchen)
    --plain          lines instead of the full screen
    --new            do not offer the unfinished cook

  The person in charge, local rules for kitchens and children, food law and trained first aid come
  before anything this program says.
`;

/** Width of the terminal that is written to; null: a file or a pipe, where lines stay whole. */
const columnsOf = ({ stdout }: World): number | null => (stdout.isTTY ? (stdout.columns ?? 80) : null);

/** Lines from the person, asked for one at a time. */
class Asker {
  readonly #lines: AsyncGenerator<string>;

  constructor(
    private readonly world: World,
    readonly prompts: boolean,
  ) {
    this.#lines = linesOf(world.stdin);
  }

  get lines(): AsyncGenerator<string> {
    return this.#lines;
  }

  say(said: Message): void {
    const line = words(said, plainPrinter);
    const columns = columnsOf(this.world);
    this.world.out(`${columns === null ? line : wrapped(line, columns)}\n`);
  }

  /** What was typed; empty at the end of the input. */
  async answer(): Promise<string> {
    if (this.prompts) this.world.out('> ');
    const { value, done } = await this.#lines.next();
    return done ? '' : value.trim();
  }
}

const isOver = (entries: Parameters<typeof cookOf>[0]): boolean => {
  const cook = cookOf(entries);
  return cook === null || headline(cook) === 'over';
};

/** At most three questions, each with a default; asked only of a person. */
const askKitchen = async (asker: Asker, world: World): Promise<Kitchen> => {
  const answers: Record<string, string> = {};
    asker.say(message('line.deferring'));
  asker.say(message('line.ask-default'));
  for (const question of firstRunQuestions) {
    asker.say(question.ask);
    asker.say(question.why);
    asker.say(question.skip);
    let typed = await asker.answer();
    for (let tries = 0; tries < 3; tries += 1) {
      const problem = firstRunProblem(question.id, typed);
      if (problem === null) break;
      asker.say(problem);
      typed = await asker.answer();
    }
    answers[question.id] = typed;
  }
  const kitchen = answerFirstRun(answers as FirstRunAnswers);
  const path = kitchenPath(world);
  const made = await makeFolder(join(path, '..'));
  const saved = made === 'made' ? await writeWhole(path, kitchenToYaml(kitchen)) : made;
  if (saved !== 'saved') asker.say(saved.problem);
  return kitchen;
};

const goOn = async (asker: Asker, cook: Cook, seconds: number): Promise<boolean> => {
  const phase = words({ id: `phase.${headline(cook)}` as TextId }, plainPrinter);
  asker.say(message('line.unfinished', { recipe: cook.batch.recipe.name, seconds, phase }));
  return !/^n/i.test(await asker.answer());
};

/** The unfinished cook, if there is one and it is wanted. */
const resume = async (asker: Asker, folder: string): Promise<Started | null> => {
  const unfinished = await unfinishedCook(folder, { isOver });
  if (unfinished === null) return null;
  const started = await startKept(unfinished.path, null, machineClock);
  if ('problem' in started) {
    asker.say(started.problem);
    return null;
  }
  if (await goOn(asker, started.session.cook, started.resumedAfter?.seconds ?? 0)) return started;
  await started.session.close();
  return null;
};

/** A gap in which anything may have happened to the pot, seconds. Our judgement. */
const longGapSeconds = 120;

const lead = async (started: Started, asker: Asker, world: World): Promise<ExitCode> => {
  const { session, notes, resumedAfter } = started;
  const { recipe } = session.cook.batch;
  for (const note of notes) asker.say(note);
  asker.say(
    resumedAfter === null
      ? message('line.opened', { recipe: recipe.name })
      : message('line.resumed', { recipe: recipe.name }),
  );
  if (resumedAfter === null) asker.say(message('line.deferring'));
  else if (resumedAfter.seconds > longGapSeconds) asker.say(message('line.gap', resumedAfter));
  const { problem } = session.saving;
  if (problem !== null) asker.say(problem);
  const mode = new LineMode({
    session,
    printerNow: () => printerOf(session.cook),
    lines: asker.lines,
        write: world.out,
    columns: () => columnsOf(world),
    prompts: asker.prompts,
  });
  await mode.run();
  await session.close();
  if (headline(session.cook) !== 'over') asker.say(message('line.left'));
  return 0;
};

export const run = async (argv: readonly string[], world: World): Promise<ExitCode> => {
  const { words: given, given: options } = parse(
    argv,
    help,
    { kitchen: { type: 'string' }, plain: { type: 'boolean' }, new: { type: 'boolean' } },
    world,
  );
  const [recipeName, extra] = given;
  if (extra !== undefined)
    return fail(world, 2, message('command.too-many', { found: extra, command: 'cook' }));
  const typesHere = world.stdin.isTTY === true;
  if (!typesHere && !flag(options.plain))
    return fail(world, 2, message('command.no-terminal', { command: 'cook' }));
  const folder = join(dataFolder(world.env), 'cooks');
  await makeFolder(folder);
  const asker = new Asker(world, typesHere);
  if (!flag(options.new)) {
    const resumed = await resume(asker, folder);
    if (resumed !== null) return lead(resumed, asker, world);
  }
  const loaded = await load(recipeName ?? exampleRecipe, text(options.kitchen), world);
  if (typeof loaded === 'number') return loaded;
  const kitchen = loaded.firstRun && typesHere ? await askKitchen(asker, world) : loaded.kitchen;
  const path = journalPath(folder, newCookId(new Date(machineClock.wall())));
  if (path === null) return fail(world, 1, message('command.failed', { what: folder }));
  const opening = {
    recipe: loaded.recipe,
    kitchen,
    runSheet: null,
    seed: null,
    version: world.version,
    from: null,
  };
  const started = await startKept(path, opening, machineClock);
  if ('problem' in started) return fail(world, 1, started.problem);
  return lead(started, asker, world);
};
