import { textAt } from './at.js';

/** How times of day are read. */
export const clockHabits = ['12h', '24h'] as const;
export type ClockHabit = (typeof clockHabits)[number];

/** A time of day as somebody typed it, perhaps with its day. */
export type WallTime = {
  readonly hours: number;
  readonly minutes: number;
  /** Typed with am or pm: printed back like that. */
  readonly twelve: boolean;
  readonly day: Day;
};

/** A day as people name it: `weekday` counts from Sunday, 0 to 6; without its year a date is the next such date. */
export type Day =
  | 'today'
  | 'tomorrow'
  | { readonly weekday: number }
  | { readonly year: number | null; readonly month: number; readonly date: number };

const dayWords: ReadonlyMap<string, Day> = new Map([
  ['', 'today'],
  ['today', 'today'],
  ['tonight', 'today'],
  ['heute', 'today'],
  ['tomorrow', 'tomorrow'],
  ['morgen', 'tomorrow'],
]);

const weekdays = [
  ['sunday', 'sun', 'sonntag', 'so'],
  ['monday', 'mon', 'montag', 'mo'],
  ['tuesday', 'tue', 'dienstag', 'di'],
  ['wednesday', 'wed', 'mittwoch', 'mi'],
  ['thursday', 'thu', 'donnerstag', 'do'],
  ['friday', 'fri', 'freitag', 'fr'],
  ['saturday', 'sat', 'samstag', 'sonnabend', 'sa'],
];

/** "2026-11-28", or "28.11.2026", where the year may be left out; with a stroke nobody knows which is the month. */
const dateForms = [
  /^(?<year>\d{4})-(?<month>\d{1,2})-(?<date>\d{1,2})$/,
  /^(?<date>\d{1,2})\.\s?(?<month>\d{1,2})\.\s?(?<year>\d{4})?$/,
];

const dateOf = (words: string): Day | null => {
  const parts = dateForms.map((form) => form.exec(words)?.groups).find((groups) => groups !== undefined);
  if (parts === undefined) return null;
  const [month, date] = [Number(parts.month), Number(parts.date)];
  const year = parts.year === undefined ? null : Number(parts.year);
  // 29 February needs its year.
  const exists = new Date(Date.UTC(year ?? 2001, month - 1, date)).getUTCDate() === date;
  return exists && month >= 1 && month <= 12 && date >= 1 ? { year, month, date } : null;
};

const dayOf = (words: string): Day | null => {
  const named = dayWords.get(words);
  if (named !== undefined) return named;
  const weekday = weekdays.findIndex((names) => names.includes(words.replace(/\.$/, '')));
  return weekday >= 0 ? { weekday } : dateOf(words);
};

const noon = /^(noon|midday|mittags?)$/;
const byTheClock = /^(\d{1,2})(?:[:.h](\d{2}))?\s*(a\.?m\.?|p\.?m\.?|uhr|h)?(?:\s+(\d{2}))?$/;

const timeOf = (words: string): Omit<WallTime, 'day'> | null => {
  if (noon.test(words)) return { hours: 12, minutes: 0, twelve: false };
  const found = byTheClock.exec(words);
  if (found === null) return null;
  const [hour, unit] = [Number(textAt(found, 1)), textAt(found, 3)];
  const [before, after] = [found[2], found[4]];
  const minutes = Number(before ?? after ?? 0);
  // "15" alone may be a number of anything; only "15 Uhr 30" has its minutes behind.
  if (before === undefined && unit === '') return null;
  if (after !== undefined && (before !== undefined || unit !== 'uhr')) return null;
  if (minutes > 59) return null;
  if (!/^[ap]/.test(unit)) return hour > 23 ? null : { hours: hour, minutes, twelve: false };
  if (hour < 1 || hour > 12) return null;
  return { hours: (hour % 12) + (unit.startsWith('p') ? 12 : 0), minutes, twelve: true };
};

/** More than anybody needs to name a time. */
const longestName = 60;

/**
 * Read a time of day: `15:00`, `15.00`, `3 pm`, `3:30pm`, `15 Uhr`, `noon`; before it perhaps its day: `tomorrow`,
 * `Saturday`, `28.11.`, `2026-11-28`, in English or German, with "at" or without. Null where it is none.
 */
export const parseWallTime = (typed: string): WallTime | null => {
  const text = typed.trim().toLowerCase().replace(/\s+/g, ' ');
  if (text.length > longestName) return null;
  const words = text
    .replace(/^(\d{4}-\d{1,2}-\d{1,2})t/, '$1 ')
    .split(/,? /)
    .filter((word, at) => !['at', 'um', ...(at === 0 ? ['on', 'am'] : [])].includes(word));
  // The day is what stands before the shortest end that is a time: "28.11. 15.30" is one, "morgen 3 pm" another.
  for (let from = words.length - 1; from >= 0; from -= 1) {
    const time = timeOf(words.slice(from).join(' '));
    const day = time === null ? null : dayOf(words.slice(0, from).join(' '));
    if (time !== null && day !== null) return { ...time, day };
  }
  return null;
};

const two = (value: number): string => String(value).padStart(2, '0');

/** Date and time of day of an ISO instant as people write them, where this machine stands; null where it is none. */
export const wallDate = (iso: string, twelve = false): string | null => {
  const date = new Date(iso);
  if (Number.isNaN(date.getTime())) return null;
  const seconds = date.getHours() * 3600 + date.getMinutes() * 60;
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())} ${wallTime(seconds, twelve)}`;
};

const daySeconds = 86_400;

/** A time of day as people write it, "14:05" or "2:05 pm"; seconds since midnight, of the day before or after too. */
export const wallTime = (seconds: number, twelve = false): string => {
  const minutes = Math.round((((seconds % daySeconds) + daySeconds) % daySeconds) / 60) % 1440;
  const [hour, rest] = [Math.floor(minutes / 60), String(minutes % 60).padStart(2, '0')];
  if (!twelve) return `${String(hour).padStart(2, '0')}:${rest}`;
  return `${hour % 12 === 0 ? 12 : hour % 12}:${rest} ${hour < 12 ? 'am' : 'pm'}`;
};
