import { type ScaleLinear, scaleLinear } from 'd3-scale';
import { stages } from '../../sugar/stages.js';
import { message } from '../../texts/message.js';
import type { Context } from '../context.js';
import type { Look } from '../looks.js';
import { measuredIn } from '../measured.js';
import { cut, type Line, padded, type Span, span, widthOf } from '../text.js';
import type { Ahead, Bucket, Trace, TraceMark } from '../trace.js';
import { Canvas } from './canvas.js';

/** Cells beside the drawing: numbers and axis at the left, names at the right. */
const leftCells = 6;
const nameCells = 12;
/** A narrower curve stands beside the glass, which has the names. */
const namedFrom = 70;
const rightCellsOf = (width: number): number => (width < namedFrom ? 1 : nameCells);
/** Rows beside the drawing: what was done above it, time below. */
const otherRows = 3;
export const leastPlotRows = 10;

/** Readings further apart than this are not joined, seconds. */
const longestGap = 20 * 60;
/** The forecast is shown so far at most, seconds, or as far as the cook is long. */
const farthestAhead = 15 * 60;
/** Seconds in one column: steps, so that nothing moves but now and then. */
const columnSteps = [1, 2, 3, 5, 6, 10, 12, 15, 20, 30, 45, 60, 90, 120, 180, 300, 600, 1200, 3600] as const;
const minute = 60;

/** What is drawn: readings of the syrup, or of the middle of the mass while hands wait for it. Celsius. */
type Subject = {
  readonly buckets: readonly Bucket[];
  readonly from: number;
  readonly to: number;
  readonly number: (celsius: number) => string;
  readonly names: readonly { readonly celsius: number; readonly name: string }[];
  readonly band: readonly [low: number, high: number];
  readonly bandName: string;
  readonly ahead: Ahead | null;
  readonly marks: readonly TraceMark[];
};

const roomBelow = 3;
const roomAbove = 6;
const coldStep = 10;

const syrupSubject = (ctx: Context, trace: Trace): Subject => {
  const { facts, printer } = ctx.shown;
  const [low, high] = facts.window;
  const boil = Math.min(facts.startsCelsius, low - 12) - roomBelow;
  const last = trace.syrup.at(-1)?.last ?? boil;
  const hottest = Math.max(high, trace.syrup.at(-1)?.high ?? high);
  return {
    buckets: trace.syrup,
    from: last < boil ? Math.floor((last - 1) / coldStep) * coldStep : boil,
    to: hottest + roomAbove,
    number: printer.dialNumber,
    names: stages.map((stage) => ({
      celsius: facts.stageFromCelsius[stage],
      name: ctx.say({ id: `stage.${stage}` }),
    })),
    band: facts.window,
    bandName: ctx.say(message('screen.target')),
    ahead: trace.ahead,
    marks: trace.marks,
  };
};

const middleSubject = (ctx: Context, trace: Trace): Subject => {
  const { facts, printer } = ctx.shown;
  const limit = facts.middle.limitCelsius;
  const all = trace.middle.map(({ high }) => high);
  return {
    buckets: trace.middle,
    from: limit - 15,
    to: Math.max(limit + 10, ...all) + roomBelow,
    number: (celsius) => printer.degrees(celsius).replace(/\s.*$/, ''),
    names: [],
    band: [limit - 15, limit],
    bandName: ctx.say(message('screen.hands-limit')),
    ahead: null,
    marks: [],
  };
};

const subjectOf = (ctx: Context): Subject => {
  const { trace, advice } = ctx.shown;
  return measuredIn(advice.phase) === 'middle' && trace.middle.length > 0
    ? middleSubject(ctx, trace)
    : syrupSubject(ctx, trace);
};

/** Whether a curve tells more than the glass. */
export const isCurve = ({ shown }: Context): boolean => shown.trace.syrup.length > 1;

/** Whether there is anything to draw. */
export const hasPlot = ({ shown }: Context): boolean =>
  shown.trace.syrup.length > 0 || shown.trace.middle.length > 0;

type Time = { readonly from: number; readonly perColumn: number };

