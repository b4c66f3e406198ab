import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  celsiusToFahrenheit,
  fahrenheitStepsToKelvin,
  fahrenheitToCelsius,
  kelvinToFahrenheitSteps,
  parseScaleWord,
  parseTemperature,
} from '../../source/units/temperature.js';

describe('a temperature as typed', () => {
  it.each([
    ['238', 238, null],
    ['238f', 238, 'F'],
    ['238 F', 238, 'F'],
    ['238°F', 238, 'F'],
    ['114.5c', 114.5, 'C'],
    ['114,5c', 114.5, 'C'],
    ['114 °C', 114, 'C'],
    ['114 ° C', 114, 'C'],
    ['114,500', 114.5, null],
    ['-3 c', -3, 'C'],
    ['238.', 238, null],
    ['.5c', 0.5, 'C'],
    ['100 degrees C', 100, 'C'],
    [' 238f ', 238, 'F'],
  ])('%s', (typed, value, unit) => {
    expect(parseTemperature(typed)).toEqual({ value, unit });
  });
  it.each([
    '',
    'hot',
    '238x',
    '238 f c',
    '2 3 8',
    '238..5',
    '1/2 c',
    '238k',
    'f238',
    '12e3',
    '--3',
    'NaN',
    '٢٣٨',
    '2'.repeat(70),
  ])('%j is none', (typed) => {
    expect(parseTemperature(typed)).toBeNull();
  });
  it('never throws, never gives a number that is not finite', () => {
    fc.assert(
      fc.property(fc.string(), (typed) => {
        const read = parseTemperature(typed);
        if (read !== null) expect(Number.isFinite(read.value)).toBe(true);
      }),
    );
  });
});

describe('Celsius and Fahrenheit', () => {
  it('are the only scales that can be named', () => {
    expect(['c', ' °F ', 'Fahrenheit', 'kelvin', 'warm'].map(parseScaleWord)).toEqual([
      'C',
      'F',
      'F',
      null,
      null,
    ]);
  });
  it('meet at -40, 32, 212', () => {
    expect(celsiusToFahrenheit(-40)).toBe(-40);
    expect(celsiusToFahrenheit(0)).toBe(32);
    expect(celsiusToFahrenheit(100)).toBe(212);
  });
  it('go there and back, temperatures and differences', () => {
    fc.assert(
      fc.property(fc.double({ min: -100, max: 400, noNaN: true }), (celsius) => {
        expect(fahrenheitToCelsius(celsiusToFahrenheit(celsius))).toBeCloseTo(celsius, 9);
        expect(fahrenheitStepsToKelvin(kelvinToFahrenheitSteps(celsius))).toBeCloseTo(celsius, 9);
      }),
    );
  });
});
