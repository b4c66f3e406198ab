import type { TemperatureUnit } from '../units/printer.js';

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
