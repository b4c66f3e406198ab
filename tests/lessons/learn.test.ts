import { describe, expect, it } from 'vitest';
import { cookIn, trueKitchen } from '../../bench/kitchen-series.js';
import { batchOf } from '../../source/batch/batch-of.js';
import type { Happened } from '../../source/cook/event.js';
import { openCook } from '../../source/cook/open.js';
import { readEvent } from '../../source/cook/read-event.js';
import { dialOf } from '../../source/kitchen/dial.js';
import type { Kitchen } from '../../source/kitchen/kitchen.js';
import { type Learned, nothingLearned } from '../../source/kitchen/learned.js';
import { stoveTraits } from '../../source/kitchen/stove.js';
import { learn, learnFrom, mostCooks } from '../../source/lessons/learn.js';
import { lessonOf } from '../../source/lessons/learn-cook.js';
import { pooled } from '../../source/lessons/learn-pool.js';
import { hall, opened, Play, recipe } from '../cook/play.js';
import { lesson } from './lesson.js';

const truth = trueKitchen(77, false);
const finished = cookIn(recipe('hill-hall-ginger-pull'), truth, truth.kitchen, 77_000);
const startedAt = '2026-11-20T10:00:00Z';

const minutes = (...values: readonly number[]) =>
  learnFrom(
    values.map((value) => lesson({ minutes: { fold: value } })),
    hall,
  ).minutes.fold?.value ?? Number.NaN;

describe('several cooks as one judgement', () => {
  const prior = { mean: 10, sd: 3, betweenCooksSd: 1 };
  const said = (...values: readonly number[]) => values.map((value) => ({ value, sd: 1 }));

  it('says nothing without a cook', () => expect(pooled([], prior)).toBeNull());

  it('follows Gelman et al. (2013) eq. 2.12 for a single cook', () => {
    // Evidence 14 with variance 1 + 1, prior 10 with variance 9: (14/2 + 10/9) / (1/2 + 1/9).
    expect(pooled(said(14), prior)?.value).toBeCloseTo(13.273, 3);
    expect(pooled(said(14), prior)?.sd).toBeCloseTo(Math.hypot(Math.sqrt(1 / (1 / 2 + 1 / 9)), 1), 6);
  });

  it('believes more cooks more', () => {
    const far = (count: number) => 14 - (pooled(said(...Array(count).fill(14)), prior)?.value ?? 0);
    expect(far(5)).toBeLessThan(far(3));
    expect(far(3)).toBeLessThan(far(2) + 0.2);
    expect(far(12)).toBeLessThan(0.2);
  });

  it('is hardly moved by one odd cook among four', () => {
    const without = pooled(said(14, 14.4, 13.6), prior)?.value ?? 0;
    const odd = pooled(said(14, 14.4, 13.6, 400), prior)?.value ?? 0;
    expect(Math.abs(odd - without)).toBeLessThan(0.5);
  });

  it('holds a single odd cook to some spreads', () =>
    expect(pooled(said(400), prior)?.value).toBeLessThan(10 + 2.5 * Math.hypot(3, 1, 1)));

  it('passes over numbers that are none', () =>
    expect(pooled([{ value: Number.NaN, sd: 1 }, ...said(14)], prior)).toEqual(pooled(said(14), prior)));
});

