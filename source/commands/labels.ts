import type { Batch } from '../batch/batch.js';
import { batchOf } from '../batch/batch-of.js';
import { refusalOf } from '../batch/refusal.js';
import type { Cook } from '../cook/cook.js';
import { fold } from '../cook/step.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import { parseRecipe } from '../recipe/parse.js';
import { readEntries } from '../session/start.js';
import { labelNotes, labelOf, labelText } from '../sheets/labels.js';
import { type Message, message, words } from '../texts/message.js';
import { parseAmount } from '../units/parse.js';
import type { FoundCook } from './cooks-shelf.js';
import { type CommandIo, type ExitCode, fail, failFile, type NamedText, plainIn } from './io.js';
import { readWant } from './plan-options.js';

export type LabelOptions = {
  /** In one bag. */
  readonly pieces?: string | undefined;
  readonly net?: string | undefined;
  readonly date?: string | undefined;
  readonly checked: readonly string[];
};

export type LabelIo = CommandIo & {
  /** Wall clock, for the date on it. */
  now(): Date;
  readonly source:
    | { readonly kind: 'recipe'; read(): Promise<NamedText>; kitchen(): Promise<Kitchen | ExitCode> }
    | {
        readonly kind: 'cook';
        find(): Promise<FoundCook | { readonly problem: Message; readonly wrongUse: boolean }>;
      };
};

type Subject = {
  readonly batch: Batch;
  /** ISO date. */
  readonly made: string;
  /** Of one piece, grams. */
  readonly pieceGrams: number;
  readonly byChildren: boolean;
};

const usualPieces = 10;
const netRangeGrams = [1, 5000] as const;
/** Best before: the shorter of the two to three weeks that home candy keeps. Common practice, no source. */
const keepsDays = 14;
const dayMilliseconds = 24 * 3600 * 1000;

/** The day by the clock of this place, not by that of Greenwich. */
const dayOf = (date: Date): string =>
  [date.getFullYear(), date.getMonth() + 1, date.getDate()]
    .map((part) => String(part).padStart(2, '0'))
    .join('-');

const later = (day: string, days: number): string =>
  new Date(Date.parse(`${day}T00:00:00Z`) + days * dayMilliseconds).toISOString().slice(0, 10);

const isDay = (typed: string): boolean => {
  const time = Date.parse(`${typed}T00:00:00Z`);
  return /^\d{4}-\d{2}-\d{2}$/.test(typed) && Number.isFinite(time) && later(typed, 0) === typed;
};

/** One piece by what was weighed together, else by the whole over the count, else as the recipe wants it. */
const pieceOf = ({ tenPieces, weighed, counted, batch }: Cook): number => {
  if (tenPieces !== null && tenPieces.pieces > 0) return tenPieces.grams / tenPieces.pieces;
  if (weighed !== null && counted !== null && counted > 0) return weighed.grams / counted;
  return batch.recipe.piece.grams;
};

const fromRecipe = async (
  source: Extract<LabelIo['source'], { kind: 'recipe' }>,
  io: LabelIo,
): Promise<Subject | ExitCode> => {
  const named = await source.read();
  if ('problem' in named) return fail(io, named.wrongUse ? 2 : 1, named.problem);
  const parsed = parseRecipe(named.text, named.name);
  if ('problems' in parsed) return failFile(io, parsed.problems);
  const kitchen = await source.kitchen();
  if (typeof kitchen === 'number') return kitchen;
  const refusal = refusalOf(parsed.recipe, kitchen);
  if (refusal !== null) return fail(io, 1, refusal);
  return {
    batch: batchOf(parsed.recipe, kitchen),
    made: dayOf(io.now()),
    pieceGrams: parsed.recipe.piece.grams,
    byChildren: kitchen.hands === 'children',
  };
};

const fromCook = async (
  source: Extract<LabelIo['source'], { kind: 'cook' }>,
  io: LabelIo,
): Promise<Subject | ExitCode> => {
  const found = await source.find();
  if ('problem' in found) return fail(io, found.wrongUse ? 2 : 1, found.problem);
  const { entries, damagedCount } = found.recovered;
  const read = readEntries(entries);
  if (read === null)
    return fail(
      io,
      1,
      message('debrief.bad.lost', { path: found.path, kept: entries.length, damaged: damagedCount }),
    );
  const cook = fold(read.events);
  if (cook.rehearsal) return fail(io, 1, message('label.bad.rehearsal'));
  if (cook.pouredAt === null) return fail(io, 1, message('label.bad.not-poured'));
  const startedAt = new Date(entries[0]?.at ?? Number.NaN);
  return {
    batch: cook.batch,
    made: dayOf(Number.isNaN(startedAt.getTime()) ? io.now() : startedAt),
    pieceGrams: pieceOf(cook),
    byChildren: cook.hands === 'children',
  };
};

type Size = { readonly pieces: number; readonly netGrams: number };

const sizeOf = (options: LabelOptions, pieceGrams: number): Size | { readonly problem: Message } => {
  if (options.net !== undefined) {
    const amount = parseAmount(options.net, 'us');
    const netGrams = amount.kind === 'mass' ? amount.grams : Number.NaN;
    const [least, most] = netRangeGrams;
    return netGrams >= least && netGrams <= most
      ? { netGrams, pieces: Math.max(1, Math.round(netGrams / pieceGrams)) }
      : { problem: message('label.bad.net', { found: options.net.slice(0, 40) }) };
  }
  if (options.pieces === undefined) return { pieces: usualPieces, netGrams: usualPieces * pieceGrams };
  const want = readWant({ pieces: options.pieces }, null);
  if ('problem' in want) return want;
  const pieces = want.value?.kind === 'pieces' ? want.value.pieces : usualPieces;
  return { pieces, netGrams: pieces * pieceGrams };
};

/** What was ruled out must be among what had to be checked: a slip of the hand is no all-clear. */
const misread = (checked: readonly string[], batch: Batch): Message | null => {
  const allowed = batch.recipe.allergens.check;
  const found = checked.find((word) => !allowed.some((one) => one.toLowerCase() === word.toLowerCase()));
  return found === undefined ? null : message('label.bad.checked', { found: found.slice(0, 40), allowed });
};

/**
 * `kettlehand labels`: one block of text for a bag of pieces on standard output; how it came about, and what is still
 * to be checked, on standard error.
 */
export const labels = async (options: LabelOptions, io: LabelIo): Promise<ExitCode> => {
  const { date, net, pieces } = options;
  if (net !== undefined && pieces !== undefined) return fail(io, 2, message('label.bad.size'));
  if (date !== undefined && !isDay(date))
    return fail(io, 2, message('label.bad.date', { found: date.slice(0, 40) }));
  const { source } = io;
  const subject = source.kind === 'cook' ? await fromCook(source, io) : await fromRecipe(source, io);
  if (typeof subject === 'number') return subject;
  const size = sizeOf(options, subject.pieceGrams);
  if ('problem' in size) return fail(io, 2, size.problem);
  const wrong = misread(options.checked, subject.batch);
  if (wrong !== null) return fail(io, 2, wrong);
  const made = date ?? subject.made;
  const label = labelOf(subject.batch, options.checked);
  io.out(labelText(subject.batch, label, { ...size, made, bestBefore: later(made, keepsDays) }, plainIn(io)));
  const notes = [...labelNotes(label), ...(subject.byChildren ? [message('label.children')] : [])];
  for (const note of notes) io.err(`${words(note, plainIn(io))}\n`);
  return 0;
};
