import { believe, project } from '../forecast/index.js';
import { thermometerFor } from '../kitchen/air.js';
import { heatWords } from '../kitchen/stove.js';
import { type PhaseId, phaseIds } from '../recipe/recipe.js';
import { type Message, message, type TextId } from '../texts/message.js';
import type { TemperatureUnit } from '../units/printer.js';
import type { Advice, Asked, Countdown, OpenTroubleAdvice, Trail, Warning } from './advice.js';
import { activePhases, headline, isBefore } from './candy.js';
import type { Cook, Unsettled } from './cook.js';
import { driftOf } from './drift.js';
import { takeOffAt, target } from './evidence.js';
import { gapComesFirst, gapHeadline, gapQuestion } from './gap.js';
import { belongsTo, evidenceHazards, pastKelvin, rateOfRise, warnedSince } from './hazards/evidence.js';
import { byUrgency, type EvidenceHazard, type Hazard, type HazardId, responseOf } from './hazards/hazard.js';
import { reportOf } from './hazards/reports.js';
import { hazardById } from './hazards/table.js';
import { boilOff } from './phases/boil.js';
import { phaseOf } from './phases/index.js';
import { overEnd } from './phases/over.js';
import { isDone, isEndless, potIsOff, type Step, stepAt, type Timer } from './phases/phase.js';
import { isQuiet, quietAt } from './quiet.js';
import { isTooColdToBoil, stageShown } from './readings.js';
import { type Instruction, instruction, instructionOf } from './troubles.js';
import { feltDone } from './verdict.js';
import type { View } from './view.js';

const boiled: readonly PhaseId[] = ['boil', 'test'];

/** The pot should come off: a reading, a test or the forecast says so, and nobody has said that it is off. */
const isOffTheHeat = (cook: Cook, now: number): boolean => {
  if (cook.pouredAt !== null || cook.stopped) return false;
  if (!['mix', 'dissolve', 'boil', 'test', 'flavour'].includes(headline(cook))) return false;
  const saidOff = potIsOff(cook) && cook.potOn?.said === true;
  if (feltDone(cook) && !saidOff && headline(cook) === 'flavour') return true;
  if (potIsOff(cook)) return false;
  if (cook.offSince !== null) return true;
  const at = takeOffAt(cook, now);
  return at !== null && at <= now;
};

const look = (cook: Cook, now: number): View => {
  const boiling = boiled.includes(headline(cook));
  const { curve } = cook.batch;
  const belief = cook.pouredAt === null ? believe(cook.estimate, target(cook), now, curve, cook.hob) : null;
  const forecast =
    boiling && cook.thermometer && cook.readingsTaken >= 2
      ? project(cook.estimate, target(cook), now, curve, cook.hob)
      : null;
  return { cook, batch: cook.batch, now, belief, forecast, offTheHeat: isOffTheHeat(cook, now) };
};

const said = (id: TextId): Message => ({ id });

const warningOf = (hazard: Hazard, cook: Cook, since: number, evidence: Message | null): Warning => ({
  id: hazard.id,
  level: hazard.level,
  signal: hazard.signal,
  since,
  cause: said(`hazard.${hazard.id}.cause` as TextId),
  consequence: said(`hazard.${hazard.id}.does` as TextId),
  response: responseOf(hazard, cook).map(said),
  evidence,
});

/** Since when a hazard of the table stands open and unanswered; null if it does not. */
const standsSince = (hazard: EvidenceHazard, { cook, now }: View): number | null => {
  return cook.raised[hazard.id]?.answered ? null : warnedSince(cook, hazard.id, now);
};

const warningsOf = (view: View): readonly Warning[] => {
  const { cook } = view;
  const seen = evidenceHazards.flatMap((hazard) => {
    const since = standsSince(hazard, view);
    return since === null ? [] : [warningOf(hazard, cook, since, hazard.evidence(view))];
  });
  const reported = cook.troubles
    .filter((trouble) => !trouble.answered)
    .map((trouble) => warningOf(reportOf(trouble.name), cook, trouble.since, null));
  return [...reported, ...seen].sort(byUrgency);
};

