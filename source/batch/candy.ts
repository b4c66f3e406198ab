import { equilibriumHumidity } from '../sugar/activity.js';
import { firmnessAt, glassTransitionCelsius, pullingCelsius, spreadKelvin } from '../sugar/glass.js';
import { doctorRatio, enoughDoctor, grainRisk } from '../sugar/solubility.js';
import type { Syrup } from '../sugar/syrup.js';
import { afterInversion } from './acid.js';
import type { Batch, Pair } from './batch.js';
import { ascending, type Cooked } from './composition.js';

/** Room in which a candy is eaten when the kitchen file says nothing, Celsius. */
export const usualRoomCelsius = 20;

const doctorGrams = (syrup: Syrup): number =>
  syrup.glucoseSolids.reduce((sum, { grams }) => sum + grams, 0) + syrup.invertGrams;

/**
 * What the finished candy is like: at the floor of the window, where it should come to rest, and at the ceiling.
 * Glass transition and firmness never depend on the air's pressure: the same solids give the same candy.
 */
export const candyOf = (
  atFloor: Cooked,
  atAim: Cooked,
  atCeiling: Cooked,
  invertedFraction: number,
  roomCelsius: number,
): Batch['candy'] => {
  const [floor, aim, ceiling] = [atFloor, atAim, atCeiling].map(({ candy }) =>
    afterInversion(candy, invertedFraction),
  ) as [Syrup, Syrup, Syrup];
  const glass: Pair = ascending(glassTransitionCelsius(floor), glassTransitionCelsius(ceiling));
  const glassAtAim = glassTransitionCelsius(aim);
  const humid = [equilibriumHumidity(floor, roomCelsius), equilibriumHumidity(ceiling, roomCelsius)];
  const ratio = doctorRatio(aim);
  return {
    moistureFraction: ascending(atFloor.moistureFraction, atCeiling.moistureFraction),
    glassTransitionCelsius: glass,
    firmness: firmnessAt(roomCelsius, glassAtAim),
    firmnessRange: [
      firmnessAt(roomCelsius, glass[0] - spreadKelvin),
      firmnessAt(roomCelsius, glass[1] + spreadKelvin),
    ],
    pullsCelsius: pullingCelsius(glassAtAim),
    grainRisk: grainRisk(ratio),
    doctorRatio: Number.isFinite(ratio) ? ratio : null,
    doctorMissingGrams: Math.max(0, enoughDoctor * aim.sucroseGrams - doctorGrams(aim)),
    invertedFraction,
    equilibriumRelativeHumidity: [
      Math.min(...humid.map(([low]) => low)),
      Math.max(...humid.map(([, high]) => high)),
    ],
  };
};
