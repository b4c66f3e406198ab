import { describe, expect, it } from 'vitest';
import { recheckDial } from '../../source/forecast/index.js';
import { Play, seaside } from './play.js';

/** A dial that nobody checked. */
const unchecked = {
  ...seaside,
  thermometers: seaside.thermometers.map((one) => ({
    ...one,
    iceShownCelsius: null,
    boilsShownCelsius: null,
  })),
};

/** Believed of the syrup after a few readings on the way to the boil; `first` is typed before the cook begins. */
const believed = (...first: readonly string[]) => {
  const play = new Play({ kitchen: unchecked });
  for (const typed of first) play.type(typed);
  play.until('boil.still');
  for (const typed of ['106c', '107c', '108c']) {
    play.wait(60);
    play.type(typed);
  }
  return play.advice.temperature?.sd ?? Number.NaN;
};

describe('a thermometer checked today', () => {
  it('is believed more closely than one that nobody checked', () => {
    expect(believed('boils 100c', 'ice 0c')).toBeLessThan(believed() - 0.2);
  });

  it('does not take back what its readings said of the syrup before', () => {
    const play = new Play({ kitchen: seaside });
    play.until('boil.still');
    play.type('106c');
    const { estimate, hob } = play.cook;
    expect(recheckDial(estimate, hob)).toBe(estimate);
  });
});
