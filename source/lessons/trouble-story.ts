import type { Cook } from '../cook/cook.js';
import type { Happened, TroubleName } from '../cook/event.js';
import { responseOf } from '../cook/hazards/hazard.js';
import { reportOf } from '../cook/hazards/reports.js';
import type { PhaseId } from '../recipe/recipe.js';
import { type Act, actsOf, alreadyDone, orderOf, rightActs } from './right-acts.js';
import type { Instant } from './walk.js';

/** Something that a person reported, and how it was met. */
export type TroubleTold = {
  readonly name: TroubleName;
  readonly phase: PhaseId;
  readonly at: number;
  /** From the report to the first thing done about it; null: nothing more was said of it. */
  readonly firstSeconds: number | null;
  readonly withinSeconds: number | null;
  /** With ten seconds for typing. */
  readonly inTime: boolean | null;
  /** What was seen to be done, in order, seconds since the opening. */
  readonly acts: readonly { readonly act: Act; readonly t: number }[];
  readonly order: 'right' | 'wrong' | 'not seen';
  /** Of its instructions so many were called done. */
  readonly told: number;
  readonly instructions: number;
  readonly overAt: number | null;
};

/** Who acts types afterwards: so much is not held against them, seconds. Our judgement. */
const typingSeconds = 10;

type Open = { -readonly [Key in keyof TroubleTold]: TroubleTold[Key] } & {
  readonly already: readonly Act[];
};

const isAbout = (event: Happened, name: TroubleName): boolean => {
  switch (event.kind) {
    case 'ok':
      return event.warning === name;
    case 'over':
      return event.name === name;
    case 'done':
      return event.step.startsWith(`trouble.${name}.`);
    case 'answer':
      return name === 'thermometer' && event.question === 'trouble.glass';
    default:
      return false;
  }
};

const opened = ({ name, phase }: Cook['troubles'][number], cook: Cook): Open => {
  const hazard = reportOf(name);
  return {
    name,
    phase,
    at: cook.t,
    firstSeconds: null,
    withinSeconds: hazard.respondWithinSeconds,
    inTime: null,
    acts: [],
    order: 'not seen',
    told: 0,
    instructions: responseOf(hazard, cook).length,
    overAt: null,
    already: alreadyDone(cook),
  };
};

const look = (open: Open, event: Happened, before: Cook): void => {
  const wanted = rightActs[open.name];
  const acts = actsOf(event, before).filter(
    ({ act }) => wanted?.acts.includes(act) || wanted?.never?.includes(act),
  );
  open.acts = [...open.acts, ...acts];
  const about = isAbout(event, open.name) || acts.some(({ act }) => wanted?.acts.includes(act));
  if (about) open.firstSeconds ??= Math.max(0, event.t - open.at);
  if (event.kind === 'done' && isAbout(event, open.name)) open.told += 1;
};

const closed = ({ already, ...told }: Open): TroubleTold => ({
  ...told,
  order: orderOf(
    rightActs[told.name],
    already,
    told.acts.map(({ act }) => act),
  ),
  inTime:
    told.firstSeconds === null || told.withinSeconds === null
      ? null
      : told.firstSeconds <= told.withinSeconds + typingSeconds,
});

/** The troubles that were reported and not taken back, oldest first. */
export const troublesOf = (instants: readonly Instant[]): readonly TroubleTold[] => {
  const told: Open[] = [];
  const open = new Map<TroubleName, Open>();
  let before: Cook | null = null;
  for (const { cook, event } of instants) {
    if (event !== null && before !== null) {
      for (const one of open.values()) look(one, event, before);
      const now = new Set(cook.troubles.map(({ name }) => name));
      for (const [name, one] of open) {
        if (now.has(name)) continue;
        one.overAt = cook.t;
        open.delete(name);
      }
      for (const trouble of cook.troubles) {
        if (open.has(trouble.name)) continue;
        const fresh = opened(trouble, cook);
        open.set(trouble.name, fresh);
        told.push(fresh);
      }
    }
    before = cook;
  }
  return told.map(closed);
};
