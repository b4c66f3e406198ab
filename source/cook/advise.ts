import { believe, crossing, project } from '../forecast/index.js';
import { heatWords } from '../kitchen/stove.js';
import { type PhaseId, phaseIds } from '../recipe/recipe.js';
import { type Message, message, type TextId } from '../texts/message.js';
import type { Advice, Asked, Countdown, OpenTroubleAdvice, Trail, Warning } from './advice.js';
import { activePhases, headline, isBefore } from './candy.js';
import type { Cook } from './cook.js';
import { target } from './evidence.js';
import { evidenceHazards, pastKelvin, rateOfRise } from './hazards/evidence.js';
import { type EvidenceHazard, type Hazard, type HazardId, type Level, responseOf } from './hazards/hazard.js';
import { reportOf } from './hazards/reports.js';
import { hazardById } from './hazards/table.js';
import { phaseOf, stepById } from './phases/index.js';
import { isDone, isEndless, potIsOff, type Step, stepAt } from './phases/phase.js';
import { belongsHere } from './raise.js';
import { stageShown } from './readings.js';
import { type Instruction, instruction } from './troubles.js';
import { feltDone } from './verdict.js';
import type { View } from './view.js';

const boiled: readonly PhaseId[] = ['boil', 'test'];

const takeOffAt = (cook: Cook, now: number): number | null =>
  headline(cook) === 'boil' && !potIsOff(cook) && cook.thermometer
    ? crossing(cook.estimate, cook.takeOffCelsius, now, cook.batch.curve, cook.hob)
    : null;