const timeOf = ({ buckets, marks, ahead }: Subject, now: number, columns: number): Time => {
  const first = buckets[0]?.t ?? now;
  const heat = marks.find(({ kind }) => kind === 'heat')?.t ?? first;
  const from = Math.floor(Math.min(first, heat) / minute) * minute;
  const end = ahead?.path.at(-1)?.t ?? now;
  const late = ahead === null ? now : ahead.from + (end - ahead.from) * Math.max(1, ahead.highShare);
  const to = Math.min(late, now + Math.max(farthestAhead, now - from));
  const perColumn = columnSteps.find((step) => (Math.max(to, now) - from) / step < columns - 1) ?? 3600;
  return { from, perColumn };
};

/** The projected temperature at `t`, its way stretched in time by `share`; null beyond its end. */
const projected = ({ from, path }: Ahead, t: number, share: number): number | null => {
  if (share <= 0) return null;
  const along = from + (t - from) / share;
  const next = path.findIndex((point) => point.t >= along);
  const [before, after] = [path[next - 1], path[next]];
  if (after === undefined) return null;
  if (before === undefined || after.t <= before.t) return after.celsius;
  return before.celsius + ((along - before.t) / (after.t - before.t)) * (after.celsius - before.celsius);
};

type Looks = { readonly curve: Look; readonly reading: Look; readonly ahead: Look; readonly mark: Look };
const looks: { readonly [Calm in 'calm' | 'clear']: Looks } = {
  calm: { curve: 'faint', reading: 'plain', ahead: 'faint', mark: 'faint' },
  clear: { curve: 'plain', reading: 'strong', ahead: 'plain', mark: 'strong' },
};

const asciiSigns = { reading: 'o', curve: '.', ahead: '+', interval: ':', test: 'T' } as const;

export type PlotOptions = { readonly width: number; readonly height: number; readonly calm: boolean };

/** Where a drawing is made: scales from seconds and Celsius to dots, and to the cells they lie in. */
type Paper = {
  readonly ctx: Context;
  readonly canvas: Canvas;
  readonly subject: Subject;
  readonly x: ScaleLinear<number, number>;
  readonly y: ScaleLinear<number, number>;
  readonly rowOf: (celsius: number) => number;
  readonly columnOf: (t: number) => number;
};

/** The 80 % interval of one dot's time, as a stipple; false beyond its end. */
const stipple = ({ canvas, subject, x, y, ctx }: Paper, ahead: Ahead, dx: number): boolean => {
  const hottest = projected(ahead, x.invert(dx), ahead.lowShare) ?? subject.to;
  const coldest = projected(ahead, x.invert(dx), ahead.highShare);
  if (coldest === null) return false;
  const [low, high] = subject.band;
  const end = Math.floor(y(coldest));
  for (let dy = Math.max(0, Math.floor(y(hottest))); dy <= end; dy += 1) {
    const celsius = y.invert(dy);
    // Twice as close within the window, which it covers.
    const isSet = dx % 2 === 0 || (!ctx.ascii && celsius >= low && celsius <= high);
    if (isSet && (ctx.ascii || dy % 2 === 0)) canvas.dot(dx, dy, 'faint', asciiSigns.interval);
  }
  return true;
};

/** The forecast: its interval, and its middle as a broken line. */
const drawAhead = (paper: Paper, look: Look): void => {
  const { canvas, subject, x, y, ctx } = paper;
  const { ahead } = subject;
  if (ahead === null) return;
  const [first, end] = [Math.ceil(x(ahead.from)), canvas.columns * canvas.across];
  for (let dx = first; dx < end && stipple(paper, ahead, dx); dx += 1);
  for (let dx = first; dx < end; dx += 1) {
    const celsius = projected(ahead, x.invert(dx), 1);
    if (celsius !== null && (ctx.ascii || dx % 4 < 2))
      canvas.dot(dx, Math.floor(y(celsius)), look, asciiSigns.ahead);
  }
};

/** Readings that are so far apart are dots on their line. */
const cellsOfOne = 3;
const thicken = (canvas: Canvas, [x, y]: readonly [number, number], look: Look): void => {
  for (const [dx, dy] of [
    [-1, 0],
    [1, 0],
    [0, -1],
    [0, 1],
  ] as const)
    canvas.dot(x + dx, y + dy, look, asciiSigns.reading);
};

