import { handLimit } from '../cook/phases/gates.js';
import { type Message, message } from '../texts/message.js';
import type { Facts } from './story.js';

/** Something to find again in a recording. */
export type Moment = {
  readonly t: number;
  readonly title: Message;
  /** Where two are too close together the heavier stays. */
  readonly weight: number;
};

const weights = { trouble: 6, off: 5, test: 4, pour: 4, phase: 3, hands: 2, remark: 2, warning: 1 } as const;

const phaseMoments = ({ spans }: Facts): readonly Moment[] =>
  spans
    .filter(({ phase }) => phase !== 'over' && phase !== 'test')
    .map(({ phase, from }, index, all) => ({
      t: from,
      title: message('debrief.chapter.phase', {
        phase,
        again: all.slice(0, index).some((one) => one.phase === phase),
      }),
      weight: phase === 'pour' ? weights.pour : weights.phase,
    }));

const handsMoment = ({ readings, cook }: Facts): readonly Moment[] => {
  const cool = readings.find(
    ({ of, believed, celsius }) => of === 'middle' && believed && celsius <= handLimit(cook),
  );
  return cool === undefined
    ? []
    : [
        {
          t: cool.t,
          title: message('debrief.chapter.hands', { celsius: cool.celsius }),
          weight: weights.hands,
        },
      ];
};

/** The phases and what was worth seeing, in order of time. */
export const momentsOf = (facts: Facts): readonly Moment[] =>
  [
    ...phaseMoments(facts),
    ...facts.tests.map(({ t, outcome, verdict }) => ({
      t,
      title: message('debrief.chapter.test', { outcome, verdict }),
      weight: weights.test,
    })),
    ...facts.offs
      .filter(({ askedAt }) => askedAt !== null)
      .map(({ t, celsius }) => ({
        t,
        title: message('debrief.chapter.off', { celsius }),
        weight: weights.off,
      })),
    ...handsMoment(facts),
    ...facts.troubles.map(({ at, name }) => ({
      t: at,
      title: message('debrief.chapter.trouble', { name }),
      weight: weights.trouble,
    })),
    ...facts.warnings
      .filter(({ level }) => level === 'now')
      .map(({ raisedAt, cause }) => ({ t: raisedAt, title: cause, weight: weights.warning })),
    ...facts.notes.map(({ t, text }) => ({
      t,
      title: message('debrief.chapter.remark', { text }),
      weight: weights.remark,
    })),
  ].toSorted((one, other) => one.t - other.t);

export type Chapter = { readonly seconds: number; readonly title: Message };

/** Video sites want chapters at least this long, the first at zero (common practice, from memory). */
const leastSeconds = 10;

/**
 * Chapters of a recording that began at `startedAt` (seconds since the opening): the first at 0 names what was going on
 * then, the others are at least 10 s apart. `until`: what belongs to the next recording is left out.
 */
export const chaptersOf = (
  { moments, spans }: Pick<Facts, 'spans'> & { readonly moments: readonly Moment[] },
  startedAt: number,
  until = Number.POSITIVE_INFINITY,
): readonly Chapter[] => {
  const going = spans.findLast(({ from }) => from <= startedAt)?.phase ?? 'mix';
  const first: Moment = {
    t: startedAt,
    title: message('debrief.chapter.phase', { phase: going, again: false }),
    weight: Number.POSITIVE_INFINITY,
  };
  const inside = moments.filter(({ t }) => t > startedAt && t < until);
  const kept: Moment[] = [first];
  for (const moment of inside) {
    const last = kept.at(-1) as Moment;
    if (moment.t - last.t >= leastSeconds) kept.push(moment);
    else if (moment.weight > last.weight) kept[kept.length - 1] = { ...moment, t: last.t };
  }
  return kept.map(({ t, title }) => ({ seconds: Math.floor(t - startedAt), title }));
};
