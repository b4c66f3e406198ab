import { describe, expect, it } from 'vitest';
import { orderOf, rightActs } from '../../source/lessons/right-acts.js';
import { storyAlong, storyOf } from '../../source/lessons/story.js';
import { walk } from '../../source/lessons/walk.js';
import { surpriseNames } from '../../source/rehearsal/surprises.js';
import { blind, hall, opened, Play } from '../cook/play.js';
import { eventsOf, fair, fairStory, fairWith, rehearsed, startedAt } from './cooks-told.js';

const until = (seconds: number) => fair.filter(({ t }) => t <= seconds);
const changes = (story: { changes: readonly { id: string }[] }) => story.changes.map(({ id }) => id);

describe('the winter fair, told', () => {
  const story = fairStory();

  it('came off the heat when the pot was said to be off, ten seconds after it was asked for', () => {
    expect(story.takenOff?.t).toBe(2005);
    expect(2005 - (story.takenOff?.askedAt ?? 0)).toBeGreaterThan(0);
    expect(2005 - (story.takenOff?.askedAt ?? 0)).toBeLessThan(30);
  });

  it('peaked within the window, and not below the last reading before it came off', () => {
    const [floor, ceiling] = story.batch.target.todayCelsius;
    expect(story.peak?.by).toBe('reading');
    expect(story.peak?.celsius).toBeGreaterThanOrEqual(floor);
    expect(story.peak?.celsius).toBeLessThanOrEqual(ceiling);
    const hottest = Math.max(
      ...story.readings.filter(({ of }) => of === 'syrup').map(({ celsius }) => celsius),
    );
    expect(Math.abs((story.peak?.celsius ?? 0) - hottest)).toBeLessThan(2.5);
  });

  it('leaves as much water as the boiling curve says at that temperature', () => {
    const { curve, totalGrams, waterGrams, laterGrams } = story.batch;
    const left = curve.waterGramsAt(story.peak?.celsius ?? 0);
    const whole = totalGrams - waterGrams + left + laterGrams;
    // What is added later may bring a gram or two of water of its own.
    expect(story.candy?.moisture).toBeGreaterThan(left / whole - 0.002);
    expect(story.candy?.moisture).toBeLessThan(left / whole + 0.01);
    const [driest, wettest] = story.candy?.moistureFraction ?? [0, 0];
    expect(driest).toBeLessThan(story.candy?.moisture ?? 0);
    expect(wettest).toBeGreaterThan(story.candy?.moisture ?? 0);
  });

  it('has minutes for each phase that add up to the whole cook', () => {
    const sum = story.phases.reduce((all, { seconds }) => all + seconds, 0);
    expect(sum).toBeCloseTo(story.seconds, 6);
    expect(story.phases.map(({ phase }) => phase)).toEqual([
      'mix',
      'dissolve',
      'boil',
      'test',
      'flavour',
      'pour',
      'fold',
      'pull',
      'cut',
      'wrap',
      'clean',
    ]);
  });

  it('sets what was weighed against what the pot held', () => {
    expect(story.yield.weighedGrams).toBe(804);
    expect(story.yield.share).toBeCloseTo(804 / story.yield.cookedGrams, 9);
    expect(story.pieces.counted).toBe(112);
    expect(story.pieces.meanGrams).toBeCloseTo(804 / 112, 9);
    expect(story.pieces.between).toBeNull();
  });

  it('follows the forecast, whose band held the truth ten minutes before', () => {
    const ten = story.forecasts.find(({ beforeSeconds }) => beforeSeconds > 500 && beforeSeconds < 700);
    expect(ten?.within).toBe(true);
    for (const { takeOffSeconds } of story.track) {
      if (takeOffSeconds === null) continue;
      expect(takeOffSeconds.low).toBeLessThanOrEqual(takeOffSeconds.typical);
      expect(takeOffSeconds.typical).toBeLessThanOrEqual(takeOffSeconds.high);
    }
  });

  it('tells the same story twice', () => {
    expect(changes(fairStory())).toEqual(changes(story));
  });
});

describe('pieces', () => {
  it('gives their spread from three handfuls, by the textbook estimate', () => {
    const story = fairStory(
      { t: 5600, typed: 'weigh 70g of 10' },
      { t: 5601, typed: 'weigh 80g of 10' },
      { t: 5602, typed: 'weigh 60g of 10' },
    );
    expect(story.pieces.between).toEqual([6, 8]);
    expect(story.pieces.meanGrams).toBeCloseTo(7, 9);
    // Means of ten scatter by 1 g, so single pieces by the root of ten.
    expect(story.pieces.variation).toBeCloseTo(Math.sqrt(10) / 7, 6);
    expect(changes(story)).toContain('uneven-pieces');
  });

  it('asks for another cut where pieces are off', () => {
    const story = fairStory({ t: 5600, typed: 'weigh 100g of 10' });
    expect(changes(story)).toContain('piece-size');
  });
});

