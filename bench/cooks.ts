import type { Evidence, Hob, Target } from '../source/forecast/index.js';
import type { StoveKind } from '../source/kitchen/kitchen.js';
import { type BoilOptions, boilOptions, type Pot, simulate } from '../source/rehearsal/boil.js';
import { type Chance, chanceFrom } from '../source/rehearsal/chance.js';
import type { Stage } from '../source/sugar/stages.js';
import { type BoilingCurve, boilingCurve } from '../source/sugar/syrup.js';

/** What a cook does at a moment; the forecast is told of it or not. */
export type Act = { readonly t: number; readonly told: boolean } & (
  | { readonly kind: 'heat'; readonly level: number }
  | { readonly kind: 'pot'; readonly on: boolean }
);

/** One cook: the true pot, what the forecast is told of it, and what happens. */
export type Cook = {
  readonly seed: number;
  readonly options: BoilOptions;
  readonly hob: Hob;
  readonly target: Target;
  readonly acts: readonly Act[];
  readonly readingsAt: readonly number[];
};

export type Conditions = { readonly dialSdKelvin: number };

export const schedule = {
  farSeconds: [25, 55],
  nearSeconds: [13, 27],
  nearKelvin: 8,
  /** Whoever is told to stay with the pot reads as often as fingers can type. */
  lastSeconds: [8, 16],
  lastKelvin: 3,
  missedShare: 0.15,
} as const;

/** Lower bounds of the stages at sea level, cut midway between published ranges (CSU Extension, McGee 2004). */
const stagesAtSeaLevel: Readonly<Record<Stage, number>> = {
  dissolves: -Infinity,
  thread: 101.5,
  'soft ball': 112.5,
  'firm ball': 117,
  'hard ball': 120.8,
  'soft crack': 131,
  'hard crack': 146,
  'past hard crack': 155,
};

const within = (chance: Chance, low: number, high: number): number => low + (high - low) * chance.even();
const pick = <T>(chance: Chance, values: readonly T[]): T =>
  values[Math.floor(chance.even() * values.length)] as T;

type Kettle = { readonly curve: BoilingCurve; readonly waterGrams: number; readonly otherGrams: number };

/** A few dozen syrups and airs are shared by all cooks: laying out a curve takes longer than boiling it. */
const kettles: readonly Kettle[] = Array.from({ length: 24 }, (_, index) => {
  const chance = chanceFrom(9_000_000 + index);
  const batch = within(chance, 0.6, 1.5);
  const sucroseGrams = 500 * batch;
  const waterGrams = batch * within(chance, 200, 280);
  const fatGrams = batch * within(chance, 0, 30);
  const inertGrams = batch * within(chance, 0, 20);
  const glucose = batch * within(chance, 220, 380);
  const curve = boilingCurve(
    {
      sucroseGrams,
      glucoseSolids: [{ grams: glucose, de: 42 }],
      invertGrams: 0,
      saltGrams: 3,
      waterGrams,
      fatGrams,
      inertGrams,
    },
    within(chance, 80_000, 101_500),
  );
  return { curve, waterGrams, otherGrams: fatGrams + inertGrams };
});

const toldLagSeconds = 12;

const trueOptions = (chance: Chance, kettle: Kettle, conditions: Conditions): BoilOptions => {
  const stove = pick<StoveKind>(chance, ['gas', 'coil', 'glass-ceramic', 'induction']);
  const { curve } = kettle;
  const stageFromCelsius = Object.fromEntries(
    Object.entries(stagesAtSeaLevel).map(([stage, celsius]) => [stage, curve.fromSeaLevel(celsius)]),
  ) as Record<Stage, number>;
  return boilOptions({
    ...kettle,
    waterGrams: kettle.waterGrams * (1 + 0.03 * chance.normal()),
    stove,
    stageFromCelsius,
    curveShiftKelvin: chance.normal(),
    fullWatts: (stove === 'gas' ? 2.2 : 1) * within(chance, 750, 1300),
    levelExponent: within(chance, 0.7, 1.4),
    wander: { sd: within(chance, 0.02, 0.08), seconds: within(chance, 120, 600) },
    lossWattsPerKelvin: within(chance, 0.5, 1.5),
    baseWattsPerKelvin: within(chance, 20, 45),
    dial: {
      lagSeconds: within(chance, 5, 20),
      noiseSdKelvin: within(chance, 0.3, 1),
      offsetKelvin: conditions.dialSdKelvin * chance.normal(),
      stepKelvin: 0,
    },
  });
};

