import type { Cook, Unsettled } from './cook.js';
import { effect } from './effects.js';
import type { EventKind, Happened } from './event.js';
import { projectOff } from './evidence.js';
import { settle } from './moves.js';
import { openCook, openingOf } from './open.js';
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

/**
 * The same cook, each field named. The engine of Node 20 gives every copy of a copy a layout of its own and then looks
 * each field up; copied from one place they have one layout, and a long journal is folded in two thirds of the time.
 */
const asItIs = (cook: Cook): Cook => ({
  log: cook.log,
  length: cook.length,
  batch: cook.batch,
  hob: cook.hob,
  rehearsal: cook.rehearsal,
  from: cook.from,
  t: cook.t,
  heardAt: cook.heardAt,
  candy: cook.candy,
  enteredAt: cook.enteredAt,
  leftAt: cook.leftAt,
  done: cook.done,
  answers: cook.answers,
  stopped: cook.stopped,
  heat: cook.heat,
  potOn: cook.potOn,
  lidOn: cook.lidOn,
  wateredAt: cook.wateredAt,
  pouredAt: cook.pouredAt,
  boilsSince: cook.boilsSince,
  thermometer: cook.thermometer,
  middleThermometer: cook.middleThermometer,
  checks: cook.checks,
  estimate: cook.estimate,
  lastReading: cook.lastReading,
  readBefore: cook.readBefore,
  leftAlone: cook.leftAlone,
  readingsTaken: cook.readingsTaken,
  doubt: cook.doubt,
  lastTest: cook.lastTest,
  takeOffCelsius: cook.takeOffCelsius,
  movedKelvin: cook.movedKelvin,
  offSince: cook.offSince,
  offBy: cook.offBy,
  reachedAt: cook.reachedAt,
  nearSince: cook.nearSince,
  hands: cook.hands,
  middle: cook.middle,
  warmedAt: cook.warmedAt,
  droops: cook.droops,
  armsOut: cook.armsOut,
  portions: cook.portions,
  troubles: cook.troubles,
  raised: cook.raised,
  undoes: cook.undoes,
  unsettled: cook.unsettled,
  gap: cook.gap,
  voided: cook.voided,
  weighed: cook.weighed,
  tenPieces: cook.tenPieces,
  counted: cook.counted,
});

const apply = (cook: Cook, event: Happened): Cook => {
  const t = Math.max(cook.t, event.t);
  const heard: Cook = {
    ...asItIs(cook),
    t,
    heardAt: byHands(event) || isSimulated(event) ? t : cook.heardAt,
    undoes: byHands(event) && event.kind !== 'undo' ? event.seq : cook.undoes,
    log: appended(cook, event),
    length: cook.length + 1,
  };
  // What the forecast had come to ask for before this event stands, whatever the event does to the forecast.
  const before = projectOff(heard, t);
  return lookForHazards(settle(effect(before, event.t === t ? event : { ...event, t }), t), t);
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
  let folded: Cook = openCook(openingOf(events));
  for (const event of events.slice(1)) {
    if (event.kind !== 'undo' && !gone.has(event.seq)) folded = apply(folded, event);
  }
  const t = Math.max(folded.t, cook.t, undo.t);
  const taken = actOf(
    cook,
    events.find((event) => event.seq === undo.voids),
  );
  // What an earlier undo asked and nobody has answered is still asked.
  const unsettled = [...taken, ...cook.unsettled.filter((one) => !taken.includes(one))];
  return { ...folded, t, heardAt: t, unsettled, voided, log, length: log.length };
};

/**
 * One event further: pure and total, amortised constant time (only `undo` folds again).
 * `t` never falls: an earlier one counts as now.
 */
export const step = (cook: Cook, event: Happened): Cook => {
  if (event.kind === 'undo' && cook.undoes === event.voids) return withoutVoided(cook, event);
  return apply(cook, event);
};

/** The cook that a whole list of events makes. Throws a TypeError if the first is not `opened`. */
export const fold = (events: readonly Happened[]): Cook =>
  events.slice(1).reduce(step, openCook(openingOf(events)));
