import { describe } from 'vitest';
import { gramsOf } from '../../source/recipe/amount.js';
import { itemById } from '../../source/recipe/items.js';
import { parseAmount } from '../../source/units/parse.js';
import { check } from './check.js';
import type { Row } from './syrups.js';

const sr = 'USDA SR27 (2014)';
const cakeBible = 'Beranbaum, The Cake Bible (1988), in GNU units';
const nbs = 'NBS Circular C440 (1942), table 114, apparent specific gravity x 0.99717';

type Measure = { readonly amount: string; readonly item: string };

const grams = ({ amount, item }: Measure): number => {
  const known = itemById(item);
  const read = parseAmount(amount);
  if (known === null || read.kind === 'problem') throw new Error(`${amount} of ${item} is not read`);
  const mass = gramsOf(read, known);
  if (typeof mass !== 'number') throw new Error(`${amount} of ${item}: no ${mass}`);
  return mass;
};

/**
 * What a cup or a spoon weighs, grams. The tolerance is how far the published values for that item lie apart; where
 * only one was found, 3 %, or half a unit of its last digit if that is more.
 */
const measures: ReadonlyArray<Row<Measure>> = [
  {
    at: { amount: '1 cup', item: 'granulated-sugar' },
    value: 200,
    tolerance: 6,
    source: `${sr} 19335; ${cakeBible}`,
  },
  { at: { amount: '1 tsp', item: 'granulated-sugar' }, value: 4.2, tolerance: 0.13, source: `${sr} 19335` },
  { at: { amount: '1 cup', item: 'brown-sugar' }, value: 220, tolerance: 22, source: `${sr} 19334, packed` },
  { at: { amount: '1 cup', item: 'brown-sugar' }, value: 217, tolerance: 22, source: `${cakeBible}, light` },
  { at: { amount: '1 cup', item: 'brown-sugar' }, value: 239, tolerance: 22, source: `${cakeBible}, dark` },
  {
    at: { amount: '1 cup', item: 'powdered-sugar' },
    value: 120,
    tolerance: 6.6,
    source: `${sr} 19336, unsifted`,
  },
  {
    at: { amount: '1 cup', item: 'powdered-sugar' },
    value: 113.4,
    tolerance: 6.6,
    source: `${cakeBible}: 4 oz`,
  },
  { at: { amount: '1 cup', item: 'corn-syrup' }, value: 341, tolerance: 15, source: `${sr} 19350` },
  { at: { amount: '1 cup', item: 'corn-syrup' }, value: 326, tolerance: 15, source: `${cakeBible}: 11.5 oz` },
  { at: { amount: '1 cup', item: 'dark-corn-syrup' }, value: 328, tolerance: 10, source: `${sr} 19349` },
  { at: { amount: '1 cup', item: 'honey' }, value: 339, tolerance: 6, source: `${sr} 19296` },
  { at: { amount: '1 cup', item: 'honey' }, value: 333.1, tolerance: 6, source: `${cakeBible}: 11.75 oz` },
  { at: { amount: '1 tbsp', item: 'honey' }, value: 21, tolerance: 0.6, source: `${sr} 19296` },
  { at: { amount: '1 cup', item: 'molasses' }, value: 337, tolerance: 18, source: `${sr} 19304` },
  {
    at: { amount: '1 cup', item: 'molasses' },
    value: 318.9,
    tolerance: 18,
    source: `${cakeBible}: 11.25 oz`,
  },
  { at: { amount: '1 cup', item: 'cornstarch' }, value: 128, tolerance: 8, source: `${sr} 20027` },
  { at: { amount: '1 cup', item: 'cornstarch' }, value: 120, tolerance: 8, source: cakeBible },
  { at: { amount: '1 cup', item: 'butter' }, value: 227, tolerance: 7, source: `${sr} 01145; ${cakeBible}` },
  { at: { amount: '1 tbsp', item: 'butter' }, value: 14.2, tolerance: 0.43, source: `${sr} 01145` },
  { at: { amount: '1 tsp', item: 'salt' }, value: 6, tolerance: 0.5, source: `${sr} 02047; ${cakeBible}` },
  { at: { amount: '1 cup', item: 'salt' }, value: 292, tolerance: 8.8, source: `${sr} 02047` },
  { at: { amount: '1 cup', item: 'water' }, value: 237, tolerance: 7, source: `${sr} 14411` },
  { at: { amount: '1 fl oz', item: 'water' }, value: 29.6, tolerance: 0.9, source: `${sr} 14411` },
  { at: { amount: '1 tsp', item: 'cream-of-tartar' }, value: 3, tolerance: 0.1, source: `${sr} 18373` },
  { at: { amount: '1 tsp', item: 'baking-soda' }, value: 4.6, tolerance: 0.14, source: `${sr} 18372` },
  { at: { amount: '1 tsp', item: 'vinegar' }, value: 5, tolerance: 0.15, source: `${sr} 02053` },
  { at: { amount: '1 tbsp', item: 'vinegar' }, value: 14.9, tolerance: 0.45, source: `${sr} 02053` },
  { at: { amount: '1 tsp', item: 'vanilla-extract' }, value: 4.2, tolerance: 0.13, source: `${sr} 02050` },
  { at: { amount: '1 tbsp', item: 'coconut-oil' }, value: 13.6, tolerance: 0.41, source: `${sr} 04047` },
  { at: { amount: '1 tbsp', item: 'cream' }, value: 15, tolerance: 0.5, source: `${sr} 01053` },
  { at: { amount: '1 cup', item: 'cream' }, value: 232, tolerance: 8, source: cakeBible },
  { at: { amount: '1 cup', item: 'milk' }, value: 242, tolerance: 7, source: cakeBible },
];

describe('household measures', () => {
  check(({ amount, item }) => `${amount} of ${item}, g`, measures, grams);
});

/** Syrups against the density of sucrose solutions of the same solids, kg/l. Tolerance: what 1 % of solids makes. */
describe('syrups by their solids', () => {
  check(
    (item) => `density of ${item}`,
    [
      { at: 'corn-syrup', value: 1.391, tolerance: 0.007, source: `${nbs}: 77 %, between 75 and 80` },
      { at: 'rice-syrup', value: 1.404, tolerance: 0.007, source: `${nbs}: 79 %` },
      { at: 'molasses', value: 1.397, tolerance: 0.007, source: `${nbs}: 78 %` },
      { at: 'invert-syrup', value: 1.397, tolerance: 0.007, source: `${nbs}: 78 %` },
      { at: 'golden-syrup', value: 1.431, tolerance: 0.007, source: `${nbs}: 83 %` },
      { at: 'honey', value: 1.43, tolerance: 0.011, source: `${nbs}: 82.8 %` },
      { at: 'glucose-syrup', value: 1.4216, tolerance: 0.005, source: '43 degrees Baume, 145 / (145 - 43)' },
    ],
    (item) => itemById(item)?.densityKilogramPerLitre ?? Number.NaN,
  );
});
