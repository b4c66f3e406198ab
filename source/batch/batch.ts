import type { Dial } from '../kitchen/dial.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import type { Recipe } from '../recipe/recipe.js';
import type { Firmness } from '../sugar/glass.js';
import type { GrainRisk } from '../sugar/solubility.js';
import type { ColdWaterOutcome, Stage } from '../sugar/stages.js';
import type { BoilingCurve, Syrup } from '../sugar/syrup.js';
import type { Message } from '../texts/message.js';
import type { RoomAir } from './humidity.js';

export type Pair = readonly [low: number, high: number];

/** This recipe, here, today. Celsius is the syrup's true temperature at today's air pressure. */
export type Batch = {
  readonly recipe: Recipe;
  readonly kitchen: Kitchen;
  readonly syrup: Syrup;
  readonly curve: BoilingCurve;
  readonly dial: Dial;
  /** In the pot before heating: everything that goes in at mix and boil. */
  readonly totalGrams: number;
  readonly waterGrams: number;
  /** Dissolved: sugars, syrup solids, salt. */
  readonly solidsGrams: number;
  readonly fatGrams: number;
  /** What is added after the boil. */
  readonly laterGrams: number;
  readonly air: {
    readonly pressurePascal: number;
    readonly altitudeMetres: number | null;
    readonly waterBoilsCelsius: number;
    readonly from: 'pressure' | 'altitude' | 'boiling water' | 'assumed sea level';
  };
  readonly target: {
    readonly seaLevelCelsius: Pair;
    readonly todayCelsius: Pair;
    readonly feels: ColdWaterOutcome;
    /** Take the pot off at this true temperature: the window less what the pot's own heat still carries. */
    readonly takeOffCelsius: number;
    /** Where in the window the syrup should come to rest. */
    readonly aimCelsius: number;
    readonly carryOverKelvin: number;
  };
  /** Lower bound of each stage at today's pressure, true Celsius; -Infinity for the first. */
  readonly stageFromCelsius: Readonly<Record<Stage, number>>;
  readonly boil: {
    readonly startsCelsius: number;
    readonly solidsFractionAtTarget: Pair;
    readonly waterToBoilAwayGrams: Pair;
  };
  readonly candy: {
    readonly moistureFraction: Pair;
    readonly glassTransitionCelsius: Pair;
    readonly firmness: Firmness;
    /** From the floor of the window to its ceiling, with what the glass transition is known to. */
    readonly firmnessRange: readonly [softest: Firmness, firmest: Firmness];
    /** Between too stiff and too soft to pull; what hands stand comes first. */
    readonly pullsCelsius: Pair;
    readonly grainRisk: GrainRisk;
    /** Dry glucose solids and invert per gram of sucrose, after the boil; null without sucrose. */
    readonly doctorRatio: number | null;
    /** Dry glucose solids that would make the grain risk low; 0 where it is. */
    readonly doctorMissingGrams: number;
    /** Share of the sucrose that acid splits during the boil, to the order of magnitude. */
    readonly invertedFraction: number;
    readonly equilibriumRelativeHumidity: Pair;
  };
  /** What the room's air does to an unwrapped piece; null where the room's humidity is not known. */
  readonly room: RoomAir | null;
  readonly yield: {
    readonly cookedGrams: number;
    readonly expectedGrams: Spread;
    readonly pieces: Spread;
    readonly portions: { readonly count: number; readonly grams: number };
    readonly ropeMetres: number;
    readonly cutMillimetres: number;
    readonly wrappingSquares: number;
  };
  readonly pot: {
    readonly neededLitres: number;
    readonly haveLitres: number | null;
    readonly fits: boolean | null;
    /** At the start of the boil, then at its end; without foam. */
    readonly depthMillimetres: readonly [start: number, end: number] | null;
    /** Whether the stem is covered at the end of the boil; null where pot or stem is not known. */
    readonly stemCovered: boolean | null;
  };
  readonly notes: readonly Message[];
};

export type Spread = { readonly low: number; readonly typical: number; readonly high: number };
