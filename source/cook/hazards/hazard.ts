import type { PhaseId } from '../../recipe/recipe.js';
import type { Message, TextId } from '../../texts/message.js';
import type { Cook } from '../cook.js';
import type { View } from '../view.js';

type IdIn<Text> = Text extends `hazard.${infer Id}.cause` ? Id : never;
/** Every hazard has its cause among the texts. */
export type HazardId = IdIn<TextId>;

/** After 14 CFR 25.1322: now - act at once; soon - know now, act soon; note - know. */
export type Level = 'now' | 'soon' | 'note';

/** ANSI Z535: will kill or maim / could kill or maim / could hurt a little. Never for the quality of the candy. */
export type Signal = 'DANGER' | 'WARNING' | 'CAUTION';

type Common = {
  readonly id: HazardId;
  readonly phases: readonly PhaseId[] | 'any';
  readonly level: Level;
  readonly signal: Signal | null;
  /** What to do, in order; may depend on where in the cook it happens. */
  readonly response: readonly TextId[] | ((cook: Cook) => readonly TextId[]);
  /** Seconds there are to respond; null where nothing presses. */
  readonly respondWithinSeconds: number | null;
  readonly source: string;
};

/** About to happen in a step: stands in the step's text, is no warning. */
export type Precaution = Common & { readonly raisedBy: 'step' };

/** Shown by a reading, a rate, a setting or silence. */
export type EvidenceHazard = Common & {
  readonly raisedBy: 'evidence';
  /** Looked at when something happened. */
  readonly raise?: (view: View) => boolean;
  /** Its cause is gone. Apart from `raise`, so that a reading that hovers at the limit raises it once. */
  readonly clear?: (view: View) => boolean;
  /** The moment at which it arises if nothing happens before. */
  readonly arises?: (cook: Cook) => number | null;
  readonly evidence: (view: View) => Message | null;
};

/** Said by a person. */
export type ReportHazard = Common & {
  readonly raisedBy: 'report';
  readonly shout: TextId;
  /** A time to keep beside the cook, seconds from the report. */
  readonly timerSeconds?: number;
  /** A question that stands in front of all but the first instruction. */
  readonly asks?: 'trouble.glass';
  /** The cook does not go on beside it: the last instruction, which says how it ends, stays until it is over or given up. */
  readonly holds?: boolean;
};

export type Hazard = Precaution | EvidenceHazard | ReportHazard;

export const responseOf = (hazard: Hazard, cook: Cook): readonly TextId[] =>
  typeof hazard.response === 'function' ? hazard.response(cook) : hazard.response;

const levels: Readonly<Record<Level, number>> = { now: 0, soon: 1, note: 2 };
const signals: Readonly<Record<Signal, number>> = { DANGER: 0, WARNING: 1, CAUTION: 2 };

type Pressing = { readonly level: Level; readonly signal: Signal | null; readonly since: number };

/** The order in which warnings are said: by level, then by what people can suffer, then the latest. */
export const byUrgency = (one: Pressing, other: Pressing): number =>
  levels[one.level] - levels[other.level] ||
  (one.signal === null ? 3 : signals[one.signal]) - (other.signal === null ? 3 : signals[other.signal]) ||
  other.since - one.since;
