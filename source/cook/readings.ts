import { type Stage, stageWithin } from '../sugar/stages.js';
import type { TemperatureUnit } from '../units/printer.js';
import { toCelsius } from '../units/temperature.js';
import { headline } from './candy.js';
import type { Cook, Doubt, Reading } from './cook.js';
import type { By } from './event.js';
import { tooHotSoSoon } from './first-reading.js';
import { potIsOff } from './phases/phase.js';

/** The stage of a true syrup temperature at today's air pressure. */
export const stageShown = (cook: Pick<Cook, 'batch'>, celsius: number): Stage =>
  stageWithin(celsius, cook.batch.stageFromCelsius);

/** A room in which somebody pulls candy. Our judgement. */
const roomRangeCelsius = [0, 50] as const;
export const isRoomCelsius = (celsius: number): boolean =>
  celsius >= roomRangeCelsius[0] && celsius <= roomRangeCelsius[1];

/** No thermometer for the kitchen, and no syrup in a pot, shows less or more than this. */
export const syrupRangeCelsius = [-5, 185] as const;

/** A slip of the eye that is not worth a question, kelvin; then what a hob and a room can do in a second. Our judgement. */
const slackKelvin = 4;
const fastestRise = { warming: 1.2, boiling: 0.35 } as const;
const fastestFall = { onTheRing: 0.1, offTheRing: 0.6 } as const;
/** Boiling syrup is never this far below the boiling point of water. */
const coldBoilKelvin = 4;

/** Whether no syrup on the heat boils at this, degrees Celsius. */
export const isTooColdToBoil = (cook: Cook, celsius: number): boolean =>
  !potIsOff(cook) && celsius < cook.batch.air.waterBoilsCelsius - coldBoilKelvin;

const boiling = (cook: Cook): boolean =>
  cook.boilsSince !== null && headline(cook) === 'boil' && !potIsOff(cook);

/** What would make this reading impossible after the last one; null if nothing does. */
const doubtAbout = (cook: Cook, celsius: number, t: number): Doubt['because'] | null => {
  if (celsius < syrupRangeCelsius[0] || celsius > syrupRangeCelsius[1]) return 'out of range';
  const before = cook.lastReading;
  if (before === null) {
    if (headline(cook) === 'boil' && isTooColdToBoil(cook, celsius)) return 'too cold to boil';
    return tooHotSoSoon(cook, celsius, t) ? 'too hot so soon' : null;
  }
  const seconds = Math.max(0, t - before.t);
  const rise = celsius - before.celsius;
  const rate = before.celsius >= cook.batch.air.waterBoilsCelsius ? fastestRise.boiling : fastestRise.warming;
  if (rise > slackKelvin + rate * seconds) return 'jump';
  const watered = (cook.wateredAt ?? Number.NEGATIVE_INFINITY) >= before.t;
  const fall = potIsOff(cook) || !boiling(cook) ? fastestFall.offTheRing : fastestFall.onTheRing;
  // Off the ring the syrup cools around a cold spoon or a lifted thermometer: no fault.
  if (-rise > slackKelvin + fall * seconds && !potIsOff(cook) && !watered) return 'fall';
  return null;
};

/** The same number on the other scale, true Celsius, if it would have been believed. */
const onOtherScale = (cook: Cook, value: number, unit: TemperatureUnit, t: number): number | null => {
  const shown = toCelsius(value, unit === 'F' ? 'C' : 'F');
  const celsius = cook.batch.dial.toTrueCelsius(shown);
  return doubtAbout(cook, celsius, t) === null && celsius > 0 ? celsius : null;
};

export type Understood = { readonly reading: Reading; readonly doubt: Doubt | null };

/** What a reading of the syrup means: its true temperature, and whether it can be right. */
export const understand = (
  cook: Cook,
  typed: { seq: number; t: number; value: number; unit: TemperatureUnit; by: By },
): Understood => {
  const shownCelsius = toCelsius(typed.value, typed.unit);
  const celsius = cook.batch.dial.toTrueCelsius(shownCelsius);
  const reading: Reading = { seq: typed.seq, t: typed.t, celsius };
  const because = doubtAbout(cook, celsius, typed.t);
  if (because === null) return { reading, doubt: null };
  const otherScaleCelsius = onOtherScale(cook, typed.value, typed.unit, typed.t);
  return {
    reading,
    doubt: {
      ...reading,
      of: 'syrup',
      since: typed.t,
      because: otherScaleCelsius === null ? because : 'other scale',
      otherScaleCelsius,
      asks: typed.by === 'hands',
    },
  };
};

/** A second reading near a doubted one says the same. */
export const saysTheSame = (doubt: Doubt, reading: Reading): boolean =>
  Math.abs(reading.celsius - doubt.celsius) <=
  slackKelvin + fastestRise.boiling * Math.max(0, reading.t - doubt.t);

/**
 * For so long a doubted reading has to be said again before it is believed, seconds. Somebody who reads twice has looked
 * twice; a probe that was knocked or lifted writes the same wrong number every second. Our judgement.
 */
const borneOutAfter: Readonly<Record<By, number>> = { hands: 0, pot: 0, feed: 15 };

/** Whether a doubted reading that says the same as the one before it is believed now. */
export const isBorneOut = ({ since }: Doubt, { t, by }: { readonly t: number; readonly by: By }): boolean =>
  t - since >= borneOutAfter[by];
