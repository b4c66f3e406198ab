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

/** An option that the command does not have. */
export class UnknownOption extends Error {
  constructor(
    readonly found: string,
    readonly names: readonly string[],
  ) {
    super(found);
  }
}

const kebab = (name: string): string => name.replaceAll(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);

/** As it is typed: what is on unless it is turned off is typed with "no". */
const typedAs = (name: string, flag?: Flag): string =>
  `--${flag?.type === 'boolean' && flag.default === true ? 'no-' : ''}${kebab(name)}`;

/** As this person typed the option that the parser calls `name`. */
const asTyped = (argv: readonly string[], name: string): string =>
  argv
    .map((one) => one.split('=', 1)[0] ?? '')
    .find((one) => one.startsWith('-') && one.replace(/^-+(no-)?/, '') === kebab(name)) ?? typedAs(name);

/**
 * The words and options of one command. `--help` prints `help` and ends with 0. Throws UnknownOption.
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
  });
  const unknown = Object.keys(cli.flags).find((name) => !Object.hasOwn(flags, name));
  if (unknown !== undefined) {
    const names = Object.entries(flags).map(([name, flag]) => typedAs(name, flag));
    throw new UnknownOption(asTyped(argv, unknown), names);
  }
  return { words: cli.input, given: cli.flags as Record<string, unknown> };
};

export const text = (value: unknown): string | undefined => {
  const last = Array.isArray(value) ? value.at(-1) : value;
  return typeof last === 'string' ? last : undefined;
};
export const texts = (value: unknown): readonly string[] =>
  Array.isArray(value) ? value.filter((one): one is string => typeof one === 'string') : [];
export const flag = (value: unknown): boolean => value === true;
