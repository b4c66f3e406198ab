import { describe, expect, it } from 'vitest';
import { fold } from '../../source/cook/step.js';
import { Play, seaside } from './play.js';

const asks = (play: Play) => play.advice.question?.id;

describe('undo', () => {
  it('voids the latest event by hands, and again goes further back', () => {
    const play = new Play().until('mix.dry').type('done', 'done');
    expect(play.step).toBe('mix.walls');
    expect(play.type('undo').step).toBe('mix.wet');
    expect(play.type('undo').step).toBe('mix.dry');
    expect(play.type('undo').advice.question?.id).toBe('heat.pause');
  });

  it('has no redo: an undo is never undone', () => {
    const play = new Play().until('mix.dry').type('done', 'undo', 'note a', 'undo', 'undo');
    expect(play.advice.question?.id).toBe('heat.pause');
  });

  it('passes over readings by a feed', () => {
    const play = new Play({ from: 'boil' }).type('heat medium').feed(110);
    play.wait(60).feed(112);
    play.type('undo');
    expect(play.cook.heat).toBeNull();
    expect(play.cook.lastReading?.celsius).toBeCloseTo(112, 0);
  });

  it('says when there is nothing to take back', () => {
    const play = new Play();
    expect(play.query('undo')).toBe('There is nothing to take back.');
    play.type('done', 'undo');
    expect(play.query('undo')).toBe('There is nothing to take back.');
  });

  it.each([
    ['heat medium', 'unsettled.heat', 'heat low', 'heat off'],
    ['pot off', 'unsettled.pot', 'pot on', 'pot off'],
    ['lid on', 'unsettled.lid', 'lid off', 'lid off'],
  ])('of "%s" asks what is true now', (act, id, answer, safe) => {
    const play = new Play({ from: 'boil' }).type(act, 'undo');
    expect(asks(play)).toBe(id);
    expect(play.advice.question?.safe).toBe(safe);
    expect(play.advice.question?.answers).toContain(answer);
    expect(play.type(answer).advice.question?.id).not.toBe(id);
  });

  it('of a pour asks where the syrup is, and each answer settles it', () => {
    for (const [answer, phase] of [
      ['at pour', 'pour'],
      ['at fold', 'fold'],
    ] as const) {
      const play = new Play().until('pour.pour').type('done', 'undo');
      expect(asks(play)).toBe('unsettled.pour');
      play.type(answer);
      expect(asks(play)).toBeUndefined();
      expect(play.phase).toBe(phase);
    }
    const poured = new Play().until('pour.pour').type('done', 'undo', 'done');
    expect(asks(poured)).toBeUndefined();
    expect(poured.phase).toBe('fold');
  });

  it('of a step that meant an act asks as well', () => {
    const play = new Play({ from: 'boil' }).reads(60, 124).type('done', 'undo');
    expect(asks(play)).toBe('unsettled.pot');
  });

  it('going further back forgets no question that nobody has answered', () => {
    const play = new Play({ from: 'boil' }).type('note before', 'heat medium', 'lid on');
    play.type('undo', 'undo', 'undo');
    expect(asks(play)).toBe('unsettled.heat');
    play.type('heat low');
    expect(asks(play)).toBe('unsettled.lid');
    play.type('lid off');
    expect(asks(play)).toBeUndefined();
  });

  it('of the answer to a doubt asks again; of a reading forgets it', () => {
    const play = new Play({ from: 'boil' }).reads(60, 110, 112).reads(1, 131).type('yes');
    expect(play.advice.offTheHeat).toBe(true);
    play.type('undo');
    expect(asks(play)).toBe('reading.doubt');
    play.type('undo');
    expect(asks(play)).toBeUndefined();
    expect(play.advice.offTheHeat).toBe(false);
  });

  it('of a trouble closes it, of its end opens it again', () => {
    const play = new Play({ from: 'boil' }).type('trouble foam', 'over foam', 'undo');
    expect(play.advice.troubles).toHaveLength(1);
    expect(play.type('undo').advice.troubles).toHaveLength(0);
  });

  it('of a stray number that names another event changes nothing, then or later', () => {
    const play = new Play().until('mix.dry').type('done');
    const say = play.say;
    play.happen({ kind: 'undo', voids: 2 });
    expect(play.say).toBe(say);
    play.type('note a', 'undo');
    expect(play.say).toBe(say);
  });

  it('leaves the clock where it is', () => {
    const play = new Play({ kitchen: seaside })
      .until('boil.still')
      .wait(100)
      .type('note a')
      .wait(50)
      .type('undo');
    expect(play.cook.t).toBe(play.t);
    expect(play.advice.now).toBe(play.t);
  });

  it('is in the list like everything else: the list alone gives the same cook', () => {
    const play = new Play({ from: 'boil' })
      .type('heat medium', 'undo', 'lid on', 'undo')
      .reads(60, 112)
      .type('undo');
    const again = fold(play.events);
    expect(JSON.stringify(again)).toEqual(JSON.stringify(play.cook));
  });
});
