import type { ConsoleExit } from '../screen/options.js';
import type { Language } from '../units/language.js';
import type { World } from './world.js';

export type ConsoleHostOptions = {
  readonly quiet: boolean;
  readonly color: boolean | undefined;
  readonly language?: Language | undefined;
};

/** Documented exit codes: 128 and the signal's number where a signal ended it. */
export const exitCodes: Readonly<Record<ConsoleExit, number>> = {
  left: 0,
  interrupted: 130,
  'hung up': 129,
  terminated: 143,
  'no reader': 0,
};

/** False where colour was turned off; must be asked before the terminal library is loaded, which reads its environment once. */
export const colorWanted = (
  given: Readonly<Record<string, unknown>>,
  { env }: Pick<World, 'env'>,
): false | undefined => {
  const off = given.color === false || (env.NO_COLOR ?? '') !== '';
  if (off) process.env.FORCE_COLOR = '0';
  return off ? false : undefined;
};
