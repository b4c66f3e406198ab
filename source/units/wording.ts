import type { Language } from './language.js';

export const minute = 60;
const hour = 60 * minute;
/** Below this a duration is said in seconds. */
const secondsBelow = 90;
const exactBelow = 10;

/** The words and signs around numbers, by language. */
type Wording = {
  readonly about: string;
  readonly now: string;
  readonly to: string;
  readonly and: string;
  readonly lessThan: string;
  readonly aMinute: string;
  readonly decimalSign: string;
  readonly thousandsSign: string;
  /** Digits of the smallest whole number that is divided into thousands. */
  readonly dividedFrom: number;
};

/**
 * German whole numbers of four digits stay undivided and longer ones are divided by a space that does not break, as in
 * ISO 80000-1 (2009), 7.3: a point there would be read as a decimal point when it is typed back.
 */
const wordings: Readonly<Record<Language, Wording>> = {
  en: {
    about: 'about',
    now: 'now',
    to: 'to',
    and: 'and',
    lessThan: 'less than',
    aMinute: 'a minute',
    decimalSign: '.',
    thousandsSign: ',',
    dividedFrom: 4,
  },
  de: {
    about: 'etwa',
    now: 'jetzt',
    to: 'bis',
    and: 'und',
    lessThan: 'weniger als',
    aMinute: 'pro Minute',
    decimalSign: ',',
    thousandsSign: '\u00a0',
    dividedFrom: 5,
  },
};

export const whole = (value: number): string => {
  const rounded = Math.round(value);
  return String(Object.is(rounded, -0) ? 0 : rounded);
};
const toStep = (value: number, step: number): number => Math.round(value / step) * step;

type Spoken = { readonly number: string; readonly unit: 's' | 'min' };

const spoken = (seconds: number): Spoken => {
  const positive = Math.max(0, seconds);
  if (positive < exactBelow) return { number: whole(positive), unit: 's' };
  if (positive < secondsBelow) return { number: whole(toStep(positive, 5)), unit: 's' };
  return { number: whole(positive / minute), unit: 'min' };
};

export const time = (seconds: number): string => {
  const wholeMinutes = Math.round(Math.max(0, seconds) / minute);
  if (wholeMinutes >= 60) {
    const rest = wholeMinutes % 60;
    return rest === 0 ? `${wholeMinutes / 60} h` : `${Math.floor(wholeMinutes / 60)} h ${rest} min`;
  }
  const { number, unit } = spoken(seconds);
  return `${number} ${unit}`;
};

export const clock = (seconds: number): string => {
  const total = Math.max(0, Math.floor(seconds));
  const [hours, minutes, rest] = [Math.floor(total / hour), Math.floor(total / minute) % 60, total % 60];
  const pad = (value: number): string => String(value).padStart(2, '0');
  return hours > 0 ? `${hours}:${pad(minutes)}:${pad(rest)}` : `${minutes}:${pad(rest)}`;
};

/** How numbers are put into sentences of a language. */
export const wordingIn = (language: Language) => {
  const wording = wordings[language];
  const { about: nearly, now, to, and, decimalSign, thousandsSign, dividedFrom } = wording;

  const withThousands = (value: number): string => {
    const digits = whole(value);
    return digits.replace('-', '').length < dividedFrom
      ? digits
      : digits.replaceAll(/\B(?=(\d{3})+$)/g, thousandsSign);
  };
  const trimmed = (value: number, decimals: number): string =>
    String(Number(value.toFixed(decimals))).replace('.', decimalSign);

  return {
    ...wording,
    withThousands,
    trimmed,
    about: ({ low, typical, high }: { low: number; typical: number; high: number }): string => {
      if (high <= 0) return now;
      const [from, middle, end] = [spoken(low), spoken(typical), spoken(high)];
      const said = `${nearly} ${time(typical)}`;
      if (time(low) === time(high)) return said;
      const sameUnit = from.unit === middle.unit && end.unit === middle.unit && high < hour - minute / 2;
      return sameUnit
        ? `${said} (${from.number}-${end.number})`
        : `${said} (${time(low)} ${to} ${time(high)})`;
    },
    grams: (value: number): string => {
      if (value >= 999.5) return `${trimmed(value / 1000, 2)} kg`;
      if (value >= 9.95) return `${whole(value)} g`;
      return `${trimmed(value, value >= 0.995 ? 1 : 2)} g`;
    },
    litres: (value: number): string =>
      value < 0.995 ? `${whole(toStep(value * 1000, value < 0.0995 ? 1 : 10))} ml` : `${trimmed(value, 1)} l`,
    list: (items: readonly string[]): string => {
      const last = items.at(-1) ?? '';
      return items.length < 2 ? last : `${items.slice(0, -1).join(', ')} ${and} ${last}`;
    },
  };
};
