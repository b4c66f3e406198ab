import { describe, expect, it } from 'vitest';
import { parseKitchen } from '../../source/kitchen/parse.js';
import { broken, good, problemsOf, recipeOf, sayProblem } from './say.js';

const parts = 'composition: { water: 0.2, glucoseSolids: 0.75, other: 0.05 }';
const malt = (described: string): string =>
  `${broken('glucose-syrup, de: 42', 'malt-extract')}declared:\n  malt-extract: ${described}\n`;
const more = (lines: string): string => `${good}${lines}\n`;
const target = (written: string): string => broken('{ celsius: [126, 129], feels: hard ball }', written);
const water = (written: string): string => broken('{ item: water, amount: 120 ml }', written);

const recipes: readonly (readonly [string, string])[] = [
  [
    target('{ celsius: [126, 129], fahrenheit: [259, 264], feels: hard ball }'),
    ':7: target: The target is given in Celsius and in Fahrenheit. Keep one of them.',
  ],
  [
    target('[126, 129]'),
    ':7: target: "[...]" is here, and fields belong here: celsius, fahrenheit or feels.',
  ],
  [target('{ feels: hard ball }'), ':7: target.celsius: This is missing. Add it.'],
  [target('{ celsius: [126, 129], feels: [hard] }'), ':7: target.feels: "[...]" is not known here.'],
  [
    more('stir: { until: boil, late: true }'),
    ':8: stir: This says both to stir until it boils and to stir late.',
  ],
  [more('stir: { late: [yes] }'), ':8: stir.late: "[...]" is not known here. Write true, false, yes or no.'],
  [more('hands: { a: b }'), ':8: hands: "{...}" is not known here. Write butter, oil, starch or dry.'],
  [more('cues: x'), ':8: cues: "x" is here, and fields belong here. Write "field: value"'],
  [more('cues: { boil: { a: b } }'), ':8: cues.boil: "{...}" is here, and words belong here.'],
  [more('allergens: milk'), ':8: allergens: "milk" is here, and fields belong here: contains or check.'],
  [broken('400 g', '[400 g]'), ':4: ingredients[1].amount: "[...]" is here, and words belong here.'],
  [broken('de: 42', 'de: [42]'), ':5: ingredients[2].de: "[...]" does not fit. Write a plain number'],
  [
    broken('ingredients:', 'ingredients: sugar\nother:'),
    ':3: ingredients: "sugar" is here, and a list belongs here.',
  ],
  [water('water'), ':6: ingredients[3]: "water" is here, and fields belong here: item, amount,'],
  [water(''), ':6: ingredients[3]: This is missing. Add it.'],
  [water("{ item: '', amount: 120 ml }"), ':6: ingredients[3].item: This is missing. Add it.'],
  [
    water('{ item: water, role: water, amount: 120 ml }'),
    ':6: ingredients[3].role: Only an item of your own is',
  ],
  [
    broken('  - { item: water, amount: 120 ml }\n', '  - { item: water, amount: 1 ml }\n'.repeat(60)),
    ':4: ingredients: 62 are listed; at most 60 are read. Shorten the list.',
  ],
  [
    more(`declared:\n  Malt!: { ${parts}, de: 50 }`),
    ':9: declared.Malt!: "Malt!" can\'t be the name of an item.',
  ],
  [
    broken('item: glucose-syrup, de: 42', `item: Malt!, de: 50, ${parts}`),
    ':5: ingredients[2].item: "Malt!" can\'t be the name of an item.',
  ],
  [malt('{ role: doctor }'), ':9: declared.malt-extract.composition: This is missing. Add it.'],
  [
    malt('{ composition: sweet }'),
    ':9: declared.malt-extract.composition: "sweet" is here, and fields belong',
  ],
  [malt(`{ ${parts} }`), ':9: declared.malt-extract.de: Glucose solids are named, so their DE is needed.'],
  ['', ':1: This holds no fields. Start with a line such as "kettlehand: 1"'],
];

