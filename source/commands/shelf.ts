import { nearest } from '../recipe/items.js';
import { type ParsedRecipe, parseRecipe } from '../recipe/parse.js';
import { type Message, message } from '../texts/message.js';
import type { NamedText } from './io.js';

/** The places where recipes are found by name: the person's own before those that came with the program. */
export type ShelfIo = {
  /** Names of the files in a folder; null if it is not there. */
  listFolder(path: string): Promise<readonly string[] | null>;
  readFile(path: string): Promise<{ readonly text: string } | { readonly problem: Message }>;
  /** `name` within `folder`, as the system writes paths; null where the name could lead out of it. */
  inside(folder: string, name: string): string | null;
  readonly folders: readonly string[];
};

export type ShelfRecipe = {
  readonly id: string;
  readonly file: string;
  readonly parsed: ParsedRecipe | { readonly problem: Message };
};

const ending = /\.ya?ml$/;
const isPath = (typed: string): boolean => /[/\\]/.test(typed) || ending.test(typed);

const namesOf = async (io: ShelfIo): Promise<ReadonlyMap<string, string>> => {
  const found = new Map<string, string>();
  for (const folder of io.folders) {
    for (const file of (await io.listFolder(folder)) ?? []) {
      const id = file.replace(ending, '');
      const path = ending.test(file) ? io.inside(folder, file) : null;
      if (path !== null && !found.has(id)) found.set(id, path);
    }
  }
  return new Map([...found].toSorted(([one], [other]) => one.localeCompare(other, 'en')));
};

/** A name and every run of its words: "ginger-pull" is near to "hill-hall-ginger-pull". */
const runsOf = (name: string): readonly string[] => {
  const parts = name.split('-');
  return parts.flatMap((_, from) =>
    parts.slice(from).map((__, to) => parts.slice(from, from + to + 1).join('-')),
  );
};

const nearestName = (typed: string, names: readonly string[]): string | null => {
  const byRun = new Map(names.flatMap((name) => runsOf(name).map((run) => [run, name] as const)));
  const run = nearest(typed, [...names, ...byRun.keys()]);
  return run === null ? null : names.includes(run) ? run : (byRun.get(run) ?? null);
};

/** Every recipe by name, with what is wrong with it where it can't be read. */
export const shelf = async (io: ShelfIo): Promise<readonly ShelfRecipe[]> => {
  const names = await namesOf(io);
  return Promise.all(
    [...names].map(async ([id, file]) => {
      const read = await io.readFile(file);
      return { id, file, parsed: 'problem' in read ? read : parseRecipe(read.text, file) };
    }),
  );
};

/**
 * The text of a recipe that a person named: a path (with a slash, or ending in .yaml) or a name on the shelf. A name
 * that is not there is wrong use, and the nearest is offered.
 */
export const findRecipe = async (typed: string, io: ShelfIo): Promise<NamedText> => {
  const names = isPath(typed) ? new Map<string, string>() : await namesOf(io);
  const path = isPath(typed) ? typed : names.get(typed.trim().toLowerCase());
  if (path === undefined) {
    const near = nearestName(typed, [...names.keys()]);
    return {
      problem: message('shelf.unknown-recipe', { found: typed.slice(0, 60), nearest: near }),
      wrongUse: true,
    };
  }
  const read = await io.readFile(path);
  return 'problem' in read ? { problem: read.problem, wrongUse: false } : { text: read.text, name: path };
};
