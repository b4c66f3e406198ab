import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { recipes } from '../../source/commands/recipes.js';
import { bounds, readNamedFile } from '../../source/files/read.js';
import { broken, good } from './say.js';

const bundled = join(import.meta.dirname, '../../recipes');

const counter = (own: Readonly<Record<string, string>> = {}) => {
  const said = { out: '', err: '' };
  return {
    said,
    io: {
      out: (part: string) => {
        said.out += part;
      },
      err: (part: string) => {
        said.err += part;
      },
      folders: ['/own', bundled],
      listFolder: async (path: string) => (path === '/own' ? Object.keys(own) : readdir(path)),
      inside: (folder: string, name: string) => join(folder, name),
      readFile: async (path: string) => {
        const text = path.startsWith('/own/') ? own[path.slice('/own/'.length)] : undefined;
        return text === undefined ? readNamedFile(path, bounds.recipe) : { text };
      },
    },
  };
};

describe('kettlehand recipes', () => {
  it('lists every recipe with its target', async () => {
    const { io, said } = counter();
    expect(await recipes([], {}, io)).toBe(0);
    expect(said.out.trim().split('\n').length).toBeGreaterThanOrEqual(7);
    expect(said.out).toContain(
      'hill-hall-ginger-pull  Hill hall ginger pull: 123 °C to 126 °C at sea level, hard ball, 1.11 kg in the pot\n',
    );
    expect(said.err).toBe('');
  });

  it('puts the person’s own before those that came with it, and says what is wrong with one', async () => {
    const { io, said } = counter({
      'mint-pull.yaml': good,
      'bad.yaml': broken('400 g', 'much'),
      'notes.txt': 'no recipe',
    });
    expect(await recipes(['list'], {}, io)).toBe(1);
    expect(said.out).toMatch(/^mint-pull +Plain pull: /m);
    expect(said.out).not.toContain('bad');
    expect(said.err).toBe(
      '/own/bad.yaml:4: ingredients[1].amount: "much" is no amount. Type a number and a unit, for example 300 g, 1 1/4 cup or 20 drops.\n',
    );
  });

  it('shows one as it is cooked', async () => {
    const { io, said } = counter();
    expect(await recipes(['show', 'molasses-pull'], {}, io)).toBe(0);
    for (const line of [
      'mix      molasses: 300 g',
      'flavour  baking soda: 1/4 tsp (1.1 g)',
      'Cook to 125 °C to 127 °C at sea level; in cold water hard ball.',
      'Stir gently all through the last part of the boil.',
      'No lid: it foams. Scrape the walls while it is cold.',
      'Allergens: contains milk; read the label for sulphites and wheat.',
    ])
      expect(said.out.split('\n')).toContain(line);
  });

  it.each([
    [['show', 'ginger-pull'], 2, 'No recipe is called "ginger-pull". Did you mean hill-hall-ginger-pull?'],
    [['show', 'hony'], 2, 'No recipe is called "hony". Did you mean honey-pull?'],
    [['show', './nowhere.yaml'], 1, 'could not be read: the file or its folder is not there.'],
    [['show'], 2, 'Which one? Use: recipes show NAME.'],
    [['check'], 2, 'Which file? Use: recipes check FILE.'],
    [
      ['check', '/nowhere.yaml'],
      1,
      '/nowhere.yaml could not be read: the file or its folder is not there. Check the name, or give the whole path.',
    ],
    [['lst'], 2, '"recipes lst" is nothing to do. Did you mean list?'],
  ] as const)('%o ends with %d and a sentence', async (typed, code, sentence) => {
    const { io, said } = counter();
    expect(await recipes(typed, {}, io)).toBe(code);
    expect(said.err).toContain(sentence);
    expect(said.err).not.toMatch(/Error|at .*\.ts/);
    expect(said.out).toBe('');
  });

  it('checks a file, of a recipe or of a kitchen', async () => {
    const { io, said } = counter({
      'a.yaml': good,
      'b.yaml': broken('400 g', '-1 g'),
      'c.yaml': broken('200 g', '40 g'),
    });
    expect(await recipes(['check', '/own/a.yaml'], {}, io)).toBe(0);
    expect(await recipes(['check', join(bundled, 'kitchens/hill-hall.yaml')], {}, io)).toBe(0);
    expect(said.out).toBe(
      `/own/a.yaml: Plain pull can be cooked.\n${bundled}/kitchens/hill-hall.yaml: this kitchen can be used.\n`,
    );
    expect(await recipes(['check', '/own/b.yaml'], {}, io)).toBe(1);
    expect(said.err).toContain('/own/b.yaml:4: ingredients[1].amount: "-1 g"');
    said.out = '';
    expect(await recipes(['check', '/own/c.yaml'], {}, io)).toBe(0);
    expect(said.out).toContain('- Only 8 g of syrup solids go with 100 g of sugar: it may grain.');
  });

  it('gives one JSON object, whatever is asked', async () => {
    const { io, said } = counter({ 'b.yaml': broken('400 g', '-1 g') });
    const asked = async (...typed: string[]) => {
      said.out = '';
      const code = await recipes(typed, { json: true }, io);
      return { code, ...JSON.parse(said.out) };
    };
    expect(await asked('show', 'honey-pull')).toMatchObject({
      code: 0,
      version: 1,
      recipe: { name: 'Honey pull' },
      walls: 'none-late-stir',
    });
    expect(await asked('items')).toMatchObject({
      code: 0,
      version: 1,
      items: expect.arrayContaining([expect.objectContaining({ id: 'honey' })]),
    });
    expect(await asked('check', '/own/b.yaml')).toMatchObject({
      code: 1,
      valid: false,
      problems: [{ line: 4, field: 'ingredients[1].amount', id: 'units.not-positive' }],
    });
    expect((await asked('list')).recipes.length).toBeGreaterThanOrEqual(7);
  });
});
