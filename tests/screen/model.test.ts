import { describe, expect, it } from 'vitest';
import { ringFor } from '../../source/screen/bell.js';
import { frame } from '../../source/screen/frame.js';
import type { ConsoleModel } from '../../source/screen/model.js';
import { nextGlance } from '../../source/screen/waking.js';
import { type Bench, bench, modelOn, plainText, play, unicode, wholeCook } from './kit.js';

const text = (model: ConsoleModel): string =>
  plainText(frame(model.shown, { columns: 80, rows: 24 }, unicode).lines);

const press = async (model: ConsoleModel, { time }: Bench, keys: string, apart = 500): Promise<void> => {
  for (const char of keys) {
    model.key(char === '\r' ? { kind: 'enter' } : { kind: 'char', char });
    await time.pass(apart);
  }
};

const boiling = async (): Promise<Bench> => {
  const one = bench();
  await play(one, wholeCook.slice(0, 17));
  return one;
};

describe('the console', () => {
  it('takes a reading, a done and an answer by key, each at the moment of its key', async () => {
    const one = bench();
    const model = modelOn(one);
    one.time.now = 7_000;
    model.key({ kind: 'char', char: ' ' });
    await one.time.pass(1000);
    const { log } = one.session.cook;
    expect(log.at(-1)).toMatchObject({ kind: 'done', step: 'mix.ready' });
    // The key was pressed at 7 s, and taken when it was no burst.
    expect(log.at(-1)?.t).toBeCloseTo(7, 1);
    model.close();
  });

  it('says under the action why a line was not taken, and gives it back for editing', async () => {
    const one = await boiling();
    const model = modelOn(one);
    await press(model, one, ':heat fast\r', 0);
    await one.time.pass(300);
    expect(text(model)).toMatch(/is not on this knob/);
    expect(model.shown.input.entry?.text).toBe('heat fast');
    model.close();
  });

  it('asks about a reading that can not be, with the keys that answer', async () => {
    const one = await boiling();
    const model = modelOn(one);
    await press(model, one, '61\r', 10);
    await one.time.pass(300);
    expect(
      text(model)
        .replaceAll(/^.{22}/gm, '')
        .replaceAll(/\s+/g, ' '),
    ).toMatch(/Is it right\? yes, or no/);
    expect(text(model)).toMatch(/y yes/);
    model.close();
  });

  it('a space bar at a pause point answers nothing, and says what does', async () => {
    const one = bench();
    await play(one, wholeCook.slice(0, 4));
    const model = modelOn(one);
    await press(model, one, ' ');
    expect(one.session.cook.answers['heat.pause']).toBeUndefined();
    expect(text(model)).toMatch(/safety question/);
    await press(model, one, 'y');
    expect(one.session.cook.answers['heat.pause']?.answer).toBe('yes');
    model.close();
  });

  it('keys pressed while an event is being saved wait for where it leads', async () => {
    const one = bench();
    const held: (() => void)[] = [];
    const { session } = one;
    const type = session.type.bind(session);
    session.type = async (line, t) => {
      await new Promise<void>((resolve) => held.push(resolve));
      return type(line, t);
    };
    const model = modelOn(one);
    model.key({ kind: 'char', char: ' ' });
    await one.time.pass(300);
    expect(held).toHaveLength(1);
    // Pressed while the first is on its way to the disk: it was meant for what was shown then.
    model.key({ kind: 'char', char: ' ' });
    await one.time.pass(1000);
    held[0]?.();
    await one.time.pass(1000);
    expect(held).toHaveLength(1);
    expect(session.cook.log.filter(({ kind }) => kind === 'done')).toHaveLength(1);
    model.close();
  });

  it('says that it waits when the disk is slow, and that nothing is saved as long as that is so', async () => {
    const one = bench();
    const { session } = one;
    const type = session.type.bind(session);
    let release = (): void => undefined;
    session.type = async (line, t) => {
      await new Promise<void>((resolve) => {
        release = resolve;
      });
      return type(line, t);
    };
    const model = modelOn(one);
    model.key({ kind: 'char', char: ' ' });
    await one.time.pass(300);
    expect(text(model)).not.toMatch(/saving/);
    await one.time.pass(600);
    expect(text(model)).toMatch(/saving/);
    release();
    await one.time.pass(300);
    expect(text(model)).not.toMatch(/saving/);
    model.close();
  });

  it('a session that breaks ends the console with its error', async () => {
    const one = bench();
    one.session.type = () => Promise.reject(new Error('broken'));
    const failed: unknown[] = [];
    const model = modelOn(one, { onFail: (error) => failed.push(error) });
    await press(model, one, ' ');
    expect(failed).toEqual([new Error('broken')]);
    model.close();
  });

  it('the guided test: pot off by t, a letter for what it felt like, then what to do next', async () => {
    const one = await boiling();
    const model = modelOn(one);
    await press(model, one, 't');
    expect(one.session.advice().phase).toBe('test');
    expect(text(model)).toMatch(/touch nothing there/);
    await press(model, one, 't');
    expect(text(model)).toMatch(/The ring under the lifted pot is\s/);
    expect(text(model)).toMatch(/d {2}firm ball: holds its shape, squishes when you press/);
    expect(text(model)).toMatch(/off the ring for 0:/);
    await press(model, one, 'd');
    expect(
      text(model)
        .replaceAll(/^.{22}/gm, '')
        .replaceAll(/\s+/g, ' '),
    ).toMatch(/Not yet: firm ball\. Pot back on/);
    model.close();
  });

  it('trouble is one key and one letter away, with its first action at once', async () => {
    const one = await boiling();
    const model = modelOn(one);
    await press(model, one, '!a', 200);
    expect(one.session.cook.troubles.map(({ name }) => name)).toEqual(['burn']);
    expect(text(model)).toMatch(/cool running water 1?\d?\d:\d\d/);
    model.close();
  });
});

