import type { PhaseId } from '../../recipe/recipe.js';
import { wallCare } from '../../recipe/wall-care.js';
import { scorchLimitCelsius } from '../../sugar/skin.js';
import { stageDistance } from '../../sugar/stages.js';
import { type Message, message } from '../../texts/message.js';
import { headline } from '../candy.js';
import type { Cook, Reading } from '../cook.js';
import { nearKelvin } from '../evidence.js';
import { nextTestDue } from '../next-test.js';
import { handLimit, middleIsMeasured } from '../phases/gates.js';
import { isDone, potIsOff } from '../phases/phase.js';
import { stageShown } from '../readings.js';
import { judge, type Verdict } from '../verdict.js';
import type { View } from '../view.js';
import type { EvidenceHazard } from './hazard.js';
import { feltStanding, isStalled, middleOf, risenWhileLeft } from './stalled.js';

/** Nobody has said that the ring is off; before a setting was named it is on from the boil on, or once it was called done. */
const ringMayBeOn = (cook: Cook): boolean =>
  cook.heat === null
    ? headline(cook) !== 'dissolve' || isDone(cook, 'dissolve.heat') || cook.boilsSince !== null
    : cook.heat.level !== 0;

const onTheHeat = (cook: Cook): boolean =>
  !cook.stopped &&
  cook.pouredAt === null &&
  !potIsOff(cook) &&
  ringMayBeOn(cook) &&
  ['dissolve', 'boil'].includes(headline(cook));

/** Two readings closer than this tell of the dial's scatter, not of a rate: seconds. Our judgement. */
const rateOverSeconds = 45;
/** Readings of one moment, by hand and by a feed, tell no rate: a degree between them would be a thousand a minute. */
const leastRateSeconds = 5;

/** Slope of the straight line through them by least squares, kelvin per second. */
const slopeOf = (readings: readonly Reading[]): number => {
  const middle = middleOf(readings);
  const rise = readings.reduce((sum, { t, celsius }) => sum + (t - middle.t) * (celsius - middle.celsius), 0);
  return rise / readings.reduce((sum, { t }) => sum + (t - middle.t) ** 2, 0);
};

/** Kelvin per second up to the last of them, over at least 45 s where there are readings enough; null with fewer than two. */
const rateOf = (before: readonly Reading[], last: Reading): number | null => {
  const readings = [...before, last];
  const from = readings.findLastIndex(({ t }) => t <= last.t - rateOverSeconds);
  const over = readings.slice(Math.max(0, from));
  return over.some(({ t }) => t <= last.t - leastRateSeconds) ? slopeOf(over) : null;
};

export const rateOfRise = ({
  lastReading,
  readBefore,
}: Pick<Cook, 'lastReading' | 'readBefore'>): number | null =>
  lastReading === null ? null : rateOf(readBefore, lastReading);

const readingEvidence = ({ cook }: View): Message | null =>
  cook.lastReading === null
    ? null
    : message('evidence.reading', {
        celsius: cook.lastReading.celsius,
        offCelsius: cook.takeOffCelsius,
        kelvinPerSecond: rateOfRise(cook),
      });

const ringIsOn = (cook: Cook): boolean => cook.heat !== null && cook.heat.level !== 0;

/** Silence that is too long while the pot is on: 4 minutes, 1 minute in the last 8 K. Our judgement. */
const silenceSeconds = { usual: 240, near: 60 } as const;

const silentAt = (cook: Cook): number => {
  if (cook.thermometer)
    return cook.heardAt + (cook.nearSince === null ? silenceSeconds.usual : silenceSeconds.near);
  // By cold water alone there is nothing to type before the next test is due.
  const wait = headline(cook) === 'boil' ? nextTestDue(cook) + silenceSeconds.near : 0;
  return Math.max(cook.heardAt + silenceSeconds.usual, wait);
};

const fahrenheitAMinute = (degrees: number): number => degrees / 1.8 / 60;
/** Rises that call for action: kelvin per second. One runs away, one near the end overshoots. Our judgement. */
const runawayRate = fahrenheitAMinute(10);
const nearEndRate = fahrenheitAMinute(7);
/** The gate to hands closes at the limit itself; the warning wants a little more, so that it does not chatter. */
const middleSlackKelvin = 0.5;
/** A rate that has become calm again. */
const calmRate = 2 / 60;
const pastByKelvin = 1;

/**
 * Kelvin past the window by the last reading. After a test that fell short fingers have moved the mark up, and the
 * window's top with it.
 */
