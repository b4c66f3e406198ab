import type { StoveKind } from '../kitchen/kitchen.js';
import type { ColdWaterOutcome, Stage } from '../sugar/stages.js';
import type { BoilingCurve } from '../sugar/syrup.js';

/** What bears on the pot, in the order in which it happened; `t` in seconds since the cook opened, never falling. */
export type Evidence =
  /** A reading of the syrup, corrected by the thermometer's known correction: Celsius. */
  | {
      readonly kind: 'reading';
      readonly t: number;
      readonly celsius: number;
      /** A person stands by it: it is not left out at first for being improbable. */
      readonly sure?: boolean;
    }
  | { readonly kind: 'cold water'; readonly t: number; readonly outcome: ColdWaterOutcome }
  /** The burner: level 0 (off) to 1 (the knob's highest), null: unknown. Labels are labels, not ratios. */
  | { readonly kind: 'heat'; readonly t: number; readonly level: number | null }
  | { readonly kind: 'pot'; readonly t: number; readonly on: boolean }
  | { readonly kind: 'lid'; readonly t: number; readonly on: boolean }
  | { readonly kind: 'water'; readonly t: number; readonly grams: number };

/** What does not change during a cook. */
export type Hob = {
  readonly stove: StoveKind;
  /** Total mass in the pot that takes up heat beside water and solids: fat and inert, grams. */
  readonly otherGrams: number;
  readonly dialSdKelvin: number;
  readonly dialLagSeconds: number;
  /** What single readings scatter by; 0.65 K where it is not said. */
  readonly readingSdKelvin?: number;
  /** Today's lower bounds of the stages, true Celsius. */
  readonly stageFromCelsius: Readonly<Record<Stage, number>>;
  /** Dissolved solids fraction of the batch before heating: where the boil starts. */
  readonly startSolidsFraction: number;
  readonly celsiusAtStart: number;
  /** Net watts behind settings of the knob (level 0 to 1) as earlier cooks showed them; `sd` relative. */
  readonly knownPowers?: ReadonlyArray<{
    readonly level: number;
    readonly watts: number;
    readonly sd: number;
  }>;
  /** What earlier cooks climbed on a trivet, kelvin; replaces the stove's prior. */
  readonly learnedCarryOverKelvin?: number | null;
};

/** Opaque to everyone but forecast/: constant size, plain data. */
export type { Estimate } from './estimate.js';

export type Target = {
  readonly floorCelsius: number;
  readonly ceilingCelsius: number;
  readonly takeOffCelsius: number;
};

export type SecondsAhead = { readonly low: number; readonly typical: number; readonly high: number };

export type Forecast = {
  /** Until the syrup (not the dial) crosses the floor of the window; 80 % interval; 0 once crossed. */
  readonly seconds: SecondsAhead;
  /** Until the take-off temperature. */
  readonly takeOffSeconds: SecondsAhead;
  /** Heat since the boil began over the whole to the floor, 0-1. */
  readonly boilShare: number;
  /** Net power into the batch at this moment; 1 W at least, where a burner just turned on has not arrived. */
  readonly watts: number;
  /** What the pot's own heat adds after the take-off. */
  readonly carryOverKelvin: number;
  /** When to read next, seconds from now. */
  readonly nextReadingSeconds: number;
};

export type Belief = {
  readonly celsius: number;
  readonly sd: number;
  readonly stages: Readonly<Record<Stage, number>>;
  /** P(syrup at or above the floor of the window). */
  readonly reachedProbability: number;
  /** Dial reads high (+) by this, from repeated disagreement; null while nothing suggests it. */
  readonly dialBias: { readonly kelvin: number; readonly sd: number } | null;
};

/** The functions of this room; `curve` and `hob` come from the batch. */
export type ObserveFunction<E> = (estimate: E, evidence: Evidence, curve: BoilingCurve, hob: Hob) => E;
