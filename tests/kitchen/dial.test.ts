import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { airNotes, airOf, type Checks, noChecks } from '../../source/kitchen/air.js';
import { defaultKitchen } from '../../source/kitchen/default.js';
import { type Dial, dialNotes, dialOf } from '../../source/kitchen/dial.js';
import type { Kitchen, Thermometer } from '../../source/kitchen/kitchen.js';
import { fahrenheitToCelsius } from '../../source/units/temperature.js';
import { say } from '../recipe/say.js';

const f = fahrenheitToCelsius;
const dialWith = (given: Partial<Thermometer> = {}): Thermometer => ({
  id: 'hall-dial',
  kind: 'dial',
  use: 'both',
  unit: 'F',
  iceShownCelsius: null,
  boilsShownCelsius: null,
  checked: null,
  stemMillimetres: null,
  ...given,
});
const kitchen = (given: Partial<Kitchen> = {}, thermometer: Partial<Thermometer> = {}): Kitchen => ({
  ...defaultKitchen,
  thermometers: [dialWith(thermometer)],
  ...given,
});
const shown = (dial: Dial, trueFahrenheit: number): number =>
  dial.toShownCelsius(f(trueFahrenheit)) * 1.8 + 32;

/** Sea level: water boils at 212 F (211.95 by IAPWS). */
const seaLevel = { altitudeMetres: 0 };

describe('what the thermometer shows', () => {
  it('one that is 2 F high at ice and 2 F high at the boil is 2 F high at candy', () => {
    const dial = dialOf(kitchen(seaLevel, { iceShownCelsius: f(34), boilsShownCelsius: f(214) }), 'pot');
    expect(dial.basis).toBe('two points');
    expect(shown(dial, 255)).toBeCloseTo(257, 0);
  });

  it('one that is right at ice and 4 F low at the boil is 5 F low at candy: a stretched scale', () => {
    const dial = dialOf(kitchen(seaLevel, { iceShownCelsius: f(32), boilsShownCelsius: f(208) }), 'pot');
    expect(shown(dial, 255)).toBeCloseTo(250, 0);
  });

  it('by boiling water alone: today’s target less what it reads low (Utah State University Extension: 205 -> 7 F lower)', () => {
    const dial = dialOf(kitchen(seaLevel, { boilsShownCelsius: f(205) }), 'pot');
    expect(dial.basis).toBe('boiling water');
    expect(shown(dial, 280)).toBeCloseTo(273, 0);
  });

  it('by ice alone: the same everywhere', () => {
    const dial = dialOf(kitchen(seaLevel, { iceShownCelsius: f(30) }), 'pot');
    expect(dial.basis).toBe('ice');
    expect(shown(dial, 255)).toBeCloseTo(253, 6);
  });

  it('boiling water without altitude or pressure is all air: the thermometer is right', () => {
    const here = kitchen({}, { boilsShownCelsius: f(203) });
    const dial = dialOf(here, 'pot');
    expect(dial.basis).toBe('taken as right');
    expect(shown(dial, 255)).toBeCloseTo(255, 9);
    expect(airOf(here)).toMatchObject({ from: 'boiling water' });
    expect(airOf(here).altitudeMetres).toBeGreaterThan(1400);
    expect(airOf(here).altitudeMetres).toBeLessThan(1550);
  });

  it('ice and boiling water without altitude: ice corrects the thermometer, what is left is the air', () => {
    const here = kitchen({}, { iceShownCelsius: 1, boilsShownCelsius: 96 });
    expect(airOf(here).waterBoilsCelsius).toBeCloseTo(95, 6);
    expect(dialOf(here, 'pot').toShownCelsius(124)).toBeCloseTo(125, 9);
  });

  it('boiling water that no air explains is the thermometer’s error', () => {
    const here = kitchen({}, { boilsShownCelsius: 105 });
    expect(airOf(here).from).toBe('assumed sea level');
    expect(dialOf(here, 'pot')).toMatchObject({ basis: 'boiling water' });
    expect(dialOf(here, 'pot').toTrueCelsius(105)).toBeCloseTo(airOf(here).waterBoilsCelsius, 9);
  });

  it('today’s check comes before the one in the file', () => {
    const here = kitchen(seaLevel, { boilsShownCelsius: f(205) });
    const today: Checks = { ...noChecks, boilsShownCelsius: f(212) };
    expect(shown(dialOf(here, 'pot', today), 255)).toBeCloseTo(255, 0);
  });

  it('there may be none', () => {
    const here = kitchen({ thermometers: [] });
    expect(dialOf(here, 'pot')).toMatchObject({ present: false, id: null });
    expect(dialNotes(here, 'pot').map(say)).toEqual([
      'There is no thermometer: the cold-water test alone decides.',
    ]);
  });

  it('another one may be for the middle of the mass', () => {
    const here = kitchen({
      ...seaLevel,
      thermometers: [
        dialWith({ use: 'pot' }),
        dialWith({ id: 'probe', use: 'middle', kind: 'digital', unit: 'C' }),
      ],
    });
    expect(dialOf(here, 'middle')).toMatchObject({ id: 'probe', unit: 'C' });
    expect(dialOf(here, 'pot').id).toBe('hall-dial');
  });

  it('shown and true are the same thing twice', () => {
    const reading = (middle: number, spread: number) =>
      fc.option(fc.double({ min: middle - spread, max: middle + spread, noNaN: true }), { nil: null });
    fc.assert(
      fc.property(
        fc.option(fc.integer({ min: -400, max: 5000 }), { nil: null }),
        reading(0, 40),
        reading(95, 60),
        fc.double({ min: 0, max: 170, noNaN: true }),
        (altitudeMetres, ice, boils, celsius) => {
          const dial = dialOf(
            kitchen({ altitudeMetres }, { iceShownCelsius: ice, boilsShownCelsius: boils }),
            'pot',
          );
          expect(dial.toTrueCelsius(dial.toShownCelsius(celsius))).toBeCloseTo(celsius, 6);
          expect(dial.sdKelvin).toBeGreaterThan(0);
          expect(dial.sdKelvin).toBeLessThan(10);
          // No correction may carry candy more than a plausible error away from what is shown.
          expect(Math.abs(dial.toShownCelsius(125) - 125)).toBeLessThan(40);
        },
      ),
    );
  });
});

