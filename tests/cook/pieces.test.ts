import { expect, it } from 'vitest';
import { piecesLeft } from '../../source/cook/pieces.js';
import { Play } from './play.js';

it('takes the piece from ten that were weighed, and from the recipe where that cannot be meant', () => {
  const planned = piecesLeft(new Play().cook);
  expect(piecesLeft(new Play().type('weigh 512g').cook).pieces).toBe(Math.floor(512 / 7));
  expect(piecesLeft(new Play().type('weigh 512g', 'weigh 80g of 10').cook).pieces).toBe(64);
  for (const slip of ['weigh 0.0001g of 10', 'weigh 0.5g of 10'])
    expect(piecesLeft(new Play().type(slip).cook)).toEqual(planned);
  expect(piecesLeft(new Play().type('count 63').cook)).toMatchObject({ pieces: 63, squares: 80 });
});
