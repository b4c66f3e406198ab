import { describe, expect, it } from 'vitest';
import { troubleNames } from '../../source/cook/event.js';
import { interpret } from '../../source/cook/interpret.js';
import { factsOf } from '../../source/screen/facts.js';
import { type ChooserId, optionsOf, troublesByUrgency } from '../../source/screen/input/choosers.js';
import { actOf, keyListMarkdown, keysNow, keyTable, type Situation } from '../../source/screen/keys.js';
import { bench, play, wholeCook } from './kit.js';

const everywhere = async (each: (situation: Situation, where: string) => void): Promise<void> => {
  const one = bench();
  const look = () =>
    each({ advice: one.session.advice(), facts: factsOf(one.session.cook) }, one.session.advice().step ?? '');
  look();
  await play(one, wholeCook, look);
};

describe('the table of keys', () => {
  it('a key is only shorthand: in every step of a cook its words are understood', async () => {
    let looked = 0;
    await everywhere((situation, where) => {
      for (const row of keysNow(situation)) {
        const act = row.act(situation);
        if (act.kind === 'type') {
          looked += 1;
          expect(interpret(act.line, situation.advice).kind, `${where}: ${act.line}`).not.toBe('queried');
        }
        if (act.kind === 'choose')
          for (const { line } of optionsOf(act.chooser as ChooserId, situation)) {
            looked += 1;
            expect(interpret(line, situation.advice).kind, `${where}: ${line}`).not.toBe('queried');
          }
      }
    });
    expect(looked).toBeGreaterThan(500);
  });

  it('gives no key two meanings at one moment, and no list more than the alphabet', async () => {
    await everywhere((situation, where) => {
      const keys = keysNow(situation).map(({ key }) => key);
      expect(new Set(keys).size, where).toBe(keys.length);
      const letters = optionsOf('trouble', situation).map(({ letter }) => letter);
      expect(new Set(letters).size).toBe(troubleNames.length);
    });
  });

  it('has no digit among its keys: a digit always starts a reading', () => {
    expect(keyTable.filter(({ key }) => /\d/.test(key))).toEqual([]);
  });

  it('trouble, help, leaving and typing words are there in every step', async () => {
    await everywhere((situation, where) => {
      for (const key of ['!', '?', 'q', ':']) expect(actOf(key, situation), `${where} ${key}`).not.toBeNull();
    });
  });

  it('capital letters are the same keys', async () => {
    await everywhere((situation) => expect(actOf('H', situation)).toEqual(actOf('h', situation)));
  });

  it('hands in the candy need nothing but the space bar', async () => {
    let handsOn = 0;
    const one = bench();
    await play(one, wholeCook.slice(0, 45));
    expect(one.session.advice().phase).toBe('pull');
    for (let press = 0; press < 12 && one.session.advice().phase !== 'wrap'; press += 1) {
      if (one.session.advice().handsOn) handsOn += 1;
      one.time.now += 60_000;
      await one.session.type('done');
    }
    expect(handsOn).toBeGreaterThan(3);
    expect(one.session.advice().phase).toBe('wrap');
  });

  it('a list that cannot be seen cannot be answered by key', async () => {
    const one = bench();
    await play(one, [...wholeCook.slice(0, 4)]);
    const before = { advice: one.session.advice(), facts: factsOf(one.session.cook) };
    expect(before.advice.question?.kind).toBe('pause');
    expect(actOf('y', before)).toEqual({ kind: 'type', line: 'yes' });
    await play(one, ['trouble burn']);
    const during = { advice: one.session.advice(), facts: factsOf(one.session.cook) };
    expect(actOf('y', during)).toBeNull();
  });

  it('lists every trouble once, people first', () => {
    expect([...troublesByUrgency].sort()).toEqual([...troubleNames].sort());
    expect(troublesByUrgency.slice(0, 4)).toEqual(['burn', 'fire', 'choking', 'allergy']);
  });

  it('is a table in Markdown with a row for every key', () => {
    const rows = keyListMarkdown().split('\n');
    expect(rows).toHaveLength(keyTable.length + 3);
    for (const row of rows) expect(row.split('|')).toHaveLength(6);
  });
});
