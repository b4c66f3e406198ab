import type { Advice } from '../../cook/advice.js';
import type { Kitchen } from '../../kitchen/kitchen.js';
import { chanceFrom } from '../chance.js';
import type { SimulatedCook } from '../table.js';
import { type Habits, habitsOf } from './habits.js';
import { heatRule, heatWarningRule } from './heat.js';
import { newMemory, remember } from './memory.js';
import { type Intent, quick, type Rule, type Self, selfOf, type View, warns } from './self.js';
import { answerRule, pressingRule, readRule, stepRule, takeBackRule } from './steps.js';
import { troubleRules } from './troubles.js';

export type Person = {
  decide(advice: Advice, t: number): Intent;
  /** What was typed was understood, as the answer to `advice`. */
  typed(intent: Intent, word: string, advice: Advice): void;
};

const offRule =
  ({ memory, say, habits }: Self): Rule =>
  ({ advice }) =>
    advice.offTheHeat && memory.potOn ? say('off', habits.reacts, 'pot off') : null;

const otherWarningsRule =
  ({ memory, say }: Self): Rule =>
  ({ advice }) => {
    if (warns(advice, 'lid-foams')) return say('lid foams', quick, 'lid off');
    if (warns(advice, 'disagreement'))
      return memory.disagreed === 0
        ? say('disagree', 8, 'ok disagreement')
        : say('disagree again', 8, 'thermometer none');
    const past = warns(advice, 'past-window') && !memory.potOn && advice.phase === 'flavour';
    return past && !memory.reported.has('overshoot') ? say('past', 10, 'trouble overshoot') : null;
  };

/** Nothing to do: until something changes, or the dial is to be read. */
const idle = ({ wait, habits }: Self, { advice, t }: View): Intent => {
  const reading = advice.nextReadingSeconds ?? 30;
  const change = (advice.changesAt ?? t + 30) - t;
  return wait('wait', Math.min(30, Math.max(1, reading - habits.readsIn), Math.max(1, change)));
};

/**
 * A simulated person: reads the advice and what stands before them, never the program's own state, and types the
 * ordinary words at their own pace, with the slips that people make. The same for the same seed.
 */
export const personOf = (
  table: SimulatedCook,
  kitchen: Kitchen,
  seed: number,
  habits: Habits = habitsOf(seed),
): Person => {
  const memory = newMemory();
  const ladder = kitchen.heat;
  const self = selfOf({ table, habits, memory, ladder, chance: chanceFrom(seed ^ 0x70e5) });
  const troubles = troubleRules(self);
  /** The first that wants something is followed. */
  const rules: readonly Rule[] = [
    troubles.report,
    pressingRule(self),
    takeBackRule(self),
    offRule(self),
    troubles.follow,
    troubles.close,
    heatWarningRule(self),
    otherWarningsRule(self),
    answerRule(self),
    heatRule(self),
    readRule(self),
    stepRule(self),
  ];
  return {
    decide: (advice, t) => {
      const view: View = { advice, senses: table.senses(), t };
      for (const rule of rules) {
        const intent = rule(view);
        if (intent !== null) return intent;
      }
      return idle(self, view);
    },
    typed: ({ key }, word, advice) => remember(memory, key, word, advice, ladder),
  };
};
