import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { cookIn, trueKitchen } from '../../bench/kitchen-series.js';
import type { FoundCook } from '../../source/commands/cooks-shelf.js';
import { type LabelIo, type LabelOptions, labels } from '../../source/commands/labels.js';
import type { Happened } from '../../source/cook/event.js';
import { encodeLine } from '../../source/journal/line.js';
import { recover } from '../../source/journal/recover.js';
import { defaultKitchen } from '../../source/kitchen/default.js';
import type { Kitchen } from '../../source/kitchen/kitchen.js';
import { recipe } from '../cook/play.js';

const asked = async (options: Partial<LabelOptions>, source: LabelIo['source']) => {
  const said = { out: '', err: '' };
  const code = await labels(
    { checked: [], ...options },
    {
      out: (part) => {
        said.out += part;
      },
      err: (part) => {
        said.err += part;
      },
      now: () => new Date(2026, 10, 30, 23, 30),
      source,
    },
  );
  return { code, ...said };
};

const byRecipe = (kitchen: Kitchen = defaultKitchen): LabelIo['source'] => ({
  kind: 'recipe',
  read: async () => ({ text: readFileSync('recipes/mint-pull.yaml', 'utf8'), name: 'mint-pull.yaml' }),
  kitchen: async () => kitchen,
});

const truth = trueKitchen(77, true);
const { events } = cookIn(recipe('hill-hall-ginger-pull'), truth, truth.kitchen, 4);
const found = (kept: readonly Happened[]): FoundCook => {
  const lines = kept.flatMap(
    (event) => encodeLine({ ...event, at: '2026-11-20T12:00:00.000Z', up: event.t }) ?? [],
  );
  return { id: 'x', path: 'x.jsonl', recovered: recover(Buffer.concat(lines)) };
};
const byCook = (kept: readonly Happened[] = events): LabelIo['source'] => ({
  kind: 'cook',
  find: async () => found(kept),
});

describe('kettlehand labels RECIPE', () => {
  it('labels a bag of ten, made today, good for two weeks', async () => {
    const { code, out } = await asked({}, byRecipe());
    expect(code).toBe(0);
    expect(out).toContain('Net weight: 30 g (1.1 oz), about 10 pieces.');
    expect(out).toContain('Made on 2026-11-30. Best before 2026-12-14.');
    expect(out).toContain('Local food law decides');
  });

  it('takes a net weight in either system', async () => {
    expect((await asked({ net: '100g' }, byRecipe())).out).toContain('Net weight: 100 g (3.5 oz)');
    expect((await asked({ net: '4oz' }, byRecipe())).out).toContain('Net weight: 113 g (4.0 oz)');
  });

  it('keeps notes out of the block', async () => {
    const { out, err } = await asked({}, byRecipe());
    expect(out).not.toContain('--checked');
    expect(err).toContain('--checked sulphites');
  });

  it('warns where children pull', async () =>
    expect((await asked({}, byRecipe({ ...defaultKitchen, hands: 'children' }))).err).toContain(
      'each eats only the piece that they pulled',
    ));

  it.each([
    [{ net: 'a handful' }, '"a handful" is no weight'],
    [{ net: '20 kg' }, 'is no weight'],
    [{ net: '50g', pieces: '5' }, 'Keep one of them'],
    [{ pieces: '0' }, '"0" is none'],
    [{ date: '2026-02-30' }, '"2026-02-30" is no date'],
    [{ checked: ['milk'] }, '"milk" is not among what has to be checked'],
  ] as const)('%j is wrong use', async (options, sentence) => {
    const { code, out, err } = await asked(options, byRecipe());
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(sentence);
  });
});

describe('kettlehand labels --cook', () => {
  it('takes the day of the cook', async () =>
    expect((await asked({}, byCook())).out).toContain('Made on 2026-11-20.'));

  it('takes the piece that was weighed', async () => {
    const ten: Happened = { kind: 'weigh', grams: 84, pieces: 10, seq: 9001, t: 90_000 };
    expect((await asked({ pieces: '5' }, byCook([...events, ten]))).out).toContain('Net weight: 42 g');
  });

  it.each([
    ['a rehearsal', [{ ...events[0], seed: 5 } as Happened, ...events.slice(1)], 'That was a rehearsal'],
    ['one that never came to the pour', events.slice(0, 15), 'never came to the pour'],
    ['one whose beginning is lost', events.slice(1), ''],
  ] as const)('%s has no label', async (_, kept, sentence) => {
    const { code, out, err } = await asked({}, byCook(kept));
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain(sentence);
    expect(err).not.toBe('');
  });
});
