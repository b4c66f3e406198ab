import type { Cook } from '../cook/cook.js';
import type { Language } from '../units/language.js';
import { type Printer, printer } from '../units/printer.js';
import type { ClockHabit } from '../units/wall-clock.js';

/** What the person at this cook reads: in their language, numbers as on their own thermometer. */
export const printerOf = (
  { batch }: Pick<Cook, 'batch'>,
  {
    language,
    clock,
  }: { readonly language?: Language | undefined; readonly clock?: ClockHabit | undefined } = {},
): Printer =>
  printer({
    language,
    unit: batch.dial.present ? batch.dial.unit : batch.kitchen.unit,
    weights: batch.kitchen.weights,
    clock,
    toShownCelsius: (celsius) => batch.dial.toShownCelsius(celsius),
  });
