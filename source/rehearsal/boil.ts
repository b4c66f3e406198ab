import { type ColdWaterOutcome, coldWaterOutcomes } from '../sugar/stages.js';
import { curveTable } from './boil-curve.js';
import { type BoilOptions, rings } from './boil-options.js';
import { chanceFrom } from './chance.js';
import { baseShare, offSurface } from './thickening.js';

export { type BoilOptions, boilOptions } from './boil-options.js';

/** The pot as it truly is; no cook ever sees it. */
export type TrueState = {
  readonly seconds: number;
  /** The syrup; boiling point and water left. */
  readonly celsius: number;
  readonly boilsCelsius: number;
  readonly waterGrams: number;
  readonly steamGrams: number;
  readonly addedGrams: number;
  readonly baseCelsius: number;
  readonly ringCelsius: number;
  /** What the thermometer has warmed to, before offset and noise. */
  readonly dialCelsius: number;
  /** The burner's gross power now, and the heat that passes from base to syrup. */
  readonly burnerWatts: number;
  readonly intoSyrupWatts: number;
  /** Heat into the syrup less all that it loses other than by boiling. */
  readonly netWatts: number;
  readonly potOn: boolean;
  readonly lidOn: boolean;
  readonly level: number;
  /** Since the start, counted from 0 °C: burner and added water = rise of what is stored + lost + gone with the steam. */
  readonly energy: {
    readonly broughtJoule: number;
    readonly storedJoule: number;
    readonly lostJoule: number;
    readonly steamJoule: number;
  };
};

/** A simulated pot. Time only passes in `advance`; the same seed and calls give the same pot. */
export type Pot = {
  advance(seconds: number): void;
  /** 0 (off) to 1 (the knob's highest). */
  setHeat(level: number): void;
  setPot(on: boolean): void;
  setLid(on: boolean): void;
  addWater(grams: number, celsius?: number): void;
  /** Puts the thermometer's reading together: lag, offset, scatter, scale. Each call scatters anew. */
  dialCelsius(): number;
  coldWater(): ColdWaterOutcome;
  state(): TrueState;
};

export const stepSeconds = 0.25;
const waterJoulePerGramKelvin = 4.2;
/** So that the sum with its water meets the solution's specific heat at 85 % and 110 °C (Llano-Restrepo 2005). */
const dissolvedJoulePerGramKelvin = 2.5;
const otherJoulePerGramKelvin = 2;
const roomVapourPascal = 1000;
/** Clausius and Clapeyron: heat of evaporation over the gas constant, kelvin. */
const vapourKelvin = 4900;
/** The bare base on a trivet: 0.03 m2 at 16 W/(m2 K). Our judgement. */
const trivetWattsPerKelvin = 0.5;