export const pastKelvin = ({ cook, batch }: Pick<View, 'cook' | 'batch'>): number => {
  const [, ceiling] = batch.target.todayCelsius;
  return (cook.lastReading?.celsius ?? Number.NEGATIVE_INFINITY) - ceiling - cook.movedKelvin;
};

const readsAbove = (cook: Cook, celsius: number): boolean =>
  cook.lastReading !== null && cook.lastReading.celsius >= celsius;

/** Past the take-off on the ring, and rising faster than `kelvinPerSecond`. */
const runsOn = (cook: Cook, kelvinPerSecond: number): boolean =>
  !potIsOff(cook) && readsAbove(cook, cook.takeOffCelsius) && (rateOfRise(cook) ?? 0) > kelvinPerSecond;

/**
 * Near before the last reading, and fast: a digit typed wrongly runs away alone. One that jumps asks for the pot to come
 * off all the same.
 */
const runsAway = (cook: Cook): boolean => {
  const before = cook.readBefore.at(-1);
  return (
    runsOn(cook, runawayRate) &&
    before !== undefined &&
    before.celsius >= cook.takeOffCelsius - nearKelvin &&
    (rateOf(cook.readBefore.slice(0, -1), before) ?? 0) > nearEndRate
  );
};

const lastVerdict = (cook: Cook): Verdict | null => {
  const outcome = cook.lastTest?.outcome;
  return outcome === undefined ? null : judge(cook, outcome);
};

const testDisagrees = ({ cook }: View): boolean => {
  const test = cook.lastTest;
  // A thermometer that was put away disagrees with nobody.
  if (test === null || test.outcome === 'unsure' || test.celsius === null || !cook.thermometer) return false;
  return Math.abs(stageDistance(stageShown(cook, test.celsius), test.outcome)) > 1;
};

const boilCheckError = (cook: Cook): { shownCelsius: number; localCelsius: number } | null => {
  const shownCelsius = cook.checks.boilsShownCelsius;
  const localCelsius = cook.batch.air.waterBoilsCelsius;
  if (shownCelsius === null || cook.batch.air.from === 'boiling water') return null;
  return { shownCelsius, localCelsius };
};

export const belongsTo = (phase: PhaseId, { phases }: EvidenceHazard): boolean =>
  phases === 'any' || phases.includes(phase);

