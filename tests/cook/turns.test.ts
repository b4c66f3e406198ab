import { describe, expect, it } from 'vitest';
import { expectedBoilSeconds } from '../../source/cook/expected.js';
import { enter, moveOn, moveTo, poured, provenBy, settle } from '../../source/cook/moves.js';
import { nextTestDue } from '../../source/cook/next-test.js';
import { hobOf, openCook } from '../../source/cook/open.js';
import { boilOff } from '../../source/cook/phases/boil.js';
import { allSteps, stepById } from '../../source/cook/phases/index.js';
import type { Step } from '../../source/cook/phases/phase.js';
import type { Thermometer } from '../../source/kitchen/kitchen.js';
import type { PhaseId } from '../../source/recipe/recipe.js';
import { blind, hall, opened, Play, seaside } from './play.js';

const known = (id: string): Step => {
  const step = stepById(id);
  if (step === undefined) throw new Error(id);
  return step;
};

const slept = (play: Play, sure = true): Play => play.wait(1200).happen({ kind: 'gap', seconds: 1200, sure });

describe('a gap', () => {
  it.each(['dissolve', 'boil', 'test', 'flavour', 'pour'] as const)(
    'in the phase %s asks for the pot, whatever was said of the ring',
    (from) => {
      expect(slept(new Play({ from })).step).toBe('gap.look');
      const cold = new Play({ from }).type('heat off');
      expect(slept(cold).step).toBe('gap.look');
    },
  );

  it.each(['mix', 'fold', 'pull', 'cut', 'wrap', 'clean'] as const)(
    'in the phase %s asks for nothing while no ring is on',
    (from) => {
      expect(slept(new Play({ from })).step).not.toBe('gap.look');
      expect(slept(new Play({ from }).type('heat off')).step).not.toBe('gap.look');
    },
  );

  it('before the mix is done asks where a ring was on, but not once the syrup is poured or given up', () => {
    expect(slept(new Play().type('heat low')).step).toBe('gap.look');
    expect(slept(new Play({ from: 'fold' }).type('heat low')).step).not.toBe('gap.look');
    expect(slept(new Play({ from: 'boil' }).type('heat low', 'stop')).step).not.toBe('gap.look');
  });

  it('is sure only when each was, and leaves no reading to tell a rate from', () => {
    for (const [one, other] of [
      [true, true],
      [true, false],
      [false, true],
    ] as const) {
      const play = slept(slept(new Play({ from: 'boil' }).reads(60, 110, 111, 112), one), other);
      expect(play.cook.gap).toEqual({ seconds: 2400, sure: one && other });
      expect(play.cook).toMatchObject({ readBefore: [], lastReading: null, readingsTaken: 0 });
    }
  });

  it('is urgent while the pot may stand on the ring, and says so in words and from afar', () => {
    const on = slept(new Play({ from: 'boil' })).advice;
    expect(on).toMatchObject({
      urgent: true,
      shout: { id: 'gap.look.shout' },
      why: { values: { on: true } },
    });
    expect(on.question?.text.id).toBe('gap.ask');
    const off = slept(new Play({ from: 'boil' }).type('pot off')).advice;
    expect(off).toMatchObject({ urgent: false, why: { values: { on: false } } });
  });
});

