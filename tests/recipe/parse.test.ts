import { describe, expect, it } from 'vitest';
import { parseRecipe } from '../../source/recipe/parse.js';
import { broken, good, problemsOf, recipeOf, say } from './say.js';

describe('a recipe as people write it', () => {
  it('becomes grams, with what is left out filled in', () => {
    const recipe = recipeOf(good);
    expect(recipe.ingredients.map(({ item, phase }) => [item, phase])).toEqual([
      ['granulated-sugar', 'mix'],
      ['glucose-syrup', 'mix'],
      ['water', 'mix'],
    ]);
    expect(recipe.ingredients.map(({ grams }) => Math.round(grams))).toEqual([400, 200, 120]);
    expect(recipe).toMatchObject({
      stir: 'until-boil',
      hands: 'butter',
      dust: 'none',
      piece: { grams: 7, ropeMillimetres: 15 },
    });
  });

  it.each([
    ['2 cups', 400.0],
    ['1 lb', 453.6],
    ['1/2 kg', 500],
    ['½ kg', 500],
    ['1 1/4 cup', 250.0],
    ['"17,5 oz"', 496.1],
  ])('reads %s of sugar as %d g', (amount, grams) => {
    expect(recipeOf(broken('400 g', amount)).ingredients[0]?.grams).toBeCloseTo(grams, 1);
  });

  it('has metric cups where the file says so', () => {
    const metric = recipeOf(`${broken('400 g', '2 cups')}cups: metric\n`);
    expect(metric.ingredients[0]?.grams).toBeCloseTo(422.7, 1);
  });

  it('keeps the amount as the person wrote it', () => {
    expect(recipeOf(broken('400 g', '2  cups')).ingredients[0]?.amount).toBe('2  cups');
  });

  it('takes a target in Fahrenheit', () => {
    expect(recipeOf(broken('celsius: [126, 129]', 'fahrenheit: [259, 264]')).target.celsius).toEqual([
      126.1, 128.9,
    ]);
  });

  it('stirs late by itself where something scorches', () => {
    expect(recipeOf(broken('glucose-syrup, de: 42', 'molasses')).stir).toBe('late');
  });

  it('adds the allergens of hands, surface and ingredients, and keeps what was read on a label', () => {
    const text = `${broken('water, amount: 120 ml', 'cream, amount: 120 ml')}hands: oil\nallergens: { check: [Tree nuts] }\n`;
    const { allergens } = recipeOf(text);
    expect(allergens).toEqual({
      contains: ['milk'],
      check: ['tree nuts', 'wheat', 'sulphites', 'soy', 'peanuts'],
      unknown: false,
    });
  });

  it('says that allergens are unknown until the bottle was read', () => {
    const line = '  - { item: gel-colour, amount: 3 drops }\ntarget';
    expect(recipeOf(broken('target', line)).allergens.unknown).toBe(true);
    const read = '  - { item: gel-colour, amount: 3 drops, allergens: { contains: [] } }\ntarget';
    expect(recipeOf(broken('target', read)).allergens.unknown).toBe(false);
  });

  it('takes an item of one’s own, declared apart or in its line', () => {
    const composition = 'composition: { water: 0.2, glucoseSolids: 0.75, other: 0.05 }';
    const apart = `${broken('glucose-syrup, de: 42', 'malt-extract')}declared:\n  malt-extract: { ${composition}, de: 50, role: doctor }\n`;
    const inLine = broken('item: glucose-syrup, de: 42', `item: malt-extract, de: 50, ${composition}`);
    for (const text of [apart, inLine]) {
      expect(recipeOf(text).ingredients[1]).toMatchObject({
        item: 'malt-extract',
        name: 'malt extract',
        de: 50,
        role: 'doctor',
        grams: 200,
        allergens: { contains: [], check: [], unknown: true },
      });
    }
  });

  it('takes 42 DE where none is given, and says so', () => {
    const parsed = parseRecipe(broken(', de: 42', ''), 'pull.yaml');
    if ('problems' in parsed) throw new Error('not read');
    expect(parsed.recipe.ingredients[1]?.de).toBe(42);
    expect(parsed.notes.map(say)).toEqual([
      'The DE of glucose syrup is not given, so 42 is taken. The tub says it: add "de:".',
    ]);
  });
});

