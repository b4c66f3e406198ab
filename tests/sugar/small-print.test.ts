import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { equilibriumHumidity, waterActivity } from '../../source/sugar/activity.js';
import { altitudeAtPressure, pressureAtAltitude } from '../../source/sugar/atmosphere.js';
import { solutionKilogramPerLitre, syrupLitres } from '../../source/sugar/density.js';
import { firmnessAt, glucoseSolidsGlassCelsius } from '../../source/sugar/glass.js';
import { heatAlongCurve, warmingJoule } from '../../source/sugar/heat.js';
import { type Asked, OutOfRange } from '../../source/sugar/out-of-range.js';
import { secondsToBurn } from '../../source/sugar/skin.js';
import {
  doctorNeeded,
  doctorRatio,
  enoughDoctor,
  grainRisk,
  sucroseSolubility,
  tooLittleDoctor,
} from '../../source/sugar/solubility.js';
import { soluteOf } from '../../source/sugar/solution.js';
import { stages, stageWithin } from '../../source/sugar/stages.js';
import { boilingCurve, scaleSyrup, solidsFraction, totalGrams } from '../../source/sugar/syrup.js';
import { latentJoulePerGram, saturationCelsius, saturationPascal } from '../../source/sugar/water.js';
import { onlyWater, pulledCandy, seaLevel, sucrose } from '../published/syrups.js';

/** A batch in which every number is another. */
const everything = {
  sucroseGrams: 600,
  glucoseSolids: [
    { grams: 200, de: 42 },
    { grams: 50, de: 100 },
  ],
  invertGrams: 70,
  saltGrams: 4,
  waterGrams: 300,
  fatGrams: 20,
  inertGrams: 29,
};

describe('the slope of the boiling curve', () => {
  it('is what a small step along the curve gives', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 0.97, noNaN: true }),
        fc.double({ min: 60_000, max: 105_000, noNaN: true }),
        (solids, pascal) => {
          const curve = boilingCurve(everything, pascal);
          const step = 1e-5;
          const stepped = (curve.celsiusAt(solids + step) - curve.celsiusAt(solids - step)) / (2 * step);
          expect(curve.kelvinPerSolidsFraction(solids) / stepped).toBeCloseTo(1, 4);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('beyond what is known, keeps the shift of its end', () => {
    const here = boilingCurve(pulledCandy(), 85_000);
    const [low, high] = boilingCurve(pulledCandy(), seaLevel).validCelsius;
    for (const further of [0, 5, 60]) {
      expect(here.fromSeaLevel(low - further)).toBeCloseTo(here.validCelsius[0] - further, 9);
      expect(here.fromSeaLevel(high + further)).toBeCloseTo(here.validCelsius[1] + further, 9);
    }
    expect(here.fromSeaLevel(low + 0.001)).toBeCloseTo(here.validCelsius[0] + 0.001, 3);
    expect(here.fromSeaLevel(high - 0.001)).toBeCloseTo(here.validCelsius[1] - 0.001, 3);
  });

  it('is that of grape sugar for syrup solids of 100 DE, as for so much invert', () => {
    const [syrup, invert] = [
      boilingCurve({ ...onlyWater, glucoseSolids: [{ grams: 100, de: 100 }] }, seaLevel),
      boilingCurve({ ...onlyWater, invertGrams: 100 }, seaLevel),
    ];
    for (const solids of [0.3, 0.7, 0.9])
      expect(syrup.celsiusAt(solids)).toBeCloseTo(invert.celsiusAt(solids), 6);
  });

  it('weighs syrup solids as sucrose up to 65 DE, as a hexose at 100, and half way half', () => {
    const weight = (de: number): number =>
      soluteOf({ ...onlyWater, glucoseSolids: [{ grams: 10, de }] }).weight;
    const hexose = soluteOf({ ...onlyWater, invertGrams: 10 }).weight;
    expect(hexose).toBeCloseTo(Math.sqrt(2.25 / 6.47), 12);
    expect([weight(20), weight(65)]).toEqual([1, 1]);
    expect(weight(82.5)).toBeCloseTo((1 + hexose) / 2, 12);
    expect(weight(100)).toBeCloseTo(hexose, 12);
    expect(soluteOf(onlyWater).weight).toBe(1);
  });
});

