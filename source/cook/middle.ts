import { dialOf } from '../kitchen/dial.js';
import { toCelsius } from '../units/temperature.js';
import type { Cook, DoubtReason, Reading } from './cook.js';
import type { CookEvent, Stamp } from './event.js';
import { handLimit } from './phases/gates.js';
import { syrupRangeCelsius } from './readings.js';

/** Candy does not get colder than the room it lies in; a thermometer and a room are known to this, kelvin. Our judgement. */
const roomSlackKelvin = 2;
const usualRoomCelsius = 20;
/** Colder than this it is too stiff to wait for hands: more likely the number belongs to the other scale. Our judgement. */
const stiffCelsius = 32;

/** The middle's true temperature by what the thermometer shows, both Celsius. */
export const fromDial = (cook: Cook, shownCelsius: number): number => {
  const own = dialOf(cook.batch.kitchen, 'middle');
  const dial = own.present && own.id !== cook.batch.dial.id ? own : cook.batch.dial;
  // Towards the safe side: the correction only ever raises what hands would touch.
  return Math.max(shownCelsius, dial.toTrueCelsius(shownCelsius));
};

const doubtAbout = (cook: Cook, celsius: number, otherCelsius: number): DoubtReason | null => {
  if (celsius < syrupRangeCelsius[0] || celsius > syrupRangeCelsius[1]) return 'out of range';
  const fits = otherCelsius > celsius && otherCelsius <= cook.takeOffCelsius + roomSlackKelvin;
  if (celsius < stiffCelsius && fits) return 'other scale';
  const room = cook.batch.kitchen.room.celsius ?? usualRoomCelsius;
  return celsius < room - roomSlackKelvin ? 'colder than the room' : null;
};

/** A measure of the middle of the mass. One that can't be right opens nothing to hands until it is borne out. */
export const afterMiddle = (cook: Cook, event: Extract<CookEvent, { kind: 'reading' }> & Stamp): Cook => {
  const celsius = fromDial(cook, toCelsius(event.value, event.unit));
  const otherCelsius = fromDial(cook, toCelsius(event.value, event.unit === 'F' ? 'C' : 'F'));
  const reading: Reading = { seq: event.seq, t: event.t, celsius };
  const measured = { ...cook, thermometer: true, middleThermometer: true };
  const because = doubtAbout(cook, celsius, otherCelsius);
  const again = cook.doubt?.of === 'middle' && Math.abs(cook.doubt.celsius - celsius) <= roomSlackKelvin;
  if (because === null || (again && because !== 'out of range'))
    return { ...measured, middle: reading, doubt: null };
  return {
    ...measured,
    middle: celsius > handLimit(cook) ? reading : cook.middle,
    doubt: {
      ...reading,
      of: 'middle',
      since: event.t,
      because,
      otherScaleCelsius: because === 'other scale' ? otherCelsius : null,
      asks: event.by === 'hands',
    },
  };
};
