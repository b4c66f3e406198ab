import * as z from 'zod/mini';
import { weightHabits } from '../units/household.js';
import { languageIds } from '../units/language.js';
import { clockHabits } from '../units/wall-clock.js';
import type { Kitchen } from './kitchen.js';

const finite = z.number().check(z.refine(Number.isFinite));
const known = z.nullable(finite);
const unit = z.enum(['C', 'F']);

const thermometer = z.looseObject({
  id: z.string(),
  kind: z.enum(['dial', 'digital', 'glass', 'infrared']),
  use: z.enum(['pot', 'middle', 'both']),
  unit,
  iceShownCelsius: known,
  boilsShownCelsius: known,
  checked: z.nullable(z.string()),
  stemMillimetres: known,
});

const lesson = z.looseObject({
  value: finite,
  sd: finite.check(z.positive()),
  cooks: finite,
  date: z.nullable(z.string()),
  by: z.enum(['cooks', 'person']),
});

const learned = z.looseObject({
  thermometer: z.nullable(z.extend(lesson, { id: z.string() })),
  watts: z.record(z.string(), lesson),
  carryOverKelvin: z.nullable(lesson),
  boxShare: z.nullable(lesson),
  minutes: z.looseObject({ fold: z.optional(lesson), pull: z.optional(lesson), cut: z.optional(lesson) }),
});

const kitchen = z.looseObject({
  altitudeMetres: known,
  pressurePascal: known,
  stove: z.enum(['gas', 'coil', 'glass-ceramic', 'induction']),
  heat: z.array(z.string()).check(z.minLength(1), z.maxLength(100)),
  pot: z.object({ litres: known, diameterMillimetres: known }),
  thermometers: z.array(thermometer).check(z.maxLength(50)),
  room: z.object({ celsius: known, humidity: known }),
  unit,
  hands: z.enum(['bare', 'visitors', 'gloved', 'children']),
  // A cook goes on without a language that another version of the program speaks.
  language: z.catch(z.optional(z.enum(languageIds)), undefined),
  weights: z.catch(z.optional(z.enum(weightHabits)), undefined),
  clock: z.catch(z.optional(z.enum(clockHabits)), undefined),
  // A cook goes on without what another version of the program had learned.
  learned: z.catch(z.optional(learned), undefined),
});

/** What a kitchen is, as a value: the last gate of every kitchen file, and of the kitchen that a journal carries. */
export const kitchenSchema = kitchen as unknown as z.ZodMiniType<Kitchen>;
