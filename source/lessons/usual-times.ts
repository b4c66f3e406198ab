import type { PhaseId } from '../recipe/recipe.js';

export type UsualTime = { readonly low: number; readonly typical: number; readonly high: number };

const minutes = (low: number, typical: number, high: number): UsualTime => ({
  low: low * 60,
  typical: typical * 60,
  high: high * 60,
});

/** What the usual time of a phase depends on. */
export type UsualFor = {
  readonly coldWaterTests: number;
  readonly portions: number;
  readonly pieces: number;
  /** Flavour or colour goes in off the heat. */
  readonly flavours: boolean;
  /** How many wrap. */
  readonly wrappers: number;
};

/** Pieces that one person wraps in a minute: slow, usual, quick. Our judgement. */
const wrapsAMinute = { slow: 4, usual: 5, quick: 6 } as const;
/** A cut rope rests before it is wrapped, minutes. */
const restMinutes = { low: 0, typical: 10, high: 30 } as const;

const rows: Readonly<Partial<Record<PhaseId, (asked: UsualFor) => UsualTime>>> = {
  // Mixing cold takes 2-5 minutes; the lists read aloud before it take as long again.
  mix: () => minutes(4, 6, 10),
  dissolve: () => minutes(4, 7, 12),
  // The boil with the lid or the washing down of the wall.
  boil: () => minutes(17, 31, 50),
  test: ({ coldWaterTests }) => {
    const count = Math.max(1, coldWaterTests);
    return minutes(count, 1.5 * count, 2 * count);
  },
  flavour: ({ flavours }) => (flavours ? minutes(0.5, 1, 2) : minutes(0, 0.5, 1)),
  pour: () => minutes(0.2, 0.5, 1),
  fold: () => minutes(8, 16, 25),
  pull: ({ portions }) => minutes(5 * portions, 11 * portions, 20 * portions),
  cut: () => minutes(6, 10, 20),
  wrap: ({ pieces, wrappers }) => {
    const by = (rate: number): number => pieces / rate / Math.max(1, wrappers);
    return minutes(
      restMinutes.low + by(wrapsAMinute.quick),
      restMinutes.typical + by(wrapsAMinute.usual),
      restMinutes.high + by(wrapsAMinute.slow),
    );
  },
};

/**
 * Seconds that a phase usually takes, where no run sheet says otherwise; null for one that nobody times. Trade
 * practice, collected from books and recipe pages without one common source: mix cold 2-5 min, dissolve 4-12, lid
 * or wash 2-5, boil 15-45, a cold-water test 1-2, additions 0.5-2, cool and fold 8-25, pull 5-20 a portion,
 * rope and cut 6-20, rest 0-30. Lists, the pour's spread and wrapping: our judgement.
 */
export const usualTime = (phase: PhaseId, asked: UsualFor): UsualTime | null => rows[phase]?.(asked) ?? null;
