import type { Advice } from '../cook/advice.js';
import { advise } from '../cook/advise.js';
import type { Cook } from '../cook/cook.js';
import type { Happened } from '../cook/event.js';
import { openCook, openingOf } from '../cook/open.js';
import { step } from '../cook/step.js';

/** A moment of a cook: after an event, or at an instant at which the advice changed by itself. */
export type Instant = {
  readonly t: number;
  readonly cook: Cook;
  readonly advice: Advice;
  /** Null: nothing happened, only time passed. */
  readonly event: Happened | null;
};

/** Where the syrup is followed although nothing happened: every so many seconds while it is hot. */
const sampleSeconds = 30;
/** After the pot came off the syrup still climbs; then it is looked at more often. */
const climbSeconds = { every: 10, during: 60 } as const;
/** Between two events no more instants than this: somebody left it standing overnight. */
const mostBetween = 240;
/** A feed tells more often than anything changes, seconds. */
const feedSeconds = 2;

const isHot = (cook: Cook): boolean =>
  cook.pouredAt === null && !cook.stopped && (cook.readingsTaken > 0 || cook.lastTest !== null);

const sampleAfter = (cook: Cook, now: number): number => {
  const off = cook.potOn;
  const climbs = off !== null && !off.on && now - off.t < climbSeconds.during;
  return now + (climbs ? climbSeconds.every : sampleSeconds);
};

/** The instants after `now` and before `until` at which something is to be seen. */
function* between(cook: Cook, until: number): Generator<Instant> {
  let now = cook.t;
  let advice = advise(cook, now);
  for (let count = 0; count < mostBetween; count += 1) {
    const sample = isHot(cook) ? sampleAfter(cook, now) : Number.POSITIVE_INFINITY;
    const next = Math.min(advice.changesAt ?? Number.POSITIVE_INFINITY, sample);
    if (!(next < until)) return;
    now = next;
    advice = advise(cook, now);
    yield { t: now, cook, advice, event: null };
  }
}

const isFeed = (event: Happened): boolean => event.kind === 'reading' && event.by !== 'hands';

/**
 * A cook once more, from its events: what was advised after each of them and wherever the advice changed between them.
 * Readings of a feed that come more often than every two seconds are folded without being looked at, but for the last.
 * Ends with the last event; the walk of a list's beginning is the beginning of its walk. Throws a TypeError if the first event is not `opened`.
 */
export function* walk(events: readonly Happened[]): Generator<Instant> {
  const first = openingOf(events);
  const rest = events.slice(1);
  let cook = openCook(first);
  let lookedAt = cook.t;
  yield { t: cook.t, cook, advice: advise(cook, cook.t), event: first };
  const last = rest.at(-1);
  for (const event of rest) {
    if (isFeed(event) && event.t - lookedAt < feedSeconds && event !== last) {
      cook = step(cook, event);
      continue;
    }
    yield* between(cook, event.t);
    cook = step(cook, event);
    lookedAt = cook.t;
    yield { t: cook.t, cook, advice: advise(cook, cook.t), event };
  }
}
