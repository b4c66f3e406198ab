import { damageNotes } from '../journal/recover.js';
import { type Story, storyOf } from '../lessons/story.js';
import { readEntries } from '../session/start.js';
import { debriefChapters } from '../sheets/debrief-chapters.js';
import { debriefCsv } from '../sheets/debrief-csv.js';
import { debriefJson } from '../sheets/debrief-json.js';
import { debriefMarkdown } from '../sheets/debrief-markdown.js';
import { debriefText } from '../sheets/debrief-text.js';
import { type Message, message, words } from '../texts/message.js';
import { printerOf } from './cook-printer.js';
import type { FoundCook } from './cooks-shelf.js';
import { type CommandIo, type ExitCode, fail } from './io.js';

export const debriefFormats = ['markdown', 'json', 'csv', 'html', 'chapters'] as const;
export type DebriefFormat = (typeof debriefFormats)[number];

export type DebriefIo = CommandIo & {
  /** Width of the terminal; not there in a pipe. */
  readonly columns?: number | undefined;
  /** The cook that was named, or the last one. */
  find(): Promise<FoundCook | { readonly problem: Message; readonly wrongUse: boolean }>;
};

export type Told = { readonly story: Story; readonly damage: readonly Message[]; readonly id: string | null };

/** The story of a cook on the disk, or why there is none. */
export const tell = ({ recovered, path, id }: FoundCook): Told | { readonly problem: Message } => {
  const read = readEntries(recovered.entries);
  if (read === null) {
    const { entries, damagedCount } = recovered;
    return { problem: message('debrief.bad.lost', { path, kept: entries.length, damaged: damagedCount }) };
  }
  const startedAt = recovered.entries[0]?.at ?? null;
  return { story: storyOf(read.events, startedAt), damage: damageNotes(recovered), id };
};

const sheetOf = async (
  { story, damage, id }: Told,
  format: DebriefFormat | null,
  io: DebriefIo,
): Promise<string> => {
  const print = printerOf(story.cook, io);
  switch (format) {
    case 'markdown':
      return debriefMarkdown(story, print, damage);
    case 'json':
      return `${JSON.stringify(debriefJson(story, id, print, damage), null, 2)}\n`;
    case 'csv':
      return debriefCsv(story);
    case 'chapters':
      return debriefChapters(story, print);
    case 'html': {
      // The only format that needs React: loaded when it is asked for.
      const { debriefHtml } = await import('../sheets/debrief-html.js');
      return debriefHtml(story, print, damage);
    }
    default:
      return debriefText(story, print, damage, io.columns);
  }
};

/** `kettlehand debrief`: what happened in a cook, in one of six forms; what can't be part of the form goes to standard error. */
export const debrief = async (formats: readonly DebriefFormat[], io: DebriefIo): Promise<ExitCode> => {
  const [format = null, other] = formats;
  if (other !== undefined) return fail(io, 2, message('debrief.bad.format', { found: formats }));
  const found = await io.find();
  if ('problem' in found) return fail(io, found.wrongUse ? 2 : 1, found.problem);
  const told = tell(found);
  if ('problem' in told) return fail(io, 1, told.problem);
  io.out(await sheetOf(told, format, io));
  const print = printerOf(told.story.cook, io);
  const saysDamage = format === 'csv' || format === 'chapters' ? told.damage : [];
  const unmarked =
    format === 'chapters' && told.story.recordings.length === 0 ? [message('debrief.chapters.unmarked')] : [];
  for (const said of [...saysDamage, ...unmarked]) io.err(`${words(said, print)}\n`);
  return 0;
};
