import type { RunSheet } from '../batch/run-sheet.js';
import type { Advice } from '../cook/advice.js';
import { advise } from '../cook/advise.js';
import type { Cook } from '../cook/cook.js';
import type { CookEvent, Happened } from '../cook/event.js';
import { interpret } from '../cook/interpret.js';
import { openCook } from '../cook/open.js';
import { step } from '../cook/step.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import type { Recipe } from '../recipe/recipe.js';
import type { Notice } from './happenings.js';
import type { Habits } from './person/habits.js';
import { personOf } from './person/person.js';
import type { Intent } from './person/self.js';
import { simulatedCook } from './simulated-cook.js';
import type { SurpriseName } from './surprises.js';
import type { SimulatedCook, Truth } from './table.js';

export type RehearsalOptions = {
  readonly recipe: Recipe;
  readonly kitchen: Kitchen;
  /** Any whole number; the same seed gives the same rehearsal. */
  readonly seed: number;
  readonly surprise: SurpriseName | null;
  readonly version: string;
  /** What it is held against, seconds since the opening. */
  readonly runSheet?: RunSheet | null;
  readonly habits?: Habits;
  /** Looks on after everything typed, with what was advised before and after it. */
  readonly onTyped?: (moment: Moment) => void;
};

/** One thing typed, and what came of it. */
export type Moment = {
  readonly typed: string;
  readonly t: number;
  /** Null: not understood, or not wanted. */
  readonly event: Happened | null;
  readonly before: Advice;
  readonly after: Advice;
  readonly truth: Truth;
  /** As it stands afterwards. */
  readonly cook: Cook;
};

export type Rehearsal = {
  readonly cook: Cook;
  readonly seconds: number;
  /** It came to its end, wrapped or given up; otherwise it stood still for too long. */
  readonly ended: boolean;
  readonly queried: readonly string[];
  readonly notices: readonly Notice[];
  readonly truth: Truth;
};

/** Nobody rehearses for longer: a cook that stands here has no way on. */
const longestSeconds = 5 * 3600;
const mostMoments = 4000;
/** Somebody at a pot looks at it this often. */
const looksUpSeconds = 5;

export const rehearsalOpening = ({ recipe, kitchen, seed, version, runSheet = null }: RehearsalOptions) =>
  ({ kind: 'opened', recipe, kitchen, runSheet, seed, version, from: null }) as const;

/**
 * A whole rehearsal without a screen: a simulated person reads the advice and types ordinary words through the real
 * core. Deterministic; a seeded cook takes some hundred milliseconds.
 */
export const rehearse = (options: RehearsalOptions): Rehearsal => {
  const { seed, kitchen, surprise, onTyped } = options;
  let cook = openCook({ ...rehearsalOpening(options), seq: 1, t: 0 });
  const table: SimulatedCook = simulatedCook(cook.batch, seed, surprise);
  const person = personOf(table, kitchen, seed, options.habits);
  const queried: string[] = [];
  const notices: Notice[] = [];
  let t = 0;
  let task: { intent: Intent; at: number } | null = null;

  // Looked at again and again in the same moment: worked out once.
  let known: { readonly cook: Cook; readonly t: number; readonly advice: Advice } | null = null;
  const advised = (): Advice => {
    if (known === null || known.cook !== cook || known.t !== t) known = { cook, t, advice: advise(cook, t) };
    return known.advice;
  };

  const happen = (event: CookEvent): Happened => {
    const happened: Happened = { seq: cook.length + 1, t, ...event };
    cook = step(cook, happened);
    table.happened(happened);
    return happened;
  };

  const type = (intent: Intent, typed: string, before: Advice): void => {
    const read = interpret(typed, before);
    if (read.kind === 'queried') {
      queried.push(typed);
      onTyped?.({ typed, t, event: null, before, after: before, truth: table.truth(), cook });
      return;
    }
    person.typed(intent, typed, before);
    if (intent.untyped) {
      table.happened({ seq: 0, t, ...read });
      return;
    }
    const event = happen(read);
    onTyped?.({ typed, t, event, before, after: advised(), truth: table.truth(), cook });
  };

  for (let moment = 0; moment < mostMoments && t < longestSeconds; moment++) {
    const advice = advised();
    if (advice.phase === 'over') break;
    const intent = person.decide(advice, t);
    if (task === null || task.intent.key !== intent.key) task = { intent, at: t + intent.seconds };
    // Looks up when something can be noticed or the advice changes by itself.
    const changes = advice.changesAt ?? Number.POSITIVE_INFINITY;
    let seen: readonly Notice[] = [];
    while (seen.length === 0 && t < task.at && t < changes) {
      t = Math.min(task.at, t + looksUpSeconds, Math.max(changes, t + 0.5));
      table.advanceTo(t);
      seen = table.notices();
    }
    notices.push(...seen);
    if (t < task.at) continue;
    const done: Intent = task.intent;
    task = null;
    if (done.type !== null) type(done, done.type(), advised());
  }
  return {
    cook,
    seconds: t,
    ended: advised().phase === 'over',
    queried,
    notices,
    truth: table.truth(),
  };
};
