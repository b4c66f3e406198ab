import { describe, expect, it } from 'vitest';
import { type TroubleName, troubleNames } from '../../source/cook/event.js';
import type { PhaseId } from '../../source/recipe/recipe.js';
import { blind, Play, seaside } from './play.js';

const phases: readonly PhaseId[] = [
  ...(['mix', 'dissolve', 'boil', 'test', 'flavour', 'pour'] as const),
  ...(['fold', 'pull', 'cut', 'wrap', 'clean', 'over'] as const),
];

/** What is told, one after the other, until the cook is shown again or nothing more can be done. */
const told = (play: Play): readonly string[] => {
  const said: string[] = [];
  for (let turn = 0; turn < 12 && `${play.step}`.startsWith('trouble.'); turn += 1) {
    said.push(play.say);
    if (play.advice.question !== null) play.type('no');
    else if (play.advice.canBeDone) play.type('done');
    else break;
  }
  return said;
};

const allOf = (name: TroubleName, phase: PhaseId, opening = {}) =>
  told(new Play({ ...opening, from: phase }).type(`trouble ${name}`)).join('\n');

describe.each(troubleNames)('trouble %s', (name) => {
  it.each(phases)('in the phase %s: says what to do first, ends, and leads back', (phase) => {
    const play = new Play({ from: phase });
    const before = play.step;
    play.wait(5).type(`trouble ${name}`);
    expect(play.advice.warnings[0]?.id).toBe(name);
    expect(play.advice.phase).toBe(phase);
    expect(play.say.length).toBeGreaterThan(5);
    expect(play.why).toMatch(/\.$/);
    expect(play.advice.troubles).toMatchObject([{ name }]);
    const said = told(play);
    expect(said.length).toBeGreaterThan(0);
    expect(new Set(said).size).toBe(said.length);
    play.type(`over ${name}`);
    expect(play.advice.troubles).toEqual([]);
    expect(play.warned).not.toContain(name);
    // Back in the cook: where it was, or at the pot's way back onto the ring.
    expect(play.phase).toBe(phase);
    const own = ['hands.measure', 'test.drop', 'flavour.sink', 'dissolve.back', 'boil.back', 'boil.heat'];
    expect([before, ...own]).toContain(play.step);
  });

  it('is answered with one key, and goes on being told', () => {
    const play = new Play({ from: 'boil' }).type(`trouble ${name}`);
    const say = play.say;
    play.type('ok');
    expect(play.warned).not.toContain(name);
    expect(play.say).toBe(say);
    expect(play.advice.troubles).toHaveLength(1);
  });
});

describe('troubles beside each other', () => {
  it('tells the most urgent first, then the other, then the cook', () => {
    const play = new Play({ from: 'boil' }).type('trouble grains', 'trouble foam');
    expect(play.say).toContain('slide the pot off');
    expect(play.advice.warnings.map(({ id }) => id).slice(0, 2)).toEqual(['foam', 'grains']);
    expect(play.query('over')).toContain('Which one is over?');
    play.type('over foam');
    expect(play.say).toContain('Leave it unstirred');
    play.type('over');
    expect(play.step).toBe('boil.start');
  });

  it('lets the call to take the pot off come before a trouble that is not urgent', () => {
    const play = new Play({ from: 'boil' }).reads(60, 118).type('trouble grains').reads(60, 124);
    expect(play.say).toContain('OFF THE HEAT');
  });

  it('keeps a pause point waiting, so that yes answers nothing but what is shown', () => {
    const play = new Play().until('hands.pause').type('trouble spill');
    expect(play.advice.question).toBeNull();
    expect(play.query('yes')).toContain('answers nothing');
    expect(play.type('over').advice.question?.id).toBe('hands.pause');
  });
});

