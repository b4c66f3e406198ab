import type { ColdWaterOutcome } from '../sugar/stages.js';

/** The phases of a cook, in the order in which a plain cook meets them. */
export const phaseIds = [
  'mix',
  'dissolve',
  'boil',
  'test',
  'flavour',
  'pour',
  'fold',
  'pull',
  'cut',
  'wrap',
  'clean',
  'over',
] as const;
export type PhaseId = (typeof phaseIds)[number];

export type IngredientPhase = 'mix' | 'boil' | 'flavour' | 'fold' | 'pull';

/** Mass fractions of an ingredient; they sum to 1. `glucoseSolids` has a DE beside it. */
export type Composition = {
  readonly water: number;
  readonly sucrose: number;
  readonly glucoseSolids: number;
  readonly invert: number;
  readonly salt: number;
  readonly fat: number;
  /** Starch, protein, ash, everything that neither dissolves as sugar nor is fat or water. */
  readonly other: number;
};

export type IngredientRole =
  | 'sugar'
  | 'doctor'
  | 'water'
  | 'fat'
  | 'starch'
  | 'acid'
  | 'salt'
  | 'protein'
  | 'humectant'
  | 'flavour'
  | 'colour'
  | 'leavening';

/** One line of a recipe with all that is known of it, so that a journal needs no table to be read again. */
export type Ingredient = {
  readonly item: string;
  readonly name: string;
  readonly de: number | null;
  readonly grams: number;
  /** As the person wrote it. */
  readonly amount: string;
  readonly phase: IngredientPhase;
  readonly role: IngredientRole;
  readonly composition: Composition;
  /** Kilograms per litre, null where unknown. */
  readonly densityKilogramPerLitre: number | null;
  readonly allergens: {
    readonly contains: readonly string[];
    readonly check: readonly string[];
    readonly unknown: boolean;
  };
  /** An extract on alcohol: kept from flames and glowing rings. */
  readonly alcohol: boolean;
  /** Scorches or foams: forbids the lid, asks for late stirring (molasses, honey, milk, cream). */
  readonly scorches: boolean;
};

export type Recipe = {
  readonly name: string;
  readonly about: string;
  readonly ingredients: readonly Ingredient[];
  readonly target: { readonly celsius: readonly [number, number]; readonly feels: ColdWaterOutcome };
  readonly stir: 'until-boil' | 'late';
  readonly hands: 'butter' | 'oil' | 'starch' | 'dry';
  readonly surface: 'butter' | 'oil' | 'starch' | 'dry';
  readonly dust: 'none' | 'starch' | 'powdered-sugar';
  readonly piece: { readonly grams: number; readonly ropeMillimetres: number };
  readonly allergens: {
    readonly contains: readonly string[];
    readonly check: readonly string[];
    readonly unknown: boolean;
  };
  readonly cues: Readonly<Partial<Record<PhaseId, readonly string[]>>>;
};
