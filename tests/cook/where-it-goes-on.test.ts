import { describe, expect, it } from 'vitest';
import { runSheetOf } from '../../source/batch/run-sheet.js';
import { pathAhead } from '../../source/cook/ahead.js';
import { afterTest } from '../../source/cook/evidence.js';
import { evidenceHazards, rateOfRise } from '../../source/cook/hazards/evidence.js';
import { provenBy, settle } from '../../source/cook/moves.js';
import { openCook } from '../../source/cook/open.js';
import { stepById } from '../../source/cook/phases/index.js';
import { isBehind, type Step } from '../../source/cook/phases/phase.js';
import { verdictOf } from '../../source/cook/verdict.js';
import type { View } from '../../source/cook/view.js';
import { begin } from '../../source/forecast/index.js';
import { hall, opened, Play } from './play.js';

const known = (id: string): Step => {
  const step = stepById(id);
  if (step === undefined) throw new Error(id);
  return step;
};

describe('where a cook goes on', () => {
  it('a syrup that fell short goes back to the boil, whoever calls the step done', () => {
    for (const [outcome, back] of [
      ['firm ball', 'test.back'],
      ['soft ball', 'test.back-far'],
    ] as const) {
      const { cook, t } = new Play().until('boil.still').type(outcome);
      expect(settle({ ...cook, done: { ...cook.done, [back]: t } }, t).candy).toEqual({ boil: 1 });
    }
  });

  it('given up stays given up, also when somebody goes back to the washing-up', () => {
    const play = new Play().until('boil.still').type('stop').until('over').type('at clean');
    expect(play.cook.stopped).toBe(true);
    // The syrup was never poured: it still stands in the pot.
    expect(play.cook.pouredAt).toBeNull();
    expect(play.type('at boil').cook.stopped).toBe(false);
  });

  it('a question that guards nobody may be passed by "done", one that does may not', () => {
    const { cook } = new Play().until('heat.pause');
    const pause = known('heat.pause');
    const idle: Step = {
      ...pause,
      question: { ...pause.question, safety: false } as Step['question'] & object,
    };
    const done = { ...cook, done: { ...cook.done, 'heat.pause': 1 } };
    expect(isBehind(done, idle)).toBe(true);
    expect(isBehind(done, pause)).toBe(false);
    expect(isBehind(cook, idle)).toBe(false);
  });

  it('a step of no phase proves nothing', () => {
    const { cook, t } = new Play();
    expect(provenBy(cook, { ...known('boil.still'), id: 'unknown' }, t)).toBe(cook);
  });

  it('a test from before the pot came off for testing has no verdict', () => {
    const { cook } = new Play().until('boil.still').type('soft ball', 'pot on');
    expect(verdictOf({ ...cook, enteredAt: {} })).toBeNull();
  });

  it('counts a trouble whose instructions are all told no longer, and goes on with the next', () => {
    const play = new Play().until('boil.still').type('trouble grains');
    for (let turn = 0; turn < 9 && play.step?.startsWith('trouble.'); turn += 1) play.type('done');
    expect(play.step).not.toMatch(/^trouble/);
    play.type('trouble spill');
    const before = play.step;
    expect(before).toMatch(/^trouble\.spill/);
    play.type('done');
    expect(play.step).not.toBe(before);
  });
});

