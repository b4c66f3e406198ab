import { describe, expect, it } from 'vitest';
import { nextTestDue } from '../../source/cook/next-test.js';
import { Play } from './play.js';

const blind = () => new Play({ from: 'boil' }).type('thermometer none');

describe('by cold water alone', () => {
  it('a drop that feels right is felt once more while the bubbling sinks, and nothing waits for it', () => {
    const play = blind().type('pot off', 'firm ball', 'done').wait(90).type('pot off', 'hard ball');
    expect(play.advice.reached).toBe(true);
    expect(play.step).toBe('flavour.sink');
    expect(play.say).toContain('One more drop');
    expect(play.type('hard ball').say).toContain('ring off');
    expect(play.say).not.toContain('One more drop');
    expect(play.type('done').step).not.toBe('flavour.sink');
  });

  it('softer the second time, it goes back on the ring', () => {
    const play = blind().type('pot off', 'hard ball').wait(20).type('firm ball');
    expect(play.step).toBe('test.back');
  });

  it('far from the mark it goes back on medium heat, and the time that is said is the time that is counted', () => {
    const play = blind().type('pot off', 'thread');
    expect(play.step).toBe('test.back-far');
    expect(play.say).toBe(
      'Far from it yet: thread. Pot back on, medium heat, and test again in about 3 min.',
    );
    play.type('done');
    expect(nextTestDue(play.cook) - play.t).toBe(180);
    // One stage below, a minute decides: low heat.
    play.wait(180).type('pot off', 'firm ball');
    expect(play.step).toBe('test.back');
    expect(play.say).toMatch(/low heat, and test again in about 75 s/);
  });

  it('fingers that feel it far off say nothing of more heat where the dial stands near the mark', () => {
    const near = new Play({ from: 'boil' }).reads(60, 108, 112, 116, 118, 119.5).type('pot off', 'soft ball');
    expect(near.step).toBe('test.back');
    const far = new Play({ from: 'boil' }).reads(60, 104, 106, 108).type('pot off', 'thread');
    expect(far.say).toMatch(
      /^Far from it yet: thread\. Pot back on, medium heat, to \d+ °C, then test again\.$/,
    );
  });

  it('with a thermometer that was read nobody is asked twice', () => {
    const play = new Play({ from: 'boil' }).reads(60, 108, 112, 116, 118).type('pot off', 'hard ball');
    expect(play.say).not.toContain('One more drop');
  });

  it('tests that find it no firmer for long ask for more heat, and come less often', () => {
    const play = blind().type('heat low');
    const waits: number[] = [];
    for (let turn = 0; turn < 5; turn += 1) {
      play.type('pot off', 'soft ball', 'done');
      const due = nextTestDue(play.cook);
      waits.push(due - play.t);
      play.wait(due - play.t);
    }
    expect(waits[4]).toBeGreaterThan((waits[0] ?? 0) + 60);
    expect(play.advice.warnings.map(({ id }) => id)).toContain('stalled');
    expect(play.type('heat high').advice.warnings.map(({ id }) => id)).not.toContain('stalled');
  });

  it('and the same where nobody ever said how high the heat is', () => {
    const play = blind();
    for (let turn = 0; turn < 5; turn += 1) {
      play.type('pot off', 'soft ball', 'done');
      play.wait(nextTestDue(play.cook) - play.t);
    }
    expect(play.cook.heat).toBeNull();
    expect(play.warned).toContain('stalled');
  });

  it('silence asks for no reading where there is nothing to read', () => {
    const play = blind().type('heat medium').wait(3000);
    const unattended = play.advice.warnings.find(({ id }) => id === 'unattended');
    expect(unattended?.response.map(({ id }) => id)).toEqual(['hazard.unattended.blind']);
    expect(play.type('ok unattended').advice.warnings.map(({ id }) => id)).not.toContain('unattended');
  });
});

describe('one mistyped reading', () => {
  it('asks for the pot to come off, and raises one warning, not three', () => {
    const play = new Play({ from: 'boil' }).type('heat medium').reads(60, 113, 115, 117, 119, 121);
    play.reads(20, play.cook.batch.target.todayCelsius[1] + 3);
    expect(play.advice.offTheHeat).toBe(true);
    expect(play.advice.warnings.filter(({ level }) => level !== 'note').map(({ id }) => id)).toEqual([
      'past-window',
    ]);
  });
});

describe('fingers that felt it past the mark', () => {
  it('take the mark down for a batch that water brings back', () => {
    const play = new Play({ from: 'boil' }).type('heat medium').reads(60, 108, 111, 114, 117, 118.5);
    const before = play.cook.takeOffCelsius;
    play.type('pot off', 'soft crack');
    expect(play.cook.takeOffCelsius).toBeLessThanOrEqual(before - 0.4);
    expect(play.cook.takeOffCelsius).toBeGreaterThan(before - 7);
  });
});
