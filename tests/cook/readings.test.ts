import { describe, expect, it } from 'vitest';
import { hall, Play, seaside } from './play.js';

const boiling = (kitchen = seaside) => new Play({ kitchen, from: 'boil' });
const asked = (play: Play): string =>
  play.advice.question?.id === 'reading.doubt' ? play.words(play.advice.question.text) : '';

describe('a reading', () => {
  it('says at once what it means: stage, how far, how fast, and when to read next', () => {
    const play = boiling(hall).reads(60, 216, 220, 224);
    const means = play.words(play.advice.meaning ?? { id: 'typed.nothing' });
    expect(means).toMatch(/^224 °F: \w+/);
    expect(means).toMatch(/\d+ °F to go, rising 4 °F a minute/);
    expect(means).toMatch(/about \d+ min \(\d+-\d+\) to target/);
    expect(means).toMatch(/read again in/);
    expect(play.advice.nextReadingSeconds).toBeGreaterThan(0);
  });

  it('is of the syrup up to the pour and of the middle from then on', () => {
    expect(new Play({ from: 'boil' }).advice.typing.bare).toBe('syrup');
    const play = new Play().until('fold');
    expect(play.advice.typing.bare).toBe('middle');
    play.type('60');
    expect(play.cook.middle?.celsius).toBe(60);
  });

  it.each(['238', '238f', '114c', '114.5c', '114,5 c'])('is understood as %s', (typed) => {
    const play = boiling(hall).wait(60).type(typed);
    expect(play.cook.lastReading?.celsius).toBeGreaterThan(112);
    expect(play.cook.lastReading?.celsius).toBeLessThan(115);
  });
});

describe('a reading that can not be right is kept, and asked about', () => {
  it.each([
    ['a slip of a digit downwards', [110, 112], 11.3, 'faster than a pot can cool'],
    ['a slip of a digit upwards', [110, 112], 131, 'faster than a hob can heat'],
    ['a fall of 20 degrees in a second', [114, 116], 96, 'faster than a pot can cool'],
    ['more than a kitchen thermometer has', [110, 112], 900, 'not what syrup or candy can have'],
  ] as const)('%s', (_what, before, value, because) => {
    const play = boiling().reads(60, ...before);
    const { celsius } = play.cook.lastReading ?? { celsius: 0 };
    const believed = play.advice.temperature?.celsius ?? 0;
    play.wait(1).happen(play.reading(value));
    expect(asked(play)).toContain(because);
    expect(play.cook.lastReading?.celsius).toBe(celsius);
    expect(Math.abs((play.advice.temperature?.celsius ?? 0) - believed)).toBeLessThan(0.5);
    expect(play.events.at(-1)).toMatchObject({ kind: 'reading', value });
  });

  it('the other scale: offers to type it again', () => {
    const play = boiling(hall).reads(60, 216, 220).reads(30, 105);
    expect(asked(play)).toContain('on the other scale it would fit');
    expect(asked(play)).toContain('with "c" behind it');
    expect(play.type('no', '105c').cook.lastReading?.celsius).toBeCloseTo(104.4, 0);
  });

  it('far too cold to boil as the first reading of a boil', () => {
    const play = boiling().reads(60, 44);
    expect(asked(play)).toContain('too cold for a boiling syrup');
    const means = () => play.words(play.advice.meaning ?? { id: 'typed.nothing' });
    play.type('yes');
    expect(means()).toContain('not boiling yet');
    play.reads(600, 110);
    expect(means()).toContain('boiling, thin syrup');
  });

  it('yes believes it, no lets it go, an agreeing one bears it out', () => {
    const doubtful = () => boiling().reads(60, 110, 112).reads(1, 122);
    expect(doubtful().type('yes').cook.lastReading?.celsius).toBeCloseTo(122, 0);
    expect(doubtful().type('no').cook.lastReading?.celsius).toBeCloseTo(112, 0);
    const borne = doubtful().reads(5, 122.5);
    expect(borne.cook.lastReading?.celsius).toBeCloseTo(122.5, 1);
    expect(borne.advice.question?.id).not.toBe('reading.doubt');
    // One that agrees with the last believed reading instead lets the doubted one go.
    const not = doubtful().reads(5, 112.5);
    expect(not.advice.question).toBeNull();
    expect(not.cook.lastReading?.celsius).toBeCloseTo(112.5, 1);
  });

  it('a high one under question says OFF THE HEAT at once, and takes it back when it was wrong', () => {
    const play = boiling().reads(60, 110, 112).reads(1, 131);
    expect(play.advice.offTheHeat).toBe(true);
    expect(play.say).toContain('OFF THE HEAT');
    expect(play.advice.reached).toBe(false);
    expect(play.advice.question?.id).toBe('reading.doubt');
    play.type('no');
    expect(play.advice.offTheHeat).toBe(false);
    expect(boiling().reads(60, 110, 112).reads(1, 131).reads(10, 113).advice.offTheHeat).toBe(false);
    expect(boiling().reads(60, 110, 112).reads(1, 131).type('yes').advice.offTheHeat).toBe(true);
  });

  it('"no" to a doubted one does not take back what a believed one asked for', () => {
    const play = boiling().reads(60, 118, 124).reads(1, 150).type('no');
    expect(play.advice.offTheHeat).toBe(true);
  });

  it('a low bogus one changes nothing', () => {
    const play = boiling().reads(60, 110, 112, 114);
    const before = play.advice;
    play.happen(play.reading(14));
    expect(play.advice.temperature).toEqual(before.temperature);
    expect(play.advice.stages).toEqual(before.stages);
    expect(play.advice.offTheHeat).toBe(false);
  });

  it('is no fault off the ring: the syrup cools around a lifted thermometer', () => {
    const play = boiling().reads(60, 110, 112, 114).type('pot off').reads(3, 90);
    expect(play.advice.question).toBeNull();
    expect(play.cook.lastReading?.celsius).toBeCloseTo(90, 1);
  });

  it('of a feed never asks', () => {
    const play = boiling().feed(110);
    play.wait(60).feed(112);
    play.wait(1).feed(131);
    expect(play.advice.question).toBeNull();
    expect(play.advice.offTheHeat).toBe(true);
    play.wait(1).feed(11);
    expect(play.advice.question).toBeNull();
    expect(play.cook.lastReading?.celsius).toBeCloseTo(112, 1);
  });

  it('letters in it are said, and nothing changes', () => {
    const play = boiling(hall);
    expect(play.query('2x38')).toContain('is not a temperature');
    expect(play.query('23b')).toContain('Type digits');
    expect(play.events).toHaveLength(1);
  });
});

