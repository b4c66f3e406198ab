import type { Cook, Unsettled } from './cook.js';
import { effect } from './effects.js';
import type { EventKind, Happened } from './event.js';
import { projectOff } from './evidence.js';
import { settle } from './moves.js';
import { type Opened, openCook } from './open.js';
import { stepById } from './phases/index.js';
import { lookForHazards } from './raise.js';
import { meantByTold } from './troubles.js';

/** Append without copying: a state that is not the newest of its list gets a list of its own. */
const appended = (cook: Cook, event: Happened): Happened[] => {
  const log = cook.log.length === cook.length ? cook.log : cook.log.slice(0, cook.length);
  log.push(event);
  return log;
};

const byHands = (event: Happened): boolean =>
  event.kind === 'reading' ? event.by === 'hands' : event.kind !== 'gap';

/** The pot of a rehearsal reads in the place of somebody who stands there. */
const isSimulated = (event: Happened): boolean => event.kind === 'reading' && event.by === 'pot';

const apply = (cook: Cook, event: Happened): Cook => {
  const t = Math.max(cook.t, event.t);
  const heard = byHands(event) || isSimulated(event) ? t : cook.heardAt;
  // What the forecast had come to ask for before this event stands, whatever the event does to the forecast.
  const before = projectOff({ ...cook, t, heardAt: heard }, t);
  return lookForHazards(settle(effect(before, { ...event, t }), t), t);
};

/** The acts of a body that no list can take back: undoing their event asks what is true now. */
const acts: Readonly<Partial<Record<EventKind, Unsettled>>> = { heat: 'heat', pot: 'pot', lid: 'lid' };

const actOf = (cook: Cook, event: Happened | undefined): readonly Unsettled[] => {
  if (event?.kind === 'done' && event.step === 'pour.pour') return ['pour'];
  const kind =
    event?.kind === 'done'
      ? (stepById(event.step)?.means ?? meantByTold(cook, event.step))?.kind
      : event?.kind;
  const act = kind === undefined ? undefined : acts[kind];
  return act === undefined ? [] : [act];
};

/** Fold again without what was voided. The only place where the list is walked twice. */
const withoutVoided = (cook: Cook, undo: Happened & { kind: 'undo' }): Cook => {
  const log = appended(cook, undo);
  const events = log.slice(0, cook.length + 1);
  const voided = [...cook.voided, undo.voids];
  const gone = new Set(voided);
  const [opened, ...rest] = events;
  let folded: Cook = openCook(opened as Opened);
  for (const event of rest) {
    if (event.kind === 'undo' || gone.has(event.seq)) continue;
    // With a list of its own: some conclusions look back at what happened.
    folded = { ...apply(folded, event), log: appended(folded, event), length: folded.length + 1 };
  }
  const undoes =
    rest.findLast((event) => event.kind !== 'undo' && byHands(event) && !gone.has(event.seq))?.seq ?? null;
  const t = Math.max(folded.t, cook.t, undo.t);
  const taken = actOf(
    cook,
    events.find((event) => event.seq === undo.voids),
  );
  // What an earlier undo asked and nobody has answered is still asked.
  const unsettled = [...taken, ...cook.unsettled.filter((one) => !taken.includes(one))];
  return { ...folded, t, heardAt: t, undoes, unsettled, voided, log, length: log.length };
};

/**
 * One event further: pure and total, amortised constant time (only `undo` folds again).
 * `t` never falls: an earlier one counts as now.
 */
export const step = (cook: Cook, event: Happened): Cook => {
  if (event.kind === 'undo' && cook.undoes === event.voids) return withoutVoided(cook, event);
  const after = apply(cook, event);
  const undoes = byHands(event) && event.kind !== 'undo' ? event.seq : cook.undoes;
  return { ...after, undoes, log: appended(cook, event), length: cook.length + 1 };
};

/** The cook that a whole list of events makes. Throws a TypeError if the first is not `opened`. */
export const fold = (events: readonly Happened[]): Cook => {
  const [first, ...rest] = events;
  if (first?.kind !== 'opened') throw new TypeError('a cook begins with the event "opened"');
  return rest.reduce(step, openCook(first));
};
