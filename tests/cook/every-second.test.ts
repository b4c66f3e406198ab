import { describe, expect, it } from 'vitest';
import { step } from '../../source/cook/step.js';
import { chance } from '../faults/program.js';
import { Play, seaside } from './play.js';

/** One normal number after the other (Box & Muller 1958), of standard deviation 1. */
const noise = (seed: number): (() => number) => {
  const random = chance(seed);
  return () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
};

const boiling = (): Play => new Play({ kitchen: seaside }).until('boil').type('heat medium');

/** A feed's thermometer read so often, and each warning that came up meanwhile. */
const warnedOver = (play: Play, seconds: number, shown: (second: number) => number): readonly string[] => {
  const came: string[] = [];
  let before: readonly string[] = play.warned;
  for (let second = 0; second < seconds; second += 1) {
    play.wait(1).feed(shown(second));
    came.push(...play.warned.filter((id) => !before.includes(id)));
    before = play.warned;
  }
  return came;
};

describe('an event', () => {
  it('that comes with an earlier time than the one before it counts as now', () => {
    const play = boiling().wait(60).feed(110);
    const { t } = play.cook;
    const late = step(play.cook, { ...play.reading(110.5, 'feed'), seq: play.seq + 1, t: t - 40 });
    expect(late.t).toBe(t);
    expect(late.lastReading).toMatchObject({ t, seq: play.seq + 1 });
    // The list keeps what was written.
    expect(late.log[late.length - 1]?.t).toBe(t - 40);
  });
});

describe('a probe of a feed', () => {
  const knocked = (): Play => {
    const play = boiling();
    for (const shown of [108, 108.2, 108.3]) play.wait(10).feed(shown);
    return play;
  };

  it('that was knocked and writes the same wrong number for some seconds is not believed', () => {
    const play = knocked();
    for (let second = 0; second < 12; second += 1) play.wait(1).feed(60);
    expect(play.cook.lastReading?.celsius).toBeCloseTo(108.3, 0);
    expect(play.cook.doubt).toMatchObject({ because: 'fall', asks: false });
    // Back in the syrup, as if nothing had been.
    play.wait(1).feed(108.9);
    expect(play.cook.lastReading?.celsius).toBeCloseTo(108.9, 0);
    expect(play.cook.doubt).toBeNull();
  });

  it('that stays there is believed after a quarter of a minute; too high is acted on at once', () => {
    const play = knocked();
    for (let second = 0; second < 20; second += 1) play.wait(1).feed(90);
    expect(play.cook.lastReading?.celsius).toBeCloseTo(90, 0);
    const hot = knocked();
    hot.wait(1).feed(150);
    expect(hot.advice.offTheHeat).toBe(true);
    expect(hot.cook.lastReading?.celsius).toBeCloseTo(108.3, 0);
  });

  it('is not what hands are: somebody who reads the same twice is believed', () => {
    const play = knocked();
    play.wait(1).type('90').wait(1).type('90');
    expect(play.cook.lastReading?.celsius).toBeCloseTo(90, 0);
  });
});

describe('a thermometer that is read every second', () => {
  it.each([1, 2, 3])(
    'scatters like a dial, and cries no wolf on a calm way to the take-off (seed %i)',
    (seed) => {
      const play = boiling();
      const next = noise(seed);
      const from = play.cook.takeOffCelsius - 12;
      // 1.5 K a minute, up to just below the take-off, seen through a dial's scatter of 0.65 K.
      const came = warnedOver(play, 400, (second) => from + (1.5 / 60) * second + 0.65 * next());
      expect(came).not.toContain('scorch-near');
      expect(came.filter((id) => id === 'overshoot-near').length).toBeLessThanOrEqual(1);
      expect(play.cook.readingsTaken).toBe(400);
    },
  );

  it('that climbs too fast is still said within half a minute', () => {
    const play = boiling();
    const from = play.cook.takeOffCelsius - 16;
    const next = noise(4);
    warnedOver(play, 240, (second) => from + (1.5 / 60) * second + 0.3 * next());
    const came = warnedOver(play, 30, (second) => from + 6 + (9 / 60) * second + 0.3 * next());
    expect(came).toContain('overshoot-near');
  });

  it('and stands still for seven minutes tells of a boil that has stopped', () => {
    const play = boiling();
    const next = noise(5);
    const came = warnedOver(play, 420, () => 108 + 0.1 * next());
    expect(came).toContain('stalled');
  });
});