describe('what the numbers mean here', () => {
  it('is corrected for pressure and for this thermometer: the hall at 1,450 m, a dial a degree high', () => {
    const here = new Play({ kitchen: hall }).cook.batch;
    const there = new Play({ kitchen: seaside }).cook.batch;
    // Common practice: about a degree Fahrenheit for every 500 feet; -5.4 K for 1,450 m of the check values.
    expect(there.target.takeOffCelsius - here.target.takeOffCelsius).toBeGreaterThan(4.4);
    expect(there.target.takeOffCelsius - here.target.takeOffCelsius).toBeLessThan(6.4);
    const shown = (here.dial.toShownCelsius(here.target.takeOffCelsius) * 9) / 5 + 32;
    const play = new Play({ kitchen: hall }).until('boil.still');
    expect(play.why).toContain(`${Math.round(shown)} °F`);
    expect(shown).toBeGreaterThan(here.target.takeOffCelsius * 1.8 + 32 + 0.5);
  });

  it('tells the stage of the hall, not of the book', () => {
    const stage = (fahrenheit: number) => {
      const play = new Play({ kitchen: hall, from: 'boil' }).reads(60, 216, 220, fahrenheit);
      return play.words(play.advice.meaning ?? { id: 'typed.nothing' });
    };
    // At the sea 232 °F is a thread and 242 °F a firm ball (BHG, CSU); up here they are soft and hard ball.
    expect(stage(228)).toContain('soft ball');
    expect(
      new Play({ kitchen: hall, from: 'boil' }).reads(120, 216, 224, 232, 242).advice.meaning?.values,
    ).toMatchObject({
      stage: 'hard ball',
    });
    const sea = new Play({ from: 'boil' }).reads(180, 104, 108, 112, 116.6);
    expect(sea.advice.meaning?.values).toMatchObject({ stage: 'soft ball' });
  });

  it('moves with a check of boiling water, and says what the thermometer will show', () => {
    const bare = {
      ...seaside,
      altitudeMetres: null,
      thermometers: seaside.thermometers.map((one) => ({
        ...one,
        iceShownCelsius: null,
        boilsShownCelsius: null,
      })),
    };
    const play = new Play({ kitchen: bare });
    const before = play.cook.batch.target.takeOffCelsius;
    play.type('boils 95c');
    expect(before - play.cook.takeOffCelsius).toBeGreaterThan(4);
    expect(play.cook.hob.stageFromCelsius['hard ball']).toBe(play.cook.batch.stageFromCelsius['hard ball']);
  });
});