/** Seconds at which this pot, left alone at `level`, comes within each of the given kelvin of the goal. */
const dryRun = (options: BoilOptions, level: number, marks: readonly number[], seed: number): number[] => {
  const pot = simulate(options, seed);
  pot.setHeat(level);
  const times = marks.map(() => 7200);
  for (let t = 0; t < 7200; t += 5) {
    pot.advance(5);
    const { celsius } = pot.state();
    marks.forEach((mark, index) => {
      if (celsius >= mark && times[index] === 7200) times[index] = t;
    });
    if (celsius >= (marks[marks.length - 1] ?? 0)) break;
  }
  return times;
};

export const cookOf = (seed: number, conditions: Conditions): Cook => {
  const chance = chanceFrom(seed);
  const kettle = pick(chance, kettles);
  const options = trueOptions(chance, kettle, conditions);
  const { curve } = kettle;
  const target: Target = {
    floorCelsius: curve.fromSeaLevel(123),
    ceilingCelsius: curve.fromSeaLevel(126),
    takeOffCelsius: curve.fromSeaLevel(123.5),
  };
  const hob: Hob = {
    stove: options.stove,
    otherGrams: kettle.otherGrams,
    dialSdKelvin: conditions.dialSdKelvin,
    dialLagSeconds: toldLagSeconds,
    stageFromCelsius: options.stageFromCelsius,
    startSolidsFraction: curve.dissolvedGrams / (curve.dissolvedGrams + kettle.waterGrams),
    celsiusAtStart: 20,
  };
  const first = pick(chance, [0.7, 0.85, 1]);
  const marks = [
    curve.celsiusAt(hob.startSolidsFraction) + 1,
    target.floorCelsius - schedule.nearKelvin,
    target.floorCelsius - schedule.lastKelvin,
    target.floorCelsius,
  ];
  const [boil = 0, near = 0, last = 0, floor = 0] = dryRun(options, first, marks, seed);
  const acts: Act[] = [{ t: 30, told: true, kind: 'heat', level: first }];
  const someTime = (): number => within(chance, boil, floor);
  if (chance.even() < 0.5)
    acts.push({ t: someTime(), told: true, kind: 'heat', level: pick(chance, [0.6, 0.7, 0.85, 1]) });
  if (chance.even() < 0.3)
    acts.push({ t: someTime(), told: false, kind: 'heat', level: pick(chance, [0.6, 0.7, 0.85, 1]) });
  if (chance.even() < 0.6) {
    const t = within(chance, near - 120, floor - 30);
    acts.push(
      { t, told: true, kind: 'pot', on: false },
      { t: t + within(chance, 40, 90), told: true, kind: 'pot', on: true },
    );
  }
  const readingsAt: number[] = [];
  for (let t = 60; t < 2.5 * floor + 600; ) {
    const [low, high] =
      t < near ? schedule.farSeconds : t < last ? schedule.nearSeconds : schedule.lastSeconds;
    t += within(chance, low, high);
    if (chance.even() > schedule.missedShare) readingsAt.push(t);
  }
  return { seed, options, hob, target, acts: acts.sort((a, b) => a.t - b.t), readingsAt };
};

export const perform = (pot: Pot, act: Act): void => {
  if (act.kind === 'heat') pot.setHeat(act.level);
  else pot.setPot(act.on);
};

export const told = (act: Act): Evidence =>
  act.kind === 'heat' ? { kind: 'heat', t: act.t, level: act.level } : { kind: 'pot', t: act.t, on: act.on };
