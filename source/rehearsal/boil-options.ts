import type { StoveKind } from '../kitchen/kitchen.js';
import type { Stage } from '../sugar/stages.js';
import type { BoilingCurve } from '../sugar/syrup.js';

/** One pot on one stove, as it truly is: what a forecast has to find out. Grams, joules, watts, kelvin, seconds. */
export type BoilOptions = {
  /** The curve that recipe and kitchen compute. */
  readonly curve: BoilingCurve;
  /** The true syrup boils this much higher. */
  readonly curveShiftKelvin: number;
  readonly waterGrams: number;
  /** Fat and inert. */
  readonly otherGrams: number;
  readonly startCelsius: number;
  readonly roomCelsius: number;
  readonly stove: StoveKind;
  /** The burner at its highest, gross. */
  readonly fullWatts: number;
  /** Power at a level of the knob: full times level to this power. */
  readonly levelExponent: number;
  /** The burner wanders around its setting: relative standard deviation, and over how many seconds. */
  readonly wander: { readonly sd: number; readonly seconds: number };
  readonly lossWattsPerKelvin: number;
  readonly surfaceSquareMetres: number;
  readonly wallJoulePerKelvin: number;
  readonly baseJoulePerKelvin: number;
  /** From the pot's base to the syrup. */
  readonly baseWattsPerKelvin: number;
  readonly dial: {
    readonly lagSeconds: number;
    readonly noiseSdKelvin: number;
    /** Reads high (+). */
    readonly offsetKelvin: number;
    /** The finest it can be read; 0: as fine as wanted. */
    readonly stepKelvin: number;
  };
  readonly testerSdKelvin: number;
  /** Lower bounds of the stages in this air, true Celsius. */
  readonly stageFromCelsius: Readonly<Record<Stage, number>>;
};

/** Ring and what lies between it and the pot. No measured values were found: our judgement, from masses and sizes. */
export type Ring = {
  /** Share of the burner's power that arrives in the pot's base at once; the rest heats the ring. */
  readonly straightShare: number;
  /** Share of the burner's power that never reaches pot or ring. */
  readonly wastedShare: number;
  readonly joulePerKelvin: number;
  readonly toPotWattsPerKelvin: number;
  readonly toRoomWattsPerKelvin: number;
};

/**
 * Gas: flame on the base, a light grate. Coil: 0.35 kg of sheathed wire that has to glow first. Glass-ceramic: ribbon,
 * insulation and 4 mm of glass. Induction: the base itself, the glass warmed from above. Gas reaches a pot with about
 * 40 % of its heat, induction with 85 % (United States Department of Energy test procedures, from memory).
 */
export const rings: Readonly<Record<StoveKind, Ring>> = {
  gas: {
    straightShare: 1,
    wastedShare: 0.6,
    joulePerKelvin: 120,
    toPotWattsPerKelvin: 0.6,
    toRoomWattsPerKelvin: 0.8,
  },
  coil: {
    straightShare: 0,
    wastedShare: 0.1,
    joulePerKelvin: 180,
    toPotWattsPerKelvin: 2.8,
    toRoomWattsPerKelvin: 0.35,
  },
  'glass-ceramic': {
    straightShare: 0,
    wastedShare: 0.1,
    joulePerKelvin: 290,
    toPotWattsPerKelvin: 3.6,
    toRoomWattsPerKelvin: 0.5,
  },
  induction: {
    straightShare: 1,
    wastedShare: 0.15,
    joulePerKelvin: 250,
    toPotWattsPerKelvin: 2,
    toRoomWattsPerKelvin: 0.6,
  },
};

/** Flat rings are given heavy flat bases: 0.7 kg steel on gas, 1.3 kg on a ring that glows. Our judgement. */
const usualBaseJoulePerKelvin: Readonly<Record<StoveKind, number>> = {
  gas: 350,
  induction: 450,
  coil: 660,
  'glass-ceramic': 660,
};

type Needed = Pick<BoilOptions, 'curve' | 'waterGrams' | 'otherGrams' | 'stove' | 'stageFromCelsius'>;

/** A plain pot of 20 cm in a plain kitchen; anything can be said otherwise. Our judgement. */
export const boilOptions = (needed: Needed & Partial<BoilOptions>): BoilOptions => ({
  curveShiftKelvin: 0,
  startCelsius: 20,
  roomCelsius: 20,
  fullWatts: needed.stove === 'gas' ? 2200 : 1150,
  levelExponent: 1,
  wander: { sd: 0.03, seconds: 240 },
  lossWattsPerKelvin: 1,
  surfaceSquareMetres: 0.031,
  wallJoulePerKelvin: 150,
  baseJoulePerKelvin: usualBaseJoulePerKelvin[needed.stove],
  baseWattsPerKelvin: 28,
  dial: { lagSeconds: 10, noiseSdKelvin: 0.4, offsetKelvin: 0, stepKelvin: 0 },
  testerSdKelvin: 2.5,
  ...needed,
});
