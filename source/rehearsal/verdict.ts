import type { Spread } from '../batch/batch.js';
import { plannedFor } from '../batch/planned-for.js';
import { planned, type RunSheet } from '../batch/run-sheet.js';
import type { Advice } from '../cook/advice.js';
import { advise } from '../cook/advise.js';
import type { Cook } from '../cook/cook.js';
import type { CookEvent, Happened } from '../cook/event.js';
import type { Level } from '../cook/hazards/hazard.js';
import { hazardById } from '../cook/hazards/table.js';
import { openCook, openingOf } from '../cook/open.js';
import { step } from '../cook/step.js';
import { feltDone } from '../cook/verdict.js';
import { type PhaseId, phaseIds } from '../recipe/recipe.js';
import { handLimitCelsius } from '../sugar/skin.js';
import type { Stage } from '../sugar/stages.js';
import { type Message, message } from '../texts/message.js';
import { type Surprise, type SurpriseName, surprises } from './surprises.js';
import type { Truth } from './table.js';

export type PhaseTime = {
  readonly phase: PhaseId;
  readonly seconds: number;
  /** By the run sheet it was opened with, else what is usual; null: nobody plans it. */
  readonly planned: Spread | null;
  /** Longer than the longest that is planned for. */
  readonly late: boolean;
};

/** How a surprise was answered. Null: it never showed, or nothing was done about it. */
export type Answered = {
  readonly surprise: SurpriseName;
  readonly showedAt: number | null;
  readonly afterSeconds: number | null;
  readonly withinSeconds: number;
  readonly inTime: boolean;
  readonly inOrder: boolean;
};

export type Met = {
  readonly id: string;
  readonly level: Level;
  readonly at: number;
  /** Until it was answered or its cause was gone; null: it stood to the end. */
  readonly stoodSeconds: number | null;
  readonly withinSeconds: number | null;
  readonly late: boolean;
};

/** What a rehearsal comes to. Seconds since the opening; Celsius is true syrup temperature. */
export type RehearsalVerdict = {
  readonly seed: number | null;
  readonly seconds: number;
  readonly ended: boolean;
  readonly stopped: boolean;
  readonly phases: readonly PhaseTime[];
  /** When the hands went in and when the run sheet had them; null: they did not, or there was no plan. */
  readonly pulling: { readonly at: number; readonly plannedAt: number } | null;
  readonly answered: Answered | null;
  readonly warnings: readonly Met[];
  readonly rest: {
    readonly celsius: number;
    readonly windowCelsius: readonly [number, number];
    readonly stage: Stage;
    readonly wanted: Stage;
    /** Taken off by a drop that felt right, with no reading behind it. */
    readonly byFingers: boolean;
  } | null;
  readonly hands: { readonly middleCelsius: number; readonly limitCelsius: number } | null;
  readonly ranOver: boolean;
  readonly grained: boolean;
  readonly changes: readonly Message[];
};

/** The beginning of what was typed for an event; null where nobody typed it. */
const wordOf = (event: CookEvent): string | null => {
  switch (event.kind) {
    case 'heat':
      return `heat ${event.setting}`;
    case 'pot':
    case 'lid':
      return `${event.kind} ${event.on ? 'on' : 'off'}`;
    case 'trouble':
    case 'over':
      return `${event.kind} ${event.name}`;
    case 'cold water':
      return event.outcome;
    case 'no thermometer':
      return 'thermometer none';
    case 'reading':
      return event.by === 'hands' && event.of === 'boiling water'
        ? 'boils'
        : event.of === 'ice'
          ? 'ice'
          : null;
    case 'done':
    case 'stop':
      return event.kind;
    default:
      return null;
  }
};

const matches = (event: Happened, beginnings: readonly string[]): boolean => {
  const word = wordOf(event);
  return word !== null && beginnings.some((one) => word === one || word.startsWith(`${one} `));
};

