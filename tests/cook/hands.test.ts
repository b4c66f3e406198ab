import { describe, expect, it } from 'vitest';
import { openCook } from '../../source/cook/open.js';
import { secondsToLimit } from '../../source/cook/phases/gates.js';
import type { Kitchen } from '../../source/kitchen/kitchen.js';
import type { Ingredient, Recipe } from '../../source/recipe/recipe.js';
import { hall, opened, Play, recipe, seaside } from './play.js';

const atTheGate = (opening: ConstructorParameters<typeof Play>[0] = {}) =>
  new Play(opening).until('fold.again').wait(180).type('done');

/** A play of a recipe changed in one thing. */
const playOf = (more: Partial<Recipe>): Play => {
  const play = new Play();
  const event = opened();
  play.cook = openCook({ ...event, recipe: { ...event.recipe, ...more } });
  return play;
};
const timer = (play: Play, id: string) => play.advice.timers.find((one) => one.id === id);
const aloud = (play: Play): string => play.advice.items.map((item) => play.words(item)).join('\n');

describe('how long the middle still takes', () => {
  /** Newton's law of cooling by hand: from the take-off at the pour to the room, through the one measure. */
  const byHand = (play: Play, celsius: number, limit: number): number => {
    const { cook } = play;
    const [room, poured] = [cook.batch.kitchen.room.celsius ?? 20, cook.batch.target.takeOffCelsius];
    const elapsed = (cook.middle?.t ?? 0) - (cook.pouredAt ?? 0);
    const perSecond = Math.log((poured - room) / (celsius - room)) / elapsed;
    return Math.log((celsius - room) / (limit - room)) / perSecond;
  };

  it('follows from the pour and the last measure, and runs down', () => {
    const play = atTheGate().wait(400).type('middle 60c');
    const seconds = byHand(play, 60, 45);
    expect(seconds).toBeGreaterThan(120);
    expect(seconds).toBeLessThan(900);
    expect(secondsToLimit(play.cook, play.t)).toBeCloseTo(seconds, 6);
    expect(secondsToLimit(play.cook, play.t + 100)).toBeCloseTo(seconds - 100, 6);
    expect(secondsToLimit(play.cook, play.t + 5000)).toBe(0);
    // In a room that nobody has measured it is taken for 20 °C.
    const { room: _room, ...kitchen } = seaside;
    const unknown = atTheGate({
      kitchen: { ...kitchen, room: { celsius: null, humidity: null } } as Kitchen,
    });
    unknown.wait(400).type('middle 60c');
    expect(secondsToLimit(unknown.cook, unknown.t)).toBeCloseTo(byHand(unknown, 60, 45), 6);
  });

  it('is two minutes at least and a quarter of an hour at most, for it is rough', () => {
    const soon = atTheGate().type('middle 45.5c');
    expect(secondsToLimit(soon.cook, soon.t)).toBe(120);
    const late = atTheGate().wait(600).type('middle 115c');
    expect(secondsToLimit(late.cook, late.t)).toBe(900);
  });

  it('is not known at the limit, of a middle hotter than it was poured, or of none', () => {
    const play = atTheGate();
    expect(secondsToLimit(play.cook, play.t)).toBeNull();
    const middle = (celsius: number, t = play.t) => ({ ...play.cook, middle: { seq: 9, t, celsius } });
    expect(secondsToLimit(middle(45), play.t)).toBeNull();
    expect(secondsToLimit(middle(45.01), play.t)).not.toBeNull();
    const { takeOffCelsius } = play.cook.batch.target;
    expect(secondsToLimit(middle(takeOffCelsius), play.t)).toBeNull();
    expect(secondsToLimit(middle(60, play.cook.pouredAt ?? 0), play.t)).toBeNull();
    expect(secondsToLimit(middle(60, (play.cook.pouredAt ?? 0) - 5), play.t)).toBeNull();
  });
});

