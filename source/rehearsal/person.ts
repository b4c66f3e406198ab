import type { Advice } from '../cook/advice.js';
import type { Kitchen } from '../kitchen/kitchen.js';
import { coldWaterOutcomes } from '../sugar/stages.js';
import { chanceFrom } from './chance.js';
import { type Habits, habitsOf } from './habits.js';
import { questionSeconds, stepSeconds } from './paces.js';
import type { Senses, Shown, SimulatedCook } from './simulated-cook.js';

/** What somebody is about to do: the same key goes on, another begins anew. */
export type Intent = {
  readonly key: string;
  readonly seconds: number;
  /** What is typed when it is done; null: only waited. */
  readonly type: (() => string) | null;
  /** Done with the hands and forgotten at the keyboard. */
  readonly untyped?: boolean;
};

/** What one person remembers; everything else is in the advice and before their eyes. */
type Memory = {
  readonly reported: Set<string>;
  readonly did: Set<string>;
  heat: number;
  heatSetAt: number;
  potOn: boolean;
  slipped: boolean;
  disagreed: number;
  lowered: boolean;
  foamLoweredAt: number;
  weighed: boolean;
  readings: number;
};

type View = {
  readonly advice: Advice;
  readonly senses: Senses;
  readonly t: number;
  readonly memory: Memory;
};

type Rule = (view: View) => Intent | null;

export type Person = {
  decide(advice: Advice, t: number): Intent;
  /** What was typed was understood, as the answer to `advice`. */
  typed(intent: Intent, word: string, advice: Advice): void;
};

const startsWith = (advice: Advice, beginning: string): boolean =>
  advice.step?.startsWith(beginning) ?? false;
const warns = (advice: Advice, id: string): boolean => advice.warnings.some((one) => one.id === id);
const isOpen = (advice: Advice, name: string): boolean => advice.troubles.some((one) => one.name === name);
const dueTimer = (advice: Advice, id: string): boolean => {
  const timer = advice.timers.find((one) => one.id === id);
  return timer === undefined || timer.due;
};
const shownAs = ({ value, unit }: Shown): string => `${value}${unit.toLowerCase()}`;

const takesOff = ['test.off', 'boil.off', 'flavour.off'];
const putsBack = ['test.back', 'boil.back', 'dissolve.back', 'trouble.foam.3'];
const outcomes: readonly string[] = [...coldWaterOutcomes, 'unsure'];