describe('what a finished cook teaches', () => {
  const taught = lessonOf({ events: finished.events, startedAt });

  it('came to its end', () => expect(finished.finished).toBe(true));

  it('knows its day and what it measured', () => {
    expect(taught?.date).toBe('2026-11-20');
    expect(taught?.boxShare).toBeCloseTo(truth.boxShare, 1);
    expect(taught?.errorByTests).not.toBeNull();
    expect(Math.exp(taught?.logWatts.medium?.value ?? 0)).toBeGreaterThan(100);
    expect(Object.keys(taught?.minutes ?? {})).toEqual(['fold', 'pull', 'cut']);
  });

  it('does not rest on what was learned before it', () => {
    const learned: Learned = {
      ...nothingLearned,
      watts: { medium: { value: 2000, sd: 0.1, cooks: 3, date: null, by: 'cooks' } },
      thermometer: { id: 'dial', value: 9, sd: 0.5, cooks: 3, date: null, by: 'cooks' },
    };
    const [first, ...rest] = finished.events;
    if (first?.kind !== 'opened') throw new Error('a cook begins with opened');
    const prejudiced = [{ ...first, kitchen: { ...first.kitchen, learned } }, ...rest];
    expect(lessonOf({ events: prejudiced, startedAt })).toEqual(taught);
  });

  const change = (event: Partial<Happened>): readonly Happened[] => [
    { ...finished.events[0], ...event } as Happened,
    ...finished.events.slice(1),
  ];
  it.each([
    ['a rehearsal', change({ seed: 3 } as Partial<Happened>)],
    ['one that began in a later phase', change({ from: 'pull' } as Partial<Happened>)],
    ['one that was left in the boil', finished.events.slice(0, 20)],
    ['one that was given up', [...finished.events.slice(0, 20), { kind: 'stop', seq: 999, t: 9e4 } as const]],
    ['a list without a beginning', finished.events.slice(1)],
    ['nothing', []],
  ])('learns nothing of %s', (_, events) => expect(lessonOf({ events, startedAt })).toBeNull());

  it('leaves out what was taken back', () => {
    const slip: readonly Happened[] = [
      { kind: 'weigh', grams: 5, pieces: null, seq: 9001, t: 90_000 },
      { kind: 'undo', voids: 9001, seq: 9002, t: 90_001 },
    ];
    expect(lessonOf({ events: [...finished.events, ...slip], startedAt })?.boxShare).toBe(taught?.boxShare);
  });

  it('does not take one piece on the scale for the whole batch', () => {
    const piece: Happened = { kind: 'weigh', grams: 7, pieces: null, seq: 9001, t: 90_000 };
    expect(lessonOf({ events: [...finished.events, piece], startedAt })?.boxShare).toBeNull();
  });

  it('does not time a phase in which nobody was heard', () => {
    const fold = finished.events.findIndex((event) => event.kind === 'done' && event.step === 'fold.turn');
    const at = finished.events[fold];
    if (at === undefined) throw new Error('it was never folded');
    const gap: Happened = { kind: 'gap', seconds: 900, sure: true, seq: at.seq, t: at.t };
    const events = [...finished.events.slice(0, fold + 1), gap, ...finished.events.slice(fold + 1)];
    expect(lessonOf({ events, startedAt })?.minutes.fold).toBeUndefined();
  });
});

describe('what a kitchen learns', () => {
  it('shrinks the minutes of a slow crew towards the usual', () => {
    expect(minutes(30)).toBeGreaterThan(16);
    expect(minutes(30)).toBeLessThan(30);
    expect(minutes(30, 30, 30, 30, 30)).toBeGreaterThan(minutes(30));
  });

  it('is hardly moved by the cook in which somebody telephoned', () =>
    expect(minutes(20, 21, 19, 110)).toBeLessThan(22));

  it('says from how many cooks, and of which day the last was', () => {
    const learned = learnFrom(
      [lesson({ boxShare: 0.8 }), lesson({ boxShare: 0.82, date: '2026-11-25' })],
      hall,
    );
    expect(learned.boxShare).toMatchObject({ cooks: 2, date: '2026-11-25', by: 'cooks' });
  });

  it('counts the latest cooks only', () => {
    const old = Array.from({ length: 30 }, () => lesson({ boxShare: 0.5, date: '2020-01-01' }));
    const late = Array.from({ length: mostCooks }, () => lesson({ boxShare: 0.9, date: '2026-01-01' }));
    expect(learnFrom([...old, ...late], hall).boxShare?.value).toBeGreaterThan(0.87);
  });

  it('lets the carry-over fall as well as rise', () => {
    const climbs = (kelvin: number) => lesson({ carryOverKelvin: { value: kelvin, sd: 0.9 } });
    const usual = stoveTraits[hall.stove].carryOverKelvin;
    const falls = learnFrom([climbs(0.2), climbs(-0.3), climbs(0.1)], hall).carryOverKelvin?.value ?? usual;
    expect(falls).toBeLessThan(usual - 0.4);
    expect(falls).toBeGreaterThanOrEqual(0);
    expect(learnFrom([climbs(4), climbs(3.5), climbs(4)], hall).carryOverKelvin?.value).toBeGreaterThan(2.5);
    // No pot gets colder than it came off by its own heat.
    const cold = Array.from({ length: 8 }, () => climbs(-6));
    expect(learnFrom(cold, hall).carryOverKelvin?.value).toBe(0);
  });

  const elsewhere: readonly (readonly [string, Kitchen, keyof Learned])[] = [
    ['another stove: nothing of the burner', { ...hall, stove: 'gas' }, 'watts'],
    ['another knob: nothing of the burner', { ...hall, heat: ['1', '2', '3'] }, 'watts'],
    [
      'another pot: nothing of carry-over',
      { ...hall, pot: { litres: 9, diameterMillimetres: 300 } },
      'carryOverKelvin',
    ],
    ['other hands: nothing of minutes', { ...hall, hands: 'children' }, 'minutes'],
  ];
  it.each(elsewhere)('%s', (_, kitchen, key) => {
    const full = lesson({
      logWatts: { medium: { value: 6, sd: 0.1 } },
      carryOverKelvin: { value: 4, sd: 0.9 },
      minutes: { fold: 20 },
    });
    expect(learnFrom([full], hall)[key]).not.toEqual(nothingLearned[key]);
    expect(learnFrom([full], kitchen)[key]).toEqual(nothingLearned[key]);
  });

  it('judges a thermometer by its own id', () => {
    const low = lesson({ errorByTests: { value: -4, sd: 1 } });
    expect(learnFrom([low], hall).thermometer?.value).toBeLessThan(-2);
    expect(learnFrom([{ ...low, thermometerId: 'another' }], hall).thermometer).toBeNull();
  });

  it('puts what a person said before what cooks taught', () => {
    const said: Learned = {
      ...nothingLearned,
      boxShare: { value: 0.95, sd: 0.03, cooks: 0, date: '2026-11-01', by: 'person' },
    };
    const learned = learnFrom([lesson({ boxShare: 0.7 })], { ...hall, learned: said });
    expect(learned.boxShare).toEqual(said.boxShare);
  });

  it('learns nothing from nothing, or from a rehearsal', () => {
    expect(learn([], hall)).toEqual(nothingLearned);
    const rehearsal = [{ ...finished.events[0], seed: 1 } as Happened, ...finished.events.slice(1)];
    expect(learn([{ events: rehearsal, startedAt }], truth.kitchen)).toEqual(nothingLearned);
  });
});

