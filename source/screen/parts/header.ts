import type { Trail } from '../../cook/advice.js';
import { message, type TextId } from '../../texts/message.js';
import type { Context } from '../context.js';
import { type Line, lineWidth, type Span, span } from '../text.js';

const phaseSpan = (ctx: Context, { phase, state }: Trail): Span => {
  const name = ctx.say({ id: `phase.${phase}` as TextId });
  if (state === 'now') return span(`[${name.toUpperCase()}]`, 'strong');
  return state === 'also' ? span(`(${name})`, 'plain') : span(name, 'faint');
};

const spaced = (spans: readonly Span[]): Line =>
  spans.flatMap((one, index) => (index === 0 ? [one] : [span(' '), one]));

const isPresent = ({ state }: Trail): boolean => state === 'now' || state === 'also';

/** All phases if they fit, else without those that are long past or far ahead, never without the present ones. */
const trailWithin = (ctx: Context, cells: number): Line => {
  const { trail } = ctx.shown.advice;
  let [from, to] = [0, trail.length];
  const [first, last] = [trail.findIndex(isPresent), trail.findLastIndex(isPresent)];
  const drawn = (): Line => spaced(trail.slice(from, to).map((one) => phaseSpan(ctx, one)));
  while (lineWidth(drawn()) > cells && (from < first || to > last + 1)) {
    if (from < first) from += 1;
    else to -= 1;
  }
  return drawn();
};

/** The phase trail, and how long the cook has been going on. */
export const header = (ctx: Context, columns: number): Line => {
  const clock = ctx.say(message('screen.clock', { minutes: Math.floor(ctx.shown.advice.now / 60) }));
  const trail = trailWithin(ctx, columns - clock.length - 2);
  const gap = Math.max(1, columns - lineWidth(trail) - clock.length);
  return [...trail, span(' '.repeat(gap)), span(clock, 'plain')];
};

/** The phases that still have candy in them, alone. */
export const phasesNow = (ctx: Context): Line => [
  ...spaced(ctx.shown.advice.trail.filter(isPresent).map((one) => phaseSpan(ctx, one))),
  span('  '),
];

/** What is out of the ordinary about this cook, and the bell for the eye. Usually almost empty. */
export const badges = (ctx: Context, columns: number): Line => {
  const { advice, facts, saving, input, rang, waiting, printer } = ctx.shown;
  const marks: Span[] = [];
  if (advice.rehearsal) marks.push(span(` ${ctx.say(message('screen.rehearsal'))} `, 'caution block'));
  if (advice.drift !== null) marks.push(span(ctx.say(message('drift', advice.drift)), 'plain'));
  // A number on the screen must not be taken for one on the thermometer.
  if (printer.unit !== advice.typing.unit && advice.phase !== 'over')
    marks.push(
      span(ctx.say(message('scale.differs', { shown: printer.unit, bare: advice.typing.unit })), 'strong'),
    );
  if (!saving.saving)
    marks.push(span(` ${ctx.say(message('screen.not-saved', { count: saving.heldCount }))} `, 'alarm block'));
  if (waiting) marks.push(span(ctx.say(message('screen.wait')), 'plain'));
  if (rang === 'look') marks.push(span(ctx.say(message('screen.rang.look')), 'alarm'));
  if (rang === 'next') marks.push(span(ctx.say(message('screen.rang.next')), 'strong'));
  if (advice.from !== null) {
    const phase = ctx.say({ id: `phase.${advice.from}` as TextId });
    marks.push(span(ctx.say(message('screen.from', { phase })), 'strong'));
  }
  if (!input.bell) marks.push(span(ctx.say(message('screen.bell-off')), 'faint'));
  const line: Line = marks.flatMap((mark, index) => (index === 0 ? [mark] : [span('  '), mark]));
  const name = ctx.show(facts.recipe);
  const room = columns - lineWidth(line) - 2;
  if (room < name.length) return line;
  return [span(name, 'faint'), span(' '.repeat(columns - name.length - lineWidth(line))), ...line];
};
