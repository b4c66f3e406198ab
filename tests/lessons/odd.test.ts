import { describe, expect, it } from 'vitest';
import { cookIn, trueKitchen } from '../../bench/kitchen-series.js';
import type { CookEvent, Happened, TroubleName } from '../../source/cook/event.js';
import { openCook } from '../../source/cook/open.js';
import { forecastsOf, peakOf, type TrackPoint } from '../../source/lessons/boil-story.js';
import { learnFrom } from '../../source/lessons/learn.js';
import { nothingSeen, seeBoil } from '../../source/lessons/learn-boil.js';
import { type CookLesson, lessonOf } from '../../source/lessons/learn-cook.js';
import { pooled } from '../../source/lessons/learn-pool.js';
import { storyAlong, storyOf } from '../../source/lessons/story.js';
import { blind, hall, opened, Play, recipe } from '../cook/play.js';
import { fairStory, startedAt } from './cooks-told.js';
import { lesson } from './lesson.js';

const told = (play: Play) => storyOf(play.events, startedAt);
const boiling = (kitchen = hall) => new Play({ kitchen }).until('boil.still').type('heat medium');

describe('what is seen to be done about a trouble', () => {
  const met = (name: TroubleName, typed: readonly string[], before: readonly string[] = []) => {
    const [trouble] = told(boiling().type(...before, `trouble ${name}`, ...typed)).troubles;
    return [trouble?.acts.map(({ act }) => act), trouble?.order, trouble?.firstSeconds === null];
  };

  it.each<[TroubleName, string[], string[], string]>([
    ['fire', ['lid on', 'heat off'], ['lid on', 'heat off'], 'right'],
    ['fire', ['heat off', 'lid on'], ['heat off', 'lid on'], 'wrong'],
    ['foam', ['heat low'], ['heat down'], 'right'],
    ['scorched', ['pot off'], ['pot off'], 'right'],
    ['thermometer', ['thermometer none'], ['check'], 'right'],
    ['thermometer', ['ice 33f'], ['check'], 'right'],
    ['thermometer', ['boils 203f'], ['check'], 'right'],
    ['thermometer', ['hard ball'], ['test'], 'right'],
    ['overshoot', ['pot off', 'water 30ml'], ['pot off', 'water'], 'right'],
  ])('%s, then %o', (name, typed, acts, order) => {
    expect(met(name, typed)).toEqual([acts, order, false]);
  });

  it.each<[TroubleName, string[]]>([
    ['foam', ['heat high']],
    ['overflow', ['pot on']],
    ['fire', ['lid off']],
    ['thermometer', ['220f']],
  ])('%s, then %o: that is not what helps', (name, typed) => {
    expect(met(name, typed)).toEqual([[], 'not seen', true]);
  });

  it('counts what was already so: the lid on a pot that burns', () => {
    expect(met('fire', ['heat off'], ['lid on'])).toEqual([['heat off'], 'right', false]);
  });

  it('takes the answer about glass for the first thing done about a thermometer that is wrong', () => {
    const play = boiling().type('trouble thermometer');
    for (let turn = 0; turn < 9 && play.advice.question?.id !== 'trouble.glass'; turn += 1) play.type('done');
    expect(play.advice.question?.id).toBe('trouble.glass');
    const asked = play.t;
    play.type('no');
    const [trouble] = told(play).troubles;
    expect(trouble?.firstSeconds).toBeLessThanOrEqual(asked - (trouble?.at ?? 0) + 1);
  });

  it('measures the middle of a mass that got too stiff', () => {
    const play = new Play({ kitchen: hall, from: 'fold' }).type('trouble stiff', 'middle 100f');
    expect(told(play).troubles[0]).toMatchObject({ acts: [{ act: 'measure' }], order: 'right' });
  });
});

describe('a warning that is answered', () => {
  it('is over with the word "ok", in time where that came at once', () => {
    const play = boiling().type('218f');
    for (let minute = 0; minute < 60 && !play.warned.includes('unattended'); minute += 1) play.wait(60);
    const id = 'unattended';
    play.type(`ok ${id}`);
    const answered = play.t;
    play.wait(30).type('note so');
    const warning = told(play).warnings.find((one) => one.id === id);
    expect(warning).toMatchObject({ endedBy: 'answered', endedAt: answered });
    expect(warning?.inTime).toBe(true);
  });
});

