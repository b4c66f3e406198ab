import type { Batch } from '../batch/batch.js';
import type { Estimate, Hob } from '../forecast/forecast.js';
import type { HandsKind } from '../kitchen/kitchen.js';
import type { PhaseId } from '../recipe/recipe.js';
import type { ColdWaterOutcome } from '../sugar/stages.js';
import type { Happened, TroubleName } from './event.js';

/** A reading as it was understood: true Celsius after the thermometer's known correction. */
export type Reading = {
  readonly seq: number;
  readonly t: number;
  readonly celsius: number;
};

export type DoubtReason =
  | 'out of range'
  | 'jump'
  | 'fall'
  | 'too cold to boil'
  | 'too hot so soon'
  | 'colder than the room'
  | 'other scale';

/** A reading that can't be right, kept and asked about. */
export type Doubt = Reading & {
  readonly of: 'syrup' | 'middle';
  readonly because: DoubtReason;
  /** When the first of the readings came that say the same. */
  readonly since: number;
  /** What it would be on the other scale, true Celsius, when that fits. */
  readonly otherScaleCelsius: number | null;
  readonly asks: boolean;
};

export type OpenTrouble = {
  readonly name: TroubleName;
  readonly since: number;
  /** How many of its instructions have been done. */
  readonly told: number;
  /** Its warning has been answered; what to do goes on being said. */
  readonly answered: boolean;
  /** The phase in which it was reported decides what to do. */
  readonly phase: PhaseId;
};

export type ColdWaterTest = {
  readonly t: number;
  readonly outcome: ColdWaterOutcome | 'unsure';
  /** Today's syrup temperature by the thermometer at that time, null without one. */
  readonly celsius: number | null;
  /** How many since the pot came off, one after the other, felt like the recipe's own outcome. */
  readonly inARow: number;
  /** The firmest that was felt so far, when it was first felt, and how many tests since then found it no firmer. */
  readonly firmest: ColdWaterOutcome | null;
  readonly firmestAt: number;
  readonly noFirmer: number;
};

/** A physical act whose event was taken back: what is true now is not known. */
export type Unsettled = 'heat' | 'pot' | 'lid' | 'pour';

/** A warning's memory: raised once, answered or not, gone with its cause. */
export type Raised = { readonly since: number; readonly answered: boolean };

/**
 * One cook, computed from its events. Times are seconds since the opening; Celsius is true syrup temperature.
 * `log` is shared by all states of one cook and only ever appended to; `length` says how much of it is this state's.
 */
export type Cook = {
  readonly log: Happened[];
  readonly length: number;
  readonly batch: Batch;
  readonly hob: Hob;
  readonly rehearsal: boolean;
  readonly from: PhaseId | null;
  readonly t: number;
  /** When a person last did anything: the measure of silence. */
  readonly heardAt: number;

  /** How many portions of the batch are in each phase; before the pour all of it moves together. */
  readonly candy: Readonly<Partial<Record<PhaseId, number>>>;
  readonly enteredAt: Readonly<Partial<Record<PhaseId, number>>>;
  readonly leftAt: Readonly<Partial<Record<PhaseId, number>>>;
  readonly done: Readonly<Record<string, number>>;
  readonly answers: Readonly<Record<string, { readonly answer: 'yes' | 'no'; readonly t: number }>>;
  readonly stopped: boolean;

  readonly heat: { readonly setting: string; readonly level: number | null; readonly t: number } | null;
  /** `said`: by a person; a cold-water test only implies that the pot is off. */
  readonly potOn: { readonly on: boolean; readonly t: number; readonly said: boolean } | null;
  readonly lidOn: { readonly on: boolean; readonly t: number } | null;
  readonly wateredAt: number | null;
  readonly pouredAt: number | null;
  readonly boilsSince: number | null;

  /** One for the pot is at hand. */
  readonly thermometer: boolean;
  /** One for the middle of the mass is: its own, or that of the pot. */
  readonly middleThermometer: boolean;
  readonly checks: { readonly iceShownCelsius: number | null; readonly boilsShownCelsius: number | null };
  readonly estimate: Estimate;
  readonly lastReading: Reading | null;
  /** The last few believed readings before it, oldest first: enough to tell a rate from. */
  readonly readBefore: readonly Reading[];
  /** Believed readings since pot and burner were last touched, some seconds apart, the newest last: a stall is told from them. */
  readonly leftAlone: readonly Reading[];
  readonly readingsTaken: number;
  readonly doubt: Doubt | null;
  readonly lastTest: ColdWaterTest | null;
  /**
   * True Celsius at which to take it off: the batch's, moved up after a test that fell short; in the last stretch with
   * the climb that the power now in the pot will give, in place of the one that was planned with.
   */
  readonly takeOffCelsius: number;
  /** What fingers that felt it short have moved it up by, kelvin. */
  readonly movedKelvin: number;
  /** A reading or the forecast asked for the pot to come off, and it is still on. */
  readonly offSince: number | null;
  /** What asked for it: a doubted reading and a forecast can be contradicted, a believed reading can't. */
  readonly offBy: 'reading' | 'doubt' | 'forecast' | null;
  readonly reachedAt: number | null;
  /** Within 8 K of take-off: the list before pouring is read now. */
  readonly nearSince: number | null;

  readonly hands: HandsKind;
  readonly middle: Reading | null;
  /** The mass was warmed again: an earlier measure of the middle counts no longer. */
  readonly warmedAt: number | null;
  readonly droops: boolean | null;
  readonly armsOut: boolean;
  readonly portions: number;

  readonly troubles: readonly OpenTrouble[];
  readonly raised: Readonly<Record<string, Raised>>;
  /** The `seq` that an undo would void now: the latest event by hands, neither voided nor an undo. */
  readonly undoes: number | null;
  /** Physical acts that were taken back and not said anew. */
  readonly unsettled: readonly Unsettled[];
  /** Nothing could be heard for so long, and nobody has said since what became of the pot. */
  readonly gap: { readonly seconds: number; readonly sure: boolean } | null;
  /** The `seq` of every event that an undo has voided. */
  readonly voided: readonly number[];

  readonly weighed: { readonly grams: number; readonly pieces: number | null } | null;
  readonly tenPieces: { readonly grams: number; readonly pieces: number } | null;
  readonly counted: number | null;
};
