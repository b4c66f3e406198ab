import { nearest } from '../recipe/items.js';
import type { Kitchen, StoveKind } from './kitchen.js';

/** What one kind of stove does to a pot of syrup. */
export type StoveTraits = {
  /** An open flame: keep alcohol, sleeves and paper away from it. */
  readonly openFlame: boolean;
  /** The ring itself glows or stays hot enough to burn and to light alcohol when the pot is off it. */
  readonly glows: boolean;
  /** It goes on heating after the knob is turned off: the pot has to leave the ring. */
  readonly keepsHeating: boolean;
  /** What the syrup still climbs on a trivet, from the heat in the pot, kelvin. A default until this kitchen has shown its own. */
  readonly carryOverKelvin: number;
  /** What it still climbs if the pot stays where it is with the knob off, kelvin. */
  readonly carryOverOnTheRingKelvin: number;
  /** Minutes before the cooking place can be touched after it was hot. */
  readonly hotForMinutes: number;
};

/**
 * Carry-over: a trade book of about 1909 has "one or two degrees" Fahrenheit, recipe pages 2-3 for a heavy pot;
 * 1-2 F taken for gas and induction, 2-3 F for coil and radiant. On the ring and minutes: our judgement.
 * Glass-ceramic holds heat after it is off: University of Florida extension.
 */
export const stoveTraits: Readonly<Record<StoveKind, StoveTraits>> = {
  gas: {
    openFlame: true,
    glows: false,
    keepsHeating: false,
    carryOverKelvin: 0.8,
    carryOverOnTheRingKelvin: 1.2,
    hotForMinutes: 5,
  },
  coil: {
    openFlame: false,
    glows: true,
    keepsHeating: true,
    carryOverKelvin: 1.4,
    carryOverOnTheRingKelvin: 6,
    hotForMinutes: 15,
  },
  'glass-ceramic': {
    openFlame: false,
    glows: true,
    keepsHeating: true,
    carryOverKelvin: 1.4,
    carryOverOnTheRingKelvin: 5,
    hotForMinutes: 20,
  },
  induction: {
    openFlame: false,
    glows: false,
    keepsHeating: false,
    carryOverKelvin: 0.8,
    carryOverOnTheRingKelvin: 1.2,
    hotForMinutes: 10,
  },
};

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
