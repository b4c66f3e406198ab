import { type Message, message, words } from '../texts/message.js';
import { type Context, contextOf, type Script } from './context.js';
import { linesBetween } from './lines.js';
import type { Shown } from './model.js';
import { keysRow } from './parts/footer.js';
import { panel } from './parts/panels.js';
import type { Line } from './text.js';

/** A panel is spoken line by line and never cut to a window. */
const widest = 200;

/** What has been spoken so far, and what stands open behind it. */
export type Spoken = {
  readonly shown: Shown;
  /** In the order in which they were spoken; only ever longer. */
  readonly lines: readonly string[];
  /** Below: the list that is open, what is being typed, a notice, the keys. No number that runs by itself. */
  readonly open: readonly string[];
};

const read = (lines: readonly Line[]): readonly string[] =>
  lines
    .map((line) =>
      line
        .map(({ text }) => text)
        .join('')
        .trim(),
    )
    .filter((line) => line !== '');

const openLines = (ctx: Context): readonly string[] => {
  const { shown } = ctx;
  const { entry, notice } = shown.input;
  return [
    ...read(panel(ctx, widest) ?? []),
    ...(notice === null ? [] : [ctx.say(notice)]),
    ...(entry === null ? read([keysRow(ctx, widest)]) : [`> ${ctx.show(entry.text)}`]),
  ];
};

const latest = ({ events }: Shown): string => JSON.stringify(events[0] ?? null);

/** That saving failed, or works again: said once. */
const savingSaid = (before: Shown | undefined, { saving }: Shown): readonly Message[] => {
  const failed = before !== undefined && before.saving.problem !== null;
  if (saving.problem !== null) return failed ? [] : [saving.problem];
  return failed ? [message('line.saving-again')] : [];
};

/**
 * What is spoken when `shown` follows: only what is new is said, the most urgent first; a moment that changes nothing
 * but a running number adds nothing. Pure.
 */
export const speak = (before: Spoken | null, shown: Shown, script: Script): Spoken => {
  const ctx = contextOf(shown, script);
  const { advice, printer } = shown;
  const answered = before !== null && latest(before.shown) !== latest(shown);
  const said = [
    ...savingSaid(before?.shown, shown).map((one) => words(one, printer)),
    ...linesBetween(before?.shown.advice ?? null, advice, printer, { answered }),
  ].map((line) => ctx.show(line.trimEnd()));
  return {
    shown,
    lines: said.length === 0 && before !== null ? before.lines : [...(before?.lines ?? []), ...said],
    open: openLines(ctx),
  };
};
