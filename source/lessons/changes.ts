import { mostGramsForHands } from '../batch/yield.js';
import { handLimit } from '../cook/phases/gates.js';
import { type Message, message } from '../texts/message.js';
import { nearEndOf } from './near-end.js';
import type { Facts } from './story.js';
import type { TroubleTold } from './trouble-story.js';

/** One thing to do otherwise next time, why, and the number behind it. */
export type Change = { readonly id: string; readonly action: Message; readonly because: Message };

type Found = Omit<Change, 'id'> | null;
type Rule = {
  readonly id: string;
  readonly find: (facts: Facts) => Found;
  /** What the limit in it rests on. */
  readonly source: string;
};

/** More changes than this nobody keeps in mind. */
export const mostChanges = 5;

/** Limits from which on something is worth saying. Our judgement unless a row says otherwise. */
const worth = {
  outsideKelvin: 0.5,
  lateSeconds: 20,
  kelvinPerSecond: 3.5 / 60,
  gapSeconds: 75,
  shortTests: 2,
  stagesApart: 2,
  silentSeconds: 20,
  silentTimes: 4,
  droops: 3,
  shareLow: 0.8,
  shareHigh: 1,
  pieceOff: 0.15,
  variation: 0.2,
  slowShare: 1.1,
} as const;

const reported = ({ troubles }: Facts, name: TroubleTold['name']): TroubleTold | undefined =>
  troubles.find((one) => one.name === name);

const raised = ({ warnings }: Facts, id: string) => warnings.filter((warning) => warning.id === id);

const secondsIn = ({ phases }: Facts, phase: string) => phases.find((one) => one.phase === phase) ?? null;

const lateBy = ({ takenOff }: Facts): number =>
  takenOff === null || takenOff.askedAt === null ? 0 : takenOff.t - takenOff.askedAt;

/** Seconds of the boil for which the pot stood off the ring: for a trouble, an interruption. */
const offWhileBoiling = ({ offs, spans }: Facts): number =>
  spans
    .filter(({ phase }) => phase === 'boil')
    .flatMap(({ from, to }) => offs.map(({ t, backAt }) => Math.min(to, backAt ?? to) - Math.max(from, t)))
    .reduce((sum, seconds) => sum + Math.max(0, seconds), 0);

/** How long a warning of silence stood, on top of the silence that raised it. */
const stood = ({ raisedAt, endedAt }: { raisedAt: number; endedAt: number | null }, end: number): number =>
  (endedAt ?? end) - raisedAt;

