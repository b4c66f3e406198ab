import { describe, expect, it } from 'vitest';
import { batchOf } from '../../source/batch/batch-of.js';
import { leadSeconds, planned, runSheetOf, shifted } from '../../source/batch/run-sheet.js';
import { paceOf } from '../../source/batch/run-sheet-pace.js';
import { type Busy, mostBatches, type RunPlan, runPlanOf } from '../../source/batch/run-sheet-plan.js';
import { boilSeconds, canMeasureMiddle, phaseSeconds } from '../../source/batch/run-sheet-times.js';
import type { Kitchen } from '../../source/kitchen/kitchen.js';
import { type Lesson, nothingLearned } from '../../source/kitchen/learned.js';
import { recipe, recipeNames } from '../cook/play.js';
import { hall, hillHall, recipeOf, seaLevel } from './samples.js';

const minute = 60;
const batch = batchOf(hillHall, hall);
const moment = (plan: RunPlan, id: string, number = 1) =>
  plan.moments.find((one) => one.id === id && one.batch === number);

describe('counting back from the pulling', () => {
  it('puts everything before it in the order of the work, with time kept free at the end', () => {
    const sheet = runSheetOf(batch);
    const starts = sheet.phases.map(({ startsAt }) => startsAt);
    expect(starts).toEqual(starts.toSorted((one, other) => one - other));
    expect(planned(sheet, 'pull')?.startsAt).toBe(0);
    const fold = planned(sheet, 'fold');
    expect((fold?.startsAt ?? 0) + (fold?.seconds.typical ?? 0) + sheet.spareSeconds).toBeCloseTo(0, 6);
    for (const { startsAt, between, phase } of sheet.phases) {
      expect(between[0], phase).toBeLessThanOrEqual(startsAt);
      expect(between[1], phase).toBeGreaterThanOrEqual(startsAt);
    }
  });

  it('begins by the clock where somebody decides, and spreads further the longer it cooks', () => {
    const sheet = runSheetOf(batch);
    const spread = (phase: string): number => {
      const [low, high] = planned(sheet, phase)?.between ?? [0, Number.NaN];
      return high - low;
    };
    for (const phase of ['mix', 'dissolve', 'pull']) expect(spread(phase)).toBe(0);
    expect(spread('test')).toBeGreaterThan(spread('boil'));
    expect(spread('fold')).toBeGreaterThan(spread('test'));
  });

  it('comes to a live batch of an hour to an hour and a half from the first ingredient set out', () => {
    for (const name of recipeNames) {
      const { planned: lead, quickest } = leadSeconds(runSheetOf(batchOf(recipe(name), hall)));
      expect(lead / minute, name).toBeGreaterThan(55);
      expect(lead / minute, name).toBeLessThan(100);
      expect(quickest, name).toBeLessThan(lead - 25 * minute);
    }
  });

  it('moves as a whole', () => {
    const sheet = runSheetOf(batch);
    const moved = shifted(sheet, 4000);
    expect(moved.pullsAt).toBe(4000);
    moved.phases.forEach(({ startsAt, between, seconds }, index) => {
      const before = sheet.phases[index];
      expect(startsAt).toBeCloseTo((before?.startsAt ?? 0) + 4000, 6);
      expect(between[1] - between[0]).toBeCloseTo((before?.between[1] ?? 0) - (before?.between[0] ?? 0), 6);
      expect(seconds).toEqual(before?.seconds);
    });
  });
});

