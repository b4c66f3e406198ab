import type { BoilingCurve } from '../sugar/syrup.js';
import type { Pair } from './batch.js';

/** Where in the window the syrup should come to rest, from its floor (0) to its ceiling (1). Our judgement. */
const restsAt = { usual: 1 / 2, damp: 2 / 3 } as const;

/**
 * Relative humidity of the room from which the upper end of the window is asked for. 60 % is the usual cut-off
 * (common practice, no source); cooking to the upper end on damp days: Exploratorium, The Science of Candy.
 */
export const dampRoomHumidity = 0.6;

export type TodaysTarget = {
  readonly todayCelsius: Pair;
  /** Where the syrup should come to rest. */
  readonly aimCelsius: number;
  readonly takeOffCelsius: number;
  /** The recipe's window reaches beyond what the curve knows; the nearest end of it was taken. */
  readonly beyondCurve: boolean;
};

const between = (value: number, [low, high]: Pair): number => Math.min(high, Math.max(low, value));

/**
 * The window of a recipe, here and today, and where to take the pot off.
 * The pot is lifted early by what its own heat still adds, so that the syrup comes to rest in the middle of the
 * window: what thermometer, hands and pot are off by is as large upwards as downwards, and a window is hardly wider than
 * that (npm run bench:scenarios). In a damp room it comes to rest two thirds up. Celsius; carry-over in kelvin.
 */
export const targetToday = (
  seaLevelCelsius: Pair,
  curve: BoilingCurve,
  carryOverKelvin: number,
  roomHumidity: number | null,
): TodaysTarget => {
  const valid: Pair = curve.validCelsius;
  const shifted: Pair = [curve.fromSeaLevel(seaLevelCelsius[0]), curve.fromSeaLevel(seaLevelCelsius[1])];
  const todayCelsius: Pair = [between(shifted[0], valid), between(shifted[1], valid)];
  const share = roomHumidity !== null && roomHumidity >= dampRoomHumidity ? restsAt.damp : restsAt.usual;
  const aimCelsius = todayCelsius[0] + share * (todayCelsius[1] - todayCelsius[0]);
  return {
    todayCelsius,
    aimCelsius,
    takeOffCelsius: Math.max(curve.waterBoilsCelsius, aimCelsius - carryOverKelvin),
    beyondCurve: shifted[0] < valid[0] || shifted[1] > valid[1],
  };
};
