import type { Batch } from '../batch/batch.js';
import type { Happened } from '../cook/event.js';
import { stepById } from '../cook/phases/index.js';
import { heatLevel } from '../kitchen/stove.js';
import { seaLevelPascal } from '../sugar/atmosphere.js';
import { glassTransitionCelsius } from '../sugar/glass.js';
import { handLimitCelsius } from '../sugar/skin.js';
import { stageWithin } from '../sugar/stages.js';
import { fromCelsius } from '../units/temperature.js';
import { simulate } from './boil.js';
import { chanceFrom } from './chance.js';
import { type Conditions, conditionsOf, type TrueDial } from './conditions.js';
import { foamOf } from './foam.js';
import { happeningOf, type Notice, type Sight } from './happenings.js';
import { type Rope, ropeOf } from './rope.js';
import { type Slab, slabOf } from './slab.js';
import type { SurpriseName } from './surprises.js';
import type { Shown, SimulatedCook } from './table.js';

const potStepSeconds = 1;
const slabStepSeconds = 5;
/** Kept warm and covered while portions are pulled. Our judgement. */
const coveredShare = 0.2;
const handsCelsius = 26;
/** Grains that nobody tends fall in. Our judgement. */
const grainsFallInSeconds = 300;
const halfFull = 0.5;
/** Shares of the pot's height at which rising foam is noticed. */
const foamMarks = [
  { from: halfFull, sight: 'foam-half' },
  { from: 0.75, sight: 'foam-high' },
  { from: 1, sight: 'foam-over' },
] as const;
/** Clear to the eye from here on, kelvin under the boil. Our judgement. */
const dissolvesBelowBoil = 12;
const ovenCelsius = 95;
const ovenSeconds = 180;

const isClear = ({ celsius, boilsCelsius }: { celsius: number; boilsCelsius: number }): boolean =>
  celsius > boilsCelsius - dissolvesBelowBoil;

type Act = 'knob off' | 'knob down' | 'pot off' | 'pot on' | 'tend' | 'oven';

/** What the instructions of the troubles have hands do; hazards/reports.ts. */
const troubleActs: Readonly<Record<string, readonly Act[]>> = {
  'trouble.foam.1': ['knob down', 'pot off'],
  'trouble.foam.3': ['pot on'],
  'trouble.overflow.1': ['knob off'],
  'trouble.overflow.2': ['pot off'],
  'trouble.scorched.1': ['knob off', 'pot off'],
  'trouble.grains.1': ['tend'],
  'trouble.power.1': ['knob off'],
  'trouble.away.1': ['knob off', 'pot off'],
  'trouble.overshoot.1': ['pot off'],
  'trouble.burn.1': ['tend'],
  'trouble.stiff.1': ['oven'],
};

const errorOf = (dial: TrueDial, at: number): number => dial.offsetKelvin + dial.stretch * (at - 95);

/** A sugar left on the heat darkens and smokes from 160 to 177 °C (320 to 350 °F) on. Common practice, no source. */
const smokesCelsius = 177;
/** Where the scale of a kitchen thermometer ends. Common practice, no source. */
const scaleEnds = { C: 200, F: 400 } as const;

const shownBy = (dial: TrueDial, believed: number, at: number, noise: number): Shown => {
  const celsius = believed + errorOf(dial, at) + dial.noiseSdKelvin * noise;
  return {
    value: Math.min(scaleEnds[dial.unit], Math.round(fromCelsius(celsius, dial.unit))),
    unit: dial.unit,
  };
};

