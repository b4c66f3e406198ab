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
  readonly day:
    | 'today'
    | 'tomorrow'
    | { readonly year: number; readonly month: number; readonly date: number };
};

const dayOf = (word: string): WallTime['day'] | null => {
  if (word === '' || word === 'today') return 'today';
  if (word === 'tomorrow') return 'tomorrow';
  const found = /^(\d{4})-(\d{1,2})-(\d{1,2})$/.exec(word);
  if (found === null) return null;
  const [year, month, date] = [Number(found[1]), Number(found[2]), Number(found[3])];
  const exists = new Date(Date.UTC(year, month - 1, date)).getUTCDate() === date;
  return exists && month >= 1 && month <= 12 && date >= 1 ? { year, month, date } : null;
};

/**
 * Read a time of day: `15:00`, `15.00`, `3 pm`, `3:30pm`, with `tomorrow` or a date such as `2026-11-28` before it.
 * Null where it is none.
 */
export const parseWallTime = (typed: string): WallTime | null => {
  const found = /^(?:(\S+?)[\sT]+)?(\d{1,2})(?:[:.h](\d{2}))?\s*(a\.?m\.?|p\.?m\.?)?$/i.exec(typed.trim());
  if (found === null) return null;
  const [dayWord, hourWord, half] = [textAt(found, 1), textAt(found, 2), textAt(found, 4)];
  const minuteWord = found[3];
  const twelve = half !== '';
  // "15" alone may be a number of anything.
  if (minuteWord === undefined && !twelve) return null;
  const [hour, minutes] = [Number(hourWord), Number(minuteWord ?? 0)];
  const day = dayOf(dayWord.toLowerCase());
  if (day === null || minutes > 59) return null;
  if (!twelve) return hour > 23 ? null : { hours: hour, minutes, twelve, day };
  if (hour < 1 || hour > 12) return null;
  const hours = (hour % 12) + (half.toLowerCase().startsWith('p') ? 12 : 0);
  return { hours, minutes, twelve, day };
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
