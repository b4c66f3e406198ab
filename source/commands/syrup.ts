import { airNotes, airOf } from '../kitchen/air.js';
import { defaultKitchen } from '../kitchen/default.js';
import { OutOfRange } from '../sugar/out-of-range.js';
import {
  type BoilingCurve,
  boilingCurve,
  type Syrup,
  solidsFraction,
  totalGrams,
  withWater,
} from '../sugar/syrup.js';
import { type Message, message, words } from '../texts/message.js';
import { jsonText } from '../units/escape.js';
import { parseTemperature, toCelsius } from '../units/temperature.js';
import { type CommandIo, type ExitCode, fail, plainIn } from './io.js';
import { type Read, readPlace } from './plan-options.js';
import { readItems } from './syrup-items.js';

/** Options of `syrup` as they come from the command line. */
export type SyrupOptions = {
  /** "granulated-sugar=400g", "glucose-syrup:42=200g". */
  readonly items: readonly string[];
  readonly altitude?: string | undefined;
  readonly pressure?: string | undefined;
  readonly celsius?: number | string | undefined;
  readonly solids?: number | string | undefined;
  readonly json?: boolean | undefined;
};

/** How far it is boiled: to a temperature, to a solids fraction, or as far as the water of the items says. */
type Boiled = { readonly kind: 'celsius' | 'solids'; readonly value: number } | { readonly kind: 'as it is' };

const readCelsius = (given: number | string): Read<Boiled> => {
  const read = parseTemperature(String(given));
  return read === null
    ? { problem: message('syrup.bad.celsius', { found: String(given) }) }
    : { value: { kind: 'celsius', value: toCelsius(read.value, read.unit ?? 'C') } };
};

const readSolids = (given: number | string): Read<Boiled> => {
  const typed = /^\s*(\d+\.?\d*|\.\d+)\s*(%?)\s*$/.exec(String(given));
  const value = typed === null ? Number.NaN : Number(typed[1]) / (typed[2] === '%' ? 100 : 1);
  return value > 0 && value < 1
    ? { value: { kind: 'solids', value } }
    : { problem: message('syrup.bad.solids', { found: String(given) }) };
};

const readBoiled = ({ celsius, solids }: SyrupOptions): Read<Boiled> => {
  if (celsius !== undefined && solids !== undefined) return { problem: message('syrup.bad.both') };
  if (celsius !== undefined) return readCelsius(celsius);
  return solids === undefined ? { value: { kind: 'as it is' } } : readSolids(solids);
};

const solidsOf = (boiled: Boiled, syrup: Syrup, curve: BoilingCurve): number => {
  if (boiled.kind === 'celsius') return curve.solidsAt(boiled.value);
  return boiled.kind === 'solids' ? boiled.value : (solidsFraction(syrup) ?? 0);
};

const decimals = (value: number, places: number): number => Number(value.toFixed(places));

/** What `syrup --json` prints, version 1. OutOfRange where the curve is not known. */
export const syrupJson = (syrup: Syrup, pressurePascal: number, boiled: Boiled) => {
  const curve = boilingCurve(syrup, pressurePascal);
  const solids = solidsOf(boiled, syrup, curve);
  const celsius = curve.celsiusAt(solids);
  const waterGrams =
    boiled.kind === 'as it is' ? syrup.waterGrams : (curve.dissolvedGrams * (1 - solids)) / solids;
  return {
    version: 1,
    pressurePascal: decimals(pressurePascal, 1),
    waterBoilsCelsius: decimals(curve.waterBoilsCelsius, 3),
    celsius: decimals(celsius, 3),
    solidsFraction: decimals(solids, 6),
    waterGrams: decimals(waterGrams, 3),
    totalGrams: decimals(totalGrams(withWater(syrup, waterGrams)), 3),
    elevationKelvin: decimals(celsius - curve.waterBoilsCelsius, 3),
    validRange: {
      solidsFraction: curve.validSolidsFraction.map((end) => decimals(end, 6)),
      celsius: curve.validCelsius.map((end) => decimals(end, 3)),
    },
  };
};

const computed = (
  syrup: Syrup,
  pressurePascal: number,
  boiled: Boiled,
): ReturnType<typeof syrupJson> | { readonly problem: Message } => {
  try {
    return syrupJson(syrup, pressurePascal, boiled);
  } catch (error) {
    if (error instanceof OutOfRange) return { problem: error.said };
    throw error;
  }
};

/** `kettlehand syrup`: where a syrup boils, or how much water is left in it. */
export const syrup = (options: SyrupOptions, io: CommandIo): ExitCode => {
  const items = readItems(options.items);
  if ('problem' in items) return fail(io, 2, items.problem);
  const boiled = readBoiled(options);
  if ('problem' in boiled) return fail(io, 2, boiled.problem);
  const place = readPlace(defaultKitchen, { altitude: options.altitude, pressure: options.pressure });
  if ('problem' in place) return fail(io, 2, place.problem);

  const { kitchen } = place.value;
  const { pressurePascal, from } = airOf(kitchen);
  const result = computed(items.value, pressurePascal, boiled.value);
  if ('problem' in result) return fail(io, 1, result.problem);
  if (from !== 'assumed sea level')
    for (const note of airNotes(kitchen)) io.err(`${words(note, plainIn(io))}\n`);
  io.out(
    options.json ? `${jsonText(result, 2)}\n` : `${words(message('syrup.result', result), plainIn(io))}\n`,
  );
  return 0;
};
