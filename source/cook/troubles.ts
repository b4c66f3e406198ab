import type { TextId } from '../texts/message.js';
import type { Cook, OpenTrouble } from './cook.js';
import type { Level } from './hazards/hazard.js';
import { type ReportHazard, responseOf } from './hazards/hazard.js';
import { reportOf } from './hazards/reports.js';

export type Instruction = {
  readonly trouble: OpenTrouble;
  readonly hazard: ReportHazard;
  readonly index: number;
  readonly text: TextId;
  readonly rest: readonly TextId[];
  readonly step: string;
};

const urgency: Readonly<Record<Level, number>> = { now: 0, soon: 1, note: 2 };

const stepId = (name: string, index: number): string => `trouble.${name}.${index + 1}`;

/** What to do next about one trouble; null when all of it has been told. */
const instructionOf = (cook: Cook, trouble: OpenTrouble): Instruction | null => {
  const hazard = reportOf(trouble.name);
  const response = responseOf(hazard, cook);
  const text = response[trouble.told];
  if (text === undefined) return null;
  return {
    trouble,
    hazard,
    index: trouble.told,
    text,
    rest: response.slice(trouble.told + 1),
    step: stepId(trouble.name, trouble.told),
  };
};

/** The most urgent instruction of all open troubles: the latest of the most urgent level. */
export const instruction = (cook: Cook): Instruction | null => {
  const open = cook.troubles.flatMap((trouble) => instructionOf(cook, trouble) ?? []);
  return (
    open.sort(
      (one, other) =>
        urgency[one.hazard.level] - urgency[other.hazard.level] || other.trouble.since - one.trouble.since,
    )[0] ?? null
  );
};

/** "Done" on an instruction: the next one is told. Null if `step` is no instruction of an open trouble. */
export const troubleTold = (cook: Cook, step: string, t: number): Cook | null => {
  if (!step.startsWith('trouble.')) return null;
  const troubles = cook.troubles.map((trouble) =>
    stepId(trouble.name, trouble.told) === step ? { ...trouble, told: trouble.told + 1 } : trouble,
  );
  return { ...cook, troubles, t };
};
