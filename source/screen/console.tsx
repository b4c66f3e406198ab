import type {
  ChoiceOptions,
  ConsoleExit,
  ConsoleOptions,
  QuestionsOptions,
  TerminalOptions,
} from './options.js';
import { openTerminal } from './terminal.js';

export type {
  ChoiceOptions,
  ConsoleExit,
  ConsoleOptions,
  ConsoleSession,
  CookOptions,
  QuestionsOptions,
  Terminal,
  TerminalOptions,
} from './options.js';
export { openTerminal } from './terminal.js';

/**
 * Lead a cook full screen until the person leaves or the terminal ends. Standard input and output must be terminals.
 * Restores the terminal on every way out; saving and closing the session is the caller's. Rejects with an error of
 * the drawing itself, the terminal restored.
 */
export const runConsole = async (options: ConsoleOptions): Promise<ConsoleExit> => {
  const terminal = openTerminal(options);
  try {
    return await terminal.cook(options);
  } finally {
    await terminal.close();
  }
};

/** The questions of a first run alone. For more than one screen in a row use `openTerminal`. */
export const runQuestions = async (options: QuestionsOptions & TerminalOptions) => {
  const terminal = openTerminal(options);
  try {
    return await terminal.ask(options);
  } finally {
    await terminal.close();
  }
};

/** One choice alone. For more than one screen in a row use `openTerminal`. */
export const runChoice = async (options: ChoiceOptions & TerminalOptions) => {
  const terminal = openTerminal(options);
  try {
    return await terminal.choose(options);
  } finally {
    await terminal.close();
  }
};
