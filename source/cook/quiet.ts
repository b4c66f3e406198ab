import { quietKelvin } from '../batch/run-sheet-plan.js';
import { crossing } from '../forecast/index.js';
import type { PhaseId } from '../recipe/recipe.js';
import { coldWaterOutcomes } from '../sugar/stages.js';
import { headline } from './candy.js';
import type { Cook } from './cook.js';
import { potIsOff } from './phases/phase.js';

const watched: readonly PhaseId[] = ['boil', 'test'];
const always: readonly PhaseId[] = ['flavour', 'pour'];

const from = (cook: Cook): number => cook.takeOffCelsius - quietKelvin;

/** A firm ball, or what the recipe wants if that comes sooner: only the last stretch is left. */
const feltFirm = ({ lastTest, batch }: Cook): boolean => {
  if (lastTest === null || lastTest.outcome === 'unsure') return false;
  const firm = Math.min(
    coldWaterOutcomes.indexOf('firm ball'),
    coldWaterOutcomes.indexOf(batch.target.feels),
  );
  return coldWaterOutcomes.indexOf(lastTest.outcome) >= firm;
};

/** When the projected syrup comes so near the take-off that nobody talks; null where nothing is projected. */
export const quietAt = (cook: Cook, now: number): number | null =>
  headline(cook) === 'boil' && cook.thermometer && !potIsOff(cook)
    ? crossing(cook.estimate, from(cook), now, cook.batch.curve, cook.hob)
    : null;

/**
 * Nobody talks from 6 K below the take-off until the pot is empty: by a reading, believed or doubted, by the forecast,
 * by the advice to take it off, or by what fingers felt.
 */
export const isQuiet = (cook: Cook, now: number): boolean => {
  const phase = headline(cook);
  if (cook.pouredAt !== null) return false;
  if (always.includes(phase)) return true;
  if (!watched.includes(phase)) return false;
  const read = Math.max(
    cook.thermometer ? (cook.lastReading?.celsius ?? -Infinity) : -Infinity,
    cook.doubt?.of === 'syrup' ? cook.doubt.celsius : -Infinity,
  );
  if (read >= from(cook) || cook.offSince !== null || feltFirm(cook)) return true;
  const at = quietAt(cook, now);
  return at !== null && at <= now;
};
