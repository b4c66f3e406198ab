import { piecesLeft } from '../pieces.js';
import { type Phase, step } from './phase.js';

export const over: Phase = {
  id: 'over',
  steps: [
    step('over.end', {
      endless: true,
      values: ({ cook }) => ({
        stopped: cook.stopped,
        counted: cook.counted,
        pieces: piecesLeft(cook).pieces,
      }),
    }),
  ],
};
