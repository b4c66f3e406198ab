import type { CookSummary } from '../journal/list.js';
import { parcelVersion, readParcel, writeParcel } from '../journal/parcel.js';
import { nearest } from '../recipe/items.js';
import { type Compared, compareJson, compareText, mostCompared } from '../sheets/debrief-compare.js';
import { type Message, message, words } from '../texts/message.js';
import { wallDate } from '../units/wall-clock.js';
import type { FoundCook } from './cooks-shelf.js';
import { tell } from './debrief.js';
import { type CommandIo, type ExitCode, fail, plainIn } from './io.js';

export type Problem = { readonly problem: Message; readonly wrongUse: boolean };

export type CooksOptions = {
  readonly recipe?: string | undefined;
  readonly since?: string | undefined;
  readonly unfinished: boolean;
  readonly rehearsals: boolean;
  readonly yes: boolean;
  readonly to?: string | undefined;
  readonly json: boolean;
};

/** What `cooks` may touch of the disk and the person. Paths as the system writes them. */
export type CooksIo = CommandIo & {
  readonly folder: string;
  readonly version: string;
  now(): Date;
  list(): Promise<readonly CookSummary[]>;
  /** At most so many are listed. */
  readonly most: number;
  find(typed: string): Promise<FoundCook | Problem>;
  findId(typed: string): Promise<{ readonly summary: CookSummary } | Problem>;
  /** Deletes the journal unless a console holds it. */
  remove(summary: CookSummary): Promise<'deleted' | { readonly problem: Message }>;
  readFile(path: string): Promise<{ readonly bytes: Buffer } | { readonly problem: Message }>;
  /** Whole or not at all, and never over anything that is there. */
  writeNew(path: string, text: string): Promise<'saved' | { readonly problem: Message }>;
  /** Where a cook of this id would be kept, its folder made; null: the id can be no name. */
  place(id: string): Promise<string | null>;
  /** A line typed by a person; null where nobody can be asked. */
  ask(question: string): Promise<string | null>;
};

const say = (said: Message, io: CooksIo): string => words(said, plainIn(io));
const failed = (io: CooksIo, { problem, wrongUse }: Problem): ExitCode => fail(io, wrongUse ? 2 : 1, problem);

const stateOf = ({ opened, isOver }: CookSummary): 'finished' | 'unfinished' | 'damaged' => {
  if (opened === null) return 'damaged';
  return isOver ? 'finished' : 'unfinished';
};

const isDay = (text: string): boolean =>
  /^\d{4}-\d{2}-\d{2}$/.test(text) && !Number.isNaN(new Date(`${text}T00:00:00`).getTime());

const chosen = (cooks: readonly CookSummary[], options: CooksOptions): readonly CookSummary[] => {
  const wanted = options.recipe?.trim().toLowerCase().replaceAll('-', ' ');
  const since = options.since === undefined ? null : new Date(`${options.since}T00:00:00`).getTime();
  return cooks.filter(
    (cook) =>
      (wanted === undefined || (cook.recipeName ?? '').toLowerCase().replaceAll('-', ' ').includes(wanted)) &&
      (since === null || new Date(cook.startedAt).getTime() >= since) &&
      (!options.unfinished || stateOf(cook) === 'unfinished') &&
      (!options.rehearsals || cook.isRehearsal),
  );
};

const list = async (options: CooksOptions, io: CooksIo): Promise<ExitCode> => {
  if (options.since !== undefined && !isDay(options.since))
    return fail(io, 2, message('cooks.bad.since', { found: options.since }));
  const all = await io.list();
  const cooks = chosen(all, options);
  if (options.json) {
    const rows = cooks.map((cook) => ({
      id: cook.id,
      recipe: cook.recipeName,
      startedAt: cook.startedAt,
      lastAt: cook.lastAt,
      state: stateOf(cook),
      rehearsal: cook.isRehearsal,
    }));
    io.out(`${JSON.stringify({ version: 1, cooks: rows }, null, 2)}\n`);
    return 0;
  }
  if (cooks.length === 0) {
    io.out(`${say(message('cooks.none', { filtered: all.length > 0, folder: io.folder }), io)}\n`);
    return 0;
  }
  const width = Math.max(...cooks.map(({ id }) => id.length));
  for (const cook of cooks) {
    const cells = [
      cook.id.padEnd(width),
      say(message('cooks.date', { date: wallDate(cook.startedAt, io.clock === '12h') }), io),
      say(message('cooks.recipe', { name: cook.recipeName }), io),
      say(message('cooks.state', { state: stateOf(cook), rehearsal: cook.isRehearsal }), io),
    ];
    io.out(`${cells.join('  ')}\n`);
  }
  if (all.length >= io.most) io.err(`${say(message('cooks.more', { most: io.most }), io)}\n`);
  return 0;
};

const compareCooks = async (
  ids: readonly string[],
  options: CooksOptions,
  io: CooksIo,
): Promise<ExitCode> => {
  if (ids.length < 2 || ids.length > mostCompared)
    return fail(io, 2, message('cooks.bad.needs', { word: 'compare', wants: 'cooks', most: mostCompared }));
  const compared: Compared[] = [];
  for (const typed of ids) {
    const found = await io.find(typed);
    if ('problem' in found) return failed(io, found);
    const told = tell(found);
    if ('problem' in told) return fail(io, 1, told.problem);
    for (const note of told.damage) io.err(`${say(note, io)}\n`);
    compared.push({ id: told.id ?? typed, story: told.story });
  }
  io.out(
    options.json ? `${JSON.stringify(compareJson(compared), null, 2)}\n` : compareText(compared, io.language),
  );
  return 0;
};