describe('how long the boil takes', () => {
  // Cups of 236.6 ml; sugar 200 g a cup, corn syrup 328 g a cup.
  const published = [
    { minutes: 40, lines: [['400 g', '328 g', '237 g']], target: 'celsius: [127, 129.4]' },
    { minutes: 20, lines: [['400 g', null, '237 g']], target: 'celsius: [121, 124]' },
  ] as const;
  it.each(published)('holds what books and pages say: $minutes min', ({ minutes, lines: [row], target }) => {
    const [sugar, syrup, water] = row;
    const made = recipeOf({
      ingredients: [
        ['granulated-sugar', sugar],
        ...(syrup === null ? [] : [['corn-syrup', syrup] as const]),
        ['water', water],
      ],
      target,
    });
    const { low, high } = boilSeconds(batchOf(made, seaLevel));
    expect(low / minute).toBeLessThan(minutes);
    expect(high / minute).toBeGreaterThan(minutes);
  });

  it('grows with the water that has to leave, not with the name of the recipe', () => {
    const wet = recipeOf({
      ingredients: [
        ['granulated-sugar', '500 g'],
        ['glucose-syrup', '420 g', 'de: 42'],
        ['water', '450 ml'],
      ],
      target: 'celsius: [123, 126]',
    });
    expect(boilSeconds(batchOf(wet, hall)).typical).toBeGreaterThan(2.4 * boilSeconds(batch).typical);
  });

  it('is replaced by what this kitchen showed', () => {
    const strong = { low: 900, typical: 1000, high: 1100 };
    expect(boilSeconds(batch, strong).high).toBeLessThan(boilSeconds(batch).typical);
    const lesson = { sd: 0.1, cooks: 4, date: null, by: 'cooks' } as const;
    const learned: Kitchen = {
      ...hall,
      learned: {
        ...nothingLearned,
        watts: { low: { ...lesson, value: 200 }, medium: { ...lesson, value: 800 } },
        minutes: { fold: { ...lesson, value: 30 } },
      },
    };
    const taught = batchOf(hillHall, learned);
    const pace = paceOf(taught);
    expect(pace?.boilWatts?.typical).toBe(800);
    expect(phaseSeconds(taught, 'fold', pace ?? {}).typical).toBe(30 * minute);
    expect(phaseSeconds(taught, 'boil', pace ?? {}).typical).toBeLessThan(
      phaseSeconds(taught, 'boil').typical,
    );
    expect(paceOf(batch)).toBeNull();
  });

  it('is not replaced by a setting that this stove does not have, nor by what says nothing of time', () => {
    const lesson: Lesson = { value: 800, sd: 0.1, cooks: 4, date: null, by: 'cooks' };
    const taught = (watts: Record<string, Lesson>) =>
      paceOf(batchOf(hillHall, { ...hall, learned: { ...nothingLearned, watts } }));
    expect(taught({ 'ring of the old stove': lesson })).toBeNull();
    expect(
      taught({ 'ring of the old stove': lesson, low: { ...lesson, value: 300 } })?.boilWatts?.typical,
    ).toBe(300);
  });

  it('waits the unmeasured minutes where nothing measures the middle', () => {
    const blind = batchOf(hillHall, { ...hall, thermometers: [] });
    expect(canMeasureMiddle(blind)).toBe(false);
    expect(phaseSeconds(blind, 'fold').low).toBeGreaterThanOrEqual(20 * minute);
    expect(phaseSeconds(blind, 'fold').high).toBeGreaterThanOrEqual(45 * minute);
  });
});

describe('several batches on one hob', () => {
  const meets = (one: Busy, other: Busy): boolean => one.from < other.to && other.from < one.to;

  it('never needs the same hands twice at once', () => {
    for (const name of recipeNames)
      for (const batches of [2, 3, mostBatches]) {
        const { busy } = runPlanOf(batchOf(recipe(name), hall), batches);
        for (const one of busy)
          for (const other of busy)
            if (one !== other && one.who === other.who)
              expect(meets(one, other), `${name}: ${one.who} ${one.batch} and ${other.batch}`).toBe(false);
      }
  });

  it('never needs one person twice at once who does it all, and says how much further apart that is', () => {
    for (const name of recipeNames)
      for (const kitchen of [hall, { ...hall, room: { celsius: 18, humidity: 0.75 } }]) {
        const plan = runPlanOf(batchOf(recipe(name), kitchen), 3, {}, 'alone');
        const { busy, apartSeconds, everySeconds } = plan;
        expect(new Set(busy.map(({ who }) => who))).toEqual(new Set(['alone']));
        const inOrder = busy.toSorted((one, other) => one.from - other.from);
        inOrder.forEach(({ from }, index) => {
          expect(from, name).toBeGreaterThanOrEqual(inOrder[index - 1]?.to ?? Number.NEGATIVE_INFINITY);
        });
        expect(everySeconds).toBe(apartSeconds.alone);
        expect(apartSeconds.alone).toBeGreaterThan(apartSeconds.several + 20 * minute);
        // Lit only when the batch before is wrapped: nobody leaves a pot on the heat to wrap.
        const lit = moment(plan, 'light', 2)?.at ?? Number.NaN;
        expect(lit, name).toBeGreaterThan(moment(plan, 'end', 1)?.at ?? Number.NaN);
        expect(plan.endsAt).toBe(moment(plan, 'end', 3)?.at);
      }
  });

  it('asks no helper of one who is alone', () => {
    expect(moment(runPlanOf(batch, 2, {}, 'alone'), 'second')).toBeUndefined();
    expect(moment(runPlanOf(batch, 2), 'second')).toBeDefined();
  });

  it('lights the hob for the next only when the pot of the one before has been poured and rinsed', () => {
    const plan = runPlanOf(batch, 3);
    for (const number of [2, 3]) {
      const light = moment(plan, 'light', number)?.at ?? Number.NaN;
      const poured = moment(plan, 'pour', number - 1)?.at ?? Number.NaN;
      expect(light - poured).toBeGreaterThan(10 * minute);
    }
  });

  it('pulls the first at the moment that was asked for and the others evenly after it', () => {
    const plan = runPlanOf(batch, 3);
    const pulls = [1, 2, 3].map((number) => moment(plan, 'pull', number)?.at ?? Number.NaN);
    expect(pulls[0]).toBe(0);
    expect(pulls[1]).toBeCloseTo(plan.everySeconds ?? Number.NaN, 6);
    expect(pulls[2]).toBeCloseTo(2 * (plan.everySeconds ?? Number.NaN), 6);
    expect(runPlanOf(batch, 1).everySeconds).toBeNull();
  });
});

