import { batchOf } from '../batch/batch-of.js';
import type { HandsKind } from '../kitchen/kitchen.js';
import { heatLevel } from '../kitchen/stove.js';
import type { PhaseId } from '../recipe/recipe.js';
import { toCelsius } from '../units/temperature.js';
import { canDivide, divide, headline, isBefore, move, phaseAfter, portionsIn } from './candy.js';
import type { Cook } from './cook.js';
import type { CookEvent, EventKind, Happened, TroubleName } from './event.js';
import { afterReading, afterTest, agreeToDoubt, dismissDoubt, noteEvidence } from './evidence.js';
import { type Opened, openCook } from './open.js';
import { phaseOf, phases, stepById } from './phases/index.js';
import { isBehind, isDone, isEndless, potIsOff, type Step, stepAt } from './phases/phase.js';
import { lookForHazards } from './raise.js';
import { troubleTold } from './troubles.js';
import { verdictOf } from './verdict.js';

type Of<Kind extends EventKind> = Extract<CookEvent, { kind: Kind }> & Happened;

/** Enter a phase: what has to be done again there is open again. */
const enter = (cook: Cook, phase: PhaseId, t: number): Cook => {
  const done = { ...cook.done };
  for (const one of phaseOf(phase).steps) if (one.again) delete done[one.id];
  return {
    ...cook,
    done,
    enteredAt: { ...cook.enteredAt, [phase]: t },
    ...(phase === 'pull' ? { droops: null, armsOut: false } : {}),
    ...(phase === 'boil' ? { offSince: null } : {}),
  };
};