describe('what can measure the middle', () => {
  const [dial] = seaside.thermometers;
  const kitchenWith = (...thermometers: readonly object[]): Kitchen =>
    ({
      ...seaside,
      thermometers: thermometers.map((one, nth) => ({ ...dial, id: `t${nth}`, ...one })),
    }) as Kitchen;

  it.each([
    ['one for both', [{ use: 'both' }], true],
    ['one for the middle', [{ use: 'middle' }], true],
    ['one for the pot alone, which goes in as well', [{ use: 'pot' }], true],
    ['one that only looks at the skin', [{ use: 'both', kind: 'infrared' }], false],
    [
      'a skin-deep one for the pot, but a probe for the middle',
      [{ use: 'pot', kind: 'infrared' }, { use: 'middle' }],
      true,
    ],
    [
      'a probe for the pot, but a skin-deep one for the middle',
      [{ use: 'pot' }, { use: 'middle', kind: 'infrared' }],
      false,
    ],
    ['none', [], false],
  ] as const)('%s', (_, thermometers, measures) => {
    const play = atTheGate({ kitchen: kitchenWith(...thermometers) });
    expect(play.step).toBe(measures ? 'hands.measure' : 'hands.layer');
  });

  it('is measured by a probe that only the middle has, until somebody says that it is gone', () => {
    const kitchen = kitchenWith({ use: 'middle' });
    expect(atTheGate({ kitchen }).type('middle 40c').advice.question?.id).toBe('hands.pause');
    const gone = atTheGate({ kitchen }).type('thermometer none');
    expect(gone.step).toBe('hands.layer');
    expect(gone.type('middle 40c').advice.question?.id).toBe('hands.pause');
  });

  it('counts the time since the pour, and for a crumb the time that nobody may touch it', () => {
    const measured = atTheGate();
    expect(timer(measured, 'cooling')).toMatchObject({ from: measured.cook.pouredAt, until: null });
    const felt = atTheGate({ kitchen: kitchenWith() }).type('no');
    const from = felt.cook.pouredAt ?? 0;
    expect(timer(felt, 'not-before')).toMatchObject({ from, until: from + 45 * 60 });
  });

  it('says at the pause what opened the gate: the middle, or a crumb', () => {
    expect(aloud(atTheGate().type('middle 40c'))).toContain('40 °C');
    const felt = atTheGate({ kitchen: kitchenWith() }).type('no').until('hands.pause');
    expect(aloud(felt)).toMatch(/crumb/i);
    // A middle that was measured before the thermometer broke is not read aloud as if it still held.
    const lost = atTheGate().type('middle 60c', 'thermometer none', 'no').until('hands.pause');
    expect(aloud(lost)).toMatch(/crumb/i);
    expect(aloud(lost)).not.toContain('60 °C');
  });

  it('opens for a middle measured at the very moment the mass was warmed, not for one before', () => {
    const play = atTheGate().type('middle 40c');
    const middleT = play.cook.middle?.t ?? 0;
    const at = (warmedAt: number): string | null => {
      const other = new Play();
      other.cook = { ...play.cook, warmedAt };
      other.t = play.t;
      return other.step;
    };
    expect(at(middleT)).not.toBe('hands.measure');
    expect(at(middleT + 1)).toBe('hands.measure');
  });
});

describe('what is read aloud before heat and before the pour', () => {
  it('has the pot that is needed, and all that goes in off the heat, with its amount', () => {
    const before = new Play().until('heat.pause');
    expect(before.say).toBeTruthy();
    expect(aloud(before)).toMatch(/Pot of \d(\.\d)? l or more/);
    expect(before.advice.say.values).toMatchObject({
      alone: false,
      neededLitres: before.cook.batch.pot.neededLitres,
    });
    const pour = new Play().until('pour.pause');
    const flavours = pour.cook.batch.recipe.ingredients.filter(({ phase }) => phase === 'flavour');
    expect(flavours.length).toBeGreaterThan(0);
    const others = pour.cook.batch.recipe.ingredients.filter(({ phase }) => phase !== 'flavour');
    for (const { amount, name } of flavours) expect(aloud(pour)).toContain(`${amount} ${name}`);
    for (const { amount, name } of others) expect(aloud(pour)).not.toContain(`${amount} ${name}`);
  });
});

describe('pulling', () => {
  const late: Ingredient = {
    ...(recipe('mint-pull').ingredients.at(-1) as Ingredient),
    phase: 'pull',
  };

  it('has fingers greased again every three minutes, but not dry hands', () => {
    const greased = new Play().until('pull.stretch');
    const started = greased.cook.done['pull.grease'];
    expect(timer(greased, 'regrease')).toMatchObject({ from: started });
    expect(greased.words(greased.advice.watch ?? { id: 'typed.nothing' })).toContain('sticking');
    const dry = playOf({ hands: 'dry' }).until('pull.stretch');
    expect(timer(dry, 'regrease')).toBeUndefined();
    expect(dry.advice.watch).toBeNull();
  });

  it('is asked after five minutes whether it droops, and after that every two', () => {
    const play = new Play().until('pull.stretch');
    const started = play.cook.done['pull.grease'] ?? 0;
    expect(timer(play, 'droop-test')).toMatchObject({ from: started, until: started + 300 });
    play.until('pull.droop').type('droops');
    const seen = play.cook.done['droop.seen'] ?? 0;
    expect(play.step).toBe('pull.stretch');
    expect(timer(play, 'droop-test')).toMatchObject({ from: started, until: seen + 120 });
  });

  it('takes in what belongs to the pull, and asks for nothing where nothing does', () => {
    expect(new Play().until('pull.grease').type('done').step).toBe('pull.stretch');
    const ingredients = [...recipe('hill-hall-ginger-pull').ingredients, late];
    const play = playOf({ ingredients }).until('pull.grease').type('done');
    expect(play.step).toBe('pull.add');
    expect(aloud(play)).toContain(late.name);
    expect(play.advice.items).toHaveLength(1);
    expect(play.type('done').step).toBe('pull.stretch');
  });

  it('ends stiff; a rope that keeps its shape is not asked about again', () => {
    const play = new Play().until('pull.droop').type('holds');
    expect(play.step).toBe('pull.stiff');
    expect(new Play({ kitchen: hall }).until('pull.droop').type('done').step).toBe('pull.stiff');
  });
});
