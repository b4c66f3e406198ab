import { describe, expect, it } from 'vitest';
import type { PhaseId } from '../../source/recipe/recipe.js';
import { phaseIds } from '../../source/recipe/recipe.js';
import { Play, seaside } from './play.js';

const states = (play: Play) =>
  Object.fromEntries(
    play.advice.trail
      .filter(({ state }) => state === 'now' || state === 'also')
      .map((one) => [one.phase, one.state]),
  );
const cooking = (phase: PhaseId): Play =>
  phase === 'test' ? new Play().until('boil.still').type('pot off') : new Play().until(phase);
/** Hands in the candy: the space bar alone, from the gate to the cut. */
const pullOne = (play: Play) => {
  for (const line of ['done', 'done', 'done', 'done']) play.wait(60).type(line);
};

describe('portions', () => {
  it('cut one while the rest is pulled: the headline is the earliest phase with candy left', () => {
    const play = new Play().until('pull').type('portion 3');
    expect(states(play)).toEqual({ pull: 'now' });
    pullOne(play);
    expect(states(play)).toEqual({ pull: 'now', cut: 'also' });
    expect(play.step).toBe('pull.grease');
    expect(play.why).toContain('keep the others warm');
    expect(play.words(play.advice.next ?? { id: 'typed.nothing' })).toContain('cut');
    pullOne(play);
    expect(play.cook.candy).toEqual({ pull: 1, cut: 2 });
    pullOne(play);
    expect(states(play)).toEqual({ cut: 'now' });
    expect(play.step).toBe('cut.rope');
    expect(play.type('done', 'done').phase).toBe('wrap');
  });

  it('its caution stays: what is still to be pulled is still measured', () => {
    const play = new Play().until('pull').type('portion 3');
    pullOne(play);
    play.type('trouble stiff', 'over');
    expect(play.phase).toBe('pull');
    expect(play.step).toBe('hands.measure');
    expect(play.advice.cautions.map(({ id }) => id)).toContain('hot-middle');
  });

  it('"at cut" takes one portion on, not all of them', () => {
    const play = new Play().until('pull').type('portion 3', 'at cut');
    expect(play.cook.candy).toEqual({ pull: 2, cut: 1 });
    expect(play.phase).toBe('pull');
  });

  it('nobody can pull any more: all that is left becomes softer candy', () => {
    const play = new Play().until('pull').type('portion 3');
    pullOne(play);
    play.type('done', 'arms out');
    expect(play.say).toContain('Softer candy, not a failure');
    expect(play.type('done').cook.candy).toEqual({ cut: 3 });
  });

  it('can be said before the pull, and again', () => {
    const play = new Play().type('portion 2').until('pull');
    expect(play.cook.candy).toEqual({ pull: 2 });
    expect(play.type('portion 4').cook.candy).toEqual({ pull: 4 });
    expect(play.query('portion 0')).toContain('1 to 50');
  });
});

describe('the pull', () => {
  it('reminds to re-grease every three minutes, and to test the droop', () => {
    const play = new Play().until('pull.stretch');
    const start = play.cook.done['pull.grease'] ?? Number.NaN;
    const regrease = () => play.advice.timers.find(({ id }) => id === 'regrease');
    expect(regrease()).toMatchObject({ until: start + 180, due: false });
    play.t = start + 181;
    expect(regrease()).toMatchObject({ until: start + 180, due: true });
    play.t = start + 241;
    expect(regrease()).toMatchObject({ until: start + 360, due: false });
    play.t = start + 300;
    expect(play.advice.timers.find(({ id }) => id === 'droop-test')?.due).toBe(true);
  });

  it('pulls on while it droops, and is done when it holds and is too tough', () => {
    const play = new Play().until('pull.droop').type('droops');
    expect(play.say).toContain('it still droops');
    play.wait(120).type('done');
    expect(play.step).toBe('pull.droop');
    play.type('holds');
    expect(play.step).toBe('pull.stiff');
    expect(play.say).toContain('too tough to pull');
    expect(play.type('done').phase).toBe('cut');
  });

  it('ends honestly when arms give out', () => {
    const play = new Play().until('pull.droop').type('droops', 'arms out');
    expect(play.say).toContain('not a failure');
    expect(play.type('done').phase).toBe('cut');
    // What holds its shape is simply done.
    expect(new Play().until('pull.droop').type('holds', 'arms out').phase).toBe('cut');
  });

  it('needs nothing but "done" from the gate to the cut pieces', () => {
    const play = new Play().until('pull');
    for (let turn = 0; turn < 6; turn += 1) play.wait(60).type('done');
    expect(play.phase).toBe('wrap');
  });
});

describe('pieces from what is really left', () => {
  it('follows what was weighed and counted', () => {
    const play = new Play().until('cut.cut');
    const planned = play.cook.batch.yield;
    expect(play.say).toContain(`Cut every ${planned.cutMillimetres.toFixed(0)} mm`);
    play.type('weigh 350g');
    expect(play.say).toContain('about 50 pieces');
    expect(play.type('weigh 100g of 10').say).toContain('about 35 pieces');
    play.until('wrap.wrap').type('count 40');
    expect(play.say).toContain('54 squares for about 40 pieces');
    expect(play.until('over').say).toContain('40 pieces');
  });
});

