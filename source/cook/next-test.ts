import type { ColdWaterTest, Cook } from './cook.js';
import { expectedBoilSeconds } from './expected.js';

/** Without a thermometer the next test is due by what the last one felt like; seconds. Our judgement. */
const untilNextTest: Readonly<Record<string, number>> = {
  dissolves: 240,
  thread: 180,
  unsure: 60,
  'soft ball': 150,
  'firm ball': 75,
};

/** Each pause off the ring costs a minute of boiling: where tests find it no firmer, fewer of them. Our judgement. */
const longerEachTime = 0.5;
const longest = 2.5;

/** How long to boil after a test before the next one, by what it felt like, seconds. */
export const secondsToNextTest = ({
  outcome,
  noFirmer,
}: Pick<ColdWaterTest, 'outcome' | 'noFirmer'>): number =>
  (untilNextTest[outcome] ?? 60) * Math.min(longest, 1 + longerEachTime * noFirmer);

export const nextTestDue = (cook: Cook): number => {
  const last = cook.lastTest;
  const boilFrom = cook.enteredAt.boil ?? cook.t;
  if (last === null) return boilFrom + expectedBoilSeconds(cook.batch) / 2;
  const backOn = cook.potOn?.on ? cook.potOn.t : last.t;
  return Math.max(last.t, backOn) + secondsToNextTest(last);
};
