import type { Cook } from '../cook/cook.js';
import type { Happened } from '../cook/event.js';
import { target } from '../cook/evidence.js';
import { potIsOff } from '../cook/phases/phase.js';
import { believe, learnedOf } from '../forecast/index.js';
import type { Said } from './learn-pool.js';

/** What is remembered of a boil while it is folded once more. */
export type BoilSeen = {
  /** Relative power by the knob's label: natural logarithm of net watts. */
  readonly logWatts: Readonly<Record<string, Said>>;
  readonly carryOverKelvin: Said | null;
  /** The pot is off, at what temperature by all evidence, and the hottest read since. */
  readonly off: { readonly t: number; readonly celsius: number; readonly hottest: number | null } | null;
  readonly readingsAtSetting: number;
};

export const nothingSeen: BoilSeen = { logWatts: {}, carryOverKelvin: null, off: null, readingsAtSetting: 0 };

/** A setting counts when it was left alone for so long and read so often. Our judgement. */
const leastSetting = { seconds: 90, readings: 3 } as const;
/** After the take-off a slow dial needs the first of them, and from the second on the syrup cools. Our judgement. */
const climbSeconds = [15, 100] as const;
/** A reading against what was believed at the take-off, kelvin: half a mark each way. Our judgement. */
const climbSdKelvin = 0.9;
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

const tookOff = (seen: BoilSeen, before: Cook, t: number): BoilSeen => {
  const { batch, estimate, hob } = before;
  const heated = before.heat !== null && before.heat.level !== 0;
  const celsius =
    heated && estimate.located ? believe(estimate, target(before), t, batch.curve, hob)?.celsius : null;
  return { ...seen, off: celsius == null ? null : { t, celsius, hottest: null } };
};

const readWhileOff = (seen: BoilSeen, cook: Cook, t: number): BoilSeen => {
  const { off } = seen;
  const shown = cook.lastReading?.celsius;
  if (off === null || shown === undefined) return seen;
  const since = t - off.t;
  if (since < climbSeconds[0] || since > climbSeconds[1]) return seen;
  const celsius = shown - learnedOf(cook.estimate).dialBias.mean;
  const hottest = Math.max(off.hottest ?? Number.NEGATIVE_INFINITY, celsius);
  const climbed = hottest - off.celsius;
  return {
    ...seen,
    off: { ...off, hottest },
    carryOverKelvin:
      Math.abs(climbed) <= mostClimbKelvin
        ? { value: Math.max(0, climbed), sd: climbSdKelvin }
        : seen.carryOverKelvin,
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
    ? tookOff(settled, before, event.t)
    : potIsOff(after)
      ? settled
      : { ...settled, off: null };
  const read = after.lastReading !== null && after.lastReading !== before.lastReading;
  if (!read) return off;
  return potIsOff(after)
    ? readWhileOff(off, after, event.t)
    : { ...off, readingsAtSetting: off.readingsAtSetting + 1 };
};
