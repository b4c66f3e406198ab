import type { Batch } from '../batch/batch.js';
import { batchOf } from '../batch/batch-of.js';
import { begin, type Hob, knownPowers } from '../forecast/index.js';
import { middleThermometerOf } from '../kitchen/air.js';
import { readingSd } from '../kitchen/correction.js';
import type { Thermometer } from '../kitchen/kitchen.js';
import { type PhaseId, phaseIds } from '../recipe/recipe.js';
import { isBefore } from './candy.js';
import type { Cook } from './cook.js';
import type { CookEvent, Happened, Stamp } from './event.js';

export type Opened = Extract<CookEvent, { kind: 'opened' }> & Stamp;

/** Seconds by which a thermometer lags behind a syrup that it stands in. Our judgement by kind. */
const lagSeconds = { dial: 12, digital: 4, glass: 10, infrared: 1 } as const;
/**
 * What single readings in bubbling syrup scatter by, kelvin: eye, whole degrees, and where the stem hangs. Of what is
 * left after a check (kitchen/correction.ts) this share stays the same from reading to reading: a scale that is not
 * straight, an eye that looks from above. Our judgement.
 */
const readingSdKelvin = { dial: 0.65, digital: 0.35, glass: 0.5, infrared: 1.5 } as const;
const stayingShare = 0.4;

/** The error that a whole cook's readings have in common, kelvin. */
const stayingSdKelvin = ({ sdKelvin, basis }: Batch['dial'], kind: Thermometer['kind']): number => {
  if (basis === 'taken as right') return sdKelvin;
  const own = readingSd[kind];
  const ofTheCheck = Math.sqrt(Math.max(0, sdKelvin ** 2 - own ** 2));
  return Math.min(sdKelvin, Math.hypot(stayingShare * own, ofTheCheck));
};

export const hobOf = (batch: Batch): Hob => {
  const kind = batch.kitchen.thermometers.find((one) => one.use !== 'middle')?.kind ?? 'dial';
  return {
    stove: batch.kitchen.stove,
    otherGrams: Math.max(0, batch.totalGrams - batch.waterGrams - batch.solidsGrams),
    dialSdKelvin: stayingSdKelvin(batch.dial, kind),
    dialLagSeconds: lagSeconds[kind],
    readingSdKelvin: readingSdKelvin[kind],
    stageFromCelsius: batch.stageFromCelsius,
    startSolidsFraction: batch.solidsGrams / (batch.solidsGrams + batch.waterGrams),
    celsiusAtStart: batch.kitchen.room.celsius ?? 20,
    knownPowers: knownPowers(batch.kitchen),
    learnedCarryOverKelvin: batch.kitchen.learned?.carryOverKelvin?.value ?? null,
  };
};

/** Pause points that count as confirmed when a cook is opened in a later phase. */
const provenBefore: readonly (readonly [string, PhaseId])[] = [
  ['heat.pause', 'dissolve'],
  ['pour.pause', 'pour'],
  ['pour.path', 'fold'],
  ['hands.pause', 'pull'],
];

/** Confirmed before this program heard of the cook. */
const confirmedBefore = { answer: 'yes', t: Number.NEGATIVE_INFINITY } as const;

/** What a list of events begins with. Throws a TypeError if that is not `opened`. */
export const openingOf = ([first]: readonly Happened[]): Opened => {
  if (first?.kind !== 'opened') throw new TypeError('a cook begins with the event "opened"');
  return first;
};

/** The cook as it stands right after `opened`. */
export const openCook = (event: Opened): Cook => {
  const batch = batchOf(event.recipe, event.kitchen);
  const hob = hobOf(batch);
  const phase = event.from ?? 'mix';
  const proven = provenBefore.filter(([, first]) => !isBefore(phase, first));
  const past = phaseIds.filter((one) => isBefore(one, phase));
  return {
    log: [event],
    length: 1,
    batch,
    hob,
    rehearsal: event.seed !== null,
    from: event.from,
    t: event.t,
    heardAt: event.t,
    candy: { [phase]: 1 },
    enteredAt: { [phase]: event.t },
    leftAt: event.from === null ? {} : Object.fromEntries(past.map((one) => [one, event.t])),
    done: {},
    answers: Object.fromEntries(proven.map(([id]) => [id, confirmedBefore])),
    stopped: false,
    heat: null,
    potOn: null,
    lidOn: null,
    wateredAt: null,
    pouredAt: isBefore('pour', phase) ? event.t : null,
    boilsSince: null,
    thermometer: batch.dial.present,
    middleThermometer: middleThermometerOf(batch.kitchen) !== null,
    checks: { iceShownCelsius: null, boilsShownCelsius: null },
    estimate: begin(hob),
    lastReading: null,
    readBefore: [],
    leftAlone: [],
    readingsTaken: 0,
    doubt: null,
    lastTest: null,
    takeOffCelsius: batch.target.takeOffCelsius,
    movedKelvin: 0,
    offSince: null,
    offBy: null,
    reachedAt: null,
    nearSince: null,
    hands: event.kitchen.hands,
    middle: null,
    warmedAt: null,
    droops: null,
    armsOut: false,
    portions: 1,
    troubles: [],
    raised: {},
    undoes: null,
    unsettled: [],
    gap: null,
    voided: [],
    weighed: null,
    tenPieces: null,
    counted: null,
  };
};