const answeredBy = (surprise: Surprise, shown: number | null, log: readonly Happened[]): Answered => {
  const { name, answers, withinSeconds, early } = surprise;
  const told = log.filter(({ t }) => early === true || (shown !== null && t >= shown));
  const first = told.find((event) => matches(event, answers[0]));
  const afterSeconds = first === undefined || shown === null ? null : Math.max(0, first.t - shown);
  let rest = told;
  const inOrder = answers.every((beginnings) => {
    const place = rest.findIndex((event) => matches(event, beginnings));
    rest = rest.slice(place + 1);
    return place >= 0;
  });
  const never = shown === null;
  return {
    surprise: name,
    showedAt: shown,
    afterSeconds,
    withinSeconds,
    inTime: never || (afterSeconds !== null && afterSeconds <= withinSeconds),
    inOrder: never || inOrder,
  };
};

type Standing = { readonly level: Level; readonly at: number; readonly withinSeconds: number | null };

/** Hands act first and type afterwards. Our judgement. */
const typingSeconds = 10;
const actKinds: readonly string[] = ['done', 'heat', 'pot', 'lid', 'answer', 'stop'];

/** When something was done about a reported trouble, which stands until it is said to be over; null for other warnings. */
const actedAt = (id: string, at: number, events: readonly Happened[]): number | null =>
  hazardById(id)?.raisedBy === 'report'
    ? (events.find(({ kind, t }) => t >= at && actKinds.includes(kind))?.t ?? null)
    : null;

/** Walks the cook again, event by event and at every moment at which the advice changed by itself. */
const walk = (log: readonly Happened[], end: number) => {
  const events = log.slice(1);
  let cook = openCook(openingOf(log));
  const standing = new Map<string, Standing>();
  const met: Met[] = [];
  const spent = new Map<PhaseId, number>();
  const began = new Map<PhaseId, number>();
  let before: Advice | null = null;

  const leave = (id: string, { level, at, withinSeconds }: Standing, now: number | null): void => {
    const stoodSeconds = now === null ? null : now - at;
    const until = actedAt(id, at, events) ?? now ?? end;
    const late = withinSeconds !== null && until - at > withinSeconds + typingSeconds;
    met.push({ id, level, at, stoodSeconds, withinSeconds, late });
  };
  const look = (now: number): Advice => {
    const advice = advise(cook, now);
    if (before !== null) spent.set(before.phase, (spent.get(before.phase) ?? 0) + now - before.now);
    if (!began.has(advice.phase)) began.set(advice.phase, now);
    for (const { id, level } of advice.warnings) {
      const withinSeconds = hazardById(id)?.respondWithinSeconds ?? null;
      if (!standing.has(id)) standing.set(id, { level, at: now, withinSeconds });
    }
    for (const [id, one] of standing) {
      if (advice.warnings.some((warning) => warning.id === id)) continue;
      leave(id, one, now);
      standing.delete(id);
    }
    before = advice;
    return advice;
  };

  let advice = look(0);
  for (const event of events) {
    for (let turn = 0; turn < 200 && advice.changesAt !== null && advice.changesAt < event.t; turn++)
      advice = look(advice.changesAt);
    cook = step(cook, event);
    advice = look(Math.max(event.t, cook.t));
  }
  for (const [id, one] of standing) leave(id, one, null);
  return { met: met.toSorted((one, other) => one.at - other.at), spent, began };
};

const phasesOf = (
  spent: ReadonlyMap<PhaseId, number>,
  cook: Cook,
  sheet: RunSheet | null,
): readonly PhaseTime[] =>
  phaseIds.flatMap((phase) => {
    const seconds = spent.get(phase);
    if (seconds === undefined || phase === 'over') return [];
    const time = plannedFor(phase, cook, sheet)?.seconds ?? null;
    return [{ phase, seconds, planned: time, late: time !== null && seconds > time.high }];
  });

const pullingOf = (at: number | undefined, sheet: RunSheet | null): RehearsalVerdict['pulling'] => {
  const plannedAt = sheet === null ? undefined : planned(sheet, 'pull')?.startsAt;
  return at === undefined || plannedAt === undefined ? null : { at, plannedAt };
};

