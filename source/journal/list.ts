import { randomBytes } from 'node:crypto';
import { readdir } from 'node:fs/promises';
import { isPlainName, pathInside } from '../files/names.js';
import type { Entry } from './line.js';
import { readPart, withJournal } from './read.js';
import { longestLineBytes, recover } from './recover.js';

/** What a journal says about its cook, read from the beginning and the end of the file only. */
export type CookSummary = {
  readonly id: string;
  readonly path: string;
  /** The first event, or null when both its copies are damaged: then nothing else can be computed. */
  readonly opened: Entry | null;
  /** Wall clock of the first and of the last event that could be read, ISO 8601. */
  readonly startedAt: string;
  readonly lastAt: string;
  readonly recipeName: string | null;
  readonly isRehearsal: boolean;
  readonly isOver: boolean;
  /** Something has happened after it was opened. */
  readonly hasBegun: boolean;
};

export type ListOptions = {
  /**
   * Whether these events, in order, are those of a cook that is over. They are all of the cook's, except that of a
   * journal longer than `headBytes + tailBytes` the middle is missing.
   */
  readonly isOver: (entries: readonly Entry[]) => boolean;
  /** At most so many, the newest first. */
  readonly most?: number;
};

export const listBounds = {
  headBytes: 2 * longestLineBytes + 64 * 1024,
  tailBytes: 256 * 1024,
  most: 200,
} as const;

const suffix = '.jsonl';

/** A new cook's id: sorts by time, unique on this machine, a plain file name ("2026-11-25-143502-9f2c"). */
export const newCookId = (startedAt: Date): string => {
  const iso = startedAt.toISOString();
  const [date, time] = [iso.slice(0, 10), iso.slice(11, 19)];
  return `${date}-${time.replaceAll(':', '')}-${randomBytes(2).toString('hex')}`;
};

/** Where the journal of a cook lives, or null when the id could lead out of the folder. */
export const journalPath = (folder: string, id: string): string | null =>
  isPlainName(id) ? pathInside(folder, `${id}${suffix}`) : null;

const field = (value: unknown, name: string): unknown =>
  typeof value === 'object' && value !== null ? Reflect.get(value, name) : undefined;

const recipeNameOf = (opened: Entry | null): string | null => {
  const name = field(field(opened, 'recipe'), 'name');
  return typeof name === 'string' ? name : null;
};

/** The events at the beginning and the end; a line cut by the gap between them is in neither. */
const readEnds = (path: string): Promise<readonly Entry[]> =>
  withJournal(path, async (handle, { bytes }) => {
    const { headBytes, tailBytes } = listBounds;
    if (bytes <= headBytes + tailBytes) return recover(await readPart(handle, 0, bytes)).entries;
    const head = await readPart(handle, 0, headBytes);
    const tail = await readPart(handle, bytes - tailBytes, bytes);
    return [...recover(head).entries, ...recover(tail.subarray(tail.indexOf(0x0a) + 1)).entries];
  });

const summarise = async (id: string, path: string, options: ListOptions): Promise<CookSummary | null> => {
  const entries = await readEnds(path).catch(() => []);
  const [first] = entries;
  const last = entries.at(-1);
  if (first === undefined || last === undefined) return null;
  const opened = first.kind === 'opened' ? first : null;
  return {
    id,
    path,
    opened,
    startedAt: first.at,
    lastAt: last.at,
    recipeName: recipeNameOf(opened),
    isRehearsal: typeof field(opened, 'seed') === 'number',
    isOver: options.isOver(entries),
    hasBegun: entries.length > 1,
  };
};

/** The journals in a folder, newest first. Links, folders and odd names are passed over; no folder, no cooks. */
const journalsIn = async (folder: string): Promise<{ id: string; path: string }[]> => {
  const found = await readdir(folder, { withFileTypes: true }).catch(() => []);
  return found
    .filter((file) => file.isFile() && file.name.endsWith(suffix))
    .map((file) => file.name.slice(0, -suffix.length))
    .sort()
    .reverse()
    .flatMap((id) => {
      const path = journalPath(folder, id);
      return path === null ? [] : [{ id, path }];
    });
};

/** The cooks in the data folder, newest first. Files without a single readable event are passed over. Never rejects. */
export const listCooks = async (folder: string, options: ListOptions): Promise<readonly CookSummary[]> => {
  const journals = (await journalsIn(folder)).slice(0, options.most ?? listBounds.most);
  const cooks: CookSummary[] = [];
  for (const { id, path } of journals) {
    const cook = await summarise(id, path, options);
    if (cook !== null) cooks.push(cook);
  }
  return cooks;
};

/** Beside the last one, a cook left within this is still worth asking for, milliseconds: the day of a demonstration. */
const sameDayMilliseconds = 12 * 3600 * 1000;

/**
 * The cooks that are not over and can be resumed (the first event is there), rehearsals left out: what somebody may
 * mean by going on. First the one that was last at work; of the others those of the last 12 hours, at most two. One in
 * which nothing has happened yet hides none in which something has.
 */
export const unfinishedCooks = async (
  folder: string,
  { now, ...options }: ListOptions & { /** Wall clock, milliseconds. */ readonly now: number },
): Promise<readonly CookSummary[]> => {
  const cooks = (await listCooks(folder, { most: 20, ...options }))
    .filter((cook) => !cook.isOver && !cook.isRehearsal && cook.opened !== null)
    .sort((a, b) => Number(b.hasBegun) - Number(a.hasBegun) || b.lastAt.localeCompare(a.lastAt));
  const [last, ...others] = cooks;
  if (last === undefined) return [];
  const recent = others.filter(
    ({ hasBegun, lastAt }) => hasBegun && Math.abs(now - Date.parse(lastAt)) < sameDayMilliseconds,
  );
  return [last, ...recent.slice(0, 2)];
};
