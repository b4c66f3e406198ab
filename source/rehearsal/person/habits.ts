import { chanceFrom } from '../chance.js';

/** How one person works. Shares are 0 to 1, seconds of a quick act. */
export type Habits = {
  /** 1: as the trade does it; above, slower. */
  readonly pace: number;
  readonly reacts: number;
  readonly readsIn: number;
  /** Readings typed with two digits swapped. */
  readonly slips: number;
  /** A burner turned and not typed. */
  readonly forgetsHeat: number;
  /** Tests that fingers can't tell. */
  readonly unsure: number;
  /** Turns the heat down for the last degrees, as is said. */
  readonly careful: boolean;
  /** Holds an unchecked thermometer in boiling water when asked to. */
  readonly checks: boolean;
};

/** People differ; all of them follow the advice. Our judgement. */
export const habitsOf = (seed: number): Habits => {
  const chance = chanceFrom(seed ^ 0x4ab1);
  return {
    pace: Math.exp(0.15 * chance.normal()),
    reacts: 2 + 4 * chance.even(),
    readsIn: 2 + 4 * chance.even(),
    slips: 0.01 * chance.even(),
    forgetsHeat: 0.06 * chance.even(),
    unsure: 0.1 * chance.even(),
    careful: chance.even() < 0.9,
    checks: true,
  };
};
