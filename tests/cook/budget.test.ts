import { describe, expect, it } from 'vitest';
import { blind, hall, type RecipeName, recipeNames, seaside } from './play.js';
import { SimulatedCook } from './simulated.js';

const tenMinutes = 600;

/** The most warnings that were raised within any ten minutes. */
const most = (raised: SimulatedCook['raised']): number =>
  Math.max(
    0,
    ...raised.map(({ t }) => raised.filter((other) => other.t >= t && other.t < t + tenMinutes).length),
  );

describe('the budget of warnings', () => {
  it.each(recipeNames.map((name, index): readonly [RecipeName, number] => [name, index + 1]))(
    '%s, cook %i, uneventful: no more than one in ten minutes',
    (name, seed) => {
      const cook = new SimulatedCook({ recipe: name, kitchen: hall }, seed).run();
      expect(most(cook.raised), JSON.stringify(cook.raised)).toBeLessThanOrEqual(1);
    },
  );

  it.each(['hill-hall-ginger-pull', 'clear-pull', 'honey-pull'] as const)(
    '%s by cold water alone, uneventful: no more than one in ten minutes',
    (name) => {
      const cook = new SimulatedCook({ recipe: name, kitchen: blind }, 6).run();
      expect(most(cook.raised), JSON.stringify(cook.raised)).toBeLessThanOrEqual(1);
    },
  );

  it('in the first ten minutes of real trouble no more than ten', () => {
    const { play } = new SimulatedCook({ kitchen: seaside }, 4);
    play.until('boil.still').reads(60, 112, 118);
    const raised = new Set<string>();
    const look = () => {
      for (const { id, since } of play.advice.warnings) raised.add(`${id} ${since}`);
    };
    const lines = [
      'trouble foam',
      'pot off',
      'over',
      'pot on',
      'heat high',
      '124',
      '131',
      '139',
      'trouble scorched',
      'pot off',
    ];
    for (const line of [...lines, 'trouble burn', 'hard crack', 'note help', 'trouble spill', 'over spill']) {
      play.wait(40);
      look();
      play.query(line);
      look();
    }
    expect(play.t).toBeGreaterThan(600);
    expect(raised.size, [...raised].join(', ')).toBeLessThanOrEqual(10);
    expect(raised.size).toBeGreaterThan(3);
  });
});
