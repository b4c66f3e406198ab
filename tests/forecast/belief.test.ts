import { describe, expect, it } from 'vitest';
import { begin, believe, carryOver, type Evidence, project } from '../../source/forecast/index.js';
import type { StoveKind } from '../../source/kitchen/kitchen.js';
import { stoveKinds } from '../../source/kitchen/parse.js';
import { stoveTraits } from '../../source/kitchen/stove.js';
import { boilOptions, simulate } from '../../source/rehearsal/boil.js';
import { stages } from '../../source/sugar/stages.js';
import { curve, estimateAfter, hob, target, waterGrams } from './hall.js';

const belief = (evidence: readonly Evidence[], now: number, on = hob) => {
  const found = believe(estimateAfter(evidence, on), target, now, curve, on);
  if (found === null) throw new Error('nothing believed');
  return found;
};
const floor = target.floorCelsius;

describe('whether the window is reached', () => {
  it('is not asked before any evidence', () => {
    expect(believe(begin(hob), target, 0, curve, hob)).toBeNull();
    expect(believe(estimateAfter([{ kind: 'heat', t: 5, level: 1 }]), target, 9, curve, hob)).toBeNull();
  });

  it('is even odds at one reading on the floor with an unchecked thermometer', () => {
    const { reachedProbability } = belief([{ kind: 'reading', t: 600, celsius: floor }], 600);
    expect(reachedProbability).toBeGreaterThan(0.4);
    expect(reachedProbability).toBeLessThan(0.6);
  });

  it('is over 0.9 with readings steadily 2.5 K above it', () => {
    const steady = [0, 20, 40, 60].map((t) => ({ kind: 'reading', t, celsius: floor + 2.5 }) as const);
    expect(belief(steady, 60).reachedProbability).toBeGreaterThan(0.9);
  });

  it('takes less with a thermometer that was checked', () => {
    const one: readonly Evidence[] = [{ kind: 'reading', t: 600, celsius: floor + 1.5 }];
    expect(belief(one, 600, { ...hob, dialSdKelvin: 0.5 }).reachedProbability).toBeGreaterThan(0.9);
    expect(belief(one, 600).reachedProbability).toBeLessThan(0.9);
  });

  it('gains from a cold-water outcome beyond the window and loses from one below it', () => {
    const reading = { kind: 'reading', t: 600, celsius: floor } as const;
    const odds = (outcome: 'firm ball' | 'soft crack'): number =>
      belief([reading, { kind: 'cold water', t: 605, outcome }], 605).reachedProbability;
    expect(odds('firm ball')).toBeLessThan(0.4);
    expect(odds('soft crack')).toBeGreaterThan(0.75);
  });
});

describe('stages', () => {
  it('sum to 1 and are the likeliest where the syrup is', () => {
    const { stages: shares } = belief([{ kind: 'reading', t: 600, celsius: floor + 3 }], 600);
    expect(stages.reduce((sum, stage) => sum + shares[stage], 0)).toBeCloseTo(1, 9);
    expect(shares['hard ball']).toBeGreaterThan(0.9);
  });

  it('come from cold water alone where there is no thermometer', () => {
    const { stages: shares, dialBias } = belief([{ kind: 'cold water', t: 900, outcome: 'firm ball' }], 900);
    const likeliest = [...stages].sort((a, b) => shares[b] - shares[a])[0];
    expect(likeliest).toBe('firm ball');
    expect(shares['soft crack']).toBeLessThan(0.05);
    expect(dialBias).toBeNull();
    expect(
      project(estimateAfter([{ kind: 'cold water', t: 900, outcome: 'firm ball' }]), target, 900, curve, hob),
    ).toBeNull();
  });

  it('are cold before the boil', () => {
    expect(belief([{ kind: 'reading', t: 100, celsius: 60 }], 100).stages.dissolves).toBeGreaterThan(0.99);
  });

  describe('of a pot that cools on the trivet', () => {
    const boiled: readonly Evidence[] = [
      { kind: 'heat', t: 0, level: 1 },
      ...[900, 930, 960, 990].map(
        (t, index) => ({ kind: 'reading', t, celsius: floor - 2 + index }) as const,
      ),
      { kind: 'pot', t: 1000, on: false },
    ];
    const [warm, cooled] = [belief(boiled, 1001), belief(boiled, 1240)];

    it('stay, for the water in it stays, while its temperature falls', () => {
      expect(cooled.celsius).toBeLessThan(warm.celsius - 10);
      for (const stage of stages) expect(cooled.stages[stage]).toBeCloseTo(warm.stages[stage], 1);
      expect(cooled.reachedProbability).toBeGreaterThan(0.5);
      expect(cooled.reachedProbability).toBeCloseTo(warm.reachedProbability, 1);
    });

    it('agree with fingers that feel after minutes what the thermometer had shown', () => {
      const felt: readonly Evidence[] = [...boiled, { kind: 'cold water', t: 1240, outcome: 'hard ball' }];
      expect(belief(felt, 1240).reachedProbability).toBeGreaterThan(cooled.reachedProbability);
      expect(estimateAfter(felt).coldWater.disagreed).toBe(0);
    });
  });
});

