import { saturationCelsius } from '../sugar/water.js';
import { type Message, message } from '../texts/message.js';
import { airOf, type Checks, checksOf, inside, plausibleBoilingCelsius, plausibleIceCelsius } from './air.js';
import type { Dial } from './dial.js';
import type { Kitchen, Thermometer } from './kitchen.js';

type Kind = Thermometer['kind'];

/**
 * Standard deviation of one reading at candy temperatures after the best correction, kelvin. Our judgement: a candy
 * dial is marked every 2 to 5 degrees F and read at an angle; a digital probe resolves 0.1 K and is good to about 1 K
 * at 125 C; a glass tube is read to half a mark; infrared sees foam, and the emissivity of foam is not that of syrup.
 */
export const readingSd: Readonly<Record<Kind, number>> = { dial: 1.5, digital: 0.7, glass: 1, infrared: 4 };

/** Where candy is made, Celsius: the reach of every extrapolation below. */
const candyCelsius = 125;
/** How well a person sees the ice point and the boiling point on it, kelvin: a Food Code fact sheet gives 0.1 F for ice and 1 F for boiling water; half of the latter taken. */
const checkSd = 0.3;
/** Spread of scale errors that a single point can't show, as a share of the distance from it: our judgement. */
const scaleSd = 0.01;
/** Spread of offsets among thermometers that nobody checked, kelvin: our judgement, half of a common error of 3 K. */
const uncheckedSd: Readonly<Record<Kind, number>> = { dial: 3, digital: 1, glass: 1.5, infrared: 3 };
/** How far a reading of boiling water may be from what the air says before the thermometer or the air is doubted, kelvin. */
const plausibleError: Readonly<Record<Kind, number>> = { dial: 5, digital: 2.5, glass: 3, infrared: 6 };
/** How much the whole scale may be stretched and still be a thermometer. */
const plausibleSlope = [0.9, 1.1] as const;
/** Lowest mark of a candy dial, Celsius: most begin at 100 F, so that ice reads at the stop. Common practice, no source. */
const belowDialCelsius = 20;

type Line = { readonly slope: number; readonly offset: number };

export type Correction = {
  readonly basis: Dial['basis'];
  /** shown = slope x true + offset, Celsius. */
  readonly line: Line;
  readonly sdKelvin: number;
  readonly notes: readonly Message[];
};

const together = (...spreads: readonly number[]): number => Math.hypot(...spreads);

type Read = {
  readonly ice: number | null;
  readonly boils: number | null;
  readonly notes: readonly Message[];
};

/** The readings that can be used, and a word for each that can't. */
const readingsOf = (thermometer: Thermometer, today: Checks): Read => {
  const { iceShownCelsius, boilsShownCelsius } = checksOf(thermometer, today);
  const notes: Message[] = [];
  const iceGood = iceShownCelsius !== null && inside(iceShownCelsius, plausibleIceCelsius);
  const boilsGood = boilsShownCelsius !== null && inside(boilsShownCelsius, plausibleBoilingCelsius);
  const { id } = thermometer;
  if (iceShownCelsius !== null && !iceGood)
    notes.push(
      iceShownCelsius >= belowDialCelsius
        ? message('kitchen.note.ice-below-scale', { id, shown: iceShownCelsius, unit: thermometer.unit })
        : message('kitchen.note.ice-not-used', { id, shown: iceShownCelsius, unit: thermometer.unit }),
    );
  if (boilsShownCelsius !== null && !boilsGood)
    notes.push(
      message('kitchen.note.boil-not-used', { id, shown: boilsShownCelsius, unit: thermometer.unit }),
    );
  return { ice: iceGood ? iceShownCelsius : null, boils: boilsGood ? boilsShownCelsius : null, notes };
};

/** A line through ice and boiling water; its spread at candy temperature is the spread of the two, carried on to there. */
const throughBoth = (ice: number, boils: number, waterBoils: number): { line: Line; sd: number } => {
  const slope = (boils - ice) / waterBoils;
  const reach = candyCelsius / waterBoils;
  return { line: { slope, offset: ice }, sd: together(checkSd * reach, checkSd * (reach - 1)) };
};

const offsetOnly = (offset: number, from: number): { line: Line; sd: number } => ({
  line: { slope: 1, offset },
  sd: together(checkSd, scaleSd * (candyCelsius - from)),
});

const withoutAir = (thermometer: Thermometer, read: Read): Correction => {
  const own = readingSd[thermometer.kind];
  if (read.ice !== null) {
    const { line, sd } = offsetOnly(read.ice, 0);
    return { basis: 'ice', line, sdKelvin: together(own, sd), notes: read.notes };
  }
  // The air pressure came from this thermometer, so its error is in both and cancels where targets are shifted by it.
  if (read.boils !== null)
    return {
      basis: 'taken as right',
      line: { slope: 1, offset: 0 },
      sdKelvin: together(own, scaleSd * (candyCelsius - read.boils), checkSd),
      notes: read.notes,
    };
  return {
    basis: 'taken as right',
    line: { slope: 1, offset: 0 },
    sdKelvin: together(own, uncheckedSd[thermometer.kind]),
    notes: read.notes,
  };
};

const withAir = (thermometer: Thermometer, read: Read, waterBoils: number): Correction => {
  const { ice, boils } = read;
  if (boils === null) return withoutAir(thermometer, read);
  const own = readingSd[thermometer.kind];
  const { id, kind, unit } = thermometer;
  const notes = [...read.notes];
  if (Math.abs(boils - (ice ?? 0) - waterBoils) > plausibleError[kind])
    notes.push(message('kitchen.note.boil-disagrees', { id, shown: boils, waterBoils, unit }));
  const both = ice === null ? null : throughBoth(ice, boils, waterBoils);
  if (both !== null && inside(both.line.slope, plausibleSlope))
    return { basis: 'two points', line: both.line, sdKelvin: together(own, both.sd), notes };
  const { line, sd } = offsetOnly(boils - waterBoils, waterBoils);
  return { basis: 'boiling water', line, sdKelvin: together(own, sd), notes };
};

/** The best correction of a thermometer by what is known of it and of the air. */
export const correctionOf = (kitchen: Kitchen, thermometer: Thermometer, today: Checks): Correction => {
  const read = readingsOf(thermometer, today);
  const air = airOf(kitchen, today);
  // Boiling water that no air explains is the thermometer's error, even where only sea level can be assumed.
  const unexplained = air.from === 'assumed sea level' && read.boils !== null;
  return air.from === 'pressure' || air.from === 'altitude' || unexplained
    ? withAir(thermometer, read, saturationCelsius(air.pressurePascal))
    : withoutAir(thermometer, read);
};
