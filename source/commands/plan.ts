import type { Batch } from '../batch/batch.js';
import { type BatchOptions, batchOf } from '../batch/batch-of.js';
import { refusalOf } from '../batch/refusal.js';
import { scaledFor, type Want } from '../batch/scaled-for.js';
import { splitFor } from '../batch/split.js';
import { defaultKitchen } from '../kitchen/default.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import { parseKitchen } from '../kitchen/parse.js';
import { parseRecipe } from '../recipe/parse.js';
import type { Recipe } from '../recipe/recipe.js';
import { machineClock } from '../session/machine.js';
import { planExplain, planJson, planText } from '../sheets/plan.js';
import { runSheetJson, runSheetText } from '../sheets/run-sheet.js';
import { message } from '../texts/message.js';
import { jsonText } from '../units/escape.js';
import { type Printer, printer } from '../units/printer.js';
import type { ClockHabit } from '../units/wall-clock.js';
import { type CommandIo, type ExitCode, fail, failFile, type NamedText } from './io.js';
import { type PlanOptions, readPlace, readWant } from './plan-options.js';
import { cardOf, readRun, runOf } from './plan-run.js';
import { learnedNote } from './taught.js';

export type { PlanOptions } from './plan-options.js';

export type PlanIo = CommandIo & {
  /** The recipe's file, by its name among the recipes or by path. */
  readRecipe(): Promise<NamedText>;
  /** The kitchen file that was named, else the saved one; null: there is none. */
  readKitchen(): Promise<NamedText | null>;
  /** The kitchen with what earlier cooks taught of it; left out: nothing is known of any. */
  taught?(kitchen: Kitchen): Promise<Kitchen>;
  /** How times of day are read where this person lives; null: not known. */
  localeClock?(): ClockHabit | null;
  /** Milliseconds of the wall clock; the machine's where it is not given. */
  wall?(): number;
};

/** Total mass of a batch that can be planned, grams. Our judgement. */
const batchRangeGrams = [100, 20_000] as const;

const kitchenFrom = (named: NamedText | null, io: CommandIo): Kitchen | ExitCode => {
  if (named === null) return defaultKitchen;
  if ('problem' in named) return fail(io, named.wrongUse ? 2 : 1, named.problem);
  const parsed = parseKitchen(named.text, named.name);
  return 'problems' in parsed ? failFile(io, parsed.problems) : parsed.kitchen;
};

type WithNotes = { readonly recipe: Recipe; readonly notes: Batch['notes'] };

const recipeFrom = (named: NamedText, io: CommandIo): WithNotes | ExitCode => {
  if ('problem' in named) return fail(io, named.wrongUse ? 2 : 1, named.problem);
  const parsed = parseRecipe(named.text, named.name);
  return 'problems' in parsed ? failFile(io, parsed.problems) : parsed;
};

const printerFor = ({ dial, kitchen }: Batch, { language }: CommandIo): Printer =>
  printer({
    language,
    unit: dial.unit,
    weights: kitchen.weights,
    toShownCelsius: (celsius) => dial.toShownCelsius(celsius),
  });

const clockFor = ({ clock }: Kitchen, io: PlanIo): ClockHabit | null => clock ?? io.localeClock?.() ?? null;

/** A size that was asked for and would foam over the pot is not planned: the size that fits is said instead. */
const foamsOver = (batch: Batch, io: CommandIo): ExitCode | null => {
  const split = splitFor(batch.pot);
  const { neededLitres, haveLitres } = batch.pot;
  if (split === null || haveLitres === null) return null;
  return fail(
    io,
    1,
    message('plan.bad.pot-too-small', {
      neededLitres,
      haveLitres,
      batches: split.batches,
      eachGrams: batch.totalGrams * split.share,
      mostPieces: Math.floor(batch.yield.pieces.typical * split.mostShare),
    }),
    printerFor(batch, io),
  );
};

const sized = (recipe: Recipe, kitchen: Kitchen, want: Want | null): Batch => {
  if (want === null) return batchOf(recipe, kitchen);
  const options: BatchOptions = want.kind === 'guests' ? { pullers: want.guests } : {};
  return batchOf(scaledFor(recipe, kitchen, want).recipe, kitchen, options);
};

/** `kettlehand plan`: this recipe, here and today, as text, JSON or with its reasons. */
export const plan = async (options: PlanOptions, io: PlanIo): Promise<ExitCode> => {
  const kitchen = kitchenFrom(await io.readKitchen(), io);
  if (typeof kitchen === 'number') return kitchen;
  const place = readPlace(kitchen, options);
  if ('problem' in place) return fail(io, 2, place.problem);
  const want = readWant(options, place.value.potLitres);
  if ('problem' in want) return fail(io, 2, want.problem);
  const asked = readRun(options, io.wall?.() ?? machineClock.wall(), clockFor(kitchen, io));
  if ('problem' in asked) return fail(io, 2, asked.problem);
  const read = recipeFrom(await io.readRecipe(), io);
  if (typeof read === 'number') return read;
  const here = (await io.taught?.(place.value.kitchen)) ?? place.value.kitchen;
  const refusal = refusalOf(read.recipe, here);
  if (refusal !== null) return fail(io, 1, refusal);

  const batch = sized(read.recipe, here, want.value);
  const [low, high] = batchRangeGrams;
  if (batch.totalGrams < low || batch.totalGrams > high)
    return fail(io, 1, message('plan.bad.size', { grams: batch.totalGrams, low, high }));
  const refused = want.value === null ? null : foamsOver(batch, io);
  if (refused !== null) return refused;

  const learned = learnedNote(here.learned);
  const noted: Batch = {
    ...batch,
    notes: [...batch.notes, ...read.notes, ...(learned === null ? [] : [learned])],
  };
  const print = printerFor(noted, io);
  const run = asked.value === null ? null : runOf(noted, asked.value);
  if (run !== null && 'problem' in run) return fail(io, 2, run.problem, print);
  const sheet = run?.value ?? null;
  if (options.json) {
    const runSheet = sheet === null ? null : runSheetJson(sheet);
    io.out(`${jsonText({ ...planJson(noted, print), runSheet }, 2)}\n`);
  } else if (options.card) io.out(await cardOf(noted, sheet, options.html === true, print));
  else if (sheet !== null) io.out(runSheetText(sheet, print));
  else
    io.out(
      options.explain ? `${planText(noted, print)}\n${planExplain(noted, print)}` : planText(noted, print),
    );
  return 0;
};