describe('readings', () => {
  it('of ice are no readings of the syrup, nor are those of the empty pot', () => {
    const play = new Play({ kitchen: hall }).type('ice 33f').until('fold');
    const late: CookEvent = { kind: 'reading', value: 150, unit: 'F', of: 'syrup', by: 'hands' };
    play.wait(60).happen(late);
    expect(told(play).readings).toEqual([]);
  });

  it('of a probe that writes every second are all in the list, and believed', () => {
    const play = boiling();
    for (let second = 0; second < 30; second += 1) play.wait(1).feed(218 + second / 10);
    const { readings, track } = told(play);
    expect(readings).toHaveLength(30);
    expect(readings.every(({ believed, by }) => believed && by === 'feed')).toBe(true);
    expect(readings.map(({ shown }) => shown)).toEqual(
      readings.map(({ shown }) => shown).toSorted((a, b) => a - b),
    );
    // Nobody looks at each of them.
    expect(track.length).toBeLessThan(25);
  });
});

describe('the hottest', () => {
  const { track, readings, tests, cook, peak } = fairStory();

  it('follows a reading that stands clear above all that was believed, and covers both', () => {
    const [first, ...rest] = readings.filter(({ of }) => of === 'syrup').toReversed();
    if (first === undefined || peak === null) throw new Error('the fair was read');
    const high = { ...first, celsius: peak.celsius + 8 };
    const found = peakOf(track, [high, ...rest], tests, cook);
    expect(found?.celsius).toBeGreaterThan(peak.celsius + 1);
    expect(found?.celsius).toBeLessThan(high.celsius);
    expect(found?.between[1]).toBeGreaterThan(high.celsius);
    expect(found?.between[0]).toBeLessThan(peak.celsius);
  });

  it('by fingers alone is as far from the window as they felt', () => {
    const play = new Play({ kitchen: blind }).until('boil.still').type('soft ball').wait(60).type('at fold');
    const found = told(play).peak;
    expect(found).toMatchObject({ by: 'cold water' });
    expect(found?.outsideKelvin).toBeLessThan(-3);
  });

  it('came off with the pour, where a read pot was poured and nobody said that it came off', () => {
    const play = boiling().type('218f').wait(60).type('224f').wait(60).type('at fold');
    expect(told(play).offs).toMatchObject([{ t: play.t, implied: true, backAt: null }]);
  });
});

describe('what was foreseen', () => {
  const point = (t: number, takeOff: TrackPoint['takeOffSeconds']): TrackPoint => ({
    t,
    celsius: 115,
    sd: 1,
    takeOffSeconds: takeOff,
    watts: 900,
  });
  const off = { t: 1000, celsius: 120, wantedCelsius: 120, askedAt: null, implied: false, backAt: null };

  it('is held against the moment at which a hot enough pot came off unasked', () => {
    const track = [
      point(400, { low: 500, typical: 620, high: 700 }),
      point(700, { low: 100, typical: 200, high: 250 }),
    ];
    expect(forecastsOf(track, [off])).toEqual([
      { beforeSeconds: 600, said: track[0]?.takeOffSeconds, within: true },
      { beforeSeconds: 300, said: track[1]?.takeOffSeconds, within: false },
    ]);
  });

  it('is held against nothing where the pot came off cold, or nothing was foreseen at that time', () => {
    expect(forecastsOf([point(400, { low: 1, typical: 2, high: 3 })], [{ ...off, celsius: 100 }])).toEqual(
      [],
    );
    expect(forecastsOf([point(400, null)], [off])).toEqual([]);
  });
});

describe('a story', () => {
  it('has a beginning', () => {
    expect(() => storyAlong([], null)).toThrow(TypeError);
    expect(() => storyOf([], null)).toThrow('"opened"');
  });

  it('keeps what was marked beside the remarks, but not the start of a recording', () => {
    const story = fairStory({ t: 3300, typed: 'mark first pull' }, { t: 3301, typed: 'mark recording' });
    expect(story.notes).toEqual([{ t: 3300, text: 'first pull' }]);
    expect(story.recordings).toEqual([3301]);
  });
});

