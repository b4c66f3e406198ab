import {
  believedBoilCelsius,
  carryOverNow,
  crossing,
  crossingBy,
  type Evidence,
  observe,
  reachedProbability,
} from '../forecast/index.js';
import { type ColdWaterOutcome, coldWaterOutcomes } from '../sugar/stages.js';
import { headline } from './candy.js';
import type { ColdWaterTest, Cook, Reading } from './cook.js';
import type { CookEvent, Stamp } from './event.js';
import { mostLeftAlone } from './hazards/stalled.js';
import { potIsOff } from './phases/phase.js';
import { isBorneOut, saysTheSame, understand } from './readings.js';
import { feltDone, judge, stagesFromTarget } from './verdict.js';

/** The list before pouring is read from this far below the take-off on, kelvin. Our judgement. */
export const nearKelvin = 8;
/** A batch reads as boiling from this far below its computed start, kelvin: what a home thermometer can tell. */
const boilSlackKelvin = 0.5;
/** Evidence is enough from this probability on. */
const enough = 0.9;
/** A rate is told from this many readings at most: constant size, a minute or two near the end. */
const rememberedReadings = 6;
/** A feed may read every second: a rate between two of them tells of its scatter. So far apart are remembered, seconds. */
const apartSeconds = 10;

/** Readings with one more, oldest first: the newest as it is, the others so far apart, and not more than `most`. */
const remembered = (before: readonly Reading[], reading: Reading, most: number): readonly Reading[] => {
  const [last, other] = [before.at(-1), before.at(-2)];
  const isCrowded = last !== undefined && other !== undefined && last.t - other.t < apartSeconds;
  return [...(isCrowded ? before.slice(0, -1) : before.slice(1 - most)), reading];
};
/** A reading is of the same moment as a test within this, seconds. */
const sameMomentSeconds = 180;

/**
 * After a test that fell short: at least and at most so much further, kelvin, for one stage short and for more. Trade:
 * "a couple of degrees". Between them by what dial and fingers together say is missing: a checked thermometer is known
 * better than a ball is felt. Our judgement.
 */
const furtherKelvin = { oneStage: [0.4, 1.5], more: [1, 4] } as const;
/** Tested further below the take-off than this, it was not cooked to it: the mark stays, kelvin. Our judgement. */
const earlyTestKelvin = 0.5;
/** The take-off is never moved up beyond the top of the window by more than this, kelvin. Our judgement. */
const furthestKelvin = 6;

export const target = (cook: Cook) => ({
  floorCelsius: cook.batch.target.todayCelsius[0],
  ceilingCelsius: cook.batch.target.todayCelsius[1],
  takeOffCelsius: cook.takeOffCelsius,
});

/** Readings of so long are looked at together, seconds, and their mean must lie so far above the floor, kelvin. Our judgement. */
const staying = { seconds: 120, aboveKelvin: 0.7 } as const;

/**
 * The dial itself stays in the window: touching the floor, or hovering around it, is not done, however sure a forecast
 * is that the heat must have carried the syrup further.
 */
const dialStays = (cook: Cook): boolean => {
  const { lastReading, readBefore } = cook;
  if (lastReading === null) return false;
  const recent = [...readBefore, lastReading].filter(({ t }) => t >= lastReading.t - staying.seconds);
  const floor = cook.batch.target.todayCelsius[0];
  // A reading on the way up says nothing of staying: those since the floor was first touched count.
  const first = recent.findIndex(({ celsius }) => celsius >= floor);
  const since = first < 0 ? recent : recent.slice(first);
  const mean = since.reduce((sum, { celsius }) => sum + celsius, 0) / since.length;
  return mean >= floor + staying.aboveKelvin;
};

/** The climb by the power now in the pot is believed within these shares of the planned one. Our judgement. */
const climbShares = [0.25, 1.75] as const;

/**
 * The take-off for the power that goes into the pot: turned down for the last degrees its base holds less heat, and it
 * comes off later by what it will climb less. Only on the last stretch, and not any more once it was asked for.
 */
const takeOffNow = (cook: Cook): number => {
  const { batch, estimate, hob, movedKelvin } = cook;
  const { aimCelsius, takeOffCelsius, carryOverKelvin } = batch.target;
  if (cook.nearSince === null || cook.offSince !== null || !cook.thermometer) return cook.takeOffCelsius;
  const climb = carryOverNow(estimate, takeOffCelsius + movedKelvin, batch.curve, hob);
  if (climb === null) return cook.takeOffCelsius;
  const [least, most] = climbShares;
  const kelvin = Math.min(most * carryOverKelvin, Math.max(least * carryOverKelvin, climb));
  const wanted = Math.max(batch.curve.waterBoilsCelsius, aimCelsius + movedKelvin - kelvin);
  return Math.abs(wanted - cook.takeOffCelsius) < calmKelvin ? cook.takeOffCelsius : wanted;
};

/** A take-off that moves by less than this stays where it stands, kelvin: nobody reads that, and a number should be calm. */
const calmKelvin = 0.2;

