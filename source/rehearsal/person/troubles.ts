import type { Senses } from '../table.js';
import { dueTimer, type Intent, isOpen, quick, type Rule, type Self, type View } from './self.js';

/** Foam this high in the pot is called a trouble; sunk below the other, it is none any more. */
const foamIsTrouble = 0.75;
const foamHasSunk = 0.45;

/** Words that go with a trouble's first instruction: hands do them, the keyboard hears of them. */
const withFirst: Readonly<Record<string, readonly string[]>> = {
  foam: ['heat down', 'pot off'],
  overflow: ['heat off', 'pot off'],
  scorched: ['pot off', 'heat off'],
  power: ['heat off'],
  away: ['heat off', 'pot off'],
  overshoot: ['pot off'],
};

/** Instructions that wait for something to be seen first. */
const waitsToBeSeen: readonly string[] = [
  'trouble.foam.3',
  'trouble.power.3',
  'trouble.away.2',
  'trouble.overflow.4',
];

const settles: Readonly<Record<string, (view: View) => boolean>> = {
  foam: ({ senses }) => senses.fullShare < foamHasSunk,
  overflow: ({ senses }) => senses.fullShare < foamHasSunk,
  scorched: ({ senses }) => !senses.smells && !senses.smokes,
  power: ({ senses }) => senses.power,
  away: ({ senses }) => !senses.calledAway,
  grains: ({ senses }) => !senses.grains,
  burn: ({ advice }) => dueTimer(advice, 'trouble.burn'),
};
const isSettled = (name: string, view: View): boolean => settles[name]?.(view) ?? true;

const firstAct = ({ memory, say, word }: Self, name: string): Intent | null => {
  for (const act of withFirst[name] ?? []) {
    const key = `${name}: ${act}`;
    const isSo = (act === 'pot off' && !memory.potOn) || (act === 'heat off' && memory.heat < 0);
    if (memory.did.has(key) || isSo) continue;
    return say(key, quick, act === 'heat down' ? word(Math.max(0, memory.heat - 1)) : act);
  }
  return null;
};

/** Boiling water in, and back on low heat: what the rescue of an overcooked batch asks for beside "done". */
const rescueAct = ({ memory, say, turn }: Self, step: string): Intent | null => {
  if (step === 'trouble.overshoot.2' && !memory.did.has('water')) return say('water', 20, 'water 30ml');
  if (step !== 'trouble.overshoot.4') return null;
  if (!memory.potOn) return say('back on', quick, 'pot on');
  return memory.heat < 0 ? turn('low again', 0) : null;
};

const follow =
  (self: Self): Rule =>
  (view) => {
    const { step, question, canBeDone } = view.advice;
    if (step === null || !step.startsWith('trouble.')) return null;
    const { say, wait } = self;
    const name = step.slice('trouble.'.length, step.lastIndexOf('.'));
    const act = (step.endsWith('.1') ? firstAct(self, name) : null) ?? rescueAct(self, step);
    if (act !== null) return act;
    if (question?.id === 'trouble.glass') return say('glass', 5, 'no');
    const settled = isSettled(name, view);
    if (!canBeDone) return settled ? say(`over ${name}`, quick, `over ${name}`) : wait(`sit ${name}`, 10);
    return waitsToBeSeen.includes(step) && !settled ? wait(`sit ${name}`, 5) : say(step, 8, 'done');
  };

const close =
  ({ say }: Self): Rule =>
  (view) => {
    const told = view.advice.troubles.find(
      ({ name, instruction }) => instruction === null && isSettled(name, view),
    );
    return told === undefined ? null : say(`over ${told.name}`, quick, `over ${told.name}`);
  };

/** What somebody sees, smells or hears, and says at once; most urgent first. */
const seen: ReadonlyArray<readonly [name: string, sees: (senses: Senses) => boolean]> = [
  ['burn', ({ burnt }) => burnt],
  ['overflow', ({ fullShare }) => fullShare >= 1],
  ['scorched', ({ smells, smokes }) => smells || smokes],
  ['foam', ({ fullShare }) => fullShare > foamIsTrouble],
  ['power', ({ power }) => !power],
  ['away', ({ calledAway }) => calledAway],
  ['grains', ({ grains }) => grains],
];

const report =
  ({ memory, say }: Self): Rule =>
  ({ advice, senses }) => {
    const isKnown = (name: string): boolean =>
      memory.reported.has(name) ||
      isOpen(advice, name) ||
      (name === 'foam' && (isOpen(advice, 'overflow') || memory.reported.has('overflow')));
    const [name] = seen.find(([one, sees]) => sees(senses) && !isKnown(one)) ?? [];
    return name === undefined ? null : say(`report ${name}`, quick, `trouble ${name}`);
  };

/** Troubles, as one person meets them: said at once, followed word by word, closed when they are over. */
export const troubleRules = (self: Self) => ({
  report: report(self),
  follow: follow(self),
  close: close(self),
});
