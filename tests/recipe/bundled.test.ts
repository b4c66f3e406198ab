import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { batchOf } from '../../source/batch/batch-of.js';
import { parseKitchen } from '../../source/kitchen/parse.js';
import { balanceOf } from '../../source/recipe/balance.js';
import { recipeNotes } from '../../source/recipe/notes.js';
import { parseRecipe } from '../../source/recipe/parse.js';
import { wallCare } from '../../source/recipe/wall-care.js';
import { recipeOf, say, sayProblem } from './say.js';

const folder = join(import.meta.dirname, '../../recipes');
const textOf = (file: string): string => readFileSync(join(folder, file), 'utf8');
const files = readdirSync(folder).filter((file) => file.endsWith('.yaml'));
const hall = (() => {
  const parsed = parseKitchen(textOf('kitchens/hill-hall.yaml'), 'hill-hall.yaml');
  if ('problems' in parsed) throw new Error(parsed.problems.map(sayProblem).join('\n'));
  return parsed.kitchen;
})();

describe.each(files)('%s', (file) => {
  const recipe = recipeOf(textOf(file));

  it('can be cooked without any remark', () => {
    const parsed = parseRecipe(textOf(file), file);
    expect('notes' in parsed && [...parsed.notes, ...recipeNotes(recipe)].map(say)).toEqual([]);
  });

  it('gives its reasons, speaks to the people who watch, and fits the pot of the hall', () => {
    expect(
      textOf(file)
        .split('\n')
        .filter((line) => line.trim().startsWith('#')).length,
    ).toBeGreaterThanOrEqual(4);
    expect(Object.keys(recipe.cues).length).toBeGreaterThanOrEqual(2);
    expect(recipe.allergens.unknown).toBe(false);
    expect(batchOf(recipe, hall).pot).toMatchObject({ fits: true, stemCovered: true });
  });

  it('is within the published range of pulled candies', () => {
    // Softest: 122 C (Woman's Institute, 1920s); hottest of those pulled to chew: 285 F, 141 C (honey taffy).
    expect(recipe.target.celsius[0]).toBeGreaterThanOrEqual(121);
    expect(recipe.target.celsius[1]).toBeLessThanOrEqual(141);
  });
});

describe('the shelf', () => {
  it('has at least seven recipes', () => expect(files.length).toBeGreaterThanOrEqual(7));

  it.each([
    ['clear-pull.yaml', 'lid'],
    ['mint-pull.yaml', 'lid'],
    ['hill-hall-ginger-pull.yaml', 'brush'],
    ['vinegar-pull.yaml', 'brush'],
    ['rice-syrup-pull.yaml', 'brush'],
    ['molasses-pull.yaml', 'none-late-stir'],
    ['honey-pull.yaml', 'none-late-stir'],
    ['cream-pull.yaml', 'none-late-stir'],
  ])('%s keeps its walls clean with: %s', (file, care) =>
    expect(wallCare(recipeOf(textOf(file)))).toBe(care),
  );

  it.each(files.filter((file) => file !== 'vinegar-pull.yaml'))(
    '%s has as much doctor as published candies',
    (file) => {
      // Glucose to sugar as bought 0.33 (California Home Economics Association 1920) to 1.0 (Bell 1911), dry x 0.8.
      const { ratio } = balanceOf(recipeOf(textOf(file)));
      expect(ratio).toBeGreaterThanOrEqual(0.33 * 0.8);
      expect(ratio).toBeLessThanOrEqual(1);
    },
  );

  it('serves the table without corn and without milk', () => {
    const recipe = recipeOf(textOf('rice-syrup-pull.yaml'));
    expect(recipe.ingredients.some(({ item }) => /corn|glucose/.test(item))).toBe(false);
    expect(recipe.allergens.contains).toEqual([]);
  });

  it('reaches the 24 visitors of the winter fair', () => {
    expect(
      batchOf(recipeOf(textOf('hill-hall-ginger-pull.yaml')), hall).yield.pieces.low,
    ).toBeGreaterThanOrEqual(4 * 24);
  });
});