const drawReadings = ({ ctx, canvas, subject, x, y, rowOf, columnOf }: Paper, look: Looks): void => {
  const { buckets, marks, from, to } = subject;
  const isInside = (celsius: number): boolean => celsius > from && celsius < to;
  const dotOf = (t: number, celsius: number): readonly [number, number] => [
    Math.floor(x(t)),
    Math.floor(y(celsius)),
  ];
  buckets.forEach((one, index) => {
    const next = buckets[index + 1];
    if (next !== undefined && next.t - one.t <= longestGap && (isInside(one.last) || isInside(next.last)))
      canvas.line(dotOf(one.t, one.last), dotOf(next.t, next.last), look.curve, asciiSigns.curve);
  });
  const areSingle = buckets.length * cellsOfOne < canvas.columns;
  for (const { t, low, high, last } of buckets) {
    if (!isInside(last)) continue;
    canvas.line(dotOf(t, low), dotOf(t, high), look.reading, asciiSigns.reading);
    if (areSingle && !ctx.ascii) thicken(canvas, dotOf(t, last), look.reading);
  }
  for (const { kind, celsius, t } of marks)
    if (kind === 'test' && celsius !== null)
      canvas.sign(columnOf(t), rowOf(celsius), asciiSigns.test, look.mark);
};

/** In fewer rows the borders would be a carpet: their numbers at the axis are enough. */
const bordersFrom = 12;

/** The window and the borders of the stages, under all else. */
const drawBands = ({ canvas, subject, y, ctx }: Paper): void => {
  const [low, high] = subject.band;
  for (let row = 0; row < canvas.rows; row += 1) {
    const [top, end] = [y.invert(row * canvas.down), y.invert((row + 1) * canvas.down)];
    const inBand = end < high && top > low;
    const onBorder =
      canvas.rows >= bordersFrom && subject.names.some(({ celsius }) => celsius <= top && celsius > end);
    if (!inBand && !onBorder) continue;
    for (let column = 0; column < canvas.columns; column += inBand ? 1 : 2)
      canvas.under(column, row, inBand ? ctx.signs.empty : ctx.signs.bullet, 'faint');
  }
};

const draw = (ctx: Context, { width, height, calm }: PlotOptions): readonly Line[] => {
  const subject = subjectOf(ctx);
  const { now } = ctx.shown.advice;
  const columns = width - leftCells - rightCellsOf(width);
  const rows = height - otherRows;
  const time = timeOf(subject, now, columns);
  const look = looks[calm ? 'calm' : 'clear'];
  const canvas = new Canvas(columns, rows, ctx.ascii);
  const x = scaleLinear([time.from, time.from + time.perColumn], [0, canvas.across]);
  const y = scaleLinear([subject.to, subject.from], [0, rows * canvas.down]);
  const rowOf = (celsius: number): number => Math.floor(y(celsius) / canvas.down);
  const columnOf = (t: number): number => Math.floor(x(t) / canvas.across);
  const paper: Paper = { ctx, canvas, x, y, rowOf, columnOf, subject };
  drawAhead(paper, look.ahead);
  drawReadings(paper, look);
  drawBands(paper);
  return [
    marksRow(ctx, subject, columnOf, columns, rightCellsOf(width), look.mark),
    ...Array.from(
      { length: rows },
      (_, row): Line => [
        ...numberAt(ctx, subject, rowOf, row, look),
        ...canvas.row(row),
        ...(width < namedFrom ? [] : [nameAt(subject, rowOf, row, rows)]),
      ],
    ),
    ...timeAxis(ctx, time, columns, columnOf(now)),
  ];
};

const numberAt = (
  ctx: Context,
  subject: Subject,
  rowOf: (celsius: number) => number,
  row: number,
  look: Looks,
): readonly Span[] => {
  const last = subject.buckets.at(-1)?.last;
  const isNow = last !== undefined && rowOf(last) === row;
  const edges = [...subject.band, ...subject.names.map(({ celsius }) => celsius)];
  // The present reading has its place; a border beside it in the same row gives way.
  const at = isNow ? last : edges.find((celsius) => rowOf(celsius) === row);
  return [
    span((at === undefined ? '' : subject.number(at)).padStart(4), isNow ? look.reading : 'faint'),
    span(` ${at === undefined ? ctx.signs.axis : isNow ? ctx.signs.here : ctx.signs.tick}`, 'faint'),
  ];
};

