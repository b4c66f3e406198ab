import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { escapeForTerminal } from '../../source/units/escape.js';
import { printer } from '../../source/units/printer.js';

const right = (celsius: number): number => celsius;
const inFahrenheit = printer({ unit: 'F', toShownCelsius: right });
const inCelsius = printer({ unit: 'C', toShownCelsius: right });

describe('temperatures', () => {
  it('are whole degrees of the person', () => {
    expect(inFahrenheit.dial(122.2)).toBe('252 °F');
    expect(inFahrenheit.dialNumber(122.2)).toBe('252');
    expect(inCelsius.dialSpan(121.1, 124.4)).toBe('121-124 °C');
    expect(inCelsius.dialSpan(121.1, 121.3)).toBe('121 °C');
    expect(inFahrenheit.degrees(45)).toBe('113 °F');
    expect(inCelsius.degrees(-0.2)).toBe('0 °C');
  });
  it('on the dial are what this thermometer shows; limits for hands are not', () => {
    const high = printer({ unit: 'F', toShownCelsius: (celsius) => celsius + 5 });
    expect(high.dial(120)).toBe('257 °F');
    expect(high.degrees(120)).toBe('248 °F');
  });
  it('differences are scaled, not shifted', () => {
    expect(inFahrenheit.rise(3.4)).toBe('6 °F');
    expect(inCelsius.rise(3.4)).toBe('3 °C');
    expect(inCelsius.rise(0.3)).toBe('less than 1 °C');
    expect(inFahrenheit.rate(3.3 / 60)).toBe('6 °F a minute');
    expect(inCelsius.rate(0.5 / 60)).toBe('0.5 °C a minute');
    expect(inCelsius.rate(-0.0001)).toBe('0 °C a minute');
  });
});

describe('times', () => {
  it.each([
    [0, '0 s'],
    [3, '3 s'],
    [41, '40 s'],
    [86, '85 s'],
    [89, '90 s'],
    [90, '2 min'],
    [100, '2 min'],
    [240, '4 min'],
    [3599, '1 h'],
    [4200, '1 h 10 min'],
    [7200, '2 h'],
  ])('%i s is said as %s', (seconds, said) => {
    expect(inCelsius.time(seconds)).toBe(said);
  });
  it.each([
    [{ low: 180, typical: 240, high: 300 }, 'about 4 min (3-5)'],
    [{ low: 30, typical: 40, high: 55 }, 'about 40 s (30-55)'],
    [{ low: 60, typical: 85, high: 150 }, 'about 85 s (60 s to 3 min)'],
    [{ low: 240, typical: 240, high: 240 }, 'about 4 min'],
    [{ low: 3000, typical: 3600, high: 4500 }, 'about 1 h (50 min to 1 h 15 min)'],
    [{ low: 0, typical: 0, high: 0 }, 'now'],
  ])('a forecast of %j is said as %s', (seconds, said) => {
    expect(inCelsius.about(seconds)).toBe(said);
  });
  it.each([
    [0, '0:00'],
    [1122, '18:42'],
    [3910, '1:05:10'],
  ])('the clock at %i s shows %s', (seconds, shown) => {
    expect(inCelsius.clock(seconds)).toBe(shown);
  });
});

describe('amounts', () => {
  it.each([
    [0.25, '0.25 g'],
    [2.54, '2.5 g'],
    [9.96, '10 g'],
    [14.2, '14 g'],
    [319.6, '320 g'],
    [999.7, '1 kg'],
    [1254, '1.25 kg'],
  ])('%f g is %s', (grams, said) => {
    expect(inCelsius.grams(grams)).toBe(said);
  });
  it('the rest', () => {
    expect(inCelsius.litres(0.654)).toBe('650 ml');
    expect(inCelsius.litres(0.034)).toBe('34 ml');
    expect(inCelsius.litres(2.44)).toBe('2.4 l');
    expect(inCelsius.millimetres(15.2)).toBe('15 mm');
    expect(inCelsius.metres(1450)).toBe('1,450 m');
    expect(inCelsius.metres(4.62)).toBe('4.6 m');
    expect(inCelsius.percent(0.924)).toBe('92 %');
    expect(inCelsius.count(1, 'piece', 'pieces')).toBe('1 piece');
    expect(inCelsius.count(1200, 'piece', 'pieces')).toBe('1,200 pieces');
    expect(inCelsius.list(['a', 'b', 'c'])).toBe('a, b and c');
    expect(inCelsius.list(['a', 'b'])).toBe('a and b');
    expect(inCelsius.list([])).toBe('');
  });
});

describe('text from a file on a terminal', () => {
  it.each([
    ['\u001b[31mred\u001b[0m', '\\x1b[31mred\\x1b[0m'],
    ['\u001b]0;title\u0007', '\\x1b]0;title\\x07'],
    ['\u009b2J', '\\x9b2J'],
    ['two\nlines\tand\rback', 'two\\nlines\\tand\\rback'],
    ['abc\u202edef\u2066x\u2069', 'abc\\u{202e}def\\u{2066}x\\u{2069}'],
    ['zero\u200bwidth', 'zero\\u{200b}width'],
    ['half \ud800', 'half \\u{d800}'],
    ['tag \u{e0041}', 'tag \\u{e0041}'],
    ['Crème brûlée, 糖, 🍬, 👩‍🍳', 'Crème brûlée, 糖, 🍬, 👩‍🍳'],
  ])('%j', (raw, shown) => {
    expect(escapeForTerminal(raw)).toBe(shown);
  });
  it('shows no control whatever comes, and doing it twice changes nothing', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (raw) => {
        const once = escapeForTerminal(raw);
        expect(once).not.toMatch(/[\u0000-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/);
        expect(escapeForTerminal(once)).toBe(once);
      }),
    );
  });
});
