import { message } from '../../texts/message.js';
import type { Context, Size } from '../context.js';
import type { Look } from '../looks.js';
import { blank, type Line, span, wrap } from '../text.js';
import { reply, typed } from './action.js';
import { hasPlot, leastPlotRows, plot } from './plot.js';
import { progress, timers } from './progress.js';
import { warnings } from './warnings.js';

/** What to do, in two lines at most: the curve has the screen. */
const head = (ctx: Context, width: number): readonly Line[] => {
  const { advice } = ctx.shown;
  const entry = typed(ctx, 'line', width);
  if (entry !== null) return [...entry, ...reply(ctx, width)];
  const look: Look = advice.urgent ? 'alarm' : 'strong';
  return [...wrap([span(ctx.say(advice.say), look)], width).slice(0, 2), ...reply(ctx, width)];
};

/**
 * The curve over the whole screen, with the action above and what is due and what warns below; null where there is no
 * room for all of that.
 */
export const plotView = (ctx: Context, { columns }: Size, rows: number): readonly Line[] | null => {
  const top = head(ctx, columns);
  const now = progress(ctx, columns);
  const legend: readonly Line[] = [[span(ctx.say(message('plot.legend')), 'faint')]];
  const under = [
    ...warnings(ctx, columns, Math.max(4, Math.floor(rows / 3))),
    ...timers(ctx, columns),
    ...(now.length === 0 ? [] : [now]),
  ];
  if (!hasPlot(ctx)) {
    const empty = wrap([span(ctx.say(message('plot.empty')), 'plain')], columns);
    const between = rows - top.length - 1 - empty.length - under.length;
    return between < 0
      ? null
      : [...top, blank, ...empty, ...Array.from({ length: between }, () => blank), ...under];
  }
  for (const legends of [legend, []]) {
    const height = rows - top.length - legends.length - under.length;
    if (height >= leastPlotRows)
      return [...top, ...plot(ctx, { width: columns, height, calm: false }), ...legends, ...under];
  }
  return null;
};
