import { describe, expect, it } from 'vitest';
import { type SyrupOptions, syrup } from '../../source/commands/syrup.js';

const run = (options: SyrupOptions) => {
  let [out, err] = ['', ''];
  const code = syrup(options, {
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
  });
  return { code, out, err };
};
const json = (options: SyrupOptions) => JSON.parse(run({ ...options, json: true }).out);
const plain = ['granulated-sugar=400g', 'water=100g'];

describe('kettlehand syrup', () => {
  it('lets the water of the items decide', () => {
    const found = json({ items: plain });
    expect(found).toMatchObject({ version: 1, pressurePascal: 101_325, totalGrams: 500 });
    expect(found.waterGrams).toBeCloseTo(100.08, 2);
    expect(found.solidsFraction).toBeCloseTo(0.7998, 3);
    expect(found.elevationKelvin).toBeCloseTo(found.celsius - found.waterBoilsCelsius, 2);
  });

  it('replaces the water by a temperature or by a share of solids, and both ways agree', () => {
    const items = ['granulated-sugar=400g', 'glucose-syrup:42=200g', 'water=1l'];
    const at = json({ items, celsius: 124 });
    const back = json({ items, solids: at.solidsFraction });
    expect(back.celsius).toBeCloseTo(124, 2);
    expect(back.waterGrams).toBeCloseTo(at.waterGrams, 1);
    expect(json({ items, celsius: '255.2f' }).celsius).toBeCloseTo(124, 2);
    expect(json({ items, solids: '90%' })).toEqual(json({ items, solids: 0.9 }));
  });

  it('boils lower on a hill, and lower with a more broken-down syrup at the same solids only slightly', () => {
    const [sea, hill] = [json({ items: plain }), json({ items: plain, altitude: '1450m' })];
    expect(sea.celsius - hill.celsius).toBeGreaterThan(4.5);
    const de = (of: number) => json({ items: [`glucose-syrup:${of}=100g`], solids: 0.9 }).celsius;
    expect(de(60)).toBeGreaterThan(de(30));
  });

  it('says its range, and refuses outside it', () => {
    const { validRange } = json({ items: plain });
    expect(run({ items: plain, celsius: validRange.celsius[1] - 0.01 }).code).toBe(0);
    for (const celsius of [validRange.celsius[1] + 1, validRange.celsius[0] - 1, -300]) {
      const refused = run({ items: plain, celsius });
      expect(refused).toMatchObject({ code: 1, out: '' });
      expect(refused.err).toContain('outside what is known');
    }
    expect(run({ items: plain, solids: 0.999 }).code).toBe(1);
  });

  const wrong: ReadonlyArray<readonly [SyrupOptions, RegExp]> = [
    [{ items: [] }, /needs something in it/],
    [{ items: ['sugar=400g'] }, /Did you mean granulated-sugar/],
    [{ items: ['granulated-sugar'] }, /item=amount/],
    [{ items: ['granulated-sugar=-3g'] }, /more than nothing/],
    [{ items: ['granulated-sugar=400'] }, /no unit/],
    [{ items: ['granulated-sugar:42=400g'] }, /so no DE/],
    [{ items: ['glucose-syrup:420=400g'] }, /is no DE/],
    [{ items: plain, celsius: 120, solids: 0.9 }, /Keep one/],
    [{ items: plain, celsius: 'warm' }, /no temperature/],
    [{ items: plain, solids: '85' }, /between 0 and 1/],
    [{ items: plain, solids: 0 }, /between 0 and 1/],
    [{ items: plain, altitude: '20000 m' }, /no altitude/],
    [{ items: ['constructor=3g'] }, /not in the ingredient table/],
  ];
  for (const [options, says] of wrong)
    it(`answers ${JSON.stringify(options)} with a sentence and 2`, () => {
      const { code, out, err } = run(options);
      expect({ code, out }).toEqual({ code: 2, out: '' });
      expect(err).toMatch(says);
    });

  it('says that nothing dissolves', () => {
    expect(run({ items: ['water=1l'] })).toMatchObject({ code: 1 });
  });
});
