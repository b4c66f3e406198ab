import { describe, expect, it } from 'vitest';
import { batchOf } from '../../source/batch/batch-of.js';
import { gramsForGuests, scaledFor } from '../../source/batch/scaled-for.js';
import { hall, hillHall } from './samples.js';

describe('how much to make', () => {
  it('makes exactly the pieces that were asked for, counting the usual losses', () => {
    for (const pieces of [24, 60, 100, 333]) {
      const { recipe } = scaledFor(hillHall, hall, { kind: 'pieces', pieces });
      expect(batchOf(recipe, hall).yield.pieces.typical).toBe(pieces);
    }
  });

  it('gives each guest a portion, and children a smaller one', () => {
    const want = { kind: 'guests', guests: 24, children: 10 } as const;
    const { recipe } = scaledFor(hillHall, hall, want);
    const batch = batchOf(recipe, hall, { pullers: 24 });
    expect(batch.yield.portions.count).toBe(24);
    expect(batch.yield.expectedGrams.typical).toBeCloseTo(14 * 40 + 10 * 25, 6);
    expect(gramsForGuests(24, 24)).toBeLessThan(gramsForGuests(24, 0));
  });

  it('fills a pot without foaming over', () => {
    const { recipe } = scaledFor(hillHall, hall, { kind: 'pot', litres: 3 });
    const { pot } = batchOf(recipe, { ...hall, pot: { litres: 3, diameterMillimetres: null } });
    expect(pot.neededLitres).toBeCloseTo(3, 9);
    expect(pot.fits).toBe(true);
  });

  it('gives nobody more than a pair of hands can pull', () => {
    for (const hands of ['bare', 'visitors', 'gloved', 'children'] as const) {
      const { portions } = batchOf(hillHall, { ...hall, hands }).yield;
      expect(portions.grams).toBeLessThanOrEqual(hands === 'children' ? 60 : 200);
    }
  });
});
