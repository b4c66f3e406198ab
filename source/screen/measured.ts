import type { PhaseId } from '../recipe/recipe.js';

/** In these phases a reading is of the syrup in the pot. */
const syrupPhases: readonly PhaseId[] = ['dissolve', 'boil', 'test', 'flavour'];
/** And in these of the middle of the mass, which hands wait for. */
const handPhases: readonly PhaseId[] = ['fold', 'pull'];

/** What a reading says something of in a phase; null: nothing is measured then. */
export const measuredIn = (phase: PhaseId): 'syrup' | 'middle' | null => {
  if (syrupPhases.includes(phase)) return 'syrup';
  return handPhases.includes(phase) ? 'middle' : null;
};
