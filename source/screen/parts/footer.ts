import { message } from '../../texts/message.js';
import type { Context } from '../context.js';
import { type KeyRow, keysNow } from '../keys.js';
import { type Line, lineWidth, type Span, span } from '../text.js';

const joined = (items: readonly Line[], gap: number): Line =>
  items.flatMap((item, index) => (index === 0 ? item : [span(' '.repeat(gap)), ...item]));

/** What happened last, newest first, as much as fits on one row. */
export const lastEventsRow = (ctx: Context, columns: number): Line => {
  const { events, printer } = ctx.shown;
  const items = events.map(({ t, said }): Line => {
    const text = ctx.say(said).replaceAll('\n', ' ');
    // What was shouted is over, and said quietly.
    const quiet = said.id.endsWith('.shout') ? text.toLowerCase() : text;
    return [span(`${printer.clock(t)} ${quiet}`, 'faint')];
  });
  const fits = items.filter((_, index) => lineWidth(joined(items.slice(0, index + 1), 4)) <= columns);
  return joined(fits, 4);
};

const keySpans = (ctx: Context, row: KeyRow): readonly Span[] => {
  const name = row.shownAs === undefined ? row.key : ctx.say(message(row.shownAs as 'key.space'));
  const text = row.textNow?.(ctx.shown) ?? row.text;
  return [span(name, 'key'), span(` ${ctx.say(message(text as 'key.done'))}`, 'faint')];
};

const gap = 3;

/** The keys that work now; where there is no room for all, the less needed are left to the help. */
export const keysRow = (ctx: Context, columns: number): Line => {
  const { input } = ctx.shown;
  if (input.leaving) return [span(ctx.say(message('leave.keys')), 'key')];
  if (input.help) return [span(ctx.say(message('key.close')), 'faint')];
  if (input.chooser !== null) return [span(ctx.say(message('choose.keys')), 'faint')];
  if (input.entry !== null) return [span(ctx.say(message('entry.words')), 'faint')];
  const digits: Line = [
    span(ctx.say(message('key.0-9')), 'key'),
    span(` ${ctx.say(message('key.digits'))}`, 'faint'),
  ];
  const rows = keysNow(ctx.shown);
  const rankOf = (row: KeyRow): number => (row.leadsBack?.(ctx.shown) === true ? -1 : row.rank);
  const byRank = [...rows].sort((one, other) => rankOf(one) - rankOf(other));
  for (let kept = rows.length; kept >= 0; kept -= 1) {
    const staying = new Set(byRank.slice(0, kept));
    const line = joined(
      [digits, ...rows.filter((row) => staying.has(row)).map((row) => keySpans(ctx, row))],
      gap,
    );
    if (lineWidth(line) <= columns) return line;
  }
  return digits;
};