/** A name in the middle of its range; the band's own name first. */
const nameAt = (
  { names, band, bandName, from, to }: Subject,
  rowOf: (celsius: number) => number,
  row: number,
  rows: number,
): Span => {
  const middle = (low: number, high: number): number => {
    const [top, end] = [Math.max(0, rowOf(high)), Math.min(rows - 1, rowOf(low))];
    return Math.floor((top + end) / 2);
  };
  const cells = nameCells - 1;
  if (middle(...band) === row) return span(` ${cut(bandName, cells)}`, 'plain');
  const named = names.find((one, index) => {
    const [low, high] = [Math.max(one.celsius, from), Math.min(names[index + 1]?.celsius ?? to, to)];
    return high > low && rowOf(low) !== rowOf(high) && middle(low, high) === row;
  });
  return span(named === undefined ? '' : ` ${cut(named.name, cells)}`, 'faint');
};

/** What was done, each above its column, in words where they have room. */
const marksRow = (
  ctx: Context,
  { marks }: Subject,
  columnOf: (t: number) => number,
  columns: number,
  names: number,
  look: Look,
): Line => {
  const words = new Map<number, readonly string[]>();
  for (const { t, word } of marks) {
    const column = columnOf(t);
    const said = ctx.say(message('event.word', { word }));
    if (column < columns) words.set(column, [...(words.get(column) ?? []), said]);
  }
  let text = '';
  const taken = [...words];
  taken.forEach(([column, all], index) => {
    const room = (taken[index + 1]?.[0] ?? columns + names) - column - 2;
    const said = [all.join(', '), ...all.slice(-1)].find((one) => widthOf(one) <= room) ?? '';
    text = `${padded(text, column)}${ctx.signs.below}${said}`;
  });
  return [span(' '.repeat(leftCells)), span(text, look)];
};

/** Minutes since the opening under their columns, and where now is. */
const timeAxis = (
  ctx: Context,
  { from, perColumn }: Time,
  columns: number,
  nowColumn: number,
): readonly Line[] => {
  const cells = 8;
  const step =
    [1, 2, 5, 10, 15, 20, 30, 60, 120, 240].find((one) => (one * minute) / perColumn >= cells) ?? 480;
  const seconds = step * minute;
  const ruler = Array.from({ length: columns }, () => ctx.signs.rule);
  let numbers = '';
  for (let t = Math.ceil(from / seconds) * seconds; ; t += seconds) {
    const column = Math.floor((t - from) / perColumn);
    const label = String(t / minute);
    if (column + label.length + 4 > columns) break;
    ruler[column] = '+';
    numbers = padded(numbers, column) + label;
  }
  const isFirst = widthOf(numbers) + 1 + widthOf(ctx.say(message('plot.minutes'))) <= columns;
  const unit = isFirst ? ` ${ctx.say(message('plot.minutes'))}` : '';
  const line: Line = [span(' '.repeat(leftCells)), span(ruler.slice(0, nowColumn).join(''), 'faint')];
  return [
    [
      ...line,
      ...(nowColumn < columns ? [span(ctx.ascii ? '^' : ctx.signs.above, 'strong')] : []),
      span(ruler.slice(nowColumn + 1).join(''), 'faint'),
    ],
    [span(' '.repeat(leftCells)), span(`${numbers}${unit}`, 'faint')],
  ];
};

const drawn = new WeakMap<Trace, Map<string, readonly Line[]>>();

/**
 * Temperature against time, exactly `height` rows: readings, the bands of the stages, the forecast with its 80 % interval,
 * tests and what was done at the burner. The same lines as long as nothing happened and `now` stays in its column.
 */
export const plot = (ctx: Context, options: PlotOptions): readonly Line[] => {
  const { trace, advice } = ctx.shown;
  const known = drawn.get(trace) ?? new Map<string, readonly Line[]>();
  drawn.set(trace, known);
  const columns = options.width - leftCells - rightCellsOf(options.width);
  const subject = subjectOf(ctx);
  const { from, perColumn } = timeOf(subject, advice.now, columns);
  const column = Math.floor((advice.now - from) / perColumn);
  const key = JSON.stringify([
    options,
    ctx.ascii,
    column,
    perColumn,
    advice.phase,
    subject.number(subject.band[1]),
    subject.bandName,
  ]);
  const before = known.get(key);
  if (before !== undefined) return before;
  const lines = draw(ctx, options);
  if (known.size > 8) known.clear();
  known.set(key, lines);
  return lines;
};
