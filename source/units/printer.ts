import { type Amount, householdAmount, inOunces, type Weights } from './household.js';
import type { Language } from './language.js';
import { fromCelsius, kelvinToFahrenheitSteps, otherUnit, type TemperatureUnit } from './temperature.js';
import type { ClockHabit } from './wall-clock.js';
import { clock, minute, time, whole, wordingIn } from './wording.js';

export type { TemperatureUnit } from './temperature.js';

/** How this person reads: the language, the unit, and what their thermometer shows for a true temperature. */
export type Habits = {
  /** English where nothing is said. */
  readonly language?: Language | undefined;
  /** The scale of their thermometer: how a bare number is read. */
  readonly unit: TemperatureUnit;
  /** The scale that they read first; their thermometer's where nothing is said. */
  readonly shown?: TemperatureUnit | undefined;
  /** Each temperature is followed by the other scale. */
  readonly both?: boolean | undefined;
  /** Grams where nothing is said. */
  readonly weights?: Weights | undefined;
  /** 24 hours where nothing is said. */
  readonly clock?: ClockHabit | undefined;
  /** What the cook's thermometer shows (Celsius on its scale) when the syrup truly has `celsius`. */
  readonly toShownCelsius: (celsius: number) => number;
};

/** SI values → what people read. Never more digits than the number knows. */
export type Printer = {
  /** The language that sentences are looked up in. */
  readonly language: Language;
  /** The scale in which temperatures are said. */
  readonly unit: TemperatureUnit;
  /** The scale of the thermometer, in which a bare number is read: another one never changes that. */
  readonly thermometerUnit: TemperatureUnit;
  readonly weights: Weights;
  /** Times of day are said with am and pm. */
  readonly twelveHours: boolean;
  /** The same habits in another language. */
  inLanguage(language: Language): Printer;
  /** The same habits with this scale first. */
  inScale(unit: TemperatureUnit): Printer;
  /** The same with the other scale behind each temperature that is no difference: "252 °F · 122 °C". */
  inBoth(): Printer;
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
  /** A mass: "710 g", or "25 oz" for somebody who weighs in ounces. */
  grams(grams: number): string;
  /** The same in grams, whatever is weighed with. */
  exactGrams(grams: number): string;
  /** An amount by ounces, cups and spoons, US customary: "17 3/4 oz or 2 1/2 cups". */
  household(amount: Amount): string;
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
  const { shown: unit = habits.unit, language = 'en', weights = 'grams', both = false } = habits;
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
  const otherScale = both ? printer({ ...habits, shown: otherUnit(unit), both: false }) : null;
  const beside = (said: string, say: (other: Printer) => string): string =>
    otherScale === null ? said : `${said} · ${say(otherScale)}`;
  const steps = (kelvin: number): number => (unit === 'F' ? kelvinToFahrenheitSteps(kelvin) : kelvin);
  return {
    language,
    unit,
    thermometerUnit: habits.unit,
    weights,
    twelveHours: habits.clock === '12h',
    inLanguage: (other) => printer({ ...habits, language: other }),
    inScale: (shown) => printer({ ...habits, shown }),
    inBoth: () => printer({ ...habits, both: true }),
    dial: (celsius) => beside(`${onDial(celsius)} ${sign}`, (other) => other.dial(celsius)),
    dialNumber: onDial,
    dialSpan: (low, high) => {
      const [from, to] = [onDial(low), onDial(high)];
      const negative = from.startsWith('-') || to.startsWith('-');
      const span = from === to ? from : negative ? `${from} ${between} ${to}` : `${from}-${to}`;
      return beside(`${span} ${sign}`, (other) => other.dialSpan(low, high));
    },
    degrees: (celsius) =>
      beside(`${whole(fromCelsius(celsius, unit))} ${sign}`, (other) => other.degrees(celsius)),
    rise: (kelvin) => {
      const value = steps(kelvin);
      return value !== 0 && Math.abs(value) < 0.5 ? `${lessThan} 1 ${sign}` : `${whole(value)} ${sign}`;
    },
    rate: (kelvinPerSecond) => {
      const perMinute = steps(kelvinPerSecond) * minute;
      const number = Math.abs(perMinute) < 1.95 ? trimmed(perMinute, 1) : whole(perMinute);
      return `${number} ${sign} ${aMinute}`;
    },
    time,
    about,
    clock,
    grams: (value) => (weights === 'ounces' ? inOunces(value) : null) ?? grams(value),
    exactGrams: grams,
    household: (amount) => householdAmount(amount, language),
    litres,
    millimetres: (value) => `${value < 9.95 ? trimmed(value, 1) : whole(value)} mm`,
    metres: (value) => `${Math.abs(value) < 9.95 ? trimmed(value, 1) : withThousands(value)} m`,
    percent: (fraction) => `${whole(fraction * 100)} %`,
    number: trimmed,
    count: (n, one, many) => `${withThousands(n)} ${Math.round(n) === 1 ? one : many}`,
    list,
  };
};
