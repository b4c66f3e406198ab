import type { Weights } from '../units/household.js';
import type { Language } from '../units/language.js';
import type { TemperatureUnit } from '../units/printer.js';
import type { ClockHabit } from '../units/wall-clock.js';
import type { Learned } from './learned.js';

export type StoveKind = 'gas' | 'coil' | 'glass-ceramic' | 'induction';
/** `bare`: practised adults, said so; `visitors`: adults who may be doing it for the first time, the default. */
export type HandsKind = 'bare' | 'visitors' | 'gloved' | 'children';

/** A thermometer as it is written down: readings in ice and in boiling water as Celsius shown by it. */
export type Thermometer = {
  readonly id: string;
  readonly kind: 'dial' | 'digital' | 'glass' | 'infrared';
  readonly use: 'pot' | 'middle' | 'both';
  readonly unit: TemperatureUnit;
  readonly iceShownCelsius: number | null;
  readonly boilsShownCelsius: number | null;
  /** ISO date of the last check. */
  readonly checked: string | null;
  readonly stemMillimetres: number | null;
};

/** Where we make it. `null` where nothing is known. */
export type Kitchen = {
  readonly altitudeMetres: number | null;
  readonly pressurePascal: number | null;
  readonly stove: StoveKind;
  /** The knob's labels, weakest first. */
  readonly heat: readonly string[];
  readonly pot: { readonly litres: number | null; readonly diameterMillimetres: number | null };
  /** Empty: there is no thermometer. */
  readonly thermometers: readonly Thermometer[];
  readonly room: { readonly celsius: number | null; readonly humidity: number | null };
  readonly unit: TemperatureUnit;
  readonly hands: HandsKind;
  /** What is read there; left out where nobody said. */
  readonly language?: Language | undefined;
  /** What is weighed with there; grams where nobody said. */
  readonly weights?: Weights | undefined;
  /** How times of day are read there; left out where nobody said. */
  readonly clock?: ClockHabit | undefined;
  /** What a person said instead of it, and what earlier cooks taught; left out where there is nothing. */
  readonly learned?: Learned | undefined;
};
