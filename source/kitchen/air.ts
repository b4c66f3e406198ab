import {
  altitudeAtPressure,
  altitudeRangeMetres,
  pressureAtAltitude,
  seaLevelPascal,
} from '../sugar/atmosphere.js';
import { pressureRangePascal } from '../sugar/syrup.js';
import { saturationCelsius, saturationPascal } from '../sugar/water.js';
import { type Message, message } from '../texts/message.js';
import type { Kitchen, Thermometer } from './kitchen.js';

/** The air over the pot. Pascal, metres (the altitude of that pressure in the standard atmosphere), Celsius. */
export type Air = {
  readonly pressurePascal: number;
  readonly altitudeMetres: number | null;
  readonly waterBoilsCelsius: number;
  readonly from: 'pressure' | 'altitude' | 'boiling water' | 'assumed sea level';
};

/** Readings of the pot's thermometer in ice and in boiling water taken today, Celsius as it showed them. */
export type Checks = { readonly iceShownCelsius: number | null; readonly boilsShownCelsius: number | null };

export const noChecks: Checks = { iceShownCelsius: null, boilsShownCelsius: null };

/** Weather moves the pressure by about 2 kPa; 3 is past that, so one of the two is meant otherwise. Our judgement. */
const disagreementPascal = 3000;

/** Readings of "boiling water" that can be water boiling somewhere on Earth, on a thermometer that can still be corrected. */
export const plausibleBoilingCelsius = [65, 110] as const;
/** Readings of "ice" that can be a bad thermometer in good ice water. */
export const plausibleIceCelsius = [-10, 10] as const;

export const inside = (value: number, [low, high]: readonly [number, number]): boolean =>
  value >= low && value <= high;

/** The thermometer that a use reads: one for that use, else one for both; null if there is none. */
export const thermometerFor = (kitchen: Kitchen, use: 'pot' | 'middle'): Thermometer | null =>
  kitchen.thermometers.find((one) => one.use === use) ??
  kitchen.thermometers.find((one) => one.use === 'both') ??
  null;

/** What goes into the middle of the mass: its own, else that of the pot. */
export const middleThermometerOf = (kitchen: Kitchen): Thermometer | null =>
  thermometerFor(kitchen, 'middle') ?? thermometerFor(kitchen, 'pot');

/** Today's readings where there are any, else what the kitchen file has of the thermometer. */
export const checksOf = (thermometer: Thermometer | null, today: Checks): Checks => ({
  iceShownCelsius: today.iceShownCelsius ?? thermometer?.iceShownCelsius ?? null,
  boilsShownCelsius: today.boilsShownCelsius ?? thermometer?.boilsShownCelsius ?? null,
});

const usable = (value: number | null, range: readonly [number, number]): number | null =>
  value !== null && inside(value, range) ? value : null;

/**
 * Boiling water alone: the thermometer is taken as right, less what ice showed to be off. Null if no kitchen has such
 * air: then the thermometer is wrong, and not the air.
 */
const boiledAt = (kitchen: Kitchen, today: Checks): number | null => {
  const checks = checksOf(thermometerFor(kitchen, 'pot'), today);
  const boils = usable(checks.boilsShownCelsius, plausibleBoilingCelsius);
  const celsius = boils === null ? null : boils - (usable(checks.iceShownCelsius, plausibleIceCelsius) ?? 0);
  return celsius !== null && inside(saturationPascal(celsius), pressureRangePascal) ? celsius : null;
};

const altitudeOrNull = (pascal: number): number | null => {
  const [low, high] = altitudeRangeMetres;
  return pascal > pressureAtAltitude(low) || pascal < pressureAtAltitude(high)
    ? null
    : altitudeAtPressure(pascal);
};

const airAt = (pressurePascal: number, altitudeMetres: number | null, from: Air['from']): Air => ({
  pressurePascal,
  altitudeMetres,
  waterBoilsCelsius: saturationCelsius(pressurePascal),
  from,
});

const disagree = ({ altitudeMetres, pressurePascal }: Kitchen): boolean =>
  altitudeMetres !== null &&
  pressurePascal !== null &&
  Math.abs(pressureAtAltitude(altitudeMetres) - pressurePascal) > disagreementPascal;

/**
 * The air pressure of a kitchen. In this order: a measured pressure, unless the altitude contradicts it (a weather
 * report reduces it to sea level; then the altitude is used); the altitude, by the standard atmosphere (ISO 2533);
 * water boiling on the pot's thermometer; else sea level. OutOfRange for an altitude outside -500 to 9000 m.
 */
export const airOf = (kitchen: Kitchen, today: Checks = noChecks): Air => {
  const { altitudeMetres, pressurePascal } = kitchen;
  if (pressurePascal !== null && !disagree(kitchen))
    return airAt(pressurePascal, altitudeMetres ?? altitudeOrNull(pressurePascal), 'pressure');
  if (altitudeMetres !== null) return airAt(pressureAtAltitude(altitudeMetres), altitudeMetres, 'altitude');
  const boils = boiledAt(kitchen, today);
  if (boils !== null) {
    const pascal = saturationPascal(boils);
    return airAt(pascal, altitudeOrNull(pascal), 'boiling water');
  }
  return airAt(seaLevelPascal, null, 'assumed sea level');
};

/** What a plan has to say of its air pressure. */
export const airNotes = (kitchen: Kitchen, today: Checks = noChecks): readonly Message[] => {
  const air = airOf(kitchen, today);
  if (air.from === 'assumed sea level') return [message('kitchen.note.sea-level')];
  if (air.from === 'boiling water')
    return [
      message('kitchen.note.air-from-boiling', {
        celsius: air.waterBoilsCelsius,
        altitudeMetres: air.altitudeMetres,
      }),
    ];
  if (!disagree(kitchen) || kitchen.altitudeMetres === null || kitchen.pressurePascal === null) return [];
  const { altitudeMetres, pressurePascal } = kitchen;
  return [
    message('kitchen.note.pressure-reduced', {
      altitudeMetres,
      pressurePascal,
      usedPascal: air.pressurePascal,
    }),
  ];
};
