import type { Kitchen } from './kitchen.js';

/** What is taken where a kitchen says nothing: sea level, a coil, no pot known, visitors' hands, and an unchecked dial in Fahrenheit. */
export const defaultKitchen: Kitchen = {
  altitudeMetres: null,
  pressurePascal: null,
  stove: 'coil',
  heat: ['low', 'medium', 'high'],
  pot: { litres: null, diameterMillimetres: null },
  thermometers: [
    {
      id: 'thermometer',
      kind: 'dial',
      use: 'both',
      unit: 'F',
      iceShownCelsius: null,
      boilsShownCelsius: null,
      checked: null,
      stemMillimetres: null,
    },
  ],
  room: { celsius: null, humidity: null },
  unit: 'F',
  hands: 'visitors',
};