/** Let the forecast hear of it, and see whether the window has been reached by all evidence. */
export const noteEvidence = (cook: Cook, evidence: Evidence): Cook => {
  if (cook.pouredAt !== null) return cook;
  const { curve } = cook.batch;
  const estimate = observe(cook.estimate, evidence, curve, cook.hob);
  const heard = { ...cook, estimate };
  const takeOffCelsius = takeOffNow(heard);
  const noted = takeOffCelsius === cook.takeOffCelsius ? heard : { ...heard, takeOffCelsius };
  if (cook.reachedAt !== null) return noted;
  const blind = cook.readingsTaken === 0 || !cook.thermometer;
  const isSure = (): boolean =>
    (dialStays(noted) || feltDone(noted)) &&
    reachedProbability(estimate, target(cook), cook.t, curve, cook.hob) >= enough;
  const reached = blind ? feltDone(noted) : isSure();
  return reached ? { ...noted, reachedAt: cook.t } : noted;
};

/** The pot may stand on the ring, whatever has been said of steps: nobody types them all. */
const onTheHeat = (cook: Cook): boolean =>
  ['mix', 'dissolve', 'boil'].includes(headline(cook)) && !potIsOff(cook);

const isProjected = (cook: Cook): boolean => headline(cook) === 'boil' && !potIsOff(cook) && cook.thermometer;

/** When the projected syrup reaches the take-off; null where nothing is projected. */
export const takeOffAt = (cook: Cook, now: number): number | null =>
  isProjected(cook) ? crossing(cook.estimate, cook.takeOffCelsius, now, cook.batch.curve, cook.hob) : null;

/** Once the forecast has asked for the pot to come off, it does not take that back by itself. */
export const projectOff = (cook: Cook, t: number): Cook => {
  if (cook.offSince !== null || !isProjected(cook)) return cook;
  const at = crossingBy(cook.estimate, cook.takeOffCelsius, t, cook.batch.curve, cook.hob);
  return at === null ? cook : { ...cook, offSince: at, offBy: 'forecast' };
};

/** A believed reading this far below the take-off shows that the forecast was early, kelvin. Our judgement. */
const earlyKelvin = 3;

/** Whether the pot should come off after a believed reading. */
const offAfter = (cook: Cook, { celsius, t }: Reading): Pick<Cook, 'offSince' | 'offBy'> => {
  const { offSince, offBy } = cook;
  if (celsius >= cook.takeOffCelsius && onTheHeat(cook)) return { offSince: offSince ?? t, offBy: 'reading' };
  const contradicted =
    offBy === 'doubt' || (offBy === 'forecast' && celsius < cook.takeOffCelsius - earlyKelvin);
  return contradicted ? { offSince: null, offBy: null } : { offSince, offBy };
};

/** What a believed reading changes. */
const accept = (cook: Cook, reading: Reading, sure: boolean): Cook => {
  const { celsius, t } = reading;
  const hot = ['mix', 'dissolve', 'boil', 'test'].includes(headline(cook));
  const boils = hot && celsius >= cook.batch.boil.startsCelsius - boilSlackKelvin;
  const near = hot && celsius >= cook.takeOffCelsius - nearKelvin;
  return noteEvidence(
    {
      ...cook,
      lastReading: reading,
      readBefore:
        cook.lastReading === null ? [] : remembered(cook.readBefore, cook.lastReading, rememberedReadings),
      leftAlone: remembered(cook.leftAlone, reading, mostLeftAlone),
      readingsTaken: cook.readingsTaken + 1,
      thermometer: true,
      middleThermometer: true,
      doubt: null,
      boilsSince: cook.boilsSince ?? (boils ? t : null),
      nearSince: cook.nearSince ?? (near ? t : null),
      ...offAfter(cook, reading),
    },
    { kind: 'reading', t, celsius, ...(sure ? { sure } : {}) },
  );
};

/** A reading of the syrup: believed, borne out, or kept and asked about. A high one is acted on all the same. */
export const afterReading = (cook: Cook, event: Extract<CookEvent, { kind: 'reading' }> & Stamp): Cook => {
  const { reading, doubt: alone } = understand(cook, event);
  if (alone === null) return accept(cook, reading, false);
  const doubt =
    cook.doubt !== null && saysTheSame(cook.doubt, reading) ? { ...alone, since: cook.doubt.since } : alone;
  if (doubt !== alone && isBorneOut(doubt, event)) return accept(cook, reading, true);
  const off = reading.celsius >= cook.takeOffCelsius && onTheHeat(cook) && cook.offSince === null;
  return off ? { ...cook, doubt, offSince: event.t, offBy: 'doubt' } : { ...cook, doubt };
};

export const agreeToDoubt = (cook: Cook): Cook => {
  if (cook.doubt === null) return cook;
  const { of, seq, celsius, t } = cook.doubt;
  if (of === 'middle') return { ...cook, doubt: null, middle: { seq, celsius, t } };
  return accept(cook, { seq, celsius, t: Math.max(t, cook.estimate.t) }, true);
};

