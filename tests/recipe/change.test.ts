import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { scaleAmount } from '../../source/recipe/amount.js';
import { balanceOf } from '../../source/recipe/balance.js';
import { recipeNotes } from '../../source/recipe/notes.js';
import { scaleRecipe } from '../../source/recipe/scale.js';
import { doctors, substituteDoctor } from '../../source/recipe/substitution.js';
import { wallCare } from '../../source/recipe/wall-care.js';
import { broken, good, recipeOf, say } from './say.js';

const starchSoft = `kettlehand: 1
name: Starch pull
ingredients:
  - { item: granulated-sugar, amount: 500 g }
  - { item: cornstarch, amount: 2 tbsp }
  - { item: glucose-syrup, de: 42, amount: 420 g }
  - { item: butter, amount: 20 g }
  - { item: water, amount: 150 ml }
  - { item: peppermint-oil, amount: 12 drops }
target: { celsius: [123, 126], feels: hard ball }
`;

describe('more or less of it', () => {
  it('scaled by k and then by 1/k is the same candy', () => {
    const recipe = recipeOf(starchSoft);
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 20, noNaN: true }), (factor) => {
        const back = scaleRecipe(scaleRecipe(recipe, factor), 1 / factor);
        return back.ingredients.every(
          (one, place) => Math.abs(one.grams / (recipe.ingredients[place]?.grams ?? 0) - 1) < 1e-12,
        );
      }),
    );
  });

  it('keeps target, piece and balance', () => {
    const recipe = recipeOf(starchSoft);
    const twice = scaleRecipe(recipe, 2);
    expect(twice).toMatchObject({ target: recipe.target, piece: recipe.piece });
    expect(balanceOf(twice).ratio).toBeCloseTo(balanceOf(recipe).ratio, 12);
    expect(twice.ingredients.map(({ amount }) => amount)).toEqual([
      '1000 g',
      '4 tbsp',
      '840 g',
      '40 g',
      '300 ml',
      '24 drops',
    ]);
  });

  it.each([
    ['500 g', 1.5, '750 g'],
    ['1/2 tsp', 3, '1 1/2 tsp'],
    ['1 cup', 2, '2 cups'],
    ['2 cups', 0.5, '1 cup'],
    ['1 1/4 cups', 2, '2 1/2 cups'],
    ['1/4 tsp', 1 / 3, '0.083 tsp'],
    ['20 drops', 1.24, '25 drops'],
    ['2 drops', 0.5, '1 drop'],
    ['a pinch', 2, '2 pinches'],
    ['1/2 lb', 3, '1.5 lb'],
  ])('%s times %d is %s', (amount, factor, scaled) => expect(scaleAmount(amount, factor)).toBe(scaled));

  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('refuses a factor of %d', (factor) => {
    expect(() => scaleRecipe(recipeOf(good), factor)).toThrow(RangeError);
  });
});

