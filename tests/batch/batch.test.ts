import { describe, expect, it } from 'vitest';
import { altitudeRules } from '../../source/batch/altitude-rules.js';
import { batchOf } from '../../source/batch/batch-of.js';
import { effectOf } from '../../source/batch/effect.js';
import { refusalOf } from '../../source/batch/refusal.js';
import { enoughDoctor } from '../../source/sugar/solubility.js';
import { stages } from '../../source/sugar/stages.js';
import { hall, hillHall, type Line, recipeOf, seaLevel } from './samples.js';

const ids = (batch: { notes: readonly { id: string }[] }): readonly string[] =>
  batch.notes.map(({ id }) => id);
const clear = (...more: Line[]) =>
  recipeOf({
    ingredients: [['granulated-sugar', '500 g'], ['water', '150 ml'], ...more],
    target: 'celsius: [126, 130]',
  });

describe('a batch at 1,450 m', () => {
  const up = batchOf(hillHall, hall);
  const down = batchOf(hillHall, seaLevel);

  it('is cooked about 5.4 K lower than at sea level', () => {
    expect(down.target.todayCelsius[0] - up.target.todayCelsius[0]).toBeCloseTo(5.4, 0);
    expect(down.target.todayCelsius[0]).toBeCloseTo(123, 6);
  });

  it('is the same candy: glass transition, firmness, water and yield do not move', () => {
    expect(up.candy.glassTransitionCelsius[0]).toBeCloseTo(down.candy.glassTransitionCelsius[0], 6);
    expect(up.candy.glassTransitionCelsius[1]).toBeCloseTo(down.candy.glassTransitionCelsius[1], 6);
    expect(up.candy.moistureFraction[0]).toBeCloseTo(down.candy.moistureFraction[0], 9);
    expect(up.yield.cookedGrams / down.yield.cookedGrams).toBeCloseTo(1, 2);
  });

  it('has every stage lower, by more the hotter it is', () => {
    const shifts = stages
      .filter((stage) => Number.isFinite(down.stageFromCelsius[stage]))
      .map((stage) => down.stageFromCelsius[stage] - up.stageFromCelsius[stage]);
    expect(Math.min(...shifts)).toBeGreaterThan(4.5);
    expect(shifts).toEqual(shifts.toSorted((one, other) => one - other));
  });

  it('shifts a tenth more than what boiling water reads low', () => {
    const rules = altitudeRules(up);
    expect(rules.curveKelvin[0] / rules.boilingWaterKelvin).toBeGreaterThan(1.05);
    expect(rules.curveKelvin[0] / rules.boilingWaterKelvin).toBeLessThan(1.2);
    expect(rules.perFeetKelvin).toBeCloseTo(5.3, 1);
  });
});

describe('taking it off', () => {
  it('comes to rest inside the window on every stove, and leaves a coil earlier than a flame', () => {
    for (const stove of ['gas', 'coil', 'glass-ceramic', 'induction'] as const) {
      const { target } = batchOf(hillHall, { ...hall, stove });
      const rest = target.takeOffCelsius + target.carryOverKelvin;
      expect(rest).toBeGreaterThanOrEqual(target.todayCelsius[0]);
      expect(rest).toBeLessThanOrEqual(target.todayCelsius[1]);
    }
    const [coil, gas] = (['coil', 'gas'] as const).map((stove) => batchOf(hillHall, { ...hall, stove }));
    expect(coil?.target.takeOffCelsius).toBeLessThan(gas?.target.takeOffCelsius ?? 0);
  });

  it('goes further in a damp room, not beyond the window, and says why', () => {
    const damp = batchOf(hillHall, { ...hall, room: { celsius: 20, humidity: 0.7 } });
    expect(damp.target.takeOffCelsius).toBeGreaterThan(batchOf(hillHall, hall).target.takeOffCelsius);
    expect(damp.target.aimCelsius).toBeLessThanOrEqual(damp.target.todayCelsius[1]);
    expect(ids(damp)).toEqual(expect.arrayContaining(['plan.note.damp', 'plan.note.sticky']));
  });

  it('believes what this kitchen showed of carry-over', () => {
    const learned = batchOf(hillHall, hall, { carryOverKelvin: 2.5 });
    expect(learned.target.aimCelsius - learned.target.takeOffCelsius).toBeCloseTo(2.5, 9);
  });
});

describe('the thermometer and the air', () => {
  it('takes all of a boiling-water reading as air where nothing else is known, and never twice', () => {
    const unknown = { ...hall, altitudeMetres: null };
    const batch = batchOf(hillHall, unknown, { checks: { iceShownCelsius: 0, boilsShownCelsius: 95 } });
    expect(batch.air.from).toBe('boiling water');
    expect(batch.air.waterBoilsCelsius).toBeCloseTo(95, 2);
    expect(batch.dial.toShownCelsius(120)).toBeCloseTo(120, 1);
  });

  it('goes on without a thermometer and says what decides then', () => {
    const batch = batchOf(hillHall, hall, { thermometer: false });
    expect(batch.dial.present).toBe(false);
    expect(ids(batch)).toContain('kitchen.note.no-thermometer');
  });

  it('says that a shallow syrup reads low', () => {
    expect(ids(batchOf(hillHall, hall))).toContain('plan.note.stem');
    const narrow = { ...hall, pot: { litres: 4, diameterMillimetres: 110 } };
    expect(ids(batchOf(hillHall, narrow))).not.toContain('plan.note.stem');
  });

  it('uses the nearest known pressure where the air is none of this Earth, and says so', () => {
    const batch = batchOf(hillHall, { ...seaLevel, altitudeMetres: 8800 });
    expect(ids(batch)).toContain('plan.note.air');
    expect(Number.isFinite(batch.target.takeOffCelsius)).toBe(true);
    expect(refusalOf(hillHall, { ...seaLevel, altitudeMetres: 8800 })?.id).toBe('plan.bad.air');
    expect(refusalOf(hillHall, hall)).toBeNull();
  });
});