describe('how far it can be trusted', () => {
  const sd = (given: Partial<Thermometer>): number => dialOf(kitchen(seaLevel, given), 'pot').sdKelvin;
  const both = { iceShownCelsius: 0, boilsShownCelsius: 100 };

  it.each([
    ['dial', 1.5, 1.6],
    ['digital', 0.7, 0.85],
    ['glass', 1, 1.15],
    ['infrared', 4, 4.1],
  ] as const)('a %s thermometer checked at both points', (kind, low, high) => {
    expect(sd({ kind, ...both })).toBeGreaterThanOrEqual(low);
    expect(sd({ kind, ...both })).toBeLessThanOrEqual(high);
  });

  it('checked at both points is better than at the boil, that better than at ice, that better than not at all', () => {
    const order = [both, { boilsShownCelsius: 100 }, { iceShownCelsius: 0 }, {}].map(sd);
    expect(order[0]).toBeLessThan((order[1] ?? 0) + 0.1);
    expect(order[1]).toBeLessThan(order[2] ?? 0);
    expect(order[2]).toBeLessThan(order[3] ?? 0);
  });
});

describe('what is said about it', () => {
  it.each([
    [
      'never checked',
      seaLevel,
      {},
      'hall-dial was never checked. Read it in boiling water before the cook: it may be several degrees off.',
    ],
    [
      'boiling water at 150 C',
      seaLevel,
      { boilsShownCelsius: 150 },
      'hall-dial showed 302 °F in boiling water: nowhere does water boil there. Not used. Check the number and its unit, or take another thermometer.',
    ],
    [
      'ice at the end of the scale',
      seaLevel,
      { iceShownCelsius: f(100), boilsShownCelsius: f(212) },
      'hall-dial showed 100 °F in ice: that is the end of its scale, not a reading. Boiling water alone corrects it.',
    ],
    [
      'ice far off',
      seaLevel,
      { iceShownCelsius: -15, boilsShownCelsius: f(212) },
      'hall-dial showed 5 °F in ice: too far off to be one. Not used. Try crushed ice with a little water, or another thermometer.',
    ],
    [
      'a boil that contradicts the altitude',
      { altitudeMetres: 1450 },
      { boilsShownCelsius: f(213) },
      'hall-dial showed 213 °F in boiling water, which boils at 203 °F here. That is more than such a thermometer is off: check the altitude, then the thermometer.',
    ],
    [
      'infrared',
      seaLevel,
      { kind: 'infrared', boilsShownCelsius: 100 },
      'hall-dial is infrared: it reads the foam and the steam, several degrees off. Trust the cold-water test more.',
    ],
  ] as const)('%s', (_, place, thermometer, sentence) => {
    expect(dialNotes(kitchen(place, thermometer), 'pot').map(say)).toEqual([sentence]);
  });

  it.each([
    ['boiling water at 150 C', { boilsShownCelsius: 150 }, 'taken as right'],
    ['ice at the end of the scale', { iceShownCelsius: f(100), boilsShownCelsius: f(212) }, 'boiling water'],
  ] as const)('%s is not used', (_, thermometer, basis) =>
    expect(dialOf(kitchen(seaLevel, thermometer), 'pot').basis).toBe(basis),
  );

  it('nothing, of a good one', () => {
    expect(
      dialNotes(
        kitchen({ altitudeMetres: 1450 }, { iceShownCelsius: f(33), boilsShownCelsius: f(204) }),
        'pot',
      ),
    ).toEqual([]);
  });
});