/** Foam this high in the pot: the time to lower the heat, and the time to call it a trouble. */
const foamMark = { lower: 0.5, trouble: 0.75 } as const;
/** A boil that would take longer than this is given more heat, seconds. Our judgement. */
const tooSlow = { far: 3300, near: 900 } as const;
/** Quicker than this near the end, and the heat is turned down, seconds to the take-off. Our judgement. */
const soonEnough = 420;

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
  const chance = chanceFrom(seed ^ 0x70e5);
  const ladder = kitchen.heat;
  const memory: Memory = {
    reported: new Set(),
    did: new Set(),
    heat: -1,
    heatSetAt: 0,
    potOn: true,
    slipped: false,
    disagreed: 0,
    lowered: false,
    foamLoweredAt: -1e9,
    weighed: false,
    readings: 0,
  };

  const pace = (seconds: number): number => seconds * habits.pace * Math.exp(0.25 * chance.normal());
  const say = (key: string, seconds: number, word: string): Intent => ({
    key,
    seconds: pace(seconds),
    type: () => word,
  });
  const wait = (key: string, seconds: number): Intent => ({ key, seconds: Math.max(1, seconds), type: null });
  const quick = 4;
  const word = (rung: number): string => `heat ${rung < 0 ? 'off' : (ladder[rung] ?? 'medium')}`;
  const turn = (key: string, rung: number): Intent => ({
    ...say(`${key} ${rung}`, quick, word(rung)),
    untyped: chance.even() < habits.forgetsHeat,
  });
  const middleRung = Math.floor((ladder.length - 1) / 2);

  /** Reads the dial and types it, now and then wrongly. */
  const typeDial = (): string => {
    const shown = table.dial();
    if (shown === null) return 'thermometer none';
    memory.readings += 1;
    const { value } = shown;
    if (chance.even() < habits.slips && value > 100) {
      memory.slipped = true;
      const digits = `${value}`;
      return `${digits[0]}${digits[2]}${digits[1]}`;
    }
    memory.slipped = false;
    return shownAs(shown);
  };

  const report =
    (name: string, sees: (senses: Senses) => boolean): Rule =>
    ({ advice, senses }) =>
      sees(senses) && !memory.reported.has(name) && !isOpen(advice, name)
        ? say(`report ${name}`, quick, `trouble ${name}`)
        : null;

  /** Words that go with a trouble's first instruction: hands do them, the keyboard hears of them. */
  const withFirst: Readonly<Record<string, readonly string[]>> = {
    foam: ['heat down', 'pot off'],
    overflow: ['heat off', 'pot off'],
    scorched: ['pot off', 'heat off'],
    power: ['heat off'],
    away: ['heat off', 'pot off'],
    overshoot: ['pot off'],
  };

  const actOf = (name: string): Intent | null => {
    for (const act of withFirst[name] ?? []) {
      const key = `${name}: ${act}`;
      if (memory.did.has(key)) continue;
      if (act === 'pot off' && !memory.potOn) continue;
      if (act === 'heat off' && memory.heat < 0) continue;
      if (act === 'heat down') return say(key, quick, word(Math.max(0, memory.heat - 1)));
      return say(key, quick, act);
    }
    return null;
  };

  const isSettled = (name: string, senses: Senses, advice: Advice): boolean => {
    switch (name) {
      case 'foam':
      case 'overflow':
        return senses.fullShare < 0.45;
      case 'scorched':
        return !senses.smells;
      case 'power':
        return senses.power;
      case 'away':
        return !senses.calledAway;
      case 'grains':
        return !senses.grains;
      case 'burn':
        return dueTimer(advice, 'trouble.burn');
      default:
        return true;
    }
  };

  /** An instruction that waits for something to be seen first. */
  const waitsToBeSeen: readonly string[] = [
    'trouble.foam.3',
    'trouble.power.3',
    'trouble.away.2',
    'trouble.overflow.4',
  ];

  const followTrouble: Rule = ({ advice, senses }) => {
    if (!startsWith(advice, 'trouble.') || advice.step === null) return null;
    const [, name = '', index = '1'] = advice.step.split('.');
    const act = index === '1' ? actOf(name) : null;
    if (act !== null) return act;
    if (advice.question?.id === 'trouble.glass') return say('glass', 5, 'no');
    if (!advice.canBeDone)
      return isSettled(name, senses, advice)
        ? say(`over ${name}`, quick, `over ${name}`)
        : wait(`sit ${name}`, 10);
    if (waitsToBeSeen.includes(advice.step) && !isSettled(name, senses, advice))
      return wait(`sit ${name}`, 5);
    const { step } = advice;
    if (step === 'trouble.overshoot.2' && !memory.did.has('water')) return say('water', 20, 'water 30ml');
    if (step === 'trouble.overshoot.4' && !memory.potOn) return say('back on', quick, 'pot on');
    if (step === 'trouble.overshoot.4' && memory.heat < 0) return turn('low again', 0);
    return say(advice.step, 8, 'done');
  };

  /** Sees on the screen what was typed wrongly. */
  const takeBack: Rule = ({ advice }) =>
    memory.slipped && advice.question?.kind !== 'reading' && advice.typing.undoes !== null
      ? say('take back', 4, 'undo')
      : null;

  const closeTrouble: Rule = ({ advice, senses }) => {
    const told = advice.troubles.find(
      ({ name, instruction }) => instruction === null && isSettled(name, senses, advice),
    );
    return told === undefined ? null : say(`over ${told.name}`, quick, `over ${told.name}`);
  };

  const answer: Rule = ({ advice, senses }) => {
    const { question } = advice;
    if (question === null) return null;
    const key = `answer ${question.id}`;
    const seconds = questionSeconds[question.kind];
    if (question.kind === 'reading') return say(key, seconds, memory.slipped ? 'no' : 'yes');
    if (question.kind === 'what is true now') return say(key, seconds, question.safe);
    if (question.id === 'hands.layer') return say(key, seconds, senses.thin ? 'yes' : 'no');
    if (question.id === 'hands.crumb') return say(key, 20, senses.crumbIsComfortable ? 'yes' : 'no');
    return say(key, seconds, 'yes');
  };

  const warned: Rule = ({ advice, t }) => {
    if (warns(advice, 'heat-left-on')) return say('left on', 8, 'heat off');
    if (warns(advice, 'lid-foams')) return say('lid foams', quick, 'lid off');
    if (warns(advice, 'overshoot-near') && t - memory.heatSetAt > 45 && memory.potOn)
      return memory.heat > 0 ? turn('overshoot', memory.heat - 1) : null;
    if (warns(advice, 'stalled') && t - memory.heatSetAt > 60 && memory.potOn)
      return turn('stalled', Math.min(ladder.length - 1, memory.heat + 1));
    if (warns(advice, 'disagreement'))
      return memory.disagreed === 0
        ? say('disagree', 8, 'ok disagreement')
        : say('disagree again', 8, 'thermometer none');
    const past = warns(advice, 'past-window') && !memory.potOn && advice.phase !== 'boil';
    if (past && !memory.reported.has('overshoot') && advice.step?.startsWith('flavour'))
      return say('past', 10, 'trouble overshoot');
    return null;
  };

  const steerHeat: Rule = ({ advice, senses, t }) => {
    if (advice.phase !== 'boil' && advice.phase !== 'dissolve') return null;
    if (!memory.potOn || !senses.power || advice.urgent) return null;
    if (memory.heat < 0) {
      if (isOpen(advice, 'away') || isOpen(advice, 'power') || isOpen(advice, 'scorched')) return null;
      return advice.phase === 'boil' || memory.did.has('lit')
        ? turn('again', Math.max(0, middleRung - 1))
        : null;
    }
    if (senses.fullShare > foamMark.lower && memory.heat > 0 && t - memory.foamLoweredAt > 60)
      return turn('foam', memory.heat - 1);
    const ahead = advice.forecast?.takeOffSeconds.typical ?? null;
    const near = advice.step === 'boil.last';
    if (near && !memory.lowered && ahead !== null && ahead < soonEnough && memory.heat > 0 && habits.careful)
      return turn('last', memory.heat - 1);
    const since = t - memory.heatSetAt;
    const slow = ahead !== null && ahead > (near ? tooSlow.near : tooSlow.far);
    const stuck = ahead === null && memory.readings > 4 && since > 600;
    if (since > 240 && (slow || stuck) && memory.heat < ladder.length - 1)
      return turn('slow', memory.heat + 1);
    return null;
  };

  const read: Rule = ({ advice }) => {
    const due = advice.nextReadingSeconds;
    if (warns(advice, 'unattended')) return { key: 'read', seconds: pace(5), type: typeDial };
    if (due === null || due > 2) return null;
    return { key: 'read', seconds: pace(habits.readsIn), type: typeDial };
  };

  /** Steps that something seen ends, or that want another word than "done". */
  const special: Readonly<Record<string, Rule>> = {
    'mix.thermometer': () => {
      if (!habits.checks || memory.did.has('checked')) return say('mix.thermometer', 8, 'done');
      const shown = table.boilingWater();
      return shown === null
        ? say('mix.thermometer', 8, 'done')
        : say('checked', stepSeconds['mix.thermometer'] ?? 45, `boils ${shownAs(shown)}`);
    },
    'dissolve.heat': () => turn('light', middleRung),
    'dissolve.stir': ({ senses }) =>
      senses.dissolved ? say('dissolve.stir', 10, 'done') : wait('stirring', 10),
    'boil.start': ({ senses }) => (senses.boils ? say('boil.start', 6, 'done') : wait('to the boil', 10)),
    'boil.lid-off': ({ advice }) =>
      dueTimer(advice, 'lid') ? say('lid off', quick, 'done') : wait('under the lid', 10),
    'boil.still': ({ advice }) =>
      advice.timers.some(({ id, due }) => id === 'test-due' && due) ? say('test', 6, 'pot off') : null,
    'boil.last': ({ advice }) =>
      advice.timers.some(({ id, due }) => id === 'test-due' && due) ? say('test', 6, 'pot off') : null,
    'boil.off': () => say('off', habits.reacts, 'pot off'),
    'boil.back': () => say('back', quick, 'done'),
    'test.drop': () => ({
      key: 'test.drop',
      seconds: pace(stepSeconds['test.drop'] ?? 30),
      type: () => {
        const felt = table.coldWater();
        return chance.even() < habits.unsure ? 'unsure' : felt;
      },
    }),
    'fold.wait': ({ advice }) =>
      dueTimer(advice, 'first-fold') ? say('fold.wait', 5, 'done') : wait('first fold', 10),
    'fold.again': ({ advice }) =>
      dueTimer(advice, 'next-fold') ? say('fold.again', 120, 'done') : wait('next fold', 10),
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
    'pull.stretch': ({ advice }) =>
      dueTimer(advice, 'droop-test') ? say('pull.stretch', 5, 'done') : wait('pulling', 15),
    'pull.droop': ({ senses }) => say('pull.droop', 6, senses.droops ? 'droops' : 'done'),
    'pull.stiff': ({ senses }) => (senses.stiff ? say('pull.stiff', 8, 'done') : wait('pull on', 20)),
    'wrap.rest': ({ advice }) => (dueTimer(advice, 'rest') ? say('rest', 10, 'done') : wait('resting', 30)),
    'wrap.weigh': () =>
      memory.weighed ? say('weighed', 6, 'done') : say('weigh', 30, `weigh ${table.weighs()}g`),
  };

  const step: Rule = (view) => {
    const { advice, t } = view;
    if (advice.step === null) return null;
    const own = special[advice.step]?.(view) ?? null;
    if (own !== null) return own;
    if (advice.waits !== null) return wait('not before', Math.min(60, advice.waits.until - t));
    if (advice.canBeDone && special[advice.step] === undefined)
      return say(advice.step, stepSeconds[advice.step] ?? 10, 'done');
    return null;
  };

  const rules: readonly Rule[] = [
    report('burn', ({ burnt }) => burnt),
    report('overflow', ({ fullShare }) => fullShare >= 1),
    report('scorched', ({ smells }) => smells),
    (view) =>
      isOpen(view.advice, 'overflow')
        ? null
        : report('foam', ({ fullShare }) => fullShare > foamMark.trouble)(view),
    report('power', ({ power }) => !power),
    report('away', ({ calledAway }) => calledAway),
    report('grains', ({ grains }) => grains),
    (view) =>
      view.advice.question?.kind === 'reading' || view.advice.question?.kind === 'what is true now'
        ? answer(view)
        : null,
    takeBack,
    (view) => (view.advice.offTheHeat && memory.potOn ? say('off', habits.reacts, 'pot off') : null),
    followTrouble,
    closeTrouble,
    warned,
    answer,
    steerHeat,
    read,
    step,
  ];

  const idle = ({ advice, t }: View): Intent => {
    const reading = advice.nextReadingSeconds ?? 30;
    const change = (advice.changesAt ?? t + 30) - t;
    return wait('wait', Math.min(30, Math.max(1, reading - habits.readsIn), Math.max(1, change)));
  };

  return {
    decide: (advice, t) => {
      const view: View = { advice, senses: table.senses(), t, memory };
      for (const rule of rules) {
        const intent = rule(view);
        if (intent !== null) return intent;
      }
      return idle(view);
    },
    typed: ({ key }, typed, { step, now: t }) => {
      memory.did.add(key);
      if (key !== 'read') memory.slipped = false;
      if (typed === 'done' && step !== null) {
        if (takesOff.includes(step)) memory.potOn = false;
        if (putsBack.includes(step)) memory.potOn = true;
        if (step === 'flavour.sink' || step === 'clean.heat-off') memory.heat = -1;
      }
      if (outcomes.includes(typed)) memory.potOn = false;
      if (typed.startsWith('trouble ')) memory.reported.add(typed.slice('trouble '.length));
      if (typed.startsWith('heat ')) {
        const rung = ladder.indexOf(typed.slice('heat '.length));
        if (rung < memory.heat) memory.lowered = true;
        memory.heat = typed === 'heat off' ? -1 : rung;
        memory.heatSetAt = t;
        memory.did.add('lit');
        memory.foamLoweredAt = t;
      }
      if (typed === 'pot off') memory.potOn = false;
      if (typed === 'pot on') memory.potOn = true;
      if (typed.startsWith('ok disagreement')) memory.disagreed += 1;
      if (typed.startsWith('weigh ')) memory.weighed = true;
    },
  };
};
