import { describe, expect, it } from 'vitest';
import type { ColdWaterTest, Cook } from '../../source/cook/cook.js';
import {
  afterReading,
  afterTest,
  agreeToDoubt,
  dismissDoubt,
  nearKelvin,
  noteEvidence,
} from '../../source/cook/evidence.js';
import type { PhaseId } from '../../source/recipe/recipe.js';
import { blind, Play } from './play.js';

/** A dial that is right, at the sea: what is typed is what the syrup has. */
const boiling = (from: PhaseId = 'boil'): Cook => new Play({ from }).cook;
const read = (cook: Cook, t: number, value: number, by: 'hands' | 'feed' = 'hands'): Cook =>
  afterReading({ ...cook, t }, { kind: 'reading', value, unit: 'C', of: 'syrup', by, seq: 100 + t, t });
/** Readings so many seconds apart. */
const readings = (cook: Cook, seconds: number, ...values: readonly number[]): Cook =>
  values.reduce((before, value, at) => read(before, seconds * (at + 1), value), cook);
const seconds = (kept: readonly { readonly t: number }[]) => kept.map(({ t }) => t);

describe('what is remembered of the readings', () => {
  it('by hands: the six before the last, and everything since pot and burner were touched', () => {
    const cook = readings(boiling(), 60, ...Array.from({ length: 9 }, (_, at) => 108 + at));
    expect(cook.lastReading?.t).toBe(540);
    expect(seconds(cook.readBefore)).toEqual([180, 240, 300, 360, 420, 480]);
    expect(seconds(cook.leftAlone)).toEqual([60, 120, 180, 240, 300, 360, 420, 480, 540]);
    expect(cook.readingsTaken).toBe(9);
  });

  it('by a feed every second: the newest as it is, the others ten seconds apart or more', () => {
    const cook = readings(boiling(), 1, ...Array.from({ length: 60 }, () => 110));
    const kept = seconds(cook.leftAlone);
    expect(kept.at(-1)).toBe(60);
    expect(kept.length).toBeLessThanOrEqual(8);
    const apart = kept.slice(1).map((t, at) => t - (kept[at] ?? 0));
    expect(apart.slice(0, -1).every((gap) => gap >= 10)).toBe(true);
    expect(apart.at(-1)).toBeGreaterThan(0);
  });

  it('never more than four dozen', () => {
    const cook = readings(boiling(), 20, ...Array.from({ length: 60 }, () => 110));
    expect(cook.leftAlone).toHaveLength(48);
    expect(cook.leftAlone.at(-1)?.t).toBe(1200);
  });

  it('the first leaves nothing before it', () => {
    expect(read(boiling(), 60, 110)).toMatchObject({ readBefore: [], readingsTaken: 1 });
  });
});

describe('a believed reading', () => {
  it('is the boil from half a kelvin below its computed start on', () => {
    const starts = boiling().batch.boil.startsCelsius;
    expect(read(boiling('dissolve'), 900, starts - 0.6).boilsSince).toBeNull();
    const boils = read(boiling('dissolve'), 900, starts - 0.4);
    expect(boils.boilsSince).toBe(900);
    expect(read(boils, 960, starts + 1).boilsSince).toBe(900);
  });

  it('is near from eight kelvin below the take-off on, once and for all', () => {
    const mark = boiling().takeOffCelsius;
    expect(nearKelvin).toBe(8);
    const before = readings(boiling(), 60, mark - 9, mark - 8.1);
    expect(before.nearSince).toBeNull();
    const near = read(before, 180, mark - 7.9);
    expect(near.nearSince).toBe(180);
    expect(read(near, 240, mark - 7).nearSince).toBe(180);
  });

  it('is neither once the syrup is flavoured or poured', () => {
    for (const phase of ['flavour', 'pour'] as const)
      expect(read(boiling(phase), 60, 118)).toMatchObject({ boilsSince: null, nearSince: null });
    for (const phase of ['mix', 'dissolve', 'boil', 'test'] as const)
      expect(read({ ...boiling(phase), lastReading: null }, 1500, 118).boilsSince).not.toBeNull();
  });

  it('shows that a thermometer is there, and ends a doubt', () => {
    const cook = read({ ...boiling(), thermometer: false, middleThermometer: false }, 60, 110);
    expect(cook).toMatchObject({ thermometer: true, middleThermometer: true, doubt: null });
  });
});

