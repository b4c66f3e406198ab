import { describe, expect, it } from 'vitest';
import { divide, move } from '../../source/cook/candy.js';
import type { CookEvent } from '../../source/cook/event.js';
import { piecesLeft } from '../../source/cook/pieces.js';
import { fold } from '../../source/cook/step.js';
import { blind, hall, opened, Play, seaside } from './play.js';

const unsaid = { ...seaside, room: { celsius: null, humidity: null } };

describe('what is rarely typed', () => {
  it.each([
    ['note', /note/],
    ['mark', /mark/],
    ['hands cat', /cat/],
    ['hands', /hands/],
  ])('"%s" with nothing, or nothing known, behind it is asked about', (line, because) => {
    const play = new Play();
    expect(play.query(line)).toMatch(because);
    expect(play.cook.length).toBe(1);
  });

  it('takes how damp the room is, and leaves how warm it is alone', () => {
    const play = new Play({ kitchen: hall });
    const before = play.cook.batch.kitchen.room.celsius;
    play.type('room 71 %');
    expect(play.cook.batch.kitchen.room).toEqual({ celsius: before, humidity: 0.71 });
    play.type('room 12c');
    expect(play.cook.batch.kitchen.room).toEqual({ celsius: 12, humidity: 0.71 });
  });

  it('says of "done" at a list only what answers the list', () => {
    const play = new Play().until('heat.pause');
    expect(play.query('done')).toMatch(/yes.*no|"yes" or "no"/);
  });

  it('stops once: "stop" after the end changes nothing', () => {
    const play = new Play().until('over');
    const before = play.cook;
    play.happen({ kind: 'stop' });
    expect({ ...play.cook, length: 0, t: 0, heardAt: 0, undoes: 0 }).toEqual({
      ...before,
      length: 0,
      t: 0,
      heardAt: 0,
      undoes: 0,
    });
  });

  it('keeps an event of a kind that only a later version knows, and goes on', () => {
    const play = new Play().until('boil.still');
    const { say } = play;
    play.happen({ kind: 'sang', what: 'a round' } as unknown as CookEvent);
    expect(play.say).toBe(say);
    expect(play.events.at(-1)).toMatchObject({ kind: 'sang' });
  });

  it('does not begin a cook without its recipe', () => {
    expect(() => fold([{ kind: 'stop', seq: 1, t: 0 }])).toThrow('opened');
    expect(() => fold([])).toThrow('opened');
    expect(fold([opened()]).length).toBe(1);
  });
});

describe('checks of the thermometer', () => {
  it('pays no heed to boiling water in air that nobody breathes', () => {
    // Nobody said how high it lies: boiling water is all there is to go by.
    const play = new Play({ kitchen: { ...seaside, altitudeMetres: null } });
    const { takeOffCelsius } = play.cook.batch.target;
    play.happen({ kind: 'reading', value: 40, unit: 'C', of: 'boiling water', by: 'hands' });
    expect(play.cook.batch.air.waterBoilsCelsius).toBeCloseTo(100, 1);
    expect(play.cook.batch.target.takeOffCelsius).toBeCloseTo(takeOffCelsius, 1);
  });

  it('takes what fingers moved up along when boiling water is read afterwards', () => {
    const play = new Play().until('boil.probe').reads(60, 118, 120, 122, 123);
    play.type('firm ball');
    const moved = play.cook.takeOffCelsius - play.cook.batch.target.takeOffCelsius;
    expect(moved).toBeGreaterThan(0);
    play.type('boils 99c');
    expect(play.cook.takeOffCelsius - play.cook.batch.target.takeOffCelsius).toBeCloseTo(moved, 9);
  });
});

describe('a middle that is asked about', () => {
  it('takes 20 °C for a room of which nobody has said how warm it is', () => {
    const atGate = () => new Play({ kitchen: unsaid }).until('fold.again').wait(180).type('done');
    // Two kelvin of slack: a thermometer and a room are known to that.
    expect(atGate().type('middle 17c').cook.doubt?.because).toBe('colder than the room');
    expect(atGate().type('middle 18c').cook.doubt).toBeNull();
  });

  it('opens the gate when a person says that it was right', () => {
    const play = new Play().until('fold.again').wait(180).type('done', 'middle 12c');
    expect(play.step).toBe('hands.measure');
    play.type('yes');
    expect(play.cook.middle?.celsius).toBe(12);
    expect(play.advice.question?.id).toBe('hands.pause');
  });
});

describe('a cold-water test', () => {
  it('leaves the take-off where it was when only a feed had been read and the thermometer is gone', () => {
    const play = new Play().until('boil.probe').reads(60, 118, 119).type('thermometer none');
    const { takeOffCelsius } = play.cook;
    expect(play.type('soft ball').cook.takeOffCelsius).toBe(takeOffCelsius);
  });

  it('counts the wait for the next one from when the pot went back on the ring', () => {
    const play = new Play({ kitchen: blind }).until('boil.still').type('soft ball').wait(600).type('pot on');
    const due = play.advice.timers.concat().find(({ id }) => id === 'test-due');
    // A soft ball has two and a half minutes to go.
    expect(play.advice.changesAt).toBeLessThanOrEqual(play.t + 150);
    expect(due?.until ?? play.t + 150).toBe(play.t + 150);
  });
});

describe('a thermometer that broke', () => {
  it('leaves the other troubles open when there is glass', () => {
    const play = new Play().until('boil.still').type('trouble foam', 'trouble thermometer');
    play.happen({ kind: 'answer', question: 'trouble.glass', answer: 'yes' });
    expect(play.cook.troubles.map(({ name }) => name)).toEqual(['foam', 'glass']);
    expect(play.type('over foam').advice.troubles.map(({ name }) => name)).toEqual(['glass']);
  });

  it('asks for nothing more when it is said of glass that was reported already', () => {
    const play = new Play().until('boil.still').type('trouble glass', 'trouble thermometer');
    play.happen({ kind: 'answer', question: 'trouble.glass', answer: 'yes' });
    expect(play.cook.troubles.map(({ name }) => name)).toEqual(['glass']);
  });
});

describe('portions', () => {
  it('never come from where there are none, and stay where they are', () => {
    expect(move({ pull: 2 }, 'pull', 'pull', 1)).toEqual({ pull: 2 });
    expect(move({ pull: 2 }, 'cut', 'wrap', 1)).toMatchObject({ pull: 2, wrap: 0 });
    expect(move({ pull: 2 }, 'pull', 'cut', 5)).toEqual({ cut: 2 });
    expect(divide({}, 3)).toEqual({ over: 3 });
  });

  it('of a batch that weighs nothing are still numbers', () => {
    const { cook } = new Play();
    const expectedGrams = { ...cook.batch.yield.expectedGrams, typical: 0 };
    const batch = { ...cook.batch, yield: { ...cook.batch.yield, expectedGrams } };
    for (const value of Object.values(piecesLeft({ ...cook, batch })))
      expect(Number.isFinite(value)).toBe(true);
    expect(piecesLeft({ ...cook, batch }).pieces).toBe(0);
  });
});
