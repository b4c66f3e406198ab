import type { Cook } from '../cook/cook.js';
import type { Happened } from '../cook/event.js';
import { target } from '../cook/evidence.js';
import { potIsOff } from '../cook/phases/phase.js';
import { believe, expectedReading, learnedOf } from '../forecast/index.js';
import { stoveTraits } from '../kitchen/stove.js';
import type { Said } from './learn-pool.js';

/** What is remembered of a boil while it is folded once more. */
export type BoilSeen = {
  /** Relative power by the knob's label: natural logarithm of net watts. */
  readonly logWatts: Readonly<Record<string, Said>>;
  readonly carryOverKelvin: Said | null;
  /** The pot is off, and what the syrup was taken to climb on the trivet, kelvin. */
  readonly off: { readonly t: number; readonly takenKelvin: number } | null;
  readonly readingsAtSetting: number;
};

export const nothingSeen: BoilSeen = { logWatts: {}, carryOverKelvin: null, off: null, readingsAtSetting: 0 };

/** A setting counts when it was left alone for so long and read so often. Our judgement. */
const leastSetting = { seconds: 90, readings: 3 } as const;
/** After the take-off heat and a slow dial need the first of them; after the second it mostly shows how it cools. Our judgement. */
const climbSeconds = [20, 75] as const;
/**
 * A reading against what was expected of it, kelvin: half a mark each way, and the take-off itself. In 80 simulated
 * boils what was read so and what the syrup climbed were 0.1 K apart in the mean, with a standard deviation of 0.7 K.
 */
const climbSdKelvin = 0.7;
/** What is not known of the cooling on a trivet, kelvin a second: a quarter of it. Our judgement. */
const coolingSdPerSecond = 0.02;
/** More than any pot carries on by itself on a trivet: something else was measured. Our judgement. */
const mostClimbKelvin = 8;

/** What is known of the power behind the present setting, when it has been watched long enough. */
const powerNow = (cook: Cook, readings: number): readonly [label: string, power: Said] | null => {
  const { heat, estimate } = cook;
  if (heat === null || heat.level === null || heat.level <= 0 || !estimate.located) return null;
  if (readings < leastSetting.readings || cook.t - heat.t < leastSetting.seconds) return null;
  const { logWatts } = learnedOf(estimate);
  return [heat.setting.trim().toLowerCase(), { value: logWatts.mean, sd: logWatts.sd }];
};

/** The better known of two, of one cook. */
const withPower = (seen: BoilSeen, before: Cook): BoilSeen => {
  const power = powerNow(before, seen.readingsAtSetting);
  if (power === null) return seen;
  const [label, said] = power;
  const known = seen.logWatts[label];
  return known !== undefined && known.sd <= said.sd
    ? seen
    : { ...seen, logWatts: { ...seen.logWatts, [label]: said } };
};

const tookOff = (seen: BoilSeen, before: Cook, after: Cook, t: number): BoilSeen => {
  const { batch, estimate, hob } = before;
  const heated = before.heat !== null && before.heat.level !== 0;
  if (!heated || !estimate.located || !potIsOff(after)) return { ...seen, off: null };
  const at = (one: Cook['estimate']) => believe(one, target(before), t, batch.curve, hob)?.celsius ?? null;
  const [was, becomes] = [at(estimate), at(after.estimate)];
  return {
    ...seen,
    off: was === null || becomes === null ? null : { t, takenKelvin: Math.max(0, becomes - was) },
  };
};

/**
 * A reading on the trivet against what it should be, had the syrup climbed as it was taken to and cooled since: what
 * it reads more or less is more or less of a climb. The first that the dial was quick enough for counts.
 */
const readWhileOff = (seen: BoilSeen, before: Cook, after: Cook, t: number): BoilSeen => {
  const { off } = seen;
  const shown = after.lastReading?.celsius;
  if (off === null || shown === undefined) return seen;
  const since = t - off.t;
  if (since < climbSeconds[0] || since > climbSeconds[1]) return seen;
  // While the base still gives heat the syrup climbs and does not cool; the forecast puts that heat in at once.
  const cools = Math.max(off.t, t - stoveTraits[before.hob.stove].baseSeconds);
  const expected = expectedReading(before.estimate, cools, before.batch.curve, before.hob);
  if (expected === null) return seen;
  const climbed = off.takenKelvin + shown - expected.celsius;
  const read = Math.abs(climbed) <= mostClimbKelvin;
  const sd = Math.hypot(climbSdKelvin, coolingSdPerSecond * since);
  return {
    ...seen,
    off: null,
    carryOverKelvin: read ? { value: climbed, sd } : seen.carryOverKelvin,
  };
};

/** One event further: what it shows of burner and carry-over. `before` and `after` are the cook around it. */
export const seeBoil = (seen: BoilSeen, before: Cook, after: Cook, event: Happened): BoilSeen => {
  if (before.pouredAt !== null) return seen;
  const turned = before.heat !== after.heat;
  const leaves = !potIsOff(before) && (potIsOff(after) || after.pouredAt !== null);
  const left = turned || leaves ? withPower(seen, { ...before, t: event.t }) : seen;
  const settled = turned ? { ...left, readingsAtSetting: 0 } : left;
  const off = leaves
    ? tookOff(settled, before, after, event.t)
    : potIsOff(after)
      ? settled
      : { ...settled, off: null };
  const read = after.lastReading !== null && after.lastReading !== before.lastReading;
  if (!read) return off;
  return potIsOff(after)
    ? readWhileOff(off, before, after, event.t)
    : { ...off, readingsAtSetting: off.readingsAtSetting + 1 };
};