/** The step that the headline shows: the first open one, unless the pot has to come off, or to be looked at, first. */
const stepShown = (view: View): Step | null => {
  if (gapComesFirst(view)) return null;
  const phase = headline(view.cook);
  if (view.offTheHeat && isBefore(phase, 'test')) return boilOff;
  return stepAt(view.cook, phaseOf(phase));
};

const unsettledAnswers = (cook: Cook, what: Unsettled): readonly string[] => {
  switch (what) {
    case 'heat':
      return heatWords(cook.batch.kitchen).map((word) => `heat ${word}`);
    case 'lid':
      return ['lid on', 'lid off'];
    case 'pour':
      return ['at pour', 'at fold'];
    default:
      return ['pot on', 'pot off'];
  }
};

/** When in doubt: off. */
const unsettledSafe = { heat: 'heat off', pot: 'pot off', lid: 'lid off', pour: 'at pour' } as const;

const waitsFor = (cook: Cook, step: Step | null, now: number): Advice['waits'] => {
  const until = step?.question?.earliest?.(cook) ?? Number.NEGATIVE_INFINITY;
  return until > now && step?.question !== undefined ? { question: step.question.id, until } : null;
};

const questionOf = (view: View, step: Step | null, told: Instruction | null): Asked | null => {
  const { cook, now } = view;
  const [unsettled] = cook.unsettled;
  if (told !== null && told.question !== null) {
    return {
      id: told.question,
      text: message('trouble.glass.ask'),
      answers: ['yes', 'no'],
      safe: 'yes',
      kind: 'safety',
    };
  }
  if (cook.gap !== null) return gapQuestion();
  if (unsettled !== undefined) {
    return {
      id: `unsettled.${unsettled}`,
      text: message('unsettled.ask', { what: unsettled }),
      answers: unsettledAnswers(cook, unsettled),
      safe: unsettledSafe[unsettled],
      kind: 'what is true now',
    };
  }
  if (cook.doubt?.asks) {
    const { of, celsius, because, otherScaleCelsius } = cook.doubt;
    return {
      id: 'reading.doubt',
      text: message('reading.doubt.ask', {
        of,
        celsius,
        because,
        otherScaleCelsius,
        lastCelsius: cook.doubt.of === 'syrup' ? (cook.lastReading?.celsius ?? null) : null,
      }),
      answers: ['yes', 'no'],
      safe: 'no',
      kind: 'reading',
    };
  }
  const question = step?.question;
  // What a trouble says to do comes first; what the step asks waits behind it.
  if (told !== null || step === null || question === undefined || waitsFor(cook, step, now) !== null)
    return null;
  return {
    id: question.id,
    text: step.say(view),
    answers: question.answers,
    safe: question.safe,
    kind: step.items === undefined ? 'safety' : 'pause',
  };
};

const cautionsOf = (view: View, step: Step | null): readonly Warning[] => {
  const ids: readonly HazardId[] =
    typeof step?.cautions === 'function' ? step.cautions(view.cook) : (step?.cautions ?? []);
  return ids.flatMap((id) => {
    const hazard = hazardById(id);
    const glows = id !== 'glowing-ring' || ['coil', 'glass-ceramic'].includes(view.batch.kitchen.stove);
    return hazard === undefined || !glows ? [] : [warningOf(hazard, view.cook, view.now, null)];
  });
};

const trailOf = (cook: Cook): readonly Trail[] => {
  const now = headline(cook);
  const active = activePhases(cook);
  return phaseIds.map((phase) => {
    if (phase === now) return { phase, state: 'now' };
    if (active.includes(phase)) return { phase, state: 'also' };
    return { phase, state: isBefore(phase, now) ? 'behind' : 'ahead' };
  });
};

/** A reminder that comes again stands this long, seconds. */
const remindedSeconds = 60;

const countdownOf = ({ id, from, until, every }: Timer, now: number): Countdown => {
  if (every === undefined) return { id, from, until, due: until !== null && until <= now };
  const round = Math.floor((now - from) / every);
  const last = from + round * every;
  return round >= 1 && now < last + remindedSeconds
    ? { id, from, until: last, due: true }
    : { id, from, until: last + every, due: false };
};

