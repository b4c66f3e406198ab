import type { Language } from './language.js';
import { fromCelsius, kelvinToFahrenheitSteps, type TemperatureUnit } from './temperature.js';
import { clock, minute, time, whole, wordingIn } from './wording.js';

export type { TemperatureUnit } from './temperature.js';

/** How this person reads: the language, the unit, and what their thermometer shows for a true temperature. */
export type Habits = {
  /** English where nothing is said. */
  readonly language?: Language | undefined;
  readonly unit: TemperatureUnit;
  /** What the cook's thermometer shows (Celsius on its scale) when the syrup truly has `celsius`. */
  readonly toShownCelsius: (celsius: number) => number;
};

/** SI values → what people read. Never more digits than the number knows. */
export type Printer = {
  /** The language that sentences are looked up in. */
  readonly language: Language;
  readonly unit: TemperatureUnit;
  /** A true syrup temperature as the cook's own thermometer shows it: "252 °F". */
  dial(celsius: number): string;
  /** The same without unit: "252". */
  dialNumber(celsius: number): string;
  /** A window on the dial: "250-256 °F". */
  dialSpan(low: number, high: number): string;
  /** A true temperature, not corrected for the dial (limits for hands, rooms): "45 °C" or "113 °F". */
  degrees(celsius: number): string;
  /** A temperature difference: "6 °F" / "3 °C". */
  rise(kelvin: number): string;
  /** A rate of rise: "6 °F a minute"; takes kelvin per second. */
  rate(kelvinPerSecond: number): string;
  /** A duration for a sentence: "40 s", "4 min", "1 h 10 min". */
  time(seconds: number): string;
  /** A forecast: "about 4 min (3-5)". */
  about(seconds: { low: number; typical: number; high: number }): string;
  /** "18:42" since the start. */
  clock(seconds: number): string;
  grams(grams: number): string;
  litres(litres: number): string;
  millimetres(millimetres: number): string;
  metres(metres: number): string;
  percent(fraction: number): string;
  /** A plain number with at most so many decimals: "3.5", "3,5". */
  number(value: number, decimals: number): string;
  /** "n piece" / "n pieces". */
  count(n: number, one: string, many: string): string;
  /** "a, b and c". */
  list(items: readonly string[]): string;
};

/**
 * What people read, by their habits. Temperatures are whole degrees of the person's unit, seconds below 90 are said in
 * steps of 5 (below 10 exactly, because burn times are that short), then minutes, from an hour on hours and minutes;
 * masses and volumes to two or three digits. Values in SI; never more digits than they know.
 */
export const printer = (habits: Habits): Printer => {
  const { unit, language = 'en' } = habits;
  const {
    about,
    aMinute,
    grams,
    lessThan,
    list,
    litres,
    to: between,
    trimmed,
    withThousands,
  } = wordingIn(language);
  const sign = `°${unit}`;
  const onDial = (celsius: number): string => whole(fromCelsius(habits.toShownCelsius(celsius), unit));
  const steps = (kelvin: number): number => (unit === 'F' ? kelvinToFahrenheitSteps(kelvin) : kelvin);
  return {
    language,
    unit,
    dial: (celsius) => `${onDial(celsius)} ${sign}`,
    dialNumber: onDial,
    dialSpan: (low, high) => {
      const [from, to] = [onDial(low), onDial(high)];
      if (from === to) return `${from} ${sign}`;
      return from.startsWith('-') || to.startsWith('-')
        ? `${from} ${between} ${to} ${sign}`
        : `${from}-${to} ${sign}`;
    },
    degrees: (celsius) => `${whole(fromCelsius(celsius, unit))} ${sign}`,
    rise: (kelvin) => {
      const value = steps(kelvin);
      return value !== 0 && Math.abs(value) < 0.5 ? `${lessThan} 1 ${sign}` : `${whole(value)} ${sign}`;
    },
    rate: (kelvinPerSecond) => {
      const perMinute = steps(kelvinPerSecond) * minute;
      const number = Math.abs(perMinute) < 1.95 ? trimmed(perMinute, 1) : whole(perMinute);
      return `${number === '-0' ? '0' : number} ${sign} ${aMinute}`;
    },
    time,
    about,
    clock,
    grams,
    litres,
    millimetres: (value) => `${value < 9.95 ? trimmed(value, 1) : whole(value)} mm`,
    metres: (value) => `${Math.abs(value) < 9.95 ? trimmed(value, 1) : withThousands(value)} m`,
    percent: (fraction) => `${whole(fraction * 100)} %`,
    number: trimmed,
    count: (n, one, many) => `${withThousands(n)} ${Math.round(n) === 1 ? one : many}`,
    list,
  };
};
