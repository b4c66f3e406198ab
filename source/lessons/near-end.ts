import type { Facts } from './story.js';

/** The last kelvin before the take-off, where heat and readings decide. As in the cook itself. */
export const nearKelvin = 8;

export type NearEnd = {
  readonly fromCelsius: number;
  /** Kelvin per second through it, by believed readings at least 20 s apart. */
  readonly rate: number | null;
  /** The longest time without a reading, seconds, up to the moment at which the pot came off. */
  readonly longestGapSeconds: number;
  readonly readings: number;
};

const leastSeconds = 20;

/** The last 8 K before the pot first came off for its temperature; null where there were no readings. */
export const nearEndOf = ({ readings, offs }: Pick<Facts, 'readings' | 'offs'>): NearEnd | null => {
  const off = offs.find(
    ({ celsius, wantedCelsius, askedAt }) => askedAt !== null || (celsius ?? 0) >= wantedCelsius - 2,
  );
  if (off === undefined) return null;
  const fromCelsius = off.wantedCelsius - nearKelvin;
  // Off the ring in between, for a test or a trouble, nothing had to be read.
  const since = offs.findLast(({ backAt }) => backAt !== null && backAt <= off.t)?.backAt ?? 0;
  const boiled = readings.filter(
    ({ of, believed, t }) => of === 'syrup' && believed && t >= since && t <= off.t,
  );
  const below = boiled.findLastIndex(({ celsius }) => celsius < fromCelsius);
  const near = boiled.slice(below + 1);
  const [first] = near;
  const last = near.at(-1);
  if (first === undefined || last === undefined) return null;
  const seconds = last.t - first.t;
  const gaps = near.map(({ t }, index) => (near[index + 1]?.t ?? off.t) - t);
  return {
    fromCelsius,
    rate: seconds >= leastSeconds ? (last.celsius - first.celsius) / seconds : null,
    longestGapSeconds: Math.max(...gaps),
    readings: near.length,
  };
};
