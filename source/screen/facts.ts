import type { Cook } from '../cook/cook.js';
import { handLimit } from '../cook/phases/gates.js';
import { stoveTraits } from '../kitchen/stove.js';
import type { Stage } from '../sugar/stages.js';
import type { Language } from '../units/language.js';
import { type Printer, printer, type TemperatureUnit } from '../units/printer.js';

/** What the screen shows of the cook beside its advice: where things stand, and the marks on the glass. True Celsius. */
export type Facts = {
  readonly recipe: string;
  readonly potOn: boolean | null;
  readonly potSince: number | null;
  readonly lidOn: boolean | null;
  readonly heat: string | null;
  readonly ringGlows: boolean;
  readonly thermometer: boolean;
  readonly reading: { readonly celsius: number; readonly t: number } | null;
  readonly middle: { readonly celsius: number; readonly t: number; readonly limitCelsius: number };
  readonly middleKnown: boolean;
  readonly stageFromCelsius: Readonly<Record<Stage, number>>;
  readonly window: readonly [low: number, high: number];
  readonly startsCelsius: number;
};

export const factsOf = (cook: Cook): Facts => ({
  recipe: cook.batch.recipe.name,
  potOn: cook.potOn?.on ?? null,
  potSince: cook.potOn?.t ?? null,
  lidOn: cook.lidOn?.on ?? null,
  heat: cook.heat?.setting ?? null,
  ringGlows: stoveTraits[cook.batch.kitchen.stove].glows,
  thermometer: cook.thermometer,
  reading: cook.lastReading,
  middle: {
    celsius: cook.middle?.celsius ?? Number.NaN,
    t: cook.middle?.t ?? Number.NaN,
    limitCelsius: handLimit(cook),
  },
  middleKnown: cook.middle !== null,
  stageFromCelsius: cook.batch.stageFromCelsius,
  window: cook.batch.target.todayCelsius,
  startsCelsius: cook.batch.boil.startsCelsius,
});

/** How this cook's people read: their language, their thermometer, its scale unless they asked for another. */
export const printerOf = (
  { batch }: Cook,
  language: Language | undefined,
  shown: TemperatureUnit | null = null,
): Printer =>
  printer({
    language,
    unit: batch.dial.present ? batch.dial.unit : batch.kitchen.unit,
    shown: shown ?? undefined,
    weights: batch.kitchen.weights,
    toShownCelsius: batch.dial.toShownCelsius,
  });