export const simulate = (options: BoilOptions, seed: number): Pot => {
  const chance = chanceFrom(seed);
  const table = curveTable(options.curve);
  const ring = rings[options.stove];
  const dissolved = options.curve.dissolvedGrams;

  let seconds = 0;
  let unspent = 0;
  let level = 0;
  let potOn = true;
  let lidOn = false;
  let water = options.waterGrams;
  let steam = 0;
  let added = 0;
  let syrup = options.startCelsius;
  let base = options.startCelsius;
  let ringHeat = options.roomCelsius;
  let dial = options.roomCelsius;
  let wander = options.wander.sd * chance.normal();
  let intoSyrup = 0;
  let sideLoss = 0;
  let brought = 0;
  let lost = 0;
  let steamHeat = 0;

  const boils = (): number => table.celsiusAt(water) + options.curveShiftKelvin;
  const capacity = (): number =>
    dissolved * dissolvedJoulePerGramKelvin +
    water * waterJoulePerGramKelvin +
    options.otherGrams * otherJoulePerGramKelvin +
    options.wallJoulePerKelvin;
  /** Water in the solution, mass over mass. */
  const waterShare = (): number => water / (water + dissolved);
  const stored = (): number =>
    capacity() * syrup + options.baseJoulePerKelvin * base + ring.joulePerKelvin * ringHeat;
  const burner = (): number =>
    level <= 0 ? 0 : options.fullWatts * level ** options.levelExponent * Math.max(0.2, 1 + wander);

  /** Grams leave as steam at the syrup's temperature and take their heat along. */
  const evaporate = (grams: number): void => {
    const leaving = Math.min(grams, Math.max(0, water - table.leastWaterGrams));
    const heat = leaving * table.evaporationJoulePerGram(water);
    water -= leaving;
    steam += leaving;
    steamHeat += heat + leaving * waterJoulePerGramKelvin * syrup;
    syrup -= heat / capacity();
  };

  /** What is above the boiling point leaves as steam, or is given to the room under a lid, where it returns. */
  const boil = (): void => {
    const above = syrup - boils();
    if (above <= 0) return;
    if (lidOn || water <= table.leastWaterGrams) {
      if (!lidOn) return;
      lost += above * capacity();
      syrup -= above;
      return;
    }
    const perGram = table.evaporationJoulePerGram(water) / capacity() + table.kelvinPerGram(water);
    evaporate(above / perGram);
  };

  const steamOff = (step: number): void => {
    const below = syrup - boils();
    if (lidOn || below >= -0.01) return;
    const pressure =
      options.curve.pressurePascal *
      Math.exp(-vapourKelvin * (1 / (syrup + 273.15) - 1 / (boils() + 273.15)));
    const flux = offSurface(Math.max(0, pressure - roomVapourPascal), waterShare());
    evaporate(step * flux * options.surfaceSquareMetres);
  };

  /** Heat between the ring, the base and the room; the ring is stiff, so it is moved along its exponential. */
  const warmRing = (step: number, power: number): number => {
    const coupling = potOn ? ring.toPotWattsPerKelvin : 0;
    const sum = coupling + ring.toRoomWattsPerKelvin;
    const intoRing = power * (1 - ring.straightShare);
    const rest = (intoRing + coupling * base + ring.toRoomWattsPerKelvin * options.roomCelsius) / sum;
    const after = rest + (ringHeat - rest) * Math.exp((-sum * step) / ring.joulePerKelvin);
    // The mean over the step follows from the ring's own balance, so that no heat is lost in it.
    const mean =
      (intoRing * step -
        ring.joulePerKelvin * (after - ringHeat) +
        (coupling * base + ring.toRoomWattsPerKelvin * options.roomCelsius) * step) /
      (sum * step);
    ringHeat = after;
    lost += step * ring.toRoomWattsPerKelvin * (mean - options.roomCelsius);
    return coupling * (mean - base);
  };

  const tick = (step: number): void => {
    const kept = Math.exp(-step / options.wander.seconds);
    wander = wander * kept + options.wander.sd * Math.sqrt(1 - kept * kept) * chance.normal();
    const gross = burner();
    brought += gross * step;
    const useful = gross * (1 - ring.wastedShare);
    lost += step * (gross - useful);
    const fromRing = warmRing(step, useful);
    const straight = potOn ? useful * ring.straightShare : 0;
    lost += step * (useful * ring.straightShare - straight);
    intoSyrup = options.baseWattsPerKelvin * baseShare(waterShare()) * (base - syrup);
    const baseLoss = potOn ? 0 : trivetWattsPerKelvin * (base - options.roomCelsius);
    sideLoss = options.lossWattsPerKelvin * (syrup - options.roomCelsius);
    lost += step * (baseLoss + sideLoss);
    base += (step * (fromRing + straight - intoSyrup - baseLoss)) / options.baseJoulePerKelvin;
    syrup += (step * (intoSyrup - sideLoss)) / capacity();
    boil();
    steamOff(step);
    const caught = Math.exp(-step / Math.max(0.01, options.dial.lagSeconds));
    dial = syrup + (dial - syrup) * caught;
    seconds += step;
  };

  const outcomeAt = (celsius: number): ColdWaterOutcome =>
    coldWaterOutcomes.reduce<ColdWaterOutcome>(
      (found, outcome, index) =>
        index > 0 && celsius >= options.stageFromCelsius[outcome] ? outcome : found,
      'dissolves',
    );

  return {
    advance: (wanted) => {
      unspent += Math.max(0, wanted);
      const steps = Math.floor(unspent / stepSeconds + 1e-9);
      for (let index = 0; index < steps; index++) tick(stepSeconds);
      unspent -= steps * stepSeconds;
    },
    setHeat: (to) => {
      level = Math.min(1, Math.max(0, to));
    },
    setPot: (on) => {
      potOn = on;
    },
    setLid: (on) => {
      lidOn = on;
    },
    addWater: (grams, celsius = 15) => {
      if (!(grams > 0)) return;
      const heat = capacity() * syrup + grams * waterJoulePerGramKelvin * celsius;
      brought += grams * waterJoulePerGramKelvin * celsius;
      water += grams;
      added += grams;
      syrup = heat / capacity();
    },
    dialCelsius: () => {
      const { noiseSdKelvin, offsetKelvin, stepKelvin } = options.dial;
      const shown = dial + offsetKelvin + noiseSdKelvin * chance.normal();
      return stepKelvin > 0 ? Math.round(shown / stepKelvin) * stepKelvin : shown;
    },
    coldWater: () => outcomeAt(syrup + options.testerSdKelvin * chance.normal()),
    state: () => ({
      seconds,
      celsius: syrup,
      boilsCelsius: boils(),
      waterGrams: water,
      steamGrams: steam,
      addedGrams: added,
      baseCelsius: base,
      ringCelsius: ringHeat,
      dialCelsius: dial,
      burnerWatts: burner(),
      intoSyrupWatts: intoSyrup,
      netWatts: intoSyrup - sideLoss,
      potOn,
      lidOn,
      level,
      energy: { broughtJoule: brought, storedJoule: stored(), lostJoule: lost, steamJoule: steamHeat },
    }),
  };
};
