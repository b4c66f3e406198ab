import type { PhaseId } from '../../recipe/recipe.js';
import type { Message, TextId, ValuesOf } from '../../texts/message.js';
import type { Cook } from '../cook.js';
import type { CookEvent } from '../event.js';
import type { HazardId } from '../hazards/hazard.js';
import type { View } from '../view.js';

/** A question that a person answers in words. `safety`: nothing but its own answer gets past it. */
export type Question = {
  readonly id: string;
  readonly answers: readonly ['yes', 'no'];
  /** The answer that is right when in doubt. */
  readonly safe: 'yes' | 'no';
  /** The answer that lets the cook go on. */
  readonly passes: 'yes' | 'no' | 'either';
  readonly safety: boolean;
  /** Not asked, and not answered, before this moment. */
  readonly earliest?: (cook: Cook) => number;
};

export type Timer = {
  readonly id: string;
  readonly from: number;
  /** Not before, or due at; null: it only counts up. */
  readonly until: number | null;
  /** Due again and again, every so many seconds after `from`; stands as due for a while each time. */
  readonly every?: number;
};

/** One thing to do. Its sentences are the texts `<id>.say`, `<id>.why` and `<id>.shout`. */
export type Step = {
  readonly id: string;
  readonly say: (view: View) => Message;
  readonly why: (view: View) => Message;
  readonly shout: Message;
  /** Left out where it means nothing for this batch. */
  readonly wanted?: (cook: Cook) => boolean;
  /** Over by what happened, without anyone saying so. */
  readonly doneBy?: (cook: Cook) => boolean;
  /** Done again each time the phase is entered, or for each portion. */
  readonly again?: boolean;
  /** Saying "done" says also that this happened. */
  readonly means?: CookEvent;
  /** Nothing but that act: asked for whenever it is wanted again, and never behind by having been done once. */
  readonly act?: boolean;
  readonly question?: Question;
  /** What stands in the step's own text before it is done. */
  readonly cautions?: readonly HazardId[] | ((cook: Cook) => readonly HazardId[]);
  /** A list to read aloud or to weigh from. */
  readonly items?: (view: View) => readonly Message[];
  readonly timers?: (view: View) => readonly Timer[];
  /** What to have ready next, and what to keep an eye on. */
  readonly next?: (view: View) => Message | null;
  readonly watch?: (view: View) => Message | null;
  /** Ends by what happens (the boil, a verdict), not by being called done. */
  readonly endless?: boolean | ((cook: Cook) => boolean);
};

export type Phase = {
  readonly id: PhaseId;
  /** Must be passed before any step of this phase is shown, however the phase was reached. */
  readonly gates?: readonly Step[];
  readonly steps: readonly Step[];
  /** How much moves on when the last step is done: all that is here, or one portion. */
  readonly moves?: (cook: Cook) => 'all' | 'one';
  /** Hands are in the candy or on the scissors: nothing needs typing. */
  readonly handsOn?: boolean;
};

type Say<Id extends string> = `${Id}.say` & TextId;
type Why<Id extends string> = `${Id}.why` & TextId;
type NeededValues<Id extends string> = (ValuesOf<Say<Id>> extends undefined ? unknown : ValuesOf<Say<Id>>) &
  (ValuesOf<Why<Id>> extends undefined ? unknown : ValuesOf<Why<Id>>);

type Details<Id extends string> = Omit<Step, 'id' | 'say' | 'why' | 'shout'> &
  (unknown extends NeededValues<Id>
    ? { readonly values?: undefined }
    : { readonly values: (view: View) => NeededValues<Id> });

/** Make a step whose texts exist and whose values fit them (checked by the compiler). */
export const step = <Id extends string>(
  id: `${Id}.say` extends TextId
    ? `${Id}.why` extends TextId
      ? `${Id}.shout` extends TextId
        ? Id
        : never
      : never
    : never,
  details: Details<Id>,
): Step => {
  const { values, ...rest } = details as { values?: (view: View) => unknown } & Omit<
    Step,
    'id' | 'say' | 'why' | 'shout'
  >;
  const said =
    (part: 'say' | 'why') =>
    (view: View): Message => ({
      id: `${id}.${part}` as TextId,
      values: values?.(view),
    });
  return { ...rest, id, say: said('say'), why: said('why'), shout: { id: `${id}.shout` as TextId } };
};

export const isDone = (cook: Cook, id: string): boolean => cook.done[id] !== undefined;
export const answered = (cook: Cook, question: string, answer: 'yes' | 'no'): boolean =>
  cook.answers[question]?.answer === answer;

/** Whether a step is behind us. A question that guards safety is only ever passed by its own answer. */
export const isBehind = (cook: Cook, one: Step): boolean => {
  if (one.wanted !== undefined && !one.wanted(cook)) return true;
  if (one.doneBy?.(cook)) return true;
  const { question } = one;
  if (question !== undefined) {
    const given = cook.answers[question.id];
    const passes = given !== undefined && (question.passes === 'either' || given.answer === question.passes);
    if (passes && given.t >= (question.earliest?.(cook) ?? Number.NEGATIVE_INFINITY)) return true;
    if (question.safety) return false;
  }
  return isDone(cook, one.id);
};

/** The step to show in a phase: the first that is not behind us, gates first; null when all are. */
export const stepAt = (cook: Cook, phase: Phase): Step | null => {
  for (const gate of phase.gates ?? []) if (!isBehind(cook, gate)) return gate;
  for (const one of phase.steps) if (!isBehind(cook, one)) return one;
  return null;
};

export const isEndless = (cook: Cook, one: Step): boolean =>
  typeof one.endless === 'function' ? one.endless(cook) : one.endless === true;

export const potIsOff = (cook: Cook): boolean => cook.potOn?.on === false;
