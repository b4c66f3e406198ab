import { describe, expect, it } from 'vitest';
import { advise } from '../../source/cook/advise.js';
import { Play } from './play.js';

const standing = (play: Play, id: string) => play.advice.warnings.find((warning) => warning.id === id);

describe("a warning's memory", () => {
  const past = () => {
    const play = new Play({ from: 'boil' }).reads(60, 110, 113);
    const [, top] = play.cook.batch.target.todayCelsius;
    return { play: play.reads(60, top + 1.5), top };
  };

  it('says since when it stands: the event that raised it', () => {
    const { play } = past();
    const raisedAt = play.t;
    expect(standing(play, 'past-window')).toMatchObject({ since: raisedAt });
    expect(play.cook.raised['past-window']).toEqual({ since: raisedAt, answered: false });
    play.wait(30).type('note still there');
    expect(standing(play, 'past-window')).toMatchObject({ since: raisedAt });
  });

  it('keeps an answer while the cause stays, and no longer', () => {
    const { play, top } = past();
    play.type('ok past-window');
    expect(play.cook.raised['past-window']).toMatchObject({ answered: true });
    play.reads(20, top + 1.4);
    expect(standing(play, 'past-window')).toBeUndefined();
    play.type('pot off');
    play.reads(60, top - 12);
    expect(play.cook.raised['past-window']).toBeUndefined();
  });

  it('of a ring that was left on ends with the ring: turned on again it is said again', () => {
    const play = new Play().until('pour.pour').type('heat medium', 'done').wait(60);
    expect(standing(play, 'heat-left-on')).toBeDefined();
    play.type('ok');
    expect(play.cook.raised['heat-left-on']).toMatchObject({ answered: true });
    expect(play.wait(300).type('note still on').cook.raised['heat-left-on']).toMatchObject({
      answered: true,
    });
    play.type('heat off');
    expect(play.cook.raised['heat-left-on']).toBeUndefined();
    play.type('heat medium');
    expect(standing(play, 'heat-left-on')).toBeDefined();
  });

  it('is the same object while nothing is raised or cleared', () => {
    const { play } = past();
    const before = play.cook.raised;
    expect(play.type('note a').cook.raised).toBe(before);
    const calm = new Play({ from: 'boil' }).type('note a');
    expect(calm.type('note b').cook.raised).toEqual({});
    expect(Object.keys(calm.cook.raised)).toEqual([]);
  });

  it('of silence ends with any word', () => {
    const play = new Play({ from: 'boil' }).reads(60, 110, 113).wait(240);
    expect(standing(play, 'unattended')).toBeDefined();
    play.type('ok');
    expect(play.cook.raised.unattended).toBeUndefined();
    expect(advise(play.cook, play.t + 239).warnings.map(({ id }) => id)).not.toContain('unattended');
    expect(advise(play.cook, play.t + 240).warnings.map(({ id }) => id)).toContain('unattended');
  });
});
