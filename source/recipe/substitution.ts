import { type Message, message } from '../texts/message.js';
import { joinAllergens } from './allergens.js';
import { boilsInThePot } from './balance.js';
import { type Item, itemById } from './items.js';
import type { Ingredient, Recipe } from './recipe.js';

/** What can take the place of glucose or corn syrup. */
export const doctors = ['rice-syrup', 'honey', 'molasses', 'invert-syrup'] as const;
export type Doctor = (typeof doctors)[number];

export type Substituted = { readonly recipe: Recipe; readonly changes: readonly Message[] };

const outgoing = ['glucose-syrup', 'corn-syrup', 'dark-corn-syrup'];
const isOutgoing = (ingredient: Ingredient): boolean =>
  boilsInThePot(ingredient) && outgoing.includes(ingredient.item);

/** Dry matter that keeps sucrose from graining: glucose solids and invert sugar, gram for gram. Our judgement. */
const doctoring = ({ composition }: Pick<Item, 'composition'>): number =>
  composition.glucoseSolids + composition.invert;

const sum = (ingredients: readonly Ingredient[], grams: (one: Ingredient) => number): number =>
  ingredients.reduce((total, one) => total + grams(one), 0);

const roundTo = (grams: number, step: number): number => Math.round(grams / step) * step;

const ingredientOf = (item: Item, grams: number): Ingredient => ({
  item: item.id,
  name: item.name,
  de: item.de,
  grams,
  amount: `${roundTo(grams, 1)} g`,
  phase: 'mix',
  role: item.roles[0],
  composition: item.composition,
  densityKilogramPerLitre: item.densityKilogramPerLitre,
  allergens: item.allergens,
  alcohol: item.alcohol,
  scorches: item.scorches,
});

const wordOf: Readonly<Record<Doctor, Message>> = {
  'rice-syrup': message('recipe.swap.rice'),
  honey: message('recipe.swap.honey'),
  molasses: message('recipe.swap.molasses'),
  'invert-syrup': message('recipe.swap.invert'),
};

/** The ingredients with `id` made heavier or lighter by `grams` in all, never below nought; what could be done, grams. */
const shifted = (
  ingredients: readonly Ingredient[],
  id: string,
  grams: number,
): { ingredients: readonly Ingredient[]; by: number } => {
  const item = itemById(id);
  const place = ingredients.findIndex((one) => one.item === id && boilsInThePot(one));
  const there = ingredients[place];
  if (there === undefined)
    return grams > 0.5 && item !== null
      ? { ingredients: [...ingredients, ingredientOf(item, grams)], by: grams }
      : { ingredients, by: 0 };
  const after = Math.max(0, there.grams + grams);
  if (Math.abs(after - there.grams) < 0.5) return { ingredients, by: 0 };
  const changed = { ...there, grams: after, amount: `${roundTo(after, 1)} g` };
  return {
    ingredients: ingredients.flatMap((one, at) => (at === place ? (after < 0.5 ? [] : changed) : one)),
    by: after - there.grams,
  };
};

/** Grams of the new doctor: as much doctoring as before; no more sugar of its own than there is to take out. */
const gramsNeeded = (doctor: Item, lostDoctoring: number, sucroseGrams: number): number => {
  const equal = lostDoctoring / doctoring(doctor);
  const bringsSucrose = doctor.composition.sucrose;
  return bringsSucrose * equal <= sucroseGrams
    ? equal
    : (lostDoctoring + sucroseGrams) / (doctoring(doctor) + bringsSucrose);
};

/**
 * The same candy with another doctor in place of its glucose and corn syrups: as many grams of glucose solids and
 * invert sugar, of sucrose and of water as before, as far as sugar and water can be taken out for it. `changes` says
 * what is different after everything else. Starch and flavours stay. Stirred late if the new doctor scorches.
 * The recipe unchanged, and why, if there is no such syrup in it.
 */
export const substituteDoctor = (recipe: Recipe, to: Doctor): Substituted => {
  const out = recipe.ingredients.filter(isOutgoing);
  const doctor = itemById(to);
  if (out.length === 0 || doctor === null) return { recipe, changes: [message('recipe.swap.nothing')] };
  const place = recipe.ingredients.findIndex(isOutgoing);
  const sugar = sum(
    recipe.ingredients.filter((one) => one.item === 'granulated-sugar' && boilsInThePot(one)),
    (one) => one.grams,
  );
  const grams = gramsNeeded(
    doctor,
    sum(out, (one) => one.grams * doctoring(one)),
    sugar,
  );
  const swapped = recipe.ingredients.flatMap((one, at) =>
    at === place ? ingredientOf(doctor, grams) : isOutgoing(one) ? [] : one,
  );
  const purity = itemById('granulated-sugar')?.composition.sucrose ?? 1;
  const sweet = shifted(swapped, 'granulated-sugar', (-grams * doctor.composition.sucrose) / purity);
  const waterOf = (ingredients: readonly Ingredient[]) =>
    sum(ingredients, (one) => one.grams * one.composition.water);
  const wet = shifted(sweet.ingredients, 'water', waterOf(recipe.ingredients) - waterOf(sweet.ingredients));
  const corn = wet.ingredients.filter((one) => one.item === 'cornstarch').map((one) => one.name);
  const changes = [
    wordOf[to],
    ...(sweet.by === 0 ? [] : [message('recipe.swap.sugar', { grams: roundTo(sweet.by, 1) })]),
    ...(wet.by === 0 ? [] : [message('recipe.swap.water', { grams: roundTo(wet.by, 1) })]),
    ...(to === 'rice-syrup' && corn.length > 0 ? [message('recipe.swap.starch', { items: corn })] : []),
    message('recipe.swap.rest-stays'),
  ];
  return {
    recipe: {
      ...recipe,
      ingredients: wet.ingredients,
      stir: doctor.scorches ? 'late' : recipe.stir,
      // What the file and the old syrup named stays named: too careful rather than too little.
      allergens: joinAllergens([recipe.allergens, doctor.allergens]),
    },
    changes,
  };
};
