import type { Cook } from '../cook/cook.js';
import type { Happened, TroubleName } from '../cook/event.js';
import { stepById } from '../cook/phases/index.js';
import { heatLevel } from '../kitchen/stove.js';

/** What a person can be seen to do about a trouble. */
export type Act =
  | 'heat down'
  | 'heat off'
  | 'pot off'
  | 'lid on'
  | 'water'
  | 'measure'
  | 'test'
  | 'check'
  | 'give up';

/** Acts in the right order. `either`: the first of them in any order; `never`: what makes it worse. */
export type RightActs = {
  readonly acts: readonly Act[];
  readonly either?: boolean;
  readonly never?: readonly Act[];
};

/**
 * The first acts of the hazard table that leave a trace in the journal; what leaves none (a sleeve under the water, a
 * window) can't be judged. Before the pour where it differs.
 */
export const rightActs: Readonly<Partial<Record<TroubleName, RightActs>>> = {
  foam: { acts: ['heat down', 'pot off'], either: true, never: ['water'] },
  overflow: { acts: ['heat off', 'pot off'], never: ['water'] },
  scorched: { acts: ['pot off', 'heat off'], either: true, never: ['water'] },
  fire: { acts: ['lid on', 'heat off'], never: ['water', 'pot off'] },
  burn: { acts: ['heat off', 'pot off'], either: true },
  overshoot: { acts: ['pot off', 'water'] },
  thermometer: { acts: ['check', 'test'], either: true },
  power: { acts: ['heat off', 'pot off'], either: true },
  away: { acts: ['heat off', 'pot off'], either: true },
  soft: { acts: ['test'] },
  stiff: { acts: ['measure'] },
  glass: { acts: ['give up'] },
};

type Seen = { readonly act: Act; readonly t: number };

const ofEvent = (event: Happened, before: Cook): readonly Act[] => {
  const meant = event.kind === 'done' ? (stepById(event.step)?.means ?? event) : event;
  switch (meant.kind) {
    case 'heat': {
      const level = heatLevel(before.batch.kitchen, meant.setting);
      if (level === 0) return ['heat off', 'heat down'];
      return level !== null && level < (before.heat?.level ?? 1) ? ['heat down'] : [];
    }
    case 'pot':
      return meant.on ? [] : ['pot off'];
    case 'lid':
      return meant.on ? ['lid on'] : [];
    case 'water':
      return ['water'];
    case 'cold water':
      return ['test'];
    case 'stop':
      return ['give up'];
    case 'no thermometer':
      return ['check'];
    case 'reading':
      if (meant.of === 'middle') return ['measure'];
      return meant.of === 'ice' || meant.of === 'boiling water' ? ['check'] : [];
    default:
      return [];
  }
};

/** What an event shows that somebody did; `before` is the cook before it. */
export const actsOf = (event: Happened, before: Cook): readonly Seen[] =>
  ofEvent(event, before).map((act) => ({ act, t: event.t }));

/** What was already so when the trouble came. */
export const alreadyDone = (cook: Cook): readonly Act[] => [
  ...(cook.heat?.level === 0 ? (['heat off', 'heat down'] as const) : []),
  ...(cook.potOn?.on === false ? (['pot off'] as const) : []),
  ...(cook.lidOn?.on === true ? (['lid on'] as const) : []),
];

/** Whether what was seen is in the right order; `not seen` where the journal shows too little to tell. */
export const orderOf = (
  right: RightActs | undefined,
  already: readonly Act[],
  seen: readonly Act[],
): 'right' | 'wrong' | 'not seen' => {
  if (right === undefined) return 'not seen';
  if (seen.some((act) => right.never?.includes(act))) return 'wrong';
  const all = [...already, ...seen];
  const first = right.acts.map((act) => all.indexOf(act));
  if (right.either) return first.some((place) => place >= 0) ? 'right' : 'not seen';
  const done = first.filter((place) => place >= 0);
  if (done.length === 0) return 'not seen';
  const known = already.length;
  const inOrder = done.every((place, index) => place < known || place >= (done[index - 1] ?? 0));
  // The first act is what matters: a later one without it was done too soon.
  return inOrder && first[0] !== -1 ? 'right' : 'wrong';
};
