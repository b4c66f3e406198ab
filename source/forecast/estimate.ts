import { stoveTraits } from '../kitchen/stove.js';
import type { Hob } from './forecast.js';
import { clamp } from './numbers.js';

/** Places of the four unknowns in `mean` and `covariance`. */
export const joulesDone = 0;
/** Natural logarithm of the net watts once the burner has settled, at the temperature where the boil began. */
export const logWatts = 1;
/** The true curve less the computed one, kelvin. */
export const curveBias = 2;
/** The thermometer reads high (+) by this, kelvin. */
export const dialBias = 3;
export const unknowns = 4;

/** What is believed at `t`, as plain data of constant size. */
export type Estimate = {
  readonly t: number;
  readonly mean: readonly number[];
  readonly covariance: readonly number[];
  /** Heat that only warms, until the syrup boils (again), joules; null until the curve was first seen. */
  readonly coldJoules: number | null;
  /** The dial is behind the syrup by this, kelvin. */
  readonly behindKelvin: number;
  readonly potOn: boolean;
  /** When the pot was last taken off or put back, and the net watts until it was taken off. */
  readonly moved: { readonly t: number; readonly watts: number } | null;
  readonly lidOn: boolean;
  /** Heat is known, or seen, to reach the pot. */
  readonly heating: boolean;
  readonly level: number | null;
  /** The burner's change that is still arriving: net watts before it, and when it was made. */
  readonly change: { readonly t: number; readonly watts: number } | null;
  /** Powers seen at other settings of the knob, the latest last. */
  readonly knownLevels: ReadonlyArray<{
    readonly level: number;
    readonly logWatts: number;
    readonly sd: number;
  }>;
  /** Readings before this moment say nothing about the water left. */
  readonly unsettledUntil: number;
  /** Whether evidence has shown where on the curve the syrup is. */
  readonly located: boolean;
  readonly acceptedReadings: number;
  readonly lastReading: { readonly t: number; readonly celsius: number } | null;
  /** Improbable readings in a row, and the last one's distance from what was expected, kelvin. */
  readonly suspects: { readonly count: number; readonly kelvin: number };
  readonly coldWater: { readonly tests: number; readonly disagreed: number };
};

/** `t` seconds as the estimate takes it: never before its own time, which stands for a time that is none. */
export const momentOf = (estimate: Pick<Estimate, 't'>, t: number): number =>
  Number.isFinite(t) ? Math.max(t, estimate.t) : estimate.t;

/** Heat that only warms, until the syrup boils (again), joules; 0 before the curve was first seen. */
export const joulesToBoil = ({ coldJoules }: Pick<Estimate, 'coldJoules'>): number => coldJoules ?? 0;

/** Spread of published boiling curves at 80-95 % solids, Starzak & Peacock against 33 points: 1.8 K; half is the batch's. */
export const curveSdKelvin = 1;
/**
 * A thermometer that is wrong by more than twice its spread is noticed in boiling water, so its prior ends there;
 * a normal distribution cut at two spreads has 0.88 of its width. Our judgement.
 */
const noticedBeyondTwo = 0.88;
export const dialSdOf = (hob: Hob): number => noticedBeyondTwo * clamp(hob.dialSdKelvin, 0.05, 20);

const logWattsSd = 0.5;

export const diagonal = (...variances: readonly number[]): number[] =>
  variances.flatMap((variance, row) => variances.map((_, column) => (row === column ? variance : 0)));

export const begin = (hob: Hob): Estimate => ({
  t: 0,
  mean: [0, Math.log(0.7 * stoveTraits[hob.stove].fullWatts), 0, 0],
  covariance: diagonal(0, logWattsSd ** 2, curveSdKelvin ** 2, dialSdOf(hob) ** 2),
  coldJoules: null,
  behindKelvin: 0,
  potOn: true,
  moved: null,
  lidOn: false,
  heating: false,
  level: null,
  change: null,
  knownLevels: (hob.knownPowers ?? []).map(({ level, watts, sd }) => ({
    level,
    logWatts: Math.log(watts),
    sd,
  })),
  unsettledUntil: 0,
  located: false,
  acceptedReadings: 0,
  lastReading: null,
  suspects: { count: 0, kelvin: 0 },
  coldWater: { tests: 0, disagreed: 0 },
});
