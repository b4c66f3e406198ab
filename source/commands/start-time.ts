import type { Batch } from '../batch/batch.js';
import { leadSeconds, type RunSheet, runSheetOf, shifted } from '../batch/run-sheet.js';
import { paceOf } from '../batch/run-sheet-pace.js';
import { mostBatches } from '../batch/run-sheet-plan.js';
import type { PullTime } from '../sheets/run-sheet.js';
import { message } from '../texts/message.js';
import { type ClockHabit, parseWallTime, type WallTime } from '../units/wall-clock.js';
import type { Read } from './plan-options.js';

/** When the pulling is, on this machine's calendar. */
export type Start = PullTime & { readonly millisecond: number };

/** The named time on its day; a weekday, or a date without its year, is the next that is still to come. */
const dateFor = ({ day, hours, minutes }: WallTime, now: Date): Date => {
  const [year, month, date] = [now.getFullYear(), now.getMonth(), now.getDate()];
  const ahead = (days: number): Date => new Date(year, month, date + days, hours, minutes);
  if (day === 'today') return ahead(0);
  if (day === 'tomorrow') return ahead(1);
  if ('weekday' in day) {
    const first = ahead((day.weekday - now.getDay() + 7) % 7);
    return first > now ? first : ahead(7);
  }
  const inYear = (which: number): Date => new Date(which, day.month - 1, day.date, hours, minutes);
  if (day.year !== null) return inYear(day.year);
  return inYear(year) > now ? inYear(year) : inYear(year + 1);
};

const secondOfDay = (date: Date): number =>
  date.getHours() * 3600 + date.getMinutes() * 60 + date.getSeconds();

const pad = (value: number): string => String(value).padStart(2, '0');

/**
 * `--at`: a time of day that is still to come; `now` in milliseconds of the wall clock. Printed back as this person
 * reads times; where nobody said, as it was typed.
 */
export const readStart = (typed: string, now: number, clock: ClockHabit | null = null): Read<Start> => {
  const time = parseWallTime(typed);
  if (time === null) return { problem: message('run.bad.time', { found: typed }) };
  const date = dateFor(time, new Date(now));
  const at = secondOfDay(date);
  const twelve = clock === null ? time.twelve : clock === '12h';
  if (date.getTime() <= now)
    return { problem: message('run.bad.past', { at, twelve, ago: (now - date.getTime()) / 1000 }) };
  return {
    value: {
      at,
      twelve,
      date: `${date.getFullYear()}-${pad(date.getMonth() + 1)}-${pad(date.getDate())}`,
      millisecond: date.getTime(),
    },
  };
};

/** `--batches`: how many cooks on one hob. */
export const readBatches = (typed: string | undefined): Read<number> => {
  const found = typed?.trim() ?? '1';
  const count = /^\d{1,6}$/.test(found) ? Number(found) : Number.NaN;
  return count >= 1 && count <= mostBatches
    ? { value: count }
    : { problem: message('run.bad.batches', { found, most: mostBatches }) };
};

export type Notice = { readonly seconds: number; readonly soonest: number } | null;

/** Whole five minutes on people's clocks, not before `millisecond`. */
const soonestAt = (millisecond: number, now: number) => {
  const step = 5 * 60_000;
  const date = new Date(Math.ceil(millisecond / step) * step);
  return { at: secondOfDay(date), tomorrow: date.getDate() !== new Date(now).getDate() };
};

/** Whether there is time: too little is a problem; less than planned is said. */
export const noticeFor = (sheet: RunSheet, start: Start, now: number): Read<Notice> => {
  const { planned, quickest } = leadSeconds(sheet);
  const away = (start.millisecond - now) / 1000;
  const soonest = soonestAt(now + planned * 1000, now);
  if (away >= planned) return { value: null };
  if (away >= quickest) return { value: { seconds: planned - away, soonest: soonest.at } };
  const { at, twelve } = start;
  return {
    problem: message('run.bad.too-soon', {
      at,
      twelve,
      away,
      needs: quickest,
      soonest: { ...soonest, twelve },
    }),
  };
};

/** The planned times of a cook that is opened now, in seconds since its opening. */
export const runSheetFor = (batch: Batch, start: Start, now: number): RunSheet =>
  shifted(runSheetOf(batch, paceOf(batch) ?? {}), (start.millisecond - now) / 1000);
