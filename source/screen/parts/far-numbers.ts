import type { Countdown } from '../../cook/advice.js';
import { message } from '../../texts/message.js';
import { blockLetters, type LetterSize } from '../block-letters.js';
import type { Context } from '../context.js';
import type { Look } from '../looks.js';
import { measuredIn } from '../measured.js';
import { cut, type Line, padded, span } from '../text.js';
import { allDrawn, type Big, columnCells, columnGap, onOneGround, withoutUnit } from './big.js';

const minute = 60;
const hour = 60 * minute;
/** Below this a time is said in seconds, as in sentences. */
const secondsBelow = 90;

const signOf = (ctx: Context): string => ctx.shown.printer.unit;

/** A duration ahead as few digits and its unit apart, for digits are what is read from afar. */
const toGo = (ctx: Context, seconds: number, look: Look): Big => {
  if (seconds < secondsBelow)
    return {
      text: String(seconds < 10 ? Math.max(0, Math.round(seconds)) : Math.round(seconds / 5) * 5),
      label: ctx.say(message('far.seconds')),
      look,
    };
  const minutes = Math.round(seconds / minute);
  if (minutes < hour / minute) return { text: String(minutes), label: ctx.say(message('far.minutes')), look };
  const rest = String(minutes % 60).padStart(2, '0');
  return { text: `${Math.floor(minutes / 60)}:${rest}`, label: ctx.say(message('far.hours')), look };
};

const timerOf = (ctx: Context, timer: Countdown): Big => {
  const { advice, printer } = ctx.shown;
  const label = ctx.say({ id: `timer.${timer.id}` as 'timer.rest' });
  if (timer.due) return { text: ctx.say(message('far.due')), label, look: 'due' };
  const seconds = timer.until === null ? advice.now - timer.from : Math.ceil(timer.until - advice.now);
  return { text: printer.clock(seconds), label, look: 'plain' };
};

/** What is due comes first, then what runs down, then what only counts. */
const timersByNeed = ({ shown }: Context): readonly Countdown[] =>
  [...shown.advice.timers].sort(
    (one, other) =>
      Number(other.due) - Number(one.due) ||
      Number(one.until === null) - Number(other.until === null) ||
      (one.until ?? 0) - (other.until ?? 0),
  );

const syrup = (ctx: Context): readonly Big[] => {
  const { advice, facts, printer } = ctx.shown;
  const { reading, window } = facts;
  if (!facts.thermometer) return [];
  const unit = signOf(ctx);
  return [
    reading === null
      ? { text: '---', label: ctx.say(message('far.now', { ago: 0, unit })), look: 'faint' }
      : {
          text: printer.dialNumber(reading.celsius),
          label: ctx.say(message('far.now', { ago: advice.now - reading.t, unit })),
          look: 'strong',
        },
    {
      text: ctx.show(withoutUnit(printer.dialSpan(...window))),
      label: ctx.say(message('far.target', { unit })),
      look: 'plain',
    },
  ];
};

const hands = (ctx: Context): readonly Big[] => {
  const { advice, facts, printer } = ctx.shown;
  const { middle, middleKnown } = facts;
  if (!facts.thermometer) return [];
  const unit = signOf(ctx);
  const warm: Look = middle.celsius > middle.limitCelsius ? 'caution' : 'strong';
  return [
    middleKnown
      ? {
          text: withoutUnit(printer.degrees(middle.celsius)),
          label: ctx.say(message('far.middle', { ago: advice.now - middle.t, unit })),
          look: warm,
        }
      : { text: '---', label: ctx.say(message('far.middle.none')), look: 'faint' },
    {
      text: withoutUnit(printer.degrees(middle.limitCelsius)),
      label: ctx.say(message('far.limit', { unit })),
      look: 'plain',
    },
  ];
};

/** Temperature, target, and the time left or what runs; as many of them as there are now. */
const bigsOf = (ctx: Context): readonly Big[] => {
  const { advice } = ctx.shown;
  const { phase, forecast } = advice;
  const [timer] = timersByNeed(ctx);
  const running = timer === undefined ? [] : [timerOf(ctx, timer)];
  const measured = measuredIn(phase);
  if (measured === 'syrup') {
    const off: Big = {
      text: ctx.say(message('far.off.now')),
      label: ctx.say(message('far.off')),
      look: 'alarm',
    };
    if (advice.offTheHeat) return [...syrup(ctx), off];
    if (timer?.due !== true && forecast !== null)
      return [...syrup(ctx), toGo(ctx, forecast.takeOffSeconds.typical, 'plain')];
    return [...syrup(ctx), ...running];
  }
  return measured === 'middle' ? [...hands(ctx), ...running] : running;
};

/** Where each number's column begins, as shares of the width: the window is the widest. */
const columnsAt = [0, 0.26, 0.69] as const;
export type NumberSizes = { readonly digits: LetterSize; readonly labels: LetterSize | 'line' };

const mostLabelLines = 3;

/** A label broken between words into as few lines of block letters as there is room for; null where those are too many. */
const brokenLabel = (
  label: string,
  size: LetterSize,
  columns: number,
  ascii: boolean,
): readonly string[] | null => {
  const fits = (line: string): boolean => blockLetters(line, size, columns, ascii) !== null;
  const lines: string[] = [];
  for (const word of label.toUpperCase().split(' ')) {
    const longer = `${lines.at(-1) ?? ''} ${word}`.trim();
    if (fits(longer)) lines.splice(-1, 1, longer);
    else lines.push(word);
  }
  return lines.length <= mostLabelLines && lines.every(fits) ? lines : null;
};

/** The numbers in block letters; null where they do not fit so large; empty where there are none. */
export const farNumbers = (ctx: Context, sizes: NumberSizes, width: number): readonly Line[] | null => {
  const bigs = bigsOf(ctx);
  if (bigs.length === 0) return [];
  const cells = columnCells(bigs.length === 1 ? [0] : columnsAt, bigs.length, width);
  const widths = cells.map((cell) => cell - columnGap);
  const digits = bigs.map(({ text }, nth) => blockLetters(text, sizes.digits, widths[nth] ?? 0, ctx.ascii));
  if (!allDrawn(digits)) return null;
  const numbers = onOneGround(digits, bigs, cells);
  if (sizes.labels === 'line')
    return [
      ...numbers,
      bigs.map(({ label }, nth) => span(padded(cut(label, widths[nth] ?? 0), cells[nth] ?? 0), 'plain')),
    ];
  const { labels } = sizes;
  const broken: readonly (readonly string[] | null)[] = bigs.map(({ label }, nth) =>
    brokenLabel(label, labels, widths[nth] ?? 0, ctx.ascii),
  );
  if (!allDrawn(broken)) return null;
  // Line by line, each on its own ground: a dot above a letter moves no other label.
  const lines = Array.from({ length: Math.max(...broken.map((one) => one.length)) }, (_, line) =>
    onOneGround(
      broken.map((one, nth) => blockLetters(one[line] ?? '', labels, widths[nth] ?? 0, ctx.ascii) ?? []),
      bigs,
      cells,
    ),
  );
  return [...numbers, ...lines.flatMap((line) => [[], ...line])];
};