describe('at PHASE', () => {
  it.each(phaseIds)('joins late at %s with its own safety questions still asked', (phase) => {
    const play = new Play().type(`at ${phase}`);
    expect(play.phase).toBe(phase);
    const gate: Partial<Record<PhaseId, string>> = {
      dissolve: 'heat.pause',
      boil: 'heat.pause',
      test: 'heat.pause',
      flavour: 'heat.pause',
      pour: 'pour.pause',
      pull: 'hands.measure',
      cut: 'hands.measure',
    };
    if (gate[phase] !== undefined) expect(play.step).toBe(gate[phase]);
  });

  it('takes a batch that was poured earlier as poured', () => {
    const play = new Play().type('at fold');
    expect(play.cook.pouredAt).toBe(play.t);
    expect(play.advice.typing.bare).toBe('middle');
    expect(play.advice.offTheHeat).toBe(false);
  });

  it('goes back, and what has to be done again is open again', () => {
    const play = new Play().until('pour.pour').type('at boil');
    expect(play.phase).toBe('boil');
    expect(play.cook.pouredAt).toBeNull();
    const again = new Play().until('fold').type('at boil', 'hard ball').until('pour');
    expect(again.advice.question?.id).toBe('pour.path');
    expect(again.type('yes').step).toBe('pour.pour');
  });

  it('returns to where it is without a change', () => {
    const play = new Play().until('boil.start');
    const { step, say } = play;
    play.type('at boil');
    expect([play.step, play.say]).toEqual([step, say]);
  });

  it('opened with --from: what is before counts as confirmed, the middle is still measured', () => {
    expect(new Play({ from: 'boil' }).step).toBe('boil.start');
    expect(new Play({ from: 'pour' }).step).toBe('pour.path');
    expect(new Play({ from: 'pull' }).step).toBe('hands.measure');
    expect(new Play({ from: 'pull' }).type('middle 40c').step).toBe('pull.grease');
    expect(new Play({ from: 'fold' }).advice.from).toBe('fold');
  });
});

describe('given up', () => {
  it.each(['dissolve', 'boil', 'test', 'flavour', 'pour'] as const)(
    'with a full pot in %s: heat off, then no water before it is cool',
    (phase) => {
      for (const play of [new Play({ from: phase }), cooking(phase)]) {
        play.wait(30).type('stop');
        expect(play.phase).toBe('clean');
        if (play.step === 'clean.heat-off') play.type('heat off');
        const stopped = play.cook.enteredAt.clean ?? 0;
        expect(play.step).toBe('clean.cool');
        expect(play.say).toContain('no water in');
        expect(play.query('done')).toMatch(/^Not yet: .* Until then no water in/);
        play.wait(600).type('95c');
        expect(play.step).toBe('clean.cool');
        const read = new Play({ from: phase }).wait(30).type('stop');
        if (read.step === 'clean.heat-off') read.type('heat off');
        read.wait(1500).type('88c');
        expect(read.step).toBe('clean.pot');
        expect(read.say).toContain('hot water');
        play.t = stopped + 45 * 60;
        expect(play.advice.question).toMatchObject({ id: 'clean.cool', safe: 'no' });
        expect(play.query('done')).toContain('"done" does not answer it');
        expect(play.type('yes').step).toBe('clean.pot');
        expect(play.until('over').say).toContain('given up');
      }
    },
  );

  it('before any heat there is nothing hot to wait for', () => {
    const play = new Play().until('mix.wet').type('stop');
    expect(play.step).toBe('clean.pot');
  });

  it('keeps a burn open, and lets the troubles of the candy go', () => {
    const play = new Play({ from: 'boil' }).type('trouble burn', 'trouble grains', 'stop');
    expect(play.advice.troubles.map(({ name }) => name)).toEqual(['burn']);
  });

  it('can be taken back', () => {
    const play = new Play({ from: 'boil' }).type('stop');
    expect(play.type('undo').phase).toBe('boil');
    expect(new Play({ from: 'boil' }).type('stop', 'at boil').step).toBe('boil.start');
  });
});

describe('done', () => {
  it('for a step already done changes nothing', () => {
    const play = new Play().until('boil.still');
    const before = { ...play.advice, typing: null, now: 0 };
    for (const step of ['mix.ready', 'dissolve.stir', 'boil.start']) play.happen({ kind: 'done', step });
    expect({ ...play.advice, typing: null, now: 0 }).toEqual(before);
  });

  it('in a later phase proves the earlier ones, and no pause point', () => {
    const play = new Play({ kitchen: seaside });
    play.happen({ kind: 'done', step: 'dissolve.spoon-out' });
    expect(play.advice.question?.id).toBe('heat.pause');
    expect(play.type('yes').phase).toBe('boil');
    play.happen({ kind: 'done', step: 'fold.turn' });
    expect(play.step).toBe('fold.pot');
    expect(play.cook.pouredAt).not.toBeNull();
  });

  it('of a step that no program knows is kept and ignored', () => {
    const play = new Play();
    const { step } = play;
    play.happen({ kind: 'done', step: 'from.a-newer-program' });
    play.happen({ kind: 'answer', question: 'from.a-newer-program', answer: 'yes' });
    expect(play.step).toBe(step);
    expect(play.events).toHaveLength(3);
    expect(Object.keys(play.cook.answers)).toEqual([]);
  });
});
