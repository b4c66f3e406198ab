import { type Intent, isOpen, type Rule, type Self, type View, warns } from './self.js';

/** Foam this high in the pot: the time to lower the heat. */
const foamIsHigh = 0.5;
/** A boil that would take longer than this is given more heat, seconds. Our judgement. */
const tooSlow = { far: 3300, near: 900 } as const;
/** Quicker than this near the end, and the heat is turned down, seconds to the take-off. Our judgement. */
const soonEnough = 420;
/** A knob that was turned is left alone for so long, seconds. */
const leftAlone = { foam: 60, up: 240, warned: 45 } as const;

const keepsItOff: readonly string[] = ['away', 'power', 'scorched'];

const again = ({ memory, turn, middleRung }: Self, { advice }: View): Intent | null => {
  if (keepsItOff.some((name) => isOpen(advice, name))) return null;
  const wasLit = advice.phase === 'boil' || memory.did.has('lit');
  return wasLit ? turn('again', Math.max(0, middleRung - 1)) : null;
};

const up = ({ memory, turn, ladder }: Self, { advice, t }: View): Intent | null => {
  const ahead = advice.forecast?.takeOffSeconds.typical ?? null;
  const since = t - memory.heatSetAt;
  const slow = ahead !== null && ahead > (advice.step === 'boil.last' ? tooSlow.near : tooSlow.far);
  const toldNothing = memory.readings > 4 || advice.step === 'boil.start';
  const stuck = ahead === null && toldNothing && since > 600;
  if (since <= leftAlone.up || !(slow || stuck) || memory.heat >= ladder.length - 1) return null;
  return turn('slow', memory.heat + 1);
};

const down = ({ memory, turn, habits }: Self, { advice, senses, t }: View): Intent | null => {
  if (memory.heat <= 0) return null;
  if (senses.fullShare > foamIsHigh && t - memory.heatSetAt > leftAlone.foam)
    return turn('foam', memory.heat - 1);
  const ahead = advice.forecast?.takeOffSeconds.typical ?? Number.POSITIVE_INFINITY;
  const isLast = advice.step === 'boil.last' && ahead < soonEnough;
  return isLast && !memory.lowered && habits.careful ? turn('last', memory.heat - 1) : null;
};

/** The knob: down for foam and for the last degrees, up when it takes too long, on again after a pause. */
export const heatRule =
  (self: Self): Rule =>
  (view) => {
    const { advice, senses } = view;
    const boils = advice.phase === 'boil' || advice.phase === 'dissolve';
    if (!boils || !self.memory.potOn || !senses.power || advice.urgent) return null;
    if (self.memory.heat < 0) return again(self, view);
    return down(self, view) ?? up(self, view);
  };

/** What the warnings ask of the knob. */
export const heatWarningRule =
  ({ memory, say, turn, ladder }: Self): Rule =>
  ({ advice, t }) => {
    if (warns(advice, 'heat-left-on')) return say('left on', 8, 'heat off');
    if (!memory.potOn || t - memory.heatSetAt <= leftAlone.warned) return null;
    if (warns(advice, 'overshoot-near') && memory.heat > 0) return turn('overshoot', memory.heat - 1);
    return warns(advice, 'stalled') ? turn('stalled', Math.min(ladder.length - 1, memory.heat + 1)) : null;
  };
