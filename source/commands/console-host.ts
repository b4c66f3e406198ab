import { headline } from '../cook/candy.js';
import { answerFirstRun, firstRunProblem, firstRunQuestions } from '../kitchen/ask.js';
import { dropFirstFrame, paintFirstFrame } from '../screen/first-frame.js';
import type { Terminal } from '../screen/options.js';
import { type Message, message, type TextId, words } from '../texts/message.js';
import { type ConsoleHostOptions, exitCodes } from './console-settings.js';
import type { Host, Left } from './host.js';
import { plainIn } from './io.js';

/** Work that takes longer is waited for in sight, milliseconds: as long as the terminal itself waits. */
const patienceMilliseconds = 300;

const isDoneSoon = async (work: Promise<unknown>): Promise<boolean> => {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<false>((resolve) => {
    timer = setTimeout(() => resolve(false), patienceMilliseconds);
  });
  const done = work.then(
    () => true,
    () => true,
  );
  try {
    return await Promise.race([done, late]);
  } finally {
    clearTimeout(timer);
  }
};

/** A cook led full screen. The terminal library is loaded when it is needed: only for a real terminal. */
export const consoleHost = ({ quiet, terminal: settings, language }: ConsoleHostOptions): Host => {
  let opened: Terminal | null = null;
  const terminal = async (): Promise<Terminal> => {
    if (opened !== null) return opened;
    try {
      const { openTerminal } = await import('../screen/console.js');
      opened ??= openTerminal(settings);
      return opened;
    } catch (error) {
      dropFirstFrame();
      throw error;
    }
  };
  const printer = plainIn({ language });
  const choose = async (
    say: Message,
    choices: readonly { key: string; word: string; text: Message }[],
  ): Promise<string | Left> => {
    const chosen = await (await terminal()).choose({ say, why: message('line.deferring'), choices, printer });
    return 'exit' in chosen ? { left: exitCodes[chosen.exit] } : chosen.word;
  };
  const tell = async (said: Message): Promise<Left | null> => {
    const chosen = await choose(said, [{ key: 'c', word: 'on', text: message('choice.continue') }]);
    return typeof chosen === 'string' ? null : chosen;
  };
  return {
    tell,
    waitFor: async (work) => {
      if (opened === null && (await isDoneSoon(work))) return work;
      return (await terminal()).wait({ say: message('wait.disk'), printer }, work);
    },
    goOn: async (cook, seconds, others) => {
      const phase = words({ id: `phase.${headline(cook)}` as TextId }, printer);
      const chosen = await choose(
        message('choice.unfinished', { recipe: cook.batch.recipe.name, seconds, phase }),
        [
          { key: 'g', word: 'go on', text: message('choice.go-on') },
          {
            key: 'n',
            word: 'new',
            text: others > 0 ? message('choice.next', { others }) : message('choice.new'),
          },
        ],
      );
      return typeof chosen === 'string' ? chosen === 'go on' : chosen;
    },
    beginAnother: async (why) => {
      const chosen = await choose(why, [
        { key: 'l', word: 'leave', text: message('choice.leave') },
        { key: 'n', word: 'new', text: message('choice.new') },
      ]);
      if (typeof chosen !== 'string') return chosen;
      return chosen === 'new' ? null : { left: 1 };
    },
    askKitchen: async () => {
      const asked = await (await terminal()).ask({
        questions: firstRunQuestions,
        problem: firstRunProblem,
        printer,
      });
      return 'exit' in asked ? { left: exitCodes[asked.exit] } : answerFirstRun(asked.answers);
    },
    lead: async ({ session, notes }, feed) => {
      for (const note of notes) {
        const left = await tell(note);
        if (left !== null) return left.left;
      }
      const onHappening = (listener: () => void) => {
        const stops = [session.onGap(listener), feed?.onChange(listener)];
        return () => {
          for (const stop of stops) stop?.();
        };
      };
      const notices = () => feed?.notices() ?? [];
      const cook = { session, language, quiet, notices, onHappening };
      if (opened === null) paintFirstFrame({ ...settings, ...cook });
      return exitCodes[await (await terminal()).cook(cook)];
    },
    close: async () => opened?.close(),
  };
};