describe('the next cook', () => {
  const three = [1, 2, 3].map((index) => ({
    events: cookIn(recipe('hill-hall-ginger-pull'), truth, truth.kitchen, 77_000 + index).events,
    startedAt: `2026-11-0${index}T10:00:00Z`,
  }));
  const learned = learn(three, truth.kitchen);
  const kitchen: Kitchen = { ...truth.kitchen, learned };
  const before = openCook({ ...opened({ kitchen: truth.kitchen }) });
  const after = openCook({ ...opened({ kitchen }) });

  it('corrects its thermometer towards the truth, and knows it better', () => {
    const error = truth.dialOffsetKelvin + 25 * truth.dialStretch;
    const [old, now] = [dialOf(truth.kitchen, 'pot'), dialOf(kitchen, 'pot')];
    const off = ({ toShownCelsius }: typeof now) => Math.abs(toShownCelsius(125) - 125 - error);
    expect(off(now)).toBeLessThan(off(old));
    expect(now.sdKelvin).toBeLessThan(old.sdKelvin);
  });

  it('never takes a middle for cooler than it is shown, whatever was learned', () => {
    const high: Learned = {
      ...nothingLearned,
      thermometer: { id: 'hall-dial', value: 6, sd: 0.4, cooks: 0, date: null, by: 'person' },
    };
    const play = new Play({ kitchen: { ...hall, learned: high }, from: 'fold' });
    play.type('middle 120f');
    expect(play.cook.middle?.celsius).toBeGreaterThanOrEqual((120 - 32) / 1.8);
  });

  it('expects the yield of this kitchen', () => {
    const share = (cook: typeof after) =>
      cook.batch.yield.expectedGrams.typical / cook.batch.yield.cookedGrams;
    expect(Math.abs(share(after) - truth.boxShare)).toBeLessThan(
      Math.abs(share(before) - truth.boxShare) + 0.005,
    );
  });

  it('knows the power behind the knob before the first reading, for every label', () => {
    expect(before.estimate.knownLevels).toEqual([]);
    expect(after.estimate.knownLevels.map(({ level }) => level)).toEqual([1 / 3, 2 / 3, 1]);
    const medium = after.estimate.knownLevels[1];
    expect(Math.exp(medium?.logWatts ?? 0)).toBeCloseTo(learned.watts.medium?.value ?? 0, 3);
  });

  it('carries it in its first event, through a journal and back', () => {
    const event = readEvent(JSON.parse(JSON.stringify(opened({ kitchen }))));
    expect(event?.kind === 'opened' && event.kitchen.learned).toEqual(learned);
  });

  it('opens without what it does not understand of a newer program', () => {
    const odd = { ...opened({ kitchen }), kitchen: { ...kitchen, learned: { thermometer: 'very hot' } } };
    const event = readEvent(JSON.parse(JSON.stringify(odd)));
    expect(event?.kind === 'opened' && event.kitchen.learned).toBeUndefined();
    expect(event?.kind === 'opened' && event.kitchen.stove).toBe(truth.kitchen.stove);
  });

  it('plans as before where nothing was learned', () => {
    const { target, yield: yields } = batchOf(recipe('mint-pull'), hall);
    const empty = batchOf(recipe('mint-pull'), { ...hall, learned: nothingLearned });
    expect(empty.target).toEqual(target);
    expect(empty.yield).toEqual(yields);
  });
});
