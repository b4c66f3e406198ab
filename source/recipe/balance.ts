import type { Composition, Ingredient, Recipe } from './recipe.js';

/** The parts of what boils, grams, that decide how a candy doctors itself. */
export type Balance = {
  readonly sucroseGrams: number;
  /** Glucose solids and invert sugar: what keeps sucrose from graining. */
  readonly doctorGrams: number;
  readonly waterGrams: number;
  /** Doctor over sucrose by dry mass; Infinity without sucrose, 0 without both. */
  readonly ratio: number;
};

export const boilsInThePot = ({ phase }: Ingredient): boolean => phase === 'mix' || phase === 'boil';

const gramsOfPart = (ingredients: readonly Ingredient[], part: keyof Composition): number =>
  ingredients.reduce((sum, { grams, composition }) => sum + grams * composition[part], 0);

export const balanceOf = (recipe: Recipe): Balance => {
  const boiled = recipe.ingredients.filter(boilsInThePot);
  const sucroseGrams = gramsOfPart(boiled, 'sucrose');
  const doctorGrams = gramsOfPart(boiled, 'glucoseSolids') + gramsOfPart(boiled, 'invert');
  const ratio = doctorGrams === 0 ? 0 : doctorGrams / sucroseGrams;
  return { sucroseGrams, doctorGrams, waterGrams: gramsOfPart(boiled, 'water'), ratio };
};
