import { readFileSync } from 'node:fs';
import { languageAtOnce } from './commands/language-at-once.js';
import type { World } from './commands/world.js';
import { sayOpening, takeOpeningAway } from './screen/opening.js';
import { escapeForTerminal } from './units/escape.js';

type Command = { readonly run: (argv: readonly string[], world: World) => Promise<number> };

/** One file a command, loaded when it is called for. */
const commands: Readonly<Record<string, () => Promise<Command>>> = {
  cook: () => import('./commands/cook.js'),
  plan: () => import('./commands/plan-command.js'),
  rehearse: () => import('./commands/rehearse.js'),
  follow: () => import('./commands/follow.js'),
  watch: () => import('./commands/watch.js'),
  debrief: () => import('./commands/debrief-command.js'),
  cooks: () => import('./commands/cooks-command.js'),
  handout: () => import('./commands/handout-command.js'),
  labels: () => import('./commands/labels-command.js'),
  recipes: () => import('./commands/recipes-command.js'),
  kitchen: () => import('./commands/kitchen-command.js'),
  syrup: () => import('./commands/syrup-command.js'),
};

const versionOf = (): string => {
  const manifest = JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8')) as {
    version: string;
  };
  return manifest.version;
};

const write =
  (stream: NodeJS.WriteStream) =>
  (text: string): void => {
    takeOpeningAway();
    stream.write(text);
  };

const helps = ['--help', '-h'];

/** Options with which a cook does not take the whole screen, or is not begun at all. */
const inLines = ['--plain', '--screen-reader', ...helps];

const opensScreen = (typed: readonly string[], { env, stdin, stdout }: World): boolean =>
  typed[0] === 'cook' &&
  !typed.some((word) => inLines.includes(word)) &&
  stdin.isTTY === true &&
  stdout.isTTY === true &&
  env.TERM !== 'dumb' &&
  env.INK_SCREEN_READER !== 'true';

const printHelp = async (page: string, { language, out }: World): Promise<number> => {
  const { helpOf } = await import('./texts/help.js');
  out(helpOf(page, language ?? 'en'));
  return 0;
};

const main = async (typed: readonly string[]): Promise<number> => {
  const plain: World = {
    out: write(process.stdout),
    err: write(process.stderr),
    env: process.env,
    stdin: process.stdin,
    stdout: process.stdout,
    version: versionOf(),
  };
  if (typed[0] === '--version' || typed[0] === '-v') {
    plain.out(`${plain.version}\n`);
    return 0;
  }
  if (opensScreen(typed, plain)) sayOpening(process.stdout, languageAtOnce(typed, plain.env));
  const [{ spoken }, { bring }] = await Promise.all([
    import('./commands/language.js'),
    import('./texts/languages.js'),
  ]);
  const read = await spoken(typed, plain);
  if ('problem' in read) {
    const { fail } = await import('./commands/io.js');
    return fail(plain, 2, read.problem);
  }
  await bring(read.language);
  const world: World = { ...plain, language: read.language };
  const [first, ...rest] = read.argv;
  if (first === undefined || first === 'help' || helps.includes(first)) return printHelp('program', world);
  const load = Object.hasOwn(commands, first) ? commands[first] : undefined;
  if (load === undefined) {
    const { unknownCommand } = await import('./commands/unknown.js');
    return unknownCommand(first, Object.keys(commands), world);
  }
  if (rest.some((word) => helps.includes(word))) return printHelp(first, world);
  const { run } = await load();
  try {
    return await run(rest, world);
  } catch (error) {
    const { unknownOption } = await import('./commands/unknown.js');
    const code = unknownOption(error, first, world);
    if (code === null) throw error;
    return code;
  }
};

const ended = (error: unknown): never => {
  takeOpeningAway();
  process.stderr.write(
    `That failed: ${escapeForTerminal(error instanceof Error ? error.message : String(error))}. Nothing that was saved is lost.\n`,
  );
  process.exit(1);
};

// A reader that went away (a pipe into head) is no fault of the cook; a terminal that did is the console's to notice.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(0);
  if (!process.stdout.isTTY) ended(error);
});

main(process.argv.slice(2)).then((code) => {
  process.exitCode = code;
}, ended);
