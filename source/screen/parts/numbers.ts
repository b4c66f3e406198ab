import { message } from '../../texts/message.js';
import { otherUnit } from '../../units/temperature.js';
import { blockLetters, type LetterSize } from '../block-letters.js';
import type { Context } from '../context.js';
import { measuredIn } from '../measured.js';
import { cut, type Line, lineWidth, padded, span, widthOf } from '../text.js';
import { allDrawn, type Big, columnCells, columnGap, onOneGround, withoutUnit } from './big.js';

/** `richer`: the label with the other scale in it. */
type Labelled = Big & { readonly richer?: string };

const syrupNumbers = (ctx: Context): readonly Labelled[] => {
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
      ? {
          text: ctx.say(message('far.off.now')),
          label: ctx.say(message('screen.big.time.off')),
          look: 'alarm',
        }
      : {
          text: seconds === null ? '---' : printer.time(seconds).toUpperCase(),
          label: ctx.say(message('screen.big.time')),
          look: seconds === null ? 'faint' : 'plain',
        },
  ];
};

const handNumbers = (ctx: Context): readonly Labelled[] => {
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

const numbersOf = (ctx: Context): readonly Labelled[] | null => {
  const measured = measuredIn(ctx.shown.advice.phase);
  if (measured === 'syrup') return syrupNumbers(ctx);
  return measured === 'middle' ? handNumbers(ctx) : null;
};

/** Where each number's column begins, as shares of the width: the window is the widest. */
const columnsAt = [0, 0.28, 0.67] as const;

/** Rows of letters, one number after the other, each in a column of its own so that it stays where it is. */
const beside = (
  bigs: readonly Labelled[],
  size: LetterSize,
  width: number,
  ctx: Context,
): readonly Line[] | null => {
  const cells = columnCells(columnsAt, bigs.length, width);
  const drawn = bigs.map((big, nth) =>
    blockLetters(big.text, size, (cells[nth] ?? 0) - columnGap, ctx.ascii),
  );
  if (!allDrawn(drawn)) return null;
  const labels: Line = bigs.map((big, nth) => {
    const room = (cells[nth] ?? columnGap) - columnGap;
    const { label, richer = label } = big;
    return span(padded(cut(widthOf(richer) <= room ? richer : label, room), cells[nth] ?? 0), 'faint');
  });
  return [...onOneGround(drawn, bigs, cells), labels];
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
