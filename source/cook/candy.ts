import { type PhaseId, phaseIds } from '../recipe/recipe.js';
import type { Cook } from './cook.js';

export const phaseIndex = (phase: PhaseId): number => phaseIds.indexOf(phase);
export const isBefore = (one: PhaseId, other: PhaseId): boolean => phaseIndex(one) < phaseIndex(other);
export const phaseAfter = (phase: PhaseId): PhaseId => phaseIds[phaseIndex(phase) + 1] ?? 'over';

/** From the pour on the batch can be divided: some is cut while the rest is pulled or kept warm. */
export const canDivide = (phase: PhaseId): boolean => !isBefore(phase, 'pull');

/** The earliest phase that still has candy in it: its action is the headline and its caution stays. */
export const headline = (cook: Pick<Cook, 'candy'>): PhaseId =>
  phaseIds.find((phase) => (cook.candy[phase] ?? 0) > 0) ?? 'over';

export const activePhases = (cook: Pick<Cook, 'candy'>): readonly PhaseId[] =>
  phaseIds.filter((phase) => (cook.candy[phase] ?? 0) > 0);

export type Candy = Cook['candy'];

export const portionsIn = (candy: Candy): number =>
  Object.values(candy).reduce((sum, count) => sum + count, 0);

/** Move `count` portions from one phase to another. */
export const move = (candy: Candy, from: PhaseId, to: PhaseId, count: number): Candy => {
  if (from === to) return candy;
  const moved = Math.min(count, candy[from] ?? 0);
  const left = (candy[from] ?? 0) - moved;
  const { [from]: _gone, ...others } = candy;
  return { ...others, ...(left > 0 ? { [from]: left } : {}), [to]: (candy[to] ?? 0) + moved };
};

/** Divide what is in the headline phase so that the whole batch is `count` portions. */
export const divide = (candy: Candy, count: number): Candy => {
  const here = headline({ candy });
  const elsewhere = portionsIn(candy) - (candy[here] ?? 0);
  return { ...candy, [here]: Math.max(1, count - elsewhere) };
};