describe('the same candy with another doctor', () => {
  it.each(doctors)('%s: as much doctoring, sucrose and water as before', (doctor) => {
    const recipe = recipeOf(starchSoft);
    const before = balanceOf(recipe);
    const after = balanceOf(substituteDoctor(recipe, doctor).recipe);
    expect(after.doctorGrams).toBeCloseTo(before.doctorGrams, 6);
    expect(after.sucroseGrams).toBeCloseTo(before.sucroseGrams, 6);
    expect(after.waterGrams).toBeCloseTo(before.waterGrams, 6);
  });

  it.each([
    ['rice-syrup', '432 g'],
    ['honey', '429 g'],
    ['molasses', '982 g'],
    ['invert-syrup', '452 g'],
  ] as const)('%s: %s in place of 420 g of glucose syrup', (doctor, amount) => {
    const changed = substituteDoctor(recipeOf(starchSoft), doctor).recipe;
    expect(changed.ingredients.find(({ item }) => item === doctor)?.amount).toBe(amount);
    expect(changed.ingredients.some(({ item }) => item === 'glucose-syrup')).toBe(false);
  });

  it('says what changes, after everything else', () => {
    expect(substituteDoctor(recipeOf(starchSoft), 'rice-syrup').changes.map(say)).toEqual([
      'Without corn: paler taste of malt, a little brown, foams more. Its strength differs from maker to maker: test in cold water, and take no target from a book. Some makers use barley: read the label.',
      '7 g less water goes in, so that the pot starts as wet as before.',
      'cornstarch is still made of corn. For somebody who may not have corn, use potato or rice starch and describe it under "declared".',
      'Starch, butter, flavours and target stay as they were.',
    ]);
  });

  it('stirs late and takes the lid away where the new one scorches', () => {
    const clear = recipeOf(good);
    expect(wallCare(clear)).toBe('lid');
    expect(wallCare(substituteDoctor(clear, 'invert-syrup').recipe)).toBe('lid');
    expect(substituteDoctor(clear, 'honey').recipe.stir).toBe('late');
    expect(wallCare(substituteDoctor(clear, 'honey').recipe)).toBe('none-late-stir');
  });

  it('says so where there is nothing to take out', () => {
    const recipe = recipeOf(broken('glucose-syrup, de: 42', 'honey'));
    const { recipe: same, changes } = substituteDoctor(recipe, 'rice-syrup');
    expect(same).toBe(recipe);
    expect(changes.map(say)).toEqual(['There is no glucose or corn syrup in this recipe to take out.']);
  });
});

describe('what a recipe is remarked on for', () => {
  const notes = (text: string): readonly string[] => recipeNotes(recipeOf(text)).map(({ id }) => id);

  it.each([
    ['nothing, if it is sound', good, []],
    [
      'no doctor at all',
      broken('  - { item: glucose-syrup, de: 42, amount: 200 g }\n', ''),
      ['recipe.note.no-doctor'],
    ],
    ['little doctor', broken('200 g', '60 g'), ['recipe.note.little-doctor']],
    ['much doctor', broken('200 g', '700 g'), ['recipe.note.much-doctor']],
    [
      'acid that does the doctoring',
      broken('glucose-syrup, de: 42, amount: 200 g', 'vinegar, amount: 60 ml'),
      [],
    ],
    [
      'acid that is only a flavour',
      broken('glucose-syrup, de: 42, amount: 200 g', 'vinegar, amount: 60 ml, phase: flavour'),
      ['recipe.note.no-doctor'],
    ],
    [
      'far too much acid',
      broken('target', '  - { item: cream-of-tartar, amount: 3 tsp, phase: mix }\ntarget'),
      ['recipe.note.much-acid'],
    ],
    [
      'honey stirred until the boil only',
      `${broken('glucose-syrup, de: 42', 'honey')}stir: { until: boil }\n`,
      ['recipe.note.stir-late'],
    ],
    ['a clear syrup stirred late', `${good}stir: { late: true }\n`, ['recipe.note.stir-clear']],
    ['hardly any water', broken('120 ml', '10 ml'), ['recipe.note.little-water']],
    [
      'extract in the boil',
      broken('target', '  - { item: vanilla-extract, amount: 1 tsp, phase: boil }\ntarget'),
      ['recipe.note.alcohol-early'],
    ],
    [
      'oil of mint in the boil',
      broken('target', '  - { item: peppermint-oil, amount: 9 drops, phase: mix }\ntarget'),
      ['recipe.note.flavour-early'],
    ],
    [
      'soda in the boil',
      broken('target', '  - { item: baking-soda, amount: 1/4 tsp, phase: boil }\ntarget'),
      ['recipe.note.soda-early'],
    ],
    [
      'a cold-water outcome that does not go with the number',
      broken('hard ball', 'hard crack'),
      ['recipe.note.feels'],
    ],
    [
      'a target close to scorching',
      broken('celsius: [126, 129], feels: hard ball', 'celsius: [150, 152], feels: hard crack'),
      ['recipe.note.hot-target'],
    ],
    [
      'a bottle that nobody read',
      broken('target', '  - { item: fruit-flavour, amount: 1 tsp }\ntarget'),
      ['recipe.note.allergens-unknown'],
    ],
  ])('%s', (_, text, ids) => expect(notes(text)).toEqual(ids));
});
