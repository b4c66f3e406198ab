import type { PhaseId } from '../recipe/recipe.js';
import { canDivide, headline, isBefore, move, phaseAfter, portionsIn } from './candy.js';
import type { Cook } from './cook.js';
import { phaseOf, phases } from './phases/index.js';
import { isBehind, isEndless, type Step, stepAt } from './phases/phase.js';
import { verdictOf } from './verdict.js';

const without = <Value>(
  record: Readonly<Record<string, Value>>,
  ids: readonly string[],
): Readonly<Record<string, Value>> =>
  Object.fromEntries(Object.entries(record).filter(([id]) => !ids.includes(id)));

/** Enter a phase: what has to be done or asked again there is open again. */
export const enter = (cook: Cook, phase: PhaseId, t: number): Cook => {
  const again = phaseOf(phase).steps.filter((one) => one.again);
  return {
    ...cook,
    done: without(
      cook.done,
      again.map(({ id }) => id),
    ),
    answers: without(
      cook.answers,
      again.flatMap(({ question }) => question?.id ?? []),
    ),
    enteredAt: { ...cook.enteredAt, [phase]: t },
    ...(phase === 'pull' ? { droops: null, armsOut: false } : {}),
    ...(phase === 'boil' ? { offSince: null, offBy: null } : {}),
  };
};

/** Move candy from the headline phase to another one, all of it or one portion. */
export const moveOn = (cook: Cook, to: PhaseId, t: number, how: 'all' | 'one'): Cook => {
  const from = headline(cook);
  const candy = move(cook.candy, from, to, how === 'one' ? 1 : Number.POSITIVE_INFINITY);
  const left = candy[from] === undefined ? { ...cook.leftAt, [from]: t } : cook.leftAt;
  const moved = { ...cook, candy, leftAt: left };
  // Steps of the next portion start anew; what waits in a later phase goes on undisturbed.
  const again = candy[from] === undefined ? moved : enter(moved, from, t);
  const isNew = (cook.candy[to] ?? 0) === 0;
  return isNew ? enter(again, to, t) : again;
};

/** Where a finished phase hands over to. */
const nextOf = (cook: Cook, phase: PhaseId): PhaseId => {
  if (phase === 'test' && verdictOf(cook) === 'short') return 'boil';
  return phaseAfter(phase);
};

/** Go on while everything in the headline phase is behind us. */
export const settle = (cook: Cook, t: number): Cook => {
  let now = cook;
  // Bounded: a cook has twelve phases, and only a portion at a time goes round again.
  for (let turn = 0; turn < 24; turn += 1) {
    const phase = headline(now);
    if (phase === 'over' || stepAt(now, phaseOf(phase)) !== null) return now;
    const { moves } = phaseOf(phase);
    now = moveOn(now, nextOf(now, phase), t, moves?.(now) ?? 'all');
  }
  return now;
};

/** What was done, measured and answered of the mass on the slab: a new mass begins anew. */
const ofTheMass = {
  done: phaseOf('fold').steps.map(({ id }) => id),
  answers: ['hands.layer', 'hands.crumb', 'hands.pause'],
} as const;

/** The syrup lies on the slab. */
export const poured = (cook: Cook, t: number): Cook => {
  const settled = { ...cook, gap: null, unsettled: cook.unsettled.filter((what) => what !== 'pour') };
  if (cook.pouredAt !== null) return settled;
  return {
    ...settled,
    pouredAt: t,
    offSince: null,
    offBy: null,
    doubt: null,
    middle: null,
    warmedAt: null,
    done: without(cook.done, ofTheMass.done),
    answers: without(cook.answers, ofTheMass.answers),
  };
};

export const moveTo = (cook: Cook, to: PhaseId, t: number): Cook => {
  const from = headline(cook);
  if (to === from) return cook;
  const divided = canDivide(from) && canDivide(to) && portionsIn(cook.candy) > 1 && isBefore(from, to);
  const moved = moveOn(cook, to, t, divided ? 'one' : 'all');
  const back = isBefore(to, from) ? enter(moved, to, t) : moved;
  const into = { ...back, stopped: to === 'over' || to === 'clean' ? back.stopped : false };
  if (into.stopped) return into;
  // A batch that lies on the slab was poured, whoever poured it and whenever.
  if (isBefore('pour', to)) return poured(into, t);
  return { ...into, pouredAt: null };
};

/**
 * A confirmation proves what comes before it over: the earlier steps of its phase, and the earlier phases when the
 * list comes from an older program. Pause points and the gate to hands are never proven, only answered.
 */
export const provenBy = (cook: Cook, one: Step, t: number): Cook => {
  const phase = phases.find(({ steps }) => steps.includes(one));
  if (phase === undefined || one.question !== undefined) return cook;
  const there = isBefore(headline(cook), phase.id) ? moveTo(cook, phase.id, t) : cook;
  if (headline(there) !== phase.id) return there;
  const before = phase.steps.slice(0, phase.steps.indexOf(one)).filter((step) => !isBehind(there, step));
  const proven = before.filter((step) => step.question === undefined && !isEndless(there, step) && !step.act);
  return { ...there, done: { ...there.done, ...Object.fromEntries(proven.map((step) => [step.id, t])) } };
};
