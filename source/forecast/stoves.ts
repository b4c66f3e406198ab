import type { StoveKind } from '../kitchen/kitchen.js';

/** What a kind of stove does to the heat, as a prior; no measured values were found, all our judgement. */
export type StoveHabit = {
  /** Seconds until two thirds of a change of the knob have reached the pot. */
  readonly lagSeconds: number;
  /** Net watts into a pot of about 20 cm at the knob's highest. */
  readonly fullWatts: number;
  /** Seconds' worth of the present power that the pot's base still gives when it stands on a trivet. */
  readonly baseSeconds: number;
  /** The same from the ring under it, with the pot left there. */
  readonly ringSeconds: number;
  /** The ring goes on heating up while no pot takes its heat. */
  readonly glows: boolean;
};

export const stoveHabits: Readonly<Record<StoveKind, StoveHabit>> = {
  gas: { lagSeconds: 4, fullWatts: 900, baseSeconds: 10, ringSeconds: 6, glows: false },
  induction: { lagSeconds: 6, fullWatts: 1000, baseSeconds: 13, ringSeconds: 8, glows: false },
  coil: { lagSeconds: 60, fullWatts: 800, baseSeconds: 25, ringSeconds: 55, glows: true },
  'glass-ceramic': { lagSeconds: 75, fullWatts: 850, baseSeconds: 23, ringSeconds: 60, glows: true },
};

/** Share of full power behind a level of the knob: only a prior, labels are not ratios. */
export const shareOfFull = (level: number): number => 0.15 + 0.85 * Math.min(1, Math.max(0, level));
