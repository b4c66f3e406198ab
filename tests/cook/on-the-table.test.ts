import { describe, expect, it } from 'vitest';
import type { Doubt } from '../../source/cook/cook.js';
import { byUrgency } from '../../source/cook/hazards/hazard.js';
import { afterMiddle, fromDial } from '../../source/cook/middle.js';
import { blind, hall, Play, type RecipeName, recipeNames, seaside } from './play.js';

const names = (play: Play) => play.advice.items.map(({ values }) => (values as { name: string }).name);
const clock = (play: Play, id: string) => play.advice.timers.find((one) => one.id === id);

describe('into the cold pot', () => {
  const inTheOrder = (recipe: RecipeName) => {
    const play = new Play({ recipe }).until('mix.dry');
    const dry = names(play);
    const said = [play.say, play.why];
    play.type('done');
    return { dry, said, wet: names(play), cook: play.cook };
  };

  it.each(recipeNames)(
    '%s: everything of the mix once, dry things before wet ones, water near the end',
    (name) => {
      const { dry, wet, cook } = inTheOrder(name);
      const wanted = cook.batch.recipe.ingredients.filter(({ phase }) => phase === 'mix');
      expect([...dry, ...wet].sort()).toEqual(wanted.map((one) => one.name).sort());
      const water = (one: string) => wanted.find((other) => other.name === one)?.composition.water ?? 0;
      expect(dry.every((one) => water(one) < 0.1)).toBe(true);
      expect(dry).toContain('granulated sugar');
      // Syrups, fat, water, salt.
      const role = (one: string) => wanted.find((other) => other.name === one)?.role;
      const rank = wet.map((one) => {
        if (role(one) === 'salt') return 3;
        if (role(one) === 'fat') return 1;
        return water(one) >= 0.5 ? 2 : water(one) >= 0.1 ? 0 : 3;
      });
      expect(rank).toEqual([...rank].sort());
    },
  );

  it('starch goes dry into the sugar', () => {
    const { dry, said } = inTheOrder('hill-hall-ginger-pull');
    expect(dry).toContain('cornstarch');
    expect(said).toEqual([
      'Stir the dry things together in the cold pot. Stove off.',
      'Starch mixed dry into sugar does not clump later.',
    ]);
    expect(inTheOrder('clear-pull').said).toEqual([
      'Dry first, into the cold pot. Stove off.',
      'Dry on the bottom, wet on top: every grain is wetted through.',
    ]);
  });

  it('a thermometer that nobody checked is held in boiling water, once; one that was, or none, is not', () => {
    const asks = (play: Play) => {
      for (let turn = 0; turn < 4; turn += 1) {
        if (play.step === 'mix.thermometer') return true;
        if (play.step === 'heat.pause') return false;
        play.type('done');
      }
      return null;
    };
    const [dial] = seaside.thermometers;
    if (dial === undefined) throw new Error('no dial');
    const seasideWith = (change: Partial<typeof dial>) => ({
      ...seaside,
      thermometers: [{ ...dial, ...change }],
    });
    const unchecked = seasideWith({ iceShownCelsius: null, boilsShownCelsius: null });
    expect(asks(new Play({ kitchen: unchecked }))).toBe(true);
    expect(asks(new Play({ kitchen: unchecked }).type('boils 99c'))).toBe(false);
    expect(asks(new Play({ kitchen: seaside }))).toBe(false);
    expect(asks(new Play({ kitchen: blind }))).toBe(false);
    const play = new Play({ kitchen: unchecked }).until('mix.thermometer');
    expect(play.say).toContain('boils 95c');
    expect(play.why).toContain('100 °C');
  });

  it('what is set out fits this batch: pot, thermometer, squares', () => {
    const { advice, cook } = new Play({ kitchen: hall });
    expect(advice.items).toHaveLength(9);
    expect(advice.items[0]).toMatchObject({
      id: 'mix.ready.pot',
      values: { neededLitres: cook.batch.pot.neededLitres, fits: cook.batch.pot.fits },
    });
    expect(advice.items[1]).toMatchObject({ id: 'mix.ready.stem', values: { present: true } });
    expect(advice.items.at(-1)).toMatchObject({ values: { squares: cook.batch.yield.wrappingSquares } });
    expect(new Play({ kitchen: blind }).advice.items[1]).toMatchObject({ values: { present: false } });
  });
});

