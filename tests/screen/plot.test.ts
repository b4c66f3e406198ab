import { describe, expect, it } from 'vitest';
import type { Size } from '../../source/screen/context.js';
import { contextOf } from '../../source/screen/context.js';
import { frame } from '../../source/screen/frame.js';
import type { ConsoleModel } from '../../source/screen/model.js';
import { plot } from '../../source/screen/parts/plot.js';
import { wantsAscii } from '../../source/screen/style.js';
import { lineWidth } from '../../source/screen/text.js';
import { Tracer } from '../../source/screen/trace.js';
import { type Bench, bench, kitchenNamed, modelOn, plainText, play, wholeCook } from './kit.js';

const unicode = { ascii: false };
const ascii = { ascii: true };
const small: Size = { columns: 80, rows: 24 };
const sizes: readonly Size[] = [small, { columns: 120, rows: 40 }, { columns: 200, rows: 60 }];
const braille = /[\u2801-\u28ff]/;

const press = async (model: ConsoleModel, one: Bench, keys: string): Promise<void> => {
  for (const char of keys) {
    model.key({ kind: 'char', char });
    await one.time.pass(500);
  }
};

const page = (model: ConsoleModel, size: Size = small, style = unicode): string => {
  model.happened();
  return plainText(frame(model.shown, size, style).lines);
};

const inTheBoil = async (steps = 16) => {
  const one = bench();
  await play(one, wholeCook.slice(0, steps));
  const model = modelOn(one);
  model.happened();
  await one.time.pass(500);
  return { one, model };
};

/** The curve alone, as text, with its left edge cut off. */
const curve = (model: ConsoleModel, width = 100, height = 24, style = unicode): readonly string[] =>
  plot(contextOf(model.shown, style), { width, height, calm: false }).map((line) =>
    line.map(({ text }) => text).join(''),
  );

