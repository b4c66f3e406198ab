import type { HazardId, Level, Signal } from '../cook/hazards/hazard.js';
import { hazardById } from '../cook/hazards/table.js';
import type { Message } from '../texts/message.js';
import type { Instant } from './walk.js';

/** A warning that the program raised by itself, from the moment it stood there until it was answered or its cause was gone. */
export type WarningTold = {
  readonly id: HazardId;
  readonly level: Level;
  readonly signal: Signal | null;
  readonly raisedAt: number;
  readonly cause: Message;
  readonly evidence: Message | null;
  /** Null: it stood until the end. */
  readonly endedAt: number | null;
  readonly endedBy: 'answered' | 'cause gone' | null;
  /** Seconds that the hazard table gives to respond; null: nothing pressed. */
  readonly withinSeconds: number | null;
  readonly inTime: boolean | null;
};

const inTime = (seconds: number | null, within: number | null): boolean | null =>
  within === null || seconds === null ? null : seconds <= within;

/** The warnings as they were lived, oldest first; troubles that a person reported are told apart. */
export const warningsOf = (instants: readonly Instant[]): readonly WarningTold[] => {
  const told: WarningTold[] = [];
  const standing = new Map<string, number>();
  for (const { t, advice, event } of instants) {
    const now = new Map(advice.warnings.map((warning) => [warning.id as string, warning]));
    for (const [id, place] of standing) {
      const open = told[place];
      if (now.has(id) || open === undefined) continue;
      standing.delete(id);
      const answered = event?.kind === 'ok' && event.warning === id;
      told[place] = {
        ...open,
        endedAt: t,
        endedBy: answered ? 'answered' : 'cause gone',
        inTime: inTime(t - open.raisedAt, open.withinSeconds),
      };
    }
    for (const [id, warning] of now) {
      const hazard = hazardById(id);
      if (standing.has(id) || hazard?.raisedBy !== 'evidence') continue;
      standing.set(id, told.length);
      told.push({
        id: warning.id,
        level: warning.level,
        signal: warning.signal,
        raisedAt: t,
        cause: warning.cause,
        evidence: warning.evidence,
        endedAt: null,
        endedBy: null,
        withinSeconds: hazard.respondWithinSeconds,
        inTime: null,
      });
    }
  }
  return told;
};
