import { readNumber } from './number.js';

/** The scale of a thermometer or of a person's habit. */
export type TemperatureUnit = 'C' | 'F';

export const otherUnit = (unit: TemperatureUnit): TemperatureUnit => (unit === 'F' ? 'C' : 'F');

export const celsiusToFahrenheit = (celsius: number): number => celsius * 1.8 + 32;
export const fahrenheitToCelsius = (fahrenheit: number): number => (fahrenheit - 32) / 1.8;
/** A difference, not a temperature: 1 K is 1.8 °F. */
export const kelvinToFahrenheitSteps = (kelvin: number): number => kelvin * 1.8;
export const fahrenheitStepsToKelvin = (steps: number): number => steps / 1.8;

export const toCelsius = (value: number, unit: TemperatureUnit): number =>
  unit === 'F' ? fahrenheitToCelsius(value) : value;
export const fromCelsius = (celsius: number, unit: TemperatureUnit): number =>
  unit === 'F' ? celsiusToFahrenheit(celsius) : celsius;

const unitWords: Readonly<Record<string, TemperatureUnit | null>> = {
  '': null,
  '°': null,
  º: null,
  deg: null,
  degrees: null,
  c: 'C',
  '°c': 'C',
  ºc: 'C',
  '℃': 'C',
  celsius: 'C',
  'deg c': 'C',
  'degrees c': 'C',
  f: 'F',
  '°f': 'F',
  ºf: 'F',
  '℉': 'F',
  fahrenheit: 'F',
  'deg f': 'F',
  'degrees f': 'F',
};

/** "c", "°F", "celsius": the scale that is named; null for anything else. */
export const parseScaleWord = (word: string): TemperatureUnit | null =>
  unitWords[word.trim().toLowerCase()] ?? null;

const plainNumber = /^[-+−]?(\d+([.,]\d*)?|[.,]\d+)/;

/**
 * A temperature as typed: "238", "238f", "114,5c", "114 °C". The unit is null where none was typed; a comma is always
 * a decimal comma here. Null for anything else.
 */
export const parseTemperature = (
  typed: string,
): { readonly value: number; readonly unit: TemperatureUnit | null } | null => {
  const text = typed.trim().toLowerCase();
  const digits = plainNumber.exec(text)?.[0];
  if (digits === undefined) return null;
  const unit = unitWords[text.slice(digits.length).trim().replaceAll(/\s+/g, ' ').replace('° ', '°')];
  if (unit === undefined) return null;
  const number = readNumber(digits.replace(',', '.').replace(/\.$/, ''));
  return number === null ? null : { value: number.value, unit };
};