describe('the curve', () => {
  it('fills the screen on one key, with the action above it, and goes on the same key', async () => {
    const { one, model } = await inTheBoil();
    expect(page(model)).not.toMatch(braille);
    await press(model, one, 'g');
    for (const size of sizes) {
      const text = page(model, size);
      expect(text).toMatch(/Leave it still/);
      expect(text).toMatch(/g close curve/);
      expect(text).toMatch(/target/);
      expect(text).toMatch(/▼heat medium/);
      expect(text).toMatch(/off the ring in about/);
      expect(text.split('\n').filter((row) => braille.test(row)).length).toBeGreaterThan(6);
    }
    await press(model, one, 'g');
    expect(page(model)).not.toMatch(braille);
  });

  it('stands quietly beside or under the action where there is room, in the boil, and not at 80x24', async () => {
    const { model } = await inTheBoil();
    for (const size of sizes) expect(braille.test(page(model, size)), `${size.rows}`).toBe(size.rows >= 40);
    const rows = frame(model.shown, { columns: 120, rows: 40 }, unicode).lines;
    const drawn = rows.flat().filter(({ text }) => braille.test(text));
    expect(drawn.length).toBeGreaterThan(5);
    expect(drawn.filter(({ look }) => look !== 'faint' && look !== 'plain')).toEqual([]);
  });

  it('has a reading where its axes say: hotter is higher, later is further right', async () => {
    const { model } = await inTheBoil(21);
    const rows = curve(model);
    const { syrup } = model.shown.trace;
    expect(syrup.map(({ last }) => Math.round((last * 9) / 5 + 32)).length).toBeGreaterThan(5);
    const columns = syrup.map(({ last }, index) => {
      const one = rows.findIndex((row) => row.startsWith(model.shown.printer.dialNumber(last).padStart(4)));
      return { index, row: one };
    });
    const marked = columns.filter(({ row }) => row > 0);
    for (const [nth, { row }] of marked.entries())
      if (nth > 0) expect(row).toBeLessThanOrEqual(marked[nth - 1]?.row ?? 0);
    const row = rows.findIndex((text) => text.includes('◄'));
    // The present reading lies in its row, left of the mark of now.
    const now = (rows.at(-2) ?? '').indexOf('▲');
    const last = [...(rows[row] ?? '')].slice(0, now + 2).join('');
    expect(last).toMatch(braille);
    expect([...last].findLastIndex((sign) => braille.test(sign))).toBeGreaterThan(now - 3);
  });

  it('sees the forecast ahead of now only, earliest above latest, widening', async () => {
    const { model } = await inTheBoil(16);
    const { ahead } = model.shown.trace;
    expect(ahead?.lowShare).toBeLessThan(1);
    expect(ahead?.highShare).toBeGreaterThan(1);
    const path = ahead?.path ?? [];
    for (const [nth, point] of path.entries())
      if (nth > 0) {
        expect(point.t).toBeGreaterThanOrEqual(path[nth - 1]?.t ?? 0);
        expect(point.celsius).toBeGreaterThan(path[nth - 1]?.celsius ?? 0);
      }
    // The projected crossing of the floor is the one that is said in words.
    const [floor] = model.shown.facts.window;
    const crossed = path.find(({ celsius }) => celsius >= floor)?.t ?? 0;
    const said = model.shown.advice.forecast?.seconds.typical ?? 0;
    expect(crossed - model.shown.advice.now).toBeGreaterThan(0.8 * said);
    const rows = curve(model);
    const now = (rows.at(-2) ?? '').indexOf('▲');
    const widths = [4, 8, 12].map(
      (later) => rows.slice(1, -2).filter((row) => braille.test([...row][now + later] ?? '')).length,
    );
    expect(widths[0]).toBeLessThan(widths[2] ?? 0);
    const without = plainText(
      plot(contextOf({ ...model.shown, trace: { ...model.shown.trace, ahead: null } }, unicode), {
        width: 100,
        height: 24,
        calm: false,
      }),
    );
    expect(without).not.toBe(rows.map((row) => row.trimEnd()).join('\n'));
  });

  it('marks the cold-water test at its temperature, and what was done at the burner above its time', async () => {
    const { one, model } = await inTheBoil(27);
    await play(one, ['heat low']);
    model.happened();
    const rows = curve(model, 120, 30);
    expect(rows[0]).toMatch(/▼heat medium.*▼pot on, heat low/);
    const tested = rows.slice(1, -2).filter((row) => /[^a-z]T[^a-z]/.test(row.slice(6, -12)));
    expect(tested).toHaveLength(1);
    expect(tested[0]).toMatch(/^ 249 ◄/);
  });

  it('gives way to what has to be done at once, and to a question', async () => {
    const { one, model } = await inTheBoil();
    await press(model, one, 'g');
    await play(one, ['trouble burn']);
    expect(page(model)).not.toMatch(/readings, line between/);
    await play(one, ['over burn']);
    expect(page(model)).toMatch(/readings, line between/);
    await play(one, [[10, '150f']]);
    expect(one.session.advice().question).not.toBeNull();
    expect(page(model)).not.toMatch(/readings, line between/);
  });

  it('has warnings below it, and what is typed above it', async () => {
    const { one, model } = await inTheBoil();
    await press(model, one, 'g');
    one.time.now += 1_000_000;
    expect(one.session.advice().warnings.length).toBeGreaterThan(0);
    for (const size of sizes) expect(page(model, size)).toMatch(/▲ (WARNING|ATTENTION)/);
    await press(model, one, '238');
    expect(page(model)).toMatch(/> 238/);
  });

  it('is of ASCII alone in a plain terminal', async () => {
    const { one, model } = await inTheBoil(24);
    await press(model, one, 'g');
    for (const size of sizes) expect(page(model, size, ascii)).toMatch(/^[\n\u0020-\u007e]*$/);
    expect(curve(model, 74, 18, ascii).join('\n')).toMatch(/o/);
  });

  it('says so where there is nothing to draw, and has no key without a thermometer', async () => {
    const one = bench();
    const model = modelOn(one);
    await press(model, one, 'g');
    expect(page(model)).toMatch(/No reading yet/);
    const other = bench({ kitchen: { ...kitchenNamed('hill-hall'), thermometers: [] } });
    const blind = modelOn(other);
    await press(blind, other, 'g');
    expect(page(blind)).not.toMatch(/No reading yet/);
  });

  it('fits in every step of a cook, at every size', async () => {
    const one = bench();
    const model = modelOn(one);
    await play(one, wholeCook, async () => {
      model.happened();
      await one.time.pass(600);
      const shown = {
        ...model.shown,
        input: { ...model.shown.input, view: { view: 'plot', phase: model.shown.advice.phase } as const },
      };
      for (const size of sizes)
        for (const style of [unicode, ascii]) {
          const drawn = frame(shown, size, style);
          expect(drawn.lines).toHaveLength(size.rows);
          expect(Math.max(...drawn.lines.map(lineWidth))).toBeLessThanOrEqual(size.columns);
          expect(drawn.clipped, `${model.shown.advice.step}`).toBe(false);
        }
    });
  });

  it('shows the middle of the mass and the limit for hands once that is measured', async () => {
    const { one, model } = await inTheBoil(42);
    expect(one.session.advice().phase).toBe('fold');
    await press(model, one, 'g');
    if (one.session.advice().question?.kind === 'pause') await play(one, ['yes']);
    await press(model, one, 'g');
    const rows = curve(model);
    expect(rows.join('\n')).toMatch(/for hands/);
    expect(rows.some((row) => row.startsWith(' 120'))).toBe(true);
  });
});

