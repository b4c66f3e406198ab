import type { Cook } from './cook.js';
import { expectedBoilSeconds } from './expected.js';

/** Without a thermometer the next test is due by what the last one felt like; seconds. Our judgement. */
const untilNextTest: Readonly<Record<string, number>> = {
  dissolves: 240,
  thread: 240,
  unsure: 60,
  'soft ball': 150,
  'firm ball': 75,
};

export const nextTestDue = (cook: Cook): number => {
  const last = cook.lastTest;
  const boilFrom = cook.enteredAt.boil ?? cook.t;
  if (last === null) return boilFrom + expectedBoilSeconds(cook.batch) / 2;
  const backOn = cook.potOn?.on ? cook.potOn.t : last.t;
  return Math.max(last.t, backOn) + (untilNextTest[last.outcome] ?? 60);
};
