import type { Kitchen } from '../kitchen/kitchen.js';
import { heatLevel, shareOfFull } from '../kitchen/stove.js';
import type { Hob } from './forecast.js';

type Power = NonNullable<Hob['knownPowers']>[number];

/** What a knob's labels leave open about the power at another setting, relative. Our judgement. */
const labelDoubt = 0.25;

/**
 * The power behind each setting of this kitchen's knob by what its earlier cooks taught, watts; a setting that none of
 * them used is taken from the nearest one by the usual share of full power. Empty where nothing was learned.
 */
export const knownPowers = (kitchen: Kitchen): readonly Power[] => {
  const taught = Object.entries(kitchen.learned?.watts ?? {}).flatMap(([label, { value, sd }]): Power[] => {
    const level = heatLevel(kitchen, label);
    return level === null || level <= 0 || !(value > 0) ? [] : [{ level, watts: value, sd }];
  });
  if (taught.length === 0) return [];
  return kitchen.heat.flatMap((label): Power[] => {
    const level = heatLevel(kitchen, label);
    if (level === null) return [];
    const [nearest] = taught.toSorted(
      (one, other) => Math.abs(one.level - level) - Math.abs(other.level - level),
    );
    if (nearest === undefined) return [];
    if (nearest.level === level) return [nearest];
    const watts = (nearest.watts * shareOfFull(level)) / shareOfFull(nearest.level);
    return [{ level, watts, sd: Math.hypot(nearest.sd, labelDoubt) }];
  });
};
