import { Document } from 'yaml';
import { fromCelsius, type TemperatureUnit } from '../units/temperature.js';
import type { Kitchen, Thermometer } from './kitchen.js';
import { saidByPerson } from './learned.js';
import { learnedBlock } from './learned-fields.js';

const tidy = (value: number, decimals: number): number => Number(value.toFixed(decimals));

const temperature = (celsius: number, unit: TemperatureUnit): string =>
  `${tidy(fromCelsius(celsius, unit), 1)} ${unit}`;

const known = (fields: Readonly<Record<string, unknown>>): Record<string, unknown> =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== null && value !== undefined));

const unlessEmpty = (fields: Record<string, unknown>): Record<string, unknown> | null =>
  Object.keys(fields).length === 0 ? null : fields;

const thermometerFields = ({
  id,
  kind,
  use,
  unit,
  iceShownCelsius,
  boilsShownCelsius,
  checked,
  stemMillimetres,
}: Thermometer) =>
  known({
    id,
    kind,
    use,
    unit,
    ice: iceShownCelsius === null ? null : tidy(fromCelsius(iceShownCelsius, unit), 1),
    boils: boilsShownCelsius === null ? null : tidy(fromCelsius(boilsShownCelsius, unit), 1),
    checked,
    stem: stemMillimetres === null ? null : `${tidy(stemMillimetres, 1)} mm`,
  });

/** A knob from 1 to n is written as n. */
const heatField = (heat: readonly string[]): number | readonly string[] =>
  heat.length > 1 && heat.every((label, place) => label === String(place + 1)) ? heat.length : heat;

/** A kitchen as the file that `parseKitchen` reads back: what is not known is left out. Lengths to 0.1 mm, temperatures to 0.1 degree. */
export const kitchenToYaml = (kitchen: Kitchen): string => {
  const { altitudeMetres, pressurePascal, pot, room, thermometers } = kitchen;
  const fields = known({
    'kettlehand-kitchen': 1,
    altitude: altitudeMetres === null ? null : `${tidy(altitudeMetres, 1)} m`,
    pressure: pressurePascal === null ? null : `${tidy(pressurePascal / 100, 1)} hPa`,
    stove: kitchen.stove,
    heat: heatField(kitchen.heat),
    pot: unlessEmpty(
      known({
        volume: pot.litres === null ? null : `${tidy(pot.litres, 2)} l`,
        diameter: pot.diameterMillimetres === null ? null : `${tidy(pot.diameterMillimetres / 10, 2)} cm`,
      }),
    ),
    thermometers: thermometers.map(thermometerFields),
    room: unlessEmpty(
      known({
        temperature: room.celsius === null ? null : temperature(room.celsius, kitchen.unit),
        humidity: room.humidity === null ? null : `${tidy(room.humidity * 100, 0)} %`,
      }),
    ),
    unit: kitchen.unit,
    hands: kitchen.hands,
    language: kitchen.language,
    weights: kitchen.weights,
    clock: kitchen.clock,
    learned: learnedBlock(saidByPerson(kitchen.learned)),
  });
  return new Document(fields).toString({ lineWidth: 110 });
};
