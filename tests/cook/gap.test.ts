import { describe, expect, it } from 'vitest';
import { blind, hall, Play } from './play.js';

/** In the boil on the coil at the hall, rising about 1.5 F a minute. */
const boiling = (): Play =>
  new Play({ kitchen: hall })
    .until('dissolve.heat')
    .type('heat medium')
    .until('boil.probe')
    .reads(60, 222, 223.5, 225, 226.5);

const slept = (play: Play, seconds: number, sure = true): Play =>
  play.wait(seconds).happen({ kind: 'gap', seconds, sure });

describe('a long time in which nothing could be heard', () => {
  it('asks what became of the pot before it advises anything', () => {
    const play = boiling();
    expect(play.advice.forecast).not.toBeNull();
    slept(play, 1200);
    expect(play.say).toBe('Look at the pot, then read the thermometer. Only then go on.');
    expect(play.why).toContain('20 min passed in which nothing could be heard here');
    expect(play.advice).toMatchObject({
      step: 'gap.look',
      canBeDone: false,
      offTheHeat: false,
      forecast: null,
      temperature: null,
      stages: null,
      question: {
        id: 'gap',
        answers: ['pot on', 'pot off', 'at fold', 'stop'],
        safe: 'pot off',
        kind: 'what is true now',
      },
    });
    expect(play.query('done')).not.toBeNull();
    expect(play.query('yes')).not.toBeNull();
    expect(play.step).toBe('gap.look');
  });

  it('says that only the wall clock was left to go by', () => {
    expect(slept(boiling(), 86_400, false).why).toContain('By the wall clock, ');
  });

  it('goes on where it stood once the pot is said to be on, with new readings only', () => {
    const play = slept(boiling(), 600);
    play.reads(5, 236);
    expect(play.say).toBe('Look at the pot and say where it is. Only then go on.');
    play.type('pot on');
    expect(play.phase).toBe('boil');
    expect(play.advice).toMatchObject({ question: null, forecast: null });
    play.reads(60, 237.5, 239);
    // As for somebody who joins this boil late: what is not known any more is not made up.
    const late = new Play({ kitchen: hall, from: 'boil' }).type('heat medium').reads(60, 236, 237.5, 239);
    const [again, fresh] = [play.advice, late.advice];
    const ratio = (again.forecast?.seconds.typical ?? 0) / (fresh.forecast?.seconds.typical ?? 1);
    expect(ratio).toBeGreaterThan(0.8);
    expect(ratio).toBeLessThan(1.25);
    expect(again.temperature?.celsius).toBeCloseTo(fresh.temperature?.celsius ?? 0, 0);
  });

  it('brings back what a reading asks for at once: off the heat comes before the question', () => {
    const play = slept(boiling(), 1200);
    play.wait(5).reads(5, 262);
    expect(play.advice).toMatchObject({ step: 'boil.off', offTheHeat: true, question: { id: 'gap' } });
    play.type('pot off');
    expect(play.phase).toBe('test');
    expect(play.advice.question?.id).not.toBe('gap');
  });

  it.each([
    ['pot off', 'test'],
    ['at fold', 'fold'],
    ['stop', 'clean'],
    ['hard ball', 'flavour'],
  ])('is answered by "%s"', (line, phase) => {
    const play = slept(boiling(), 1200).type(line);
    expect(play.phase).toBe(phase);
    expect(play.advice.question?.id).not.toBe('gap');
  });

  it('asks again when that answer is taken back, and is not itself taken back', () => {
    const play = slept(boiling(), 1200).type('pot on', 'undo');
    expect(play.advice.question?.id).toBe('gap');
    play.type('undo');
    expect(play.cook.gap).not.toBeNull();
  });

  it('counts two gaps in a row together', () => {
    const play = slept(slept(boiling(), 300), 400, false);
    expect(play.cook.gap).toEqual({ seconds: 700, sure: false });
  });

  it('keeps a fire, or a burn, in front of it', () => {
    const play = slept(boiling(), 1200).type('trouble fire');
    expect(play.advice.troubles[0]?.name).toBe('fire');
    expect(play.step).not.toBe('gap.look');
  });

  it('speaks of the pot alone where there is no thermometer', () => {
    const play = new Play({ kitchen: blind }).until('dissolve.heat').type('heat medium').until('boil.still');
    expect(slept(play, 900).say).toBe('Look at the pot and say where it is. Only then go on.');
  });

  it('asks nothing where there is no hot pot: before any heat, and once it is poured', () => {
    expect(slept(new Play().until('mix.dry'), 40_000).step).toBe('mix.dry');
    const poured = new Play().until('fold.wait');
    expect(slept(poured, 1200).step).toBe('fold.wait');
    expect(poured.advice.question).toBeNull();
  });

  it('does not count as silence of a person who has just come back', () => {
    expect(slept(boiling(), 1200).warned).not.toContain('unattended');
    expect(slept(boiling(), 1200).wait(241).warned).toContain('unattended');
  });
});
