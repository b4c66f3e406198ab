import {
  type HeatAlongCurve,
  heatAlongCurve,
  otherJoulePerGramKelvin,
  solutionJoulePerGramKelvin,
} from '../sugar/heat.js';
import type { BoilingCurve } from '../sugar/syrup.js';
import type { Hob } from './forecast.js';
import { clamp } from './numbers.js';

/**
 * The boiling curve as a road in heat: joules since the batch began to boil as it was weighed (0 there, negative where
 * more water is in the pot), against the temperature at which it boils.
 */
export type Path = {
  /** Where the batch as weighed begins to boil. */
  readonly startCelsius: number;
  readonly highestCelsius: number;
  readonly lowestJoules: number;
  readonly highestJoules: number;
  celsiusAt(joules: number): number;
  joulesAt(celsius: number): number;
  /** Joules that warm everything in the pot, and the pot, by one kelvin without boiling anything away. */
  warmingAt(joules: number): number;
  /** Joules that one gram of water of 15 °C takes to reach the boil and leave as steam. */
  readonly joulesPerAddedGram: number;
  /** The share of it that only warms. */
  readonly joulesPerWarmedGram: number;
};

type Point = { readonly celsius: number; readonly joules: number; readonly warming: number };

/** A pot of 1.2 kg steel, at 0.5 J/(g K). Our judgement: the pot's mass is not asked for. */
const potJoulePerKelvin = 600;
const waterJoulePerGramKelvin = 4.2;
const addedWaterCelsius = 15;
const stepKelvin = 0.4;
const mostPoints = 400;
const wetterPoints = 40;

const startOf = (curve: BoilingCurve, hob: Hob): number =>
  clamp(hob.startSolidsFraction, 0.12, curve.validSolidsFraction[1] - 0.01);

/** Evenly in water up to the start of the boil, evenly in temperature from there on. */
const solidsAlong = (
  curve: BoilingCurve,
  start: number,
  heat: HeatAlongCurve,
): { solids: number[]; startIndex: number } => {
  const [lowest, highest] = heat.validSolidsFraction;
  const wettest = Math.max(lowest, start / 3);
  const wetter = Array.from({ length: wetterPoints }, (_, index) => {
    const share = index / wetterPoints;
    return 1 / (1 / wettest + share * (1 / start - 1 / wettest));
  });
  const startCelsius = curve.celsiusAt(start);
  const top = curve.celsiusAt(highest);
  const count = clamp(Math.ceil((top - startCelsius) / stepKelvin), 2, mostPoints);
  const drier = Array.from({ length: count - 1 }, (_, index) =>
    curve.solidsAt(startCelsius + ((index + 1) / count) * (top - startCelsius)),
  );
  return { solids: [...wetter, start, ...drier, highest], startIndex: wetter.length };
};

const pointsAlong = (curve: BoilingCurve, hob: Hob): Point[] => {
  const other = clamp(hob.otherGrams, 0, 1e6);
  const heat = heatAlongCurve(curve, other);
  const start = startOf(curve, hob);
  const { solids, startIndex } = solidsAlong(curve, start, heat);
  const points = solids.map((fraction) => {
    const celsius = curve.celsiusAt(fraction);
    return {
      celsius,
      joules: heat.jouleAtSolids(fraction) + potJoulePerKelvin * celsius,
      warming:
        (curve.dissolvedGrams / fraction) * solutionJoulePerGramKelvin(fraction, celsius) +
        other * otherJoulePerGramKelvin +
        potJoulePerKelvin,
    };
  });
  const zero = points[startIndex]?.joules ?? 0;
  return points.map((point) => ({ ...point, joules: point.joules - zero }));
};

/** One quantity at all points of the road, ascending for `joules` and `celsius`: read thousands of times a forecast. */
type Column = Float64Array;

const entry = (column: Column, place: number): number => column[place] ?? 0;

/** The last point at or below `value`, but the last of all. */
const placeOf = (column: Column, value: number): number => {
  let low = 0;
  let high = column.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (entry(column, middle) <= value) low = middle;
    else high = middle;
  }
  return low;
};

/** Straight between neighbours, straight on beyond the ends. */
const interpolate = (from: Column, to: Column, value: number): number => {
  const low = placeOf(from, value);
  const [start, end] = [entry(from, low), entry(from, low + 1)];
  const width = end - start;
  const share = width > 0 ? (value - start) / width : 0;
  const reached = entry(to, low);
  return reached + share * (entry(to, low + 1) - reached);
};

const layOut = (curve: BoilingCurve, hob: Hob): Path => {
  const points = pointsAlong(curve, hob);
  const column = (of: keyof Point): Column => Float64Array.from(points, (point) => point[of]);
  const [celsius, joules, warming] = [column('celsius'), column('joules'), column('warming')];
  const last = points.length - 1;
  const [leastJoules, mostJoules] = [entry(joules, 0), entry(joules, last)];
  const startCelsius = interpolate(joules, celsius, 0);
  const joulesPerWarmedGram = waterJoulePerGramKelvin * (startCelsius - addedWaterCelsius);
  return {
    startCelsius,
    highestCelsius: entry(celsius, last),
    lowestJoules: leastJoules,
    highestJoules: mostJoules,
    celsiusAt: (done) => interpolate(joules, celsius, done),
    joulesAt: (value) => interpolate(celsius, joules, value),
    // Beyond the ends it stays.
    warmingAt: (done) => interpolate(joules, warming, clamp(done, leastJoules, mostJoules)),
    joulesPerWarmedGram,
    joulesPerAddedGram: joulesPerWarmedGram + curve.evaporationJoulePerGram(startOf(curve, hob)),
  };
};

/**
 * The road only depends on curve and hob, so it is laid out once for each pair; nothing else is remembered. The one that
 * was asked for last is asked for again with every reading.
 */
const lastOf = new WeakMap<Hob, { readonly curve: BoilingCurve; readonly path: Path }>();
const laidOut = new WeakMap<BoilingCurve, ReadonlyMap<string, Path>>();
const mostRoads = 4;

const roadOf = (curve: BoilingCurve, hob: Hob): Path => {
  const key = `${hob.startSolidsFraction} ${hob.otherGrams}`;
  const roads = laidOut.get(curve) ?? new Map<string, Path>();
  const known = roads.get(key);
  if (known !== undefined) return known;
  const path = layOut(curve, hob);
  laidOut.set(curve, new Map([...[...roads].slice(1 - mostRoads), [key, path]]));
  return path;
};

export const pathOf = (curve: BoilingCurve, hob: Hob): Path => {
  const last = lastOf.get(hob);
  if (last?.curve === curve) return last.path;
  const path = roadOf(curve, hob);
  lastOf.set(hob, { curve, path });
  return path;
};
