import { nearest } from '../recipe/items.js';
import type { Kitchen, StoveKind } from './kitchen.js';

/** What one kind of stove does to a pot of syrup: the one table of it. */
export type StoveTraits = {
  /** An open flame: keep alcohol, sleeves and paper away from it. */
  readonly openFlame: boolean;
  /** The ring itself glows or stays hot enough to burn and to light alcohol, and heats up while no pot takes its heat. */
  readonly glows: boolean;
  /** It goes on heating after the knob is turned off: the pot has to leave the ring. */
  readonly keepsHeating: boolean;
  /** Seconds until two thirds of a change of the knob have reached the pot. */
  readonly lagSeconds: number;
  /** Net watts into a pot of about 20 cm at the knob's highest. */
  readonly fullWatts: number;
  /**
   * What the syrup still climbs on a trivet, kelvin, for a plan that knows no power yet and no climb that this kitchen
   * has shown. At a usual boil's power the seconds below come to about the same (tested).
   */
  readonly carryOverKelvin: number;
  /** Seconds' worth of the present power that the pot's base still gives when it stands on a trivet. */
  readonly baseSeconds: number;
  /** The same from the ring under it, with the pot left there. */
  readonly ringSeconds: number;
};

/**
 * Carry-over: a trade book of about 1909 has "one or two degrees" Fahrenheit, recipe pages 2-3 for a heavy pot;
 * 1-2 F taken for gas and induction, 2-3 F for coil and radiant. Glass-ceramic holds heat after it is off: University
 * of Florida extension. Watts and seconds are priors; no measured values were found, all our judgement.
 */
export const stoveTraits: Readonly<Record<StoveKind, StoveTraits>> = {
  gas: {
    openFlame: true,
    glows: false,
    keepsHeating: false,
    lagSeconds: 4,
    fullWatts: 900,
    carryOverKelvin: 0.8,
    baseSeconds: 10,
    ringSeconds: 6,
  },
  coil: {
    openFlame: false,
    glows: true,
    keepsHeating: true,
    lagSeconds: 60,
    fullWatts: 800,
    carryOverKelvin: 1.4,
    baseSeconds: 25,
    ringSeconds: 55,
  },
  'glass-ceramic': {
    openFlame: false,
    glows: true,
    keepsHeating: true,
    lagSeconds: 75,
    fullWatts: 850,
    carryOverKelvin: 1.4,
    baseSeconds: 23,
    ringSeconds: 60,
  },
  induction: {
    openFlame: false,
    glows: false,
    keepsHeating: false,
    lagSeconds: 6,
    fullWatts: 1000,
    carryOverKelvin: 0.8,
    baseSeconds: 13,
    ringSeconds: 8,
  },
};

/** Share of full power behind a level of the knob, 0 to 1: only a prior, labels are not ratios. Our judgement. */
export const shareOfFull = (level: number): number => 0.15 + 0.85 * Math.min(1, Math.max(0, level));

/** Words that are understood on every stove, with the share of full heat they stand for: our judgement. */
const genericLevels: Readonly<Record<string, number>> = { off: 0, low: 0.3, medium: 0.6, high: 1 };

const plain = (typed: string): string => typed.trim().toLowerCase();

/**
 * The share of full heat, 0 to 1, of a knob's setting; null if the word is neither one of the knob's labels nor
 * `off`, `low`, `medium` or `high`. The labels are taken as evenly spaced, the strongest as 1.
 */
export const heatLevel = (kitchen: Kitchen, setting: string): number | null => {
  const sought = plain(setting);
  if (sought === 'off') return 0;
  const place = kitchen.heat.findIndex((label) => plain(label) === sought);
  if (place >= 0) return (place + 1) / kitchen.heat.length;
  return Object.hasOwn(genericLevels, sought) ? (genericLevels[sought] ?? null) : null;
};

/** What may be typed after `heat`: the knob's labels, weakest first, then the words understood everywhere. */
export const heatWords = (kitchen: Kitchen): readonly string[] => [
  ...new Set([...kitchen.heat.map(plain), ...Object.keys(genericLevels)]),
];

/** The word that was most likely meant; null if none is near. */
export const nearestHeatWord = (kitchen: Kitchen, setting: string): string | null =>
  nearest(setting, heatWords(kitchen));