describe('what a curve keeps', () => {
  const fed = async (count: number) => {
    const one = bench();
    await play(one, wholeCook.slice(0, 13));
    const start = one.session.cook.t;
    for (let nth = 0; nth < count; nth += 1)
      await one.session.happen(
        { kind: 'reading', value: 104 + 12 * (nth / count), unit: 'C', of: 'syrup', by: 'feed' },
        start + nth + 1,
      );
    one.time.now = (start + count + 1) * 1000;
    return one;
  };

  it('is bounded: of thousands of readings a few hundred sums, none of them hotter or colder than what was read', async () => {
    const one = await fed(2500);
    const { syrup } = new Tracer().of(one.session.cook, one.session.advice());
    expect(syrup.length).toBeGreaterThan(200);
    expect(syrup.length).toBeLessThanOrEqual(512);
    const dial = one.session.cook.batch.dial;
    expect(Math.min(...syrup.map(({ low }) => low))).toBeGreaterThanOrEqual(dial.toTrueCelsius(104) - 0.01);
    expect(Math.max(...syrup.map(({ high }) => high))).toBeLessThanOrEqual(dial.toTrueCelsius(116) + 0.01);
    for (const [nth, bucket] of syrup.entries()) {
      expect(bucket.low).toBeLessThanOrEqual(bucket.last);
      expect(bucket.high).toBeGreaterThanOrEqual(bucket.last);
      if (nth > 0) expect(bucket.t).toBeGreaterThan(syrup[nth - 1]?.t ?? 0);
    }
  });

  it('is the same whether it was followed or read at once, and after an undo what was taken back is gone', async () => {
    const one = bench();
    const followed = new Tracer();
    await play(one, wholeCook.slice(0, 27), () => {
      followed.of(one.session.cook, one.session.advice());
    });
    const now = one.session.advice();
    const { ahead, ...all } = followed.of(one.session.cook, now);
    const { ahead: again, ...atOnce } = new Tracer().of(one.session.cook, now);
    expect(all).toEqual(atOnce);
    await play(one, ['pot on', [20, '250'], 'undo']);
    const { syrup } = followed.of(one.session.cook, one.session.advice());
    expect(syrup).toEqual(atOnce.syrup);
  });

  it('leaves out a reading that nobody stands by', async () => {
    const { one, model } = await inTheBoil();
    const before = model.shown.trace.syrup.length;
    await play(one, [[20, '150f']]);
    model.happened();
    expect(model.shown.trace.syrup).toHaveLength(before);
    expect(model.shown.trace.doubted).not.toBeNull();
    await play(one, ['no', [20, '231']]);
    model.happened();
    expect(model.shown.trace.syrup).toHaveLength(before + 1);
    expect(Math.min(...model.shown.trace.syrup.map(({ low }) => low))).toBeGreaterThan(100);
  });

  it('lies still between readings: the same lines until now has come into the next column', async () => {
    const { one, model } = await inTheBoil();
    const lines = () => {
      model.happened();
      return plot(contextOf(model.shown, unicode), { width: 90, height: 20, calm: true });
    };
    const first = lines();
    let changes = 0;
    let before = first;
    for (let second = 0; second < 30; second += 1) {
      one.time.now += 1000;
      const next = lines();
      if (next !== before) changes += 1;
      before = next;
    }
    // Ten seconds a column, or more.
    expect(changes).toBeGreaterThan(0);
    expect(changes).toBeLessThanOrEqual(4);
  });
});

describe('letters that a locale makes two cells wide', () => {
  it('are left out: East Asian locales get ASCII', () => {
    for (const LANG of ['ja_JP.UTF-8', 'zh_CN.UTF-8', 'ko_KR.utf8']) expect(wantsAscii({ LANG })).toBe(true);
    expect(wantsAscii({ LC_ALL: 'de_DE.UTF-8', LANG: 'ja_JP.UTF-8' })).toBe(false);
    expect(wantsAscii({ LANG: 'en_GB.UTF-8' })).toBe(false);
  });
});