describe('what the candy will be like', () => {
  it('grains without a doctor, and not with the amount of syrup that is asked for', () => {
    const plain = batchOf(clear(), seaLevel);
    expect(plain.candy.grainRisk).toBe('high');
    expect(ids(plain)).toContain('plan.note.grain');
    const solids = plain.candy.doctorMissingGrams;
    expect(solids).toBeCloseTo(enoughDoctor * 500, -1);
    const doctored = clear(['glucose-syrup', `${Math.ceil(solids / 0.8) + 1} g`, 'de: 42']);
    expect(batchOf(doctored, seaLevel).candy.grainRisk).toBe('low');
  });

  it('of syrup alone has nothing that could grain', () => {
    const { candy } = batchOf(
      recipeOf({
        ingredients: [
          ['glucose-syrup', '500 g', 'de: 42'],
          ['water', '100 ml'],
        ],
        target: 'celsius: [123, 126]',
      }),
      seaLevel,
    );
    expect(candy.doctorRatio).toBeNull();
    expect(candy.grainRisk).toBe('low');
    expect(candy.doctorMissingGrams).toBe(0);
  });

  it('counts what acid splits: some for a quarter teaspoon of cream of tartar, more for sourer ones', () => {
    const inverted = (...acid: Line[]) => batchOf(clear(...acid), seaLevel).candy.invertedFraction;
    expect(inverted()).toBe(0);
    const tartar = inverted(['cream-of-tartar', '1/4 tsp']);
    expect(tartar).toBeGreaterThan(0.03);
    expect(tartar).toBeLessThan(0.5);
    expect(inverted(['citric-acid', '2 g'])).toBeGreaterThan(tartar);
    expect(inverted(['vinegar', '1 tbsp'])).toBeGreaterThan(tartar);
    expect(inverted(['vinegar', '0.5 g'])).toBe(0);
  });

  it('is firmer and drier 2 K further', () => {
    const batch = batchOf(hillHall, hall);
    const [less, more] = [effectOf(batch, -2), effectOf(batch, 2)];
    expect(more.glassTransitionCelsius - less.glassTransitionCelsius).toBeGreaterThan(4);
    expect(more.moistureFraction).toBeLessThan(less.moistureFraction);
    expect(more.grams).toBeLessThan(less.grams);
  });

  it('chews at a pulled-candy target, is soft at a caramel and glass at a hard crack', () => {
    const at = (low: number, high: number) =>
      batchOf({ ...hillHall, target: { celsius: [low, high], feels: 'hard ball' } }, seaLevel).candy.firmness;
    expect(at(123, 126)).toBe('chewy');
    expect(['soft', 'runny']).toContain(at(114, 116));
    expect(at(148, 150)).toBe('glassy');
  });
});

describe('what is odd', () => {
  it('says that too little water would burn before it dissolves', () => {
    const dry = recipeOf({
      ingredients: [
        ['granulated-sugar', '500 g'],
        ['water', '20 ml'],
      ],
      target: 'celsius: [123, 126]',
    });
    expect(ids(batchOf(dry, seaLevel))).toContain('plan.note.dry');
  });

  it('says what a pot that is too small takes, and how many batches make the whole', () => {
    const batch = batchOf(hillHall, { ...hall, pot: { litres: 1.5, diameterMillimetres: null } });
    expect(batch.pot.fits).toBe(false);
    expect(ids(batch)[0]).toBe('plan.note.pot');
    expect(batch.notes[0]?.values).toMatchObject({ batches: 3 });
  });

  it('keeps 900 g for one pair of pullers', () => {
    const twice = batchOf(
      recipeOf({
        ingredients: [
          ['granulated-sugar', '1 kg'],
          ['glucose-syrup', '840 g', 'de: 42'],
          ['water', '300 ml'],
        ],
        target: 'celsius: [123, 126]',
      }),
      seaLevel,
    );
    expect(ids(twice)).toContain('plan.note.pair');
    expect(ids(batchOf(hillHall, seaLevel))).not.toContain('plan.note.pair');
  });

  it('refuses what does not dissolve', () => {
    const onlyLater = {
      ...hillHall,
      ingredients: hillHall.ingredients.filter(({ phase }) => phase === 'flavour'),
    };
    expect(refusalOf(onlyLater, seaLevel)?.id).toBe('plan.bad.nothing-boils');
  });
});