/** The moments at which a countdown becomes due or, if it comes again, is set anew. */
const momentsOf = ({ from, until, every }: Timer, now: number): readonly (number | null)[] => {
  if (every === undefined) return [until];
  const next = from + (Math.floor((now - from) / every) + 1) * every;
  return [next, next - every + remindedSeconds];
};

const countdowns = (view: View, step: Step | null): readonly Countdown[] => {
  const own = (step?.timers?.(view) ?? []).map((timer) => countdownOf(timer, view.now));
  const aid = view.cook.troubles.flatMap((trouble) => {
    const { timerSeconds } = reportOf(trouble.name);
    if (timerSeconds === undefined) return [];
    const until = trouble.since + timerSeconds;
    return [{ id: `trouble.${trouble.name}`, from: trouble.since, until, due: until <= view.now }];
  });
  return [...aid, ...own];
};

const troublesOf = (cook: Cook): readonly OpenTroubleAdvice[] =>
  cook.troubles.map((trouble) => {
    const hazard = reportOf(trouble.name);
    const next = instructionOf(cook, trouble);
    return {
      name: trouble.name,
      since: trouble.since,
      instruction: next === null ? null : said(next.text),
      rest: next === null ? [] : next.rest.map(said),
      until: hazard.timerSeconds === undefined ? null : trouble.since + hazard.timerSeconds,
    };
  });

/** Before there is a forecast: read this often, seconds. Our judgement. */
const readEvery: Readonly<Partial<Record<PhaseId, number>>> = { dissolve: 180, boil: 120 };

const nextReadingAt = (view: View): number | null => {
  const { cook, forecast, now } = view;
  const every = readEvery[headline(cook)];
  if (!cook.thermometer || cook.pouredAt !== null || potIsOff(cook) || view.offTheHeat || every === undefined)
    return null;
  const last = cook.lastReading?.t ?? cook.enteredAt[headline(cook)] ?? now;
  return forecast === null ? last + every : now + forecast.nextReadingSeconds;
};

const changesAt = (
  view: View,
  step: Step | null,
  timers: readonly Countdown[],
  readingAt: number | null,
): number | null => {
  const { cook, now } = view;
  const phase = headline(cook);
  const moments = [
    ...timers.map((timer) => timer.until),
    ...(step?.timers?.(view) ?? []).flatMap((timer) => momentsOf(timer, now)),
    ...evidenceHazards.map((hazard) => (belongsTo(phase, hazard) ? (hazard.arises?.(cook) ?? null) : null)),
    step?.question?.earliest?.(cook) ?? null,
    takeOffAt(cook, now),
    (cook.batch.recipe.cues[phase] ?? []).length > 0 ? quietAt(cook, now) : null,
    readingAt,
  ];
  const ahead = moments.filter(
    (moment): moment is number => moment !== null && moment > now && Number.isFinite(moment),
  );
  return ahead.length === 0 ? null : Math.min(...ahead);
};

const meaningOf = ({ cook, batch, forecast, now }: View, readingAt: number | null): Message | null => {
  const { lastReading } = cook;
  if (lastReading === null || cook.pouredAt !== null || cook.stopped) return null;
  const { celsius } = lastReading;
  const boils = cook.boilsSince !== null || isDone(cook, 'boil.start');
  return message('reading.means', {
    celsius,
    stage: boils && !isTooColdToBoil(cook, celsius) ? stageShown(cook, celsius) : null,
    toGoKelvin: cook.takeOffCelsius - celsius,
    kelvinPerSecond: rateOfRise(cook),
    seconds: forecast?.seconds ?? null,
    nextSeconds: readingAt === null ? null : Math.max(0, readingAt - now),
    pastKelvin: pastKelvin({ cook, batch }),
  });
};

