import { bounds, readNamedFile } from '../files/read.js';
import type { ClockHabit } from '../units/wall-clock.js';
import { kitchenPath } from './named.js';
import type { World } from './world.js';

/**
 * How times of day are read where this person lives, by the categories of POSIX.1 (2017), 8.2 and the hour cycles of
 * Unicode CLDR that come with Node; null where the locale names no place. Loading them takes some milliseconds, so that
 * only commands that print a time ask.
 */
export const localeClock = ({ LC_ALL, LC_TIME, LANG }: World['env']): ClockHabit | null => {
  const named = (LC_ALL || LC_TIME || LANG || '').replace(/[.@].*$/, '').replaceAll('_', '-');
  if (!/^[a-z]{2,3}-/i.test(named)) return null;
  try {
    const { hour12 } = new Intl.DateTimeFormat(named, { hour: 'numeric' }).resolvedOptions();
    return hour12 === true ? '12h' : '24h';
  } catch {
    return null;
  }
};

/** A glance at the saved kitchen: earlier cooks are listed without reading one. */
const inKitchen = async (env: World['env']): Promise<ClockHabit | null> => {
  const read = await readNamedFile(kitchenPath({ env }), bounds.kitchen);
  if ('problem' in read) return null;
  const named = /^clock:[ \t]*["']?(12h|24h)\b/im.exec(read.text)?.[1];
  return named === '12h' || named === '24h' ? named : null;
};

/** How this person reads times of day: as the saved kitchen has it, else as the locale; null: neither says. */
export const clockOf = async ({ env }: Pick<World, 'env'>): Promise<ClockHabit | null> =>
  (await inKitchen(env)) ?? localeClock(env);
