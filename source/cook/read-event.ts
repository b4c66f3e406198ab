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

const seq = z.number().check(z.int(), z.positive());

/** An event of one kind, with when it happened. */
const event = <Shape extends z.core.$ZodLooseShape>(kind: Happened['kind'], shape: Shape) =>
  [kind, z.object({ kind: z.literal(kind), seq, t: finite.check(z.minimum(0)), ...shape })] as const;

/** The shape of every kind of event, as a journal may hold it: looked up by kind, a third faster than a union is read. */
const events: ReadonlyMap<unknown, z.ZodMiniType> = new Map<unknown, z.ZodMiniType>([
  event('opened', {
    recipe: recipeSchema,
    kitchen: kitchenSchema,
    // A plan of another shape is no reason to lose the cook.
    runSheet: z.catch(z.nullable(runSheetSchema), null),
    seed: optional,
    version: z.string(),
    from: z.nullable(phase),
  }),
  event('reading', {
    value: finite,
    unit,
    of: z.enum(['syrup', 'middle', 'ice', 'boiling water', 'room']),
    by: z.enum(['hands', 'feed', 'pot']),
  }),
  event('room', { celsius: optional, humidity: z.nullable(fraction) }),
  event('no thermometer', {}),
  event('cold water', { outcome: z.enum([...coldWaterOutcomes, 'unsure']) }),
  event('done', { step: z.string() }),
  event('answer', { question: z.string(), answer: z.enum(['yes', 'no']) }),
  event('ok', { warning: z.string() }),
  event('heat', { setting: z.string() }),
  event('pot', { on: z.boolean() }),
  event('lid', { on: z.boolean() }),
  event('water', { grams: finite.check(z.minimum(0)) }),
  event('hands', { whose: hands }),
  event('rope', { does: z.enum(['droops', 'holds']) }),
  event('arms out', {}),
  event('portions', { count: z.number().check(z.int(), z.positive()) }),
  event('trouble', { name: z.enum(troubleNames) }),
  event('over', { name: z.enum(troubleNames) }),
  event('at', { phase }),
  event('stop', {}),
  event('undo', { voids: seq }),
  event('weigh', { grams: finite.check(z.minimum(0)), pieces: optional }),
  event('count', { pieces: finite.check(z.minimum(0)) }),
  event('note', { text: z.string() }),
  event('mark', { what: z.string() }),
  event('gap', { seconds: finite.check(z.minimum(0)), sure: z.boolean() }),
]);

const kindOf = (entry: unknown): unknown =>
  typeof entry === 'object' && entry !== null && 'kind' in entry ? entry.kind : null;

/** An entry of a journal as an event of this program; null if it is of a kind or shape that it does not know. */
export const readEvent = (entry: unknown): Happened | null => {
  const read = events.get(kindOf(entry))?.safeParse(entry);
  // The schema has checked the shape; recipes of newer programs may carry more, which is kept as it is.
  return read?.success ? (read.data as Happened) : null;
};
