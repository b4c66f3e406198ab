import { describe, expect, it } from 'vitest';
import { batchOf } from '../../source/batch/batch-of.js';
import { pieceGrams } from '../../source/batch/yield.js';
import { recipeOf, seaLevel } from '../batch/samples.js';
import { check } from './check.js';
import type { Row } from './syrups.js';

const inch = 25.4;
const pound = 453.592;

type Cut = { readonly rope: number; readonly length: number };
const inches = ({ rope, length }: Cut): string => `${rope} in rope cut every ${length} in, grams a piece`;

/**
 * By hand rope and length are true to about a sixteenth of an inch: an eighth of a half-inch piece, and the diameter
 * counts twice. A quarter of the mass is what such pieces differ by.
 */
const row = (at: Cut, value: number, source: string): Row<Cut> => ({
  at,
  value,
  tolerance: 0.25 * value,
  source,
});

describe('what a piece weighs', () => {
  check(
    inches,
    [
      row(
        { rope: 0.5, length: 0.5 },
        (0.75 * pound) / 140,
        'sugar producers leaflet, mints: 3/4 lb, 140 pieces',
      ),
      row({ rope: 1, length: 1 }, (1.5 * pound) / 48, 'recipe page, saltwater: 1 1/2 lb, 48 servings'),
    ],
    ({ rope, length }) => pieceGrams(rope * inch, length * inch),
  );

  it('lies between 3.5 and 4.2 g for half an inch by an inch at 1.1 to 1.3 g/cm3', () => {
    expect(pieceGrams(0.5 * inch, inch, 1.1)).toBeGreaterThan(3.5);
    expect(pieceGrams(0.5 * inch, inch, 1.3)).toBeLessThan(4.2);
  });
});

describe('pieces that published recipes count', () => {
  it('counts 140 mints of half an inch (leaflet, 262 F) with pieces of 2.43 g', () => {
    const mints = batchOf(
      recipeOf({
        ingredients: [
          ['water', '1 cup'],
          ['granulated-sugar', '2 cups'],
          ['cream-of-tartar', '1/4 tsp'],
        ],
        target: 'fahrenheit: [262, 262]',
        piece: `grams: ${((0.75 * pound) / 140).toFixed(3)}, ropeMillimetres: 12.7`,
      }),
      seaLevel,
    );
    expect(mints.yield.pieces.low).toBeLessThanOrEqual(145);
    expect(mints.yield.pieces.high).toBeGreaterThanOrEqual(135);
  });

  it('counts about 100 one-inch pieces of a three-quarter-inch rope (recipe page Y9, 248 F)', () => {
    const pieces = batchOf(
      recipeOf({
        ingredients: [
          ['granulated-sugar', '2 1/2 cups'],
          ['corn-syrup', '1 1/2 cups'],
          ['evaporated-milk', '1/2 cup'],
        ],
        target: 'fahrenheit: [248, 248]',
        piece: `grams: ${pieceGrams(0.75 * inch, inch).toFixed(2)}, ropeMillimetres: ${0.75 * inch}`,
      }),
      seaLevel,
    ).yield.pieces;
    expect(pieces.low).toBeLessThanOrEqual(110);
    expect(pieces.high).toBeGreaterThanOrEqual(90);
  });

  it('rejects 50 one-inch pieces from a half-inch rope (museum recipe W13): 14.7 g would be a hand long', () => {
    const museum = batchOf(
      recipeOf({
        ingredients: [
          ['granulated-sugar', '2 cups'],
          ['cornstarch', '2 tbsp'],
          ['corn-syrup', '1 cup'],
          ['water', '3/4 cup'],
          ['butter', '2 tbsp'],
          ['salt', '1 tsp'],
        ],
        target: 'fahrenheit: [270, 270]',
        piece: 'grams: 14.7, ropeMillimetres: 12.7',
      }),
      seaLevel,
    );
    expect(museum.yield.cutMillimetres).toBeGreaterThan(3 * inch);
    expect(museum.notes.map(({ id }) => id)).toContain('plan.note.cut');
    const byGeometry = museum.yield.expectedGrams.typical / pieceGrams(0.5 * inch, inch);
    expect(byGeometry / 50).toBeGreaterThan(3);
  });
});