/** It was wrong: what was done for its sake only is taken back. */
export const dismissDoubt = (cook: Cook): Cook =>
  cook.offBy === 'doubt'
    ? { ...cook, doubt: null, offSince: null, offBy: null }
    : { ...cook, doubt: null, middle: cook.middle?.seq === cook.doubt?.seq ? null : cook.middle };

const firm: readonly ColdWaterTest['outcome'][] = ['firm ball', 'hard ball', 'soft crack', 'hard crack'];

/** The take-off after a test that fell short: some way above where it was tested. The test has been weighed in. */
const movedUp = (cook: Cook, outcome: ColdWaterOutcome, readCelsius: number | null): number => {
  if (judge(cook, outcome) !== 'short' || cook.readingsTaken === 0 || !cook.thermometer)
    return cook.takeOffCelsius;
  const believed = believedBoilCelsius(cook.estimate, cook.t, cook.batch.curve, cook.hob);
  const { takeOffCelsius } = cook;
  // By what the thermometer showed, right or wrong, for the mark is read on it; nobody read it just now: what is believed.
  const tested = readCelsius ?? believed;
  if (tested < takeOffCelsius - earlyTestKelvin) return takeOffCelsius;
  const { aimCelsius, todayCelsius } = cook.batch.target;
  const [first, far] = furtherKelvin[stagesFromTarget(cook, outcome) === -1 ? 'oneStage' : 'more'];
  // From the third on that is no firmer, the thermometer is off by more than anybody believed.
  const least = first * 2 ** Math.max(0, (cook.lastTest?.noFirmer ?? 0) - 1);
  // Where it comes to rest moves, and the take-off with it: what it climbs on the trivet it climbs again.
  const restsAt = aimCelsius + cook.movedKelvin;
  // A slip of the eye is no place to go on from.
  const from = Math.max(restsAt, Math.min(tested, believed));
  const wanted = from + Math.max(least, Math.min(far, aimCelsius - believed));
  const most = todayCelsius[1] + furthestKelvin;
  return takeOffCelsius + Math.max(0, Math.min(wanted, most) - restsAt);
};

/** After a test that was past the mark: at least and at most so much sooner next time, kelvin. Our judgement. */
const soonerKelvin = [0.4, 3] as const;

/** A batch that water brings back is not cooked to the same mark again: what fingers felt past was read as right. */
const movedDown = (cook: Cook): number => {
  const { batch, takeOffCelsius, movedKelvin } = cook;
  if (cook.readingsTaken === 0 || !cook.thermometer) return takeOffCelsius;
  const believed = believedBoilCelsius(cook.estimate, cook.t, batch.curve, cook.hob);
  const over = believed - batch.target.aimCelsius - movedKelvin;
  const [least, most] = soonerKelvin;
  return takeOffCelsius - Math.min(most, Math.max(least, over, 0), furthestKelvin + movedKelvin);
};

/** Counted while the pot stays off the ring; what fingers can't tell neither counts nor breaks it. */
const inARow = (cook: Cook, outcome: ColdWaterTest['outcome']): number => {
  const last = cook.lastTest;
  const offAt = cook.potOn?.on === false ? cook.potOn.t : Number.POSITIVE_INFINITY;
  const before = last !== null && last.t >= offAt ? last.inARow : 0;
  const verdict = judge(cook, outcome);
  if (verdict === 'again') return before;
  return verdict === 'there' ? before + 1 : 0;
};

/** Tests that find it no firmer, and since when. */
const standing = (
  { lastTest }: Cook,
  outcome: ColdWaterTest['outcome'],
  t: number,
): Pick<ColdWaterTest, 'firmest' | 'firmestAt' | 'noFirmer'> => {
  const firmest = lastTest?.firmest ?? null;
  const isFirmer =
    outcome !== 'unsure' &&
    (firmest === null || coldWaterOutcomes.indexOf(outcome) > coldWaterOutcomes.indexOf(firmest));
  return isFirmer
    ? { firmest: outcome, firmestAt: t, noFirmer: 0 }
    : { firmest, firmestAt: lastTest?.firmestAt ?? t, noFirmer: (lastTest?.noFirmer ?? 0) + 1 };
};

export const afterTest = (cook: Cook, outcome: ColdWaterTest['outcome'], t: number): Cook => {
  const last = cook.lastReading;
  const celsius = cook.thermometer && last !== null && t - last.t <= sameMomentSeconds ? last.celsius : null;
  const tested = {
    ...cook,
    lastTest: { t, outcome, celsius, inARow: inARow(cook, outcome), ...standing(cook, outcome, t) },
    nearSince: cook.nearSince ?? (firm.includes(outcome) ? t : null),
  };
  if (outcome === 'unsure') return tested;
  const noted = noteEvidence(tested, { kind: 'cold water', t, outcome });
  const takeOffCelsius =
    judge(cook, outcome) === 'past' ? movedDown(noted) : movedUp(noted, outcome, celsius);
  return {
    ...noted,
    takeOffCelsius,
    movedKelvin: noted.movedKelvin + takeOffCelsius - noted.takeOffCelsius,
  };
};