/** What the headline says: the most urgent trouble, else the step of the earliest phase with candy in it. */
const headlineOf = (view: View, step: Step | null, told: Instruction | null) => {
  const pressing = told !== null && !(told.hazard.level !== 'now' && view.offTheHeat);
  if (told !== null && pressing) {
    return {
      step: told.step,
      canBeDone: told.canBeDone,
      say: said(told.text),
      why: message('trouble.why', { name: told.trouble.name }),
      shout: said(told.index === 0 ? told.hazard.shout : 'trouble.more.shout'),
      urgent: told.hazard.level === 'now',
      told: true,
    };
  }
  const { gap } = view.cook;
  if (gap !== null && gapComesFirst(view)) return gapHeadline(view.cook, gap);
  const one = step ?? overEnd;
  return {
    step: one.id,
    canBeDone: !isEndless(view.cook, one) && !one.question?.safety,
    say: one.say(view),
    why: one.why(view),
    shout: one.shout,
    urgent: view.offTheHeat,
    told: false,
  };
};

/** The unit of a bare number: that of the thermometer which is read at this moment. */
const unitOf = (cook: Cook): TemperatureUnit => {
  const { kitchen } = cook.batch;
  const read = cook.pouredAt === null ? 'pot' : 'middle';
  return (thermometerFor(kitchen, read) ?? thermometerFor(kitchen, 'pot'))?.unit ?? kitchen.unit;
};

/** Pure: what to do at this moment. Defined in every state. */
export const advise = (cook: Cook, now: number): Advice => {
  const view = look(cook, Math.max(now, cook.t));
  const { batch, belief, forecast } = view;
  const step = stepShown(view);
  const told = instruction(cook);
  const head = headlineOf(view, step, told);
  const timers = countdowns(view, step);
  const readingAt = nextReadingAt(view);
  const phase = headline(cook);
  return {
    now: view.now,
    phase,
    trail: trailOf(cook),
    step: head.step,
    canBeDone: head.canBeDone,
    handsOn: phaseOf(phase).handsOn === true,
    say: head.say,
    why: head.why,
    shout: head.shout,
    urgent: head.urgent,
    items: head.told && told !== null ? told.rest.map(said) : (step?.items?.(view) ?? []),
    cautions: head.told ? [] : cautionsOf(view, step),
    question: questionOf(view, step, head.told ? told : null),
    waits: head.told ? null : waitsFor(cook, step, view.now),
    temperature:
      belief === null || cook.readingsTaken === 0 ? null : { celsius: belief.celsius, sd: belief.sd },
    stages: belief?.stages ?? null,
    forecast:
      forecast === null
        ? null
        : {
            targetCelsius: batch.target.todayCelsius[0],
            takeOffCelsius: cook.takeOffCelsius,
            seconds: forecast.seconds,
            takeOffSeconds: forecast.takeOffSeconds,
            boilShare: forecast.boilShare,
            watts: forecast.watts,
            carryOverKelvin: forecast.carryOverKelvin,
          },
    meaning: meaningOf(view, readingAt),
    meaningOf: cook.pouredAt === null && !cook.stopped ? (cook.lastReading?.seq ?? null) : null,
    readAt: cook.lastReading?.t ?? null,
    reached: cook.reachedAt !== null,
    offTheHeat: view.offTheHeat,
    nextReadingSeconds: readingAt === null ? null : Math.max(0, readingAt - view.now),
    changesAt: changesAt(view, step, timers, forecast === null ? readingAt : null),
    warnings: warningsOf(view),
    troubles: troublesOf(cook),
    timers,
    // In trouble nothing else is said.
    next: head.told ? null : (step?.next?.(view) ?? null),
    watch: head.told ? null : (step?.watch?.(view) ?? null),
    cues: isQuiet(cook, view.now) || cook.troubles.length > 0 ? [] : (batch.recipe.cues[phase] ?? []),
    drift: driftOf(view),
    from: cook.from,
    rehearsal: cook.rehearsal,
    typing: {
      unit: unitOf(cook),
      bare: cook.pouredAt === null ? 'syrup' : 'middle',
      heatWords: heatWords(batch.kitchen),
      undoes: cook.undoes,
      openTroubles: cook.troubles.map((trouble) => trouble.name),
    },
  };
};
