import type { Printer } from '../units/printer.js';

/** "710 to 815 g": both ends of a span with a language's word between, and once where they read the same. */
export const spansWith = (to: string) => {
  const spanOf = (from: string, end: string): string => (from === end ? from : `${from} ${to} ${end}`);
  return {
    spanOf,
    /** The unit once where both have the same. */
    massSpan: (low: number, high: number, printer: Printer): string => {
      const [from, end] = [printer.grams(low), printer.grams(high)];
      const gap = from.indexOf(' ');
      return end.split(' ').length === 2 && end.endsWith(from.slice(gap))
        ? spanOf(from.slice(0, gap), end)
        : spanOf(from, end);
    },
    percentSpan: ([low, high]: readonly [low: number, high: number], printer: Printer): string => {
      const [from, end] = [printer.percent(low), printer.percent(high)];
      return from === end ? end : `${from.replace(' %', '')} ${to} ${end}`;
    },
  };
};
