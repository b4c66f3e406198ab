import { headline } from '../cook/candy.js';
import { answerFirstRun, type FirstRunAnswers, firstRunProblem, firstRunQuestions } from '../kitchen/ask.js';
import { LineMode } from '../screen/line-mode.js';
import { wrapped } from '../screen/lines.js';
import { linesOf } from '../session/lines-in.js';
import { type Message, message, type TextId, words } from '../texts/message.js';
import { printerOf } from './cook-printer.js';
import type { Host } from './host.js';
import { plainIn } from './io.js';
import type { World } from './world.js';

/** Width of the terminal that is written to; null: a file or a pipe, where lines stay whole. */
const columnsOf = ({ stdout }: World): number | null => (stdout.isTTY ? (stdout.columns ?? 80) : null);

/** A question is asked again this often; then its default is taken. */
const tries = 3;

/** A cook led line by line: any terminal, a pipe, a screen reader. */
export const lineHost = (world: World): Host => {
  const prompts = world.stdin.isTTY === true;
  const lines = linesOf(world.stdin);
  const say = (said: Message): void => {
    const line = words(said, plainIn(world));
    const columns = columnsOf(world);
    world.out(`${columns === null ? line : wrapped(line, columns)}\n`);
  };
  /** What was typed; empty at the end of the input. */
  const answer = async (): Promise<string> => {
    if (prompts) world.out('> ');
    const { value, done } = await lines.next();
    return done ? '' : value.trim();
  };
  return {
    tell: async (said) => {
      say(said);
      return null;
    },
    waitFor: (work) => work,
    goOn: async (cook, seconds, others) => {
      const phase = words({ id: `phase.${headline(cook)}` as TextId }, plainIn(world));
      say(message('line.unfinished', { recipe: cook.batch.recipe.name, seconds, phase }));
      if (others > 0) say(message('line.others', { others }));
      return !/^n/i.test(await answer());
    },
    beginAnother: async (why) => {
      say(why);
      say(message('line.begin-another'));
      return /^[yj]/i.test(await answer()) ? null : { left: 1 };
    },
    askKitchen: async () => {
      if (!prompts) return null;
      const answers: Record<string, string> = {};
      say(message('line.deferring'));
      say(message('line.ask-default'));
      for (const { id, ask, why, skip } of firstRunQuestions) {
        for (const said of [ask, why, skip]) say(said);
        answers[id] = await answer();
        for (let again = 1; again < tries; again += 1) {
          const problem = firstRunProblem(id, answers[id] ?? '');
          if (problem === null) break;
          say(problem);
          answers[id] = await answer();
        }
      }
      return answerFirstRun(answers as FirstRunAnswers);
    },
    lead: async ({ session, notes, resumedAfter }, feed) => {
      const { name } = session.cook.batch.recipe;
      for (const note of notes) say(note);
      say(
        resumedAfter === null
          ? message('line.opened', { recipe: name })
          : message('line.resumed', { recipe: name }),
      );
      if (resumedAfter === null) say(message('line.deferring'));
      const { problem } = session.saving;
      if (problem !== null) say(problem);
      const mode = new LineMode({
        session,
        printerNow: () => printerOf(session.cook, world),
        lines,
        write: world.out,
        columns: () => columnsOf(world),
        prompts,
        ...(feed === null ? {} : { onFeed: (listener) => feed.onChange(listener) }),
      });
      await mode.run();
      if (headline(session.cook) !== 'over') say(message('line.left'));
      return 0;
    },
    close: async () => undefined,
  };
};
