import { stages } from '../../sugar/stages.js';
import { message } from '../../texts/message.js';
import type { Printer } from '../../units/printer.js';
import { otherUnit } from '../../units/temperature.js';
import type { Context } from '../context.js';
import type { Look } from '../looks.js';
import { measuredIn } from '../measured.js';
import { cut, type Line, padded, span, widthOf } from '../text.js';

export const glassWidth = (columns: number): number => (columns >= 110 ? 26 : 22);

/** One scale over the height of the screen. Celsius of whatever the marks are in. */
type Scale = {
  readonly from: number;
  readonly to: number;
  /** On the scale that is read first; `other`: on the other one. */
  readonly number: (celsius: number, printer: Printer) => string;
  /** Lower bounds with their names. */
  readonly names: readonly { readonly celsius: number; readonly name: string }[];
  readonly band: readonly [low: number, high: number];
  readonly bandName: string;
  readonly here: number | null;
  readonly hereName: string;
  readonly ghost: number | null;
};

/** Below the start of the boil and above the window: what is worth looking at, kelvin. */
const roomBelow = 3;
const roomAbove = 9;

const syrupScale = (ctx: Context): Scale => {
  const { facts, advice, ghostCelsius } = ctx.shown;
  const [low, high] = facts.window;
  const now = facts.reading?.celsius ?? null;
  return {
    from: Math.min(facts.startsCelsius, low - 12) - roomBelow,
    to: high + roomAbove,
    number: (celsius, on) => on.dialNumber(celsius),
    names: stages.map((stage) => ({
      celsius: facts.stageFromCelsius[stage],
      name: ctx.say({ id: `stage.${stage}` }),
    })),
    band: facts.window,
    bandName: ctx.say(message('screen.target')),
    here: now,
    hereName: ctx.say(message('screen.reading')),
    ghost: advice.forecast === null ? null : ghostCelsius,
  };
};

const handScale = (ctx: Context): Scale => {
  const { facts } = ctx.shown;
  const { middle, middleKnown } = facts;
  return {
    from: middle.limitCelsius - 15,
    to: Math.max(90, middleKnown ? middle.celsius + 5 : 0),
    number: (celsius, on) => on.degrees(celsius).replace(/\s.*$/, ''),
    names: [],
    band: [middle.limitCelsius - 15, middle.limitCelsius],
    bandName: ctx.say(message('screen.hands-limit')),
    here: middleKnown ? middle.celsius : null,
    hereName: ctx.say(message('screen.middle')),
    ghost: null,
  };
};

const scaleOf = (ctx: Context): Scale | null => {
  const { phase } = ctx.shown.advice;
  if (['mix', 'dissolve', 'boil', 'test', 'flavour', 'pour'].includes(phase)) return syrupScale(ctx);
  return measuredIn(phase) === 'middle' ? handScale(ctx) : null;
};

type Row = {
  number: string;
  numberLook: Look;
  axis: string;
  band: string;
  text: string;
  textLook: Look;
  /** The same number on the other scale, at the right edge. */
  other: string;
};

/** Numbers closer than this many rows would blur. */
const numberGap = 2;

/** What a mark is, and its number on the other scale where both have room; its sign goes first. */
const lastCells = ({ text, textLook, other }: Row, cells: number): Line => {
  const room = cells - 1 - (text === '' ? 0 : widthOf(text) + 1);
  const number = [other, other.replace(/\s.*$/, '')].find((one) => one !== '' && widthOf(one) <= room);
  if (number === undefined) return [span(padded(cut(text, cells), cells), textLook)];
  const left = cells - 1 - widthOf(number);
  return [span(padded(text, left), textLook), span(`${number} `, 'faint')];
};

/** The column of glass; null in the phases in which no temperature matters any more. */
export const glass = (ctx: Context, width: number, height: number): readonly Line[] | null => {
  const scale = scaleOf(ctx);
  if (scale === null) return null;
  const { signs } = ctx;
  const own = ctx.shown.printer;
  const other = own.inScale(otherUnit(own.unit));
  const numbers = (celsius: number) => ({
    number: scale.number(celsius, own),
    other: scale.number(celsius, other),
  });
  const perRow = (scale.to - scale.from) / height;
  const rowOf = (celsius: number): number =>
    Math.max(0, Math.min(height - 1, Math.floor((scale.to - celsius) / perRow)));
  const rows: Row[] = Array.from({ length: height }, (_, index) => {
    const top = scale.to - index * perRow;
    const inBand = top > scale.band[0] && top - perRow < scale.band[1];
    return {
      number: '',
      numberLook: 'faint',
      axis: signs.axis,
      band: inBand ? signs.band : '',
      text: '',
      textLook: 'faint',
      other: '',
    };
  });
  const put = (row: number, change: Partial<Row>): void => {
    const there = rows[row];
    if (there !== undefined) Object.assign(there, change);
  };
  const isFree = (row: number): boolean =>
    rows.slice(Math.max(0, row - numberGap + 1), row + numberGap).every(({ number }) => number === '');
  const { here, ghost, band, names } = scale;
  const inside = (celsius: number): boolean => celsius > scale.from && celsius < scale.to;
  for (const { celsius } of names) if (inside(celsius)) put(rowOf(celsius), { axis: signs.tick });
  if (ghost !== null && inside(ghost))
    put(rowOf(ghost), { axis: signs.ghost, text: ctx.say(message('screen.ghost')) });
  if (here !== null) {
    const sign = here < scale.from ? signs.below : here > scale.to ? signs.above : signs.here;
    put(rowOf(here), {
      ...numbers(here),
      other: ctx.show(`${scale.number(here, other)} °${other.unit}`),
      numberLook: 'strong',
      axis: sign,
      text: scale.hereName,
      textLook: 'strong',
    });
  }
  /** In the middle of its range, or as near to it as no other mark stands. */
  const name = (text: string, low: number, high: number, look: Look): void => {
    const [top, end] = [rowOf(high), rowOf(low)];
    const middle = (top + end) / 2;
    const free = Array.from({ length: end - top + 1 }, (_, index) => top + index)
      .filter((row) => rows[row]?.text === '')
      .sort((one, other) => Math.abs(one - middle) - Math.abs(other - middle))[0];
    if (free !== undefined) put(free, { text, textLook: look });
  };
  name(scale.bandName, band[0], band[1], 'plain');
  names.forEach((one, index) => {
    const low = Math.max(one.celsius, scale.from);
    const high = Math.min(names[index + 1]?.celsius ?? scale.to, scale.to) - perRow / 2;
    if (high - low > perRow / 2) name(one.name, low, high, 'faint');
  });
  for (const celsius of band) {
    const row = rowOf(celsius);
    if (rows[row]?.number === '') put(row, { ...numbers(celsius), numberLook: 'plain' });
  }
  for (const { celsius } of names) {
    const row = rowOf(celsius);
    if (inside(celsius) && isFree(row)) put(row, numbers(celsius));
  }
  if (rows[0]?.number === '') put(0, { number: ctx.show(`°${own.unit}`), other: ctx.show(`°${other.unit}`) });
  const textCells = width - 11;
  return rows.map((row) => [
    span(row.number.padStart(4), row.numberLook),
    span(` ${row.axis} `, row.axis === signs.axis ? 'faint' : 'plain'),
    span(padded(row.band, 2), 'plain'),
    span(' '),
    ...lastCells(row, textCells),
    span(' '),
  ]);
};
