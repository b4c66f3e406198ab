import type { Shown } from '../table.js';
import { questionSeconds, secondsFor, stepSeconds } from './paces.js';
import { dueTimer, quick, type Rule, type Self, warns } from './self.js';

const shownAs = ({ value, unit }: Shown): string => `${value}${unit.toLowerCase()}`;

/** Two digits change places: 238 becomes 283. */
const slipOf = (value: number): string => `${value}`.replace(/^(.)(.)(.)/, '$1$3$2');

/** Reads the dial and types it, now and then wrongly. */
const typeDial =
  ({ table, memory, chance, habits }: Self) =>
  (): string => {
    const shown = table.dial();
    if (shown === null) return 'thermometer none';
    memory.readings += 1;
    memory.slipped = chance.even() < habits.slips && shown.value > 100;
    return memory.slipped ? slipOf(shown.value) : shownAs(shown);
  };

export const readRule =
  (self: Self): Rule =>
  ({ advice }) => {
    const due = advice.nextReadingSeconds;
    const isAsked = warns(advice, 'unattended') || (due !== null && due <= 2);
    if (isAsked && self.table.dial() === null && warns(advice, 'unattended'))
      return self.say('there', quick, 'ok unattended');
    return isAsked ? { key: 'read', seconds: self.pace(self.habits.readsIn), type: typeDial(self) } : null;
  };

/** Sees on the screen what was typed wrongly. */
export const takeBackRule =
  ({ memory, say }: Self): Rule =>
  ({ advice }) =>
    memory.slipped && advice.question?.kind !== 'reading' && advice.typing.undoes !== null
      ? say('take back', 4, 'undo')
      : null;

export const answerRule =
  ({ memory, say }: Self): Rule =>
  ({ advice: { question }, senses }) => {
    if (question === null) return null;
    const key = `answer ${question.id}`;
    const seconds = questionSeconds[question.kind];
    if (question.kind === 'reading') return say(key, seconds, memory.slipped ? 'no' : 'yes');
    if (question.kind === 'what is true now') return say(key, seconds, question.safe);
    if (question.id === 'hands.layer') return say(key, seconds, senses.thin ? 'yes' : 'no');
    if (question.id === 'hands.crumb') return say(key, 20, senses.crumbIsComfortable ? 'yes' : 'no');
    return say(key, seconds, 'yes');
  };

/** A question that presses: about a reading, or about what is true now. */
export const pressingRule =
  (self: Self): Rule =>
  (view) => {
    const kind = view.advice.question?.kind;
    return kind === 'reading' || kind === 'what is true now' ? answerRule(self)(view) : null;
  };

/** Arms last so long, seconds: twenty minutes of pulling by turns (trade practice). */
const armsLastSeconds = 1200;
const isTired = ({ memory }: Self, t: number): boolean =>
  memory.pullingSince !== null && t - memory.pullingSince > armsLastSeconds;

/** Steps that something seen ends, or that want another word than "done". */
const specialOf = (self: Self): Readonly<Record<string, Rule>> => {
  const { table, memory, habits, chance, pace, say, wait, turn, middleRung } = self;
  const once =
    (timer: string, key: string, seconds: number, waits: string): Rule =>
    ({ advice }) =>
      dueTimer(advice, timer) ? say(key, seconds, 'done') : wait(waits, 10);
  const drop = (): string => {
    const felt = table.coldWater();
    return chance.even() < habits.unsure ? 'unsure' : felt;
  };
  const blindTest: Rule = ({ advice }) =>
    advice.timers.some(({ id, due }) => id === 'test-due' && due) ? say('test', 6, 'pot off') : null;
  return {
    'mix.thermometer': () => {
      const shown = habits.checks && !memory.did.has('checked') ? table.boilingWater() : null;
      return shown === null
        ? say('mix.thermometer', 8, 'done')
        : say('checked', stepSeconds['mix.thermometer'], `boils ${shownAs(shown)}`);
    },
    'dissolve.heat': () => turn('light', middleRung),
    'dissolve.stir': ({ senses }) =>
      senses.dissolved ? say('dissolve.stir', 10, 'done') : wait('stirring', 10),
    'boil.start': ({ senses }) => (senses.boils ? say('boil.start', 6, 'done') : wait('to the boil', 10)),
    'boil.lid-off': once('lid', 'lid off', quick, 'under the lid'),
    'boil.still': blindTest,
    'boil.last': blindTest,
    'boil.off': () => say('off', habits.reacts, 'pot off'),
    'boil.back': () => say('back', quick, 'done'),
    'test.drop': () => ({ key: 'test.drop', seconds: pace(stepSeconds['test.drop']), type: drop }),
    // Felt by fingers alone: once more while it stands.
    'flavour.sink': ({ advice }) => {
      const again = (advice.say.values as { again?: string | null } | undefined)?.again ?? null;
      if (again === null) return say('flavour.sink', pace(stepSeconds['flavour.sink']), 'done');
      return { key: 'drop again', seconds: pace(stepSeconds['test.drop']), type: drop };
    },
    'fold.wait': once('first-fold', 'fold.wait', 5, 'first fold'),
    'fold.again': once('next-fold', 'fold.again', 120, 'next fold'),
    'hands.measure': ({ advice }) => {
      const again = (advice.say.values as { againSeconds?: number | null } | undefined)?.againSeconds ?? 0;
      if (again > 5) return wait('cooling', Math.min(again, 60));
      return {
        key: 'middle',
        seconds: pace(20),
        type: () => {
          const shown = table.middle();
          return shown === null ? 'thermometer none' : `middle ${shownAs(shown)}`;
        },
      };
    },
    'pull.stretch': once('droop-test', 'pull.stretch', 5, 'pulling'),
    'pull.droop': ({ senses, t }) => {
      if (senses.droops && isTired(self, t)) return say('tired', 6, 'arms out');
      return say('pull.droop', 6, senses.droops ? 'droops' : 'done');
    },
    'pull.stiff': ({ senses, t }) => {
      if (senses.stiff) return say('pull.stiff', 8, 'done');
      return isTired(self, t) ? say('tired', 6, 'arms out') : wait('pull on', 20);
    },
    'wrap.rest': once('rest', 'rest', 10, 'resting'),
    'wrap.weigh': () =>
      memory.weighed ? say('weighed', 6, 'done') : say('weigh', 30, `weigh ${table.weighs()}g`),
  };
};

export const stepRule = (self: Self): Rule => {
  const special = specialOf(self);
  return (view) => {
    const { step, waits, canBeDone } = view.advice;
    if (step === null) return null;
    const own = special[step];
    const wanted = own?.(view) ?? null;
    if (wanted !== null) return wanted;
    if (waits !== null) return self.wait('not before', Math.min(60, waits.until - view.t));
    return canBeDone && own === undefined ? self.say(step, secondsFor(step), 'done') : null;
  };
};
