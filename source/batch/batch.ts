import type { Dial } from '../kitchen/dial.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import type { Recipe } from '../recipe/recipe.js';
import type { BoilingCurve, Syrup } from '../sugar/syrup.js';
import type { ColdWaterOutcome, Stage } from '../sugar/stages.js';
import type { Message } from '../texts/message.js';

export type Pair = readonly [low: number, high: number];

/** This recipe, here, today. Celsius is the syrup's true temperature at today's air pressure. */
export type Batch = {
  readonly recipe: Recipe;
  readonly kitchen: Kitchen;
  readonly syrup: Syrup;
  readonly curve: BoilingCurve;
  readonly dial: Dial;
  readonly totalGrams: number;
  readonly waterGrams: number;
  readonly solidsGrams: number;
  readonly fatGrams: number;
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
  };
  /** Lower bound of each stage at today's pressure, true Celsius; -Infinity for the first. */
  readonly stageFromCelsius: Readonly<Record<Stage, number>>;
  readonly boil: { readonly startsCelsius: number; readonly solidsFractionAtTarget: Pair; readonly waterToBoilAwayGrams: Pair };
  readonly candy: {
    readonly moistureFraction: Pair;
    readonly glassTransitionCelsius: Pair;
    readonly firmness: 'runny' | 'soft' | 'chewy' | 'firm' | 'glassy';
    readonly grainRisk: 'low' | 'some' | 'high';
    readonly equilibriumRelativeHumidity: Pair;
  };
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
    readonly depthMillimetres: Pair | null;
    /** Whether the stem is covered at the end of the boil; null where pot or stem is not known. */
    readonly stemCovered: boolean | null;
  };
  readonly notes: readonly Message[];
};

export type Spread = { readonly low: number; readonly typical: number; readonly high: number };
