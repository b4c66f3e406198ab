import { expect } from 'vitest';
import { defaultKitchen } from '../../source/kitchen/default.js';
import type { Kitchen } from '../../source/kitchen/kitchen.js';
import { parseRecipe } from '../../source/recipe/parse.js';
import type { Recipe } from '../../source/recipe/recipe.js';

export type Line = readonly [item: string, amount: string, more?: string];

type Sample = {
  readonly ingredients: readonly Line[];
  readonly target: string;
  readonly feels?: string;
  readonly piece?: string;
  readonly more?: string;
};

/** A recipe file of the lines given, as text. */
export const recipeText = ({ ingredients, target, feels, piece, more }: Sample): string =>
  [
    'kettlehand: 1',
    'name: Sample',
    'ingredients:',
    ...ingredients.map(
      ([item, amount, rest]) =>
        `  - { item: ${item}, amount: ${amount}${rest === undefined ? '' : `, ${rest}`} }`,
    ),
    `target: { ${target}, feels: ${feels ?? 'hard ball'} }`,
    `piece: { ${piece ?? 'grams: 7, ropeMillimetres: 15'} }`,
    ...(more === undefined ? [] : [more]),
    '',
  ].join('\n');

/** The recipe of the lines given; the test fails with the reader's own words where it can't be read. */
export const recipeOf = (sample: Sample): Recipe => {
  const parsed = parseRecipe(recipeText(sample), 'sample.yaml');
  if ('problems' in parsed) {
    expect(parsed.problems).toEqual([]);
    throw new Error('not a recipe');
  }
  return parsed.recipe;
};

/** Our own demonstration batch. */
export const hillHall: Recipe = recipeOf({
  ingredients: [
    ['granulated-sugar', '500 g', 'phase: mix'],
    ['cornstarch', '2 tbsp', 'phase: mix'],
    ['glucose-syrup', '420 g', 'de: 42, phase: mix'],
    ['butter', '20 g', 'phase: mix'],
    ['water', '150 ml', 'phase: mix'],
    ['salt', '1/2 tsp', 'phase: mix'],
    ['ginger-oil', '20 drops', 'phase: flavour'],
  ],
  target: 'celsius: [123, 126]',
});

export const seaLevel: Kitchen = { ...defaultKitchen, altitudeMetres: 0 };

/** A village hall at 1,450 m with a borrowed dial thermometer. */
export const hall: Kitchen = {
  ...defaultKitchen,
  altitudeMetres: 1450,
  pot: { litres: 4, diameterMillimetres: 200 },
  thermometers: [
    {
      id: 'hall-dial',
      kind: 'dial',
      use: 'pot',
      unit: 'F',
      iceShownCelsius: 5 / 9,
      boilsShownCelsius: 95,
      checked: null,
      stemMillimetres: 50,
    },
  ],
  room: { celsius: 17, humidity: 0.45 },
  unit: 'F',
};
