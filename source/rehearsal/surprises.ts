import { nearest } from '../recipe/items.js';
import type { PhaseId } from '../recipe/recipe.js';
import { chanceFrom } from './chance.js';

/** What may go wrong in a rehearsal, by name. */
export const surpriseNames = [
  'foam-over',
  'hot-hob',
  'weak-hob',
  'thermometer-off',
  'interruption',
  'grains',
  'overshoot',
  'power-cut',
  'early-touch',
  'burning-smell',
] as const;
export type SurpriseName = (typeof surpriseNames)[number];

export type Surprise = {
  readonly name: SurpriseName;
  /**
   * What a person does about it, in order; each is one of the words that may be typed, its beginning. What was typed
   * before it happened does not count.
   */
  readonly answers: readonly [first: readonly string[], ...rest: (readonly string[])[]];
  /** How long there is for the first answer, seconds from the moment at which it shows. */
  readonly withinSeconds: number;
  readonly phases: readonly PhaseId[];
  /** What was done before it showed counts as well. */
  readonly early?: true;
};

/**
 * Each can be answered with the ordinary words. The first answer is the first act of the hazard table; seconds are
 * those of the table, with the time to notice and to type. Our judgement.
 */
export const surprises: Readonly<Record<SurpriseName, Surprise>> = {
  'foam-over': {
    name: 'foam-over',
    answers: [['trouble foam', 'trouble overflow'], ['heat', 'pot off'], ['over']],
    withinSeconds: 30,
    phases: ['boil'],
  },
  'hot-hob': {
    name: 'hot-hob',
    answers: [['heat', 'pot off', 'done']],
    withinSeconds: 60,
    phases: ['boil'],
  },
  'weak-hob': {
    name: 'weak-hob',
    answers: [['heat']],
    withinSeconds: 900,
    phases: ['dissolve', 'boil'],
  },
  'thermometer-off': {
    name: 'thermometer-off',
    answers: [
      [
        'boils',
        'ice',
        'trouble thermometer',
        'thermometer none',
        'dissolves',
        'thread',
        'soft ball',
        'firm ball',
        'hard ball',
        'soft crack',
        'hard crack',
      ],
    ],
    withinSeconds: 2700,
    early: true,
    phases: ['boil', 'test'],
  },
  interruption: {
    name: 'interruption',
    answers: [['trouble away', 'heat off', 'pot off']],
    withinSeconds: 60,
    phases: ['boil'],
  },
  grains: {
    name: 'grains',
    answers: [['trouble grains'], ['done', 'lid on'], ['over']],
    withinSeconds: 90,
    phases: ['boil'],
  },
  overshoot: {
    name: 'overshoot',
    answers: [['pot off', 'done', 'trouble overshoot']],
    withinSeconds: 30,
    phases: ['boil', 'test'],
  },
  'power-cut': {
    name: 'power-cut',
    answers: [['trouble power'], ['heat off', 'done'], ['over']],
    withinSeconds: 90,
    phases: ['boil'],
  },
  'early-touch': {
    name: 'early-touch',
    answers: [['trouble burn'], ['done'], ['over']],
    withinSeconds: 30,
    phases: ['fold'],
  },
  'burning-smell': {
    name: 'burning-smell',
    answers: [['trouble scorched'], ['pot off', 'heat off', 'done'], ['over']],
    withinSeconds: 30,
    phases: ['boil'],
  },
};

export const isSurprise = (name: string): name is SurpriseName =>
  (surpriseNames as readonly string[]).includes(name);

/** The name that was probably meant; null if none is near. */
export const nearestSurprise = (typed: string): string | null => {
  const sought = typed.trim().toLowerCase();
  const part = sought.length < 3 ? undefined : surpriseNames.find((name) => name.includes(sought));
  return part ?? nearest(typed, [...surpriseNames, 'any']);
};

/** One of them, the same for the same seed. */
export const anySurprise = (seed: number): SurpriseName => {
  const chance = chanceFrom(seed ^ 0x5a17);
  return surpriseNames[Math.floor(chance.even() * surpriseNames.length)] ?? 'foam-over';
};