describe('the bell', () => {
  it('rings three times for look now, once for next is due, and never when it is off', async () => {
    const one = await boiling();
    const model = modelOn(one);
    await press(model, one, '!a', 200);
    await one.time.pass(1000);
    expect(one.time.bells).toBe(3);
    expect(model.shown.rang).toBe('look');
    await press(model, one, '2', 100);
    expect(model.shown.rang).toBeNull();
    model.close();

    const other = await boiling();
    const quiet = modelOn(other, { quiet: true });
    await press(quiet, other, '!a', 200);
    await other.time.pass(1000);
    expect(other.time.bells).toBe(0);
    // It is still to be seen.
    expect(text(quiet)).toMatch(/LOOK NOW/);
    quiet.close();
  });

  it('rings once when a reading is due', async () => {
    const one = await boiling();
    const model = modelOn(one);
    await one.time.pass(10_000);
    expect(one.time.bells).toBe(0);
    await one.time.pass(20_000);
    expect(one.session.advice().nextReadingSeconds).toBe(0);
    expect(one.time.bells).toBe(1);
    model.close();
  });

  it('is turned off and on by its key', async () => {
    const one = bench();
    const model = modelOn(one);
    await press(model, one, 'b');
    expect(model.shown.input.bell).toBe(false);
    expect(text(model)).toMatch(/bell off/);
    model.close();
  });

  it('a new step is news only when nobody typed it', async () => {
    const one = bench();
    const before = one.session.advice();
    await one.session.type('done');
    const after = one.session.advice();
    expect(ringFor(before, after, false)).toBeNull();
    expect(ringFor(before, after, true)).toBe('next');
    expect(ringFor(after, after, true)).toBeNull();
  });
});

describe('sleep', () => {
  it('sleeps for most of a minute while nothing runs, a second while a number does', async () => {
    const calm = bench();
    await play(calm, ['done']);
    expect(nextGlance(calm.session.advice(), 1)).toBeGreaterThan(40_000);
    const busy = await boiling();
    expect(nextGlance(busy.session.advice(), 1)).toBeLessThanOrEqual(1000);
  });

  it('wakes at the moment that the advice names, on a fast clock too', async () => {
    const one = await boiling();
    const advice = one.session.advice();
    const seconds = (advice.changesAt ?? 0) - advice.now;
    expect(seconds).toBeGreaterThan(0);
    expect(nextGlance(advice, 60)).toBeLessThanOrEqual(Math.max(20, (seconds / 60) * 1000));
  });

  it('draws nothing by itself while nothing runs', async () => {
    const one = bench();
    const model = modelOn(one);
    let drawn = 0;
    model.subscribe(() => {
      drawn += 1;
    });
    await one.time.pass(55_000);
    expect(drawn).toBe(0);
    model.close();
    expect(one.time.sleeping).toEqual([]);
  });
});