/** Rules in the order of what matters: people first, then the candy, then the numbers for next time. */
const rules: readonly Rule[] = [
  {
    id: 'burn',
    source: 'cool running water at once: British Burn Association first-aid guidance',
    find: (facts) => {
      const burn = reported(facts, 'burn');
      return burn === undefined
        ? null
        : {
            action: message('debrief.change.burn'),
            because: message('debrief.because.burn', {
              phase: burn.phase,
              at: burn.at,
              first: burn.firstSeconds,
            }),
          };
    },
  },
  {
    id: 'hands-too-hot',
    source: 'limits for hands: sugar/skin.ts',
    find: (facts) => {
      const [hot] = raised(facts, 'middle-above-limit');
      return hot === undefined
        ? null
        : {
            action: message('debrief.change.hands-too-hot'),
            because: message('debrief.because.hands-too-hot', {
              at: hot.raisedAt,
              celsius:
                facts.readings.findLast(({ of, t }) => of === 'middle' && t <= hot.raisedAt)?.celsius ?? null,
              limitCelsius: handLimit(facts.cook),
            }),
          };
    },
  },
  {
    id: 'wrong-order',
    source: 'the order of the hazard table',
    find: (facts) => {
      const wrong = facts.troubles.find(({ order }) => order === 'wrong');
      return wrong === undefined
        ? null
        : {
            action: message('debrief.change.wrong-order', { name: wrong.name }),
            because: message('debrief.because.wrong-order', {
              name: wrong.name,
              at: wrong.at,
              acts: wrong.acts.map(({ act }) => act),
            }),
          };
    },
  },
  {
    id: 'slow-answer',
    source: 'seconds there are to respond: hazard table',
    find: (facts) => {
      const [slow] = facts.troubles
        .flatMap(({ name, firstSeconds: seconds, withinSeconds: within, inTime }) =>
          seconds === null || within === null || within > 60 || inTime !== false
            ? []
            : [{ name, seconds, within }],
        )
        .toSorted((one, other) => other.seconds - one.seconds);
      return slow === undefined
        ? null
        : {
            action: message('debrief.change.slow-answer', { name: slow.name }),
            because: message('debrief.because.slow-answer', slow),
          };
    },
  },
  {
    id: 'unattended',
    source: 'attended always: common practice',
    find: (facts) => {
      const silent = raised(facts, 'unattended');
      if (silent.length === 0) return null;
      const longest = Math.max(...silent.map((one) => stood(one, facts.seconds)));
      if (longest < worth.silentSeconds && silent.length < worth.silentTimes) return null;
      return {
        action: message('debrief.change.unattended'),
        because: message('debrief.because.unattended', { times: silent.length, seconds: longest }),
      };
    },
  },
  {
    id: 'boil-over',
    source: 'a pot of about four times the quantity: Household Discoveries, c. 1908',
    find: (facts) => {
      const foam = reported(facts, 'overflow') ?? reported(facts, 'foam');
      if (foam === undefined) return null;
      const { neededLitres, haveLitres } = facts.batch.pot;
      const small = haveLitres !== null && haveLitres < neededLitres;
      return {
        action: message('debrief.change.boil-over', { litres: small ? neededLitres : null }),
        because: message('debrief.because.boil-over', {
          name: foam.name,
          at: foam.at,
          neededLitres,
          haveLitres,
        }),
      };
    },
  },
  {
    id: 'scorched',
    source: 'common practice, no source',
    find: (facts) => {
      const scorched = reported(facts, 'scorched');
      return scorched === undefined
        ? null
        : {
            action: message('debrief.change.scorched', { late: facts.batch.recipe.stir === 'late' }),
            because: message('debrief.because.scorched', {
              at: scorched.at,
              peakCelsius: facts.peak?.by === 'reading' ? facts.peak.celsius : null,
            }),
          };
    },
  },
  {
    id: 'past-window',
    source: 'the recipe’s window today',
    find: (facts) => {
      const { peak, takenOff, batch } = facts;
      if (peak === null || peak.by !== 'reading' || peak.outsideKelvin <= worth.outsideKelvin) return null;
      const late = lateBy(facts) > worth.lateSeconds;
      return {
        action: message('debrief.change.past-window', {
          late,
          offCelsius:
            (takenOff?.wantedCelsius ?? batch.target.takeOffCelsius) - (late ? 0 : peak.outsideKelvin),
        }),
        because: message('debrief.because.past-window', {
          peakCelsius: peak.celsius,
          ceilingCelsius: batch.target.todayCelsius[1],
          pastKelvin: peak.outsideKelvin,
          lateSeconds: lateBy(facts),
        }),
      };
    },
  },
  {
    id: 'short',
    source: 'the recipe’s window today',
    find: ({ peak, batch, pouredAt, tests }) => {
      if (peak === null || pouredAt === null || peak.outsideKelvin >= -worth.outsideKelvin) return null;
      if (tests.at(-1)?.verdict === 'there' || tests.at(-1)?.verdict === 'past') return null;
      return {
        action: message('debrief.change.short', { floorCelsius: batch.target.todayCelsius[0] }),
        because: message('debrief.because.short', {
          peakCelsius: peak.celsius,
          shortKelvin: -peak.outsideKelvin,
        }),
      };
    },
  },
  {
    id: 'late-off',
    source: 'our judgement',
    find: (facts) => {
      const { takenOff, peak } = facts;
      const seconds = lateBy(facts);
      if (takenOff === null || seconds <= worth.lateSeconds) return null;
      if ((peak?.outsideKelvin ?? 0) > worth.outsideKelvin) return null;
      return {
        action: message('debrief.change.late-off', { offCelsius: takenOff.wantedCelsius }),
        because: message('debrief.because.late-off', { seconds }),
      };
    },
  },
  {
    id: 'fast-end',
    source: 'slow the heat for the last degrees: trade practice; the rate is our judgement',
    find: (facts) => {
      const near = nearEndOf(facts);
      if (near?.rate == null || near.rate <= worth.kelvinPerSecond) return null;
      return {
        action: message('debrief.change.fast-end', { fromCelsius: near.fromCelsius }),
        because: message('debrief.because.fast-end', {
          kelvinPerSecond: near.rate,
          mostPerSecond: worth.kelvinPerSecond,
        }),
      };
    },
  },
  {
    id: 'few-readings',
    source: 'our judgement',
    find: (facts) => {
      const near = nearEndOf(facts);
      if (near === null || near.longestGapSeconds <= worth.gapSeconds) return null;
      return {
        action: message('debrief.change.few-readings', { fromCelsius: near.fromCelsius }),
        because: message('debrief.because.few-readings', {
          seconds: near.longestGapSeconds,
          readings: near.readings,
        }),
      };
    },
  },
  {
    id: 'stiff',
    source: 'most that one person pulls well: our judgement (batch/yield.ts)',
    find: (facts) => {
      const { cook, batch } = facts;
      const stiff = reported(facts, 'stiff');
      if (stiff === undefined && !cook.armsOut) return null;
      const each =
        (facts.yield.weighedGrams ?? batch.yield.expectedGrams.typical) / Math.max(1, cook.portions);
      const most = mostGramsForHands[cook.hands];
      const portions = Math.max(cook.portions + 1, Math.ceil((each * cook.portions) / most));
      return {
        action: message('debrief.change.stiff', { portions }),
        because: message('debrief.because.stiff', {
          armsOut: cook.armsOut,
          portions: cook.portions,
          gramsEach: each,
          mostGrams: most,
        }),
      };
    },
  },
  {
    id: 'grains',
    source: 'dry syrup solids per gram of sugar: sugar/solubility.ts',
    find: (facts) => {
      const grains = reported(facts, 'grains');
      if (grains === undefined) return null;
      const { doctorMissingGrams, doctorRatio } = facts.batch.candy;
      return {
        action: message('debrief.change.grains', {
          missingGrams: doctorMissingGrams,
          wall: facts.batch.recipe.stir === 'until-boil',
        }),
        because: message('debrief.because.grains', { phase: grains.phase, at: grains.at, doctorRatio }),
      };
    },
  },
  {
    id: 'soft',
    source: 'our judgement',
    find: (facts) => {
      const { cook, events, voided, batch } = facts;
      const droops = events.filter(
        ({ kind, seq, ...event }) =>
          kind === 'rope' && !voided.has(seq) && 'does' in event && event.does === 'droops',
      ).length;
      const each = droops / Math.max(1, cook.portions);
      if (reported(facts, 'soft') === undefined && each < worth.droops) return null;
      return {
        action: message('debrief.change.soft', { offCelsius: batch.target.takeOffCelsius + 1 }),
        because: message('debrief.because.soft', {
          droops,
          moisture: facts.candy?.moisture ?? null,
        }),
      };
    },
  },
  {
    id: 'fingers-and-dial',
    source: 'trust what fingers feel: common practice',
    find: ({ disagreedStages, batch }) =>
      Math.abs(disagreedStages) < worth.stagesApart
        ? null
        : {
            action: message('debrief.change.fingers-and-dial', { boils: batch.air.waterBoilsCelsius }),
            because: message('debrief.because.fingers-and-dial', { stages: disagreedStages }),
          },
  },
  {
    id: 'short-tests',
    source: 'our judgement',
    find: ({ tests, batch }) => {
      const short = tests.filter(({ verdict }) => verdict === 'short');
      const first = short[0]?.celsius ?? null;
      if (short.length < worth.shortTests) return null;
      return {
        action: message('debrief.change.short-tests', {
          fromCelsius: first === null ? null : batch.target.takeOffCelsius - 1.5,
          feels: batch.target.feels,
        }),
        because: message('debrief.because.short-tests', { tests: short.length, firstCelsius: first }),
      };
    },
  },
  {
    id: 'no-readings',
    source: 'stages are 6 to 15 K wide: sugar/stages.ts',
    find: ({ readings, pouredAt, peak }) =>
      pouredAt === null || readings.some(({ of, believed }) => of === 'syrup' && believed)
        ? null
        : {
            action: message('debrief.change.no-readings'),
            because: message('debrief.because.no-readings', {
              between: peak === null ? null : peak.between,
            }),
          },
  },
  {
    id: 'unchecked-dial',
    source: 'what an unchecked thermometer is known to: kitchen/correction.ts',
    find: ({ batch, readings }) =>
      batch.dial.present && batch.dial.basis === 'taken as right' && readings.length > 0
        ? {
            action: message('debrief.change.unchecked-dial', { boils: batch.air.waterBoilsCelsius }),
            because: message('debrief.because.unchecked-dial', { sdKelvin: batch.dial.sdKelvin }),
          }
        : null,
  },
  {
    id: 'slow-boil',
    source: 'boil 15 to 45 min with the lid or washing down: trade practice',
    find: (facts) => {
      const boil = secondsIn(facts, 'boil');
      if (boil?.planned == null || boil.against !== 'slower') return null;
      // Who fights foam or a scorched bottom is not to be told to heat more.
      if ((['foam', 'overflow', 'scorched'] as const).some((name) => reported(facts, name))) return null;
      const seconds = boil.seconds - offWhileBoiling(facts);
      if (seconds <= worth.slowShare * boil.planned.high) return null;
      return {
        action: message('debrief.change.boil-time', {
          waterGrams: facts.batch.boil.waterToBoilAwayGrams[0],
        }),
        because: message('debrief.because.boil-time', {
          seconds,
          high: boil.planned.high,
        }),
      };
    },
  },
  {
    id: 'slow-fold',
    source: 'cool and fold 8 to 25 min: trade practice',
    find: (facts) => {
      const fold = secondsIn(facts, 'fold');
      if (fold?.planned == null || fold.against !== 'slower') return null;
      return {
        action: message('debrief.change.slow-fold'),
        because: message('debrief.because.slow-fold', { seconds: fold.seconds, high: fold.planned.high }),
      };
    },
  },
  {
    id: 'heat-left-on',
    source: 'common practice, no source',
    find: (facts) => {
      const [left] = raised(facts, 'heat-left-on');
      return left === undefined
        ? null
        : {
            action: message('debrief.change.heat-left-on'),
            because: message('debrief.because.heat-left-on', { seconds: 60 + stood(left, facts.seconds) }),
          };
    },
  },
  {
    id: 'stirred-in-the-boil',
    source: 'agitation in the boil encourages crystals: Exploratorium, The Science of Cooking',
    find: (facts) => {
      const [boils] = raised(facts, 'boils-while-stirring');
      return boils === undefined || facts.batch.recipe.stir === 'late'
        ? null
        : {
            action: message('debrief.change.stirred-in-the-boil'),
            because: message('debrief.because.stirred-in-the-boil', { seconds: stood(boils, facts.seconds) }),
          };
    },
  },
  {
    id: 'piece-size',
    source: 'our judgement',
    find: ({ pieces, batch }) => {
      if (pieces.meanGrams === null || pieces.wantedGrams <= 0) return null;
      const off = pieces.meanGrams / pieces.wantedGrams - 1;
      if (Math.abs(off) <= worth.pieceOff) return null;
      return {
        action: message('debrief.change.piece-size', {
          now: batch.yield.cutMillimetres,
          better: batch.yield.cutMillimetres / (1 + off),
        }),
        because: message('debrief.because.piece-size', {
          meanGrams: pieces.meanGrams,
          wantedGrams: pieces.wantedGrams,
        }),
      };
    },
  },
  {
    id: 'uneven-pieces',
    source: 'our judgement',
    find: ({ pieces }) =>
      pieces.variation === null || pieces.variation <= worth.variation || pieces.between === null
        ? null
        : {
            action: message('debrief.change.uneven-pieces'),
            because: message('debrief.because.uneven-pieces', {
              variation: pieces.variation,
              between: pieces.between,
            }),
          },
  },
  {
    id: 'yield',
    source: 'published recipes give 69 to 101 % of what they hold, median 89 %: batch/yield.ts',
    find: ({ yield: { share, weighedGrams, cookedGrams } }) => {
      if (share === null || weighedGrams === null) return null;
      if (share >= worth.shareLow && share <= worth.shareHigh) return null;
      return {
        action: message('debrief.change.yield', { more: share > worth.shareHigh }),
        because: message('debrief.because.yield', { share, weighedGrams, cookedGrams }),
      };
    },
  },
  {
    id: 'slow-wrap',
    source: 'a person wraps 4 to 6 pieces a minute: our judgement',
    find: (facts) => {
      const wrap = secondsIn(facts, 'wrap');
      if (wrap?.planned == null || wrap.against !== 'slower') return null;
      return {
        action: message('debrief.change.slow-wrap', {
          people: Math.max(2, Math.ceil(wrap.seconds / wrap.planned.typical)),
        }),
        because: message('debrief.because.slow-wrap', { seconds: wrap.seconds, high: wrap.planned.high }),
      };
    },
  },
  {
    id: 'weigh-and-count',
    source: 'our judgement',
    find: ({ state, rehearsal, yield: { weighedGrams, expectedGrams }, pieces: { counted, expected } }) => {
      if (state !== 'finished' || rehearsal || (weighedGrams !== null && counted !== null)) return null;
      const missing = { weigh: weighedGrams === null, count: counted === null };
      return {
        action: message('debrief.change.weigh-and-count', missing),
        because: message('debrief.because.weigh-and-count', {
          ...missing,
          grams: expectedGrams,
          pieces: expected,
        }),
      };
    },
  },
];

/** The ids and sources of all rules, for the record beside their advice. */
export const changeSources: Readonly<Record<string, string>> = Object.fromEntries(
  rules.map(({ id, source }) => [id, source]),
);

/** At most five changes for next time, the most important first. */
export const changesFor = (facts: Facts): readonly Change[] =>
  rules
    .flatMap(({ id, find }) => {
      const found = find(facts);
      return found === null ? [] : [{ id, ...found }];
    })
    .slice(0, mostChanges);
