import { describe, expect, it } from 'vitest';
import { hazards } from '../../source/cook/hazards/table.js';
import { blind, hall, Play, seaside } from './play.js';

const boiling = (kitchen = seaside) => new Play({ kitchen, from: 'boil' }).reads(60, 110, 113);

describe('silence while the pot is on', () => {
  it('warns after four minutes, and leaves with a word', () => {
    const play = boiling().wait(239);
    expect(play.warned).not.toContain('unattended');
    play.wait(1);
    expect(play.warned).toContain('unattended');
    const warning = play.advice.warnings[0];
    expect(warning?.response.map((one) => play.words(one)).join()).toContain(
      'Someone at the pot, or the heat off',
    );
    expect(play.words(warning?.evidence ?? { id: 'typed.nothing' })).toContain('4 min');
    expect(play.type('ok').warned).not.toContain('unattended');
    expect(play.wait(240).warned).toContain('unattended');
  });

  it('warns after one minute in the last 8 K', () => {
    const play = boiling().reads(60, 118).wait(59);
    expect(play.warned).not.toContain('unattended');
    expect(play.wait(1).warned).toContain('unattended');
  });

  it('is not heard of a feed, a pot off the ring, a ring that is off, or a pot not yet heated', () => {
    const fed = boiling();
    for (let turn = 0; turn < 5; turn += 1) fed.wait(60).feed(114 + turn / 10);
    expect(fed.warned).toContain('unattended');
    expect(boiling().type('pot off').wait(900).warned).not.toContain('unattended');
    expect(boiling().type('heat off').wait(900).warned).not.toContain('unattended');
    expect(new Play().until('dissolve.heat').wait(900).warned).not.toContain('unattended');
    expect(new Play().until('mix.wet').wait(900).warned).not.toContain('unattended');
    expect(new Play().until('fold').wait(900).warned).not.toContain('unattended');
  });

  it('gives a cook without a thermometer time until the next test is due', () => {
    const play = new Play({ kitchen: blind }).until('boil.still');
    const due = play.advice.timers.find(({ id }) => id === 'test-due')?.until ?? Number.NaN;
    expect(due).toBeGreaterThan(play.t + 240);
    play.t = due + 59;
    expect(play.warned).not.toContain('unattended');
    expect(play.wait(1).warned).toContain('unattended');
  });
});

describe('warnings by readings', () => {
  it('past the window: off the heat, and hovering at the limit raises it once', () => {
    const play = boiling();
    const [, top] = play.cook.batch.target.todayCelsius;
    const since: number[] = [];
    for (const over of [0.5, 1.5, 0.6, 1.4, 0.5, 1.6, -0.5, 1.2]) {
      play.reads(20, top + over);
      since.push(...play.advice.warnings.filter(({ id }) => id === 'past-window').map((one) => one.since));
    }
    expect(since.length).toBeGreaterThan(4);
    expect(new Set(since).size).toBe(1);
    expect(play.type('ok past-window').warned).not.toContain('past-window');
    expect(play.reads(20, top + 1.5).warned).not.toContain('past-window');
  });

  it('scorching: near 150 °C it is the most urgent of all, and does not chatter', () => {
    const play = boiling().reads(60, 125).reads(100, 149).reads(10, 151);
    expect(play.advice.warnings[0]?.id).toBe('scorch-near');
    expect(play.words(play.advice.warnings[0]?.response[0] ?? { id: 'typed.nothing' })).toContain(
      'No water in',
    );
    const { since } = play.advice.warnings[0] ?? { since: 0 };
    play.reads(10, 149.5, 150.2, 148.9).type('note hovering');
    expect(play.advice.warnings.find(({ id }) => id === 'scorch-near')?.since).toBe(since);
    expect(play.type('ok scorch-near', 'note a', 'note b').warned).not.toContain('scorch-near');
  });

  it('a runaway past the take-off stays answered as well', () => {
    const play = boiling().reads(60, 118, 124, 130);
    expect(play.warned).toContain('scorch-near');
    play.type('ok scorch-near', 'note a', 'note b', 'note c');
    expect(play.warned).not.toContain('scorch-near');
  });

  it('too fast near the end: turn down and stand there', () => {
    const play = boiling().reads(60, 119, 123.9);
    const fast = new Play({ from: 'boil' }).reads(60, 108, 113, 118);
    expect(fast.warned).toContain('overshoot-near');
    expect(fast.words(fast.advice.warnings[0]?.response[0] ?? { id: 'typed.nothing' })).toContain(
      'Turn the heat down',
    );
    expect(play.type('pot off').warned).not.toContain('overshoot-near');
  });

  it('boils while the stirring step is open: turn down; what then depends on the batch', () => {
    const stirring = (recipe: 'hill-hall-ginger-pull' | 'molasses-pull') => {
      const play = new Play({ recipe }).until('dissolve.stir').reads(300, 114);
      const warning = play.advice.warnings.find(({ id }) => id === 'boils-while-stirring');
      return { play, said: warning?.response.map((one) => play.words(one)).join(' ') };
    };
    const plain = stirring('hill-hall-ginger-pull');
    expect(plain.said).toMatch(/Turn the heat down.*Grit left.*spoon out/);
    expect(plain.play.type('done').warned).not.toContain('boils-while-stirring');
    expect(stirring('molasses-pull').said).toMatch(/Turn the heat down/);
    expect(stirring('molasses-pull').said).not.toContain('spoon out');
  });

  it('the middle too hot once hands are in it', () => {
    const play = new Play().until('pull.grease').type('middle 52c');
    expect(play.advice.warnings[0]).toMatchObject({
      id: 'middle-above-limit',
      level: 'now',
      signal: 'WARNING',
    });
    expect(play.step).toBe('hands.measure');
    expect(new Play().until('hands.measure').type('middle 80c').warned).toEqual([]);
  });

  it('a middle that hovers at the limit does not chatter, but the gate is exact', () => {
    const play = new Play().until('pull.grease');
    let raised = 0;
    for (const celsius of [45.3, 44.9, 45.2, 44.8, 45.3]) {
      play.wait(20).type(`middle ${celsius}c`);
      expect(play.step === 'hands.measure').toBe(celsius > 45);
      raised += play.warned.includes('middle-above-limit') ? 1 : 0;
    }
    expect(raised).toBe(0);
  });
});