describe('what the troubles say', () => {
  it('burn: water first, its timer beside the cook for 20 minutes', () => {
    const play = new Play({ from: 'boil' }).type('trouble burn');
    expect(play.say).toMatch(
      /^Cool running water on it now, for 20 minutes\. A helper: heat off, pot off the ring/,
    );
    const all = [play.say, ...play.advice.items.map((item) => play.words(item))].join('\n');
    expect(all).toMatch(
      /Rings, watch and sleeve off under the water, in the first minute\. Stuck sugar stays/,
    );
    expect(all).toMatch(
      /face, hand, joint, genitals, larger than their palm, white or leathery, any child, any doubt/,
    );
    expect(all).toMatch(/No ice, no fat, no cream/);
    const until = play.t + 20 * 60;
    expect(play.advice.timers[0]).toMatchObject({ id: 'trouble.burn', until, due: false });
    told(play);
    expect(play.step).toBe('boil.start');
    expect(play.advice.timers.some(({ id }) => id === 'trouble.burn')).toBe(true);
    play.t = until;
    expect(play.advice.timers.find(({ id }) => id === 'trouble.burn')?.due).toBe(true);
    play.type('done');
    expect(play.phase).toBe('boil');
  });

  it('thermometer: asks about glass first, and yes is glass', () => {
    const play = new Play({ from: 'boil' }).type('trouble thermometer');
    expect(play.advice.question).toMatchObject({ id: 'trouble.glass', safe: 'yes', kind: 'safety' });
    expect(play.query('done')).toContain('"done" does not answer it');
    play.happen({ kind: 'done', step: 'trouble.thermometer.1' });
    expect(play.advice.question?.id).toBe('trouble.glass');
    play.type('yes');
    expect(play.advice.troubles.map(({ name }) => name)).toEqual(['glass']);
    expect(play.say).toContain('The batch is discarded, all of it');
    told(play);
    expect(play.say).toContain('type stop');
    expect(play.type('stop').phase).toBe('clean');
  });

  it('thermometer without glass: the probe, then cold water alone', () => {
    const play = new Play({ from: 'boil' }).type('trouble thermometer', 'no');
    expect(play.say).toContain('off the bottom, deep enough, out of the foam');
    expect(told(play).join()).toContain('thermometer none');
    expect(play.type('over').step).toBe('boil.start');
  });

  it('does not lead on beside glass, fire or scorched sugar', () => {
    for (const name of ['glass', 'fire', 'scorched'] as const) {
      const play = new Play({ from: 'boil' }).type(`trouble ${name}`, 'pot off');
      told(play);
      expect(play.step).toMatch(`trouble.${name}`);
      expect(play.say).not.toContain('Pot back');
    }
  });

  it('scorched: no water before it is cool, by a thermometer or by time', () => {
    expect(allOf('scorched', 'boil')).toMatch(
      /Off the heat, and leave it[\s\S]*No water in until it reads below 90 °C\. No thermometer: 45 min for a full pot, 15 min for a film/,
    );
  });

  it('takes "done" for the act that it says: the pot is off, the knob is off, and both are asked back', () => {
    const play = new Play({ from: 'boil' })
      .type('heat medium')
      .reads(60, 110, 113)
      .type('trouble overflow', 'done');
    expect(play.cook.heat?.setting).toBe('off');
    play.type('done');
    expect(play.cook.potOn?.on).toBe(false);
    expect(play.phase).toBe('boil');
    play.type('done', 'done').wait(900).type('over overflow');
    expect(play.warned).toEqual([]);
    expect(play.step).toBe('boil.back');
    expect(play.type('done').say).toContain('Ring on again, low');
    expect(play.type('done').cook.heat?.setting).toBe('low');
    expect(play.step).toBe('boil.still');
    const undone = new Play({ from: 'boil' }).type('trouble foam', 'done', 'undo', 'over');
    expect(undone.advice.question?.id).toBe('unsettled.pot');
    expect(new Play({ from: 'fold' }).type('trouble spill', 'trouble power', 'done').cook.heat).toBeNull();
  });

  it('overflow: the knob first, nothing carried, no water', () => {
    expect(allOf('overflow', 'boil')).toMatch(/^Knob off first\.\nSlide .* sideways[\s\S]*No water/);
  });

  it('fire: the lid, no moving, no water, and everybody out', () => {
    const all = allOf('fire', 'boil');
    expect(all).toMatch(/^Slide the lid on\. Heat off\. Do not move the pan\. No water\./);
    expect(all).toContain('everybody out');
  });

  it('choking and allergy: the emergency number first', () => {
    for (const name of ['choking', 'allergy'] as const)
      expect(allOf(name, 'wrap')).toMatch(/^Call the emergency number and the trained aider, now/);
  });

  it('grains: by how this batch cares for its wall, and otherwise on the slab', () => {
    expect(allOf('grains', 'boil', { recipe: 'clear-pull' })).toContain('Lid on for two minutes');
    expect(allOf('grains', 'boil')).toContain('Damp long-handled brush');
    expect(allOf('grains', 'boil', { recipe: 'molasses-pull' })).toContain('Keep the lid off');
    expect(allOf('grains', 'pull')).toContain('cream candy');
  });

  it('stiff: the oven on the slab; in the pot it is past the window', () => {
    expect(allOf('stiff', 'pull')).toMatch(/oven at 95 °C, 2-4 minutes\.\nMeasure the middle again/);
    expect(allOf('stiff', 'boil')).not.toContain('oven');
  });

  it('power: no slab waits for it, the knob is turned off at the stove', () => {
    expect(allOf('power', 'boil')).toContain('Turn the knob off');
    expect(allOf('power', 'pull')).toContain('the slab needs no power');
  });

  it('water has three different answers: emptied pot, burnt sugar, overshot batch', () => {
    const emptied = new Play().until('fold.pot').say;
    expect(emptied).toMatch(/Hot tap water into the emptied pot, down the wall, face away\. Never cold/);
    const burnt = allOf('scorched', 'boil');
    expect(burnt).toMatch(/No water in until it reads below 90 °C/);
    const overshot = allOf('overshoot', 'boil');
    expect(overshot).toMatch(
      /below 140 °C: one adult, nobody within 2 m, boiling water one tablespoon at a time/,
    );
    expect(overshot).not.toContain('tap water');
  });

  it('no rescue with water above 140 °C, or where it is scorched as well', () => {
    const hot = new Play({ from: 'boil' }).reads(60, 120).reads(240, 145).type('trouble overshoot');
    expect(told(hot).join()).not.toContain('boiling water');
    const scorched = new Play({ from: 'boil' }).reads(60, 128).type('trouble scorched', 'trouble overshoot');
    expect(JSON.stringify(scorched.advice.troubles)).not.toContain('overshoot.rescue');
    expect(allOf('overshoot', 'pull')).toContain('No water now');
  });

  it('away: heat off or an adult; at the slab somebody keeps hands off', () => {
    expect(allOf('away', 'boil')).toMatch(/Heat off and pot off the ring, or one adult stays/);
    expect(allOf('away', 'fold')).toContain('keeps hands off the slab');
  });

  it('suggests the trouble that was meant', () => {
    expect(new Play().query('trouble fier')).toContain('Did you mean "trouble fire"?');
    expect(new Play().query('trouble')).toContain('foam, overflow');
  });

  it('works the same without a thermometer', () => {
    for (const name of troubleNames)
      expect(allOf(name, 'boil', { kitchen: blind }).length).toBeGreaterThan(5);
    expect(seaside.thermometers).toHaveLength(1);
  });
});