describe('a thermometer that reads wrong', () => {
  /** A cook on a coil whose dial reads `offsetKelvin` high, with four cold-water tests of a good tester. */
  const cook = (offsetKelvin: number, seed: number): Evidence[] => {
    const pot = simulate(
      boilOptions({
        curve,
        waterGrams,
        otherGrams: 32,
        stove: 'coil',
        stageFromCelsius: hob.stageFromCelsius,
        testerSdKelvin: 1,
        dial: { lagSeconds: 12, noiseSdKelvin: 0.4, offsetKelvin, stepKelvin: 0 },
      }),
      seed,
    );
    const evidence: Evidence[] = [{ kind: 'heat', t: 0, level: 1 }];
    pot.setHeat(1);
    let tested = 0;
    for (let t = 30; t < 2400 && pot.state().celsius < floor + 2; t += 30) {
      pot.advance(30);
      evidence.push({ kind: 'reading', t, celsius: pot.dialCelsius() });
      const marks = [111, 113.5, 116, floor];
      if (pot.state().celsius > (marks[tested] ?? Infinity)) {
        tested += 1;
        evidence.push({ kind: 'cold water', t, outcome: pot.coldWater() });
      }
    }
    return evidence;
  };

  it('is found from repeated disagreement in two cooks of three, and always with its sign and about its size', () => {
    const cooks = 30;
    const found = Array.from({ length: cooks }, (_, seed) => {
      const evidence = cook(6, seed + 1);
      return belief(evidence, evidence[evidence.length - 1]?.t ?? 0, { ...hob, dialSdKelvin: 3 }).dialBias;
    }).filter((bias) => bias !== null);
    expect(found.length).toBeGreaterThanOrEqual((2 / 3) * cooks);
    for (const { kelvin } of found) {
      expect(kelvin).toBeGreaterThan(2.5);
      expect(kelvin).toBeLessThan(9);
    }
  });

  it.each([1, 2, 3])('is not suspected when it is right (%i)', (seed) => {
    const evidence = cook(0, seed);
    expect(belief(evidence, evidence[evidence.length - 1]?.t ?? 0).dialBias).toBeNull();
  });
});

describe('carry-over', () => {
  const at = (stove: StoveKind, watts = 700) =>
    carryOver({ stove, watts, celsius: floor, curve, otherGrams: 32 });

  it.each([
    ['gas', 0.4, 1],
    ['induction', 0.5, 1.2],
    ['coil', 0.9, 2],
    ['glass-ceramic', 0.9, 2],
  ] as const)('on %s is what the trade allows for', (stove, low, high) => {
    expect(at(stove).offTheRingKelvin).toBeGreaterThan(low);
    expect(at(stove).offTheRingKelvin).toBeLessThan(high);
  });

  it.each(stoveKinds)(
    'on %s: the plan, which knows no power, and the forecast of a brisk boil agree',
    (stove) => {
      // Closer together than a whole degree Fahrenheit, which is all that a dial shows.
      const apart = at(stove).offTheRingKelvin - stoveTraits[stove].carryOverKelvin;
      expect(Math.abs(apart)).toBeLessThan(1 / 1.8);
    },
  );

  it('is worse on the ring, most where the ring glows, and grows with the power', () => {
    expect(at('coil').leftOnTheRingKelvin).toBeGreaterThan(2.5 * at('coil').offTheRingKelvin);
    expect(at('gas').leftOnTheRingKelvin).toBeGreaterThan(at('gas').offTheRingKelvin);
    expect(at('gas').leftOnTheRingKelvin).toBeLessThan(at('coil').offTheRingKelvin + 0.5);
    expect(at('coil', 900).offTheRingKelvin).toBeGreaterThan(at('coil', 450).offTheRingKelvin);
  });

  it('follows what this kitchen has shown', () => {
    const learned = carryOver({ stove: 'coil', watts: 700, celsius: floor, curve, learnedKelvin: 2.4 });
    expect(learned.offTheRingKelvin).toBe(2.4);
    expect(learned.leftOnTheRingKelvin).toBeGreaterThan(2.4);
  });

  it('moves along the curve: a thinner syrup climbs less for the same heat', () => {
    const early = carryOver({ stove: 'coil', watts: 700, celsius: floor - 12, curve, otherGrams: 32 });
    expect(early.offTheRingKelvin).toBeLessThan(0.6 * at('coil').offTheRingKelvin);
  });
});
