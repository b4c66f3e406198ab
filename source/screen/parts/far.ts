import { type Message, message } from '../../texts/message.js';
import type { LetterSize } from '../block-letters.js';
import type { Context, Size } from '../context.js';
import { questionShown, warningsShown } from '../keys.js';
import { leastArcMinutes, preferredArcMinutes, seenArcMinutes } from '../legibility.js';
import type { Look } from '../looks.js';
import { blank, type Line, span, wrap } from '../text.js';
import { caution, items, question, reply, typed, written } from './action.js';
import { farNumbers, type NumberSizes } from './far-numbers.js';
import { sight, timers } from './progress.js';
import { warnings } from './warnings.js';

/** A warning that wants an act at once, in words for two metres. */
const shoutOf = (ctx: Context): { readonly text: string; readonly look: Look } => {
  const { advice, facts } = ctx.shown;
  const own = { text: ctx.say(advice.shout), look: advice.urgent ? 'alarm letters' : 'strong' } as const;
  if (advice.urgent) return own;
  const [first] = warningsShown(ctx.shown).filter(({ level }) => level === 'now');
  if (first === undefined) return own;
  const said: Readonly<Record<string, Message>> = {
    'scorch-near': message('far.scorch-near.shout'),
    'past-window': message(facts.potOn === false ? 'far.past-window.off.shout' : 'far.past-window.shout'),
    'middle-above-limit': message('far.middle-above-limit.shout'),
  };
  const warned = said[first.id];
  return warned === undefined ? own : { text: ctx.say(warned), look: 'alarm letters' };
};

/** How large, from the most to the least; height decides, and at one height width. */
export type Letters = NumberSizes & { readonly shout: LetterSize };
const letters: readonly Letters[] = [
  { shout: 'huge', digits: 'huge', labels: 'slim' },
  { shout: 'huge', digits: 'large', labels: 'slim' },
  { shout: 'large', digits: 'large', labels: 'slim' },
  { shout: 'large', digits: 'small', labels: 'slim' },
  { shout: 'small', digits: 'small', labels: 'slim' },
  { shout: 'huge', digits: 'huge', labels: 'line' },
  { shout: 'huge', digits: 'large', labels: 'line' },
  { shout: 'large', digits: 'large', labels: 'line' },
  { shout: 'large', digits: 'small', labels: 'line' },
  { shout: 'small', digits: 'small', labels: 'line' },
  { shout: 'slim', digits: 'small', labels: 'line' },
  { shout: 'slim', digits: 'slim', labels: 'line' },
];

/** Its numbers stay higher than small labels. */
const hasHighDigits = ({ digits, labels }: Letters): boolean => labels === 'slim' && digits !== 'small';

/** Where slim letters are too low to be read from afar, what a number is stands in larger ones if they find room. */
const lettersFor = (rows: number, ascii: boolean): readonly Letters[] =>
  seenArcMinutes('slim', { rows, ascii }) >= leastArcMinutes
    ? letters
    : [...letters.filter(hasHighDigits).map((one) => ({ ...one, labels: 'small' as const })), ...letters];

/** The least of the heights that have to be read from afar, on the screen that we count with, minutes of arc. */
export const seenOf = ({ shout, digits }: Letters, rows: number, ascii: boolean): number =>
  Math.min(...[shout, digits].map((size) => seenArcMinutes(size, { rows, ascii })));

/** A question beside the shout: also where the step itself asks it, for its sentence does not stand here. */
const asked = (ctx: Context, width: number): readonly Line[] => {
  const open = questionShown(ctx.shown);
  if (open === null || open.text.id !== ctx.shown.advice.say.id) return question(ctx, width);
  return wrap([span(`? ${ctx.say(open.text)} `, 'caution'), span('y / n', 'key')], width, 2);
};

type Under = {
  /** For somebody who stands nearer; goes first. */
  readonly say: readonly Line[];
  /** A list in the step: what has no room is counted as missing, never dropped in silence. */
  readonly list: readonly Line[];
  /** Never left out: above the list, and below it. */
  readonly before: readonly Line[];
  readonly after: readonly Line[];
  /** The step's own precautions: they are no warnings, and go last before the view itself does. */
  readonly cautions: readonly Line[];
};

const under = (ctx: Context, width: number, rows: number): Under => {
  const { advice } = ctx.shown;
  const isAsked = questionShown(ctx.shown)?.text.id === advice.say.id;
  const due = advice.timers.some((timer) => timer.due) ? timers(ctx, width) : [];
  return {
    say: isAsked ? [] : wrap([span(ctx.say(advice.say), 'plain')], width),
    before: [...reply(ctx, width), ...asked(ctx, width)],
    list: items(ctx, width),
    cautions: advice.cautions.flatMap((one) => caution(ctx, one, width)),
    // In a rehearsal: what nobody at the simulated pot could miss.
    after: [...sight(ctx, width), ...due, ...warnings(ctx, width, Math.max(4, Math.floor(rows / 3)))],
  };
};

/** How much stands below the letters, from all of it to what must not be missed. */
const amounts = ['all', 'without say', 'without list', 'least'] as const;
type Amount = (typeof amounts)[number];

const below = (ctx: Context, parts: Under, amount: Amount): readonly Line[] => {
  const { say, before, list, cautions, after } = parts;
  const isListed = list.length === 0 || amount === 'all' || amount === 'without say';
  return [
    ...(amount === 'all' ? say : []),
    ...before,
    ...(isListed ? list : [[span(ctx.say(message('far.list')), 'caution')]]),
    ...(amount === 'least' ? [] : cautions),
    ...after,
  ];
};

const margin = 2;
const widestText = 120;

export type Far = { readonly lines: readonly Line[]; readonly letters: Letters };

/**
 * What is needed from two metres and nothing else: the numbers, the shout, and what must not be missed. Exactly `rows`
 * rows at most `size.columns` wide; null where what must not be missed has no room beside letters of any size.
 */
export const far = (ctx: Context, size: Size, rows: number): Far | null => {
  const width = size.columns - 2 * margin;
  const textWidth = Math.min(width, widestText);
  const shout = shoutOf(ctx);
  const parts = under(ctx, textWidth, rows);
  const set = (one: Letters, amount: Amount): readonly Line[] | null => {
    const numbers = farNumbers(ctx, one, width);
    const call = typed(ctx, one.shout, width) ?? written(ctx, shout.text, one.shout, width, shout.look);
    if (numbers === null || call === null) return null;
    const small = below(ctx, parts, amount);
    const spare = rows - numbers.length - call.length - small.length;
    const apart = numbers.length === 0 ? [] : spare > 2 ? [blank, blank] : [blank];
    const above = [...numbers, ...apart, ...call];
    const between = rows - above.length - small.length;
    if (between < 0) return null;
    const lead = between > 2 ? 1 : 0;
    return [
      ...Array.from({ length: lead }, () => blank),
      ...above,
      ...Array.from({ length: between - lead }, () => blank),
      ...small,
    ];
  };
  for (const least of [preferredArcMinutes, leastArcMinutes, 0])
    for (const amount of amounts)
      for (const one of lettersFor(size.rows, ctx.ascii)) {
        if (seenOf(one, size.rows, ctx.ascii) < least) continue;
        const lines = set(one, amount);
        if (lines !== null)
          return { lines: lines.map((line) => [span(' '.repeat(margin)), ...line]), letters: one };
      }
  return null;
};
