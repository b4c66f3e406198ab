import { describe, expect, it } from 'vitest';
import { type Spoken, speak } from '../../source/screen/spoken.js';
import { nextGlance } from '../../source/screen/waking.js';
import { type Bench, bench, modelOn, play, type Typed, wholeCook } from './kit.js';

const script = { ascii: false };

/** The console that is spoken, over the bench: what a screen reader hears. */
const listening = (one: Bench = bench()) => {
  const model = modelOn(one);
  let spoken: Spoken = speak(null, model.shown, script);
  const look = (): readonly string[] => {
    const before = spoken.lines.length;
    spoken = speak(spoken, model.shown, script);
    return spoken.lines.slice(before);
  };
  return {
    model,
    heard: () => spoken.lines,
    open: () => spoken.open,
    look,
    type: async (...typed: readonly Typed[]): Promise<readonly string[]> => {
      await play(one, typed);
      model.happened();
      return look();
    },
    wait: async (seconds: number): Promise<readonly string[]> => {
      await one.time.pass(seconds * 1000);
      return look();
    },
  };
};

const upToBoil = wholeCook.slice(0, wholeCook.findIndex((one) => one[1] === '229') + 1);

describe('a cook that is heard', () => {
  it('says phase and action first, then why, then what belongs to it', () => {
    const heard = listening()
      .heard()
      .map((line) => line.trim());
    expect(heard[0]).toMatch(/^\[MIX, 0:00\] /);
    expect(heard[1]).toMatch(/^Why: /);
  });

  it('says a warning before what to do', async () => {
    const { type } = listening();
    const heard = await type(...upToBoil, 'trouble foam');
    const warned = heard.findLastIndex((line) => line.startsWith('!! '));
    const told = heard.findLastIndex((line) => line.startsWith('['));
    expect(warned).toBeGreaterThanOrEqual(0);
    expect(told).toBeGreaterThanOrEqual(0);
    expect(warned).toBeLessThan(told);
  });

  it('says nothing again while numbers run', async () => {
    const { type, wait } = listening();
    await type(...upToBoil);
    const heard = (await Promise.all(Array.from({ length: 20 }, () => wait(1)))).flat();
    expect(heard).toEqual([]);
  });

  it('only ever adds, through a whole cook', async () => {
    const { type, heard } = listening();
    for (const typed of wholeCook) {
      const before = [...heard()];
      await type(typed);
      expect(heard().slice(0, before.length)).toEqual(before);
    }
    expect(heard().at(-1)).not.toBe('');
  });

  it('answers a reading with what it means', async () => {
    const { type } = listening();
    await type(...upToBoil);
    expect((await type([60, '233'])).join(' ')).toMatch(/233/);
  });

  it('names the keys that work, and what is being typed instead while something is', async () => {
    const { model, open, look } = listening();
    expect(open().join(' ')).toMatch(/\? keys/);
    model.key({ kind: 'char', char: '2' });
    look();
    expect(open()).toEqual(['> 2']);
  });

  it('reads a list that was opened line by line', async () => {
    const one = bench();
    const { model, open, wait } = listening(one);
    model.key({ kind: 'char', char: '!' });
    await wait(1);
    expect(open().length).toBeGreaterThan(10);
    expect(open()[0]).toBe('What is wrong? One letter.');
  });
});

describe('what moves by itself', () => {
  it('is looked at once a second at most while a number runs, however fast a rehearsal is', async () => {
    const one = bench();
    await play(one, upToBoil);
    const advice = one.session.advice();
    const nothingChanges = { ...advice, changesAt: null };
    for (const pace of [1, 20, 60]) expect(nextGlance(nothingChanges, pace)).toBe(1000);
    for (const pace of [1, 20, 60]) expect(nextGlance(nothingChanges, pace, true)).toBe(10_000);
  });

  it('is looked at in time for what changes, also where little is to move', async () => {
    const one = bench();
    await play(one, upToBoil);
    const advice = one.session.advice();
    expect(nextGlance({ ...advice, changesAt: advice.now + 0.5 }, 1, true)).toBeCloseTo(500, 6);
  });
});
