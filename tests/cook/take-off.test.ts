import { describe, expect, it } from 'vitest';
import { coldWaterOutcomes } from '../../source/sugar/stages.js';
import { hall, Play, seaside } from './play.js';

const boiling = (kitchen = seaside) =>
  new Play({ kitchen, from: 'boil' }).reads(60, 110, 113, 116).type('yes');
const floor = (play: Play) => play.cook.batch.target.todayCelsius[0];

describe('stably in the window, and touched once', () => {
  it('hovering around the floor is not done', () => {
    const play = new Play({ from: 'boil' }).type('heat medium');
    const f = floor(play);
    play.reads(60, f - 8, f - 7, f - 6, f - 5, f - 4, f - 3, f - 2).type('heat low');
    play.reads(30, f - 0.9, f + 0.2, f - 0.5, f + 0.1, f - 0.5);
    expect(play.advice.reached).toBe(false);
    // Nothing climbs any more, and little would on the trivet: it is asked for higher up than by the plan.
    expect(play.cook.takeOffCelsius).toBeGreaterThan(play.cook.batch.target.takeOffCelsius + 0.3);
    expect(play.reads(30, play.cook.takeOffCelsius).advice.offTheHeat).toBe(true);
  });

  it.each([1, 2, 3])(
    'hovering is not done either when nobody says that the heat went down, after %i K a minute',
    (rise) => {
      const play = new Play({ from: 'boil' }).type('heat medium');
      const f = floor(play);
      for (let below = 8; below > 0; below -= rise) play.reads(60, f - below);
      for (let turn = 0; turn < 24; turn += 1) play.reads(15, f + (turn % 2 === 0 ? 0.4 : -0.4));
      expect(play.advice.reached).toBe(false);
    },
  );

  it('staying above it is, until undone', () => {
    const play = boiling();
    const f = floor(play);
    play.reads(20, f - 3, f - 1, f + 0.5);
    for (let turn = 0; turn < 12 && !play.advice.reached; turn += 1) play.reads(15, f + 1.2 + turn / 6);
    expect(play.advice.reached).toBe(true);
    play.type('note still true');
    expect(play.advice.reached).toBe(true);
    for (let turn = 0; turn < 14 && play.advice.reached; turn += 1) play.type('undo');
    expect(play.advice.reached).toBe(false);
  });

  it('any single plausible reading at the take-off says OFF THE HEAT, at once', () => {
    const play = boiling();
    const off = play.cook.takeOffCelsius;
    play.reads(60, off - 1.5);
    expect(play.say).not.toContain('OFF THE HEAT');
    play.reads(30, off);
    expect(play.advice.offTheHeat).toBe(true);
    expect(play.say).toContain('OFF THE HEAT');
    expect(play.advice.urgent).toBe(true);
    expect(play.advice.nextReadingSeconds).toBeNull();
    // And a lower one does not take it back: a test confirms it.
    expect(play.reads(10, off - 0.8).advice.offTheHeat).toBe(true);
    expect(play.type('pot off').advice.offTheHeat).toBe(false);
    expect(play.step).toBe('test.drop');
  });

  it('says so even when nobody has kept up with the steps', () => {
    for (const phase of ['mix', 'dissolve'] as const) {
      const play = new Play()
        .until(phase === 'mix' ? 'mix.dry' : 'dissolve.stir')
        .wait(900)
        .reads(60, 124);
      expect(play.say).toContain('OFF THE HEAT');
      expect(play.type('done').phase).toBe('test');
    }
  });

  it("the forecast's own call does not flap", () => {
    const play = boiling();
    const off = play.cook.takeOffCelsius;
    play.reads(60, off - 7.5, off - 4.5, off - 2);
    expect(play.advice.offTheHeat).toBe(false);
    const at = play.advice.changesAt ?? Number.NaN;
    play.t = at + 30;
    for (let turn = 0; turn < 400 && !play.advice.offTheHeat; turn += 1) play.wait(1);
    expect(play.advice.offTheHeat).toBe(true);
    play.reads(5, off - 0.7);
    expect(play.advice.offTheHeat).toBe(true);
    play.reads(5, off - 0.9);
    expect(play.advice.offTheHeat).toBe(true);
  });
});

