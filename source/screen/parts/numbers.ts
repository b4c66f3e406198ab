import { message } from '../../texts/message.js';
import { otherUnit } from '../../units/temperature.js';
import { blockLetters, type LetterSize } from '../block-letters.js';
import type { Context } from '../context.js';
import type { Look } from '../looks.js';
import { cut, type Line, lineWidth, padded, type Span, span, widthOf } from '../text.js';

/** A number to be read from two metres, its unit and what it is; `richer`: the label with the other scale in it. */
type Big = {
  readonly text: string;
  readonly label: string;
  readonly richer?: string;
  readonly look: Look;
};

const withoutUnit = (text: string): string => text.replace(/\s*°?[CF]$/, '').trim();

const syrupNumbers = (ctx: Context): readonly Big[] => {
  const { advice, facts, printer } = ctx.shown;
  const { reading, window } = facts;
  const [low, high] = window;
  const ago = reading === null ? null : advice.now - reading.t;
  const seconds = advice.forecast?.takeOffSeconds.typical ?? null;
  const range = printer.dialSpan(low, high);
  const other = printer.inScale(otherUnit(printer.unit));
  const read = ctx.say(message('screen.big.now', { ago }));
  const target = ctx.show(`${ctx.say(message('screen.big.target'))} °${printer.unit}`);
  return [
    {
      text: reading === null ? '---' : printer.dialNumber(reading.celsius),
      label: read,
      ...(reading === null ? {} : { richer: `${ctx.show(other.dial(reading.celsius))}, ${read}` }),
      look: reading === null ? 'faint' : 'strong',
    },
    {
      text: ctx.show(withoutUnit(range)),
      label: target,
      richer: ctx.show(`${target} · ${other.dialSpan(low, high)}`),
      look: 'plain',
    },
    advice.offTheHeat
      ? { text: 'NOW', label: ctx.say(message('screen.big.time.off')), look: 'alarm' }
      : {
          text: seconds === null ? '---' : printer.time(seconds).toUpperCase(),
          label: ctx.say(message('screen.big.time')),
          look: seconds === null ? 'faint' : 'plain',
        },
  ];
};

const handNumbers = (ctx: Context): readonly Big[] => {
  const { facts, printer, advice } = ctx.shown;
  const { middle, middleKnown } = facts;
  const running = advice.timers.find((one) => one.until !== null && !one.due);
  const limit = printer.degrees(middle.limitCelsius);
  const other = printer.inScale(otherUnit(printer.unit));
  const below = ctx.show(`${ctx.say(message('screen.big.limit'))} °${printer.unit}`);
  return [
    {
      text: middleKnown ? withoutUnit(printer.degrees(middle.celsius)) : '---',
      label: ctx.say(message('screen.big.middle')),
      ...(middleKnown
        ? { richer: ctx.show(`${ctx.say(message('screen.big.middle'))} · ${other.degrees(middle.celsius)}`) }
        : {}),
      look: middleKnown ? 'strong' : 'faint',
    },
    {
      text: withoutUnit(limit),
      label: below,
      richer: ctx.show(`${below} · ${other.degrees(middle.limitCelsius)}`),
      look: 'plain',
    },
    ...(running === undefined || running.until === null
      ? []
      : [
          {
            text: printer.clock(Math.ceil(running.until - advice.now)),
            label: ctx.say({ id: `timer.${running.id}` as 'timer.rest' }),
            look: 'plain' as const,
          },
        ]),
  ];
};

const numbersOf = (ctx: Context): readonly Big[] | null => {
  const { phase } = ctx.shown.advice;
  if (['dissolve', 'boil', 'test', 'flavour'].includes(phase)) return syrupNumbers(ctx);
  return phase === 'fold' || phase === 'pull' ? handNumbers(ctx) : null;
};

/** Where each number's column begins, as shares of the width: the window is the widest. */
const columnsAt = [0, 0.28, 0.67] as const;
const gap = 2;

/** Rows of letters, one number after the other, each in a column of its own so that it stays where it is. */
const beside = (
  bigs: readonly Big[],
  size: LetterSize,
  width: number,
  ctx: Context,
): readonly Line[] | null => {
  const from = columnsAt.map((share) => Math.floor(share * width));
  const cells = bigs.map((_, nth) => (from[nth + 1] ?? width) - (from[nth] ?? 0));
  const drawn = bigs.map((big, nth) => blockLetters(big.text, size, (cells[nth] ?? 0) - gap, ctx.ascii));
  if (drawn.some((one) => one === null)) return null;
  const height = Math.max(...drawn.map((one) => one?.length ?? 0));
  const row = (index: number): Line =>
    bigs.map((big, nth): Span => {
      const letters = drawn[nth] ?? [];
      // Digits stand on one ground line.
      const text = letters[index - (height - letters.length)] ?? '';
      return span(padded(text, cells[nth] ?? 0), big.look);
    });
  const labels: Line = bigs.map((big, nth) => {
    const room = (cells[nth] ?? gap) - gap;
    const { label, richer = label } = big;
    return span(padded(cut(widthOf(richer) <= room ? richer : label, room), cells[nth] ?? 0), 'faint');
  });
  return [...Array.from({ length: height }, (_, index) => row(index)), labels];
};

/** Temperature, target and time in block letters; null where there is no room, or nothing to measure. */
export const numbers = (
  ctx: Context,
  sizes: readonly LetterSize[],
  width: number,
): readonly Line[] | null => {
  const bigs = numbersOf(ctx);
  if (bigs === null) return null;
  for (const size of sizes) {
    const lines = beside(bigs, size, width, ctx);
    if (lines?.every((line) => lineWidth(line) <= width)) return lines;
  }
  return null;
};
