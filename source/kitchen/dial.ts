import { type Message, message } from '../texts/message.js';
import type { TemperatureUnit } from '../units/printer.js';
import { type Checks, checksOf, noChecks, thermometerFor } from './air.js';
import { type Correction, correctionOf, readingSd } from './correction.js';
import type { Kitchen, Thermometer } from './kitchen.js';

/** What one thermometer shows against the truth. The correction belongs to the thermometer, not to the kitchen. */
export type Dial = {
  readonly id: string | null;
  readonly unit: TemperatureUnit;
  readonly present: boolean;
  readonly basis: 'two points' | 'ice' | 'boiling water' | 'taken as right';
  /** Standard deviation of what is left after the correction, at candy temperatures, in kelvin. */
  readonly sdKelvin: number;
  readonly stemMillimetres: number | null;
  toTrueCelsius(shownCelsius: number): number;
  toShownCelsius(trueCelsius: number): number;
};

const none = (kitchen: Kitchen): Dial => ({
  id: null,
  unit: kitchen.unit,
  present: false,
  basis: 'taken as right',
  sdKelvin: readingSd.dial,
  stemMillimetres: null,
  toTrueCelsius: (shown) => shown,
  toShownCelsius: (celsius) => celsius,
});

/** Where candy is made, Celsius: the place on the scale at which earlier cooks compared it. */
const candyCelsius = 125;

/**
 * The correction with what earlier cooks taught of this thermometer: both weighed by how well they are known (Gelman
 * et al. 2013, Bayesian Data Analysis, eq. 2.11: normal prior, normal evidence). The whole line is moved.
 */
const taught = ({ line, basis, sdKelvin }: Correction, thermometer: Thermometer, kitchen: Kitchen) => {
  const lesson = kitchen.learned?.thermometer ?? null;
  if (lesson === null || lesson.id !== thermometer.id) return { line, basis, sdKelvin };
  const weight = sdKelvin ** 2 / (sdKelvin ** 2 + lesson.sd ** 2);
  const corrected = line.slope * candyCelsius + line.offset - candyCelsius;
  const offset = line.offset + weight * (lesson.value - corrected);
  return { line: { slope: line.slope, offset }, basis, sdKelvin: sdKelvin * Math.sqrt(1 - weight) };
};

/**
 * What the thermometer for `use` shows against the truth, by its readings in ice and in boiling water (today's before
 * those of the kitchen file). Both, with altitude or pressure: a straight line through two points. One of them: the
 * same offset everywhere. Boiling water without altitude or pressure: all of the difference is the air's, and the
 * thermometer is right. A reading that can't be ice or boiling water is not used. No thermometer: `present` is false.
 * Today's checks are those of the pot's thermometer; give none for another. What earlier cooks taught of it is weighed in.
 */
export const dialOf = (kitchen: Kitchen, use: 'pot' | 'middle', today: Checks = noChecks): Dial => {
  const thermometer = thermometerFor(kitchen, use);
  if (thermometer === null) return none(kitchen);
  const { basis, line, sdKelvin } = taught(correctionOf(kitchen, thermometer, today), thermometer, kitchen);
  return {
    id: thermometer.id,
    unit: thermometer.unit,
    present: true,
    basis,
    sdKelvin,
    stemMillimetres: thermometer.stemMillimetres,
    toTrueCelsius: (shown) => (shown - line.offset) / line.slope,
    toShownCelsius: (celsius) => line.slope * celsius + line.offset,
  };
};

/** What a plan has to say of that thermometer: readings that were not used, readings that contradict the air, none at all. */
export const dialNotes = (
  kitchen: Kitchen,
  use: 'pot' | 'middle',
  today: Checks = noChecks,
): readonly Message[] => {
  const thermometer = thermometerFor(kitchen, use);
  if (thermometer === null) return [message('kitchen.note.no-thermometer')];
  const { notes, basis } = correctionOf(kitchen, thermometer, today);
  const { id, kind } = thermometer;
  const checks = checksOf(thermometer, today);
  const unchecked =
    basis === 'taken as right' && checks.boilsShownCelsius === null && checks.iceShownCelsius === null;
  return [
    ...notes,
    ...(unchecked ? [message('kitchen.note.unchecked', { id })] : []),
    ...(kind === 'infrared' ? [message('kitchen.note.infrared', { id })] : []),
  ];
};
