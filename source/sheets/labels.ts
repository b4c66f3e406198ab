import type { Batch } from '../batch/batch.js';
import { itemById } from '../recipe/items.js';
import type { Ingredient, Recipe } from '../recipe/recipe.js';
import { type Message, message, words } from '../texts/message.js';
import type { Printer } from '../units/printer.js';
import { sheetColumns, wrapped } from './layout.js';

type Place = 'hands' | 'surface' | 'dust';
/** One entry of the list. `grams`: null for what is only on hands, table or as dust. */
type Listed = {
  readonly item: string;
  readonly name: string;
  readonly grams: number | null;
  readonly contains: readonly string[];
  readonly check: readonly string[];
  readonly unknown: boolean;
  readonly on: readonly Place[];
};

type Weighed = Listed & { readonly grams: number };

export type LabelAsked = {
  readonly pieces: number;
  /** In one bag. */
  readonly netGrams: number;
  /** ISO dates. */
  readonly made: string;
  readonly bestBefore: string;
};

export type Label = {
  readonly ingredients: readonly Listed[];
  readonly contains: readonly string[];
  readonly toCheck: readonly { readonly word: string; readonly of: readonly string[] }[];
  readonly unknownOf: readonly string[] | null;
  readonly water: { readonly addedGrams: number; readonly leftGrams: number };
};

/** Added water up to this share of the finished candy need not be listed: Regulation (EU) 1169/2011, Annex VII, part A, no. 1. */
const unlistedWaterShare = 0.05;

const isWater = ({ role, composition }: Ingredient): boolean => role === 'water' && composition.water > 0.99;

/** Ingredients that are one and the same count together. */
const weighedIn = (recipe: Recipe): readonly Weighed[] => {
  const found = new Map<string, Weighed>();
  for (const one of recipe.ingredients) {
    if (isWater(one)) continue;
    const before = found.get(one.item);
    found.set(one.item, {
      item: one.item,
      name: one.name,
      grams: (before?.grams ?? 0) + one.grams,
      contains: one.allergens.contains,
      check: one.allergens.check,
      unknown: one.allergens.unknown,
      on: [],
    });
  }
  return [...found.values()];
};

const onHandsAndTable = ({ hands, surface, dust }: Recipe): ReadonlyMap<string, readonly Place[]> => {
  const item = {
    butter: 'butter',
    oil: 'oil',
    starch: 'cornstarch',
    'powdered-sugar': 'powdered-sugar',
  } as const;
  const found = new Map<string, Place[]>();
  const add = (what: keyof typeof item, place: Place): void => {
    found.set(item[what], [...(found.get(item[what]) ?? []), place]);
  };
  if (hands !== 'dry') add(hands, 'hands');
  if (surface !== 'dry') add(surface, 'surface');
  if (dust !== 'none') add(dust, 'dust');
  return found;
};

/** What is on hands, table and pieces and was not weighed in: it is so little that it stands last. */
const besides = (recipe: Recipe, listed: readonly Listed[]): readonly Listed[] =>
  [...onHandsAndTable(recipe)].flatMap(([id, on]): Listed[] => {
    const item = itemById(id);
    if (item === null || listed.some((one) => one.item === id)) return [];
    const { contains, check, unknown } = item.allergens;
    return [{ item: id, name: item.name, grams: null, contains, check, unknown, on }];
  });

/** What of the added water is still there: the finished candy less all other ingredients as they were weighed in. */
const waterOf = (batch: Batch): Label['water'] => {
  const { ingredients } = batch.recipe;
  const grams = (which: (one: Ingredient) => boolean): number =>
    ingredients.filter(which).reduce((sum, one) => sum + one.grams, 0);
  const left = batch.yield.cookedGrams - grams((one) => !isWater(one));
  return {
    addedGrams: grams(isWater),
    leftGrams: left > unlistedWaterShare * batch.yield.cookedGrams ? left : 0,
  };
};

/**
 * What stands on the label of a candy: ingredients by falling weight as weighed in (Regulation (EU) 1169/2011, article
 * 18 and Annex VII; 21 CFR 101.4), added water by what is left of it, what hands, table and dusting bring last;
 * allergens of all of them. Pure.
 */
export const labelOf = (batch: Batch, checked: readonly string[]): Label => {
  const { recipe } = batch;
  const water = waterOf(batch);
  const weighed = weighedIn(recipe);
  const wet: readonly Weighed[] =
    water.leftGrams > 0
      ? [
          {
            item: 'water',
            name: 'water',
            grams: water.leftGrams,
            contains: [],
            check: [],
            unknown: false,
            on: [],
          },
        ]
      : [];
  const sorted = [...weighed, ...wet].toSorted((one, other) => other.grams - one.grams);
  const ingredients = [...sorted, ...besides(recipe, sorted)];
  const ruledOut = new Set(checked.map((word) => word.toLowerCase()));
  const toCheck = recipe.allergens.check
    .filter((word) => !ruledOut.has(word.toLowerCase()))
    .map((word) => ({
      word,
      of: ingredients.filter(({ check }) => check.includes(word)).map(({ name }) => name),
    }));
  return {
    ingredients,
    contains: recipe.allergens.contains,
    toCheck,
    unknownOf: recipe.allergens.unknown
      ? ingredients.filter(({ unknown }) => unknown).map(({ name }) => name)
      : null,
    water,
  };
};

const linesOf = (batch: Batch, label: Label, asked: LabelAsked): readonly Message[] => [
  message('label.name', { name: batch.recipe.name }),
  message('label.ingredients', { items: label.ingredients }),
  ...(label.contains.length === 0 ? [] : [message('label.contains', { words: label.contains })]),
  ...(label.toCheck.length === 0 ? [] : [message('label.not-checked', { words: label.toCheck })]),
  ...(label.unknownOf === null ? [] : [message('label.unknown', { of: label.unknownOf })]),
  ...(label.contains.length + label.toCheck.length === 0 && label.unknownOf === null
    ? [message('label.no-allergens')]
    : []),
  message('label.net', { grams: asked.netGrams, pieces: asked.pieces }),
  message('label.made', { made: asked.made, before: asked.bestBefore }),
  message('label.care'),
  message('label.maker'),
  message('label.law'),
];

/** Width of a label in characters: two beside each other on a page. */
const labelColumns = Math.min(56, sheetColumns);

/** One block of text to print as often as there are bags. */
export const labelText = (batch: Batch, label: Label, asked: LabelAsked, printer: Printer): string =>
  `${linesOf(batch, label, asked)
    .flatMap((line) => wrapped(words(line, printer), labelColumns))
    .join('\n')}\n`;

/** How the list came about, and what is still to be done before the label is true. */
export const labelNotes = ({ ingredients, water, toCheck }: Label): readonly Message[] => [
  ...(water.addedGrams > 0 ? [message('label.how-water', water)] : []),
  ...(ingredients.some(({ grams }) => grams === null) ? [message('label.how-unweighed')] : []),
  ...(toCheck.length === 0 ? [] : [message('label.how-check', { words: toCheck.map(({ word }) => word) })]),
];
