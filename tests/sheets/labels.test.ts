import { describe, expect, it } from 'vitest';
import { batchOf } from '../../source/batch/batch-of.js';
import { plainPrinter } from '../../source/commands/io.js';
import { defaultKitchen } from '../../source/kitchen/default.js';
import type { Recipe } from '../../source/recipe/recipe.js';
import { labelNotes, labelOf, labelText } from '../../source/sheets/labels.js';
import { words } from '../../source/texts/message.js';
import { recipe, recipeNames } from '../cook/play.js';

const asked = { pieces: 10, netGrams: 70, made: '2026-11-25', bestBefore: '2026-12-09' };
const textOf = (one: Recipe, checked: readonly string[] = []) => {
  const batch = batchOf(one, defaultKitchen);
  return labelText(batch, labelOf(batch, checked), asked, plainPrinter);
};
const flat = (text: string) => text.replaceAll('\n', ' ');

describe('a label', () => {
  it('reads as a label reads', () =>
    expect(textOf(recipe('hill-hall-ginger-pull'), ['soy'])).toMatchInlineSnapshot(`
      "Hill hall ginger pull, pulled sugar candy
      Ingredients: granulated sugar, glucose syrup, unsalted
      butter (MILK), cornstarch, salt, ginger oil.
      Contains: MILK.
      Not ruled out: WHEAT (glucose syrup), SULPHITES (glucose
      syrup).
      Net weight: 70 g (2.5 oz), about 10 pieces.
      Made on 2026-11-25. Best before 2026-12-09. Keep it
      cool, dry and closed.
      Sticky and chewy: not for children under four. Sit down
      to eat it.
      Made by: ________________ Telephone: ______________
      Local food law decides what must stand on this label and
      who may give it away.
      "
    `));

  it.each(recipeNames)(
    'lists what was weighed in by falling weight, and no water that boiled away: %s',
    (name) => {
      const batch = batchOf(recipe(name), defaultKitchen);
      const { ingredients } = labelOf(batch, []);
      const grams = ingredients.flatMap((one) => one.grams ?? []);
      expect(grams).toEqual(grams.toSorted((one, other) => other - one));
      expect(ingredients.map((one) => one.name)).not.toContain('water');
    },
  );

  it('lists the water that is left where it is more than a twentieth', () => {
    const dry = recipe('clear-pull');
    const wet = {
      ...dry,
      ingredients: dry.ingredients.map((one) =>
        one.role === 'water' ? { ...one, phase: 'flavour' as const } : one,
      ),
    };
    const { water, ingredients } = labelOf(batchOf(wet, defaultKitchen), []);
    expect(water.leftGrams).toBeGreaterThan(0);
    expect(ingredients.map((one) => one.name)).toContain('water');
  });

  it('counts what is on hands, table and pieces, and its allergens', () => {
    const text = flat(
      textOf({ ...recipe('clear-pull'), hands: 'butter', surface: 'oil', dust: 'powdered-sugar' }),
    );
    expect(text).toContain('unsalted butter (MILK; on hands)');
    expect(text).toContain('vegetable oil (on table)');
    expect(text).toContain('powdered sugar (for dusting)');
  });

  it('does not name twice what is in it anyway', () =>
    expect(textOf(recipe('hill-hall-ginger-pull')).match(/butter/g)).toHaveLength(1));

  it('asks about barley in rice syrup until the packet was read', () => {
    expect(flat(textOf(recipe('rice-syrup-pull')))).toContain('BARLEY (rice syrup)');
    expect(flat(textOf(recipe('rice-syrup-pull'), ['barley']))).not.toContain('BARLEY');
  });

  it('never drops what is contained, whatever was checked', () =>
    expect(textOf(recipe('hill-hall-ginger-pull'), ['milk'])).toContain('Contains: MILK.'));

  it('says where allergens are not known', () => {
    const own = recipe('clear-pull');
    const [first, ...rest] = own.ingredients;
    if (first === undefined) throw new Error('a recipe has ingredients');
    const unknown = { contains: [], check: [], unknown: true };
    const ingredients = [{ ...first, item: 'mystery', name: 'mystery powder', allergens: unknown }, ...rest];
    const text = flat(textOf({ ...own, ingredients, allergens: { ...own.allergens, unknown: true } }));
    expect(text).toContain('Allergens of mystery powder are NOT KNOWN.');
    expect(text).not.toContain('No common allergen');
  });

  it('says so where no common allergen is known of, and where nothing is on hands and table', () => {
    const own = recipe('clear-pull');
    const kept = own.ingredients.filter(
      ({ allergens, role }) => allergens.check.length === 0 && role !== 'water',
    );
    const dry = {
      ...own,
      ingredients: kept,
      hands: 'dry',
      surface: 'dry',
      dust: 'none',
      allergens: { contains: [], check: [], unknown: false },
    } as const;
    const text = flat(textOf(dry));
    expect(text).toContain('No common allergen');
    expect(text).not.toMatch(/on hands|on table|for dusting|NOT KNOWN/);
    // Nothing was boiled away, nothing stands unweighed, nothing is to be read.
    expect(labelNotes(labelOf(batchOf(dry, defaultKitchen), []))).toEqual([]);
  });

  it('tells how the water was counted, and what is still to be read', () => {
    const notes = labelNotes(labelOf(batchOf(recipe('rice-syrup-pull'), defaultKitchen), [])).map((note) =>
      words(note, plainPrinter),
    );
    expect(notes).toEqual([
      expect.stringContaining('it boiled away'),
      expect.stringContaining('on hands, table and pieces is not weighed'),
      expect.stringContaining('--checked barley'),
    ]);
  });
});
