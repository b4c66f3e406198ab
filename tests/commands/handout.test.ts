import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type HandoutOptions, handout } from '../../source/commands/handout.js';
import { message } from '../../source/texts/message.js';

const asked = async (options: HandoutOptions, text = readFileSync('recipes/mint-pull.yaml', 'utf8')) => {
  const said = { out: '', err: '' };
  const code = await handout(options, {
    out: (part) => {
      said.out += part;
    },
    err: (part) => {
      said.err += part;
    },
    readRecipe: async () => ({ text, name: 'mint-pull.yaml' }),
  });
  return { code, ...said };
};

describe('kettlehand handout', () => {
  it('writes Markdown where nothing else is asked for', async () => {
    const { code, out, err } = await asked({});
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(/^# Mint pull: make it at home\n/);
    expect((await asked({ markdown: true })).out).toBe(out);
  });

  it('writes one HTML page', async () => {
    const { code, out } = await asked({ html: true });
    expect(code).toBe(0);
    expect(out).toMatch(/^<!doctype html>\n<html lang="en">/);
    expect(out.trimEnd()).toMatch(/<\/html>$/);
  });

  it('makes half of it, or as many pieces as are wanted', async () => {
    expect((await asked({ batch: '0.5' })).out).toContain('| granulated sugar | 250 g |');
    expect((await asked({ pieces: '100' })).out).toContain('It makes about 100 pieces.');
  });

  it('makes as much as what is at home is enough for: the scarcest decides', async () => {
    const whole = await asked({});
    const grams = (out: string, name: string): number =>
      Number(new RegExp(`\\| ${name} \\| ([\\d.,]+) (?:g|ml) `).exec(out)?.[1]);
    const sugar = grams(whole.out, 'granulated sugar');
    const syrup = grams(whole.out, 'glucose syrup');
    const half = await asked({ have: [`sugar=${sugar / 2}g`, `glucose-syrup=${3 * syrup}g`] });
    expect(grams(half.out, 'granulated sugar')).toBeCloseTo(sugar / 2, 0);
    expect(grams(half.out, 'glucose syrup')).toBeCloseTo(syrup / 2, 0);
    const cup = await asked({ have: ['granulated sugar=1 cup'] });
    expect(grams(cup.out, 'granulated sugar')).toBeCloseTo(200, -1);
    const small = await asked({ pot: '1.5l', have: ['sugar=5kg'] });
    expect(small.code).toBe(0);
    expect(small.out).toMatch(/a heavy pot that holds 1\.5 litres/);
  });

  it.each([
    [{ html: true, markdown: true }, 2, 'two forms of one page'],
    [{ pieces: '10', batch: '2' }, 2, 'each say how much to make'],
    [{ pieces: 'many' }, 2, '"many" is none'],
    [{ pieces: '50', have: ['sugar=300g'] }, 2, 'each say how much to make'],
    [{ have: ['300g'] }, 2, 'Type an ingredient and an amount: --have granulated-sugar=300g'],
    [{ have: ['chocolate=300g'] }, 2, 'It takes granulated-sugar'],
    [{ have: ['oil=300g', 'r=3g'] }, 2, 'Name one of them'],
    [{ have: ['sugar=lots'] }, 2, 'lots'],
    [{ have: ['sugar=0g'] }, 2, '0'],
    [{ pot: 'big' }, 2, 'big'],
    [{ have: ['sugar=30kg'] }, 1, 'can be planned'],
    [{ batch: '20' }, 1, 'can be planned'],
  ] as const)('%j ends with %i and a sentence', async (options, code, sentence) => {
    const { code: ended, out, err } = await asked(options);
    expect([ended, out]).toEqual([code, '']);
    expect(err).toContain(sentence);
    expect(err.trimEnd().split('\n')).toHaveLength(1);
  });

  it('says what is wrong with a recipe', async () => {
    const { code, out, err } = await asked({}, 'kettlehand: 1\nname: x\n');
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain('mint-pull.yaml');
  });

  it('ends with 2 for a name that is not there', async () => {
    let err = '';
    const code = await handout(
      {},
      {
        out: () => undefined,
        err: (part) => {
          err += part;
        },
        readRecipe: async () => ({
          problem: message('shelf.unknown-recipe', { found: 'mint', nearest: 'mint-pull' }),
          wrongUse: true,
        }),
      },
    );
    expect(code).toBe(2);
    expect(err).toContain('mint-pull');
  });
});