describe('what was taken back', () => {
  it('is in the list, but neither in the curve nor in the peak', () => {
    const plain = fairStory();
    const slipped = fairStory({ t: 1800, typed: '330' }, { t: 1801, typed: 'no' });
    expect(slipped.readings.filter(({ believed }) => !believed).map(({ shown }) => shown)).toEqual([330]);
    expect(slipped.peak?.celsius).toBeCloseTo(plain.peak?.celsius ?? 0, 0);
    const undone = fairStory({ t: 1690, typed: 'note wrong pot' }, { t: 1691, typed: 'undo' });
    expect(undone.notes).toEqual([]);
    expect(undone.voided.size).toBe(1);
    expect(undone.events.some(({ kind }) => kind === 'note')).toBe(true);
  });
});

describe('troubles', () => {
  it('tells how fast and in which order an overflow was met', () => {
    const lines = [
      ...until(1551),
      { t: 1560, typed: 'trouble overflow' },
      { t: 1564, typed: 'heat off' },
      { t: 1567, typed: 'pot off' },
      { t: 1590, typed: 'over overflow' },
    ];
    const [trouble] = storyOf(eventsOf(lines), startedAt).troubles;
    expect(trouble).toMatchObject({
      name: 'overflow',
      at: 1560,
      firstSeconds: 4,
      inTime: true,
      order: 'right',
      overAt: 1590,
    });
  });

  it('says so where water was added, or the pot was moved before the knob', () => {
    const met = (...typed: readonly string[]) => {
      const lines = [
        ...until(1551),
        { t: 1560, typed: 'trouble overflow' },
        ...typed.map((one, index) => ({ t: 1600 + index, typed: one })),
      ];
      return storyOf(eventsOf(lines), startedAt);
    };
    expect(met('pot off', 'heat off').troubles[0]?.order).toBe('wrong');
    expect(met('heat off', 'water 30ml').troubles[0]?.order).toBe('wrong');
    const late = met('heat off', 'pot off');
    expect(late.troubles[0]).toMatchObject({ order: 'right', inTime: false });
    expect(changes(late)[0]).toBe('slow-answer');
  });

  it('judges only what the journal shows', () => {
    expect(orderOf(rightActs.overflow, [], [])).toBe('not seen');
    expect(orderOf(rightActs.overflow, ['heat off'], ['pot off'])).toBe('right');
    expect(orderOf(rightActs.overflow, [], ['pot off'])).toBe('wrong');
    expect(orderOf(rightActs.foam, [], ['pot off'])).toBe('right');
    expect(orderOf(undefined, [], ['pot off'])).toBe('not seen');
  });

  it.each(surpriseNames)('tells a rehearsal with %s, and marks it as one', (name) => {
    const story = rehearsed(name);
    expect(story.rehearsal).toBe(true);
    expect(story.changes.length).toBeLessThanOrEqual(5);
    expect(story.phases.reduce((all, { seconds }) => all + seconds, 0)).toBeCloseTo(story.seconds, 3);
    for (const { raisedAt, endedAt } of story.warnings)
      expect(endedAt ?? raisedAt).toBeGreaterThanOrEqual(raisedAt);
  });

  it('does not ask for more heat where it foamed over', () => {
    expect(changes(rehearsed('foam-over'))).not.toContain('slow-boil');
  });

  it('asks nobody to count the pieces of a rehearsal, and everybody else with the number that was expected', () => {
    expect(changes(rehearsed('foam-over'))).not.toContain('weigh-and-count');
    const uncounted = storyOf(eventsOf(fair.filter(({ typed }) => !typed.startsWith('count'))), startedAt);
    expect(uncounted.changes.find(({ id }) => id === 'weigh-and-count')?.because.values).toMatchObject({
      weigh: false,
      count: true,
      pieces: uncounted.batch.yield.pieces,
    });
  });

  it('puts people before candy', () => {
    expect(changes(rehearsed('early-touch'))[0]).toBe('burn');
  });
});

