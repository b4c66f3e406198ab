import { describe, expect, it } from 'vitest';
import type { StoveKind } from '../../source/kitchen/kitchen.js';
import { type BoilOptions, boilOptions, type Pot, simulate } from '../../source/rehearsal/boil.js';
import { chanceFrom } from '../../source/rehearsal/chance.js';
import { boilingCurve } from '../../source/sugar/syrup.js';
import { stagesAt } from '../forecast/hall.js';

const waterGrams = 237;
const curve = boilingCurve(
  {
    sucroseGrams: 500,
    glucoseSolids: [{ grams: 336, de: 42 }],
    invertGrams: 0,
    saltGrams: 3,
    waterGrams,
    fatGrams: 16,
    inertGrams: 16,
  },
  85_000,
);
const stoves: readonly StoveKind[] = ['gas', 'coil', 'glass-ceramic', 'induction'];

const potOn = (stove: StoveKind, changes: Partial<BoilOptions> = {}, seed = 7): Pot =>
  simulate(
    boilOptions({ curve, waterGrams, otherGrams: 32, stove, stageFromCelsius: stagesAt(curve), ...changes }),
    seed,
  );

const heatTo = (pot: Pot, celsius: number): void => {
  pot.setHeat(1);
  for (let t = 0; t < 7200 && pot.state().celsius < celsius; t++) pot.advance(1);
};

describe('the simulated boil', () => {
  it.each(stoves)(
    'on %s keeps every gram and every joule through a cook with all that can happen',
    (stove) => {
      const pot = potOn(stove);
      const before = pot.state().energy.storedJoule;
      pot.setHeat(1);
      pot.advance(700);
      pot.setPot(false);
      pot.advance(70);
      pot.setPot(true);
      pot.setLid(true);
      pot.advance(120);
      pot.setLid(false);
      pot.addWater(40);
      pot.setHeat(0.6);
      pot.advance(900);
      const { waterGrams: left, steamGrams, addedGrams, energy } = pot.state();
      expect(addedGrams).toBe(40);
      expect(left + steamGrams).toBeCloseTo(waterGrams + 40, 9);
      const found = energy.storedJoule + energy.lostJoule + energy.steamJoule;
      expect(Math.abs(found - before - energy.broughtJoule)).toBeLessThan(1e-6 * energy.broughtJoule);
    },
  );

  it('is the same for the same seed, and another cook for another', () => {
    const readings = (seed: number): number[] => {
      const pot = potOn('coil', {}, seed);
      pot.setHeat(1);
      return Array.from({ length: 20 }, () => {
        pot.advance(30);
        return pot.dialCelsius();
      });
    };
    expect(readings(5)).toEqual(readings(5));
    expect(readings(5)).not.toEqual(readings(6));
  });

  it('does not depend on how often one looks', () => {
    const often = potOn('gas');
    const once = potOn('gas');
    for (const pot of [often, once]) pot.setHeat(1);
    for (let index = 0; index < 600; index++) often.advance(1.3);
    once.advance(600 * 1.3);
    expect(often.state().celsius).toBeCloseTo(once.state().celsius, 9);
  });

  it('crawls at first and runs at the end, as the curve says', () => {
    const pot = potOn('gas', { wander: { sd: 0, seconds: 60 } });
    heatTo(pot, 105);
    pot.advance(60);
    const early = pot.state().celsius - 105;
    heatTo(pot, 121);
    const from = pot.state().celsius;
    pot.advance(60);
    expect(pot.state().celsius - from).toBeGreaterThan(2.5 * early);
    expect(pot.state().celsius).toBeCloseTo(curve.celsiusAt(839 / (839 + pot.state().waterGrams)), 1);
  });

  it('goes on climbing on a coil that was turned off, hardly on gas', () => {
    const climb = (stove: StoveKind): number => {
      const pot = potOn(stove);
      heatTo(pot, 117);
      pot.setHeat(0);
      let highest = pot.state().celsius;
      for (let t = 0; t < 300; t++) {
        pot.advance(1);
        highest = Math.max(highest, pot.state().celsius);
      }
      return highest - 117;
    };
    expect(climb('coil')).toBeGreaterThan(2);
    expect(climb('gas')).toBeLessThan(1.2);
    expect(climb('glass-ceramic')).toBeGreaterThan(climb('induction'));
  });

  it('climbs less on a trivet than on its ring', () => {
    const trivet = potOn('coil');
    heatTo(trivet, 117);
    trivet.setPot(false);
    let highest = 0;
    for (let t = 0; t < 240; t++) {
      trivet.advance(1);
      highest = Math.max(highest, trivet.state().celsius);
    }
    expect(highest - 117).toBeGreaterThan(0.2);
    expect(highest - 117).toBeLessThan(2);
    expect(trivet.state().celsius).toBeLessThan(117);
  });

  it('loses no water under a lid, and shows no more than its boil', () => {
    const pot = potOn('gas');
    heatTo(pot, 106);
    const { waterGrams: before } = pot.state();
    pot.setLid(true);
    pot.advance(150);
    expect(pot.state().waterGrams).toBe(before);
    expect(pot.state().celsius).toBeCloseTo(pot.state().boilsCelsius, 6);
  });

  it('falls behind its boil when water is added, and boils lower than before', () => {
    const pot = potOn('gas');
    heatTo(pot, 116);
    const { boilsCelsius } = pot.state();
    pot.addWater(50);
    expect(pot.state().celsius).toBeLessThan(112);
    expect(pot.state().boilsCelsius).toBeLessThan(boilsCelsius - 3);
  });

  it('shows a dial of 15 s lag 1.3 K low while it rises by 5 K a minute', () => {
    const dial = { lagSeconds: 15, noiseSdKelvin: 0, offsetKelvin: 0, stepKelvin: 0 };
    const pot = potOn('gas', { dial, startCelsius: 20, wander: { sd: 0, seconds: 60 } });
    pot.setHeat(0.55);
    pot.advance(300);
    const { celsius, dialCelsius } = pot.state();
    pot.advance(30);
    const kelvinPerMinute = 2 * (pot.state().celsius - celsius);
    expect((celsius - dialCelsius) / kelvinPerMinute).toBeCloseTo(1.25 / 5, 1);
    expect(pot.dialCelsius()).toBe(pot.state().dialCelsius);
  });

  it('gives the tester the right feel of a cold pot, and doubt near a border', () => {
    const cold = potOn('gas');
    expect(cold.coldWater()).toBe('dissolves');
    const pot = potOn('gas', { testerSdKelvin: 2.5 });
    heatTo(pot, stagesAt(curve)['hard ball']);
    const felt = new Set(Array.from({ length: 60 }, () => pot.coldWater()));
    expect(felt).toContain('hard ball');
    expect(felt).toContain('firm ball');
    expect(felt).not.toContain('hard crack');
  });
});

describe('chance', () => {
  it('is even and normal enough, and repeats', () => {
    const chance = chanceFrom(3);
    const even = Array.from({ length: 20_000 }, () => chance.even());
    expect(even.reduce((sum, value) => sum + value, 0) / 20_000).toBeCloseTo(0.5, 2);
    const normal = Array.from({ length: 20_000 }, () => chance.normal());
    const mean = normal.reduce((sum, value) => sum + value, 0) / 20_000;
    const variance = normal.reduce((sum, value) => sum + (value - mean) ** 2, 0) / 20_000;
    expect(Math.abs(mean)).toBeLessThan(0.03);
    expect(Math.abs(variance - 1)).toBeLessThan(0.05);
    expect(chanceFrom(3).even()).toBe(even[0]);
  });
});
