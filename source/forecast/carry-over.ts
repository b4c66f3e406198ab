import type { StoveKind } from '../kitchen/kitchen.js';
import { stoveTraits } from '../kitchen/stove.js';
import type { BoilingCurve } from '../sugar/syrup.js';
import { numberAt } from '../units/at.js';
import { standingOf, wattsAt } from './advance.js';
import { type Estimate, logWatts } from './estimate.js';
import type { Hob } from './forecast.js';
import { type Path, pathOf } from './path.js';

export type CarryOver = { readonly offTheRingKelvin: number; readonly leftOnTheRingKelvin: number };

const mostKelvin = 25;

/**
 * The second mass: what pot and ring hold above the syrup goes on boiling water off, so the syrup moves along its
 * curve. The heat held grows with the power that went through it.
 */
export const carryOverKelvinOf = (stove: StoveKind, watts: number, joules: number, path: Path): CarryOver => {
  const habit = stoveTraits[stove];
  const power = Number.isFinite(watts) ? Math.max(0, watts) : 0;
  const rise = (seconds: number): number =>
    Math.min(mostKelvin, Math.max(0, path.celsiusAt(joules + power * seconds) - path.celsiusAt(joules)));
  return {
    offTheRingKelvin: rise(habit.baseSeconds),
    leftOnTheRingKelvin: rise(habit.baseSeconds + habit.ringSeconds),
  };
};

/**
 * What the syrup still climbs once the heat goes off at `celsius`: put on a trivet, or left on the ring. Kelvin.
 * The stored heat by kind of stove is our judgement (kitchen/stove.ts): thin pots 1-2 F, heavy pots and slow rings 2-3 F
 * by the trade's books. `learnedKelvin`, what earlier cooks in this kitchen climbed on the trivet, replaces the prior
 * and scales the rest.
 */
export const carryOver = (asked: {
  readonly stove: StoveKind;
  readonly watts: number;
  readonly celsius: number;
  readonly curve: BoilingCurve;
  readonly otherGrams?: number;
  readonly learnedKelvin?: number | null;
}): CarryOver => {
  const { curve, celsius } = asked;
  const path = pathOf(curve, {
    stove: asked.stove,
    otherGrams: asked.otherGrams ?? 0,
    startSolidsFraction: 0.75,
    dialSdKelvin: 1,
    dialLagSeconds: 0,
    celsiusAtStart: 20,
    stageFromCelsius: noStages,
  });
  const usual = carryOverKelvinOf(asked.stove, asked.watts, path.joulesAt(celsius), path);
  const learned = asked.learnedKelvin ?? null;
  if (learned === null || !(learned >= 0) || !(usual.offTheRingKelvin > 0)) return usual;
  const scale = learned / usual.offTheRingKelvin;
  return { offTheRingKelvin: learned, leftOnTheRingKelvin: usual.leftOnTheRingKelvin * scale };
};

/**
 * What this pot would still climb on a trivet if it came off at `celsius` by the power that goes into it at the estimate's
 * own time, kelvin; what earlier cooks climbed here, where that is known. Null where no power is known: nothing was read
 * twice, or the pot is off the ring. Constant time.
 */
export const carryOverNow = (
  estimate: Estimate,
  celsius: number,
  curve: BoilingCurve,
  hob: Hob,
): number | null => {
  const learned = hob.learnedCarryOverKelvin ?? null;
  if (learned !== null) return learned;
  const { potOn, heating, located, acceptedReadings, lidOn } = estimate;
  if (!potOn || !heating || !located || lidOn || acceptedReadings < 2) return null;
  const path = pathOf(curve, hob);
  const watts = wattsAt(
    standingOf(estimate, hob),
    numberAt(estimate.mean, logWatts),
    estimate.t,
    celsius,
    path,
  );
  return watts > 0
    ? carryOverKelvinOf(hob.stove, watts, path.joulesAt(celsius), path).offTheRingKelvin
    : null;
};

const noStages = {
  dissolves: 0,
  thread: 0,
  'soft ball': 0,
  'firm ball': 0,
  'hard ball': 0,
  'soft crack': 0,
  'hard crack': 0,
  'past hard crack': 0,
} as const;
