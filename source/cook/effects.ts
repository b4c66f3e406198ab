import { batchOf } from '../batch/batch-of.js';
import { recheckDial } from '../forecast/index.js';
import type { HandsKind } from '../kitchen/kitchen.js';
import { heatLevel } from '../kitchen/stove.js';
import { toCelsius } from '../units/temperature.js';
import { divide, headline, isBefore, portionsIn } from './candy.js';
import type { Cook, Unsettled } from './cook.js';
import type { CookEvent, EventKind, Happened, TroubleName } from './event.js';
import { afterReading, afterTest, agreeToDoubt, dismissDoubt, noteEvidence } from './evidence.js';
import { afterGap } from './gap.js';
import { warnedSince } from './hazards/evidence.js';
import { afterMiddle } from './middle.js';
import { enter, moveOn, moveTo, poured, provenBy } from './moves.js';
import { hobOf } from './open.js';
import { isQuestionId, stepById } from './phases/index.js';
import { isBehind, isDone, isEndless, potIsOff } from './phases/phase.js';
import { isRoomCelsius } from './readings.js';
import { answerTrouble, meantByTold, troubleTold, warms } from './troubles.js';

type Of<Kind extends EventKind> = Extract<CookEvent, { kind: Kind }> & Happened;

const settled = (cook: Cook, what: Unsettled): Pick<Cook, 'unsettled'> => ({
  unsettled: cook.unsettled.filter((one) => one !== what),
});

/** Something was done to pot or burner: what was read before says nothing of a boil that stands still. */
const touched: Pick<Cook, 'leftAlone'> = { leftAlone: [] };

const setPot = (cook: Cook, on: boolean, t: number, said: boolean): Cook => {
  const set = noteEvidence(
    { ...cook, ...touched, potOn: { on, t, said }, gap: null, ...settled(cook, 'pot') },
    { kind: 'pot', t, on },
  );
  if (set.pouredAt !== null || set.stopped) return set;
  const phase = headline(set);
  if (on && (phase === 'test' || phase === 'flavour' || phase === 'pour'))
    return moveOn(set, 'boil', t, 'all');
  // Off for a trouble is not off for a test, unless the take-off was reached.
  const forTest = set.offSince !== null || (phase === 'boil' && set.troubles.length === 0);
  return !on && forTest && isBefore(phase, 'test') ? moveOn(set, 'test', t, 'all') : set;
};

const setHeat = (cook: Cook, setting: string, t: number): Cook => {
  const level = heatLevel(cook.batch.kitchen, setting);
  return noteEvidence(
    { ...cook, ...touched, heat: { setting, level, t }, ...settled(cook, 'heat') },
    { kind: 'heat', t, level },
  );
};

const setLid = (cook: Cook, on: boolean, t: number): Cook =>
  noteEvidence({ ...cook, ...touched, lidOn: { on, t }, ...settled(cook, 'lid') }, { kind: 'lid', t, on });

/** Today's checks change what the dial means and, without an altitude, the air pressure: the batch is computed anew. */
const recheck = (cook: Cook, checks: Cook['checks']): Cook => {
  const batch = batchOf(cook.batch.recipe, cook.batch.kitchen, { checks });
  const hob = hobOf(batch);
  // What fingers and the power in the pot moved stays moved.
  const moved = cook.takeOffCelsius - cook.batch.target.takeOffCelsius;
  return {
    ...cook,
    checks,
    batch,
    hob,
    estimate: recheckDial(cook.estimate, hob),
    takeOffCelsius: batch.target.takeOffCelsius + moved,
  };
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
      case 'middle':
        return afterMiddle(cook, event);
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
    const celsius =
      event.celsius !== null && isRoomCelsius(event.celsius) ? event.celsius : kitchen.room.celsius;
    const room = { celsius, humidity: event.humidity ?? kitchen.room.humidity };
    return { ...cook, batch: batchOf(recipe, { ...kitchen, room }, { checks: cook.checks }) };
  },
  'no thermometer': (cook) => ({ ...cook, thermometer: false, middleThermometer: false, doubt: null }),
  'cold water': (cook, event) => {
    if (cook.pouredAt !== null) return cook;
    const atTest = headline(cook) === 'test' ? cook : moveTo(cook, 'test', event.t);
    const off = potIsOff(atTest) ? atTest : { ...atTest, potOn: { on: false, t: event.t, said: false } };
    return afterTest({ ...off, ...touched, gap: null }, event.outcome, event.t);
  },
  done: (cook, event) => {
    const told = troubleTold(cook, event.step, event.t);
    if (told !== null) {
      const meant = told === cook ? null : meantByTold(cook, event.step);
      return meant === null ? told : effect(told, { ...meant, seq: event.seq, t: event.t } as Happened);
    }
    const one = stepById(event.step);
    // A safety question is never passed by "done", and what is done is done.
    if (one === undefined || isEndless(cook, one) || one.question?.safety || isDone(cook, one.id))
      return cook;
    if (one.act && isBehind(cook, one)) return cook;
    const there = provenBy(cook, one, event.t);
    const marked = one.act ? there : { ...there, done: { ...there.done, [one.id]: event.t } };
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
    const answered = answerTrouble(cook, event.question, event.answer, event.t);
    if (answered !== null) return answered;
    if (!isQuestionId(event.question)) return cook;
    const answers = { ...cook.answers, [event.question]: { answer: event.answer, t: event.t } };
    return { ...cook, answers };
  },
  ok: (cook, event) => {
    const troubles = cook.troubles.map((one) =>
      one.name === event.warning ? { ...one, answered: true } : one,
    );
    const since = warnedSince(cook, event.warning, event.t);
    if (since === null) return { ...cook, troubles };
    return { ...cook, troubles, raised: { ...cook.raised, [event.warning]: { since, answered: true } } };
  },
  heat: (cook, event) => setHeat(cook, event.setting, event.t),
  pot: (cook, event) => setPot(cook, event.on, event.t, true),
  lid: (cook, event) => setLid(cook, event.on, event.t),
  water: (cook, event) =>
    noteEvidence(
      { ...cook, ...touched, wateredAt: event.t, nearSince: null, offSince: null, offBy: null },
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
    const opened = { name: event.name, since: event.t, told: 0, answered: false, phase: headline(cook) };
    return warms({ ...cook, ...touched, troubles: [...open, opened] }, event.name, event.t);
  },
  over: (cook, event) => ({ ...cook, troubles: cook.troubles.filter((one) => one.name !== event.name) }),
  at: (cook, event) => moveTo({ ...cook, gap: null, ...settled(cook, 'pour') }, event.phase, event.t),
  stop: (cook, event) => {
    if (headline(cook) === 'over') return cook;
    const everything = portionsIn(cook.candy);
    return enter(
      {
        ...cook,
        troubles: cook.troubles.filter(({ name }) => !ofTheCandy.includes(name)),
        stopped: true,
        gap: null,
        offSince: null,
        offBy: null,
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
  gap: afterGap,
};

/** What one event does. An unknown kind from a newer program is kept in the list and changes nothing. */
export const effect = (cook: Cook, event: Happened): Cook =>
  (effects[event.kind] as ((cook: Cook, event: Happened) => Cook) | undefined)?.(cook, event) ?? cook;
