import meow from 'meow';
import type { World } from './world.js';

type Flag =
  | { readonly type: 'string'; readonly isMultiple?: true }
  | { readonly type: 'boolean'; readonly default?: boolean };

export type Parsed = {
  readonly words: readonly string[];
  /** By option name in camelCase; undefined where it was not given. */
  readonly given: Readonly<Record<string, unknown>>;
};

/**
 * The words and options of one command. `--help` prints `help` and ends with 0; an unknown option is said on standard
 * error and ends with 2.
 */
export const parse = (
  argv: readonly string[],
  help: string,
  flags: Readonly<Record<string, Flag>>,
  world: Pick<World, 'version'>,
): Parsed => {
  const cli = meow(help, {
    importMeta: import.meta,
    pkg: { name: 'kettlehand', version: world.version },
    argv: [...argv],
    description: false,
    flags: flags as Record<string, { type: 'string' } | { type: 'boolean' }>,
    allowUnknownFlags: false,
  });
  return { words: cli.input, given: cli.flags as Record<string, unknown> };
};

export const text = (value: unknown): string | undefined => {
  const last = Array.isArray(value) ? value.at(-1) : value;
  return typeof last === 'string' ? last : undefined;
};
export const texts = (value: unknown): readonly string[] =>
  Array.isArray(value) ? value.filter((one): one is string => typeof one === 'string') : [];
export const flag = (value: unknown): boolean => value === true;