describe('what a row of readings tells', () => {
  it('without a reading there is no rate, nor with a single one', () => {
    const play = new Play({ kitchen: hall, from: 'boil' });
    expect(rateOfRise(play.cook)).toBeNull();
    expect(rateOfRise(play.reads(30, 222).cook)).toBeNull();
    expect(rateOfRise(play.reads(60, 231).cook)).toBeCloseTo(5 / 60, 2);
  });

  it('a boil that does not get hotter is told, with how long', () => {
    const play = new Play({ kitchen: hall, from: 'boil' }).type('heat low');
    play.reads(60, ...Array.from({ length: 9 }, () => 224));
    expect(play.warned).toContain('stalled');
    const warning = play.advice.warnings.find(({ id }) => id === 'stalled');
    const evidence = warning?.evidence;
    if (evidence === null || evidence === undefined) throw new Error('says nothing of what it saw');
    const { seconds } = evidence.values as { seconds: number };
    expect(seconds).toBeGreaterThanOrEqual(360);
    expect(seconds).toBeLessThanOrEqual(540);
    play.type('heat high');
    const hazard = evidenceHazards.find(({ id }) => id === 'stalled');
    const view: View = {
      cook: play.cook,
      batch: play.cook.batch,
      now: play.t,
      belief: null,
      forecast: null,
      offTheHeat: false,
    };
    // Turned up: from here on nothing is known yet.
    expect(hazard?.evidence(view)).toBeNull();
  });

  it('the way ahead has the temperatures that the boil will cross, in their order, and no other', () => {
    const play = new Play({ kitchen: hall, from: 'boil' }).type('heat medium').reads(60, 222, 225, 228, 231);
    const path = pathAhead(play.cook, play.t, [112, 115, 118, 900]);
    expect(path.map(({ celsius }) => celsius)).toEqual([112, 115, 118]);
    const moments = path.map(({ t }) => t);
    expect(moments).toEqual([...moments].sort((a, b) => a - b));
    expect(moments[2]).toBeGreaterThan(play.t);
  });
});

describe('a list without its middle', () => {
  /** In the boil, and nothing says since when. */
  const misfit = (play: Play): Play => {
    play.cook = { ...play.cook, candy: { boil: 1 }, enteredAt: {}, leftAt: {} };
    return play;
  };

  it('asks for the next reading from now on', () => {
    const play = misfit(new Play({ kitchen: hall, from: 'boil' }));
    expect(play.advice.nextReadingSeconds).toBe(120);
  });

  it('is neither ahead of nor behind its run sheet by what it does not know', () => {
    const play = new Play({ kitchen: hall, from: 'boil' });
    const sheet = runSheetOf(play.cook.batch);
    play.cook = openCook({ ...opened({ kitchen: hall, from: 'boil' }), runSheet: sheet });
    misfit(play);
    const planned = sheet.phases.find(({ phase }) => phase === 'boil')?.startsAt ?? Number.NaN;
    expect(play.advice.drift?.seconds).toBeCloseTo(planned - play.cook.t, 6);
  });

  it('does not call a first reading too hot for a boil whose beginning it does not know', () => {
    const joined = misfit(new Play({ kitchen: hall, from: 'boil' }));
    joined.cook = { ...joined.cook, enteredAt: { dissolve: 0 } };
    expect(joined.reads(30, 250).cook.doubt).toBeNull();
  });
});

describe('tests in a row', () => {
  it('are counted only while the pot stays off the ring', () => {
    const tested = new Play().until('boil.still').type('hard ball').cook;
    expect(tested.lastTest?.inARow).toBe(1);
    expect(afterTest(tested, 'hard ball', tested.t + 30).lastTest?.inARow).toBe(2);
    expect(afterTest(tested, 'unsure', tested.t + 30).lastTest?.inARow).toBe(1);
    expect(afterTest(tested, 'soft ball', tested.t + 30).lastTest?.inARow).toBe(0);
    for (const potOn of [null, { on: true, t: tested.t, said: true }])
      expect(afterTest({ ...tested, potOn }, 'hard ball', tested.t + 30).lastTest?.inARow).toBe(1);
  });

  it('that only dissolve, before anything was seen of the boil, leave the take-off where it is', () => {
    const { cook } = new Play({ kitchen: hall, from: 'boil' }).reads(30, 222);
    const unseen = { ...cook, estimate: begin(cook.hob), lastReading: null };
    expect(afterTest(unseen, 'dissolves', cook.t + 5).takeOffCelsius).toBe(cook.takeOffCelsius);
  });
});
