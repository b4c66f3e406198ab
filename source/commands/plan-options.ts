import type { Want } from '../batch/scaled-for.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import { pressureRangePascal } from '../sugar/syrup.js';
import { type Message, message } from '../texts/message.js';
import { isWeights } from '../units/household.js';
import { parseAltitude, parsePressure, parseVolume } from '../units/parse.js';

/** Options of `plan` as they come from the command line: numbers may still be text. */
export type PlanOptions = {
  readonly altitude?: string | undefined;
  readonly pressure?: string | undefined;
  readonly pieces?: number | string | undefined;
  readonly guests?: number | string | undefined;
  readonly children?: number | string | undefined;
  readonly batch?: number | string | undefined;
  readonly pot?: string | undefined;
  readonly weights?: string | undefined;
  readonly json?: boolean | undefined;
  readonly explain?: boolean | undefined;
  /** When the pulling begins in front of the audience. */
  readonly at?: string | undefined;
  readonly batches?: string | undefined;
  /** One person does all of it. */
  readonly alone?: boolean | undefined;
  readonly card?: boolean | undefined;
  readonly html?: boolean | undefined;
};

export type Read<T> = { readonly value: T } | { readonly problem: Message };

/** The highest kitchen for which the boiling curve is known, and the lowest place on land. */
export const altitudeRangeMetres = [-450, 5500] as const;
/** Bounds of what can be asked for. Our judgement: above a home batch, below a factory. */
const most = { pieces: 5000, guests: 500, batch: 20 } as const;
const potRangeLitres = [0.3, 30] as const;

const inRange = (value: number, [low, high]: readonly [number, number]): boolean =>
  value >= low && value <= high;

export const readAltitude = (typed: string): Read<number> => {
  const altitude = parseAltitude(typed);
  if (altitude.kind === 'problem') return { problem: altitude.problem };
  const [low, high] = altitudeRangeMetres;
  return inRange(altitude.metres, [low, high])
    ? { value: altitude.metres }
    : { problem: message('plan.bad.altitude', { found: typed, low, high }) };
};

export const readPressure = (typed: string): Read<number> => {
  const pressure = parsePressure(typed);
  if (pressure.kind === 'problem') return { problem: pressure.problem };
  const [lowPascal, highPascal] = pressureRangePascal;
  return inRange(pressure.pascal, pressureRangePascal)
    ? { value: pressure.pascal }
    : { problem: message('plan.bad.pressure', { found: typed, lowPascal, highPascal }) };
};

const readPot = (typed: string): Read<number> => {
  const volume = parseVolume(typed);
  if (volume.kind === 'problem') return { problem: volume.problem };
  const litres = volume.millilitres / 1000;
  const [low, high] = potRangeLitres;
  return inRange(litres, potRangeLitres)
    ? { value: litres }
    : { problem: message('plan.bad.pot', { found: typed, low, high }) };
};

type Counted = 'pieces' | 'guests' | 'children' | 'batch';

const readCount = (option: Counted, given: number | string): Read<number> => {
  const found = String(given).trim();
  const value =
    typeof given === 'number' ? given : /^[+-]?(\d+\.?\d*|\.\d+)$/.test(found) ? Number(found) : Number.NaN;
  const whole = option !== 'batch';
  const highest = option === 'children' ? most.guests : most[option];
  const lowest = option === 'children' ? 0 : Number.MIN_VALUE;
  return value >= lowest && value <= highest && (!whole || Number.isInteger(value))
    ? { value }
    : { problem: message('plan.bad.count', { option, found, whole, most: highest }) };
};

const readGuests = (guests: number | string, children: number | string | undefined): Read<Want> => {
  const all = readCount('guests', guests);
  if ('problem' in all) return all;
  const young = children === undefined ? { value: 0 } : readCount('children', children);
  if ('problem' in young) return young;
  return young.value > all.value
    ? { problem: message('plan.bad.children', { guests: all.value, children: young.value }) }
    : { value: { kind: 'guests', guests: all.value, children: young.value } };
};

/** How much to make; null: as the recipe is written. A pot alone says it too; beside another it only bounds it. */
export const readWant = (options: PlanOptions, potLitres: number | null): Read<Want | null> => {
  const { pieces, guests, children, batch } = options;
  const given = (['pieces', 'guests', 'batch'] as const).filter((option) => options[option] !== undefined);
  if (given.length > 1) return { problem: message('plan.bad.several', { options: given }) };
  if (guests !== undefined) return readGuests(guests, children);
  if (children !== undefined) return { problem: message('plan.bad.children-alone') };
  if (pieces !== undefined) {
    const count = readCount('pieces', pieces);
    return 'problem' in count ? count : { value: { kind: 'pieces', pieces: count.value } };
  }
  if (batch !== undefined) {
    const factor = readCount('batch', batch);
    return 'problem' in factor ? factor : { value: { kind: 'batch', factor: factor.value } };
  }
  return { value: potLitres === null ? null : { kind: 'pot', litres: potLitres } };
};

/**
 * The kitchen with what the command line says of place, pot and weights. An altitude given alone replaces the file's place,
 * pressure and all; a pressure is set against the file's altitude, so that one reduced to sea level is noticed.
 */
export const readPlace = (
  kitchen: Kitchen,
  options: PlanOptions,
): Read<{ kitchen: Kitchen; potLitres: number | null }> => {
  let place = kitchen;
  if (options.altitude !== undefined) {
    const altitude = readAltitude(options.altitude);
    if ('problem' in altitude) return altitude;
    place = { ...place, altitudeMetres: altitude.value, pressurePascal: null };
  }
  if (options.pressure !== undefined) {
    const pressure = readPressure(options.pressure);
    if ('problem' in pressure) return pressure;
    place = { ...place, pressurePascal: pressure.value };
  }
  if (options.weights !== undefined) {
    const found = options.weights.trim().toLowerCase();
    if (!isWeights(found)) return { problem: message('plan.bad.weights', { found: options.weights }) };
    place = { ...place, weights: found };
  }
  if (options.pot === undefined) return { value: { kitchen: place, potLitres: null } };
  const pot = readPot(options.pot);
  if ('problem' in pot) return pot;
  const samePot = kitchen.pot.litres === pot.value;
  return {
    value: {
      kitchen: {
        ...place,
        pot: { litres: pot.value, diameterMillimetres: samePot ? kitchen.pot.diameterMillimetres : null },
      },
      potLitres: pot.value,
    },
  };
};