describe('cut', () => {
  it('rope and cut are sized by what there is, and scissors are for adults', () => {
    const play = new Play({ from: 'cut' }).until('cut.rope');
    const { batch } = play.cook;
    expect(play.advice.say.values).toEqual({
      ropeMillimetres: batch.recipe.piece.ropeMillimetres,
      ropeMetres: batch.yield.ropeMetres,
    });
    expect(play.advice.handsOn).toBe(true);
    play.type('done');
    expect(play.advice).toMatchObject({
      step: 'cut.cut',
      say: { values: { cutMillimetres: batch.yield.cutMillimetres } },
    });
    expect(play.advice.cautions.map(({ id }) => id)).toEqual(['scissors']);
    expect(play.say).toContain(
      `about ${Math.floor(batch.yield.expectedGrams.typical / batch.recipe.piece.grams)} piece`,
    );
  });
});

describe('wrap', () => {
  const room = (humidity: number | null) =>
    new Play({ from: 'wrap', kitchen: { ...seaside, room: { ...seaside.room, humidity } } });

  it('rests for ten minutes at least, where the air is not damp', () => {
    for (const humidity of [null, 0.3, 0.59]) expect(room(humidity).step).toBe('wrap.rest');
    for (const humidity of [0.6, 0.8]) expect(room(humidity).step).toBe('wrap.wrap');
    expect(room(0.8).say).toMatch(/^Wrap at once: the air is damp/);
    const play = new Play({ from: 'cut' }).until('wrap.rest');
    const from = play.cook.enteredAt.wrap ?? Number.NaN;
    expect(clock(play, 'rest')).toEqual({ id: 'rest', from, until: from + 600, due: false });
    expect(room(0.3).say).toMatch(/^(Dust the pieces|Let the pieces)/);
    expect(room(0.3).type('done').say).toMatch(/^Wrap each piece/);
  });

  it('dusts with what the recipe says', () => {
    const said = (recipe: RecipeName) =>
      new Play({ recipe, from: 'wrap', kitchen: { ...seaside, room: { ...seaside.room, humidity: 0.3 } } })
        .say;
    expect(said('honey-pull')).toContain('with starch');
    expect(said('mint-pull')).toContain('with powdered sugar');
  });

  it('before anyone eats the allergens are said aloud', () => {
    const play = new Play({ recipe: 'cream-pull', from: 'wrap' }).until('wrap.serve');
    expect(play.say).toMatch(/milk/i);
    expect(play.advice.cautions.map(({ id }) => id)).toEqual(['serving']);
    expect(new Play({ recipe: 'clear-pull', from: 'wrap' }).until('wrap.serve').say).not.toMatch(/milk/i);
  });
});

