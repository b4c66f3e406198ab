import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseRecipe } from '../../source/recipe/parse.js';
import { broken, good, problemsOf, recipeOf } from './say.js';

const bomb = [
  'a: &a [x, x, x, x, x, x, x, x, x]',
  ...'bcdefghij'.split('').map((key, place) => `${key}: &${key} [${`*${'abcdefghij'[place]}, `.repeat(9)}x]`),
].join('\n');

describe('files that mean harm', () => {
  it.each([
    [
      'nothing at all',
      '',
      'pull.yaml:1: This holds no fields. Start with a line such as "kettlehand: 1", then "name: ...".',
    ],
    [
      'a list',
      '- one\n- two\n',
      'pull.yaml:1: This holds no fields. Start with a line such as "kettlehand: 1", then "name: ...".',
    ],
    [
      'more than 256 kB',
      `${good}# ${'x'.repeat(300_000)}`,
      'pull.yaml:1: This file is longer than 256 kB, which no recipe or kitchen needs. Check that it is the right one.',
    ],
    [
      'an alias bomb',
      bomb,
      'pull.yaml:1: A reference ("&name" or "*name") is not read in these files. Write it out, or put the text in quotes.',
    ],
    [
      'brackets without end',
      `a: ${'['.repeat(100_000)}`,
      'pull.yaml:1: This is nested deeper than any recipe or kitchen. Check the brackets and the indentation.',
    ],
    [
      'dashes without end',
      `a:\n  ${'- '.repeat(50_000)}x`,
      'pull.yaml:1: This is nested deeper than any recipe or kitchen. Check the brackets and the indentation.',
    ],
    [
      'maps without end',
      Array.from({ length: 600 }, (_, depth) => `${' '.repeat(depth)}a:`).join('\n'),
      'pull.yaml:13: This is nested deeper than any recipe or kitchen. Check the brackets and the indentation.',
    ],
    [
      'two documents',
      `${good}---\n${good}`,
      'pull.yaml:8: A second document starts here ("---"). Keep one recipe or kitchen in a file.',
    ],
  ])('%s is refused in a sentence', (_, text, sentence) => {
    expect(problemsOf(text)).toEqual([sentence]);
  });

  it.each(['__proto__', 'constructor', 'toString', 'hasOwnProperty'])(
    'a field called %s is only an unknown field',
    (key) => {
      expect(problemsOf(`${good}${key}: { hands: butter }\n`)[0]).toContain(
        `pull.yaml:8: ${key}: "${key}" is no field here.`,
      );
      expect(Object.hasOwn(Object.prototype, 'hands')).toBe(false);
    },
  );

  it.each(['__proto__', 'constructor', 'toString'])('an item called %s is only an unknown item', (key) => {
    expect(problemsOf(broken('item: water', `item: ${key}`))[0]).toContain('is not in the ingredient table.');
  });

  it('an item of one’s own may be called constructor', () => {
    const text = `${broken('item: water', 'item: constructor')}declared: { constructor: { composition: { water: 1 }, density: 1, role: acid } }\n`;
    expect(recipeOf(text).ingredients[2]).toMatchObject({ item: 'constructor', grams: 120, role: 'acid' });
  });

  it('shows control characters instead of sending them to the terminal', () => {
    const said = problemsOf(broken('item: water', 'item: "\\e[2Jwater\\u202e"'))[0] ?? '';
    expect(said).toContain('\\x1b[2Jwater\\u{202e}');
    expect(said).not.toContain('\u001b');
  });

  it('counts a thousand faults without a thousand lines', () => {
    const many = Array.from({ length: 1000 }, (_, place) => `key${place}: 1`).join('\n');
    expect(problemsOf(`${good}${many}\n`).length).toBeLessThanOrEqual(20);
  });

  it('has twenty thousand fields at once', () => {
    const many = Array.from({ length: 20_000 }, (_, place) => `k${place}: {}`).join(', ');
    expect(problemsOf(`${good}declared: { ${many}, k7: {} }\n`)).toEqual([
      'pull.yaml:8: This field is written twice. Keep one of them.',
    ]);
  });

  it('never throws and always says something, whatever is in the file', () => {
    const pieces = fc.constantFrom(
      ...good.split(/(?<=[\s,:{}[\]])/),
      '&a ',
      '*a',
      '!!int ',
      '<<: ',
      '? ',
      '|\n',
      '>',
      '"',
      "'",
      '\u0000',
      '\ud800',
      '- ',
      '%YAML 1.1\n',
      '9e999',
      'nan',
    );
    fc.assert(
      fc.property(fc.array(fc.oneof(pieces, fc.string()), { maxLength: 60 }), (parts) => {
        const parsed = parseRecipe(parts.join(''), 'pull.yaml');
        return 'recipe' in parsed || parsed.problems.length > 0;
      }),
      { numRuns: 2000 },
    );
  });

  it.each([
    ['celsius: [&26, 129]', 'A reference ("&name" or "*name") is not read in these files.'],
    ['celsius: [, 129]', 'pull.yaml:7:'],
    ["celsius: ['', 129]", 'This is missing. Add it.'],
  ])('a target with %s gets a sentence', (written, part) => {
    expect(problemsOf(broken('celsius: [126, 129]', written))[0]).toContain(part);
  });

  it('never throws when a good file loses or gains a piece', () => {
    fc.assert(
      fc.property(fc.nat(good.length), fc.nat(12), fc.string({ maxLength: 6 }), (at, cut, gained) => {
        const parsed = parseRecipe(good.slice(0, at) + gained + good.slice(at + cut), 'pull.yaml');
        if ('problems' in parsed)
          return parsed.problems.length > 0 && parsed.problems.every(({ line }) => line >= 1);
        return parsed.recipe.ingredients.every(({ grams }) => grams > 0 && Number.isFinite(grams));
      }),
      { numRuns: 2000 },
    );
  });
});
