import type { en } from '../../../source/texts/en.js';
import type { FileTrouble } from '../../../source/texts/file-trouble.js';
import type { Printer } from '../../../source/units/printer.js';

type English = typeof en;
type Inputs<Text> = Text extends (values: infer Values, printer: Printer) => string ? Values : never;

/** For every sentence made of values: what each of its values can be, or whole sets of them where they go together. */
export type Alternatives = {
  readonly [Id in keyof English as English[Id] extends string ? never : Id]: Inputs<
    English[Id]
  > extends undefined
    ? readonly [undefined]
    :
        | { readonly [Key in keyof Inputs<English[Id]>]-?: readonly Inputs<English[Id]>[Key][] }
        | readonly Inputs<English[Id]>[];
};

type Fields = Readonly<Record<string, readonly unknown[]>>;

const isWhole = (given: unknown): given is readonly unknown[] => Array.isArray(given);

const most = 1000;

/** Every combination; where they are too many, the first of each, varied in two places at a time. */
export const combinations = (given: Fields | readonly unknown[]): readonly unknown[] => {
  if (isWhole(given)) return given;
  const fields = Object.entries(given);
  const times = (from: readonly object[], [key, ways]: readonly [string, readonly unknown[]]) =>
    from.flatMap((one) => ways.map((value) => ({ ...one, [key]: value })));
  if (fields.reduce((product, [, ways]) => product * ways.length, 1) <= most)
    return fields.reduce<readonly object[]>(times, [{}]);
  const first = Object.fromEntries(fields.map(([key, ways]) => [key, ways[0]]));
  return fields.flatMap((one, at) =>
    fields.slice(at + 1).flatMap((other) => [one, other].reduce<readonly object[]>(times, [first])),
  );
};

/** What somebody may have typed or named: nothing in it may reach a terminal as it stands. */
export const typed = ['12 parsec', 'x\u001bc\u0007 "y"', 'mint pull '.repeat(8)];
export const paths = ['/home/cook/mint.yaml', '/tmp/\u001bc\u0007'];
export const names = ['hill-hall-ginger-pull', 'x\u001bc\u0007'];
export const ids = ['2026-11-28-1500-mint-pull', 'x\u001bc\u0007'];
export const texts = ['room got crowded', 'x\u001bc\u0007'];
export const several = [['milk'], ['milk', 'x\u001bc\u0007', 'nuts']];
export const severalOrNone = [[], ...several];

const whyNot: Readonly<Record<FileTrouble, true>> = {
  full: true,
  quota: true,
  readOnly: true,
  notAllowed: true,
  missing: true,
  device: true,
  link: true,
  notAFile: true,
  gone: true,
  replaced: true,
  taken: true,
  slow: true,
  other: true,
};
/** Every reason why a file is not read or written. */
export const fileTroubles = Object.keys(whyNot) as FileTrouble[];

/** Why a reading is doubted; the last is a reason that a newer program may have. */
export const doubtReasons = [
  'out of range',
  'jump',
  'fall',
  'too cold to boil',
  'too hot so soon',
  'colder than the room',
  'other scale',
  'something new',
];
