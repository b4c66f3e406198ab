import type { Advice } from '../../cook/advice.js';
import { coldWaterOutcomes } from '../../sugar/stages.js';

/** What one person remembers; everything else is in the advice and before their eyes. */
export type Memory = {
  readonly reported: Set<string>;
  /** Keys of what has been done. */
  readonly did: Set<string>;
  /** The knob's setting, from 0; -1: off. */
  heat: number;
  heatSetAt: number;
  /** It has been turned down before. */
  lowered: boolean;
  potOn: boolean;
  /** The last reading was typed wrongly. */
  slipped: boolean;
  disagreed: number;
  weighed: boolean;
  readings: number;
  pullingSince: number | null;
};

export const newMemory = (): Memory => ({
  reported: new Set(),
  did: new Set(),
  heat: -1,
  heatSetAt: 0,
  lowered: false,
  potOn: true,
  slipped: false,
  disagreed: 0,
  weighed: false,
  readings: 0,
  pullingSince: null,
});

const takesOff = ['test.off', 'boil.off', 'flavour.off'];
const putsBack = ['test.back', 'test.back-far', 'boil.back', 'dissolve.back', 'trouble.foam.3'];
const turnsOff = ['flavour.sink', 'clean.heat-off'];
const outcomes: readonly string[] = [...coldWaterOutcomes, 'unsure'];

const rememberDone = (memory: Memory, step: string): void => {
  if (takesOff.includes(step)) memory.potOn = false;
  if (putsBack.includes(step)) memory.potOn = true;
  if (turnsOff.includes(step)) memory.heat = -1;
};

const rememberHeat = (memory: Memory, rung: number, t: number): void => {
  if (rung < memory.heat) memory.lowered = true;
  memory.heat = rung;
  memory.heatSetAt = t;
  memory.did.add('lit');
};

/** What was done and typed, as the answer to `advice`. */
export const remember = (
  memory: Memory,
  key: string,
  typed: string,
  { step, now }: Pick<Advice, 'step' | 'now'>,
  ladder: readonly string[],
): void => {
  memory.did.add(key);
  if (key !== 'read') memory.slipped = false;
  if (typed === 'done' && step !== null) rememberDone(memory, step);
  if (step === 'pull.grease') memory.pullingSince = now;
  if (outcomes.includes(typed) || typed === 'pot off') memory.potOn = false;
  if (typed === 'pot on') memory.potOn = true;
  const [word, ...rest] = typed.split(' ');
  const what = rest.join(' ');
  if (word === 'trouble') memory.reported.add(what);
  if (word === 'heat') rememberHeat(memory, ladder.indexOf(what), now);
  if (word === 'ok' && what === 'disagreement') memory.disagreed += 1;
  if (word === 'weigh') memory.weighed = true;
};
