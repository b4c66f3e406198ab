import type { RunSheet } from '../batch/run-sheet.js';
import type { HandsKind, Kitchen } from '../kitchen/kitchen.js';
import type { PhaseId, Recipe } from '../recipe/recipe.js';
import type { ColdWaterOutcome } from '../sugar/stages.js';
import type { TemperatureUnit } from '../units/printer.js';

/** Everything that can go wrong and be reported by name. */
export const troubleNames = [
  'foam',
  'overflow',
  'scorched',
  'burn',
  'grains',
  'overshoot',
  'soft',
  'stiff',
  'thermometer',
  'glass',
  'spill',
  'fire',
  'power',
  'choking',
  'allergy',
  'away',
] as const;
export type TroubleName = (typeof troubleNames)[number];

/** What was measured. */
export type Measured = 'syrup' | 'middle' | 'ice' | 'boiling water' | 'room';
/** Who gave the number. Only events by hands can be taken back with `undo`. */
export type By = 'hands' | 'feed' | 'pot';

/**
 * What a person did or saw, never what the program concluded.
 * Each event names what it answers, so that a list of events alone is the whole cook.
 */
export type CookEvent =
  | {
      readonly kind: 'opened';
      readonly recipe: Recipe;
      readonly kitchen: Kitchen;
      /** The planned times, in seconds since the opening; null: nothing was planned. */
      readonly runSheet: RunSheet | null;
      readonly seed: number | null;
      readonly version: string;
      /** Opened in this phase with all before it taken as confirmed; null: from the beginning. */
      readonly from: PhaseId | null;
    }
  | {
      readonly kind: 'reading';
      readonly value: number;
      readonly unit: TemperatureUnit;
      readonly of: Measured;
      readonly by: By;
    }
  | { readonly kind: 'room'; readonly celsius: number | null; readonly humidity: number | null }
  | { readonly kind: 'no thermometer' }
  | { readonly kind: 'cold water'; readonly outcome: ColdWaterOutcome | 'unsure' }
  | { readonly kind: 'done'; readonly step: string }
  | { readonly kind: 'answer'; readonly question: string; readonly answer: 'yes' | 'no' }
  | { readonly kind: 'ok'; readonly warning: string }
  | { readonly kind: 'heat'; readonly setting: string }
  | { readonly kind: 'pot'; readonly on: boolean }
  | { readonly kind: 'lid'; readonly on: boolean }
  | { readonly kind: 'water'; readonly grams: number }
  | { readonly kind: 'hands'; readonly whose: HandsKind }
  | { readonly kind: 'rope'; readonly does: 'droops' | 'holds' }
  | { readonly kind: 'arms out' }
  | { readonly kind: 'portions'; readonly count: number }
  | { readonly kind: 'trouble'; readonly name: TroubleName }
  | { readonly kind: 'over'; readonly name: TroubleName }
  | { readonly kind: 'at'; readonly phase: PhaseId }
  | { readonly kind: 'stop' }
  | { readonly kind: 'undo'; readonly voids: number }
  | { readonly kind: 'weigh'; readonly grams: number; readonly pieces: number | null }
  | { readonly kind: 'count'; readonly pieces: number }
  | { readonly kind: 'note'; readonly text: string }
  | { readonly kind: 'mark'; readonly what: string }
  /** Nothing could be heard for so long: the program was not running, or the machine slept. `sure`: by its own clock. */
  | { readonly kind: 'gap'; readonly seconds: number; readonly sure: boolean };

export type EventKind = CookEvent['kind'];

/** When: `t` seconds since the cook opened, never falling; `seq` its place in the list, from 1. */
export type Stamp = { readonly seq: number; readonly t: number };
export type Happened = CookEvent & Stamp;