/** Warmer than the limit by more than a thermometer can tell, kelvin. Our judgement. */
const handSlackKelvin = 2;

const changesOfRest = ({
  celsius,
  windowCelsius: [floor, ceiling],
  stage,
  wanted,
  byFingers,
}: NonNullable<RehearsalVerdict['rest']>): readonly Message[] => {
  if (celsius >= floor && celsius <= ceiling) return [];
  const kelvin = celsius < floor ? floor - celsius : celsius - ceiling;
  // Who tested is not told to test.
  if (byFingers)
    return [message('rehearsal.change.by-fingers', { kelvin, isBelow: celsius < floor, stage, wanted })];
  return [message(celsius < floor ? 'rehearsal.change.short' : 'rehearsal.change.past', { kelvin })];
};

const changesOf = (verdict: Omit<RehearsalVerdict, 'changes'>, leftAt: PhaseId): readonly Message[] => {
  const { answered, rest, hands, warnings, phases } = verdict;
  const changes: Message[] = [];
  if (!verdict.ended && !verdict.stopped)
    changes.push(message('rehearsal.change.unfinished', { phase: leftAt }));
  if (answered !== null && answered.showedAt !== null) {
    const { surprise, afterSeconds, withinSeconds, inTime, inOrder } = answered;
    if (afterSeconds === null) changes.push(message('rehearsal.change.unanswered', { surprise }));
    else if (!inTime)
      changes.push(message('rehearsal.change.slow', { surprise, seconds: afterSeconds, withinSeconds }));
    if (afterSeconds !== null && !inOrder) changes.push(message('rehearsal.change.order', { surprise }));
  }
  if (verdict.ranOver) changes.push(message('rehearsal.change.ran-over'));
  if (verdict.grained) changes.push(message('rehearsal.change.grained'));
  if (rest !== null) changes.push(...changesOfRest(rest));
  if (hands !== null && hands.middleCelsius > hands.limitCelsius + handSlackKelvin)
    changes.push(message('rehearsal.change.hot-hands', hands));
  for (const { id, stoodSeconds, withinSeconds } of warnings.filter(({ late }) => late))
    changes.push(
      message('rehearsal.change.late-warning', {
        hazard: id,
        name: id,
        seconds: stoodSeconds,
        withinSeconds,
      }),
    );
  for (const { phase, seconds, planned: time } of phases)
    if (time !== null && seconds > time.high)
      changes.push(message('rehearsal.change.late-phase', { phase, seconds, mostSeconds: time.high }));
  return changes.length > 0 ? changes : [message('rehearsal.change.nothing')];
};

/** What a rehearsal comes to, from its list of events and what was true in the pot. */
export const rehearsalVerdict = (
  cook: Cook,
  truth: Truth,
  surprise: SurpriseName | null,
): RehearsalVerdict => {
  const log = cook.log.slice(0, cook.length);
  const end = cook.t;
  const { met, spent, began } = walk(log, end);
  const { seed, runSheet: sheet } = openingOf(log);
  const phase = advise(cook, end).phase;
  const verdict: Omit<RehearsalVerdict, 'changes'> = {
    seed,
    seconds: end,
    ended: phase === 'over',
    stopped: cook.stopped,
    phases: phasesOf(spent, cook, sheet),
    pulling: pullingOf(began.get('pull'), sheet),
    answered: surprise === null ? null : answeredBy(surprises[surprise], truth.course.showedAt, log),
    warnings: met,
    rest:
      truth.restCelsius === null || truth.restStage === null
        ? null
        : {
            celsius: truth.restCelsius,
            windowCelsius: truth.windowCelsius,
            stage: truth.restStage,
            wanted: cook.batch.target.feels,
            byFingers: cook.readingsTaken === 0 && feltDone(cook),
          },
    hands:
      truth.middleAtHandsCelsius === null
        ? null
        : { middleCelsius: truth.middleAtHandsCelsius, limitCelsius: handLimitCelsius(cook.hands) },
    ranOver: truth.ranOver,
    grained: truth.grained,
  };
  return { ...verdict, changes: changesOf(verdict, phase) };
};
