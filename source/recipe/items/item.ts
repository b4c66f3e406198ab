import type { Composition, IngredientRole } from '../recipe.js';

/** One row of the ingredient table. Every number has its source beside it. */
export type Item = {
  readonly id: string;
  readonly name: string;
  /** What it is there for, the main reason first. */
  readonly roles: readonly [IngredientRole, ...IngredientRole[]];
  readonly composition: Composition;
  /** Dextrose equivalent of its glucose solids; null where it has none. */
  readonly de: number | null;
  /** As it sits in a level measure (packed, for brown sugar). */
  readonly densityKilogramPerLitre: number;
  /** Mass of one drop from the bottle, grams; null for what nobody drips. */
  readonly dropGrams: number | null;
  readonly allergens: {
    readonly contains: readonly string[];
    readonly check: readonly string[];
    readonly unknown: boolean;
  };
  readonly alcohol: boolean;
  readonly scorches: boolean;
  /** A syrup that one can see through: the lid may clean the walls over it. */
  readonly clear: boolean;
  /** Other words that people use, so that a wrong id can be answered with the right one. */
  readonly alsoCalled: readonly string[];
  readonly source: { readonly composition: string; readonly density: string; readonly allergens?: string };
};

const nothing: Composition = { water: 0, sucrose: 0, glucoseSolids: 0, invert: 0, salt: 0, fat: 0, other: 0 };

/** The parts that are named, nought for the rest. */
export const parts = (named: Partial<Composition>): Composition => ({ ...nothing, ...named });

export const noAllergens = { contains: [], check: [], unknown: false } as const;
export const containsMilk = { contains: ['milk'], check: [], unknown: false } as const;

type Row = Omit<
  Item,
  | 'de'
  | 'dropGrams'
  | 'allergens'
  | 'alcohol'
  | 'scorches'
  | 'clear'
  | 'alsoCalled'
  | 'densityKilogramPerLitre'
> &
  Partial<Item> & {
    /** Grams in a US cup of 236.588 ml, where the source says it so. */
    readonly cupGrams?: number;
  };

/** US customary cup, NIST Handbook 44. */
const cupMillilitres = 236.588;

/** A row with the usual answers filled in: no allergen, no alcohol, does not scorch, is not clear. */
export const row = ({ cupGrams, ...given }: Row): Item => ({
  de: null,
  densityKilogramPerLitre: (cupGrams ?? Number.NaN) / cupMillilitres,
  dropGrams: null,
  allergens: noAllergens,
  alcohol: false,
  scorches: false,
  clear: false,
  alsoCalled: [],
  ...given,
});
