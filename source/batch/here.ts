import { type Air, airNotes, airOf, type Checks, noChecks } from '../kitchen/air.js';
import { type Dial, dialNotes, dialOf } from '../kitchen/dial.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import { pressureRangePascal } from '../sugar/syrup.js';
import { saturationCelsius } from '../sugar/water.js';
import { type Message, message } from '../texts/message.js';

/** Air and the pot's thermometer, here and today, with what is odd about them. */
export type Here = { readonly air: Air; readonly dial: Dial; readonly notes: readonly Message[] };

/** The air, brought to the nearest pressure for which the boiling curve is known: a cook goes on, and is told. */
const knownAir = (air: Air): { readonly air: Air; readonly notes: readonly Message[] } => {
  const [low, high] = pressureRangePascal;
  const pressurePascal = Math.min(high, Math.max(low, air.pressurePascal));
  if (pressurePascal === air.pressurePascal) return { air, notes: [] };
  return {
    air: { ...air, pressurePascal, waterBoilsCelsius: saturationCelsius(pressurePascal) },
    notes: [message('plan.note.air', { pressurePascal: air.pressurePascal, usedPascal: pressurePascal })],
  };
};

/** `thermometer` false: it broke or stayed at home, whatever the kitchen file says; the air keeps what it showed. */
export const hereToday = (kitchen: Kitchen, checks: Checks = noChecks, thermometer = true): Here => {
  const dial = dialOf(kitchen, 'pot', checks);
  const { air, notes } = knownAir(airOf(kitchen, checks));
  return {
    air,
    dial: thermometer ? dial : { ...dial, present: false },
    notes: [
      ...notes,
      ...airNotes(kitchen, checks),
      ...(thermometer ? dialNotes(kitchen, 'pot', checks) : [message('kitchen.note.no-thermometer')]),
    ],
  };
};