describe('the cold-water test', () => {
  it('is told in what fingers feel, one line each', () => {
    const play = boiling().type('pot off');
    const lines = play.advice.items.map((item) => play.words(item));
    for (const outcome of [...coldWaterOutcomes, 'unsure'])
      expect(lines.filter((line) => line.startsWith(`${outcome}: `))).toHaveLength(1);
    expect(play.why).toContain('Looking for hard ball');
  });

  it('short of it goes back to the boil and on by a degree or two', () => {
    const play = boiling();
    play.reads(60, play.cook.takeOffCelsius).type('pot off');
    const before = play.cook.takeOffCelsius;
    play.type('firm ball');
    expect(play.say).toMatch(/^Not yet: firm ball\. Pot back on/);
    expect(play.why).toContain('never sets');
    expect(play.cook.takeOffCelsius).toBeGreaterThan(before + 0.3);
    expect(play.cook.takeOffCelsius).toBeLessThan(before + 3);
    play.type('done');
    expect(play.phase).toBe('boil');
    expect(play.cook.potOn?.on).toBe(true);
    expect(play.advice.offTheHeat).toBe(false);
    expect(play.step).toBe('boil.last');
  });

  it('moves on further after two stages short, and never far beyond the window', () => {
    const two = boiling().reads(60, 122).type('soft ball').cook.takeOffCelsius;
    const one = boiling().reads(60, 122).type('firm ball').cook.takeOffCelsius;
    expect(two).toBeGreaterThan(one);
    const play = boiling();
    for (let turn = 0; turn < 8; turn += 1) play.reads(60, 120 + turn).type('soft ball', 'pot on');
    expect(play.cook.takeOffCelsius).toBeLessThanOrEqual(play.cook.batch.target.todayCelsius[1] + 6);
  });

  describe('short by one stage, the thermometer checked in boiling water', () => {
    const movedBy = (below: number): number => {
      const play = boiling();
      const mark = play.cook.takeOffCelsius;
      return play.reads(60, mark - 4, mark - below).type('pot off', 'firm ball').cook.movedKelvin;
    };

    it('at the mark moves it a little: what it climbs on the trivet it climbs again', () => {
      expect(movedBy(0)).toBeGreaterThanOrEqual(0.39);
      expect(movedBy(0)).toBeLessThanOrEqual(1.5);
    });

    it('well before the mark leaves it: it was not cooked to it yet', () => {
      expect(movedBy(2)).toBe(0);
    });

    it('again and again, no firmer, moves it further each time', () => {
      const play = boiling();
      const marks: number[] = [];
      for (let turn = 0; turn < 5; turn += 1) {
        play.reads(60, play.cook.takeOffCelsius).type('pot off', 'firm ball', 'pot on');
        marks.push(play.cook.takeOffCelsius);
      }
      const moves = marks.slice(1).map((mark, index) => mark - (marks[index] ?? mark));
      expect(Math.max(...moves)).toBeGreaterThan(2 * (moves[0] ?? 0));
    });
  });

  it('moves up by what is believed when nobody read it just now, so that it does not call off at once', () => {
    const play = boiling();
    play
      .reads(60, play.cook.takeOffCelsius - 1)
      .wait(250)
      .type('pot off', 'firm ball', 'pot on');
    expect(play.advice.offTheHeat).toBe(false);
  });

  it('there goes on to the flavour', () => {
    const play = boiling().reads(60, 122).type('pot off', 'hard ball');
    expect(play.phase).toBe('flavour');
    expect(play.warned).not.toContain('past-window');
  });

  it('at or above the window asks for the pot off, whatever the dial says', () => {
    for (const outcome of ['hard ball', 'soft crack', 'hard crack']) {
      const play = boiling().type(outcome);
      expect(play.advice.offTheHeat).toBe(true);
      expect(play.say).toContain('Pot off the heat for good');
      expect(play.type('done').advice.offTheHeat).toBe(false);
      expect(play.step).toBe('flavour.sink');
    }
  });

  it('past it says so, and what the batch can still become', () => {
    const play = boiling().reads(60, 123).type('pot off', 'hard crack');
    expect(play.phase).toBe('flavour');
    const past = play.advice.warnings.find(({ id }) => id === 'past-window');
    expect(past?.response.map((one) => play.words(one)).join(' ')).toMatch(/Rescue it.*hard candy/);
  });

  it('unsure asks for another, with a fresh cup', () => {
    const play = boiling().type('pot off', 'unsure');
    expect(play.step).toBe('test.drop');
    expect(play.say).toContain('Test again: a fresh cup');
    expect(play.type('unsure', 'hard ball').phase).toBe('flavour');
  });

  it('may be left out only when it is steadily in the window by the thermometer', () => {
    expect(boiling().type('pot off').query('done')).toContain('Type what you read or felt');
    const play = boiling();
    for (let turn = 0; turn < 16; turn += 1) play.reads(15, 122 + turn / 6);
    expect(play.advice.reached).toBe(true);
    expect(play.type('pot off', 'done').phase).toBe('flavour');
  });

  it('warns when fingers and thermometer disagree by more than a stage, and not for one', () => {
    const one = boiling().reads(60, 121).type('pot off', 'soft crack');
    expect(one.warned).not.toContain('disagreement');
    const two = boiling().reads(60, 121).type('pot off', 'thread');
    const warning = two.advice.warnings.find(({ id }) => id === 'disagreement');
    expect(warning?.response.map((said) => two.words(said)).join(' ')).toMatch(
      /Trust your fingers.*deep enough, off the bottom/,
    );
    expect(two.words(warning?.evidence ?? { id: 'typed.nothing' })).toMatch(
      /121 °C would be hard ball; it felt like thread/,
    );
  });

  it('tells of no disagreement by a reading of long ago', () => {
    const play = boiling().reads(60, 121).wait(400).type('pot off', 'thread');
    expect(play.warned).not.toContain('disagreement');
  });

  it('takes the pot off by itself, and back on with "pot on"', () => {
    const play = boiling().type('soft ball');
    expect(play.cook.potOn).toMatchObject({ on: false, said: false });
    play.type('pot on');
    expect(play.phase).toBe('boil');
    // From the flavour as well: somebody wants it cooked further.
    expect(boiling().type('hard ball', 'done').type('pot on').phase).toBe('boil');
  });
});

