import * as z from 'zod/mini';
import { coldWaterOutcomes } from '../sugar/stages.js';
import { phaseIds, type Recipe } from './recipe.js';

const finite = z.number().check(z.refine(Number.isFinite));
const fraction = finite.check(z.minimum(0), z.maximum(1));
const grease = z.enum(['butter', 'oil', 'starch', 'dry']);
const names = z.array(z.string()).check(z.maxLength(100));
const allergens = z.object({ contains: names, check: names, unknown: z.boolean() });

/** Fractions are written with a few digits; their sum may be off by this. */
const sumSlack = 0.02;

const composition = z
  .object({
    water: fraction,
    sucrose: fraction,
    glucoseSolids: fraction,
    invert: fraction,
    salt: fraction,
    fat: fraction,
    other: fraction,
  })
  .check(
    z.refine((parts) => Math.abs(Object.values(parts).reduce((sum, part) => sum + part, 0) - 1) <= sumSlack),
  );

const ingredient = z.object({
  item: z.string(),
  name: z.string(),
  de: z.nullable(finite.check(z.positive(), z.maximum(100))),
  grams: finite.check(z.minimum(0)),
  amount: z.string(),
  phase: z.enum(['mix', 'boil', 'flavour', 'fold', 'pull']),
  role: z.string(),
  composition,
  densityKilogramPerLitre: z.nullable(finite),
  allergens,
  alcohol: z.boolean(),
  scorches: z.boolean(),
});

const recipe = z.looseObject({
  name: z.string(),
  about: z.string(),
  ingredients: z.array(ingredient).check(z.minLength(1), z.maxLength(200)),
  target: z.object({
    celsius: z.tuple([finite, finite]).check(z.refine(([low, high]) => low <= high)),
    feels: z.enum(coldWaterOutcomes),
  }),
  stir: z.enum(['until-boil', 'late']),
  hands: grease,
  surface: grease,
  dust: z.enum(['none', 'starch', 'powdered-sugar']),
  piece: z.object({ grams: finite.check(z.positive()), ropeMillimetres: finite.check(z.positive()) }),
  allergens,
  cues: z.partialRecord(z.enum(phaseIds), names),
});

/**
 * What a recipe is, as a value: the last gate of every recipe file that was read, and of the recipe that a journal
 * carries. What newer programs add is kept.
 */
export const recipeSchema = recipe as unknown as z.ZodMiniType<Recipe>;
