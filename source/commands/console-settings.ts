import type { ConsoleExit, TerminalOptions } from '../screen/options.js';
import { wantsColor } from '../screen/style.js';
import { type Message, message } from '../texts/message.js';
import type { Language } from '../units/language.js';
import { boolean, flag, string, text } from './options.js';
import type { World } from './world.js';

export type ConsoleHostOptions = {
  readonly quiet: boolean;
  readonly terminal: TerminalOptions;
  readonly language?: Language | undefined;
};

/** How a terminal is to be written to: the options that every full screen has. */
export const terminalFlags = {
  color: { type: 'boolean', default: true },
  background: string,
  ascii: boolean,
  still: boolean,
  screenReader: boolean,
} as const;

/** Documented exit codes: 128 and the signal's number where a signal ended it. */
export const exitCodes: Readonly<Record<ConsoleExit, number>> = {
  left: 0,
  interrupted: 130,
  'hung up': 129,
  terminated: 143,
  'no reader': 0,
};

const backgrounds = ['dark', 'light'] as const;

/**
 * What was asked for by options and environment, or the sentence about what is none. Must be asked before the terminal
 * library is loaded, which reads its environment once.
 */
export const terminalSettings = (
  given: Readonly<Record<string, unknown>>,
  { env }: Pick<World, 'env'>,
): TerminalOptions | Message => {
  const asked = text(given.background);
  const background = backgrounds.find((one) => one === asked);
  if (asked !== undefined && background === undefined)
    return message('command.no-background', { found: asked, names: backgrounds });
  const plain = given.color === false || !wantsColor(env);
  if (plain) process.env.FORCE_COLOR = '0';
  return {
    ...(plain ? { color: false } : {}),
    ...(background === undefined ? {} : { background }),
    ...(flag(given.ascii) ? { ascii: true } : {}),
    still: flag(given.still),
    ...(flag(given.screenReader) ? { spoken: true } : {}),
  };
};
