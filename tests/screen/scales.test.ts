import { describe, expect, it } from 'vitest';
import { frame } from '../../source/screen/frame.js';
import { LineMode } from '../../source/screen/line-mode.js';
import type { ConsoleModel } from '../../source/screen/model.js';
import { printer } from '../../source/units/printer.js';
import { type Bench, bench, kitchenNamed, modelOn, plainText, play, wholeCook } from './kit.js';

const small = { columns: 80, rows: 24 };
const large = { columns: 120, rows: 40 };
const drawn = (model: ConsoleModel, size = small, ascii = false): string => {
  model.happened();
  return plainText(frame(model.shown, size, { ascii }).lines);
};
const presses = async (model: ConsoleModel, one: Bench, keys: string): Promise<void> => {
  for (const char of keys) {
    model.key(char === '\r' ? { kind: 'enter' } : { kind: 'char', char });
    await one.time.pass(500);
  }
};

/** Read on a dial in Fahrenheit, in the boil. */
const inTheBoil = async () => {
  const one = bench();
  await play(one, wholeCook.slice(0, 16));
  return { one, model: modelOn(one) };
};

describe('both scales', () => {
  it('stand on the glass: the thermometer first, the other at the right edge, each with its sign', async () => {
    const { model } = await inTheBoil();
    const text = drawn(model);
    expect(text).toMatch(/^ {2}°F │ +°C /m);
    expect(text).toMatch(/^ 229 ◄ {4}now +109 °C /m);
    expect(text).toMatch(/^ 250 │ ▒▒ .*121 /m);
    expect(text).not.toMatch(/thermometer and typed numbers/);
    expect(drawn(model, small, true)).toMatch(/^ 229 < {4}now +109 C /m);
  });

  it('stand in the labels of the large numbers and in the reason where it costs no row', async () => {
    const { model } = await inTheBoil();
    const text = drawn(model, large);
    expect(text).toMatch(/109 °C, read/);
    expect(text).toMatch(/target °F · 118-121 °C/);
    expect(text).toMatch(/Off the ring at \d+ °F · \d+ °C/);
  });
});

describe('one key puts the other scale first', () => {
  it('on the glass, in the numbers and in every sentence, and back', async () => {
    const { one, model } = await inTheBoil();
    const before = drawn(model, large);
    await presses(model, one, 'd');
    const text = drawn(model, large);
    expect(text).toMatch(/^ {2}°C │ +°F( |$)/m);
    expect(text).toMatch(/^ 109 ◄ {4}now +229 °F( |$)/m);
    expect(text).toMatch(/target °C · 244-250 °F/);
    expect(text).toMatch(/Off the ring at \d+ °C · \d+ °F/);
    await presses(model, one, 'd');
    await presses(model, one, '1');
    model.key({ kind: 'backspace' });
    expect(drawn(model, large).split('\n').slice(2, 10)).toEqual(before.split('\n').slice(2, 10));
  });

  it('never changes how a bare number is read, and says so as long as they differ', async () => {
    const { one, model } = await inTheBoil();
    await presses(model, one, 'd');
    expect(drawn(model)).toMatch(/°C first\. A bare number is still °F; type 114c for °C\./);
    await presses(model, one, '235');
    expect(drawn(model)).toMatch(/> 235▌ {3}°F of the syrup/);
    expect(drawn(model)).toMatch(/°C first; thermometer and typed numbers °F/);
    one.time.now += 60_000;
    await presses(model, one, '\r');
    expect(one.session.cook.lastReading?.celsius).toBeLessThan(114);
    expect(one.session.cook.lastReading?.celsius).toBeGreaterThan(110);
    expect(drawn(model)).toMatch(/235 F/);
  });

  it('is no event: the list of what happened is as long as before', async () => {
    const { one, model } = await inTheBoil();
    const { length } = one.session.cook;
    await presses(model, one, 'd:show c\r:show f\r');
    expect(one.session.cook.length).toBe(length);
    expect(model.shown.printer.unit).toBe('F');
    expect(drawn(model)).toMatch(/°F first, as on the thermometer\./);
  });

  it('a reading with its letter is taken on that scale, and the echo names it', async () => {
    const { one, model } = await inTheBoil();
    one.time.now += 60_000;
    await presses(model, one, '112c');
    expect(drawn(model)).toMatch(/> 112c▌ {3}°C of the syrup/);
    await presses(model, one, '\r');
    expect(one.session.cook.lastReading?.celsius).toBeGreaterThan(110);
    expect(one.session.cook.lastReading?.celsius).toBeLessThan(114);
  });

  it('a doubt about a reading names the letter by the thermometer, whatever is shown', async () => {
    const { one, model } = await inTheBoil();
    await presses(model, one, 'd');
    one.time.now += 60_000;
    await presses(model, one, '115\r');
    const text = drawn(model).replaceAll(/\s+/g, ' ');
    expect(one.session.advice().question?.kind).toBe('reading');
    if (/other scale/.test(text)) expect(text).toMatch(/with "c" behind it/);
  });

  it('a thermometer in Celsius has Celsius first', async () => {
    const hall = kitchenNamed('hill-hall');
    const kitchen = {
      ...hall,
      thermometers: hall.thermometers.map((one) => ({ ...one, unit: 'C' as const })),
    };
    const one = bench({ kitchen });
    await play(one, [...wholeCook.slice(0, 16), [60, '112']]);
    const model = modelOn(one);
    expect(drawn(model)).toMatch(/^ 112 ◄ {4}now +23\d °F/m);
  });
});

describe('in lines', () => {
  it('"show c" changes the sentences, writes no event, and says how a bare number is read', async () => {
    const { one } = await inTheBoil();
    const { length } = one.session.cook;
    let written = '';
    const mode = new LineMode({
      session: one.session,
      printerNow: () => printer({ unit: 'F', toShownCelsius: (celsius) => celsius }),
      lines: (async function* () {
        yield 'show c';
        yield 'help';
      })(),
      write: (text) => {
        written += text;
      },
      columns: () => null,
      prompts: false,
    });
    await mode.run();
    const after = written.slice(written.indexOf('°C first.'));
    expect(after).toMatch(/A bare number is still °F; type 114c for °C\./);
    expect(after).toMatch(/show c/);
    expect(one.session.cook.length).toBe(length);
  });
});