const kitchens: readonly (readonly [string, string])[] = [
  ['altitude: [1]', ':2: altitude: "[...]" is here, and words belong here.'],
  ['room: { temperature: [17] }', ':2: room.temperature: "[...]" is here, and words belong here.'],
  ['thermometers: [dial]', ':2: thermometers[1]: "dial" is here, and fields belong here: id, kind,'],
  ['thermometers:\n  -', ':3: thermometers[1]: This is missing. Add it.'],
  ['thermometers: [{ checked: 2026-13-40 }]', ':2: thermometers[1].checked: "2026-13-40" is no date.'],
  ['thermometers: [{ checked: 2026 }]', ':2: thermometers[1].checked: "2026" is no date.'],
  ['heat: [[a]]', ':2: heat[1]: "[...]" is here, and words belong here.'],
  ['heat: { a: b }', ':2: heat: "{...}" is here, and words belong here.'],
  ['learned: x', ':2: learned: "x" is here, and fields belong here: thermometer, carry-over,'],
  ['learned: { carry-over: { date: 2026-11-25 } }', ':2: learned.carry-over.value: This is missing. Add it.'],
  ['learned: { carry-over: { value: [2] } }', ':2: learned.carry-over.value: "[...]" is here, and words'],
  ['learned: { carry-over: { value: 2 F, date: soon } }', ':2: learned.carry-over.date: "soon" is no date.'],
  [
    'learned: { carry-over: much }',
    ':2: learned.carry-over: "much" can\'t be meant here. Write for example 2 F',
  ],
  [
    'learned: { watts: { nine: 600 W } }',
    ':2: learned.watts.nine: "nine" is no field here. Fields: low, medium, high.',
  ],
];

describe('what stands where something else belongs', () => {
  it.each(recipes)('in a recipe: %#', (text, sentence) => {
    expect(problemsOf(text)[0]).toContain(`pull.yaml${sentence}`);
  });

  it('is said once: an item that could not be described is not missed again where it is used', () => {
    expect(problemsOf(malt('{ composition: sweet }'))).toHaveLength(1);
  });

  it.each(kitchens)('in a kitchen: %s', (lines, sentence) => {
    const parsed = parseKitchen(`kettlehand-kitchen: 1\n${lines}\n`, 'hall.yaml');
    expect('problems' in parsed ? sayProblem(parsed.problems[0] as never) : 'fine').toContain(
      `hall.yaml${sentence}`,
    );
  });

  it('is no fault where nothing was meant by it', () => {
    expect(recipeOf(more('stir: {}')).stir).toBe('until-boil');
    expect(recipeOf(more('stir: { late: false }')).stir).toBe('until-boil');
    expect(recipeOf(more('allergens: { contains: milk }')).allergens.contains).toContain('milk');
  });

  it('a lesson is taken with its date, or without', () => {
    const learned = (block: string) => {
      const parsed = parseKitchen(`kettlehand-kitchen: 1\nunit: C\nlearned: ${block}\n`, 'hall.yaml');
      return 'kitchen' in parsed ? parsed.kitchen.learned : null;
    };
    expect(learned('{ carry-over: 1.5 }')?.carryOverKelvin).toMatchObject({ value: 1.5, date: null });
    expect(learned('{ watts: { Medium: { value: 600 W, date: 2026-11-25 } } }')).toBeNull();
    expect(learned('{ watts: { medium: { value: 600 W, date: 2026-11-25 } } }')?.watts).toEqual({
      medium: expect.objectContaining({ value: 600, date: '2026-11-25', by: 'person' }),
    });
  });

  it.each([
    ['fat: 0.8, water: 0.2', 'fat'],
    ['sucrose: 0.9, water: 0.1', 'sugar'],
    ['invert: 0.8, water: 0.2', 'doctor'],
    ['water: 0.95, other: 0.05', 'water'],
    ['other: 0.5, water: 0.5', 'flavour'],
  ])('an item of one’s own of %s is taken for %s', (composition, role) => {
    const text = broken(
      'target:',
      `  - { item: own-thing, amount: 10 g, composition: { ${composition} } }\ntarget:`,
    );
    expect(recipeOf(text).ingredients[3]?.role).toBe(role);
  });
});
