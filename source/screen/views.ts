import type { Advice } from '../cook/advice.js';
import type { PhaseId } from '../recipe/recipe.js';

/** `near`: everything. `far`: what is needed from two metres. `plot`: the curve over the whole screen. */
export type ViewId = 'near' | 'far' | 'plot';

/** What was asked for by key stays until the next phase. */
export type ViewChoice = { readonly view: ViewId; readonly phase: PhaseId };

/** Hands are in the candy or hold its tools, and nobody bends over the keyboard. */
const farByItself: readonly PhaseId[] = ['fold', 'pull', 'cut'];

export const viewChosen = (choice: ViewChoice | null, phase: PhaseId): ViewId => {
  if (choice?.phase === phase) return choice.view;
  return farByItself.includes(phase) ? 'far' : 'near';
};

/** A key for a view leads to it, and out of it again. */
export const toggled = (choice: ViewChoice | null, view: ViewId, phase: PhaseId): ViewChoice => ({
  view: viewChosen(choice, phase) === view ? 'near' : view,
  phase,
});

/**
 * The view that is drawn. A list that is read aloud is always shown whole, for it must not be answered unseen; and the
 * curve gives way to what has to be done at once, and to whatever is asked.
 */
export const viewShown = (advice: Advice, choice: ViewChoice | null): ViewId => {
  const chosen = viewChosen(choice, advice.phase);
  if (advice.question?.kind === 'pause') return 'near';
  return chosen === 'plot' && (advice.urgent || advice.question !== null) ? 'near' : chosen;
};