describe('the moments of a demonstration', () => {
  it('has silence begin before the window opens, and the list before the silence', () => {
    const plan = runPlanOf(batch);
    const at = (id: string): number => moment(plan, id)?.at ?? Number.NaN;
    expect(at('list')).toBeLessThan(at('quiet'));
    expect(at('quiet')).toBeLessThan(at('off'));
    expect(at('off')).toBeLessThan(at('pour'));
    const window = moment(plan, 'off')?.between ?? [0, 0];
    expect(window[1] - window[0]).toBeGreaterThan(5 * minute);
  });

  it('brings a batch kept warm to the slab a few minutes before, sooner the cooler hands need it', () => {
    const { held } = runPlanOf(batch);
    expect(held.slabAt).toBeLessThan(-2 * minute);
    expect(held.slabAt).toBeGreaterThan(-12 * minute);
    expect(held.pouredBetween[1]).toBeLessThan(held.slabAt);
    expect(held.pouredBetween[1] - held.pouredBetween[0]).toBeCloseTo(30 * minute, 6);
    const children = runPlanOf(batchOf(hillHall, { ...hall, hands: 'children' })).held;
    expect(children.limitCelsius).toBeLessThan(held.limitCelsius);
    expect(children.slabAt).toBeLessThan(held.slabAt);
    // Gloves take it as warm as it is kept: it is turned out, folded once and measured.
    const gloved = runPlanOf(batchOf(hillHall, { ...hall, hands: 'gloved' })).held;
    expect(gloved.limitCelsius).toBe(gloved.keepCelsius[0]);
    expect(gloved.slabBetween[1]).toBe(-3 * minute);
  });

  it('wraps after a rest, and at once in damp air', () => {
    const dry = runPlanOf(batch);
    expect((moment(dry, 'wrap')?.at ?? 0) - (moment(dry, 'rest')?.at ?? 0)).toBe(20 * minute);
    const damp = runPlanOf(batchOf(hillHall, { ...hall, room: { celsius: 24, humidity: 0.8 } }));
    expect(damp.rest.damp).toBe(true);
    expect(moment(damp, 'rest')).toBeUndefined();
    expect(moment(damp, 'wrap')?.at).toBe(planned(damp.sheets[0] ?? runSheetOf(batch), 'wrap')?.startsAt);
  });

  it('knows what five and ten minutes late cost', () => {
    expect(runPlanOf(batch).late).toEqual([
      { seconds: 5 * minute, pullsAt: 0 },
      { seconds: 10 * minute, pullsAt: 5 * minute },
    ]);
  });

  it('is finite for every recipe in hot and cold rooms', () => {
    for (const name of recipeNames)
      for (const celsius of [2, 20, 44])
        for (const { at, between } of runPlanOf(
          batchOf(recipe(name), { ...hall, room: { celsius, humidity: null } }),
          2,
        ).moments) {
          expect(Number.isFinite(at), name).toBe(true);
          for (const end of between ?? []) expect(Number.isFinite(end), name).toBe(true);
        }
  });
});
