import { describe, expect, it } from 'vitest';
import { isQuiet, quietAt } from '../../source/cook/quiet.js';
import type { Recipe } from '../../source/recipe/recipe.js';
import { blind, Play, recipe } from './play.js';

const cautions = (play: Play): readonly string[] => play.advice.cautions.map(({ id }) => id);
const adding = (one: Recipe): Play => new Play({ recipe: one }).until('flavour.add');

/** Ginger oil off the heat, and beside it one thing more. */
const ginger = recipe('hill-hall-ginger-pull');
const oil = ginger.ingredients.filter(({ phase }) => phase === 'flavour');
const extract = oil.map((one) => ({ ...one, item: 'extract', name: 'extract', alcohol: true }));
const soda = recipe('molasses-pull').ingredients.filter(({ role }) => role === 'leavening');

describe('what is added off the heat', () => {
  it('is warned of by what it does: an oil spits', () => {
    expect(cautions(adding(ginger))).toEqual(['steam-flavour', 'glowing-ring']);
  });

  it('one extract on alcohol among others can catch fire', () => {
    const both = { ...ginger, ingredients: [...ginger.ingredients, ...extract] };
    expect(cautions(adding(both))).toEqual(['alcohol', 'steam-flavour', 'glowing-ring']);
  });

  it('soda foams, alone and among others, and alone it is no flavour', () => {
    const alone = adding(recipe('molasses-pull'));
    expect(cautions(alone)).toEqual(['soda', 'glowing-ring']);
    expect(alone.say).toMatch(/^Add this/);
    const both = adding({ ...ginger, ingredients: [...ginger.ingredients, ...soda] });
    expect(cautions(both)).toEqual(['soda', 'steam-flavour', 'glowing-ring']);
    expect(both.say).toMatch(/^Add colour and flavour/);
    expect(both.advice.items).toHaveLength(oil.length + soda.length);
  });

  it('is nothing where the recipe has nothing for it, though alcohol went in cold', () => {
    const cold = extract.map((one) => ({ ...one, phase: 'mix' as const }));
    const clear = recipe('clear-pull');
    const play = new Play({ recipe: { ...clear, ingredients: [...clear.ingredients, ...cold] } }).until(
      'pour',
    );
    expect(play.phase).toBe('pour');
    const seen: string[] = [];
    const again = new Play({ recipe: 'clear-pull' });
    while (again.phase !== 'pour') {
      again.forward();
      seen.push(again.step ?? '');
    }
    expect(seen).not.toContain('flavour.add');
    expect(cautions(adding({ ...ginger, ingredients: [...ginger.ingredients, ...cold] }))).not.toContain(
      'alcohol',
    );
  });

  it('waits for somebody who says that the pot is off: a test only implies it', () => {
    const implied = new Play({ from: 'boil' }).reads(60, 119, 121).type('hard ball');
    expect(implied.step).toBe('flavour.off');
    expect(implied.type('pot off').step).toBe('flavour.sink');
  });

  it('counts how long the pot has been off the ring', () => {
    const play = new Play({ from: 'boil' }).reads(60, 119, 121).type('pot off');
    const at = play.t;
    play.wait(30).type('hard ball');
    expect(play.advice.timers).toContainEqual(expect.objectContaining({ id: 'off-the-ring', from: at }));
  });
});

describe('quiet at the pot', () => {
  const quiet = (play: Play): boolean => isQuiet(play.cook, play.t);
  const boil = (...readings: readonly number[]): Play =>
    new Play({ from: 'boil' }).type('heat low').reads(240, 108, ...readings);

  it('begins six kelvin below the take-off, by a reading', () => {
    const { takeOffCelsius } = boil(110).cook;
    expect(quiet(boil(110, takeOffCelsius - 7.5))).toBe(false);
    expect(quiet(boil(110, takeOffCelsius - 5.8))).toBe(true);
  });

  it('by the forecast when nobody reads, and only while the pot boils on the ring', () => {
    const play = new Play({ from: 'boil' }).type('heat high').reads(30, 106, 107.5, 109, 110.5);
    const at = quietAt(play.cook, play.t);
    expect(at).toBeGreaterThan(play.t);
    expect(isQuiet(play.cook, (at ?? 0) - 1)).toBe(false);
    expect(isQuiet(play.cook, (at ?? 0) + 1)).toBe(true);
    expect(quietAt(play.type('pot off').cook, play.t)).toBeNull();
    expect(
      quietAt(new Play({ from: 'boil' }).reads(30, 106, 109).type('thermometer none').cook, 61),
    ).toBeNull();
  });

  it('by fingers: from a firm ball on, and sooner where the recipe wants less', () => {
    const felt = (outcome: string, of?: Recipe): boolean =>
      quiet(new Play({ kitchen: blind, from: 'boil', ...(of && { recipe: of }) }).type(outcome, 'pot on'));
    expect(felt('soft ball')).toBe(false);
    expect(felt('unsure')).toBe(false);
    expect(felt('firm ball')).toBe(true);
  });

  it('by a doubted reading, until it is taken back', () => {
    const play = boil(110).reads(5, 125);
    expect(play.advice.question?.kind).toBe('reading');
    expect(quiet(play)).toBe(true);
    expect(quiet(play.type('no'))).toBe(false);
  });

  it('lasts until the pot is empty, and not before the boil or after the pour', () => {
    expect(quiet(new Play().until('dissolve.stir'))).toBe(false);
    for (const step of ['flavour.sink', 'flavour.add', 'pour.pour'])
      expect(quiet(new Play().until(step)), step).toBe(true);
    for (const step of ['fold.wait', 'pull.stretch', 'cut.cut'])
      expect(quiet(new Play().until(step)), step).toBe(false);
  });
});

describe('past the mark', () => {
  it('water may save it below 140 °C, not from there on', () => {
    const responses = (celsius: number | null): readonly string[] => {
      const play = new Play({ from: 'boil', ...(celsius === null && { kitchen: blind }) });
      if (celsius !== null) play.reads(60, 120).reads(600, celsius);
      play.type('trouble overshoot');
      return JSON.stringify(play.advice.troubles).match(/hazard\.overshoot\.\w+/g) ?? [];
    };
    expect(responses(138)).toContain('hazard.overshoot.rescue');
    expect(responses(null)).toContain('hazard.overshoot.rescue');
    for (const hot of [141, 145]) {
      expect(responses(hot)).not.toContain('hazard.overshoot.rescue');
      expect(responses(hot)).toContain('hazard.overshoot.off');
    }
    const doubted = new Play({ from: 'boil' }).reads(60, 120).reads(5, 145);
    expect(doubted.advice.question?.kind).toBe('reading');
    expect(JSON.stringify(doubted.type('trouble overshoot').advice.troubles)).not.toContain(
      'overshoot.rescue',
    );
  });
});
