import { gasConstant, saturationPascal, waterMolarGrams, zeroCelsiusKelvin } from '../sugar/water.js';
import type { Pair } from './batch.js';
import { dampRoomHumidity } from './target.js';

/** What the room's air does to an unwrapped piece. */
export type RoomAir = {
  readonly humidity: number;
  /** Seconds until an unwrapped piece feels sticky, a wide band; null: this air dries it or leaves it alone. */
  readonly stickySeconds: Pair | null;
  /** The upper end of the window is aimed at. */
  readonly damp: boolean;
};

/**
 * Water that makes a surface sticky, g/m2, and how fast still room air brings it, m/s. The product is a rough band:
 * a tenth of a millimetre of candy going from 7 to 12 % water takes up about 8 g/m2; mass transfer to a small piece in
 * still air is 2-5 mm/s by the analogy with heat transfer at 3-6 W/(m2 K). Our judgement; no measured value was found.
 */
const stickyGramsPerSquareMetre: Pair = [5, 20];
const transferMetresPerSecond: Pair = [0.002, 0.005];

/** In frost the vapour of 0 °C is taken: a little too much, so that a piece is never promised to stay dry for longer. */
const vapourGramsPerCubicMetre = (roomCelsius: number): number => {
  const celsius = Math.max(0.01, roomCelsius);
  return (saturationPascal(celsius) * waterMolarGrams) / (gasConstant * (celsius + zeroCelsiusKelvin));
};

/**
 * How soon a piece goes sticky unwrapped: the room's air brings water as long as it is damper than the air with which
 * the candy is in balance. Humidities as fractions.
 */
export const roomAirFor = (
  equilibriumRelativeHumidity: Pair,
  roomCelsius: number,
  humidity: number,
): RoomAir => {
  const middle = (equilibriumRelativeHumidity[0] + equilibriumRelativeHumidity[1]) / 2;
  const excess = humidity - middle;
  const damp = humidity >= dampRoomHumidity;
  if (excess <= 0) return { humidity, stickySeconds: null, damp };
  const perMetre = vapourGramsPerCubicMetre(roomCelsius) * excess;
  return {
    humidity,
    damp,
    stickySeconds: [
      stickyGramsPerSquareMetre[0] / (transferMetresPerSecond[1] * perMetre),
      stickyGramsPerSquareMetre[1] / (transferMetresPerSecond[0] * perMetre),
    ],
  };
};
