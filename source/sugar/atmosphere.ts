import { within } from './out-of-range.js';

/**
 * The standard atmosphere below 11 km.
 * Source: ISO 2533:1975, Standard Atmosphere (same constants as the ICAO and US 1976 standard atmospheres).
 */
export const seaLevelPascal = 101_325;
const seaLevelKelvin = 288.15;
const lapseKelvinPerMetre = 0.0065;
const gravity = 9.80665;
const airGasConstant = 287.05287;
const earthRadiusMetres = 6_356_766;
const exponent = gravity / (airGasConstant * lapseKelvinPerMetre);

export const altitudeRangeMetres = [-500, 9000] as const;

const geopotentialMetres = (metres: number): number =>
  (earthRadiusMetres * metres) / (earthRadiusMetres + metres);

/** Mean air pressure at an altitude above sea level, pascal; -500 to 9000 m, OutOfRange outside. ISO 2533:1975. */
export const pressureAtAltitude = (metres: number): number => {
  const height = geopotentialMetres(within('metres', metres, ...altitudeRangeMetres));
  return seaLevelPascal * (1 - (lapseKelvinPerMetre * height) / seaLevelKelvin) ** exponent;
};

const pressureRange = [
  pressureAtAltitude(altitudeRangeMetres[1]),
  pressureAtAltitude(altitudeRangeMetres[0]),
] as const;

/** The altitude whose mean air pressure is `pascal`, metres; OutOfRange outside what -500 to 9000 m can have. */
export const altitudeAtPressure = (pascal: number): number => {
  const ratio = within('pascal', pascal, ...pressureRange, 1e-6) / seaLevelPascal;
  const height = (seaLevelKelvin / lapseKelvinPerMetre) * (1 - ratio ** (1 / exponent));
  return (earthRadiusMetres * height) / (earthRadiusMetres - height);
};
