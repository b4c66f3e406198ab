import type { Dial } from '../kitchen/dial.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import { pressureAtAltitude, seaLevelPascal } from '../sugar/atmosphere.js';
import { saturationCelsius } from '../sugar/water.js';
import type { Message } from '../texts/message.js';
import type { Batch } from './batch.js';
import type { BatchOptions } from './batch-of.js';

/** Air and thermometer, here and today. */
export const hereToday = (
  kitchen: Kitchen,
  options: BatchOptions,
): { readonly air: Batch['air']; readonly dial: Dial; readonly notes: readonly Message[] } => {
  const pressurePascal =
    kitchen.altitudeMetres !== null
      ? pressureAtAltitude(kitchen.altitudeMetres)
      : (kitchen.pressurePascal ?? seaLevelPascal);
  return {
    air: {
      pressurePascal,
      altitudeMetres: kitchen.altitudeMetres,
      waterBoilsCelsius: saturationCelsius(pressurePascal),
      from:
        kitchen.altitudeMetres !== null
          ? 'altitude'
          : kitchen.pressurePascal !== null
            ? 'pressure'
            : 'assumed sea level',
    },
    dial: {
      id: null,
      unit: kitchen.unit,
      present: options.thermometer ?? true,
      basis: 'taken as right',
      sdKelvin: 2,
      stemMillimetres: kitchen.thermometers[0]?.stemMillimetres ?? null,
      toTrueCelsius: (celsius) => celsius,
      toShownCelsius: (celsius) => celsius,
    },
    notes: [],
  };
};