describe('heat', () => {
  it('a litre of water takes 209 kJ from 20 to 70 °C, fat and starch 2 J/g and kelvin, and what cools gives it back', () => {
    const water = { ...onlyWater, waterGrams: 1000 };
    expect(warmingJoule(water, 20, 70)).toBeCloseTo(209_200, 0);
    expect(warmingJoule(water, 70, 20)).toBeCloseTo(-209_200, 0);
    const dry = { ...onlyWater, waterGrams: 0, fatGrams: 30, inertGrams: 20 };
    expect(warmingJoule(dry, 20, 70)).toBe(50 * 2 * 50);
    expect(warmingJoule({ ...water, fatGrams: 30, inertGrams: 20 }, 20, 70)).toBeCloseTo(214_200, 0);
  });

  it('in two steps is as much as in one', () => {
    // 1224 g of syrup, three quarters of it dissolved, and 49 g of what is not.
    const dissolved = 924 / 1224;
    const specific = 4.184 - 2.511 * dissolved + 0.0075 * dissolved * ((15 + 112) / 2);
    expect(warmingJoule(everything, 15, 112)).toBeCloseTo((1224 * specific + 49 * 2) * 97, 3);
    expect(warmingJoule(everything, 15, 60) + warmingJoule(everything, 60, 112)).toBeCloseTo(
      warmingJoule(everything, 15, 112),
      6,
    );
  });

  it('along a short stretch is what leaves as steam and what warms the rest', () => {
    const curve = boilingCurve(everything, seaLevel);
    const heat = heatAlongCurve(curve, 49);
    const step = 0.002;
    for (const solids of [0.4, 0.75, 0.85, 0.95]) {
      const [from, to] = [solids - step / 2, solids + step / 2];
      const steam = curve.dissolvedGrams * (1 / from - 1 / to) * curve.evaporationJoulePerGram(solids);
      const specific = 4.184 - 2.511 * solids + 0.0075 * solids * curve.celsiusAt(solids);
      const warmed =
        ((curve.dissolvedGrams / solids) * specific + 49 * 2) * (curve.celsiusAt(to) - curve.celsiusAt(from));
      expect((heat.jouleAtSolids(to) - heat.jouleAtSolids(from)) / (steam + warmed)).toBeCloseTo(1, 3);
      expect(heat.celsiusAt(heat.jouleAtSolids(solids))).toBeCloseTo(curve.celsiusAt(solids), 6);
      expect(heat.solidsAt(heat.jouleAtSolids(solids))).toBeCloseTo(solids, 9);
    }
    expect(heat.validSolidsFraction[1]).toBe(curve.validSolidsFraction[1]);
    expect(heat.solidsAt(heat.validJoule[1])).toBeCloseTo(curve.validSolidsFraction[1], 9);
  });

  it('is worked out once for a curve and what else is in the pot', () => {
    const curve = boilingCurve(pulledCandy(), seaLevel);
    const heat = heatAlongCurve(curve, 10);
    expect(heatAlongCurve(curve, 10)).toBe(heat);
    const more = heatAlongCurve(curve, 50);
    expect(more).not.toBe(heat);
    expect(heatAlongCurve(curve, 10)).toBe(heat);
    const [from, to] = [curve.celsiusAt(0.8), curve.celsiusAt(0.9)];
    const extra = more.jouleAt(to) - more.jouleAt(from) - (heat.jouleAt(to) - heat.jouleAt(from));
    expect(extra / (40 * 2 * (to - from))).toBeCloseTo(1, 3);
    expect(heat.jouleAt(heat.validCelsius[0])).toBeCloseTo(0, 6);
  });
});

