import { describe, expect, it } from 'vitest';
import type { NamedText } from '../../source/commands/io.js';
import { type PlanOptions, plan } from '../../source/commands/plan.js';
import { recipeText } from '../batch/samples.js';

const recipe = recipeText({
  ingredients: [
    ['granulated-sugar', '500 g'],
    ['glucose-syrup', '420 g', 'de: 42'],
    ['water', '150 ml'],
    ['butter', '20 g'],
  ],
  target: 'celsius: [123, 126]',
});
const kitchen = [
  'kettlehand-kitchen: 1',
  'altitude: 1450 m',
  'stove: coil',
  'pot: { volume: 4 l, diameter: 20 cm }',
  'thermometers:',
  '  - { id: hall-dial, kind: dial, use: pot, unit: F, ice: 33, boils: 203 }',
  'unit: F',
  '',
].join('\n');

const run = async (options: PlanOptions, files: { recipe?: NamedText; kitchen?: string } = {}) => {
  let [out, err] = ['', ''];
  const code = await plan(options, {
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
    readRecipe: async () => files.recipe ?? { text: recipe, name: 'sample.yaml' },
    readKitchen: async () =>
      files.kitchen === undefined ? null : { text: files.kitchen, name: 'kitchen.yaml' },
  });
  return { code, out, err };
};
const json = async (options: PlanOptions, kitchenText?: string) => {
  const { out } = await run(
    { ...options, json: true },
    kitchenText === undefined ? {} : { kitchen: kitchenText },
  );
  return JSON.parse(out);
};

describe('kettlehand plan', () => {
  it('prints text, or JSON alone', async () => {
    expect(await run({}, { kitchen })).toMatchObject({ code: 0, err: '' });
    expect(await json({}, kitchen)).toMatchObject({
      version: 1,
      kitchen: { altitudeMetres: 1450, unit: 'F' },
    });
    expect((await run({ explain: true }, { kitchen })).out).toContain('Starzak & Peacock');
  });

  it('says that sea level is taken where nothing is known', async () => {
    expect((await json({})).notes.map(({ id }: { id: string }) => id)).toContain('kitchen.note.sea-level');
  });

  it('takes the same air in every unit of pressure', async () => {
    const boils = async (pressure: string) => (await json({ pressure })).kitchen.waterBoilsCelsius;
    expect(await boils('85 kPa')).toBe(await boils('850hPa'));
    expect(await boils('29.92 inHg')).toBeCloseTo(await boils('760 mmHg'), 1);
  });

  it('uses the altitude, and says so, where the pressure was reduced to sea level', async () => {
    const both = await json({ altitude: '1450m', pressure: '1013hPa' });
    expect(both.kitchen.waterBoilsCelsius).toBeCloseTo(95.15, 1);
    expect(both.notes.map(({ id }: { id: string }) => id)).toContain('kitchen.note.pressure-reduced');
    // A pressure from the weather report against the file's altitude.
    expect((await json({ pressure: '1013hPa' }, kitchen)).kitchen.waterBoilsCelsius).toBeCloseTo(95.15, 1);
  });

  it('lets an altitude on the command line replace the place of the kitchen file', async () => {
    expect((await json({ altitude: '0m' }, kitchen)).target.todayCelsius[0]).toBeCloseTo(123, 1);
    expect((await json({ altitude: '4757 ft' })).kitchen.altitudeMetres).toBe(1450);
  });

  it('makes as much as is asked for', async () => {
    expect((await json({ pieces: 60 })).yield.pieces.typical).toBe(60);
    expect((await json({ pieces: '60' })).yield.pieces.typical).toBe(60);
    expect((await json({ guests: 24, children: 10 })).yield.portions.count).toBe(24);
    const [once, half] = [await json({}), await json({ batch: 0.5 })];
    expect(half.yield.cookedGrams / once.yield.cookedGrams).toBeCloseTo(0.5, 3);
    expect((await json({ pot: '2l' })).pot).toMatchObject({ neededLitres: 2, haveLitres: 2, fits: true });
  });

  it('refuses a size that would foam over, with the size that fits and the number of batches', async () => {
    const refused = await run({ pieces: 300, pot: '3l' });
    expect(refused.code).toBe(1);
    expect(refused.out).toBe('');
    expect(refused.err).toMatch(/foam over.*Up to \d+ pieces.*3 batches/);
    const fits = Number(/--pieces (\d+)/.exec(refused.err)?.[1]);
    expect((await run({ pieces: fits, pot: '3l' })).code).toBe(0);
  });

  it('plans a recipe as written all the same, and says that it does not fit', async () => {
    const small = kitchen.replace('4 l', '1.5 l');
    expect(await json({}, small)).toMatchObject({ pot: { fits: false } });
    expect((await run({}, { kitchen: small })).out).toContain('This would foam over');
  });

  const wrong: ReadonlyArray<readonly [PlanOptions, RegExp]> = [
    [{ altitude: '384400km' }, /no altitude for a kitchen.*1450m/],
    [{ altitude: '1450' }, /no unit/],
    [{ altitude: 'high up' }, /no altitude/],
    [{ pressure: '29.9' }, /no unit.*inHg/],
    [{ pressure: '3 kPa' }, /no air pressure.*850hPa/],
    [{ pieces: -3 }, /--pieces needs a whole number above 0/],
    [{ pieces: '12.5' }, /--pieces needs a whole number/],
    [{ pieces: Number.NaN }, /--pieces/],
    [{ batch: 0 }, /--batch needs a number above 0/],
    [{ batch: '1e9' }, /--batch/],
    [{ guests: 10, children: 24 }, /24 children among 10 guests/],
    [{ children: 3 }, /needs --guests/],
    [{ pieces: 10, batch: 2 }, /--pieces and --batch.*Keep one/],
    [{ pot: '3' }, /no unit/],
    [{ pot: '900 l' }, /no size for a kitchen pot/],
  ];
  for (const [options, says] of wrong)
    it(`answers ${JSON.stringify(options)} with a sentence and 2`, async () => {
      const { code, out, err } = await run(options);
      expect(code).toBe(2);
      expect(out).toBe('');
      expect(err).toMatch(says);
      expect(err.trim().split('\n')).toHaveLength(1);
    });

  it('tells wrong use from a bad file', async () => {
    const problem = { id: 'yaml.empty' } as const;
    expect((await run({}, { recipe: { problem, wrongUse: true } })).code).toBe(2);
    expect((await run({}, { recipe: { problem, wrongUse: false } })).code).toBe(1);
    const bad = await run({}, { recipe: { text: 'kettlehand: 1\nname: x\n', name: 'bad.yaml' } });
    expect(bad.code).toBe(1);
    expect(bad.err).toMatch(/^bad\.yaml:/);
    const sand = { text: 'kettlehand: 1\nname: x\ningredients: [{ item: sand, amount: 1 kg }]', name: 'x' };
    expect((await run({}, { recipe: sand })).code).toBe(1);
    expect((await run({}, { kitchen: 'altitude: 3' })).code).toBe(1);
  });
});