describe('an overshot batch', () => {
  it('is told to come off at once where it came off late, and how far past it was', () => {
    const lines = [
      ...until(1988),
      { t: 2000, typed: '245' },
      { t: 2040, typed: '249' },
      { t: 2100, typed: '255' },
      { t: 2110, typed: 'pot off' },
      { t: 2140, typed: 'soft crack' },
    ];
    const story = storyOf(eventsOf(lines), startedAt);
    expect(story.peak?.outsideKelvin).toBeGreaterThan(0.5);
    expect(story.changes.find(({ id }) => id === 'past-window')?.because.values).toMatchObject({
      lateSeconds: 2110 - (story.takenOff?.askedAt ?? 0),
    });
  });
});

describe('a cook that is not whole', () => {
  it('is told as far as it went, wherever it stops', () => {
    const lived = [...walk(eventsOf(fair))];
    for (let length = 1; length <= lived.length; length += 1) {
      const story = storyAlong(lived.slice(0, length), null);
      expect(story.state).toBe(story.phase === 'over' ? 'finished' : 'unfinished');
      expect(story.candy === null).toBe(story.pouredAt === null);
      expect(story.changes.length).toBeLessThanOrEqual(5);
    }
  });

  it('is told from its beginning as from that part of the whole walk', () => {
    const all = eventsOf(fair);
    const part = all.slice(0, 40);
    const end = part.at(-1)?.seq;
    const lived = [...walk(all)];
    const upTo = lived.slice(0, lived.findIndex(({ event }) => event?.seq === end) + 1);
    const { cook: _, batch: __, ...along } = storyAlong(upTo, null);
    const { cook: ___, batch: ____, ...alone } = storyOf(part, null);
    expect(along).toEqual(alone);
  });

  it('has no curve, no peak and no candy with no readings', () => {
    const story = storyOf([opened({ kitchen: hall })], null);
    expect(story).toMatchObject({
      state: 'unfinished',
      phase: 'mix',
      peak: null,
      candy: null,
      takenOff: null,
    });
    expect(story.track).toEqual([]);
  });

  it('knows a stage and no more without a thermometer', () => {
    const play = new Play({ kitchen: blind });
    play.until('fold');
    const story = storyOf(play.events, startedAt);
    expect(story.peak?.by).toBe('cold water');
    const [low, high] = story.peak?.between ?? [0, 0];
    expect(low).toBeCloseTo(story.batch.stageFromCelsius['hard ball'], 6);
    expect(high).toBeCloseTo(story.batch.stageFromCelsius['soft crack'], 6);
    expect(changes(story)).toContain('no-readings');
  });

  it('does not pretend to know what came before where it was opened', () => {
    const story = storyOf([opened({ kitchen: hall, from: 'pull' })], startedAt);
    expect(story.phases.map(({ phase }) => phase)).toEqual(['pull']);
    expect(story.peak).toBeNull();
    expect(story.candy).toBeNull();
  });

  it('is a given-up batch, not a finished one', () => {
    const story = storyOf(eventsOf([...until(1551), { t: 1600, typed: 'stop' }]), startedAt);
    expect(story.state).toBe('given up');
  });
});

describe('a recording', () => {
  it('is remembered with the time at which it started', () => {
    const story = storyOf(eventsOf(fairWith({ t: 900, typed: 'mark recording' })), startedAt);
    expect(story.recordings).toEqual([900]);
    expect(story.notes).toEqual([]);
  });
});

describe('minutes against plan', () => {
  it('are held against the run sheet that the cook was opened with, else against what is usual', () => {
    const [first, ...rest] = eventsOf(fair);
    if (first?.kind !== 'opened') throw new Error('a cook begins with "opened"');
    const plain = storyOf([first, ...rest], startedAt);
    expect(plain.phases.find(({ phase }) => phase === 'fold')).toMatchObject({
      plannedBy: 'trade',
      against: 'as planned',
    });
    const sheet = {
      pullsAt: 3000,
      spareSeconds: 300,
      phases: [
        {
          phase: 'fold' as const,
          startsAt: 2000,
          between: [1900, 2100] as const,
          seconds: { low: 60, typical: 90, high: 120 },
        },
      ],
    };
    const planned = storyOf([{ ...first, runSheet: sheet }, ...rest], startedAt);
    expect(planned.phases.find(({ phase }) => phase === 'fold')).toMatchObject({
      plannedBy: 'run sheet',
      planned: { typical: 90 },
      against: 'slower',
    });
    expect(planned.phases.find(({ phase }) => phase === 'cut')?.planned).toBeNull();
    expect(changes(planned)).toContain('slow-fold');
  });
});