describe('off the heat', () => {
  const at = (kelvin: number, cook = readings(boiling(), 60, 118, 119)) =>
    read(cook, 180, cook.takeOffCelsius + kelvin);

  it('by a reading at the take-off, from then on', () => {
    expect(at(-0.5)).toMatchObject({ offSince: null, offBy: null });
    const off = at(0.3);
    expect(off).toMatchObject({ offSince: 180, offBy: 'reading' });
    expect(read(off, 190, off.takeOffCelsius + 0.5)).toMatchObject({ offSince: 180, offBy: 'reading' });
    // A lower one after it takes nothing back: the syrup was there.
    expect(read(off, 200, off.takeOffCelsius - 4)).toMatchObject({ offSince: 180, offBy: 'reading' });
  });

  it('but not of a pot that stands off the ring, or is being tested', () => {
    const off = { ...readings(boiling(), 60, 118, 119), potOn: { on: false, t: 120, said: true } };
    expect(at(0.3, off).offSince).toBeNull();
    expect(at(0.3, readings(boiling('test'), 60, 118, 119)).offSince).toBeNull();
  });

  it('what only the forecast asked for is taken back by a reading that is 3 K lower', () => {
    const asked: Cook = { ...readings(boiling(), 60, 114, 115), offSince: 150, offBy: 'forecast' };
    expect(at(-3.1, asked)).toMatchObject({ offSince: null, offBy: null });
    expect(at(-2.9, asked)).toMatchObject({ offSince: 150, offBy: 'forecast' });
  });

  it('what a doubted reading asked for is taken back by any believed one below the mark', () => {
    const doubted = read(readings(boiling(), 60, 110, 112), 125, 131);
    expect(doubted).toMatchObject({ offSince: 125, offBy: 'doubt', doubt: { because: 'jump', since: 125 } });
    expect(doubted.lastReading?.celsius).toBeCloseTo(112, 1);
    expect(read(doubted, 135, 112.5)).toMatchObject({ offSince: null, offBy: null, doubt: null });
    expect(dismissDoubt(doubted)).toMatchObject({ offSince: null, offBy: null, doubt: null });
    expect(agreeToDoubt(doubted)).toMatchObject({ offSince: 125, offBy: 'reading', doubt: null });
    expect(agreeToDoubt(doubted).lastReading?.celsius).toBeCloseTo(131, 1);
  });

  it('a doubted one asks for it only where it is hot enough and the pot stands on the ring', () => {
    const before = readings(boiling(), 60, 102, 103);
    expect(read(before, 125, 116).doubt).not.toBeNull();
    expect(read(before, 125, 116)).toMatchObject({ offSince: null, offBy: null });
    const off = { ...before, potOn: { on: false, t: 120, said: true } };
    expect(read(off, 125, 131)).toMatchObject({ offSince: null, offBy: null });
    const already: Cook = { ...before, offSince: 90, offBy: 'forecast' };
    expect(read(already, 125, 131)).toMatchObject({ offSince: 90, offBy: 'forecast' });
  });

  it('a dismissed doubt leaves what a reading asked for', () => {
    const off = at(0.3);
    const doubted = read(off, 181, off.takeOffCelsius + 20);
    expect(doubted.doubt).not.toBeNull();
    expect(dismissDoubt(doubted)).toMatchObject({ offSince: 180, offBy: 'reading', doubt: null });
  });

  it('there is nothing to agree to without a doubt', () => {
    const cook = readings(boiling(), 60, 110);
    expect(agreeToDoubt(cook)).toBe(cook);
    expect(dismissDoubt(cook)).toMatchObject({ doubt: null, lastReading: cook.lastReading });
  });
});

describe('a doubt said twice', () => {
  it('by hands is believed at once; by a feed after a quarter of a minute, counted from the first', () => {
    const twice = read(read(readings(boiling(), 60, 110, 112), 125, 131), 128, 131);
    expect(twice).toMatchObject({ doubt: null, lastReading: { celsius: expect.closeTo(131, 1) } });
    const first = read(readings(boiling(), 60, 110, 112), 125, 131, 'feed');
    const later = read(read(first, 130, 131, 'feed'), 139, 131, 'feed');
    expect(later.doubt).toMatchObject({ since: 125, t: 139, asks: false });
    expect(read(later, 140, 131, 'feed')).toMatchObject({
      doubt: null,
      lastReading: { celsius: expect.closeTo(131, 1) },
    });
  });

  it('another one begins anew', () => {
    const first = read(readings(boiling(), 60, 110, 112), 125, 131, 'feed');
    expect(read(first, 139, 160, 'feed').doubt).toMatchObject({ since: 139 });
  });
});

