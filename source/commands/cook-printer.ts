import type { Cook } from '../cook/cook.js';
import { type Printer, printer } from '../units/printer.js';

/** Numbers as the person at this cook reads them: on their own thermometer. */
export const printerOf = ({ batch }: Pick<Cook, 'batch'>): Printer =>
  printer({
    unit: batch.dial.present ? batch.dial.unit : batch.kitchen.unit,
    toShownCelsius: (celsius) => batch.dial.toShownCelsius(celsius),
  });
