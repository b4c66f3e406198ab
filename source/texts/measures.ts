import { escapeForTerminal } from '../units/escape.js';
import type { Printer, TemperatureUnit } from '../units/printer.js';
import { wallDate } from '../units/wall-clock.js';

/** Measures that are written the same in every language, beside those of the printer. */

export const hectopascals = (pascal: number): string => `${Math.round(pascal / 100)} hPa`;

/** A number as that thermometer shows it, whatever unit the person reads. */
export const shownOn = (shownCelsius: number, unit: TemperatureUnit): string =>
  `${Math.round(unit === 'F' ? shownCelsius * 1.8 + 32 : shownCelsius)} °${unit}`;

export const bytesInWords = (bytes: number): string =>
  bytes >= 1024 * 1024 ? `${Math.round(bytes / 1024 / 1024)} MB` : `${Math.round(bytes / 1024)} kB`;

/** Minutes that have passed, whole ones. */
export const passedMinutes = (seconds: number): number => Math.floor(seconds / 60);

/** A time to the minute: "40 min", "1 h 10 min". */
export const toTheMinute = (seconds: number, printer: Printer): string =>
  printer.time(Math.round(seconds / 60) * 60);

/** How long a phase took: never finer than it is worth, and in seconds only where it was over at once. */
export const phaseTime = (seconds: number, printer: Printer): string =>
  seconds < 20 ? printer.time(seconds) : printer.time(Math.max(30, seconds));

/** " (6-10 %)", and nothing where both ends read the same. */
export const percentInBrackets = ([low, high]: readonly [number, number], printer: Printer): string => {
  const [from, to] = [printer.percent(low), printer.percent(high)];
  return from === to ? '' : ` (${from.replace(/\s*%$/, '')}-${to})`;
};

/** An ISO instant from a file, as this person reads dates; what is none is shown as it was found. */
export const momentOf = (iso: string, { twelveHours }: Printer): string =>
  wallDate(iso, twelveHours) ?? escapeForTerminal(iso);
