import { crewPhases, type Learned, type Lesson } from '../kitchen/learned.js';
import { heatLevel } from '../kitchen/stove.js';
import type { Batch, Spread } from './batch.js';
import type { Pace } from './run-sheet-times.js';

/** Eight in ten of a normal distribution lie within so many standard deviations. */
const eightyPercent = 1.2816;
/** A usual boil stands at this share of full heat. Our judgement. */
const usualLevel = 0.6;
/** What was learned is never taken for more than half as much or twice as much. Our judgement. */
const spreadRange = [0.5, 2] as const;

const spreadOf = ({ value, sd }: Lesson, factor: number): Spread => {
  const at = (spreads: number): number =>
    value * factor * Math.min(spreadRange[1], Math.max(spreadRange[0], 1 + spreads * sd));
  return { low: at(-eightyPercent), typical: at(0), high: at(eightyPercent) };
};

/** The power at the setting nearest to a usual boil; undefined where none was learned. */
const boilWattsIn = (learned: Learned, { kitchen }: Batch): Spread | undefined => {
  const [nearest] = Object.entries(learned.watts)
    .map(([label, lesson]) => ({
      lesson,
      off: Math.abs((heatLevel(kitchen, label) ?? Number.POSITIVE_INFINITY) - usualLevel),
    }))
    .filter(({ off, lesson }) => Number.isFinite(off) && lesson.value > 0)
    .toSorted((one, other) => one.off - other.off);
  return nearest === undefined ? undefined : spreadOf(nearest.lesson, 1);
};

/** What this kitchen's earlier cooks say of its pace; null where they say nothing. */
export const paceOf = (batch: Batch): Pace | null => {
  const { learned } = batch.kitchen;
  if (learned === undefined) return null;
  // Cutting was learned for a hundred pieces.
  const factors = { fold: 1, pull: 1, cut: batch.yield.pieces.typical / 100 };
  const seconds = Object.fromEntries(
    crewPhases.flatMap((phase) => {
      const lesson = learned.minutes[phase];
      return lesson === undefined ? [] : [[phase, spreadOf(lesson, 60 * factors[phase])]];
    }),
  );
  const boilWatts = boilWattsIn(learned, batch);
  return boilWatts === undefined && Object.keys(seconds).length === 0 ? null : { boilWatts, seconds };
};