describe('warnings by what was set', () => {
  it('heat while it is mixed cold', () => {
    const play = new Play().until('mix.dry').type('heat medium');
    expect(play.warned).toEqual(['heat-too-early']);
    expect(play.type('heat off').warned).toEqual([]);
  });

  it('the ring still on with nothing on it: a minute after the pour, answered with one key', () => {
    const play = new Play().until('pour.pour').type('heat medium', 'done');
    expect(play.warned).not.toContain('heat-left-on');
    expect(play.advice.changesAt).toBeLessThanOrEqual(play.t + 60);
    play.wait(60);
    expect(play.warned).toContain('heat-left-on');
    expect(play.type('ok').warned).not.toContain('heat-left-on');
    expect(play.type('note a').wait(300).warned).not.toContain('heat-left-on');
    const other = new Play().until('pour.pour').type('heat medium', 'done').wait(61);
    expect(other.type('heat off').warned).not.toContain('heat-left-on');
  });

  it('a lid on a batch that foams, never on a clear syrup', () => {
    const molasses = new Play({ recipe: 'molasses-pull' }).until('boil.still').type('lid on');
    expect(molasses.warned).toContain('lid-foams');
    expect(molasses.type('lid off').warned).not.toContain('lid-foams');
    expect(new Play({ recipe: 'clear-pull' }).until('boil.lid').type('lid on').warned).not.toContain(
      'lid-foams',
    );
  });
});

describe('warnings by what is in the kitchen', () => {
  it('a pot too small for the foam, from the beginning', () => {
    const small = { ...hall, pot: { litres: 1.5, diameterMillimetres: 160 } };
    const play = new Play({ kitchen: small }).type('done');
    expect(play.warned).toContain('pot-too-small');
    expect(play.type('ok pot-too-small', 'done').warned).not.toContain('pot-too-small');
  });

  it('a stem that the syrup will not cover, a thermometer far off in boiling water', () => {
    const wide = {
      ...hall,
      pot: { litres: 5, diameterMillimetres: 300 },
      thermometers: hall.thermometers.map((one) => ({ ...one, stemMillimetres: 80 })),
    };
    expect(new Play({ kitchen: wide }).type('done').warned).toContain('stem-uncovered');
    const play = new Play({ kitchen: seaside }).type('boils 108c');
    expect(play.warned).toContain('thermometer-suspect');
  });
});

describe('the warnings of the table', () => {
  it('come most urgent first', () => {
    const play = boiling().reads(60, 128).type('hard crack', 'trouble grains', 'trouble burn', 'heat high');
    const order = { now: 0, soon: 1, note: 2 };
    const levels = play.advice.warnings.map(({ level }) => order[level]);
    expect(levels).toEqual([...levels].sort());
    expect(levels.length).toBeGreaterThan(2);
  });

  it('each says what it rests on', () => {
    for (const hazard of hazards) expect(hazard.source.length, hazard.id).toBeGreaterThan(10);
  });
});