describe('the carry-over of one boil', () => {
  /** The pot came off at 240 °F; each line is read so many seconds later. */
  const climbs = (...later: readonly (readonly [seconds: number, fahrenheit: number])[]) => {
    const play = boiling().reads(60, 218, 222, 226, 230, 234, 238);
    play.wait(20).type('pot off');
    const off = play.t;
    for (const [seconds, value] of later) play.wait(off + seconds - play.t).happen(play.reading(value));
    let seen = nothingSeen;
    const again = new Play({ kitchen: hall });
    for (const event of play.events.slice(1)) {
      const before = again.cook;
      again.t = event.t;
      again.happen(event);
      seen = seeBoil(seen, before, again.cook, event);
    }
    return seen.carryOverKelvin;
  };

  it('is what the first reading on the trivet shows that heat and dial were ready for', () => {
    const hot = climbs([30, 244])?.value ?? Number.NaN;
    const cool = climbs([30, 242])?.value ?? Number.NaN;
    expect(hot - cool).toBeCloseTo(2 / 1.8, 1);
    expect(climbs([30, 244], [40, 241])?.value).toBe(hot);
    // A reading a few seconds after is too early, and the next one counts.
    expect(climbs([5, 241], [30, 244])).not.toBeNull();
  });

  it('is not known from a reading too early, too late, or of something else', () => {
    expect(climbs([5, 241])).toBeNull();
    expect(climbs([200, 238])).toBeNull();
    expect(climbs([30, 205])).toBeNull();
    expect(climbs()).toBeNull();
  });

  it('is not known of a pot of which nothing was read before it came off', () => {
    const play = boiling();
    const before = play.cook;
    play.type('pot off');
    expect(seeBoil(nothingSeen, before, play.cook, play.events.at(-1) as Happened)).toEqual(nothingSeen);
  });
});

describe('what one cook teaches', () => {
  const truth = trueKitchen(77, false);
  const { events } = cookIn(recipe('hill-hall-ginger-pull'), truth, truth.kitchen, 77_000);
  const without = (kind: Happened['kind']) => events.filter((event) => event.kind !== kind);

  it('is dated only where its day is known, and weighed only where it was', () => {
    const lesson = lessonOf({ events: without('weigh'), startedAt: null });
    expect(lesson).toMatchObject({ date: null, boxShare: null });
    expect(lessonOf({ events, startedAt: null })?.boxShare).toBeGreaterThan(0.5);
  });

  it('says of a thermometer what a check in ice and boiling water says', () => {
    const checked = (fahrenheit: number) => {
      const check: Happened = {
        kind: 'reading',
        value: fahrenheit,
        unit: 'F',
        of: 'boiling water',
        by: 'hands',
        seq: 9001,
        t: 1,
      };
      return lessonOf({ events: [...events.slice(0, 1), check, ...events.slice(1)], startedAt })
        ?.errorByChecks;
    };
    expect(lessonOf({ events, startedAt })?.errorByChecks).toBeNull();
    const boils = openCook(opened({ kitchen: truth.kitchen })).batch.air.waterBoilsCelsius * 1.8 + 32;
    expect(checked(boils + 3)?.value).toBeCloseTo(3 / 1.8, 1);
    expect(checked(boils - 3)?.value).toBeCloseTo(-3 / 1.8, 1);
  });

  it('says nothing of a thermometer that was never held against fingers', () => {
    const lesson = lessonOf({ events: without('cold water'), startedAt });
    expect(lesson?.errorByTests ?? null).toBeNull();
    expect(lessonOf({ events, startedAt })?.errorByTests).not.toBeNull();
  });
});

describe('what several cooks teach', () => {
  const undated = (changes: Partial<CookLesson>): CookLesson => lesson({ date: null, ...changes });

  it('has no day where none of them has, and nothing of a thermometer in a kitchen without one', () => {
    const low = undated({ boxShare: 0.8, errorByTests: { value: -4, sd: 1 } });
    expect(learnFrom([low, low], hall)).toMatchObject({
      boxShare: { cooks: 2, date: null },
      thermometer: { id: 'hall-dial', date: null },
    });
    expect(learnFrom([low], blind).thermometer).toBeNull();
  });

  it('weighs checks and tests of one thermometer together, nearer to the better known', () => {
    const checks = undated({ errorByChecks: { value: 2, sd: 0.5 } });
    const both = learnFrom([checks, undated({ errorByTests: { value: -4, sd: 2 } })], hall).thermometer;
    const alone = learnFrom([checks], hall).thermometer;
    expect(both?.value).toBeLessThan(alone?.value ?? 0);
    expect(both?.value).toBeGreaterThan(0);
    expect(both?.sd).toBeLessThan(alone?.sd ?? 0);
  });

  it('lets one cook that is known far better than the others stand for all', () => {
    const prior = { mean: 10, sd: 3, betweenCooksSd: 0.01 };
    const well = { value: 9, sd: 0.1 };
    const badly = [
      { value: 12, sd: 2 },
      { value: 13, sd: 2 },
    ];
    expect(pooled([well, ...badly], prior)?.value).toBeCloseTo(9, 1);
  });
});
