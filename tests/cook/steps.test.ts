import { describe, expect, it } from 'vitest';
import { blind, hall, Play, type RecipeName, recipeNames, seaside } from './play.js';

/** The steps shown to somebody who answers each with the word that ends it. */
const walk = (play: Play, lines: readonly string[]): readonly string[] =>
  lines.map((line) => {
    const shown = `${play.step}`;
    play.wait(30).type(line);
    return shown;
  });

describe('a plain cook, step by step', () => {
  it('leads the hall through every phase, one thing at a time', () => {
    const play = new Play({ kitchen: hall });
    const steps = walk(play, [
      ...['done', 'done', 'yes', 'done', 'done', 'done'],
      ...['heat medium', 'done', 'done', 'done', 'done', 'done', 'hard ball'],
      ...['done', 'done', 'done', 'yes', 'done'],
      ...['done', 'done', 'done', 'done', 'middle 44c', 'yes'],
      ...['done', 'done', 'done', 'done', 'done', 'done'],
      ...['done', 'done', 'done', 'done', 'done', 'done', 'done'],
    ]);
    expect(steps).toEqual([
      ...['mix.ready', 'mix.roles', 'heat.pause', 'mix.dry', 'mix.wet', 'mix.walls'],
      ...['dissolve.heat', 'dissolve.stir', 'dissolve.spoon-out'],
      ...['boil.start', 'boil.brush', 'boil.probe', 'boil.still'],
      ...['flavour.off', 'flavour.sink', 'flavour.add', 'pour.pause', 'pour.pour'],
      ...['fold.wait', 'fold.turn', 'fold.pot', 'fold.again', 'hands.measure', 'hands.pause'],
      ...['pull.grease', 'pull.stretch', 'pull.droop', 'pull.stiff', 'cut.rope', 'cut.cut'],
      ...['wrap.rest', 'wrap.wrap', 'wrap.weigh', 'wrap.serve', 'clean.pot', 'clean.tools', 'clean.hob'],
    ]);
    expect(play.step).toBe('over.end');
    expect(play.say).toMatch(/^Done: \d+ pieces/);
  });

  it('opens with all that must stand ready, how large the pot must be, and whether the stem is covered', () => {
    const play = new Play({ kitchen: hall });
    const items = play.advice.items.map((item) => play.words(item)).join('\n');
    expect(items).toMatch(/Pot of at least 3\.\d l.*Yours holds 4 l: it fits/);
    expect(items).toMatch(/\d\d mm deep at the end, enough for its 20 mm stem/);
    for (const thing of ['slab, buttered', 'scraper and scissors, both greased', 'cool water for hands'])
      expect(items).toContain(thing);
    for (const thing of ['Six cups', 'mitts, apron', 'wrapping squares', 'Butter for hands'])
      expect(items).toContain(thing);
    play.type('done');
    const roles = play.advice.items.map((item) => play.words(item)).join('\n');
    for (const role of ['Pot:', 'Slab:', 'Floor:', 'Scribe:', 'Who will pull?'])
      expect(roles).toContain(role);
  });

  it('asks for dry things first, then syrup, fat, water and salt, with the stove off', () => {
    const play = new Play().until('mix.dry');
    const items = () => play.advice.items.map((item) => play.words(item));
    expect(play.say).toContain('Stove off');
    expect(items()).toEqual(['500 g granulated sugar', '2 tbsp cornstarch (16 g)']);
    play.type('done');
    expect(play.say).toContain('Stove still off');
    expect(items().map((item) => item.replace(/^[\d/]+ \w+ /, ''))).toEqual([
      'glucose syrup',
      'unsalted butter',
      'water (150 g)',
      'salt (3 g)',
    ]);
  });

  it('asks to check a thermometer that was never checked, and takes the check', () => {
    const unchecked = seaside.thermometers.map((one) => ({
      ...one,
      iceShownCelsius: null,
      boilsShownCelsius: null,
    }));
    const play = new Play({ kitchen: { ...seaside, thermometers: unchecked } }).until('mix.thermometer');
    expect(play.why).toContain('100 °C');
    play.type('boils 102c');
    expect(play.step).not.toBe('mix.thermometer');
    expect(play.cook.batch.dial.toTrueCelsius(122)).toBeCloseTo(120, 0);
  });

  it.each([
    ['hill-hall-ginger-pull', ['boil.brush']],
    ['clear-pull', ['boil.lid', 'boil.lid-off']],
    ['molasses-pull', []],
    ['honey-pull', []],
    ['cream-pull', []],
  ] as const)('%s keeps sugar off the wall by %j', (name: RecipeName, care) => {
    const play = new Play({ recipe: name }).until('boil');
    const seen: string[] = [];
    while (play.step !== 'boil.still') {
      seen.push(`${play.step}`);
      play.wait(30).type('done');
    }
    expect(seen.filter((id) => /lid|brush/.test(id))).toEqual(care);
  });

  it.each(['molasses-pull', 'honey-pull', 'cream-pull'] as const)(
    '%s stirs late and is never told to stop',
    (name) => {
      const play = new Play({ recipe: name });
      const said: string[] = [];
      for (let turn = 0; turn < 14 && play.step !== 'boil.still'; turn += 1) {
        said.push(play.say);
        play.wait(20).type(play.advice.question === null ? 'done' : 'yes');
      }
      expect(said.join(' ')).not.toMatch(/Spoon out|nobody stirs|Lid on|brush/);
      expect(play.say).toContain('Stir slowly, along the bottom');
      expect(play.why).toContain('Unstirred it would scorch');
    },
  );

  it('tells when to stop stirring, and that it stays that way', () => {
    const play = new Play().until('dissolve.stir');
    expect(play.say).toContain('no grit');
    play.type('done');
    expect(play.say).toContain('Spoon out');
    play.type('done').until('boil.still');
    expect(play.say).toContain('Leave it still');
  });

  it('washes the wall only while the syrup is thin', () => {
    const play = new Play({ from: 'boil' }).reads(30, 115);
    expect(play.step).not.toBe('boil.brush');
    expect(play.type('done').step).not.toBe('boil.brush');
  });

  it('has the lid on for two and a half minutes by its timer, once, and not when the syrup is near', () => {
    const play = new Play({ recipe: 'clear-pull' }).until('boil.lid').type('done');
    expect(play.step).toBe('boil.lid-off');
    const put = play.cook.lidOn?.t ?? 0;
    expect(play.advice.timers).toContainEqual(
      expect.objectContaining({ id: 'lid', from: put, until: put + 150 }),
    );
    // Taking it off by hand is as good as saying so.
    expect(play.wait(150).type('lid off').step).not.toBe('boil.lid-off');
    // Put on early, in the dissolving: only the taking off is left.
    const early = new Play({ recipe: 'clear-pull' }).until('dissolve.stir').type('lid on').until('boil');
    expect(early.until('boil.lid-off').cook.lidOn?.on).toBe(true);
    const near = new Play({ recipe: 'clear-pull', from: 'boil' }).reads(30, 112, 122);
    expect(near.cook.nearSince).not.toBeNull();
    expect(near.step).not.toBe('boil.lid');
    // Nobody covers a batch whose wall is brushed, even where a lid lay on it.
    const brushed = new Play().until('dissolve.stir').type('lid on', 'lid off').until('boil.still');
    expect(brushed.cook.done['boil.lid']).toBeUndefined();
  });

  it('washes the wall below 108 °C, or three kelvin above where a batch begins to boil that begins later', () => {
    const brush = (play: Play) => play.until('boil.brush').advice.say.values as { beforeCelsius: number };
    const sea = new Play();
    const { startsCelsius } = sea.cook.batch.boil;
    expect(brush(sea).beforeCelsius).toBeCloseTo(Math.max(108, startsCelsius + 3), 6);
    const hill = new Play({ kitchen: hall });
    expect(hill.cook.batch.boil.startsCelsius + 3).toBeLessThan(108);
    expect(brush(hill).beforeCelsius).toBe(108);
    // Thin enough a kelvin below, not at it.
    const at = (celsius: number): string | null => {
      const play = new Play({ from: 'boil' }).reads(30, celsius);
      return play.step === 'boil.start' ? play.type('done').step : play.step;
    };
    const limit = brush(new Play()).beforeCelsius;
    expect(at(Math.ceil(limit) - 1)).toBe('boil.brush');
    expect(at(Math.ceil(limit) + 1)).not.toBe('boil.brush');
  });

  it('has the cup ready three kelvin before the pot comes off', () => {
    const play = new Play({ from: 'boil' }).reads(30, 112).until('boil.still');
    const { takeOffCelsius } = play.cook;
    expect(play.advice.next?.values).toMatchObject({ nearCelsius: takeOffCelsius - 3, takeOffCelsius });
  });

  it('does as the stove does at the moment of taking it off: always off the ring', () => {
    for (const stove of ['gas', 'coil', 'glass-ceramic', 'induction'] as const) {
      const play = new Play({ kitchen: { ...seaside, stove }, from: 'boil' }).reads(30, 112).reads(120, 124);
      expect(play.say).toContain('off the ring, onto the trivet');
      expect(play.why).toMatch(
        stove === 'gas' ? /Gas stops at once, but/ : stove === 'coil' ? /coil goes on heating/ : /./,
      );
    }
  });

  it('warns of what is in a step before the step is done', () => {
    const cautions = (play: Play) => play.advice.cautions.map(({ id }) => id);
    expect(cautions(new Play({ recipe: 'clear-pull' }).until('boil.lid-off'))).toContain('steam-lid');
    expect(cautions(new Play({ from: 'test' }).type('pot off'))).toEqual(
      expect.arrayContaining(['cold-test', 'cold-vessel', 'glowing-ring']),
    );
    expect(cautions(new Play().until('flavour.add'))).toContain('steam-flavour');
    expect(cautions(new Play().until('pour.pour'))).toContain('carry');
    expect(cautions(new Play().until('fold.pot'))).toContain('emptied-pot');
    expect(cautions(new Play().until('fold.turn'))).toContain('hot-middle');
    expect(cautions(new Play().until('cut.cut'))).toContain('scissors');
    expect(cautions(new Play().until('wrap.serve'))).toContain('serving');
  });

  it('calls the ring glowing only where it glows', () => {
    const glowing = (stove: 'gas' | 'coil') =>
      new Play({ kitchen: { ...seaside, stove }, from: 'test' })
        .type('pot off')
        .advice.cautions.some(({ id }) => id === 'glowing-ring');
    expect(glowing('coil')).toBe(true);
    expect(glowing('gas')).toBe(false);
  });

  it('puts every step of every recipe into words, on every thermometer', () => {
    for (const name of recipeNames)
      for (const kitchen of [hall, seaside, blind]) {
        const play = new Play({ recipe: name, kitchen });
        for (let turn = 0; turn < 60 && play.step !== 'over.end'; turn += 1) {
          const { say, why, items, question, cautions, next, watch } = play.advice;
          const said = [say, why, ...items, ...(question === null ? [] : [question.text])]
            .concat(cautions.flatMap(({ cause, consequence, response }) => [cause, consequence, ...response]))
            .concat(next ?? [], watch ?? [])
            .map((one) => play.words(one));
          expect(said.join(' ')).not.toMatch(/undefined|NaN|null|\[object|Infinity/);
          const before = `${play.phase} ${play.step}`;
          if (play.advice.waits !== null) play.forward();
          play.forward();
          expect(`${play.phase} ${play.step}`).not.toBe(before);
        }
        expect(play.step).toBe('over.end');
      }
  });
});
