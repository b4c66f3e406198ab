import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { clockOf, localeClock } from '../../source/commands/clock-habit.js';
import { plan } from '../../source/commands/plan.js';
import type { PlanOptions } from '../../source/commands/plan-options.js';
import { setInKitchen } from '../../source/kitchen/edit.js';
import { parseKitchen } from '../../source/kitchen/parse.js';
import { kitchenToYaml } from '../../source/kitchen/write.js';

const read = (path: string): string => readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8');
const hall = read('recipes/kitchens/hill-hall.yaml');
const morning = new Date(2026, 10, 28, 8, 0).getTime();

const planned = async (options: PlanOptions, kitchen = hall, locale: '12h' | '24h' | null = null) => {
  const said = { out: '', err: '' };
  const code = await plan(options, {
    out: (text) => {
      said.out += text;
    },
    err: (text) => {
      said.err += text;
    },
    wall: () => morning,
    localeClock: () => locale,
    readRecipe: async () => ({ text: read('recipes/hill-hall-ginger-pull.yaml'), name: 'recipe' }),
    readKitchen: async () => ({ text: kitchen, name: 'kitchen' }),
  });
  return { ...said, code };
};

describe('somebody who weighs in ounces', () => {
  it('reads ounces, cups and spoons beside the grams, and once what a cup holds', async () => {
    const { out } = await planned({ weights: 'ounces' });
    expect(out).toMatch(/^ +500 g {2}17 3\/4 oz or 2 1\/2 cups +granulated sugar$/m);
    expect(out).toMatch(/^ +3 g {2}1\/2 tsp +salt$/m);
    expect(out).toMatch(/^ +0\.6 g {2}20 drops +ginger oil$/m);
    expect(out.match(/a cup is 237 ml/g)).toHaveLength(1);
    expect(out).toMatch(/Yield +about 29 1\/2 oz, 119 pieces/);
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(78);
  });

  it('says so once in the kitchen, and the card has it too', async () => {
    const kitchen = `${hall}\nweights: ounces\n`;
    expect((await planned({}, kitchen)).out).toMatch(/17 3\/4 oz or 2 1\/2 cups/);
    expect((await planned({ card: true }, kitchen)).out).toMatch(/17 3\/4 oz or 2 1\/2\s+cups\s+granulated/);
    expect((await planned({ weights: 'grams' }, kitchen)).out).not.toMatch(/oz|cup/);
  });

  it('gets the same numbers: grams are what everything is computed from', async () => {
    const [grams, other] = [await planned({ json: true }), await planned({ json: true, weights: 'ounces' })];
    const numbers = (text: string): unknown => ({ ...(JSON.parse(text) as object), notes: [] });
    expect(numbers(other.out)).toEqual(numbers(grams.out));
  });

  it('is told what can be typed', async () => {
    const { code, err } = await planned({ weights: 'stones' });
    expect(code).toBe(2);
    expect(err).toMatch(/"stones".*--weights grams or --weights ounces/);
  });
});

describe('times of day on the run sheet', () => {
  it.each([
    ['15:00', '', null, /15:00/, /\b3:00 pm/],
    ['3 pm', '', null, /3:00 pm/, /15:00/],
    ['15:00', 'clock: 12h', null, /3:00 pm/, /15:00/],
    ['3 pm', 'clock: 24h', '12h', /15:00/, /3:00 pm/],
    ['15:00', '', '12h', /3:00 pm/, /15:00/],
  ] as const)('%s with "%s" and a locale of %s', async (at, line, locale, is, isNot) => {
    for (const options of [{ at }, { at, card: true }]) {
      const { out } = await planned(options, `${hall}\n${line}\n`, locale);
      expect(out).toMatch(is);
      expect(out).not.toMatch(isNot);
      for (const row of out.split('\n')) expect(row.length).toBeLessThanOrEqual(80);
    }
  });
});

describe('how a place reads times', () => {
  it.each([
    ['en_US.UTF-8', '12h'],
    ['en_AU.UTF-8', '12h'],
    ['en_CA', '12h'],
    ['en_IN', '12h'],
    ['en_PH', '12h'],
    ['en_GB.UTF-8', '24h'],
    ['de_CH@euro', '24h'],
    ['C.UTF-8', null],
    ['POSIX', null],
    ['', null],
    ['xx-@@', null],
  ])('%s: %s', (LANG, clock) => expect(localeClock({ LANG })).toBe(clock));

  it('LC_ALL goes before LC_TIME, and that before LANG', () => {
    expect(localeClock({ LANG: 'en_US', LC_TIME: 'en_GB' })).toBe('24h');
    expect(localeClock({ LC_ALL: 'en_US', LC_TIME: 'en_GB' })).toBe('12h');
  });

  const home = mkdtempSync(join(tmpdir(), 'kettlehand-clock-'));
  afterAll(() => rmSync(home, { recursive: true, force: true }));
  it('the saved kitchen goes before the locale', async () => {
    const env = { KETTLEHAND_HOME: home, LANG: 'en_US.UTF-8' };
    expect(await clockOf({ env })).toBe('12h');
    writeFileSync(join(home, 'kitchen.yaml'), 'kettlehand-kitchen: 1\nclock: 24h\n');
    expect(await clockOf({ env })).toBe('24h');
  });
});

describe('a kitchen that is saved', () => {
  it('keeps weights and clock, and says what they can be', () => {
    const edited = setInKitchen(null, [
      ['weights', 'ounces'],
      ['clock', '12h'],
    ]);
    if (!('kitchen' in edited)) throw new Error('not taken');
    expect(edited.kitchen).toMatchObject({ weights: 'ounces', clock: '12h' });
    const again = parseKitchen(kitchenToYaml(edited.kitchen), '');
    expect('kitchen' in again && again.kitchen).toMatchObject({ weights: 'ounces', clock: '12h' });
    const wrong = parseKitchen('kettlehand-kitchen: 1\nclock: 13h\n', 'k.yaml');
    expect('problems' in wrong && JSON.stringify(wrong.problems)).toMatch(/12h.*24h/);
  });
});
