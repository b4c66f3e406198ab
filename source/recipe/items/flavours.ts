import { type Item, parts, row } from './item.js';

const perDropOil = 0.03;
const perDropWatery = 0.05;
const dropSource = 'a drop of oil 0.03 g, of a watery liquid 0.05 g: common practice, no source';
const fromBottle = { contains: [], check: [], unknown: true } as const;

const oil = (id: string, name: string, density: number, alsoCalled: readonly string[]): Item =>
  row({
    id,
    name,
    roles: ['flavour'],
    composition: parts({ other: 1 }),
    densityKilogramPerLitre: density,
    dropGrams: perDropOil,
    alsoCalled,
    source: {
      composition:
        'essential oil: neither dissolves in the syrup nor softens it as fat does; counted as other',
      density: `pharmacopoeia range, from memory; ${dropSource}`,
    },
  });

/** Flavours and colours. What is bought as a blend has the allergens of its bottle: unknown until it is read. */
export const flavourItems: readonly Item[] = [
  oil('peppermint-oil', 'peppermint oil', 0.9, ['mint-oil', 'peppermint', 'mint', 'spearmint-oil']),
  oil('ginger-oil', 'ginger oil', 0.88, ['ginger']),
  oil('lemon-oil', 'lemon oil', 0.85, ['lemon-flavour', 'lemon-essence']),
  oil('orange-oil', 'orange oil', 0.845, ['orange', 'orange-flavour']),
  oil('cinnamon-oil', 'cinnamon oil', 1.05, ['cinnamon', 'cassia-oil']),
  oil('anise-oil', 'anise oil', 0.98, ['aniseed-oil', 'anise', 'aniseed']),
  row({
    id: 'vanilla-extract',
    name: 'vanilla extract',
    roles: ['flavour'],
    composition: parts({ water: 0.5258, invert: 0.1265, other: 0.3477 }),
    densityKilogramPerLitre: 0.87,
    dropGrams: perDropOil,
    alcohol: true,
    alsoCalled: ['vanilla', 'vanilla-essence'],
    source: {
      composition: 'USDA SR27 (2014) 02050: water 52.58, carbohydrate 12.65 %; the alcohol counted as other',
      density: `USDA SR27 (2014) 02050: 4.2 g a teaspoon (0.85), 13 g a tablespoon (0.88) from memory; ${dropSource}`,
    },
  }),
  row({
    id: 'fruit-flavour',
    name: 'fruit flavour',
    roles: ['flavour'],
    composition: parts({ water: 0.3, other: 0.7 }),
    densityKilogramPerLitre: 1,
    dropGrams: perDropWatery,
    alcohol: true,
    allergens: fromBottle,
    alsoCalled: [
      'flavour',
      'flavor',
      'flavouring',
      'flavoring',
      'fruit-flavor',
      'strawberry',
      'cherry',
      'apple',
    ],
    source: {
      composition: 'bottles differ: our judgement; taken as one on alcohol, which is the careful answer',
      density: `our judgement; ${dropSource}`,
      allergens: 'unknown until the bottle is read',
    },
  }),
  row({
    id: 'gel-colour',
    name: 'gel colour',
    roles: ['colour'],
    composition: parts({ water: 0.35, other: 0.65 }),
    densityKilogramPerLitre: 1.2,
    dropGrams: perDropWatery,
    allergens: fromBottle,
    alsoCalled: ['gel-color', 'paste-colour', 'food-colouring-gel'],
    source: {
      composition: 'bottles differ: our judgement',
      density: `our judgement; ${dropSource}`,
      allergens: 'unknown until the bottle is read',
    },
  }),
  row({
    id: 'liquid-colour',
    name: 'liquid colour',
    roles: ['colour'],
    composition: parts({ water: 0.95, other: 0.05 }),
    densityKilogramPerLitre: 1,
    dropGrams: perDropWatery,
    allergens: fromBottle,
    alsoCalled: ['liquid-color', 'food-colouring', 'food-coloring', 'colour', 'color', 'colouring'],
    source: {
      composition: 'bottles differ: our judgement',
      density: `our judgement; ${dropSource}`,
      allergens: 'unknown until the bottle is read',
    },
  }),
];
