import { isBefore } from '../cook/candy.js';
import type { Story } from '../lessons/story.js';
import { message, words } from '../texts/message.js';
import type { Printer } from '../units/printer.js';
import { alarmsOf, type CurveFrame, curveFrame, curveScales, minuteTicks } from './debrief-frame.js';
import { sheetColumns } from './layout.js';
import { textAxis } from './text-axis.js';

const numberColumn = 5;
const nameColumn = 12;
const rows = 22;

/** What is drawn later lies on top. */
const marks = {
  believed: '.',
  reading: 'o',
  doubted: '?',
  middle: 'm',
  test: 'T',
  off: '^',
  trouble: '!',
} as const;

type Grid = string[][];

const put = (grid: Grid, column: number, row: number, mark: string): void => {
  const line = grid[row];
  // What lies outside the drawing is not drawn: it would make the row longer, or count from its end.
  if (line !== undefined && column >= 0 && column < line.length) line[column] = mark;
};

/** The pot left the ring: not where a test in the same column says it already. */
const offsBeside = (story: Story, frame: CurveFrame, width: number): Story['offs'] => {
  const { x } = curveScales(frame, width - 1, rows - 1);
  const column = (t: number): number => Math.round(x(t));
  return story.offs.filter(({ t }) => !frame.tests.some(({ told }) => column(told.t) === column(t)));
};

const drawCurve = (grid: Grid, story: Story, frame: CurveFrame, width: number): void => {
  const { x, y } = curveScales(frame, width - 1, rows - 1);
  const at = (seconds: number, celsius: number): readonly [number, number] => [
    Math.round(x(seconds)),
    Math.round(y(celsius)),
  ];
  const poured = story.pouredAt;
  for (const { t, celsius } of story.track) put(grid, ...at(t, celsius), marks.believed);
  for (const { t, celsius, of, believed } of story.readings) {
    const mark = of === 'middle' ? marks.middle : marks.reading;
    put(grid, ...at(t, celsius), believed ? mark : marks.doubted);
  }
  for (const { told, celsius } of frame.tests) put(grid, ...at(told.t, celsius), marks.test);
  for (const { t, celsius } of offsBeside(story, frame, width)) {
    const [column, row] = at(t, celsius ?? frame.window[0]);
    put(grid, column, Math.max(0, row - 1), marks.off);
  }
  for (const t of alarmsOf(story)) if (t <= frame.to) put(grid, Math.round(x(t)), 0, marks.trouble);
  if (poured !== null) {
    const column = Math.round(x(poured));
    for (let row = 0; row < rows; row += 1) if (grid[row]?.[column] === ' ') put(grid, column, row, '|');
  }
};

/** Numbers and names at the left and right of the rows that they belong to; of two on one row the first wins. */
const labels = (frame: CurveFrame, story: Story, printer: Printer) => {
  const { y } = curveScales(frame, 1, rows - 1);
  const left = new Map<number, string>();
  const right = new Map<number, string>();
  const row = (celsius: number): number => Math.round(y(celsius));
  const set = (map: Map<number, string>, at: number, text: string): void => {
    if (!map.has(at)) map.set(at, text);
  };
  const [floor, ceiling] = frame.window;
  set(left, row(ceiling), printer.dialNumber(ceiling));
  set(left, row(floor), printer.dialNumber(floor));
  for (const { name, celsius } of frame.stages) {
    set(right, row(celsius), `- ${words({ id: `stage.${name}` }, printer)}`);
    set(left, row(celsius), printer.dialNumber(celsius));
  }
  if (frame.handLimit !== null) {
    set(left, row(frame.handLimit), printer.dialNumber(frame.handLimit));
    set(right, row(frame.handLimit), `- ${words(message('debrief.plot.for-hands'), printer)}`);
  }
  set(left, row(story.batch.boil.startsCelsius), printer.dialNumber(story.batch.boil.startsCelsius));
  set(right, row(story.batch.boil.startsCelsius), `- ${words(message('debrief.plot.boils'), printer)}`);
  set(left, rows - 1, printer.dialNumber(frame.low));
  return { left, right, window: [row(ceiling), row(floor)] as const, broken: row(frame.breakCelsius) };
};

const axis = (frame: CurveFrame, width: number): readonly string[] => {
  const { x } = curveScales(frame, width - 1, 1);
  return textAxis(
    minuteTicks(frame, 8).map((seconds) => [Math.round(x(seconds)), String(seconds / 60)]),
    width,
  );
};

/** A name may stand so many columns behind the beginning of its phase. */
const mostShift = 4;