describe('the air', () => {
  it.each([
    ['altitude', { altitudeMetres: 1450 }, 'altitude', 85_080],
    ['pressure', { pressurePascal: 85_000 }, 'pressure', 85_000],
    ['both, in agreement', { altitudeMetres: 1450, pressurePascal: 84_300 }, 'pressure', 84_300],
    [
      'a weather report reduced to sea level',
      { altitudeMetres: 1450, pressurePascal: 101_800 },
      'altitude',
      85_080,
    ],
    ['nothing', {}, 'assumed sea level', 101_325],
  ] as const)('%s', (_, place, from, pascal) => {
    const air = airOf(kitchen(place));
    expect(air.from).toBe(from);
    // ISO 2533:1975 at 1450 m: 850.8 hPa.
    expect(Math.abs(air.pressurePascal - pascal)).toBeLessThan(10);
  });

  it('says when a pressure was reduced to sea level', () => {
    expect(airNotes(kitchen({ altitudeMetres: 1450, pressurePascal: 101_800 })).map(say)).toEqual([
      "1018 hPa can't be the air at 1,450 m, where it is near 851 hPa: weather reports reduce it to sea level. The altitude is used.",
    ]);
  });

  it('says when it is only assumed, or taken from boiling water', () => {
    expect(airNotes(kitchen()).map(say)).toEqual([
      'Neither altitude nor air pressure is known, so sea level is taken. Higher up, every target is too hot. Boil water, read it, and type what the thermometer shows; or set the altitude.',
    ]);
    expect(airNotes(kitchen({}, { boilsShownCelsius: 95 })).map(say)).toEqual([
      'Water boiled as it does at about 1,500 m. All of that is taken as air pressure and the thermometer as right; give the altitude to tell the two apart.',
    ]);
  });

  it('knows today’s boiling water as well as the file’s', () => {
    expect(airOf(kitchen(), { ...noChecks, boilsShownCelsius: 95 }).from).toBe('boiling water');
  });
});
