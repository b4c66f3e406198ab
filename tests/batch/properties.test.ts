import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Batch } from '../../source/batch/batch.js';
import { batchOf } from '../../source/batch/batch-of.js';
import type { Kitchen } from '../../source/kitchen/kitchen.js';
import type { Ingredient, Recipe } from '../../source/recipe/recipe.js';
import { scaleRecipe } from '../../source/recipe/scale.js';
import { hall, hillHall } from './samples.js';

/** Our batch with other amounts: any mass from a pinch to kilograms, any window of a pulled candy. */
const amounts = fc.tuple(
  ...hillHall.ingredients.map((one) => fc.double({ min: one.grams / 5, max: one.grams * 5, noNaN: true })),
);
const recipes: fc.Arbitrary<Recipe> = fc
  .record({
    amounts,
    low: fc.double({ min: 112, max: 150, noNaN: true }),
    wide: fc.double({ min: 0, max: 8, noNaN: true }),
    grams: fc.double({ min: 2, max: 30, noNaN: true }),
    rope: fc.double({ min: 8, max: 30, noNaN: true }),
  })
  .map(({ amounts: grams, low, wide, grams: piece, rope }) => ({
    ...hillHall,
    ingredients: hillHall.ingredients.map(
      (one, at): Ingredient => ({ ...one, grams: grams[at] ?? one.grams }),
    ),
    target: { celsius: [low, low + wide], feels: 'hard ball' },
    piece: { grams: piece, ropeMillimetres: rope },
  }));
const maybe = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: null });
const kitchens: fc.Arbitrary<Kitchen> = fc
  .record({
    altitudeMetres: maybe(fc.double({ min: -400, max: 9000, noNaN: true })),
    pressurePascal: maybe(fc.double({ min: 55_000, max: 106_000, noNaN: true })),
    stove: fc.constantFrom('gas', 'coil', 'glass-ceramic', 'induction'),
    litres: maybe(fc.double({ min: 0.5, max: 20, noNaN: true })),
    humidity: maybe(fc.double({ min: 0, max: 1, noNaN: true })),
  })
  .map(({ litres, humidity, ...rest }) => ({
    ...hall,
    ...rest,
    pot: { litres, diameterMillimetres: 200 },
    room: { celsius: 20, humidity },
  }));

const pairs = ({ target, boil, candy }: Batch) => [
  target.todayCelsius,
  boil.solidsFractionAtTarget,
  boil.waterToBoilAwayGrams,
  candy.moistureFraction,
  candy.glassTransitionCelsius,
  candy.pullsCelsius,
  candy.equilibriumRelativeHumidity,
];

describe('any batch in any kitchen', () => {
  it('loses nothing but water on the way from pot to pieces', () => {
    fc.assert(
      fc.property(recipes, kitchens, (recipe, kitchen) => {
        const batch = batchOf(recipe, kitchen);
        const all = recipe.ingredients.reduce((sum, { grams }) => sum + grams, 0);
        expect(batch.totalGrams + batch.laterGrams).toBeCloseTo(all, 6);
        const boiledAway = all - batch.yield.cookedGrams;
        expect(boiledAway).toBeGreaterThanOrEqual(batch.boil.waterToBoilAwayGrams[0] - 1e-6);
        expect(boiledAway).toBeLessThanOrEqual(batch.boil.waterToBoilAwayGrams[1] + 1e-6);
        expect(boiledAway).toBeLessThanOrEqual(batch.waterGrams + 1e-6);
        const { pieces, expectedGrams } = batch.yield;
        for (const key of ['low', 'typical', 'high'] as const) {
          expect(pieces[key] * recipe.piece.grams).toBeLessThanOrEqual(expectedGrams[key] * (1 + 1e-6));
          expect((pieces[key] + 1) * recipe.piece.grams).toBeGreaterThan(expectedGrams[key]);
        }
        expect(batch.yield.ropeMetres * 1000).toBeCloseTo(
          (expectedGrams.typical / recipe.piece.grams) * batch.yield.cutMillimetres,
          3,
        );
      }),
    );
  });

  it('has ascending pairs of finite numbers, and fractions between 0 and 1', () => {
    fc.assert(
      fc.property(recipes, kitchens, (recipe, kitchen) => {
        const batch = batchOf(recipe, kitchen);
        for (const [low, high] of pairs(batch)) {
          expect(Number.isFinite(low) && Number.isFinite(high)).toBe(true);
          expect(low).toBeLessThanOrEqual(high);
        }
        for (const [low, high] of [
          batch.candy.moistureFraction,
          batch.boil.solidsFractionAtTarget,
          batch.candy.equilibriumRelativeHumidity,
        ]) {
          expect(low).toBeGreaterThanOrEqual(0);
          expect(high).toBeLessThanOrEqual(1);
        }
      }),
    );
  });

  it('is the same batch after scaling by k and by 1/k, and k times as much in between', () => {
    fc.assert(
      fc.property(recipes, fc.double({ min: 0.05, max: 20, noNaN: true }), (recipe, k) => {
        const [one, scaled, back] = [
          recipe,
          scaleRecipe(recipe, k),
          scaleRecipe(scaleRecipe(recipe, k), 1 / k),
        ].map((each) => batchOf(each, hall)) as [Batch, Batch, Batch];
        expect(back.yield.cookedGrams).toBeCloseTo(one.yield.cookedGrams, 6);
        expect(back.target.takeOffCelsius).toBeCloseTo(one.target.takeOffCelsius, 6);
        expect(scaled.target.takeOffCelsius).toBeCloseTo(one.target.takeOffCelsius, 6);
        expect(scaled.candy.moistureFraction[0]).toBeCloseTo(one.candy.moistureFraction[0], 9);
        expect(scaled.yield.cookedGrams / one.yield.cookedGrams).toBeCloseTo(k, 6);
        expect(scaled.pot.neededLitres / one.pot.neededLitres).toBeCloseTo(k, 6);
      }),
    );
  });

  it('is cooked lower the thinner the air', () => {
    const heights = fc.tuple(fc.integer({ min: -400, max: 5000 }), fc.integer({ min: 50, max: 500 }));
    fc.assert(
      fc.property(recipes, heights, (recipe, [low, more]) => {
        const at = (altitudeMetres: number) =>
          batchOf(recipe, { ...hall, altitudeMetres }).target.todayCelsius;
        expect(at(low + more)[0]).toBeLessThan(at(low)[0]);
        expect(at(low + more)[1]).toBeLessThan(at(low)[1]);
      }),
    );
  });
});
