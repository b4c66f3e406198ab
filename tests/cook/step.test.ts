import { describe, expect, it } from 'vitest';
import { step } from '../../source/cook/step.js';
import { Play } from './play.js';

const kinds = (cook: { log: readonly { kind: string }[]; length: number }) =>
  cook.log.slice(0, cook.length).map(({ kind }) => kind);

describe('one event further', () => {
  it('from an older state makes a list of its own, and the newer one keeps its own', () => {
    const older = new Play({ from: 'boil' }).type('heat low').cook;
    const newer = step(older, { kind: 'pot', on: false, seq: 3, t: 5 });
    const other = step(older, { kind: 'lid', on: true, seq: 3, t: 5 });
    expect(kinds(older)).toEqual(['opened', 'heat']);
    expect(kinds(newer)).toEqual(['opened', 'heat', 'pot']);
    expect(kinds(other)).toEqual(['opened', 'heat', 'lid']);
    const undone = step(older, { kind: 'undo', voids: 2, seq: 3, t: 5 });
    expect(kinds(undone)).toEqual(['opened', 'heat', 'undo']);
    expect(undone.heat).toBeNull();
    expect(kinds(newer)).toEqual(['opened', 'heat', 'pot']);
    expect(older.log).toHaveLength(3);
  });

  it('is heard of a person, and of the pot of a rehearsal in their place, not of a feed; a gap is no act to take back', () => {
    const read = (by: 'hands' | 'pot' | 'feed') => {
      const play = new Play({ from: 'boil' }).type('heat low').wait(60);
      play.happen({ kind: 'reading', value: 110, unit: 'C', of: 'syrup', by });
      return { heard: play.cook.heardAt === play.t, undoes: play.cook.undoes === play.seq };
    };
    expect(read('hands')).toEqual({ heard: true, undoes: true });
    expect(read('pot')).toEqual({ heard: true, undoes: false });
    expect(read('feed')).toEqual({ heard: false, undoes: false });
    const gap = new Play({ from: 'boil' }).type('heat low').wait(60);
    const before = gap.cook;
    gap.happen({ kind: 'gap', seconds: 300, sure: true });
    expect(gap.cook.undoes).toBe(before.undoes);
    const noted = new Play({ from: 'boil' }).wait(60).type('note a');
    expect(noted.cook.heardAt).toBe(noted.t);
  });

  it('time never falls, and an event that comes too early counts as now', () => {
    const play = new Play({ from: 'boil' }).reads(60, 110);
    const late = step(play.cook, { kind: 'heat', setting: 'low', seq: 9, t: 12 });
    expect(late.t).toBe(60);
    expect(late.heat?.t).toBe(60);
  });

  it('an undo takes back only what it names, and only the latest', () => {
    const play = new Play({ from: 'boil' }).type('heat low', 'lid on');
    const stale = step(play.cook, { kind: 'undo', voids: 2, seq: 4, t: 9 });
    expect(stale).toMatchObject({ heat: { setting: 'low' }, lidOn: { on: true }, voided: [] });
    // Another event with that number's place takes nothing back.
    expect(step(play.cook, { kind: 'note', text: 'x', seq: 4, t: 9 })).toMatchObject({ voided: [] });
  });

  it('an undo of what is asked already asks it once', () => {
    const play = new Play({ from: 'boil' }).type('heat low', 'heat medium', 'undo', 'undo');
    expect(play.cook.unsettled).toEqual(['heat']);
    expect(new Play({ from: 'boil' }).type('note a', 'undo').cook.unsettled).toEqual([]);
  });
});