describe('moving on', () => {
  const three = () => new Play({ from: 'pull' }).type('portion 3');

  it('takes one portion where candy can be divided, and all of it from slab and pot', () => {
    const { cook, t } = three();
    expect(moveTo(cook, 'cut', t).candy).toEqual({ pull: 2, cut: 1 });
    expect(moveTo({ ...cook, candy: { pull: 1 } }, 'cut', t).candy).toEqual({ cut: 1 });
    expect(moveTo({ ...cook, candy: { fold: 3 } }, 'cut', t).candy).toEqual({ cut: 3 });
    expect(moveTo({ ...cook, candy: { cut: 3 } }, 'pull', t).candy).toEqual({ pull: 3 });
    expect(moveTo({ ...cook, candy: { cut: 3 } }, 'boil', t).candy).toEqual({ boil: 3 });
  });

  it('leaves a phase when its last portion goes, and begins the next portion anew until then', () => {
    const { cook } = three();
    const told = { ...cook, droops: false, armsOut: true, done: { ...cook.done, 'pull.grease': 5 } };
    const first = moveOn(told, 'cut', 100, 'one');
    expect(first.leftAt.pull).toBeUndefined();
    expect(first).toMatchObject({ enteredAt: { pull: 100, cut: 100 }, droops: null, armsOut: false });
    expect(first.done['pull.grease']).toBeUndefined();
    const second = moveOn(first, 'cut', 200, 'one');
    expect(second.enteredAt).toMatchObject({ pull: 200, cut: 100 });
    const last = moveOn({ ...second, armsOut: true }, 'cut', 300, 'one');
    expect(last).toMatchObject({
      candy: { cut: 3 },
      leftAt: { pull: 300 },
      enteredAt: { cut: 100 },
      armsOut: true,
    });
  });

  it('forgets that the pot should come off when the boil begins again, and only then', () => {
    const { cook } = new Play({ from: 'boil' });
    const asked = { ...cook, offSince: 50, offBy: 'reading' as const };
    expect(enter(asked, 'test', 60)).toMatchObject({ offSince: 50, offBy: 'reading' });
    expect(enter(asked, 'boil', 60)).toMatchObject({ offSince: null, offBy: null });
  });

  it('goes on from everywhere but the test whatever the last test said', () => {
    const play = new Play().until('boil.still').type('soft ball', 'at wrap');
    const done = Object.fromEntries(allSteps.map(({ id }) => [id, play.t]));
    expect(settle({ ...play.cook, done }, play.t).candy).toEqual({ over: 1 });
  });

  it('says of a pour only that it was poured: what is open of ring and lid stays open', () => {
    const { cook } = new Play({ from: 'pour' });
    const open = poured({ ...cook, unsettled: ['heat', 'pour', 'lid'], gap: { seconds: 9, sure: true } }, 70);
    expect(open).toMatchObject({ unsettled: ['heat', 'lid'], gap: null, pouredAt: 70 });
    expect(poured({ ...open, middle: { seq: 1, t: 80, celsius: 50 } }, 90)).toMatchObject({
      pouredAt: 70,
      middle: { celsius: 50 },
    });
  });

  it('given up and over is still given up', () => {
    const play = new Play({ from: 'boil' }).type('stop');
    expect(moveTo(play.cook, 'over', play.t).stopped).toBe(true);
    expect(moveTo(play.cook, 'fold', play.t).stopped).toBe(false);
  });

  it('a later step proves plain steps before it, and no question, no act and nothing that only the boil can end', () => {
    const play = new Play({ from: 'boil' });
    const { done } = provenBy({ ...play.cook, done: { 'boil.brush': 3 } }, boilOff, 90);
    expect(done['boil.start']).toBe(90);
    // Done before, and when.
    expect(done['boil.brush']).toBe(3);
    for (const id of Object.keys(done)) {
      const step = known(id);
      expect([id, step.act ?? false, step.question ?? null, step.endless ?? false]).toEqual([
        id,
        false,
        null,
        false,
      ]);
    }
    const asked = provenBy(play.cook, known('pour.path'), 90);
    expect(asked).toBe(play.cook);
    // Those of an earlier phase prove nothing of this one.
    const earlier = new Play({ from: 'pull' }).cook;
    expect(provenBy(earlier, known('boil.brush'), 90)).toBe(earlier);
  });
});

describe('the first cold-water test without a thermometer', () => {
  it('is due half way through the boil that is expected', () => {
    const play = new Play({ kitchen: blind }).until('boil.still');
    const { cook } = play;
    const half = expectedBoilSeconds(cook.batch) / 2;
    expect(nextTestDue(cook)).toBe((cook.enteredAt.boil ?? Number.NaN) + half);
  });

  it('after one is due by what it felt like: from the test, or from when the pot went back', () => {
    const { cook } = new Play({ kitchen: blind }).until('boil.still').type('firm ball');
    const tested = cook.lastTest?.t ?? Number.NaN;
    expect(nextTestDue({ ...cook, potOn: null })).toBe(tested + 75);
    expect(nextTestDue({ ...cook, potOn: { on: false, t: tested + 40, said: true } })).toBe(tested + 75);
    expect(nextTestDue({ ...cook, potOn: { on: true, t: tested + 40, said: true } })).toBe(tested + 115);
  });
});

