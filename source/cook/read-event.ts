import * as z from 'zod/mini';
import { runSheetSchema } from '../batch/run-sheet-schema.js';
import { kitchenSchema } from '../kitchen/kitchen-schema.js';
import { phaseIds } from '../recipe/recipe.js';
import { recipeSchema } from '../recipe/recipe-schema.js';
import { coldWaterOutcomes } from '../sugar/stages.js';
import { type Happened, troubleNames } from './event.js';

const finite = z.number().check(z.refine(Number.isFinite));
const optional = z.nullable(finite);
const fraction = finite.check(z.minimum(0), z.maximum(1));
const phase = z.enum(phaseIds);
const hands = z.enum(['bare', 'visitors', 'gloved', 'children']);
const unit = z.enum(['C', 'F']);

const kind = <Name extends string>(name: Name) => z.literal(name);
const seq = z.number().check(z.int(), z.positive());

/** The shape of every kind of event, as a journal may hold it. */
const events = z.discriminatedUnion('kind', [
  z.object({
    kind: kind('opened'),
    recipe: recipeSchema,
    kitchen: kitchenSchema,
    // A plan of another shape is no reason to lose the cook.
    runSheet: z.catch(z.nullable(runSheetSchema), null),
    seed: optional,
    version: z.string(),
    from: z.nullable(phase),
  }),
  z.object({
    kind: kind('reading'),
    value: finite,
    unit,
    of: z.enum(['syrup', 'middle', 'ice', 'boiling water', 'room']),
    by: z.enum(['hands', 'feed', 'pot']),
  }),
  z.object({ kind: kind('room'), celsius: optional, humidity: z.nullable(fraction) }),
  z.object({ kind: kind('no thermometer') }),
  z.object({ kind: kind('cold water'), outcome: z.enum([...coldWaterOutcomes, 'unsure']) }),
  z.object({ kind: kind('done'), step: z.string() }),
  z.object({ kind: kind('answer'), question: z.string(), answer: z.enum(['yes', 'no']) }),
  z.object({ kind: kind('ok'), warning: z.string() }),
  z.object({ kind: kind('heat'), setting: z.string() }),
  z.object({ kind: kind('pot'), on: z.boolean() }),
  z.object({ kind: kind('lid'), on: z.boolean() }),
  z.object({ kind: kind('water'), grams: finite.check(z.minimum(0)) }),
  z.object({ kind: kind('hands'), whose: hands }),
  z.object({ kind: kind('rope'), does: z.enum(['droops', 'holds']) }),
  z.object({ kind: kind('arms out') }),
  z.object({ kind: kind('portions'), count: z.number().check(z.int(), z.positive()) }),
  z.object({ kind: kind('trouble'), name: z.enum(troubleNames) }),
  z.object({ kind: kind('over'), name: z.enum(troubleNames) }),
  z.object({ kind: kind('at'), phase }),
  z.object({ kind: kind('stop') }),
  z.object({ kind: kind('undo'), voids: seq }),
  z.object({ kind: kind('weigh'), grams: finite.check(z.minimum(0)), pieces: optional }),
  z.object({ kind: kind('count'), pieces: finite.check(z.minimum(0)) }),
  z.object({ kind: kind('note'), text: z.string() }),
  z.object({ kind: kind('mark'), what: z.string() }),
  z.object({ kind: kind('gap'), seconds: finite.check(z.minimum(0)), sure: z.boolean() }),
]);

const stamp = z.object({ seq, t: finite.check(z.minimum(0)) });

/** An entry of a journal as an event of this program; null if it is of a kind or shape that it does not know. */
export const readEvent = (entry: unknown): Happened | null => {
  const when = z.safeParse(stamp, entry);
  const what = z.safeParse(events, entry);
  // The schema has checked the shape; recipes of newer programs may carry more, which is kept as it is.
  return when.success && what.success ? ({ ...what.data, ...when.data } as Happened) : null;
};