const one = (
  word: string,
  wants: 'cook' | 'file',
  given: readonly string[],
  io: CooksIo,
): string | ExitCode => {
  const [only, extra] = given;
  if (only === undefined) return fail(io, 2, message('cooks.bad.needs', { word, wants, most: 1 }));
  return extra === undefined
    ? only
    : fail(io, 2, message('command.too-many', { found: extra, command: `cooks ${word}` }));
};

const remove = async (given: readonly string[], options: CooksOptions, io: CooksIo): Promise<ExitCode> => {
  const typed = one('delete', 'cook', given, io);
  if (typeof typed === 'number') return typed;
  if (/[/\\]/.test(typed)) return fail(io, 2, message('cooks.bad.id-only', { found: typed }));
  const found = await io.findId(typed);
  if ('problem' in found) return failed(io, found);
  const { summary } = found;
  if (!options.yes) {
    const question = message('cooks.delete.ask', {
      id: summary.id,
      recipe: summary.recipeName,
      date: wallDate(summary.startedAt, io.clock === '12h'),
    });
    const answer = await io.ask(say(question, io));
    if (answer === null) return fail(io, 2, message('cooks.delete.needs-yes', { id: summary.id }));
    if (!['yes', 'y'].includes(answer.trim().toLowerCase())) {
      io.out(`${say(message('cooks.delete.kept', { id: summary.id }), io)}\n`);
      return 0;
    }
  }
  const removed = await io.remove(summary);
  if (removed !== 'deleted') return fail(io, 1, removed.problem);
  io.out(`${say(message('cooks.delete.done', { id: summary.id }), io)}\n`);
  return 0;
};

const exportCook = async (
  given: readonly string[],
  options: CooksOptions,
  io: CooksIo,
): Promise<ExitCode> => {
  const typed = one('export', 'cook', given, io);
  if (typeof typed === 'number') return typed;
  const found = await io.find(typed);
  if ('problem' in found) return failed(io, found);
  const told = tell(found);
  if ('problem' in told) return fail(io, 1, told.problem);
  const { entries } = found.recovered;
  const id = found.id ?? (entries[0]?.at ?? '').replaceAll(/[^\d]+/g, '-').replace(/-$/, '');
  const text = writeParcel(id, entries, { exported: io.now().toISOString(), program: io.version });
  for (const note of told.damage) io.err(`${say(note, io)}\n`);
  if (options.to === '-') {
    io.out(text);
    return 0;
  }
  const path = options.to ?? `${id}.kettlehand-cook`;
  const saved = await io.writeNew(path, text);
  if (saved !== 'saved') return fail(io, 1, saved.problem);
  io.out(`${say(message('cooks.export.done', { id, path, events: entries.length }), io)}\n`);
  return 0;
};

const importCook = async (given: readonly string[], io: CooksIo): Promise<ExitCode> => {
  const path = one('import', 'file', given, io);
  if (typeof path === 'number') return path;
  const read = await io.readFile(path);
  if ('problem' in read) return fail(io, 1, read.problem);
  const parcel = readParcel(read.bytes);
  if ('fault' in parcel) return fail(io, 1, message('cooks.import.bad', { path, ...parcel }));
  const { id, recovered, body } = parcel;
  const told = tell({ id, path, recovered });
  if ('problem' in told)
    return fail(io, 1, message('cooks.import.bad', { path, fault: 'no cook', version: parcelVersion }));
  const place = await io.place(id);
  if (place === null)
    return fail(io, 1, message('cooks.import.bad', { path, fault: 'changed', version: parcelVersion }));
  const saved = await io.writeNew(place, body.toString('utf8'));
  if (saved !== 'saved') {
    if (saved.problem.id !== 'files.exists') return fail(io, 1, saved.problem);
    const there = await io.readFile(place);
    const same = 'bytes' in there && there.bytes.equals(body);
    return fail(io, 1, message('cooks.import.there', { id, same }));
  }
  const values = { id, recipe: told.story.batch.recipe.name, events: recovered.entries.length };
  io.out(`${say(message('cooks.import.done', values), io)}\n`);
  return 0;
};

const wordsKnown = ['list', 'compare', 'delete', 'export', 'import'] as const;

/** `kettlehand cooks`: list, compare, delete, export, import. */
export const cooks = async (
  given: readonly string[],
  options: CooksOptions,
  io: CooksIo,
): Promise<ExitCode> => {
  const [word = 'list', ...rest] = given;
  const filters = [options.recipe, options.since].some((one) => one !== undefined);
  if (word !== 'list' && (filters || options.unfinished || options.rehearsals))
    return fail(io, 2, message('cooks.bad.only-list', { word }));
  switch (word) {
    case 'list':
      return rest[0] === undefined
        ? list(options, io)
        : fail(io, 2, message('command.too-many', { found: rest[0], command: 'cooks' }));
    case 'compare':
      return compareCooks(rest, options, io);
    case 'delete':
      return remove(rest, options, io);
    case 'export':
      return exportCook(rest, options, io);
    case 'import':
      return importCook(rest, io);
    default:
      return fail(io, 2, message('cooks.bad.word', { found: word, nearest: nearest(word, wordsKnown) }));
  }
};