describe('a measure of the middle', () => {
  const folding = new Play({ from: 'fold' }).cook;
  const measured = (value: number, cook = folding, by: 'hands' | 'feed' = 'hands', unit: 'C' | 'F' = 'C') =>
    afterMiddle(cook, { kind: 'reading', value, unit, of: 'middle', by, seq: 9, t: 300 });

  const doubted = (doubt: Doubt | null) => {
    const { because, asks, otherScaleCelsius, of } = doubt ?? {};
    return { because, asks, otherScaleCelsius, of };
  };

  it('that can be right is taken, and shows that there is a thermometer', () => {
    const cook = measured(60, { ...folding, thermometer: false, middleThermometer: false });
    expect(cook).toMatchObject({
      thermometer: true,
      middleThermometer: true,
      doubt: null,
      middle: { t: 300, seq: 9 },
    });
    expect(cook.middle?.celsius).toBeCloseTo(60, 1);
  });

  it('is never corrected downwards: hands touch what is under it', () => {
    const high = new Play({ from: 'fold', kitchen: hall }).cook;
    expect(high.batch.dial.toTrueCelsius(60)).toBeLessThan(60);
    expect(fromDial(high, 60)).toBe(60);
    const [dial] = seaside.thermometers;
    if (dial === undefined) throw new Error('no dial');
    const low = { ...dial, iceShownCelsius: -2, boilsShownCelsius: 98 };
    const lows = new Play({ from: 'fold', kitchen: { ...seaside, thermometers: [low] } }).cook;
    expect(fromDial(lows, 60)).toBeCloseTo(62, 0);
    // Its own thermometer, where the middle has one.
    const two = [
      { ...dial, use: 'pot' as const },
      { ...low, id: 'own', use: 'middle' as const },
    ];
    expect(
      fromDial(new Play({ from: 'fold', kitchen: { ...seaside, thermometers: two } }).cook, 60),
    ).toBeCloseTo(62, 0);
  });

  it.each([
    [-6, 'out of range'],
    [186, 'out of range'],
    [17, 'colder than the room'],
  ] as const)('of %d °C is doubted: %s', (value, because) => {
    const kitchen = { ...seaside, room: { ...seaside.room, celsius: 20 } };
    const { doubt, middle } = measured(value, new Play({ from: 'fold', kitchen }).cook);
    expect(doubted(doubt)).toEqual({ because, asks: true, otherScaleCelsius: null, of: 'middle' });
    expect(middle === null || middle.celsius > 45).toBe(true);
  });

  it('of 88 °F is doubted: at 31 °C nobody waits for hands, and 88 °C would be a middle like any other', () => {
    const { doubt, middle } = measured(88, folding, 'hands', 'F');
    expect(doubt).toMatchObject({ because: 'other scale', otherScaleCelsius: expect.closeTo(88, 0) });
    expect(middle).toBeNull();
  });

  it('at the edges is believed', () => {
    const kitchen = { ...seaside, room: { ...seaside.room, celsius: 20 } };
    const { cook } = new Play({ from: 'fold', kitchen });
    for (const value of [185, 33, 90]) expect(measured(value, cook).doubt).toBeNull();
    // 91 °F is 33 °C: no stiffer than hands wait for.
    expect(measured(91, cook, 'hands', 'F').doubt).toBeNull();
  });

  it('said twice within two kelvin is believed, but never out of range', () => {
    const kitchen = { ...seaside, room: { ...seaside.room, celsius: 20 } };
    const once = measured(15, new Play({ from: 'fold', kitchen }).cook);
    expect(once.doubt).not.toBeNull();
    expect(measured(16.5, once)).toMatchObject({ doubt: null, middle: { celsius: expect.closeTo(16.5, 0) } });
    expect(measured(12.5, once).doubt).not.toBeNull();
    expect(measured(190, measured(190, folding)).doubt).toMatchObject({ because: 'out of range' });
    const ofTheSyrup = {
      ...once,
      doubt: once.doubt === null ? null : { ...once.doubt, of: 'syrup' as const },
    };
    expect(measured(15, ofTheSyrup).doubt).not.toBeNull();
  });

  it('doubted and hot stands against hands; doubted and cold opens nothing', () => {
    expect(measured(190).middle?.celsius).toBeCloseTo(190, 0);
    expect(measured(-8).middle).toBeNull();
    const before = measured(80);
    expect(measured(-8, before).middle?.celsius).toBeCloseTo(80, 0);
  });

  it('of a feed is doubted without a question', () => {
    expect(measured(190, folding, 'feed').doubt).toMatchObject({ asks: false, since: 300 });
  });
});

describe('the order of warnings', () => {
  const warning = (
    level: 'now' | 'soon' | 'note',
    signal: 'DANGER' | 'WARNING' | 'CAUTION' | null,
    since = 0,
  ) => ({
    level,
    signal,
    since,
  });

  it('is by level, then by what people can suffer, then the latest', () => {
    const sorted = [
      warning('now', 'DANGER', 1),
      warning('now', 'WARNING', 9),
      warning('now', 'WARNING', 8),
      warning('now', 'CAUTION', 9),
      warning('now', null, 9),
      warning('soon', 'DANGER', 9),
      warning('soon', 'WARNING', 9),
      warning('note', 'DANGER', 9),
      warning('note', null, 9),
      warning('note', null, 2),
    ];
    expect([...sorted].reverse().sort(byUrgency)).toEqual(sorted);
    const mixed = [3, 8, 1, 9, 0, 5, 7, 2, 6, 4].flatMap((at) => sorted[at] ?? []);
    expect(mixed.sort(byUrgency)).toEqual(sorted);
  });
});