describe('a pot that is off for a trouble', () => {
  it('is no test, and goes back on at a lower heat', () => {
    const play = boiling().type('trouble foam', 'pot off');
    expect(play.phase).toBe('boil');
    play.type('done', 'done', 'over foam');
    expect(play.step).toBe('boil.back');
    expect(play.say).toContain('lower heat');
    play.type('done');
    expect(play.cook.potOn?.on).toBe(true);
    // A second time as well.
    play.type('trouble foam', 'pot off', 'over foam');
    expect(play.step).toBe('boil.back');
    expect(play.type('pot on').step).toBe('boil.last');
  });

  it('is said in the dissolving too', () => {
    const play = new Play().until('dissolve.stir').type('trouble foam', 'pot off', 'over');
    expect(play.step).toBe('dissolve.back');
    expect(play.type('done').step).toBe('dissolve.stir');
  });

  it('is a test once the take-off was reached', () => {
    const play = boiling().type('trouble foam').reads(60, 124).type('pot off');
    expect(play.phase).toBe('test');
  });
});

describe('the hall', () => {
  it('calls off at its own number, five degrees below the book', () => {
    const play = new Play({ kitchen: hall, from: 'boil' });
    const { dial } = play.cook.batch;
    const shown = (dial.toShownCelsius(play.cook.takeOffCelsius) * 9) / 5 + 32;
    expect(shown).toBeLessThan(250);
    play.reads(90, Math.floor(shown) - 1);
    expect(play.advice.offTheHeat).toBe(false);
    expect(play.reads(5, Math.ceil(shown)).advice.offTheHeat).toBe(true);
  });
});
