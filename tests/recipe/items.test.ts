import { describe, expect, it } from 'vitest';
import { itemById, items, nearestItem } from '../../source/recipe/items.js';

/** Names that the interface promises, and flavours and colours. */
const promised = [
  'granulated-sugar',
  'brown-sugar',
  'corn-syrup',
  'glucose-syrup',
  'rice-syrup',
  'honey',
  'molasses',
  'invert-syrup',
  'golden-syrup',
  'water',
  'butter',
  'oil',
  'cream',
  'milk',
  'cornstarch',
  'gelatine',
  'glycerine',
  'salt',
  'cream-of-tartar',
  'vinegar',
  'lemon-juice',
  'citric-acid',
  'baking-soda',
  'vanilla-extract',
  'peppermint-oil',
  'ginger-oil',
  'lemon-oil',
  'cinnamon-oil',
  'anise-oil',
  'fruit-flavour',
  'gel-colour',
  'liquid-colour',
  'powdered-sugar',
  'lecithin',
  'coconut-oil',
  'evaporated-milk',
];

describe('the ingredient table', () => {
  it.each(promised)('has %s', (id) => expect(itemById(id)).not.toBeNull());

  it.each(items.map((item) => [item.id, item] as const))(
    '%s is whole: parts of 100 %%, a density, its sources',
    (_, item) => {
      const shares = Object.values(item.composition);
      expect(shares.every((share) => share >= 0 && share <= 1)).toBe(true);
      expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
      expect(item.densityKilogramPerLitre).toBeGreaterThan(0.3);
      expect(item.densityKilogramPerLitre).toBeLessThan(1.6);
      expect(item.composition.glucoseSolids > 0).toBe(item.de !== null);
      expect(item.source.composition.length).toBeGreaterThan(5);
      expect(item.source.density.length).toBeGreaterThan(5);
    },
  );

  it('has every name once', () => {
    const names = items.flatMap((item) => [item.id, ...item.alsoCalled]);
    expect(names.filter((name, place) => names.indexOf(name) !== place)).toEqual([]);
  });

  it.each(['butter', 'salted-butter', 'cream', 'milk', 'evaporated-milk', 'condensed-milk'])(
    '%s contains milk',
    (id) => expect(itemById(id)?.allergens.contains).toContain('milk'),
  );

  it.each(['molasses', 'honey', 'milk', 'cream', 'evaporated-milk', 'condensed-milk'])(
    '%s scorches and is never under a lid',
    (id) => expect(itemById(id)).toMatchObject({ scorches: true, clear: false }),
  );

  it.each(['vanilla-extract', 'fruit-flavour'])('%s is kept from flames', (id) =>
    expect(itemById(id)?.alcohol).toBe(true),
  );

  it.each(items.filter((item) => item.roles[0] === 'flavour').map((item) => item.id))(
    '%s can be dripped',
    (id) => {
      const drop = itemById(id)?.dropGrams ?? 0;
      expect(drop).toBeGreaterThanOrEqual(0.03);
      expect(drop).toBeLessThanOrEqual(0.05);
    },
  );

  it.each([
    ['sugar', 'granulated-sugar'],
    ['Icing Sugar', 'powdered-sugar'],
    ['treacle', 'molasses'],
    ['cornflour', 'cornstarch'],
    ['bicarb', 'baking-soda'],
    ['gelatin', 'gelatine'],
    ['mollasses', 'molasses'],
    ['cream_of_tarter', 'cream-of-tartar'],
    ['flour', null],
    ['x'.repeat(10_000), null],
  ])('%s is answered with %s', (typed, id) => expect(nearestItem(typed)).toBe(id));
});