describe('an amount', () => {
  it('twice a batch is twice of everything in it', () => {
    expect(scaleSyrup(everything, 2)).toEqual({
      sucroseGrams: 1200,
      glucoseSolids: [
        { grams: 400, de: 42 },
        { grams: 100, de: 100 },
      ],
      invertGrams: 140,
      saltGrams: 8,
      waterGrams: 600,
      fatGrams: 40,
      inertGrams: 58,
    });
    expect(totalGrams(everything)).toBe(1273);
  });

  it('has no solids fraction when the pot is empty', () => {
    expect(solidsFraction({ ...onlyWater, waterGrams: 0 })).toBeNull();
    expect(solidsFraction(onlyWater)).toBe(0);
    expect(solidsFraction({ ...onlyWater, sucroseGrams: 5, waterGrams: 0 })).toBe(1);
    expect(solidsFraction({ ...onlyWater, sucroseGrams: 20, waterGrams: 80 })).toBe(0.2);
  });

  it('fills room with its fat and starch too, and none without anything', () => {
    const none = { ...onlyWater, waterGrams: 0 };
    expect(syrupLitres({ ...none, inertGrams: 145 }, 20)).toBeCloseTo(0.1, 9);
    expect(syrupLitres({ ...none, fatGrams: 90, inertGrams: 145 }, 20)).toBeCloseTo(0.2, 9);
    expect(syrupLitres(none, 20)).toBe(0);
    expect(solutionKilogramPerLitre(0.7, 80.001)).toBeCloseTo(solutionKilogramPerLitre(0.7, 80), 5);
  });
});

describe('water activity', () => {
  // Saturated sucrose at 25 °C: 0.85 within 0.01 in tables of humidity standards (from memory).
  it('of a saturated solution of sucrose is 0.85 by both forms', () => {
    const { starzakPeacock, starzakMathlouthi } = waterActivity(sucrose(100 - 67.89), 25);
    expect(Math.abs(starzakPeacock - 0.85)).toBeLessThan(0.015);
    expect(Math.abs(starzakMathlouthi - 0.85)).toBeLessThan(0.015);
  });

  it('is the same by both forms where solutions have been measured, and apart by 0.04 to 0.1 in hard candy', () => {
    for (const water of [90, 70, 50, 35]) {
      const { starzakPeacock, starzakMathlouthi } = waterActivity(sucrose(water), 25);
      expect(Math.abs(starzakPeacock - starzakMathlouthi)).toBeLessThan(0.012);
    }
    const { starzakPeacock, starzakMathlouthi } = waterActivity(sucrose(5), 25);
    expect(Math.abs(starzakPeacock - starzakMathlouthi)).toBeGreaterThan(0.04);
    expect(Math.abs(starzakPeacock - starzakMathlouthi)).toBeLessThan(0.1);
  });

  it('of thin syrup is that of so many molecules (Raoult), and its band never passes 1', () => {
    const thin = { ...onlyWater, sucroseGrams: 1, waterGrams: 99 };
    const raoult = 99 / 18.015 / (99 / 18.015 + 1 / 342.2965);
    for (const activity of Object.values(waterActivity(thin, 20))) expect(activity).toBeCloseTo(raoult, 4);
    expect(equilibriumHumidity(thin, 20)[1]).toBe(1);
  });
});

describe('graining', () => {
  it.each([
    [0, 'high'],
    [tooLittleDoctor - 1e-9, 'high'],
    [tooLittleDoctor, 'some'],
    [enoughDoctor - 1e-9, 'some'],
    [enoughDoctor, 'low'],
    [Number.POSITIVE_INFINITY, 'low'],
  ] as const)('at %f of doctor to sugar the risk is %s', (ratio, risk) => {
    expect(grainRisk(ratio)).toBe(risk);
  });

  it('counts syrup solids, invert and what acid makes of the sugar', () => {
    expect(doctorRatio(everything)).toBeCloseTo(320 / 600, 12);
    // A tenth inverted: 60 g of sucrose become 63.16 g of invert.
    expect(doctorRatio(everything, 0.1)).toBeCloseTo((320 + (60 * 360.312) / 342.2965) / 540, 12);
    expect(doctorRatio({ ...everything, sucroseGrams: 0 })).toBe(Number.POSITIVE_INFINITY);
  });

  it('asks for what is missing beside syrup and invert', () => {
    expect(doctorNeeded({ ...everything, glucoseSolids: [{ grams: 30, de: 42 }] })).toBe(150 - 100);
    expect(doctorNeeded(everything)).toBe(0);
  });

  it('gives the rows of the table as they are, and half way the middle', () => {
    expect([0, 20, 100, 140].map(sucroseSolubility)).toEqual([0.6418, 0.6709, 0.8297, 0.9146]);
    expect(sucroseSolubility(110)).toBeCloseTo((0.8297 + 0.8689) / 2, 12);
  });
});

