import type { Batch } from '../batch/batch.js';
import { headline } from '../cook/candy.js';
import type { Cook } from '../cook/cook.js';
import type { Happened } from '../cook/event.js';
import { openingOf } from '../cook/open.js';
import type { PhaseId } from '../recipe/recipe.js';
import {
  type CandyTold,
  candyOfPeak,
  type ForecastTold,
  forecastsOf,
  type OffTold,
  offsOf,
  type PeakTold,
  peakOf,
  type TrackPoint,
  trackOf,
  worstDisagreement,
} from './boil-story.js';
import { type Change, changesFor } from './changes.js';
import { type Moment, momentsOf } from './moments.js';
import { type PhaseTold, phasesOf, type Span, spansOf } from './phase-story.js';
import { type ReadingTold, readingsOf, type TestTold, testsOf } from './reading-story.js';
import { type TroubleTold, troublesOf } from './trouble-story.js';
import { type Instant, walk } from './walk.js';
import { type WarningTold, warningsOf } from './warning-story.js';
import { type PiecesTold, piecesTold, type YieldTold, yieldTold } from './yield-story.js';

export type Remark = { readonly t: number; readonly text: string };

/** What happened in a cook, before anything is made of it. Times are seconds since the opening, Celsius is true. */
export type Facts = {
  /** The cook as it stood at the end of its list. */
  readonly cook: Cook;
  readonly batch: Batch;
  /** Wall clock of the first event, ISO 8601; null where it is not known. */
  readonly startedAt: string | null;
  readonly seed: number | null;
  readonly rehearsal: boolean;
  readonly from: PhaseId | null;
  readonly state: 'finished' | 'given up' | 'unfinished';
  /** Where it stood at the end. */
  readonly phase: PhaseId;
  readonly seconds: number;
  /** Everything in the list, with what was taken back. */
  readonly events: readonly Happened[];
  readonly voided: ReadonlySet<number>;

  readonly readings: readonly ReadingTold[];
  readonly track: readonly TrackPoint[];
  readonly forecasts: readonly ForecastTold[];
  readonly spans: readonly Span[];
  readonly phases: readonly PhaseTold[];
  readonly tests: readonly TestTold[];
  /** Stages by which fingers and dial were apart at worst. */
  readonly disagreedStages: number;
  readonly offs: readonly OffTold[];
  /** The last time that the pot came off, and stayed off. */
  readonly takenOff: OffTold | null;
  readonly peak: PeakTold | null;
  readonly candy: CandyTold | null;
  readonly pouredAt: number | null;
  readonly yield: YieldTold;
  readonly pieces: PiecesTold;
  readonly warnings: readonly WarningTold[];
  readonly troubles: readonly TroubleTold[];
  readonly notes: readonly Remark[];
  readonly recordings: readonly number[];
  readonly gaps: readonly { readonly t: number; readonly seconds: number; readonly sure: boolean }[];
};

export type Story = Facts & {
  readonly changes: readonly Change[];
  readonly moments: readonly Moment[];
};

const stateOf = (cook: Cook): Facts['state'] => {
  if (cook.stopped) return 'given up';
  return headline(cook) === 'over' ? 'finished' : 'unfinished';
};

const isRecording = (what: string): boolean => what.trim().toLowerCase() === 'recording';

/** When the last phase was over: what is typed afterwards, a weight or a remark, belongs to no phase. */
const endOf = (spans: readonly Span[]): number =>
  spans.find(({ phase }) => phase === 'over')?.from ?? Math.max(0, ...spans.map(({ to }) => to));

/** The last of a walk, which has one: it yields the opening first. */
const lastOf = (lived: readonly Instant[]): Instant => {
  const last = lived.at(-1);
  if (last === undefined) throw new TypeError('a story has a beginning');
  return last;
};

const factsOf = (lived: readonly Instant[], startedAt: string | null): Facts => {
  const { cook } = lastOf(lived);
  const events = cook.log.slice(0, cook.length);
  const voided = new Set(cook.voided);
  // What was taken back did not happen; what was advised because of it did.
  const settled =
    voided.size === 0
      ? lived
      : [...walk(events.filter(({ seq, kind }) => kind !== 'undo' && !voided.has(seq)))];
  const true_ = lastOf(settled).cook;
  const spans = spansOf(settled);
  const readings = readingsOf(settled);
  const tests = testsOf(settled);
  const track = trackOf(settled);
  const offs = offsOf(settled);
  const peak = peakOf(track, readings, tests, true_);
  const candy = candyOfPeak(peak, true_);
  const opened = openingOf(events);
  const kept = settled.flatMap(({ event }) => event ?? []);
  return {
    cook,
    batch: cook.batch,
    startedAt,
    seed: opened.seed,
    rehearsal: cook.rehearsal,
    from: cook.from,
    state: stateOf(cook),
    phase: headline(cook),
    seconds: endOf(spans),
    events,
    voided,
    readings,
    track,
    forecasts: forecastsOf(track, offs),
    spans,
    phases: phasesOf(spans, cook, opened.runSheet),
    tests,
    disagreedStages: worstDisagreement(tests, cook),
    offs,
    takenOff: offs.findLast(({ backAt }) => backAt === null) ?? null,
    peak,
    candy,
    pouredAt: cook.from === null || cook.pouredAt !== 0 ? cook.pouredAt : null,
    yield: yieldTold(cook, candy?.cookedGrams ?? null),
    pieces: piecesTold(cook, settled),
    warnings: warningsOf(lived),
    troubles: troublesOf(settled),
    notes: kept.flatMap((event) =>
      event.kind === 'note'
        ? [{ t: event.t, text: event.text }]
        : event.kind === 'mark' && !isRecording(event.what)
          ? [{ t: event.t, text: event.what }]
          : [],
    ),
    recordings: kept.flatMap((event) => (event.kind === 'mark' && isRecording(event.what) ? [event.t] : [])),
    gaps: kept.flatMap((event) =>
      event.kind === 'gap' ? [{ t: event.t, seconds: event.seconds, sure: event.sure }] : [],
    ),
  };
};

/**
 * What happened in a cook, finished or not, from its events in the order of the journal, and at most five changes for
 * next time. Pure; the same events tell the same story. Throws a TypeError if the first event is not `opened`.
 */
export const storyOf = (events: readonly Happened[], startedAt: string | null): Story =>
  storyAlong([...walk(events)], startedAt);

/** The same of a cook that was walked through already, or of the beginning of such a walk; a TypeError where it is empty. */
export const storyAlong = (lived: readonly Instant[], startedAt: string | null): Story => {
  const facts = factsOf(lived, startedAt);
  return { ...facts, changes: changesFor(facts), moments: momentsOf(facts) };
};