/** Warnings that the program raises by itself. Nothing else may. */
export const evidenceHazards: readonly EvidenceHazard[] = [
  {
    id: 'scorch-near',
    phases: ['dissolve', 'boil', 'test', 'flavour'],
    raisedBy: 'evidence',
    level: 'now',
    signal: 'WARNING',
    response: ['hazard.scorch-near.1', 'hazard.scorch-near.2'],
    respondWithinSeconds: 15,
    source:
      'above 150 °C in a pulled-taffy cook scorching is close (our judgement); Hall 1912: beware above 300 °F with a small quantity',
    raise: ({ cook }) => readsAbove(cook, scorchLimitCelsius) || runsAway(cook),
    clear: ({ cook }) => !readsAbove(cook, scorchLimitCelsius - 5) && !runsOn(cook, calmRate),
    evidence: readingEvidence,
  },
  {
    id: 'past-window',
    phases: ['boil', 'test', 'flavour'],
    raisedBy: 'evidence',
    level: 'now',
    signal: null,
    response: (cook) =>
      potIsOff(cook)
        ? ['hazard.past-window.rescue', 'hazard.past-window.keep']
        : ['hazard.past-window.off', 'hazard.past-window.rescue'],
    respondWithinSeconds: 15,
    source: 'common practice, no source',
    raise: (view) => pastKelvin(view) > pastByKelvin || lastVerdict(view.cook) === 'past',
    clear: (view) => pastKelvin(view) < -pastByKelvin && lastVerdict(view.cook) !== 'past',
    evidence: readingEvidence,
  },
  {
    id: 'middle-above-limit',
    phases: ['fold', 'pull', 'cut'],
    raisedBy: 'evidence',
    level: 'now',
    signal: 'WARNING',
    response: ['hazard.middle-above-limit.1'],
    respondWithinSeconds: 5,
    source: 'Moritz & Henriques 1947 type contact times, sugar/skin.ts; the limits are our judgement',
    raise: ({ cook }) =>
      cook.middle !== null &&
      cook.middle.celsius > handLimit(cook) + middleSlackKelvin &&
      cook.answers['hands.pause']?.answer === 'yes',
    clear: ({ cook }) => middleIsMeasured(cook),
    evidence: ({ cook }) =>
      cook.middle === null
        ? null
        : message('evidence.middle', { celsius: cook.middle.celsius, limitCelsius: handLimit(cook) }),
  },
  {
    id: 'unattended',
    phases: ['dissolve', 'boil'],
    raisedBy: 'evidence',
    level: 'soon',
    signal: 'WARNING',
    response: (cook) => [cook.thermometer ? 'hazard.unattended.1' : 'hazard.unattended.blind'],
    respondWithinSeconds: 60,
    source: 'common practice: attended always; the minutes are our judgement',
    arises: (cook) => (onTheHeat(cook) ? silentAt(cook) : null),
    evidence: ({ cook, now }) => message('evidence.silence', { seconds: now - cook.heardAt }),
  },
  {
    id: 'overshoot-near',
    phases: ['boil'],
    raisedBy: 'evidence',
    level: 'soon',
    signal: null,
    response: ['hazard.overshoot-near.1'],
    respondWithinSeconds: 60,
    source: 'trade practice: slow the heat for the last degrees; the rate is our judgement',
    // Near by this reading: what only warms up again after a pause is not near.
    raise: ({ cook }) =>
      readsAbove(cook, Math.min(cook.takeOffCelsius, cook.batch.target.takeOffCelsius) - nearKelvin) &&
      // At the take-off it comes off: turning down is no answer any more.
      !readsAbove(cook, cook.takeOffCelsius) &&
      !potIsOff(cook) &&
      (rateOfRise(cook) ?? 0) > nearEndRate,
    clear: ({ cook }) => potIsOff(cook) || (rateOfRise(cook) ?? 0) < calmRate,
    evidence: readingEvidence,
  },
  {
    id: 'stalled',
    phases: ['boil'],
    raisedBy: 'evidence',
    level: 'soon',
    signal: null,
    response: ['hazard.stalled.1'],
    respondWithinSeconds: 300,
    source:
      'common practice, no source: a syrup that does not boil does not cook on; the minutes are our judgement',
    raise: ({ cook }) => isStalled(cook),
    clear: ({ cook }) => !isStalled(cook),
    evidence: ({ cook }) => {
      const seconds =
        feltStanding(cook) ?? (risenWhileLeft(cook) ?? risenWhileLeft(cook, 120))?.seconds ?? null;
      return seconds === null ? null : message('evidence.stalled', { seconds });
    },
  },
  {
    id: 'heat-too-early',
    phases: ['mix'],
    raisedBy: 'evidence',
    level: 'soon',
    signal: null,
    response: ['hazard.heat-too-early.1'],
    respondWithinSeconds: 60,
    source: 'common practice, no source',
    raise: ({ cook }) => ringIsOn(cook),
    clear: ({ cook }) => !ringIsOn(cook),
    evidence: ({ cook }) =>
      cook.heat === null ? null : message('evidence.heat', { setting: cook.heat.setting }),
  },
  {
    id: 'boils-while-stirring',
    phases: ['dissolve'],
    raisedBy: 'evidence',
    level: 'soon',
    signal: null,
    response: (cook) =>
      cook.batch.recipe.stir === 'late'
        ? ['hazard.boils-while-stirring.late']
        : ['hazard.boils-while-stirring.1'],
    respondWithinSeconds: 120,
    source: 'Exploratorium, The Science of Cooking: agitation in the boil encourages crystals',
    raise: ({ cook }) => cook.boilsSince !== null && !isDone(cook, 'dissolve.stir'),
    clear: ({ cook }) => isDone(cook, 'dissolve.stir'),
    evidence: ({ cook, batch }) =>
      cook.lastReading === null
        ? null
        : message('evidence.boils', {
            celsius: cook.lastReading.celsius,
            startsCelsius: batch.boil.startsCelsius,
          }),
  },
  {
    id: 'lid-foams',
    phases: ['dissolve', 'boil'],
    raisedBy: 'evidence',
    level: 'soon',
    signal: 'WARNING',
    response: ['hazard.lid-foams.1'],
    respondWithinSeconds: 30,
    source:
      'Cakes, Cookies and Confections, California Home Economics Association, 1920: the lid is for clear syrups',
    raise: ({ cook, batch }) => cook.lidOn?.on === true && wallCare(batch.recipe) !== 'lid',
    clear: ({ cook }) => cook.lidOn?.on !== true,
    evidence: () => null,
  },
  {
    id: 'disagreement',
    phases: ['boil', 'test', 'flavour'],
    raisedBy: 'evidence',
    level: 'soon',
    signal: null,
    response: ['hazard.disagreement.1', 'hazard.disagreement.2'],
    respondWithinSeconds: 120,
    source:
      'stage table: BHG and Colorado State University Extension; trust what fingers feel, common practice',
    raise: testDisagrees,
    clear: (view) => !testDisagrees(view),
    evidence: ({ cook }) => {
      const test = cook.lastTest;
      if (test === null || test.celsius === null) return null;
      return message('evidence.disagreement', {
        celsius: test.celsius,
        dialStage: stageShown(cook, test.celsius),
        fingers: test.outcome,
      });
    },
  },
  {
    id: 'heat-left-on',
    phases: ['pour', 'fold', 'pull', 'cut', 'wrap', 'clean'],
    raisedBy: 'evidence',
    level: 'soon',
    signal: 'CAUTION',
    response: ['hazard.heat-left-on.1'],
    respondWithinSeconds: 60,
    source: 'common practice, no source',
    arises: (cook) => {
      const bareSince = cook.pouredAt ?? (cook.stopped ? (cook.leftAt.boil ?? cook.t) : null);
      return bareSince !== null && ringIsOn(cook) ? bareSince + 60 : null;
    },
    evidence: ({ cook }) =>
      cook.heat === null ? null : message('evidence.heat', { setting: cook.heat.setting }),
  },
  {
    id: 'pot-too-small',
    phases: ['mix', 'dissolve', 'boil'],
    raisedBy: 'evidence',
    level: 'soon',
    signal: 'WARNING',
    response: ['hazard.pot-too-small.1'],
    respondWithinSeconds: null,
    source: 'Household Discoveries, c. 1908: a pot of about four times the quantity',
    raise: ({ batch }) => batch.pot.fits === false,
    clear: ({ batch }) => batch.pot.fits !== false,
    evidence: ({ batch }) =>
      batch.pot.haveLitres === null
        ? null
        : message('evidence.pot', { neededLitres: batch.pot.neededLitres, haveLitres: batch.pot.haveLitres }),
  },
  {
    id: 'stem-uncovered',
    phases: ['mix', 'dissolve', 'boil'],
    raisedBy: 'evidence',
    level: 'note',
    signal: null,
    response: ['hazard.stem-uncovered.1'],
    respondWithinSeconds: null,
    source: 'BHG candy equipment page: in too large a pot the syrup does not cover the bulb',
    raise: ({ cook, batch }) => cook.thermometer && batch.pot.stemCovered === false,
    clear: ({ cook }) => !cook.thermometer,
    evidence: ({ batch }) =>
      batch.dial.stemMillimetres === null || batch.pot.depthMillimetres === null
        ? null
        : message('evidence.stem', {
            stemMillimetres: batch.dial.stemMillimetres,
            depthMillimetres: batch.pot.depthMillimetres[1],
          }),
  },
  {
    id: 'thermometer-suspect',
    phases: ['mix', 'dissolve', 'boil'],
    raisedBy: 'evidence',
    level: 'note',
    signal: null,
    response: ['hazard.thermometer-suspect.1'],
    respondWithinSeconds: null,
    source: 'Wisconsin Food Code Fact Sheet 7: ±2 °F or adjust; that far off is our judgement',
    raise: ({ cook }) => {
      const check = boilCheckError(cook);
      return check !== null && Math.abs(check.shownCelsius - check.localCelsius) > 5;
    },
    clear: ({ cook }) => !cook.thermometer,
    evidence: ({ cook }) => {
      const check = boilCheckError(cook);
      return check === null ? null : message('evidence.boiling-water', check);
    },
  },
];

const byId = new Map<string, EvidenceHazard>(evidenceHazards.map((hazard) => [hazard.id, hazard]));

/** Since when a warning of this table stands, answered or not; null if it does not. */
export const warnedSince = (cook: Cook, id: string, now: number): number | null => {
  const memory = cook.raised[id];
  if (memory !== undefined) return memory.since;
  const hazard = byId.get(id);
  if (hazard === undefined || !belongsTo(headline(cook), hazard)) return null;
  const at = hazard.arises?.(cook) ?? null;
  return at !== null && at <= now ? at : null;
};