describe('burns', () => {
  it.each([
    [44.9, null],
    [45, 7200],
    [46, Math.sqrt(7200 * 1200)],
    [47, 1200],
    [51, 120],
    [60, 3],
    [60.1, 3],
    [125, 3],
  ])('at %f °C: %s seconds', (celsius, seconds) => {
    const found = secondsToBurn(celsius);
    if (seconds === null) expect(found).toBeNull();
    else expect(found).toBeCloseTo(seconds, 6);
  });
});

describe('texture', () => {
  it.each([
    [2, 188],
    [5, 188],
    [7.5, 174],
    [36, 100],
    [68, 65.5],
    [100, 31],
    [110, 31],
  ])('dry syrup solids of %f DE turn to glass at %f °C', (de, celsius) => {
    expect(glucoseSolidsGlassCelsius(de)).toBeCloseTo(celsius, 9);
  });

  it.each([
    [45, 'runny'],
    [44.9, 'soft'],
    [25, 'soft'],
    [24.9, 'chewy'],
    [5, 'chewy'],
    [4.9, 'firm'],
    [0, 'firm'],
    [-0.1, 'glassy'],
  ] as const)('%f K above its glass transition it eats %s', (above, firmness) => {
    expect(firmnessAt(20 + above, 20)).toBe(firmness);
  });

  it('has a stage for what lies below every bound', () => {
    const from = Object.fromEntries(stages.map((stage, place) => [stage, 100 + place])) as Record<
      (typeof stages)[number],
      number
    >;
    expect(stageWithin(99, from)).toBe('dissolves');
    expect(stageWithin(103, from)).toBe('firm ball');
  });
});

describe('what is asked beyond what is known', () => {
  const curve = boilingCurve(everything, seaLevel);
  const heat = heatAlongCurve(curve, 49);
  const asked: ReadonlyArray<readonly [Asked, string, () => unknown]> = [
    ['metres', 'below the lowest place', () => pressureAtAltitude(-501)],
    ['metres', 'above the highest', () => pressureAtAltitude(9001)],
    ['pascal', 'thinner air than at 9000 m', () => altitudeAtPressure(30_000)],
    ['pascal', 'nearly a vacuum', () => saturationCelsius(600)],
    ['celsius', 'ice', () => saturationPascal(-1)],
    ['celsius', 'steam beyond the critical point', () => latentJoulePerGram(371)],
    ['celsius', 'sugar in ice', () => sucroseSolubility(-1)],
    ['celsius', 'sugar hotter than the table', () => sucroseSolubility(141)],
    ['celsius', 'a syrup hotter than any', () => solutionKilogramPerLitre(0.9, 171)],
    ['solids fraction', 'more than all of it', () => solutionKilogramPerLitre(1.01, 20)],
    ['solids fraction', 'drier than the curve', () => heat.jouleAtSolids(0.99)],
    ['solids fraction', 'thinner than the table', () => heat.jouleAtSolids(0.05)],
    ['joule', 'more heat than there is', () => heat.solidsAt(heat.validJoule[1] + 1)],
    ['joule', 'less than none', () => heat.celsiusAt(-1)],
    ['celsius', 'colder than it boils', () => heat.jouleAt(heat.validCelsius[0] - 0.001)],
    ['celsius', 'no number', () => heat.jouleAt(Number.NaN)],
    ['dissolved grams', 'water alone', () => boilingCurve(onlyWater, seaLevel)],
  ];

  it.each(asked)('%s: %s', (unit, _what, ask) => {
    let error: unknown = null;
    try {
      ask();
    } catch (thrown) {
      error = thrown;
    }
    expect(error).toBeInstanceOf(OutOfRange);
    expect(error).toMatchObject({ name: 'OutOfRange', asked: unit });
    expect((error as OutOfRange).message).toContain(`${unit} ${(error as OutOfRange).value} is outside`);
  });
});
