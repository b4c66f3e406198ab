import type { Batch } from '../batch/batch.js';
import { thermometerFor } from '../kitchen/air.js';
import type { Kitchen, Thermometer } from '../kitchen/kitchen.js';
import { type Stage, stages } from '../sugar/stages.js';
import { type BoilOptions, boilOptions } from './boil-options.js';
import { type Chance, chanceFrom } from './chance.js';
import type { SurpriseName } from './surprises.js';

/** What a thermometer truly shows: its known line, and an error that nobody knows, growing away from boiling water. */
export type TrueDial = {
  readonly unit: Kitchen['unit'];
  readonly offsetKelvin: number;
  /** Kelvin for each kelvin above boiling water. */
  readonly stretch: number;
  readonly noiseSdKelvin: number;
};

/** One rehearsal's pot, hob, slab and thermometers as they truly are. Kelvin, grams, watts, metres. */
export type Conditions = {
  readonly boil: BoilOptions;
  /** Air pressure moves boiling and stages together by this, beside what the kitchen file says. */
  readonly airShiftKelvin: number;
  /** The window and the stages, true Celsius. */
  readonly windowCelsius: readonly [number, number];
  readonly stageFromCelsius: Readonly<Record<Stage, number>>;
  readonly dial: TrueDial | null;
  readonly middleDial: TrueDial | null;
  /** These fingers in this water find a drop firmer (+) than it is, every time, beside what single drops scatter by. */
  readonly testerKelvin: number;
  readonly pot: { readonly heightMetres: number; readonly areaSquareMetres: number };
  /** Foam stands as high as the steam rises in this many seconds. */
  readonly foamSeconds: number;
  readonly roomCelsius: number;
  readonly batchGrams: number;
};

type Kind = Thermometer['kind'];

/** What a person reads off by, and what an unchecked one is off by, kelvin. Our judgement. */
const readingNoise: Readonly<Record<Kind, number>> = { dial: 0.5, digital: 0.2, glass: 0.4, infrared: 1.5 };
const uncheckedOffset: Readonly<Record<Kind, number>> = {
  dial: 2.5,
  digital: 0.8,
  glass: 1.2,
  infrared: 2.5,
};
/** What is left after a check, kelvin (a dial is read at an angle), and how far a scale is stretched (kitchen/correction.ts). Our judgement. */
const checkedOffset: Readonly<Record<Kind, number>> = { dial: 0.5, digital: 0.3, glass: 0.4, infrared: 1.5 };
const stretchSd = 0.01;
const lagSeconds: Readonly<Record<Kind, number>> = { dial: 12, digital: 4, glass: 10, infrared: 1 };
/** Of the tester's 2.5 K: what the same hands in the same water repeat, and what a drop scatters by. Our judgement. */
const testerSd = { staying: 1.5, scatter: 2 } as const;
const eightFahrenheit = 8 / 1.8;

const within = (chance: Chance, low: number, high: number): number => low + (high - low) * chance.even();

const trueDial = (batch: Batch, use: 'pot' | 'middle', chance: Chance): TrueDial | null => {
  const found = thermometerFor(batch.kitchen, use) ?? thermometerFor(batch.kitchen, 'pot');
  if (found === null) return null;
  const checked = found.iceShownCelsius !== null || found.boilsShownCelsius !== null;
  return {
    unit: found.unit,
    offsetKelvin: (checked ? checkedOffset : uncheckedOffset)[found.kind] * chance.normal(),
    stretch: stretchSd * chance.normal(),
    noiseSdKelvin: readingNoise[found.kind],
  };
};

/**
 * Foam rises with the steam; molasses, honey, milk and cream hold it longer, fat breaks it. Set so that four times the
 * volume holds an ordinary boil (batch/pot.ts). Our judgement.
 */
const foamSecondsOf = (batch: Batch, chance: Chance): number => {
  const sticky = batch.recipe.ingredients.some((one) => one.scorches);
  const fat = batch.fatGrams > 5;
  return (sticky ? 4 : 2.2) * (fat ? 0.8 : 1) * within(chance, 0.8, 1.2);
};

const usualPot = { litres: 4, diameterMetres: 0.2 };

const potOf = (batch: Batch): Conditions['pot'] => {
  const litres = batch.pot.haveLitres ?? Math.max(usualPot.litres, batch.pot.neededLitres);
  const across = (batch.kitchen.pot.diameterMillimetres ?? usualPot.diameterMetres * 1000) / 1000;
  const areaSquareMetres = (Math.PI / 4) * across ** 2;
  return { heightMetres: litres / 1000 / areaSquareMetres, areaSquareMetres };
};

const hobFactor: Readonly<Partial<Record<SurpriseName, number>>> = { 'hot-hob': 1.6, 'weak-hob': 0.55 };

/** The rehearsal that a seed makes of a batch: the same for the same seed. */
export const conditionsOf = (batch: Batch, seed: number, surprise: SurpriseName | null): Conditions => {
  const chance = chanceFrom(seed);
  const { stove } = batch.kitchen;
  const kind = thermometerFor(batch.kitchen, 'pot')?.kind ?? 'dial';
  const airShiftKelvin = 0.2 * chance.normal();
  const stageFromCelsius = Object.fromEntries(
    stages.map((stage) => [stage, batch.stageFromCelsius[stage] + airShiftKelvin]),
  ) as Record<Stage, number>;
  const pot = potOf(batch);
  const usual = boilOptions({
    curve: batch.curve,
    stageFromCelsius,
    stove,
    waterGrams: batch.waterGrams * (1 + 0.03 * chance.normal()),
    otherGrams: Math.max(0, batch.totalGrams - batch.waterGrams - batch.solidsGrams),
  });
  const boil: BoilOptions = {
    ...usual,
    curveShiftKelvin: airShiftKelvin + 0.8 * chance.normal(),
    roomCelsius: batch.kitchen.room.celsius ?? 20,
    startCelsius: batch.kitchen.room.celsius ?? 20,
    fullWatts: usual.fullWatts * within(chance, 0.85, 1.25) * ((surprise && hobFactor[surprise]) ?? 1),
    levelExponent: within(chance, 0.8, 1.3),
    wander: { sd: within(chance, 0.02, 0.06), seconds: within(chance, 120, 600) },
    lossWattsPerKelvin: within(chance, 0.6, 1.3),
    surfaceSquareMetres: pot.areaSquareMetres,
    baseWattsPerKelvin: within(chance, 20, 45),
    testerSdKelvin: testerSd.scatter,
    dial: {
      lagSeconds: lagSeconds[kind] * within(chance, 0.7, 1.3),
      noiseSdKelvin: 0,
      offsetKelvin: 0,
      stepKelvin: 0,
    },
  };
  const known = trueDial(batch, 'pot', chance);
  const side = chance.even() < 0.5 ? -1 : 1;
  const dial =
    known !== null && surprise === 'thermometer-off'
      ? { ...known, offsetKelvin: known.offsetKelvin + side * eightFahrenheit }
      : known;
  const [floor, ceiling] = batch.target.todayCelsius;
  return {
    boil,
    airShiftKelvin,
    windowCelsius: [floor + airShiftKelvin, ceiling + airShiftKelvin],
    stageFromCelsius,
    dial,
    middleDial: trueDial(batch, 'middle', chance),
    testerKelvin: testerSd.staying * chance.normal(),
    pot,
    foamSeconds: foamSecondsOf(batch, chance),
    roomCelsius: boil.roomCelsius,
    batchGrams: batch.yield.cookedGrams,
  };
};
