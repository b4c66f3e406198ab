import { batchOf } from '../batch/batch-of.js';
import { refusalOf } from '../batch/refusal.js';
import { scaledFor } from '../batch/scaled-for.js';
import { defaultKitchen } from '../kitchen/default.js';
import { parseRecipe } from '../recipe/parse.js';
import { handoutMarkdown } from '../sheets/handout-markdown.js';
import { message } from '../texts/message.js';
import { type HandoutSize, handoutWant } from './handout-size.js';
import { type CommandIo, type ExitCode, fail, failFile, type NamedText, plainIn } from './io.js';

export type HandoutOptions = HandoutSize & {
  readonly html?: boolean | undefined;
  readonly markdown?: boolean | undefined;
};

export type HandoutIo = CommandIo & {
  /** The recipe's file, by its name among the recipes or by path. */
  readRecipe(): Promise<NamedText>;
};

/** A home batch: what one adult lifts and pours, grams. Our judgement. */
const homeBatchGrams = [100, 4000] as const;

/**
 * `kettlehand handout`: the page for the audience, Markdown or HTML on standard output. It is for the kitchens of
 * people who came to look, of which nothing is known: the presenter's own kitchen is left out.
 */
export const handout = async (options: HandoutOptions, io: HandoutIo): Promise<ExitCode> => {
  if (options.html === true && options.markdown === true) return fail(io, 2, message('handout.bad.format'));
  const named = await io.readRecipe();
  if ('problem' in named) return fail(io, named.wrongUse ? 2 : 1, named.problem);
  const parsed = parseRecipe(named.text, named.name);
  if ('problems' in parsed) return failFile(io, parsed.problems);
  const refusal = refusalOf(parsed.recipe, defaultKitchen);
  if (refusal !== null) return fail(io, 1, refusal);
  const want = handoutWant(batchOf(parsed.recipe, defaultKitchen), options);
  if ('problem' in want) return fail(io, 2, want.problem);
  const recipe =
    want.value === null ? parsed.recipe : scaledFor(parsed.recipe, defaultKitchen, want.value).recipe;
  const batch = batchOf(recipe, defaultKitchen);
  const [low, high] = homeBatchGrams;
  if (batch.totalGrams < low || batch.totalGrams > high)
    return fail(io, 1, message('plan.bad.size', { grams: batch.totalGrams, low, high }));
  if (options.html === true) {
    // The only form that needs React: loaded when it is asked for.
    const { handoutHtml } = await import('../sheets/handout-html.js');
    io.out(handoutHtml(batch, plainIn(io)));
  } else io.out(handoutMarkdown(batch, plainIn(io)));
  return 0;
};
