import { piecesLeft } from '../pieces.js';
import { type Phase, step } from './phase.js';

/** What is said when nothing is left to do. */
export const overEnd = step('over.end', {
  endless: true,
  values: ({ cook }) => ({
    stopped: cook.stopped,
    counted: cook.counted,
    pieces: piecesLeft(cook).pieces,
  }),
});

export const over: Phase = { id: 'over', steps: [overEnd] };
