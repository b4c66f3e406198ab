import type { Warning } from '../../cook/advice.js';
import { message } from '../../texts/message.js';
import type { Context } from '../context.js';
import { warningsShown } from '../keys.js';
import type { Look } from '../looks.js';
import { type Line, span, wrap } from '../text.js';

const looks: Readonly<Record<Warning['level'], readonly [block: Look, text: Look]>> = {
  now: ['alarm block', 'alarm'],
  soon: ['caution block', 'caution'],
  note: ['strong', 'plain'],
};

const levelWord = { now: 'screen.level.now', soon: 'screen.level.soon', note: 'screen.level.note' } as const;

const warning = (ctx: Context, one: Warning, width: number): readonly Line[] => {
  const [block, text] = looks[one.level];
  const word = ctx.say(one.signal === null ? message(levelWord[one.level]) : { id: `signal.${one.signal}` });
  const does = ctx.say(one.consequence);
  const danger = `${ctx.say(one.cause)}${does === '' ? '' : `: ${does}`}. `;
  const response = one.response.map((each) => ctx.say(each)).join(' ');
  const evidence = one.evidence === null ? '' : ` (${ctx.say(one.evidence)})`;
  return wrap(
    [
      span(` ${ctx.signs.warning} ${word} `, block),
      span(' '),
      span(danger, text),
      span(response, 'strong'),
      span(evidence, 'faint'),
    ],
    width,
    2,
  );
};

/** Open warnings, most urgent first, in at most `most` rows; what does not fit is counted. */
export const warnings = (ctx: Context, width: number, most: number): readonly Line[] => {
  const open = warningsShown(ctx.shown);
  const lines: Line[] = [];
  let written = 0;
  for (const one of open) {
    const drawn = warning(ctx, one, width);
    const last = written === open.length - 1;
    if (written > 0 && lines.length + drawn.length + (last ? 0 : 1) > most) break;
    lines.push(...drawn);
    written += 1;
  }
  const { problem } = ctx.shown.saving;
  if (problem !== null)
    lines.push(
      ...wrap(
        [
          span(` ${ctx.signs.warning} ${ctx.say(message('screen.not-saved.block'))} `, 'caution block'),
          span(` ${ctx.say(problem)}`, 'caution'),
        ],
        width,
        2,
      ),
    );
  for (const notice of ctx.shown.notices)
    lines.push(
      ...wrap(
        [span(` ${ctx.say(message('feed.badge'))} `, 'strong'), span(' '), span(ctx.say(notice), 'caution')],
        width,
        2,
      ),
    );
  const left = open.length - written;
  if (left > 0) lines.push([span(ctx.say(message('screen.more-warnings', { count: left })), 'caution')]);
  const others = ctx.shown.advice.troubles.slice(1).map(({ name }) => name);
  if (others.length > 0)
    lines.push([span(ctx.say(message('screen.also-open', { names: others })), 'caution')]);
  return lines;
};
