import type { PhaseId } from '../recipe/recipe.js';
import type { Stage } from '../sugar/stages.js';
import type { Message } from '../texts/message.js';
import type { TemperatureUnit } from '../units/printer.js';
import type { TroubleName } from './event.js';
import type { HazardId, Level, Signal } from './hazards/hazard.js';

export type Asked = {
  readonly id: string;
  readonly text: Message;
  /** What may be typed. */
  readonly answers: readonly string[];
  readonly safe: string;
  /** `pause`: a list read aloud; `safety`: one line; both want a deliberate answer. */
  readonly kind: 'pause' | 'safety' | 'reading' | 'what is true now';
};

export type Warning = {
  readonly id: HazardId;
  readonly level: Level;
  readonly signal: Signal | null;
  readonly since: number;
  readonly cause: Message;
  readonly consequence: Message;
  readonly response: readonly Message[];
  readonly evidence: Message | null;
};

export type Countdown = {
  readonly id: string;
  readonly from: number;
  readonly until: number | null;
  readonly due: boolean;
};

export type OpenTroubleAdvice = {
  readonly name: TroubleName;
  readonly since: number;
  readonly instruction: Message | null;
  readonly rest: readonly Message[];
  readonly until: number | null;
};

export type Trail = { readonly phase: PhaseId; readonly state: 'behind' | 'now' | 'also' | 'ahead' };

/**
 * What to do, why, what to watch, what is due. No sentence and no formatted number: ids and SI values only.
 * Celsius is true syrup temperature today.
 */
export type Advice = {
  readonly now: number;
  readonly phase: PhaseId;
  readonly trail: readonly Trail[];
  /** What "done" would answer; null where nothing waits for it. */
  readonly step: string | null;
  /** "Done" would do something. */
  readonly canBeDone: boolean;
  readonly handsOn: boolean;
  readonly say: Message;
  readonly why: Message;
  readonly shout: Message;
  /** The headline wants an act at once. */
  readonly urgent: boolean;
  readonly items: readonly Message[];
  readonly cautions: readonly Warning[];
  readonly question: Asked | null;
  /** A question that is not asked, and not answered, before its moment. */
  readonly waits: { readonly question: string; readonly until: number } | null;
  readonly temperature: { readonly celsius: number; readonly sd: number } | null;
  readonly stages: Readonly<Record<Stage, number>> | null;
  readonly forecast: {
    readonly targetCelsius: number;
    readonly takeOffCelsius: number;
    readonly seconds: { readonly low: number; readonly typical: number; readonly high: number };
    readonly takeOffSeconds: { readonly low: number; readonly typical: number; readonly high: number };
    readonly boilShare: number;
    readonly watts: number;
    readonly carryOverKelvin: number;
  } | null;
  /** What the last reading means: stage, how far, how fast. Null without one, and after the pour. */
  readonly meaning: Message | null;
  /** The `seq` of the reading that `meaning` is about. */
  readonly meaningOf: number | null;
  /** When that reading was taken. */
  readonly readAt: number | null;
  readonly reached: boolean;
  readonly offTheHeat: boolean;
  readonly nextReadingSeconds: number | null;
  readonly changesAt: number | null;
  readonly warnings: readonly Warning[];
  readonly troubles: readonly OpenTroubleAdvice[];
  readonly timers: readonly Countdown[];
  readonly next: Message | null;
  readonly watch: Message | null;
  readonly cues: readonly string[];
  /** Against the run sheet: seconds ahead (+) or behind (-), and the planned beginning that is meant; null without one. */
  readonly drift: { readonly seconds: number; readonly phase: PhaseId } | null;
  readonly from: PhaseId | null;
  readonly rehearsal: boolean;
  /** What typing means at this moment. */
  readonly typing: {
    readonly unit: TemperatureUnit;
    readonly bare: 'syrup' | 'middle';
    readonly heatWords: readonly string[];
    readonly undoes: number | null;
    readonly openTroubles: readonly TroubleName[];
  };
};
