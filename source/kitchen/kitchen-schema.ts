import * as z from 'zod/mini';
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
});

/** What a kitchen is, as a value: the last gate of every kitchen file, and of the kitchen that a journal carries. */
export const kitchenSchema = kitchen as unknown as z.ZodMiniType<Kitchen>;
