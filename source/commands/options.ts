import { type ParseArgsConfig, parseArgs } from 'node:util';

type Flag =
  | { readonly type: 'string'; readonly isMultiple?: true }
  | { readonly type: 'boolean'; readonly default?: boolean };
type Flags = Readonly<Record<string, Flag>>;

/** The two plain kinds of option. */
export const string = { type: 'string' } as const;
export const boolean = { type: 'boolean' } as const;

export type Parsed = {
  readonly words: readonly string[];
  /** By option name in camelCase; undefined where it was not given, a list where it may be given more than once. */
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

/** What is on unless it is turned off is typed with "no". */
const typedAs = (name: string, flag: Flag): string =>
  `${flag.type === 'boolean' && flag.default === true ? 'no-' : ''}${kebab(name)}`;

/** An option that wants a value, with the next option behind it: its value was forgotten, and is not that option. */
const withForgotten = (argv: readonly string[], strings: ReadonlySet<string>): string[] =>
  argv.map((one, place) =>
    strings.has(one) && (argv[place + 1] ?? '--').startsWith('--') ? `${one}=` : one,
  );

/** The words and options of one command. Throws UnknownOption. */
export const parse = (argv: readonly string[], flags: Flags): Parsed => {
  const known = new Map(Object.entries(flags).map(([name, flag]) => [typedAs(name, flag), { name, flag }]));
  const strings = new Set(
    [...known].filter(([, { flag }]) => flag.type === 'string').map(([typed]) => `--${typed}`),
  );
  const args = withForgotten(argv, strings);
  const options: ParseArgsConfig['options'] = Object.fromEntries(
    [...known].map(([typed, { flag }]) => [typed, { type: flag.type, multiple: true }]),
  );
  const { tokens } = parseArgs({ args, options, strict: false, allowPositionals: true, tokens: true });
  const words: string[] = [];
  const given: Record<string, unknown> = {};
  let numberAt = -1;
  for (const token of tokens) {
    if (token.kind === 'positional') words.push(token.value);
    if (token.kind !== 'option') continue;
    const asTyped = args[token.index] ?? '';
    const found = known.get(token.name);
    if (found !== undefined) {
      const { name, flag } = found;
      if (flag.type === 'boolean') given[name] = (token.value !== 'false') !== (flag.default === true);
      else if (flag.isMultiple) given[name] = [...texts(given[name]), token.value ?? ''];
      else given[name] = token.value ?? '';
    } else if (/^-\d/.test(asTyped)) {
      // A number below zero, which comes letter by letter as options would.
      if (token.index !== numberAt) words.push(asTyped);
      numberAt = token.index;
    } else
      throw new UnknownOption(
        token.rawName,
        [...known.keys()].map((typed) => `--${typed}`),
      );
  }
  return { words, given };
};

export const text = (value: unknown): string | undefined => (typeof value === 'string' ? value : undefined);
export const texts = (value: unknown): readonly string[] =>
  Array.isArray(value) ? value.filter((one): one is string => typeof one === 'string') : [];
export const flag = (value: unknown): boolean => value === true;
