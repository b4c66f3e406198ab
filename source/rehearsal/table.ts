import type { Happened } from '../cook/event.js';
import type { ColdWaterOutcome, Stage } from '../sugar/stages.js';
import type { TemperatureUnit } from '../units/printer.js';
import type { Course, Notice } from './happenings.js';

/** What a person beside it sees, smells and feels. */
export type Senses = {
  readonly boils: boolean;
  readonly dissolved: boolean;
  /** Syrup and foam over the height of the pot; above 1 it runs over. */
  readonly fullShare: number;
  readonly smells: boolean;
  /** Overheated: no syrup any more. */
  readonly smokes: boolean;
  readonly grains: boolean;
  readonly power: boolean;
  readonly calledAway: boolean;
  readonly burnt: boolean;
  /** The layer lies flatter than a finger. */
  readonly thin: boolean;
  /** An adult's finger on a crumb from the middle. */
  readonly crumbIsComfortable: boolean;
  readonly droops: boolean;
  readonly stiff: boolean;
};

/** What nobody in the cook may look at: for the verdict only. */
export type Truth = {
  readonly celsius: number;
  readonly kelvinPerSecond: number;
  readonly windowCelsius: readonly [number, number];
  /** Where the syrup came to rest, by the water left in it when it was poured: the temperature at which it would boil. */
  readonly restCelsius: number | null;
  readonly restStage: Stage | null;
  readonly pouredAt: number | null;
  /** The hottest place when hands went in for the first time. */
  readonly middleAtHandsCelsius: number | null;
  readonly middleCelsius: number | null;
  /** What the pot's thermometer shows too much here, beyond its known correction, kelvin; null without one. */
  readonly dialErrorKelvin: number | null;
  readonly ranOver: boolean;
  readonly grained: boolean;
  readonly highestCelsius: number;
  readonly course: Course;
};

export type Shown = { readonly value: number; readonly unit: TemperatureUnit };

/** Pot, slab and rope of one rehearsal. It knows no clock: time passes in `advanceTo`. */
export type SimulatedCook = {
  advanceTo(t: number): void;
  /** What was typed is done; what the pot or a feed gave changes nothing. */
  happened(event: Happened): void;
  senses(): Senses;
  /** The pot's thermometer, read to its whole degree; null without one. */
  dial(): Shown | null;
  middle(): Shown | null;
  coldWater(): ColdWaterOutcome;
  /** The pot's thermometer held in boiling water before the cook; null without one. */
  boilingWater(): Shown | null;
  /** What the pieces weigh, grams. */
  weighs(): number;
  /** What could be noticed since the last call. */
  notices(): readonly Notice[];
  truth(): Truth;
};
