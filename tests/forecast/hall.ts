import {
  begin,
  type Estimate,
  type Evidence,
  type Hob,
  observe,
  type Target,
} from '../../source/forecast/index.js';
import type { Stage } from '../../source/sugar/stages.js';
import { type BoilingCurve, boilingCurve } from '../../source/sugar/syrup.js';

/** The village hall at 1,450 m: a two-ring coil hob and a borrowed dial. */
export const waterGrams = 237;
export const curve = boilingCurve(
  {
    sucroseGrams: 500,
    glucoseSolids: [{ grams: 336, de: 42 }],
    invertGrams: 0,
    saltGrams: 3,
    waterGrams,
    fatGrams: 16,
    inertGrams: 16,
  },
  85_000,
);

/** Lower bounds of the stages at sea level, cut midway between published ranges. */
export const stagesAt = (of: BoilingCurve): Record<Stage, number> => ({
  dissolves: -Infinity,
  thread: of.fromSeaLevel(101.5),
  'soft ball': of.fromSeaLevel(112.5),
  'firm ball': of.fromSeaLevel(117),
  'hard ball': of.fromSeaLevel(120.8),
  'soft crack': of.fromSeaLevel(131),
  'hard crack': of.fromSeaLevel(146),
  'past hard crack': of.fromSeaLevel(155),
});

export const hob: Hob = {
  stove: 'coil',
  otherGrams: 32,
  dialSdKelvin: 2,
  dialLagSeconds: 12,
  stageFromCelsius: stagesAt(curve),
  startSolidsFraction: curve.dissolvedGrams / (curve.dissolvedGrams + waterGrams),
  celsiusAtStart: 20,
};

export const target: Target = {
  floorCelsius: curve.fromSeaLevel(123),
  ceilingCelsius: curve.fromSeaLevel(126),
  takeOffCelsius: curve.fromSeaLevel(123),
};

/** The estimate after all this. */
export const estimateAfter = (
  evidence: readonly Evidence[],
  on: Hob = hob,
  from: Estimate = begin(on),
): Estimate => evidence.reduce((estimate, next) => observe(estimate, next, curve, on), from);

/** A plain boil on this hob: burner on at 60 s, then what a dial that is right shows. */
export const plainBoil: readonly Evidence[] = [
  { kind: 'heat', t: 60, level: 1 },
  { kind: 'reading', t: 240, celsius: 62 },
  { kind: 'reading', t: 420, celsius: 98.5 },
  { kind: 'reading', t: 520, celsius: 103.6 },
  { kind: 'reading', t: 580, celsius: 104.6 },
  { kind: 'reading', t: 640, celsius: 105.8 },
  { kind: 'reading', t: 700, celsius: 107.3 },
  { kind: 'reading', t: 760, celsius: 109 },
  { kind: 'reading', t: 820, celsius: 111.2 },
];
