import { join } from 'node:path';
import { dataFolder } from '../files/folder.js';
import { bounds, readBytes } from '../files/read.js';
import { type CookSummary, listCooks } from '../journal/list.js';
import { looksLikeParcel, readParcel } from '../journal/parcel.js';
import { looksLikeJournal, type Recovered, recover } from '../journal/recover.js';
import { nearest } from '../recipe/items.js';
import { type Message, message } from '../texts/message.js';

type Problem = { readonly problem: Message; readonly wrongUse: boolean };

/** A cook on the disk, as far as it can be read. `id`: null for a journal named by its path. */
export type FoundCook = {
  readonly id: string | null;
  readonly path: string;
  readonly recovered: Recovered;
};

export const cooksFolder = (env: Readonly<Record<string, string | undefined>>): string =>
  join(dataFolder(env), 'cooks');

/** Apart from the real cooks: an unfinished rehearsal is never offered as a cook. */
export const rehearsalsFolder = (env: Readonly<Record<string, string | undefined>>): string =>
  join(dataFolder(env), 'rehearsals');

const isPath = (typed: string): boolean => /[/\\]/.test(typed) || /\.[A-Za-z-]+$/.test(typed);

/** The list without asking which are over: nothing is folded. */
const quickList = (folder: string): Promise<readonly CookSummary[]> =>
  listCooks(folder, { isOver: () => false });

/** People remember the end of an id, or its day. */
const nearestId = (typed: string, ids: readonly string[]): string | null => {
  const parts = new Map(
    ids.flatMap((id) => [id, id.slice(-4), id.slice(0, 10)].map((part) => [part, id] as const)),
  );
  const near = nearest(typed, [...parts.keys()]);
  return near === null ? null : (parts.get(near) ?? null);
};

/** An id by all of it, or by a part that only one cook has. */
const idOf = (typed: string, ids: readonly string[]): string | Problem => {
  if (ids.includes(typed)) return typed;
  const wanted = typed.trim().toLowerCase();
  const having = wanted.length < 3 ? [] : ids.filter((id) => id.toLowerCase().includes(wanted));
  const [only, ...others] = having;
  if (only !== undefined && others.length === 0) return only;
  const problem =
    only === undefined
      ? message('debrief.bad.unknown', { found: typed.slice(0, 80), nearest: nearestId(wanted, ids) })
      : message('debrief.bad.ambiguous', { found: typed.slice(0, 80), names: having.slice(0, 6) });
  return { problem, wrongUse: true };
};

/** The id of a cook in the folder, by what was typed; no path. */
export const findId = async (
  folder: string,
  typed: string,
): Promise<{ readonly summary: CookSummary } | Problem> => {
  const cooks = await quickList(folder);
  const id = idOf(
    typed,
    cooks.map((cook) => cook.id),
  );
  if (typeof id !== 'string') return id;
  const summary = cooks.find((cook) => cook.id === id);
  return summary === undefined
    ? {
        problem: message('debrief.bad.unknown', { found: typed.slice(0, 80), nearest: null }),
        wrongUse: true,
      }
    : { summary };
};

const readCook = async (path: string, id: string | null): Promise<FoundCook | Problem> => {
  const read = await readBytes(path, bounds.journal);
  if ('problem' in read) return { problem: read.problem, wrongUse: false };
  if (looksLikeParcel(read.bytes)) {
    const parcel = readParcel(read.bytes);
    return 'fault' in parcel
      ? { problem: message('cooks.import.bad', { path, ...parcel }), wrongUse: false }
      : { id: parcel.id, path, recovered: parcel.recovered };
  }
  const recovered = recover(read.bytes);
  if (!looksLikeJournal(read.bytes, recovered) || read.bytes.length === 0)
    return { problem: message('debrief.bad.not-a-journal', { path }), wrongUse: false };
  return { id, path, recovered };
};

/** A cook by id, by part of its id or by path; undefined: the last one. */
export const findCook = async (folder: string, typed: string | undefined): Promise<FoundCook | Problem> => {
  if (typed !== undefined && isPath(typed)) return readCook(typed, null);
  if (typed === undefined) {
    const [last] = await listCooks(folder, { isOver: () => false, most: 1 });
    const newest = last ?? (await quickList(folder))[0];
    return newest === undefined
      ? { problem: message('debrief.bad.no-cooks', { folder }), wrongUse: false }
      : readCook(newest.path, newest.id);
  }
  const found = await findId(folder, typed);
  return 'problem' in found ? found : readCook(found.summary.path, found.summary.id);
};

/** The same; what names no cook may name a rehearsal. */
export const findCookOrRehearsal = async (
  env: Readonly<Record<string, string | undefined>>,
  typed: string | undefined,
): Promise<FoundCook | Problem> => {
  const cook = await findCook(cooksFolder(env), typed);
  if (!('problem' in cook) || typed === undefined || isPath(typed)) return cook;
  const rehearsal = await findCook(rehearsalsFolder(env), typed);
  return 'problem' in rehearsal ? cook : rehearsal;
};
