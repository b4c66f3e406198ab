import type { Batch } from '../batch/batch.js';
import { runSheetOf } from '../batch/run-sheet.js';
import { paceOf } from '../batch/run-sheet-pace.js';
import { type Crew, runPlanOf } from '../batch/run-sheet-plan.js';
import { cardText } from '../sheets/card.js';
import type { RunSheetInput } from '../sheets/run-sheet.js';
import { message } from '../texts/message.js';
import type { Printer } from '../units/printer.js';
import type { ClockHabit } from '../units/wall-clock.js';
import type { PlanOptions, Read } from './plan-options.js';
import { noticeFor, readBatches, readStart, type Start } from './start-time.js';

type Asked = {
  readonly start: Start;
  readonly batches: number;
  readonly crew: Crew;
  readonly now: number;
};

/** What the command line says of the run: null where no time is given. `now` in milliseconds of the wall clock. */
export const readRun = (
  options: PlanOptions,
  now: number,
  clock: ClockHabit | null = null,
): Read<Asked | null> => {
  const { at, batches, alone, card, html } = options;
  if (html && !card) return { problem: message('run.bad.alone', { option: 'html' }) };
  const count = readBatches(batches);
  if ('problem' in count) return count;
  if (at === undefined) {
    const option = batches !== undefined ? 'batches' : alone ? 'alone' : null;
    return option === null ? { value: null } : { problem: message('run.bad.alone', { option }) };
  }
  const start = readStart(at, now, clock);
  return 'problem' in start
    ? start
    : { value: { start: start.value, batches: count.value, crew: alone ? 'alone' : 'several', now } };
};

/** The run of this batch, if there is time for it. */
export const runOf = (batch: Batch, { start, batches, crew, now }: Asked): Read<RunSheetInput> => {
  const pace = paceOf(batch);
  const notice = noticeFor(runSheetOf(batch, pace ?? {}), start, now);
  if ('problem' in notice) return notice;
  return {
    value: {
      batch,
      plan: runPlanOf(batch, batches, pace ?? {}, crew),
      pull: start,
      shortNotice: notice.value,
      from: pace === null ? 'trade' : 'kitchen',
    },
  };
};

/** The card for the wall, as text or as a page to print. */
export const cardOf = async (
  batch: Batch,
  run: RunSheetInput | null,
  html: boolean,
  print: Printer,
): Promise<string> => {
  if (!html) return cardText(batch, run, print);
  const { cardHtml } = await import('../sheets/card-html.js');
  return cardHtml(batch, run, print);
};
