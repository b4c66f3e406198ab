import leven from 'leven';
import { flavourItems } from './items/flavours.js';
import type { Item } from './items/item.js';
import { stapleItems } from './items/kitchen-staples.js';
import { sugarItems } from './items/sugars.js';

export type { Item } from './items/item.js';

/** The ingredient table, in the order in which a shelf is read: sugars, staples, flavours and colours. */
export const items: readonly Item[] = [...sugarItems, ...stapleItems, ...flavourItems];

const byId = new Map(items.map((item) => [item.id, item]));

export const itemById = (id: string): Item | null => byId.get(id) ?? null;

const plain = (typed: string): string =>
  typed
    .toLowerCase()
    .trim()
    .replaceAll(/[\s_]+/g, '-');

/** The word of `allowed` that is nearest to what was typed; null if none is near enough to be meant. */
export const nearest = (typed: string, allowed: readonly string[]): string | null => {
  const sought = plain(typed).slice(0, 64);
  let best: string | null = null;
  // Two letters of three are another word.
  const most = sought.length <= 3 ? 1 : Math.max(2, Math.floor(sought.length / 3));
  let bestDistance = most + 1;
  for (const word of allowed) {
    const distance = leven(sought, word);
    if (distance < bestDistance) {
      best = word;
      bestDistance = distance;
    }
  }
  return best;
};

/** The id that somebody who wrote `typed` most likely meant; null if none is near. */
export const nearestItem = (typed: string): string | null => {
  const sought = plain(typed);
  const named = items.find((item) => item.id === sought || item.alsoCalled.includes(sought));
  return named?.id ?? nearest(sought, [...byId.keys()]);
};
