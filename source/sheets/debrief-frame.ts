import { scaleLinear } from 'd3-scale';
import type { Pair } from '../batch/batch.js';
import { isBefore } from '../cook/candy.js';
import { handLimit } from '../cook/phases/gates.js';
import { stageToCelsius, type TestTold } from '../lessons/reading-story.js';
import type { Story } from '../lessons/story.js';
import { type Stage, stages } from '../sugar/stages.js';

/** What the curve shows and between which ends; Celsius true, seconds since the opening. */
export type CurveFrame = {
  readonly from: number;
  readonly to: number;
  readonly low: number;
  readonly high: number;
  /** Above it the scale is finer: the whole way from the cold pot, and the last degrees still apart. */
  readonly breakCelsius: number;
  readonly window: Pair;
  readonly stages: readonly { readonly name: Stage; readonly celsius: number }[];
  readonly handLimit: number | null;
  readonly tests: readonly { readonly told: TestTold; readonly celsius: number }[];
};

const kelvinAbove = 4;
const kelvinBelowBoil = 4;

/** Where a test without a thermometer is drawn: in the middle of what fingers felt. */
const celsiusOfTest = (test: TestTold, story: Story, high: number): number | null => {
  if (test.celsius !== null) return test.celsius;
  if (test.outcome === 'unsure') return null;
  const { stageFromCelsius, boil } = story.batch;
  const from = Math.max(boil.startsCelsius, stageFromCelsius[test.outcome]);
  const to = stageToCelsius(test.outcome, stageFromCelsius);
  return Math.max(from, Math.min(high, (from + to) / 2));
};

/** The frame of the curve; null where nothing was read and nothing was tested. */
export const curveFrame = (story: Story): CurveFrame | null => {
  const { readings, tests, spans, pouredAt, batch, peak } = story;
  if (readings.length === 0 && tests.length === 0) return null;
  const warmed = spans.find(({ phase }) => !isBefore(phase, 'dissolve'))?.from ?? 0;
  const believed = readings.filter((one) => one.believed);
  const times = [
    ...readings.map(({ t }) => t),
    ...tests.map(({ t }) => t),
    ...(pouredAt === null ? [] : [pouredAt]),
  ];
  const first = Math.min(warmed, ...times);
  const last = Math.max(...times);
  const ceiling = batch.target.todayCelsius[1];
  const high = Math.max(ceiling, peak?.celsius ?? 0, ...believed.map(({ celsius }) => celsius)) + kelvinAbove;
  const placed = tests.flatMap((told) => {
    const celsius = celsiusOfTest(told, story, high);
    return celsius === null ? [] : [{ told, celsius: Math.min(celsius, high) }];
  });
  const middles = believed.some(({ of }) => of === 'middle');
  const breakCelsius = Math.min(batch.boil.startsCelsius, batch.target.todayCelsius[0] - 6) - kelvinBelowBoil;
  const coldest = Math.min(
    breakCelsius - 10,
    ...believed.map(({ celsius }) => celsius),
    ...(middles ? [handLimit(story.cook)] : []),
  );
  return {
    from: Math.max(0, first - 60),
    to: last + Math.max(60, (last - first) * 0.04),
    low: Math.floor((coldest - 4) / 10) * 10,
    high,
    breakCelsius,
    window: batch.target.todayCelsius,
    stages: stages.flatMap((name) => {
      const celsius = batch.stageFromCelsius[name];
      return celsius > breakCelsius && celsius < high ? [{ name, celsius }] : [];
    }),
    handLimit: middles ? handLimit(story.cook) : null,
    tests: placed,
  };
};

/** The share of the height that the way up to the break gets. */
const coarseShare = 0.3;

export type CurveScales = {
  readonly x: (seconds: number) => number;
  readonly y: (celsius: number) => number;
};

/** Seconds to a place in [0, width], Celsius to a place in [0, height] with the hottest at 0. */
export const curveScales = (frame: CurveFrame, width: number, height: number): CurveScales => {
  const x = scaleLinear().domain([frame.from, frame.to]).range([0, width]).clamp(true);
  const y = scaleLinear()
    .domain([frame.low, frame.breakCelsius, frame.high])
    .range([height, height * (1 - coarseShare), 0])
    .clamp(true);
  return { x: (seconds) => x(seconds), y: (celsius) => y(celsius) };
};

/** Whole minutes for the axis, about `count` of them. */
export const minuteTicks = (frame: CurveFrame, count: number): readonly number[] =>
  scaleLinear()
    .domain([frame.from / 60, frame.to / 60])
    .ticks(count)
    .filter((minute) => Number.isInteger(minute))
    .map((minute) => minute * 60);

/** When something went wrong or was warned of, seconds since the opening. */
export const alarmsOf = ({ troubles, warnings }: Story): readonly number[] => [
  ...troubles.map(({ at }) => at),
  ...warnings.filter(({ level }) => level !== 'note').map(({ raisedAt }) => raisedAt),
];