describe('what is wrong is said with the line, what was found and what to write', () => {
  it.each([
    [
      'item: granulated-sugar',
      'item: sugar',
      'pull.yaml:4: ingredients[1].item: "sugar" is not in the ingredient table. Did you mean granulated-sugar? List them with: kettlehand recipes items. Or describe it under "declared".',
    ],
    [
      'item: glucose-syrup',
      'item: glucos-syrup',
      'pull.yaml:5: ingredients[2].item: "glucos-syrup" is not in the ingredient table. Did you mean glucose-syrup? List them with: kettlehand recipes items. Or describe it under "declared".',
    ],
    [
      '400 g',
      '400',
      'pull.yaml:4: ingredients[1].amount: "400" has no unit. Add one of g, kg, mg, oz, lb, cup, tbsp, tsp, ml, l, cl, dl, fl oz, pint, quart, drops, pinch and pieces, for example 300 g, 1 1/4 cup or 20 drops.',
    ],
    [
      '400 g',
      '-400 g',
      'pull.yaml:4: ingredients[1].amount: "-400 g": this amount must be more than nothing, for example 300 g, 1 1/4 cup or 20 drops.',
    ],
    [
      '400 g',
      '400 kg',
      'pull.yaml:4: ingredients[1].amount: "400 kg" is 400 kg; at most 20 kg of one ingredient fits a home batch. Check the number and its unit.',
    ],
    [
      '400 g',
      '400 drops',
      'pull.yaml:4: ingredients[1].amount: granulated sugar is not counted in drops. Write grams or a spoon.',
    ],
    [
      '400 g',
      '3 pieces',
      'pull.yaml:4: ingredients[1].amount: How much a piece of granulated sugar weighs is not known. Write grams.',
    ],
    [
      'de: 42',
      'de: 420',
      'pull.yaml:5: ingredients[2].de: "420" does not fit. Write a plain number from 20 to 100 DE.',
    ],
    [
      'item: water,',
      'item: water, de: 42,',
      'pull.yaml:6: ingredients[3].de: water has no glucose solids, so no DE. Remove this field.',
    ],
    [
      'amount: 120 ml',
      'amount: 120 ml, phase: flavor',
      'pull.yaml:6: ingredients[3].phase: "flavor" is not known here. Did you mean flavour? Write mix, boil, flavour, fold or pull.',
    ],
    [
      'amount: 120 ml',
      'ammount: 120 ml',
      'pull.yaml:6: ingredients[3].ammount: "ammount" is no field here. Did you mean amount? Fields: item, amount, phase, de, allergens, name, role, composition, density, drop, alcohol, scorches.',
    ],
    [
      '[126, 129]',
      '[259, 264]',
      'pull.yaml:7: target.celsius: 259 looks like Fahrenheit. Write celsius: [126, 129], or "fahrenheit" in place of "celsius".',
    ],
    [
      '[126, 129]',
      '[100, 129]',
      'pull.yaml:7: target.celsius: 100 C is outside what pulled candy is cooked to. Write 105 to 160 C.',
    ],
    [
      '[126, 129]',
      '[126, 165]',
      'pull.yaml:7: target.celsius: 165 C is outside what pulled candy is cooked to. Write 105 to 160 C.',
    ],
    [
      '[126, 129]',
      '[129, 126]',
      'pull.yaml:7: target.celsius: The window runs from 129 down to 126. Write the lower number first.',
    ],
    [
      '[126, 129]',
      '126',
      'pull.yaml:7: target.celsius: "126" is here, and a list belongs here. Begin each line with "- ", or write [one, two].',
    ],
    [
      'hard ball',
      'hardball',
      'pull.yaml:7: target.feels: "hardball" is not known here. Did you mean hard ball? Write dissolves, thread, soft ball, firm ball, hard ball, soft crack or hard crack.',
    ],
    ['name: Plain pull\n', '', 'pull.yaml:1: name: This is missing. Add it.'],
    [
      'kettlehand: 1\n',
      '',
      'pull.yaml:1: kettlehand: The version of the format is missing. Add the line "kettlehand: 1" at the top.',
    ],
    [
      'kettlehand: 1',
      'kettlehand: 2',
      'pull.yaml:1: kettlehand: This file was made for version 2 of the format, by a newer kettlehand; this one reads version 1. Update kettlehand.',
    ],
    [
      'kettlehand: 1',
      'kettlehand: one',
      'pull.yaml:1: kettlehand: "one" is no version of the format. Write "kettlehand: 1".',
    ],
    [
      'name: Plain pull',
      'name: Plain pull\nname: Again',
      'pull.yaml:3: This field is written twice. Keep one of them.',
    ],
    ['name: Plain pull', '\tname: Plain pull', 'pull.yaml:2: This line is indented with a tab. Use spaces.'],
    [
      'amount: 400 g }',
      'amount: 400 g',
      'pull.yaml:5: This line is indented differently from its neighbours, or a bracket above is not closed. Line them up with spaces, or close it.',
    ],
    [
      'name: Plain pull',
      'name: "Plain pull',
      'pull.yaml:8: A bracket, brace or quote is opened and not closed here. Close it.',
    ],
    [
      'name: Plain',
      'name:Plain',
      'pull.yaml:2: A field needs a colon and a space behind its name here: "name: value".',
    ],
    [
      'name: Plain',
      'name: Plain: ',
      'pull.yaml:2: A field begins in the middle of another here. Put text that has a colon in quotes, and line the fields up.',
    ],
    [
      'name: Plain',
      'name: @Plain',
      'pull.yaml:2: This begins with a sign that YAML keeps for itself. Put the text in quotes.',
    ],
    [
      'name: Plain',
      'name: !!int Plain',
      'pull.yaml:2: A tag ("!name") is not read in these files. Remove it.',
    ],
    [
      '400 g',
      '17,5 oz',
      'pull.yaml:4: ingredients[1].5 oz: "5 oz" stands behind a comma, and between braces a comma starts a new field. Write a point, as in 17.5, or put quotes around the whole.',
    ],
    [
      'target',
      'stir: late\ntarget',
      'pull.yaml:7: stir: "late" is not known here. Write { until: boil }, or { late: true } for molasses, honey, milk or cream.',
    ],
    [
      'target',
      'piece: { grams: 700 }\ntarget',
      'pull.yaml:7: piece.grams: "700" does not fit. Write a plain number from 1 to 60 g.',
    ],
    [
      'target',
      'cues: { boyl: [ still ] }\ntarget',
      'pull.yaml:7: cues.boyl: "boyl" is no phase. Did you mean boil? Phases: mix, dissolve, boil, test, flavour, pour, fold, pull, cut, wrap, clean, over.',
    ],
    [
      'target',
      'declared: { salt: { composition: { salt: 1 } } }\ntarget',
      'pull.yaml:7: declared.salt: "salt" is in the ingredient table already. Give yours another name.',
    ],
    [
      'target',
      'declared: { ash: { composition: { other: 0.8 } } }\ntarget',
      'pull.yaml:7: declared.ash.composition: These parts add up to 80 %. Make them 100 %: fractions such as 0.8, and "other" for the rest.',
    ],
  ])('%s -> %s', (find, replace, sentence) => {
    expect(problemsOf(broken(find, replace))).toContain(sentence);
  });

  it('says all that is wrong at once, in the order of the file', () => {
    const text = good.replace('400 g', 'some').replace('hard ball', 'chewy').replace('de: 42', 'de: big');
    expect(problemsOf(text).map((sentence) => sentence.split(' ').slice(0, 2).join(' '))).toEqual([
      'pull.yaml:4: ingredients[1].amount:',
      'pull.yaml:5: ingredients[2].de:',
      'pull.yaml:7: target.feels:',
    ]);
  });

  it('refuses a pot without sugar and a pot too small to measure in', () => {
    const nothing = good.replace(/ {2}- \{ item: g.*\n/g, '').replace('120 ml', '20 ml');
    expect(problemsOf(nothing)).toEqual([
      'pull.yaml:4: ingredients: All ingredients together are 20 g. At least 50 g are needed to cover a thermometer. Check the amounts.',
      'pull.yaml:4: ingredients: There is no sugar in this. Add granulated-sugar, a syrup, honey or molasses.',
    ]);
  });

  it('knows a kitchen file when it is given one', () => {
    expect(problemsOf('kettlehand-kitchen: 1\nstove: gas\n')).toEqual([
      'pull.yaml:1: This is a kitchen file. Name a recipe here, and this file with --kitchen.',
    ]);
  });
});
