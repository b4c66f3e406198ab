import { describe, expect, it } from 'vitest';
import { hall, Play } from './play.js';

/** Whole degrees Fahrenheit on the hall's dial, so many kelvin from the take-off. */
const fromTakeOff = (play: Play, kelvin: number): number =>
  Math.round((play.cook.batch.dial.toShownCelsius(play.cook.takeOffCelsius + kelvin) * 9) / 5 + 32);
const inTheHall = () => new Play({ kitchen: hall }).until('boil.still');

describe('the first reading of a boil', () => {
  it('typed with two digits changed round is asked about, and acted on in the safe direction', () => {
    const play = inTheHall().wait(60).type('291');
    expect(play.advice.question?.id).toBe('reading.doubt');
    expect(play.advice.temperature).toBeNull();
    expect(play.advice.offTheHeat).toBe(true);
    expect(play.advice.reached).toBe(false);
  });

  it('"no" takes it back, and what was meant is believed', () => {
    const play = inTheHall().wait(60).type('291', 'no').wait(5).type('229');
    expect(play.advice.question).toBeNull();
    expect(play.advice.offTheHeat).toBe(false);
    expect(play.cook.lastReading).not.toBeNull();
  });

  it('"yes", or a second like it, makes it true', () => {
    expect(inTheHall().wait(60).type('291', 'yes').cook.lastReading).not.toBeNull();
    const again = inTheHall().wait(60).type('291').wait(5).type('291');
    expect(again.advice.question).toBeNull();
    expect(again.advice.offTheHeat).toBe(true);
  });

  it('is asked about past the take-off, however long it has boiled, and not below it', () => {
    const late = inTheHall().wait(1200);
    late.type(String(fromTakeOff(late, 8)));
    expect(late.advice.question?.id).toBe('reading.doubt');
    const near = inTheHall().wait(1200);
    near.type(String(fromTakeOff(near, -2)));
    expect(near.advice.question?.id).not.toBe('reading.doubt');
    expect(near.cook.lastReading).not.toBeNull();
  });

  it('close to the take-off after a minute is asked about, and ordinary at the same number after a quarter of an hour', () => {
    const soon = inTheHall();
    soon.type(String(fromTakeOff(soon, -3)));
    expect(soon.advice.question?.id).toBe('reading.doubt');
    // Below the take-off there is nothing to act on yet.
    expect(soon.advice.offTheHeat).toBe(false);
    const later = inTheHall().wait(900);
    later.type(String(fromTakeOff(later, -3)));
    expect(later.advice.question?.id).not.toBe('reading.doubt');
  });

  it('in a pot that was joined on the way is believed: nobody here saw how long it was heated', () => {
    const joined = new Play({ kitchen: hall, from: 'boil' });
    joined.wait(10).type(String(fromTakeOff(joined, 6)));
    expect(joined.advice.question?.id).not.toBe('reading.doubt');
    expect(joined.advice.offTheHeat).toBe(true);
  });

  it('of a feed never asks, and is believed once it has been said for a quarter of a minute', () => {
    const play = inTheHall().wait(60).feed(291);
    expect(play.advice.question?.id).not.toBe('reading.doubt');
    expect(play.advice.offTheHeat).toBe(true);
    play.wait(2).feed(291);
    expect(play.cook.lastReading).toBeNull();
    play.wait(14).feed(291);
    expect(play.cook.lastReading).not.toBeNull();
  });
});