export const simulatedCook = (batch: Batch, seed: number, surprise: SurpriseName | null): SimulatedCook => {
  const conditions: Conditions = conditionsOf(batch, seed, surprise);
  const chance = chanceFrom(seed ^ 0x1e57);
  const pot = simulate(conditions.boil, seed);
  const foam = foamOf(
    conditions.foamSeconds,
    conditions.pot.areaSquareMetres,
    batch.air.pressurePascal / seaLevelPascal,
  );
  const happening = happeningOf(surprise, seed);
  const { kitchen } = batch;

  let t = 0;
  let knob = 0;
  let slab: Slab | null = null;
  let rope: Rope | null = null;
  let pouredAt: number | null = null;
  let restCelsius: number | null = null;
  let handsAt: number | null = null;
  let middleAtHands: number | null = null;
  let boilingSince: number | null = null;
  let calmSince: number | null = 0;
  let clear = false;
  let rate = 0;
  let highest = 0;
  let ranOver = false;
  let grained = false;
  let foamMark = 0;
  const noticed: Notice[] = [];

  const onTheHeat = (): boolean => {
    const { potOn } = pot.state();
    return potOn && knob > 0 && happening.burner() !== 0;
  };
  const fullShare = (): number => {
    const volume = batch.pot.neededLitres / 4 / 1000;
    const depth = volume / conditions.pot.areaSquareMetres;
    return (depth + foam.heightMetres()) / conditions.pot.heightMetres;
  };
  const see = (...seen: readonly Sight[]): void => {
    for (const sight of seen) noticed.push({ t, sight });
  };

  const lookAtFoam = (): void => {
    const share = fullShare();
    const passed = foamMarks.filter(({ from }) => share >= from);
    const mark = passed.length;
    if (mark > foamMark) see(...passed.slice(-1).map(({ sight }) => sight));
    if (share >= 1) ranOver = true;
    if (mark > foamMark || share < halfFull - 0.1) foamMark = mark;
  };

  const boilOn = (seconds: number): void => {
    const before = pot.state().celsius;
    const forced = happening.burner();
    pot.setHeat(knob === 0 && forced === 1 ? 0 : (forced ?? knob));
    pot.advance(seconds);
    const state = pot.state();
    const boils = state.celsius > state.boilsCelsius - 0.3;
    rate += (1 - Math.exp(-seconds / 20)) * ((state.celsius - before) / seconds - rate);
    if (highest < smokesCelsius && state.celsius >= smokesCelsius) see('smokes');
    highest = Math.max(highest, state.celsius);
    foam.stiffen(happening.foamTimes());
    foam.advance(seconds, state.netWatts, boils && !state.lidOn);
    if (!clear && isClear(state)) {
      clear = true;
      see('dissolved');
    }
    if (boils && boilingSince === null) {
      boilingSince = t;
      see('boils');
    }
    if (onTheHeat()) calmSince = null;
    else calmSince ??= t;
    lookAtFoam();
  };

  const sceneNow = () => ({
    t,
    boilingSince,
    celsius: pot.state().celsius,
    kelvinPerSecond: rate,
    takeOffCelsius: batch.target.takeOffCelsius + conditions.airShiftKelvin,
    ceilingCelsius: conditions.windowCelsius[1],
    fullShare: fullShare(),
    poured: pouredAt,
    onTheHeat: pouredAt === null && onTheHeat(),
    calmSince,
  });

  const pour = (): Slab => {
    if (slab !== null) return slab;
    const { celsius, boilsCelsius } = pot.state();
    pouredAt = t;
    restCelsius = boilsCelsius;
    slab = slabOf(conditions.batchGrams, Math.min(celsius, boilsCelsius), conditions.roomCelsius);
    return slab;
  };

  const takeInHands = (): void => {
    const mass = pour();
    handsAt ??= t;
    middleAtHands ??= mass.middleCelsius();
    const glass = glassTransitionCelsius({ ...batch.syrup, waterGrams: pot.state().waterGrams });
    rope = ropeOf(Math.max(mass.meanCelsius(), handsCelsius), handsCelsius, glass);
  };

  const turnTo = (setting: string): void => {
    knob = heatLevel(kitchen, setting) ?? knob;
  };

  const acts: Readonly<Record<Act, () => void>> = {
    'knob off': () => {
      knob = 0;
    },
    'knob down': () => {
      knob *= 0.6;
    },
    'pot off': () => pot.setPot(false),
    'pot on': () => pot.setPot(true),
    tend: () => happening.tend(t),
    oven: () => {
      slab?.warm(ovenCelsius, ovenSeconds);
      if (rope !== null) takeInHands();
    },
  };

  const did = (step: string): void => {
    for (const act of troubleActs[step] ?? []) acts[act]();
    const means = stepById(step)?.means;
    if (means !== undefined) apply(means as Happened);
    // Who only says that it is done has turned it on all the same.
    if (step === 'dissolve.heat' && knob === 0) turnTo('medium');
    if (step === 'pour.pour') pour();
    if (step === 'fold.turn') slab?.fold();
    if (step === 'fold.again') {
      slab?.fold();
      slab?.fold();
    }
    if (step === 'pull.grease') takeInHands();
  };

  const apply = (event: Happened): void => {
    switch (event.kind) {
      case 'heat':
        turnTo(event.setting);
        return;
      case 'pot':
        pot.setPot(event.on);
        return;
      case 'lid':
        pot.setLid(event.on);
        return;
      case 'water':
        pot.addWater(event.grams, 95);
        return;
      case 'cold water':
        if (pouredAt === null) pot.setPot(false);
        return;
      case 'done':
        did(event.step);
        return;
      case 'at':
        if (['fold', 'pull', 'cut', 'wrap'].includes(event.phase)) pour();
        return;
      default:
    }
  };

  const advance = (seconds: number): void => {
    t += seconds;
    if (slab === null) boilOn(seconds);
    else slab.advance(handsAt === null ? seconds : seconds * coveredShare);
    rope?.advance(seconds);
    see(...happening.look(sceneNow()));
    const { beganAt, endedAt } = happening.course();
    if (surprise === 'grains' && beganAt !== null && endedAt === null && t - beganAt > grainsFallInSeconds)
      grained = true;
  };

  const is = (name: SurpriseName): boolean => {
    const { beganAt, endedAt } = happening.course();
    return surprise === name && beganAt !== null && endedAt === null;
  };

  return {
    advanceTo: (to) => {
      while (t < to - 1e-9) {
        const most = slab === null ? potStepSeconds : slabStepSeconds;
        advance(Math.min(most, to - t));
      }
    },
    happened: (event) => apply(event),
    senses: () => {
      const state = pot.state();
      return {
        boils: state.celsius > state.boilsCelsius - 0.3 && onTheHeat(),
        dissolved: isClear(state),
        fullShare: fullShare(),
        smells: is('burning-smell'),
        smokes: pouredAt === null && state.celsius >= smokesCelsius,
        grains: is('grains'),
        power: !is('power-cut'),
        calledAway: is('interruption'),
        burnt: is('early-touch'),
        thin: (slab?.thicknessMetres() ?? 0) <= 0.01,
        crumbIsComfortable: (slab?.middleCelsius() ?? 99) <= handLimitCelsius(kitchen.hands) + 1,
        droops: rope?.droops() ?? true,
        stiff: rope?.stiff() ?? false,
      };
    },
    dial: () => {
      const { dial } = conditions;
      const { dialCelsius } = pot.state();
      return dial === null
        ? null
        : shownBy(dial, batch.dial.toShownCelsius(dialCelsius), dialCelsius, chance.normal());
    },
    middle: () => {
      const { middleDial } = conditions;
      if (middleDial === null || slab === null) return null;
      const celsius = slab.middleCelsius();
      return shownBy(middleDial, batch.dial.toShownCelsius(celsius), celsius, chance.normal());
    },
    coldWater: () => {
      // Fingers feel how much water is left, not how hot it still is.
      const { boilsCelsius } = pot.state();
      const celsius =
        boilsCelsius + conditions.testerKelvin + conditions.boil.testerSdKelvin * chance.normal();
      const felt = stageWithin(celsius, conditions.stageFromCelsius);
      return felt === 'past hard crack' ? 'hard crack' : felt;
    },
    boilingWater: () => {
      const celsius = batch.air.waterBoilsCelsius + conditions.airShiftKelvin;
      return conditions.dial === null
        ? null
        : shownBy(conditions.dial, batch.dial.toShownCelsius(celsius), celsius, chance.normal());
    },
    weighs: () => Math.round(0.93 * conditions.batchGrams),
    notices: () => noticed.splice(0),
    truth: () => ({
      celsius: pot.state().celsius,
      kelvinPerSecond: rate,
      windowCelsius: conditions.windowCelsius,
      restCelsius,
      restStage: restCelsius === null ? null : stageWithin(restCelsius, conditions.stageFromCelsius),
      pouredAt,
      middleAtHandsCelsius: middleAtHands,
      middleCelsius: slab?.middleCelsius() ?? null,
      dialErrorKelvin: conditions.dial === null ? null : errorOf(conditions.dial, pot.state().celsius),
      ranOver,
      grained,
      highestCelsius: highest,
      course: happening.course(),
    }),
  };
};
