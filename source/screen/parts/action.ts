import type { Warning } from '../../cook/advice.js';
import { type Message, message } from '../../texts/message.js';
import { blockLetters, type LetterSize } from '../block-letters.js';
import type { Context } from '../context.js';
import { optionsOf } from '../input/choosers.js';
import type { Entry } from '../input/reducer.js';
import { questionShown } from '../keys.js';
import type { Look } from '../looks.js';
import { blank, flow, type Line, padded, span, widthOf, wrap, wrapWithin } from '../text.js';

/** How large the action is written: in block letters, or as one line in bold. */
export type ShoutSize = LetterSize | 'line';

export const written = (
  ctx: Context,
  text: string,
  size: ShoutSize,
  width: number,
  look: Look,
): readonly Line[] | null => {
  if (size === 'line') return wrap([span(text.replaceAll('\n', ' '), look)], width);
  const rows = blockLetters(text, size, width, ctx.ascii);
  if (rows === null) return null;
  // As one block, should what is behind the letters be painted too.
  const cells = Math.max(...rows.map(widthOf));
  return [...rows.map((row): Line => [span(padded(row, cells), look)]), blank];
};

const hint = ({ shown }: Context, { text, of }: Entry): Message => {
  const { typing } = shown.advice;
  if (of === 'words') return message('entry.takes');
  const letter = /[cf]$/i.exec(text.trim())?.[0]?.toUpperCase();
  return message(typing.bare === 'middle' ? 'entry.middle' : 'entry.reading', {
    unit: letter ?? typing.unit,
  });
};

/** What is being typed, as large as the action, and below it exactly as it stands, with a cursor. */
export const typed = (ctx: Context, size: ShoutSize, width: number): readonly Line[] | null => {
  const { entry } = ctx.shown.input;
  if (entry === null) return null;
  const text = ctx.show(entry.text);
  const exact: readonly Line[] = wrap(
    [
      span(entry.of === 'words' ? ': ' : '> ', 'faint'),
      span(`${text}${ctx.signs.cursor}`, 'entry'),
      span(`   ${ctx.say(hint(ctx, entry))}`, 'faint'),
    ],
    width,
  );
  if (size === 'line') return exact;
  const large = text === '' ? null : written(ctx, text.toUpperCase(), size, width, 'entry');
  return large === null ? exact : [...large.slice(0, -1), ...exact];
};

const says = (ctx: Context, text: Message, look: Look, width: number, hang = 0): readonly Line[] =>
  wrap([span(ctx.say(text), look)], width, hang);

/** What is said about what was typed stands where the eyes are: under the action. */
export const reply = (ctx: Context, width: number): readonly Line[] => {
  const { notice } = ctx.shown.input;
  return notice === null ? [] : says(ctx, notice, 'caution', width);
};

/** A question beside the step: not where the step itself is the question. */
export const question = (ctx: Context, width: number): readonly Line[] => {
  const asked = questionShown(ctx.shown);
  if (asked === null || asked.text.id === ctx.shown.advice.say.id) return [];
  const text = `? ${ctx.say(asked.text)}`;
  if (asked.kind !== 'what is true now')
    return wrap([span(`${text} `, 'caution'), span('y / n', 'key')], width, 2);
  const options = optionsOf('settle', ctx.shown).map(
    ({ letter, text: option }): Line => [span(`${letter} `, 'key'), span(ctx.say(option), 'plain')],
  );
  return [
    ...wrap([span(text, 'caution')], width, 2),
    ...flow(options, width - 2, 4).map((line): Line => [span('  '), ...line]),
  ];
};

export const caution = (ctx: Context, one: Warning, width: number): readonly Line[] => {
  const does = ctx.say(one.consequence);
  const danger = `${ctx.say(one.cause)}${does === '' ? '' : `: ${does}`}.`;
  const response = one.response.map((each) => ctx.say(each)).join(' ');
  const signal = one.signal === null ? '' : `${ctx.say({ id: `signal.${one.signal}` })}  `;
  return wrap([span(signal, 'strong'), span(`${danger} `, 'plain'), span(response, 'strong')], width, 2);
};

export const items = (ctx: Context, width: number): readonly Line[] => {
  const { advice } = ctx.shown;
  const numbered = advice.question?.kind === 'pause' || advice.step?.startsWith('trouble.') === true;
  return advice.items.flatMap((item, index) => {
    const mark = numbered
      ? `${index + (advice.question?.kind === 'pause' ? 1 : 2)} `
      : `${ctx.signs.bullet} `;
    return wrap([span(mark, 'faint'), span(ctx.say(item), 'plain')], width, 2);
  });
};

export type ActionOptions = {
  readonly size: ShoutSize;
  readonly width: number;
  /** Without empty rows between its parts. */
  readonly tight: boolean;
  readonly withItems: boolean;
};

/** The next action, why, and what stands in its step; null where its letters don't fit. */
export const action = (ctx: Context, options: ActionOptions): readonly Line[] | null => {
  const { size, width, tight, withItems } = options;
  const { advice } = ctx.shown;
  const shout = ctx.say(advice.shout);
  const look: Look = advice.urgent ? 'alarm letters' : 'strong';
  const top = typed(ctx, size, width) ?? written(ctx, shout, size, width, look);
  if (top === null) return null;
  const list = withItems ? items(ctx, width) : [];
  const cautions = advice.cautions.flatMap((one) => caution(ctx, one, width));
  const gap = (part: readonly Line[]): readonly Line[] =>
    tight || part.length === 0 ? part : [blank, ...part];
  return [
    ...top,
    ...reply(ctx, width),
    ...says(ctx, advice.say, advice.urgent ? 'alarm' : 'strong', width),
    ...wrapWithin([span(ctx.sayBoth(advice.why), 'faint')], [span(ctx.say(advice.why), 'faint')], width),
    ...gap(question(ctx, width)),
    ...gap(list),
    ...gap(cautions),
  ];
};
