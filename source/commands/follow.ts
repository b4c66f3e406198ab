import type { Advice } from '../cook/advice.js';
import { type PhaseId, phaseIds } from '../recipe/recipe.js';
import { linesBetween } from '../screen/lines.js';
import { linesOf } from '../session/lines-in.js';
import { machineClock } from '../session/machine.js';
import type { Outcome, Session } from '../session/session.js';
import { startKept, startUnkept } from '../session/start.js';
import { adviceJson, type Questioned, questionedBy, questionedReading } from '../sheets/advice-json.js';
import { message, words } from '../texts/message.js';
import { jsonText } from '../units/escape.js';
import { printerOf } from './cook-printer.js';
import { type ExitCode, fail } from './io.js';
import { load, recipeNames } from './named.js';
import { boolean, flag, parse, string, text } from './options.js';
import type { World } from './world.js';

type FedLine = { readonly t: number | null; readonly typed: string | null };

/** One line of the feed; null when it should be JSON and is not what it should be. */
const readFed = (line: string): FedLine | null => {
  if (!line.trimStart().startsWith('{')) return { t: null, typed: line };
  try {
    const { t, typed } = JSON.parse(line) as { t?: unknown; typed?: unknown };
    if (typeof t !== 'number' || !Number.isFinite(t) || t < 0) return null;
    if (typed !== undefined && typeof typed !== 'string') return null;
    return { t, typed: typed ?? null };
  } catch {
    return null;
  }
};

/** The feed's own clock: the first kind of line decides for all of them. */
class Feed {
  #kind: 'plain' | 'recorded' | null = null;
  #latest = 0;

  constructor(private readonly session: Session) {
    this.#latest = session.cook.t;
  }

  async take(line: string): Promise<{ advice: Advice; questioned: Questioned }> {
    const fed = readFed(line);
    const kind = fed?.t === null ? 'plain' : 'recorded';
    if (this.#kind === null) {
      this.#kind = kind;
      // A recorded cook has a time of its own; what is typed now has this machine's.
      if (kind === 'plain') await this.session.attend();
    }
    if (fed === null || kind !== this.#kind) return this.#refuse(line, message('typed.feed-line'));
    const t = fed.t ?? Math.max(this.#latest, this.session.now());
    if (t < this.#latest)
      return this.#refuse(fed.typed ?? line, message('typed.time', { t, before: this.#latest }));
    this.#latest = t;
    if (fed.typed === null) return { advice: this.session.advice(t), questioned: null };
    return this.#outcome(fed.typed, await this.session.type(fed.typed, t));
  }

  #outcome(typed: string, outcome: Outcome): { advice: Advice; questioned: Questioned } {
    if (outcome.kind === 'queried')
      return { advice: outcome.advice, questioned: questionedBy(outcome.queried) };
    return {
      advice: outcome.advice,
      questioned: outcome.doubt === null ? null : questionedReading(typed, outcome.doubt),
    };
  }

  #refuse(
    typed: string,
    because: NonNullable<Questioned>['because'],
  ): { advice: Advice; questioned: Questioned } {
    const now = this.#kind === 'recorded' ? this.#latest : Math.max(this.#latest, this.session.now());
    return { advice: this.session.advice(now), questioned: { typed, because, kept: false } };
  }
}

const isPhase = (given: string): given is PhaseId => (phaseIds as readonly string[]).includes(given);

const open = async (
  recipeName: string,
  given: Readonly<Record<string, unknown>>,
  world: World,
): Promise<Session | ExitCode> => {
  const from = text(given.from) ?? null;
  if (from !== null && !isPhase(from)) {
    return fail(world, 2, message('command.unknown-phase', { found: from, names: phaseIds }));
  }
  const loaded = await load(recipeName, text(given.kitchen), world);
  if (typeof loaded === 'number') return loaded;
  const opening = {
    recipe: loaded.recipe,
    kitchen: loaded.kitchen,
    runSheet: null,
    seed: null,
    version: world.version,
    from,
  };
  const path = text(given.journal);
  if (path === undefined) return startUnkept(opening, machineClock);
  const started = await startKept(path, opening, machineClock);
  if ('problem' in started) return fail(world, 1, started.problem);
  for (const note of started.notes) world.err(`${words(note, printerOf(started.session.cook, world))}\n`);
  return started.session;
};

/** Write and wait until the reader has taken it: a line is never half out when the next is worked on. */
const flushed = (world: World, line: string): Promise<void> =>
  new Promise((resolve) => {
    world.stdout.write(`${line}\n`, () => resolve());
  });

export const run = async (argv: readonly string[], world: World): Promise<ExitCode> => {
  const { words: given, given: options } = parse(argv, {
    kitchen: string,
    from: string,
    journal: string,
    json: boolean,
  });
  const [recipeName, extra] = given;
  if (recipeName === undefined) {
    return fail(
      world,
      2,
      message('command.needs-recipe', { command: 'follow', names: await recipeNames(world) }),
    );
  }
  if (extra !== undefined)
    return fail(world, 2, message('command.too-many', { found: extra, command: 'follow' }));
  const session = await open(recipeName, options, world);
  if (typeof session === 'number') return session;
  const feed = new Feed(session);
  let before: Advice | null = null;
  for await (const line of linesOf(world.stdin)) {
    const { advice, questioned } = await feed.take(line);
    const printer = printerOf(session.cook, world);
    if (flag(options.json)) await flushed(world, jsonText(adviceJson(advice, printer, questioned)));
    else {
      const lines = [
        ...(questioned === null ? [] : [`?  ${words(questioned.because, printer)}`]),
        ...linesBetween(before, advice, printer, { answered: questioned === null }),
      ];
      if (lines.length > 0) await flushed(world, lines.join('\n'));
    }
    before = advice;
  }
  await session.close();
  return 0;
};
