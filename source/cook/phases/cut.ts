import { piecesLeft } from '../pieces.js';
import { handsGate } from './gates.js';
import { type Phase, step } from './phase.js';

export const cut: Phase = {
  id: 'cut',
  handsOn: true,
  gates: handsGate,
  steps: [
    step('cut.rope', {
      again: true,
      values: ({ cook, batch }) => ({
        ropeMillimetres: batch.recipe.piece.ropeMillimetres,
        ropeMetres: piecesLeft(cook).ropeMetres,
      }),
    }),
    step('cut.cut', {
      again: true,
      values: ({ cook }) => ({
        cutMillimetres: piecesLeft(cook).cutMillimetres,
        pieces: piecesLeft(cook).pieces,
      }),
      cautions: ['scissors'],
    }),
  ],
};