describe('a cold-water test', () => {
  const tested = (cook: Cook, ...outcomes: readonly ColdWaterTest['outcome'][]): Cook => {
    let after = cook;
    for (const [at, outcome] of outcomes.entries()) {
      const t = 300 + 60 * at;
      after = afterTest({ ...after, t }, outcome, t);
    }
    return after;
  };
  const { feels } = boiling().batch.target;
  const off = (cook: Cook, t = 290): Cook => ({ ...cook, potOn: { on: false, t, said: true } });

  it('goes with what the thermometer showed within three minutes, not with an older or an absent one', () => {
    const cook = readings(boiling(), 60, 110, 112);
    const at = (t: number, change: Partial<Cook> = {}) =>
      afterTest({ ...cook, ...change, t }, 'soft ball', t).lastTest?.celsius;
    expect(at(120 + 180)).toBeCloseTo(112, 1);
    expect(at(120 + 181)).toBeNull();
    expect(at(130, { thermometer: false })).toBeNull();
    expect(at(130, { lastReading: null })).toBeNull();
  });

  it('counts what feels right while the pot stays off; unsure neither counts nor breaks it', () => {
    const counts = (...outcomes: readonly ColdWaterTest['outcome'][]) =>
      tested(off(boiling()), ...outcomes).lastTest?.inARow;
    expect(counts(feels)).toBe(1);
    expect(counts(feels, feels)).toBe(2);
    expect(counts(feels, 'unsure')).toBe(1);
    expect(counts(feels, 'unsure', feels)).toBe(2);
    expect(counts(feels, 'soft ball')).toBe(0);
    expect(counts(feels, 'soft ball', feels)).toBe(1);
    // On the ring each one stands for itself, as does one from before it came off.
    expect(tested(boiling(), feels, feels).lastTest?.inARow).toBe(1);
    expect(tested(off(tested(boiling(), feels), 300), feels).lastTest?.inARow).toBe(2);
    expect(tested(off(tested(boiling(), feels), 301), feels).lastTest?.inARow).toBe(1);
  });

  it('remembers the firmest, when it was first felt, and how many since were no firmer', () => {
    const stands = (...outcomes: readonly ColdWaterTest['outcome'][]) => {
      const { firmest, firmestAt, noFirmer } = tested(boiling(), ...outcomes).lastTest ?? {};
      return [firmest, firmestAt, noFirmer];
    };
    expect(stands('thread')).toEqual(['thread', 300, 0]);
    expect(stands('thread', 'soft ball')).toEqual(['soft ball', 360, 0]);
    expect(stands('soft ball', 'soft ball')).toEqual(['soft ball', 300, 1]);
    expect(stands('soft ball', 'thread', 'unsure')).toEqual(['soft ball', 300, 2]);
    expect(stands('unsure')).toEqual([null, 300, 1]);
    expect(stands('unsure', 'soft ball')).toEqual(['soft ball', 360, 0]);
  });

  it('that is firm means the end is near', () => {
    expect(tested(boiling(), 'soft ball').nearSince).toBeNull();
    for (const outcome of ['firm ball', 'hard ball', 'soft crack', 'hard crack'] as const)
      expect(tested(boiling(), outcome).nearSince).toBe(300);
    expect(tested({ ...boiling(), nearSince: 7 }, 'firm ball').nearSince).toBe(7);
  });

  it('without readings moves no mark: there is none to read', () => {
    for (const kitchen of [blind, undefined]) {
      const { cook } = new Play({ from: 'boil', ...(kitchen === undefined ? {} : { kitchen }) });
      for (const outcome of ['thread', 'soft ball', 'soft crack', 'unsure'] as const)
        expect(tested(cook, outcome)).toMatchObject({ takeOffCelsius: cook.takeOffCelsius, movedKelvin: 0 });
    }
  });

  it('past the mark brings it down by four tenths to three kelvin, short of it at the mark brings it up', () => {
    const mark = boiling().takeOffCelsius;
    const cook = readings(boiling(), 60, mark - 6, mark - 5, mark - 3, mark - 1, mark);
    const down = tested({ ...cook, t: 300 }, 'hard crack');
    const fallen = cook.takeOffCelsius - down.takeOffCelsius;
    expect(fallen).toBeGreaterThanOrEqual(0.4);
    expect(fallen).toBeLessThanOrEqual(3 + 1e-9);
    expect(down.movedKelvin).toBeCloseTo(-fallen, 9);
    const up = tested({ ...cook, t: 300 }, 'soft ball');
    expect(up.takeOffCelsius).toBeGreaterThan(cook.takeOffCelsius);
    expect(up.movedKelvin).toBeCloseTo(up.takeOffCelsius - cook.takeOffCelsius, 1);
    const [, top] = cook.batch.target.todayCelsius;
    const again = tested(cook, ...Array.from({ length: 12 }, () => 'thread' as const));
    expect(again.movedKelvin).toBeLessThanOrEqual(top + 6 - cook.batch.target.aimCelsius + 1e-9);
  });
});

describe('reached', () => {
  it('by fingers alone where nothing was read, and never again once it is', () => {
    const { cook } = new Play({ from: 'boil', kitchen: blind });
    const felt = afterTest({ ...cook, t: 300 }, cook.batch.target.feels, 300);
    expect(felt.reachedAt).toBe(300);
    expect(afterTest({ ...felt, t: 400 }, 'soft ball', 400).reachedAt).toBe(300);
  });

  it('changes nothing once it is poured', () => {
    const poured = { ...boiling(), pouredAt: 10 };
    expect(noteEvidence(poured, { kind: 'reading', t: 20, celsius: 124 })).toBe(poured);
  });
});
