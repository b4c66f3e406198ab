import { stageAt, stageIndex } from '../sugar/stages.js';
import { type Message, message } from '../texts/message.js';
import { type Balance, balanceOf, boilsInThePot } from './balance.js';
import type { Ingredient, Recipe } from './recipe.js';
import { wallCare } from './wall-care.js';

/**
 * Bands for dry doctor over dry sucrose. Our judgement on the published ratios: glucose to sugar 0.33 to 1.0 by
 * weight as bought (Home Candy Makers c. 1909: 0.50; Rigby 1920: 0.67; California Home Economics Association 1920:
 * 0.33; Bell 1911: 1.0), graining likely below 0.2, sticky above 1.2.
 */
const band = { low: 0.2, high: 1.2 } as const;

/** Grams of acid for 100 g of sucrose from which it splits enough to matter, and from which it splits too much. */
const acidPerHundred: Readonly<Record<string, { readonly enough: number; readonly much: number }>> = {
  // 1/4 tsp (0.75 g) to 2-3 cups in Bradley 1917; more than 1 tsp to a cup: our judgement.
  'cream-of-tartar': { enough: 0.1, much: 1.5 },
  // 1 tbsp to a pound (3.3 g per 100 g) in the Woman's Institute Library 1920s; half a cup to 2 cups is 29 g.
  vinegar: { enough: 2.5, much: 35 },
  'lemon-juice': { enough: 2.5, much: 35 },
  // A sixth of the strength of vinegar's volume: our judgement.
  'citric-acid': { enough: 0.1, much: 1.5 },
};

const names = (ingredients: readonly Ingredient[]): readonly string[] => [
  ...new Set(ingredients.map((ingredient) => ingredient.name)),
];

type Acid = { readonly enough: boolean; readonly much: string | null };

const acidOf = (recipe: Recipe, { sucroseGrams }: Balance): Acid => {
  let enough = false;
  let much: string | null = null;
  for (const { item, grams, name, role } of recipe.ingredients.filter(boilsInThePot)) {
    const rule = Object.hasOwn(acidPerHundred, item) ? acidPerHundred[item] : undefined;
    if (rule === undefined) {
      enough ||= role === 'acid';
      continue;
    }
    const perHundred = (100 * grams) / Math.max(sucroseGrams, 1);
    enough ||= perHundred >= rule.enough;
    if (perHundred > rule.much) much = name;
  }
  return { enough, much };
};

const doctorNotes = (recipe: Recipe): readonly Message[] => {
  const balance = balanceOf(recipe);
  const { ratio, doctorGrams } = balance;
  const acid = acidOf(recipe, balance);
  const notes: Message[] = [];
  if (balance.sucroseGrams > 0 && ratio < band.low && !acid.enough)
    notes.push(
      doctorGrams === 0 ? message('recipe.note.no-doctor') : message('recipe.note.little-doctor', { ratio }),
    );
  if (ratio > band.high && Number.isFinite(ratio)) notes.push(message('recipe.note.much-doctor', { ratio }));
  if (acid.much !== null) notes.push(message('recipe.note.much-acid', { acid: acid.much }));
  return notes;
};

const stirNotes = (recipe: Recipe): readonly Message[] => {
  const scorching = recipe.ingredients.filter((one) => boilsInThePot(one) && one.scorches);
  if (scorching.length > 0 && recipe.stir !== 'late')
    return [message('recipe.note.stir-late', { items: names(scorching) })];
  const clear = wallCare({ ...recipe, stir: 'until-boil' }) === 'lid';
  return recipe.stir === 'late' && clear ? [message('recipe.note.stir-clear')] : [];
};

/** Water that dissolves sugar on the way to the boil: a quarter of its mass. Sucrose at 100 C: 83 % (CRC Handbook). */
const waterPerSucrose = 0.25;

const waterNotes = (recipe: Recipe): readonly Message[] => {
  const { sucroseGrams, waterGrams } = balanceOf(recipe);
  const needed = sucroseGrams * waterPerSucrose;
  return waterGrams < needed * 0.9
    ? [message('recipe.note.little-water', { grams: waterGrams, needed })]
    : [];
};

const additionNotes = (recipe: Recipe): readonly Message[] => {
  const early = recipe.ingredients.filter(boilsInThePot);
  const alcohol = early.filter((one) => one.alcohol);
  const flavour = early.filter((one) => one.role === 'flavour' && !one.alcohol && !one.scorches);
  const notes: Message[] = [];
  if (alcohol.length > 0) notes.push(message('recipe.note.alcohol-early', { items: names(alcohol) }));
  if (flavour.length > 0) notes.push(message('recipe.note.flavour-early', { items: names(flavour) }));
  if (early.some((one) => one.role === 'leavening')) notes.push(message('recipe.note.soda-early'));
  return notes;
};

/** 150 C: where scorching is close in a pulled candy; our judgement. */
const scorchingCelsius = 150;

const targetNotes = ({ target }: Recipe): readonly Message[] => {
  const middle = (target.celsius[0] + target.celsius[1]) / 2;
  const reached = [stageAt(target.celsius[0]), stageAt(middle), stageAt(target.celsius[1])].map(stageIndex);
  const feels = stageIndex(target.feels);
  const notes: Message[] = [];
  if (feels < Math.min(...reached) || feels > Math.max(...reached))
    notes.push(message('recipe.note.feels', { feels: target.feels, stage: stageAt(middle) }));
  if (target.celsius[1] > scorchingCelsius) notes.push(message('recipe.note.hot-target'));
  return notes;
};

/** What a person should know of a recipe before it is cooked; none of it forbids it. */
export const recipeNotes = (recipe: Recipe): readonly Message[] => {
  const unknown = recipe.ingredients.filter((one) => one.allergens.unknown);
  return [
    ...doctorNotes(recipe),
    ...stirNotes(recipe),
    ...waterNotes(recipe),
    ...additionNotes(recipe),
    ...targetNotes(recipe),
    ...(recipe.ingredients.some((one) => one.item === 'glycerine') ? [message('recipe.note.glycerine')] : []),
    ...(unknown.length > 0 ? [message('recipe.note.allergens-unknown', { items: names(unknown) })] : []),
  ];
};