/** The pot should come off: a reading, a test or the forecast says so, and nobody has said that it is off. */
const isOffTheHeat = (cook: Cook, now: number): boolean => {
  if (cook.pouredAt !== null || cook.stopped) return false;
  if (!['dissolve', 'boil', 'test', 'flavour'].includes(headline(cook))) return false;
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

const urgency: Readonly<Record<Level, number>> = { now: 0, soon: 1, note: 2 };

/** Since when a hazard of the table stands open and unanswered; null if it does not. */
const standsSince = (hazard: EvidenceHazard, { cook, now }: View): number | null => {
  if (!belongsHere(cook, hazard)) return null;
  const memory = cook.raised[hazard.id];
  if (memory?.answered) return null;
  if (memory !== undefined) return memory.since;
  const at = hazard.arises?.(cook) ?? null;
  return at !== null && at <= now ? at : null;
};

const warningsOf = (view: View): readonly Warning[] => {
  const { cook } = view;
  const seen = evidenceHazards.flatMap((hazard) => {
    const since = standsSince(hazard, view);
    return since === null ? [] : [warningOf(hazard, cook, since, hazard.evidence(view))];
  });
  const reported = cook.troubles.map((trouble) =>
    warningOf(reportOf(trouble.name), cook, trouble.since, null),
  );
  return [...reported, ...seen].sort(
    (one, other) => urgency[one.level] - urgency[other.level] || other.since - one.since,
  );
};

/** The step that the headline shows: the first open one, unless the pot has to come off first. */
const stepShown = (view: View): Step | null => {
  const phase = headline(view.cook);
  if (view.offTheHeat && (phase === 'boil' || phase === 'dissolve')) return stepById('boil.off') ?? null;
  return stepAt(view.cook, phaseOf(phase));
};

const unsettledAnswers = (cook: Cook): readonly string[] => {
  switch (cook.unsettled) {
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

const questionOf = (view: View, step: Step | null, told: Instruction | null): Asked | null => {
  const { cook, now } = view;
  if (
    told?.trouble.name === 'thermometer' &&
    told.index === 0 &&
    cook.answers['trouble.glass'] === undefined
  ) {
    return {
      id: 'trouble.glass',
      text: message('trouble.glass.ask'),
      answers: ['yes', 'no'],
      safe: 'yes',
      kind: 'safety',
    };
  }
  if (cook.unsettled !== null) {
    return {
      id: `unsettled.${cook.unsettled}`,
      text: message('unsettled.ask', { what: cook.unsettled }),
      answers: unsettledAnswers(cook),
      safe: unsettledSafe[cook.unsettled],
      kind: 'what is true now',
    };
  }
  if (cook.doubt?.asks) {
    const { celsius, because, otherScaleCelsius } = cook.doubt;
    return {
      id: 'reading.doubt',
      text: message('reading.doubt.ask', {
        celsius,
        because,
        otherScaleCelsius,
        lastCelsius: cook.lastReading?.celsius ?? null,
      }),
      answers: ['yes', 'no'],
      safe: 'no',
      kind: 'reading',
    };
  }
  const question = step?.question;
  if (step === null || question === undefined || (question.earliest?.(cook) ?? 0) > now) return null;
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

const countdowns = (view: View, step: Step | null): readonly Countdown[] => {
  const own = (step?.timers?.(view) ?? []).map((timer) => ({
    ...timer,
    due: timer.until !== null && timer.until <= view.now,
  }));
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
    const response = responseOf(hazard, cook).map(said);
    return {
      name: trouble.name,
      since: trouble.since,
      instruction: response[trouble.told] ?? null,
      rest: response.slice(trouble.told + 1),
      until: hazard.timerSeconds === undefined ? null : trouble.since + hazard.timerSeconds,
    };
  });

/** Before there is a forecast: read this often, seconds. Our judgement. */
const readEvery: Readonly<Partial<Record<PhaseId, number>>> = { dissolve: 180, boil: 120 };

const nextReadingAt = (view: View): number | null => {
  const { cook, forecast, now } = view;
  const every = readEvery[headline(cook)];
  if (!cook.thermometer || cook.pouredAt !== null || potIsOff(cook) || every === undefined) return null;
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
  const moments = [
    ...timers.map((timer) => timer.until),
    ...evidenceHazards.map((hazard) => (belongsHere(cook, hazard) ? (hazard.arises?.(cook) ?? null) : null)),
    step?.question?.earliest?.(cook) ?? null,
    takeOffAt(cook, now),
    readingAt,
  ];
  const ahead = moments.filter(
    (moment): moment is number => moment !== null && moment > now && Number.isFinite(moment),
  );
  return ahead.length === 0 ? null : Math.min(...ahead);
};

const meaningOf = ({ cook, batch, forecast, now }: View, readingAt: number | null): Message | null => {
  const { lastReading } = cook;
  if (lastReading === null || cook.pouredAt !== null) return null;
  return message('reading.means', {
    celsius: lastReading.celsius,
    stage:
      cook.boilsSince === null && !isDone(cook, 'boil.start') ? null : stageShown(cook, lastReading.celsius),
    toGoKelvin: cook.takeOffCelsius - lastReading.celsius,
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
    const does = `hazard.${told.hazard.id}.cause` as TextId;
    return {
      step: told.step,
      canBeDone: true,
      say: said(told.text),
      why: said(does),
      shout: said(told.index === 0 ? told.hazard.shout : 'trouble.more.shout'),
      urgent: told.hazard.level === 'now',
      told: true,
    };
  }
  const one = step ?? (stepById('over.end') as Step);
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
    items: head.told ? (told?.rest.map(said) ?? []) : (step?.items?.(view) ?? []),
    cautions: head.told ? [] : cautionsOf(view, step),
    question: questionOf(view, step, head.told ? told : null),
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
    readAt: cook.lastReading?.t ?? null,
    reached: cook.reachedAt !== null,
    offTheHeat: view.offTheHeat,
    nextReadingSeconds: readingAt === null ? null : Math.max(0, readingAt - view.now),
    changesAt: changesAt(view, step, timers, forecast === null ? readingAt : null),
    warnings: warningsOf(view),
    troubles: troublesOf(cook),
    timers,
    next: step?.next?.(view) ?? null,
    watch: step?.watch?.(view) ?? null,
    cues: batch.recipe.cues[phase] ?? [],
    from: cook.from,
    rehearsal: cook.rehearsal,
    typing: {
      unit: batch.dial.present ? batch.dial.unit : batch.kitchen.unit,
      bare: cook.pouredAt === null ? 'syrup' : 'middle',
      heatWords: heatWords(batch.kitchen),
      undoes: cook.undoes,
      openTroubles: cook.troubles.map((trouble) => trouble.name),
    },
  };
};