describe('a cook as it is opened', () => {
  const dial = seaside.thermometers[0] as Thermometer;
  const lag = (...thermometers: readonly Thermometer[]): number =>
    hobOf(openCook(opened({ kitchen: { ...seaside, thermometers } })).batch).dialLagSeconds;

  it('waits for the thermometer of the pot, not for the one of the middle', () => {
    expect(lag({ ...dial, kind: 'dial' })).toBe(12);
    expect(lag({ ...dial, kind: 'digital' })).toBe(4);
    expect(lag({ ...dial, kind: 'glass' })).toBe(10);
    expect(lag({ ...dial, kind: 'infrared' })).toBe(1);
    const probe = { ...dial, id: 'probe', kind: 'digital' as const, use: 'middle' as const };
    expect(lag(probe, { ...dial, kind: 'glass', use: 'pot' })).toBe(10);
    expect(lag()).toBe(12);
  });

  it('warms fat and starch too, from the room’s temperature', () => {
    const hob = hobOf(openCook(opened({ recipe: 'cream-pull', kitchen: hall })).batch);
    expect(hob.otherGrams).toBeGreaterThan(10);
    expect(hob.celsiusAtStart).toBe(17);
    const unsaid = { ...hall, room: { celsius: null, humidity: null } };
    expect(hobOf(openCook(opened({ kitchen: unsaid })).batch).celsiusAtStart).toBe(20);
    expect(hob.learnedCarryOverKelvin).toBeNull();
  });

  it.each([
    [null, []],
    ['mix', []],
    ['boil', ['mix', 'dissolve']],
    ['fold', ['mix', 'dissolve', 'boil', 'test', 'flavour', 'pour']],
  ] as const)('in %s has left what comes before it', (from, left) => {
    const cook = openCook({ ...opened({ from: from as PhaseId | null }), t: 7 });
    expect(Object.entries(cook.leftAt)).toEqual(left.map((phase) => [phase, 7]));
  });

  it('knows of nothing yet', () => {
    const cook = openCook(opened());
    expect(cook).toMatchObject({
      rehearsal: false,
      checks: { iceShownCelsius: null, boilsShownCelsius: null },
      readBefore: [],
      unsettled: [],
      voided: [],
      troubles: [],
      armsOut: false,
      stopped: false,
      portions: 1,
    });
    expect(openCook({ ...opened(), seed: 0 }).rehearsal).toBe(true);
  });
});

describe('cleaning up', () => {
  it('after a batch given up before any heat waits for nothing', () => {
    expect(new Play().until('mix.dry').type('stop').until('clean').step).toBe('clean.pot');
  });

  it('of a pot that was heated waits until it reads cool, by a reading taken since', () => {
    const play = new Play({ from: 'boil' }).type('heat low').reads(30, 80).type('stop');
    expect(play.step).toBe('clean.heat-off');
    play.type('heat off');
    // It read 80 before it was given up.
    expect(play.step).toBe('clean.cool');
    expect(play.reads(60, 90.2).step).toBe('clean.cool');
    expect(play.reads(60, 89.5).step).toBe('clean.pot');
    expect(play.advice.say.values).toMatchObject({ full: true });
  });

  it('unread says how long to wait, counting down 45 minutes', () => {
    const play = new Play({ from: 'boil', kitchen: blind }).type('heat low', 'stop', 'heat off');
    const since = play.cook.enteredAt.clean ?? Number.NaN;
    expect(play.advice.timers).toContainEqual(
      expect.objectContaining({ id: 'full-pot', until: since + 2700 }),
    );
    const wait = () => (play.advice.say.values as { waitSeconds: number }).waitSeconds;
    expect(wait()).toBe(since + 2700 - play.t);
    play.wait(1000);
    expect(wait()).toBe(since + 2700 - play.t);
  });

  it('of an emptied pot warns of it, unless it stands in water already; of a full one not', () => {
    const cautions = (play: Play) => play.advice.cautions.map(({ id }) => id as string);
    const emptied = new Play({ from: 'clean' });
    expect(emptied.step).toBe('clean.pot');
    expect(cautions(emptied)).toContain('emptied-pot');
    expect(emptied.advice.say.values).toMatchObject({ full: false });
    const soaked = new Play({ from: 'clean' });
    soaked.cook = { ...soaked.cook, done: { 'fold.pot': 1 } };
    expect(cautions(soaked)).not.toContain('emptied-pot');
  });

  it('asks for the ring to be turned off where it is on, or was never spoken of under a hot pot', () => {
    expect(new Play({ from: 'clean' }).type('heat low').step).toBe('clean.heat-off');
    expect(new Play({ from: 'clean' }).type('heat off').step).toBe('clean.pot');
    expect(new Play({ from: 'boil' }).type('stop').step).toBe('clean.heat-off');
    expect(new Play({ from: 'fold' }).type('stop').step).toBe('clean.pot');
    const glass = new Play({ from: 'clean', kitchen: { ...seaside, stove: 'glass-ceramic' } }).until(
      'clean.hob',
    );
    expect(glass.advice.say.values ?? glass.advice.why.values).toEqual({ stove: 'glass-ceramic' });
  });
});