/** Move candy from the headline phase to another, all of it or one portion. */
const moveOn = (cook: Cook, to: PhaseId, t: number, how: 'all' | 'one'): Cook => {
  const from = headline(cook);
  if (from === to) return cook;
  const here = cook.candy[from] ?? 0;
  const candy = move(cook.candy, from, to, how === 'one' ? 1 : here);
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
const settle = (cook: Cook, t: number): Cook => {
  let now = cook;
  // Bounded: a cook has twelve phases, and only a portion at a time goes round again.
  for (let turn = 0; turn < 24; turn += 1) {
    const phase = headline(now);
    if (phase === 'over' || stepAt(now, phaseOf(phase)) !== null) return now;
    const definition = phaseOf(phase);
    now = moveOn(now, nextOf(now, phase), t, definition.moves ?? 'all');
  }
  return now;
};

const setPot = (cook: Cook, on: boolean, t: number, said: boolean): Cook => {
  const set: Cook = noteEvidence(
    { ...cook, potOn: { on, t, said }, unsettled: cook.unsettled === 'pot' ? null : cook.unsettled },
    { kind: 'pot', t, on },
  );
  if (set.pouredAt !== null || set.stopped) return set;
  const phase = headline(set);
  if (on && (phase === 'test' || phase === 'flavour' || phase === 'pour'))
    return moveOn(set, 'boil', t, 'all');
  // Off for a trouble is not off for a test, unless the take-off was reached.
  const forTest = set.offSince !== null || set.troubles.length === 0;
  if (!on && phase === 'boil' && forTest) return moveOn(set, 'test', t, 'all');
  return set;
};

const setHeat = (cook: Cook, setting: string, t: number): Cook => {
  const level = heatLevel(cook.batch.kitchen, setting);
  return noteEvidence(
    { ...cook, heat: { setting, level, t }, unsettled: cook.unsettled === 'heat' ? null : cook.unsettled },
    { kind: 'heat', t, level },
  );
};

const setLid = (cook: Cook, on: boolean, t: number): Cook =>
  noteEvidence(
    { ...cook, lidOn: { on, t }, unsettled: cook.unsettled === 'lid' ? null : cook.unsettled },
    { kind: 'lid', t, on },
  );

const poured = (cook: Cook, t: number): Cook => ({ ...cook, pouredAt: cook.pouredAt ?? t, offSince: null });

/** Today's checks change what the dial means and, without an altitude, the air pressure: the batch is computed anew. */
const recheck = (cook: Cook, checks: Cook['checks']): Cook => {
  const batch = batchOf(cook.batch.recipe, cook.batch.kitchen, { checks });
  return { ...cook, checks, batch, takeOffCelsius: batch.target.takeOffCelsius };
};

const moveTo = (cook: Cook, to: PhaseId, t: number): Cook => {
  const from = headline(cook);
  if (to === from) return cook;
  const divided = canDivide(from) && canDivide(to) && portionsIn(cook.candy) > 1 && isBefore(from, to);
  const moved = moveOn(cook, to, t, divided ? 'one' : 'all');
  const back = isBefore(to, from) ? enter(moved, to, t) : moved;
  const into = { ...back, stopped: to === 'over' || to === 'clean' ? back.stopped : false };
  // A batch that lies on the slab was poured, whoever poured it and whenever.
  if (isBefore('pour', to)) return poured(into, t);
  return { ...into, pouredAt: null };
};

/**
 * A confirmation proves what comes before it over: the earlier steps of its phase, and the earlier phases when the
 * list comes from an older program. Pause points and the gate to hands are never proven, only answered.
 */
const provenBy = (cook: Cook, one: Step, t: number): Cook => {
  const phase = phases.find(({ steps }) => steps.includes(one));
  if (phase === undefined || one.question !== undefined) return cook;
  const there = isBefore(headline(cook), phase.id) ? moveTo(cook, phase.id, t) : cook;
  if (headline(there) !== phase.id) return there;
  const before = phase.steps.slice(0, phase.steps.indexOf(one)).filter((step) => !isBehind(there, step));
  const proven = before.filter((step) => step.question === undefined && !isEndless(there, step));
  return { ...there, done: { ...there.done, ...Object.fromEntries(proven.map((step) => [step.id, t])) } };
};

/** Troubles of the candy: given up with the batch. Those in which people can be hurt stay. */
const ofTheCandy: readonly TroubleName[] = [
  'grains',
  'overshoot',
  'soft',
  'stiff',
  'thermometer',
  'foam',
  'away',
];

/** What each kind of event does to the state. Total: every event is legal in every state. */
const effects: { readonly [Kind in EventKind]: (cook: Cook, event: Of<Kind>) => Cook } = {
  opened: (cook) => cook,
  reading: (cook, event) => {
    const shownCelsius = toCelsius(event.value, event.unit);
    switch (event.of) {
      case 'syrup':
        return cook.pouredAt === null ? afterReading(cook, event) : cook;
      case 'middle': {
        // Towards the safe side: the correction only ever raises what hands would touch.
        const celsius = Math.max(shownCelsius, cook.batch.dial.toTrueCelsius(shownCelsius));
        return { ...cook, thermometer: true, middle: { seq: event.seq, t: event.t, celsius } };
      }
      case 'ice':
        return recheck(cook, { ...cook.checks, iceShownCelsius: shownCelsius });
      case 'boiling water':
        return recheck(cook, { ...cook.checks, boilsShownCelsius: shownCelsius });
      default:
        return cook;
    }
  },
  room: (cook, event) => {
    const { kitchen, recipe } = cook.batch;
    const room = {
      celsius: event.celsius ?? kitchen.room.celsius,
      humidity: event.humidity ?? kitchen.room.humidity,
    };
    return { ...cook, batch: batchOf(recipe, { ...kitchen, room }, { checks: cook.checks }) };
  },
  'no thermometer': (cook) => ({ ...cook, thermometer: false, doubt: null }),
  'cold water': (cook, event) => {
    if (cook.pouredAt !== null) return cook;
    const atTest = headline(cook) === 'test' ? cook : moveTo(cook, 'test', event.t);
    const off = potIsOff(atTest) ? atTest : { ...atTest, potOn: { on: false, t: event.t, said: false } };
    return afterTest(off, event.outcome, event.t);
  },
  done: (cook, event) => {
    const told = troubleTold(cook, event.step, event.t);
    if (told !== null) return told;
    const one = stepById(event.step);
    // A safety question is never passed by "done", and what is done is done.
    if (one === undefined || isEndless(cook, one) || one.question?.safety || isDone(cook, one.id))
      return cook;
    const there = provenBy(cook, one, event.t);
    const marked = { ...there, done: { ...there.done, [one.id]: event.t } };
    const meant =
      one.means === undefined
        ? marked
        : effect(marked, { ...one.means, seq: event.seq, t: event.t } as Happened);
    if (one.id === 'pour.pour') return poured(meant, event.t);
    if (one.id === 'pull.droop') return { ...meant, droops: false };
    return meant;
  },
  answer: (cook, event) => {
    if (event.question === 'reading.doubt')
      return event.answer === 'yes' ? agreeToDoubt(cook) : dismissDoubt(cook);
    if (event.question === 'trouble.glass' && event.answer === 'yes') {
      return effect(cook, { kind: 'trouble', name: 'glass', seq: event.seq, t: event.t });
    }
    const answers = { ...cook.answers, [event.question]: { answer: event.answer, t: event.t } };
    return { ...cook, answers };
  },
  ok: (cook, event) => {
    const raised = cook.raised[event.warning];
    const troubles = cook.troubles.map((one) =>
      one.name === event.warning ? { ...one, told: Number.MAX_SAFE_INTEGER } : one,
    );
    if (raised === undefined) return { ...cook, troubles };
    return { ...cook, troubles, raised: { ...cook.raised, [event.warning]: { ...raised, answered: true } } };
  },
  heat: (cook, event) => setHeat(cook, event.setting, event.t),
  pot: (cook, event) => setPot(cook, event.on, event.t, true),
  lid: (cook, event) => setLid(cook, event.on, event.t),
  water: (cook, event) =>
    noteEvidence(
      { ...cook, wateredAt: event.t, nearSince: null, offSince: null },
      { kind: 'water', t: event.t, grams: event.grams },
    ),
  hands: (cook, event) => ({ ...cook, hands: event.whose satisfies HandsKind }),
  rope: (cook, event) => {
    if (event.does === 'holds') return { ...cook, droops: false };
    const { 'pull.stretch': _stretch, 'pull.droop': _droop, 'pull.stiff': _stiff, ...done } = cook.done;
    return { ...cook, droops: true, done: { ...done, 'droop.seen': event.t } };
  },
  'arms out': (cook) => ({ ...cook, armsOut: true }),
  portions: (cook, event) => ({ ...cook, portions: event.count, candy: divide(cook.candy, event.count) }),
  trouble: (cook, event) => {
    const open = cook.troubles.filter((one) => one.name !== event.name);
    const opened = { name: event.name, since: event.t, told: 0, phase: headline(cook) };
    const { [`trouble.${event.name}`]: _old, 'trouble.glass': _glass, ...answers } = cook.answers;
    const warmed = event.name === 'stiff' ? { warmedAt: event.t } : {};
    return { ...cook, answers, troubles: [...open, opened], ...warmed };
  },
  over: (cook, event) => ({ ...cook, troubles: cook.troubles.filter((one) => one.name !== event.name) }),
  at: (cook, event) => moveTo(cook, event.phase, event.t),
  stop: (cook, event) => {
    if (headline(cook) === 'over') return cook;
    const everything = portionsIn(cook.candy);
    return enter(
      {
        ...cook,
        troubles: cook.troubles.filter(({ name }) => !ofTheCandy.includes(name)),
        stopped: true,
        offSince: null,
        candy: { clean: everything },
        leftAt: { ...cook.leftAt, [headline(cook)]: event.t },
      },
      'clean',
      event.t,
    );
  },
  undo: (cook) => cook,
  weigh: (cook, event) =>
    event.pieces === null
      ? { ...cook, weighed: { grams: event.grams, pieces: null } }
      : { ...cook, tenPieces: { grams: event.grams, pieces: event.pieces } },
  count: (cook, event) => ({ ...cook, counted: event.pieces }),
  note: (cook) => cook,
  mark: (cook) => cook,
};

const effect = (cook: Cook, event: Happened): Cook =>
  // The table is total over the kinds; an unknown kind from a newer program is kept and ignored.
  (effects[event.kind] as ((cook: Cook, event: Happened) => Cook) | undefined)?.(cook, event) ?? cook;

/** Append without copying: a state that is not the newest of its list gets a list of its own. */
const appended = (cook: Cook, event: Happened): Happened[] => {
  const log = cook.log.length === cook.length ? cook.log : cook.log.slice(0, cook.length);
  log.push(event);
  return log;
};

const byHands = (event: Happened): boolean => event.kind !== 'reading' || event.by === 'hands';

const apply = (cook: Cook, event: Happened): Cook => {
  const t = Math.max(cook.t, event.t);
  const heard = byHands(event) ? t : cook.heardAt;
  const happened = settle(effect({ ...cook, t, heardAt: heard }, event), t);
  return lookForHazards(happened, t);
};

/** The acts of a body that no list can take back: undoing their event asks what is true now. */
const acts: Readonly<Partial<Record<EventKind, Cook['unsettled']>>> = {
  heat: 'heat',
  pot: 'pot',
  lid: 'lid',
};

const actOf = (event: Happened): Cook['unsettled'] =>
  event.kind === 'done' && event.step === 'pour.pour' ? 'pour' : (acts[event.kind] ?? meansAct(event));

const meansAct = (event: Happened): Cook['unsettled'] => {
  const means = event.kind === 'done' ? stepById(event.step)?.means?.kind : undefined;
  return means === undefined ? null : (acts[means] ?? null);
};

/** Fold again without what was voided. The only place where the list is walked twice. */
const withoutVoided = (cook: Cook, undo: Happened & { kind: 'undo' }): Cook => {
  const log = appended(cook, undo);
  const events = log.slice(0, cook.length + 1);
  const voided = new Set(events.flatMap((event) => (event.kind === 'undo' ? [event.voids] : [])));
  const [opened, ...rest] = events;
  let folded: Cook = openCook(opened as Opened);
  for (const event of rest) {
    if (event.kind !== 'undo' && !voided.has(event.seq)) folded = apply(folded, event);
  }
  const taken = events.find((event) => event.seq === undo.voids);
  const undoes =
    rest.findLast((event) => event.kind !== 'undo' && byHands(event) && !voided.has(event.seq))?.seq ?? null;
  const t = Math.max(folded.t, undo.t);
  const unsettled = taken === undefined ? null : actOf(taken);
  return { ...folded, t, heardAt: t, undoes, unsettled, log, length: log.length };
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
