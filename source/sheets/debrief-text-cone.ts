import { scaleLinear } from 'd3-scale';
import type { Story } from '../lessons/story.js';
import { message, words } from '../texts/message.js';
import type { Printer } from '../units/printer.js';
import { type Foreseen, foreseenOf, mostSeconds } from './debrief-foreseen.js';
import { textAxis } from './text-axis.js';

const rows = 9;
const numberColumn = 5;
const marks = { band: ':', foreseen: 'o', came: '*' } as const;

/** Whole minutes between two moments in seconds, about `count` of them. */
const wholeTicks = (from: number, to: number, count: number): readonly number[] =>
  scaleLinear()
    .domain([from / 60, to / 60])
    .ticks(count)
    .filter(Number.isInteger);

/** While the pot is off nothing is foreseen: what is older than this is not drawn on, seconds. */
const freshSeconds = 75;

/** What was foreseen last at that moment. */
const lastBefore = (points: readonly Foreseen[], t: number): Foreseen | undefined => {
  const last = points.findLast((one) => one.t <= t);
  return last !== undefined && t - last.t <= freshSeconds ? last : undefined;
};

/**
 * The forecast's own track in plain characters, lines of at most `columns`: minutes to the take-off as foreseen all
 * along, their 80 % band, and what came. Null where the forecast said too little.
 */
export const textCone = (
  story: Pick<Story, 'track' | 'offs'>,
  printer: Printer,
  columns: number,
): readonly string[] | null => {
  const track = foreseenOf(story);
  if (track === null) return null;
  const { points, from: first, came } = track;
  const width = columns - numberColumn - 2;
  const y = scaleLinear()
    .domain([0, mostSeconds(track)])
    .range([rows - 1, 0])
    .clamp(true);
  const x = scaleLinear()
    .domain([first, came])
    .range([0, width - 1]);
  const row = (seconds: number): number => Math.round(y(seconds));
  const column = (at: number): readonly string[] => {
    const t = x.invert(at);
    const said = lastBefore(points, t);
    const since = said === undefined ? 0 : t - said.t;
    const left = (seconds: number): number => row(Math.max(0, seconds - since));
    return Array.from({ length: rows }, (_, place) => {
      if (said !== undefined && place === left(said.typical)) return marks.foreseen;
      if (place === row(came - t)) return marks.came;
      if (said === undefined || place < left(said.high) || place > left(said.low)) return ' ';
      return at % 2 === 0 ? marks.band : ' ';
    });
  };
  const drawn = Array.from({ length: width }, (_, at) => column(at));
  const numbers = new Map(
    wholeTicks(0, mostSeconds(track), 4).map((minute) => [row(minute * 60), String(minute)] as const),
  );
  const body = Array.from({ length: rows }, (_, place) => {
    const number = numbers.get(place);
    const line = drawn.map((cells) => cells[place]).join('');
    return `${(number ?? '').padStart(numberColumn)} ${number === undefined ? '|' : '+'}${line}`.trimEnd();
  });
  const axis = textAxis(
    wholeTicks(first, came, 8).map((minute) => [Math.round(x(minute * 60)), String(minute)]),
    width,
  );
  const indent = ' '.repeat(numberColumn + 2);
  const say = (
    id: 'debrief.plot.axis' | 'debrief.plot.text-foreseen' | 'debrief.plot.band' | 'debrief.plot.came',
  ) => words(message(id), printer);
  return [
    ...body,
    ...axis.map((line) => `${indent}${line}`),
    `${indent}${say('debrief.plot.axis')}`,
    `${indent}${marks.foreseen} ${say('debrief.plot.text-foreseen')}`,
    `${indent}${marks.band} ${say('debrief.plot.band')}   ${marks.came} ${say('debrief.plot.came')}`,
  ];
};