/** The phases along the top, each at its beginning; where two have no room beside each other, the longer one's name. */
const phaseLine = (story: Story, frame: CurveFrame, width: number, printer: Printer): string => {
  const { x } = curveScales(frame, width - 1, 1);
  const line = Array.from({ length: width }, () => ' ');
  const isFree = (column: number, length: number): boolean =>
    column + length <= width &&
    line.slice(Math.max(0, column - 1), column + length + 1).every((one) => one === ' ');
  const shown = story.spans
    .filter(({ phase, from, to }) => to > frame.from && from < frame.to && isBefore(phase, 'clean'))
    .map(({ phase, from, to }) => {
      const start = Math.max(from, frame.from);
      return { phase, start, seconds: Math.min(to, frame.to) - start };
    })
    .toSorted((one, other) => other.seconds - one.seconds);
  for (const { phase, start } of shown) {
    const name = words(message(`phase.${phase}`), printer);
    const begins = Math.round(x(start));
    const column = Array.from({ length: mostShift + 1 }, (_, shift) => begins + shift).find((one) =>
      isFree(one, name.length),
    );
    if (column === undefined) continue;
    [...name].forEach((letter, index) => {
      line[column + index] = letter;
    });
  }
  return line.join('').trimEnd();
};

const legend = (story: Story, frame: CurveFrame, width: number, printer: Printer): string => {
  const say = (id: Parameters<typeof message>[0]): string => words({ id }, printer);
  const has = (of: string, believed: boolean) =>
    story.readings.some((one) => one.of === of && one.believed === believed);
  return [
    ...(has('syrup', true) ? [`${marks.reading} ${say('debrief.plot.reading')}`] : []),
    ...(story.track.length > 0 ? [`${marks.believed} ${say('debrief.plot.believed')}`] : []),
    ...(story.readings.some(({ believed }) => !believed)
      ? [`${marks.doubted} ${say('debrief.plot.doubted')}`]
      : []),
    ...(story.tests.length > 0 ? [`${marks.test} ${say('debrief.plot.test')}`] : []),
    ...(offsBeside(story, frame, width).length > 0 ? [`${marks.off} ${say('debrief.plot.off')}`] : []),
    ...(alarmsOf(story).length > 0 ? [`${marks.trouble} ${say('debrief.plot.trouble')}`] : []),
    ...(story.pouredAt === null ? [] : [`| ${say('debrief.plot.poured')}`]),
    ...(has('middle', true) ? [`${marks.middle} ${say('debrief.plot.middle')}`] : []),
    `: ${say('debrief.plot.window')}`,
  ].join('   ');
};

/**
 * The curve in plain characters, lines of at most `columns`; null where there is nothing to draw. Temperatures at the
 * left as the thermometer shows them, stages at the right where they begin today.
 */
export const textPlot = (
  story: Story,
  printer: Printer,
  columns = sheetColumns,
): readonly string[] | null => {
  const frame = curveFrame(story);
  if (frame === null) return null;
  const width = columns - numberColumn - 2 - nameColumn;
  const { left, right, window, broken } = labels(frame, story, printer);
  const grid: Grid = Array.from({ length: rows }, (_, row) =>
    Array.from({ length: width }, (__, column) =>
      row >= window[0] && row <= window[1] && column % 2 === 0 ? ':' : ' ',
    ),
  );
  drawCurve(grid, story, frame, width);
  const body = grid.map((line, row) => {
    const edge = row === broken ? '=' : left.has(row) ? '+' : '|';
    return `${(left.get(row) ?? '').padStart(numberColumn)} ${edge}${line.join('')} ${right.get(row) ?? ''}`.trimEnd();
  });
  const indent = ' '.repeat(numberColumn + 2);
  return [
    `${indent}${phaseLine(story, frame, width, printer)}`,
    ...body,
    ...axis(frame, width).map((line) => `${indent}${line}`),
    `${indent}${words(message('debrief.plot.axis'), printer)}; = ${words(message('debrief.plot.break'), printer)}`,
    ...wrapLegend(`${indent}${legend(story, frame, width, printer)}`, indent.length, columns),
  ];
};

/** The legend breaks between its entries only. */
const wrapLegend = (line: string, indent: number, columns: number): readonly string[] => {
  const lines: string[] = [];
  for (const entry of line.trimStart().split('   ')) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 3 + entry.length <= columns)
      lines[lines.length - 1] = `${last}   ${entry}`;
    else lines.push(`${' '.repeat(indent)}${entry}`);
  }
  return lines;
};
