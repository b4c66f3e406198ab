import type { TextId } from '../texts/message.js';
import { headline } from './candy.js';
import type { Cook, OpenTrouble } from './cook.js';
import { type CookEvent, type TroubleName, troubleNames } from './event.js';
import { byUrgency, type ReportHazard, responseOf } from './hazards/hazard.js';
import { meantBy, reportOf } from './hazards/reports.js';

export type Instruction = {
  readonly trouble: OpenTrouble;
  readonly hazard: ReportHazard;
  readonly index: number;
  readonly text: TextId;
  readonly rest: readonly TextId[];
  readonly step: string;
  /** Asked before the next instruction: only its own answer gets past it. */
  readonly question: string | null;
  /** "Done" tells the next one, or leads back to the cook. */
  readonly canBeDone: boolean;
};

const stepId = (name: string, index: number): string => `trouble.${name}.${index + 1}`;

/** What to do next about one trouble; null when all of it has been told and the cook may go on beside it. */
export const instructionOf = (cook: Cook, trouble: OpenTrouble): Instruction | null => {
  const hazard = reportOf(trouble.name);
  const all = responseOf(hazard, cook);
  // The last of a trouble that holds the cook says how that ends: given up, it has ended.
  const holds = hazard.holds === true && !cook.stopped;
  const response = hazard.holds && cook.stopped ? all.slice(0, -1) : all;
  const last = response.length - 1;
  const index = holds ? Math.min(trouble.told, last) : trouble.told;
  const text = response[index];
  if (text === undefined) return null;
  const question = index === 0 ? (hazard.asks ?? null) : null;
  return {
    trouble,
    hazard,
    index,
    text,
    rest: response.slice(index + 1),
    step: stepId(trouble.name, index),
    question,
    canBeDone: question === null && !(holds && index === last),
  };
};

/** The most urgent instruction of all open troubles. */
export const instruction = (cook: Cook): Instruction | null => {
  const open = cook.troubles.flatMap((trouble) => instructionOf(cook, trouble) ?? []);
  const pressing = ({ hazard, trouble }: Instruction) => ({ ...hazard, since: trouble.since });
  return open.sort((one, other) => byUrgency(pressing(one), pressing(other)))[0] ?? null;
};

const changed = (cook: Cook, name: TroubleName, change: Partial<OpenTrouble>): Cook => ({
  ...cook,
  troubles: cook.troubles.map((one) => (one.name === name ? { ...one, ...change } : one)),
});

/** The mass goes into an oven: what was measured of its middle before, or during it, counts no longer. */
export const warms = (cook: Cook, name: TroubleName, t: number): Cook =>
  name === 'stiff' && cook.pouredAt !== null ? { ...cook, warmedAt: t } : cook;

/** What "done" on an instruction of a trouble says also; null if nothing. */
export const meantByTold = (cook: Cook, step: string): CookEvent | null => {
  const [, name, place] = /^trouble\.([a-z]+)\.(\d+)$/.exec(step) ?? [];
  const known = troubleNames.find((one) => one === name);
  const text = known === undefined ? undefined : responseOf(reportOf(known), cook)[Number(place) - 1];
  return text === undefined ? null : meantBy(cook, text);
};

/** "Done" on an instruction: the next one is told. Null if `step` is no instruction of a trouble. */
export const troubleTold = (cook: Cook, step: string, t: number): Cook | null => {
  if (!step.startsWith('trouble.')) return null;
  const told = cook.troubles
    .flatMap((trouble) => instructionOf(cook, trouble) ?? [])
    .find((one) => one.step === step && one.canBeDone);
  if (told === undefined) return cook;
  const next = changed(cook, told.trouble.name, { told: told.index + 1 });
  return told.index === 0 ? warms(next, told.trouble.name, t) : next;
};

/** The answer to what a trouble asks first; null if it is no such question. */
export const answerTrouble = (cook: Cook, question: string, answer: 'yes' | 'no', t: number): Cook | null => {
  if (question !== 'trouble.glass') return null;
  if (!cook.troubles.some(({ name }) => name === 'thermometer')) return cook;
  if (answer === 'no') return changed(cook, 'thermometer', { told: 1 });
  // The instrument matters no more: there is glass.
  const others = cook.troubles.filter(({ name }) => name !== 'thermometer' && name !== 'glass');
  return {
    ...cook,
    troubles: [...others, { name: 'glass', since: t, told: 0, answered: false, phase: headline(cook) }],
  };
};
