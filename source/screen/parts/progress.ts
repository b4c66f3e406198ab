import type { Countdown } from '../../cook/advice.js';
import { type Message, message, type TextId } from '../../texts/message.js';
import { escapeForTerminal } from '../../units/escape.js';
import { bar } from '../bar.js';
import type { Context } from '../context.js';
import { blank, flow, type Line, span, wrap, wrapWithin } from '../text.js';

const barCells = { least: 8, most: 40 } as const;

/** Time to the take-off, and how much of the boil is behind. One row, empty outside boil and test. */
export const progress = (ctx: Context, width: number): Line => {
  const { advice, printer } = ctx.shown;
  const { forecast } = advice;
  if (advice.offTheHeat) return [span(ctx.say(message('screen.take-off.now')), 'alarm')];
  if (forecast === null) return blank;
  const about = printer.about(forecast.takeOffSeconds);
  const time = ctx.say(advice.reached ? message('screen.reached') : message('screen.take-off', { about }));
  const share = ctx.say(message('screen.share', { fraction: forecast.boilShare }));
  const brief = ctx.show(printer.percent(forecast.boilShare));
  const room = (label: string): number => width - time.length - label.length - 4;
  const label = room(share) >= barCells.least ? share : brief;
  const cells = Math.min(barCells.most, room(label));
  return [
    span(time, 'strong'),
    span('  '),
    ...(cells >= barCells.least ? bar(ctx.signs, forecast.boilShare, cells) : []),
    span(` ${label}`, 'plain'),
  ];
};

const labelled = (ctx: Context, name: Message, text: Message, width: number): readonly Line[] => {
  const head = ctx.say(name).padEnd(7);
  const label = span(head, 'faint');
  return wrapWithin(
    [label, span(ctx.sayBoth(text), 'plain')],
    [label, span(ctx.say(text), 'plain')],
    width,
    7,
  );
};

export const nextAndWatch = (ctx: Context, width: number): readonly Line[] => {
  const { next, watch } = ctx.shown.advice;
  return [
    ...(next === null ? [] : labelled(ctx, message('screen.next'), next, width)),
    ...(watch === null ? [] : labelled(ctx, message('screen.watch'), watch, width)),
  ];
};

/** In a rehearsal: what stands on the simulated stove. */
export const sight = (ctx: Context, width: number): readonly Line[] => {
  const { sight: seen } = ctx.shown;
  return seen === null ? [] : labelled(ctx, message('screen.sight'), seen, width);
};

/** The presenter's own lines for this phase, as the recipe has them. */
export const cues = (ctx: Context, width: number): readonly Line[] => {
  const head = ctx.say(message('screen.cue')).padEnd(7);
  return ctx.shown.advice.cues.flatMap((cue) =>
    wrap([span(head, 'faint'), span(ctx.show(escapeForTerminal(cue)), 'faint')], width, 7),
  );
};

/** The action itself says when to read again. */
const saysWhenToRead: readonly TextId[] = ['boil.still.say', 'boil.last.say'];

const timer = (ctx: Context, one: Countdown): Line => {
  const { advice, printer } = ctx.shown;
  const label = ctx.say({ id: `timer.${one.id}` as TextId });
  if (one.due) return [span(` ${ctx.say(message('screen.due'))} `, 'due'), span(` ${label}`, 'strong')];
  const seconds = one.until === null ? advice.now - one.from : Math.ceil(one.until - advice.now);
  return [span(`${label} `, 'faint'), span(printer.clock(seconds), 'strong')];
};

/** When to read again, and what runs: each with its time, what is due marked. */
export const timers = (ctx: Context, width: number): readonly Line[] => {
  const { nextReadingSeconds, timers: running, say } = ctx.shown.advice;
  const reading: readonly Line[] =
    nextReadingSeconds === null || (nextReadingSeconds > 0 && saysWhenToRead.includes(say.id))
      ? []
      : [
          [
            span(
              ctx.say(message('screen.read-again', { seconds: nextReadingSeconds })),
              nextReadingSeconds <= 0 ? 'due' : 'plain',
            ),
          ],
        ];
  return flow([...running.map((one) => timer(ctx, one)), ...reading], width, 4);
};
