import { typedWords } from '../../cook/interpret.js';
import { message } from '../../texts/message.js';
import type { Context, Size } from '../context.js';
import { type ChooserId, optionsOf } from '../input/choosers.js';
import { type KeyRow, keysNow, keyTable } from '../keys.js';
import { blank, flow, type Line, padded, span, wrap } from '../text.js';

const nameCells = 13;

/** Things to choose by letter. */
const chooser = (ctx: Context, id: ChooserId, width: number): readonly Line[] => {
  const { shown } = ctx;
  const title = ctx.say(message(`choose.${id}`));
  const named = id === 'trouble' || id === 'over';
  const rows = optionsOf(id, shown).flatMap(({ letter, line, text }) => {
    const name = named ? padded(line.replace(/^\S+ /, ''), nameCells) : '';
    return wrap(
      [span(` ${letter}  `, 'key'), span(name, 'strong'), span(ctx.say(text), named ? 'faint' : 'plain')],
      width,
      4 + name.length,
    );
  });
  const since = shown.facts.potSince;
  const ring: readonly Line[] =
    id === 'test' && shown.facts.potOn === false && since !== null
      ? [
          blank,
          ...wrap(
            [
              span(
                `${ctx.say(message('choose.off-since', { seconds: shown.advice.now - since }))}. `,
                'strong',
              ),
              span(shown.facts.ringGlows ? ctx.say(message('choose.ring')) : '', 'strong'),
            ],
            width,
          ),
        ]
      : [];
  return [[span(title, 'strong')], blank, ...rows, ...ring];
};

const help = (ctx: Context, width: number): readonly Line[] => {
  const now = new Set(keysNow(ctx.shown));
  const half = Math.floor((width - 2) / 2);
  const nameOf = ({ shownAs, key }: KeyRow): string =>
    shownAs === undefined ? key : ctx.say(message(shownAs as 'key.space'));
  const shownKeys = keyTable.filter((row) => now.has(row));
  const rows = Math.ceil(shownKeys.length / 2);
  const column = (keys: readonly KeyRow[]): readonly Line[] => {
    const keyCells = Math.max(7, ...keys.map((row) => nameOf(row).length + 2));
    const textCells = half - keyCells;
    return keys.map((row): Line => {
      const text = ctx.say(message(row.text as 'key.done'));
      const both = row.word === '' || row.word === text ? text : `${text}  ${row.word}`;
      // The words stand below as well: half of one would be none.
      const fits = both.length < textCells ? both : text.slice(0, textCells - 1);
      return [span(padded(` ${nameOf(row)}`, keyCells), 'key'), span(padded(fits, textCells), 'plain')];
    });
  };
  const [left, right] = [column(shownKeys.slice(0, rows)), column(shownKeys.slice(rows))];
  const columns = left.map((line, index): Line => [...line, ...(right[index] ?? [])]);
  const typed = flow(
    typedWords.map((word): Line => [span(word, 'plain')]),
    width,
    2,
  );
  return [
    [span(ctx.say(message('screen.help')), 'strong')],
    ...columns,
    blank,
    [span(ctx.say(message('screen.help.words')), 'strong')],
    ...typed,
    ...wrap([span(ctx.say(message('screen.help.line')), 'faint')], width),
  ];
};

const leave = (ctx: Context, width: number): readonly Line[] => {
  const { advice, saving } = ctx.shown;
  const cook = saving.saving ? message('leave.kept') : message('leave.not-kept');
  const kept = advice.rehearsal ? message('leave.rehearsal') : cook;
  return [
    [span(ctx.say(message('leave.say')), 'strong')],
    blank,
    ...wrap([span(ctx.say(kept), 'plain')], width),
    blank,
    [span(ctx.say(message('leave.keys')), 'key')],
  ];
};

/** What covers the action for a moment; null: nothing does. */
export const panel = (ctx: Context, width: number): readonly Line[] | null => {
  const { input } = ctx.shown;
  if (input.leaving) return leave(ctx, width);
  if (input.help) return help(ctx, width);
  return input.chooser === null || input.entry !== null ? null : chooser(ctx, input.chooser, width);
};

export const smallest: Size = { columns: 80, rows: 24 };

/** What a window that is too small says instead; it can be left all the same. */
export const tooSmall = (ctx: Context, { columns, rows }: Size): readonly Line[] =>
  [
    message('screen.too-small', { columns, rows }),
    message(ctx.shown.input.leaving ? 'leave.keys' : 'screen.too-small.keys'),
  ]
    .flatMap((said): readonly Line[] => wrap([span(ctx.say(said), 'strong')], columns))
    .slice(0, Math.max(1, rows));
