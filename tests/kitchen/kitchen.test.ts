import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { airOf } from '../../source/kitchen/air.js';
import { answerFirstRun, firstRunProblem, firstRunQuestions } from '../../source/kitchen/ask.js';
import { defaultKitchen } from '../../source/kitchen/default.js';
import { setInKitchen } from '../../source/kitchen/edit.js';
import type { Kitchen } from '../../source/kitchen/kitchen.js';
import { handsKinds, parseKitchen, stoveKinds, thermometerKinds } from '../../source/kitchen/parse.js';
import { heatLevel, heatWords, nearestHeatWord, stoveTraits } from '../../source/kitchen/stove.js';
import { kitchenToYaml } from '../../source/kitchen/write.js';
import { say, sayProblem } from '../recipe/say.js';

const kitchenOf = (text: string): Kitchen => {
  const parsed = parseKitchen(text, 'hall.yaml');
  if ('problems' in parsed) throw new Error(parsed.problems.map(sayProblem).join('\n'));
  return parsed.kitchen;
};
const problemsOf = (lines: string): readonly string[] => {
  const parsed = parseKitchen(`kettlehand-kitchen: 1\n${lines}\n`, 'hall.yaml');
  return 'problems' in parsed ? parsed.problems.map(sayProblem) : [];
};

/** The example of the interface, word for word. */
const example = `kettlehand-kitchen: 1
altitude: 1450 m            # or pressure: 850 hPa (station pressure, not reduced to sea level)
stove: coil                 # gas | coil | glass-ceramic | induction
heat: [low, medium, high]   # the knob's labels, weakest first; or 9 for a knob from 1 to 9
pot: { volume: 3 l, diameter: 20 cm }
thermometers:
  - { id: hall-dial, kind: dial, use: pot, unit: F, ice: 33, boils: 203, checked: 2026-11-20, stem: 50 mm }
room: { temperature: 17 c, humidity: 45 % }
unit: F
hands: bare                 # bare | gloved | children
`;

describe('a kitchen as people write it', () => {
  it('becomes SI values', () => {
    const kitchen = kitchenOf(example);
    expect(kitchen).toMatchObject({
      altitudeMetres: 1450,
      pressurePascal: null,
      stove: 'coil',
      heat: ['low', 'medium', 'high'],
      pot: { litres: 3, diameterMillimetres: 200 },
      room: { celsius: 17, humidity: 0.45 },
      unit: 'F',
      hands: 'bare',
    });
    const [dial] = kitchen.thermometers;
    expect(dial).toMatchObject({
      id: 'hall-dial',
      kind: 'dial',
      use: 'pot',
      unit: 'F',
      checked: '2026-11-20',
      stemMillimetres: 50,
    });
    expect(dial?.iceShownCelsius).toBeCloseTo(0.5556, 4);
    expect(dial?.boilsShownCelsius).toBeCloseTo(95, 9);
  });

  it('may say nothing at all', () => expect(kitchenOf('kettlehand-kitchen: 1\n')).toEqual(defaultKitchen));

  it('has the usual thermometer where none is named, and none where the list is empty', () => {
    expect(kitchenOf('kettlehand-kitchen: 1\nunit: C\n').thermometers).toMatchObject([
      { kind: 'dial', unit: 'C' },
    ]);
    expect(kitchenOf('kettlehand-kitchen: 1\nthermometers: []\n').thermometers).toEqual([]);
  });

  it('has a knob from 1 to 9', () =>
    expect(kitchenOf('kettlehand-kitchen: 1\nheat: 9\n').heat).toEqual('123456789'.split('')));

  it('takes ice below the scale as no reading', () => {
    const text =
      'kettlehand-kitchen: 1\nthermometers:\n  - { kind: dial, unit: F, ice: below, boils: 203 }\n';
    expect(kitchenOf(text).thermometers[0]).toMatchObject({ id: 'thermometer-1', iceShownCelsius: null });
  });

  it.each([
    [
      'altitude: 1450',
      'hall.yaml:2: altitude: "1450" has no unit. Add one of m, ft and km, for example 1450 m or 4750 ft.',
    ],
    [
      'altitude: 384400 km',
      'hall.yaml:2: altitude: 384,400,000 m is no place for a kitchen. Write an altitude from -450 m to 5,500 m, for example 1450 m or 4750 ft.',
    ],
    [
      'pressure: 850',
      'hall.yaml:2: pressure: "850" has no unit. Add one of hPa, mbar, kPa, Pa, inHg, mmHg, bar and atm, for example 850 hPa.',
    ],
    [
      'pressure: 85 hPa',
      'hall.yaml:2: pressure: 85 hPa is no air pressure on the ground. Write 500 hPa to 1100 hPa, for example 850 hPa.',
    ],
    [
      'stove: electric coil',
      'hall.yaml:2: stove: "electric coil" is not known here. Write gas, coil, glass-ceramic or induction.',
    ],
    [
      'stove: inductoin',
      'hall.yaml:2: stove: "inductoin" is not known here. Did you mean induction? Write gas, coil, glass-ceramic or induction.',
    ],
    [
      'heat: 1',
      'hall.yaml:2: heat: "1" is no knob. Write its labels, weakest first: [low, medium, high], or the highest number on it: 9.',
    ],
    [
      'heat: [low, off]',
      `hall.yaml:2: heat[2]: "off" can't be a label of the knob: one short word, each once, and not "off".`,
    ],
    [
      'heat: [low, low]',
      `hall.yaml:2: heat: "low" can't be a label of the knob: one short word, each once, and not "off".`,
    ],
    ['pot: { volume: 30 ml }', 'hall.yaml:2: pot.volume: "30 ml" does not fit. Write 0.3 l to 40 l.'],
    ['pot: { diameter: 2 m }', 'hall.yaml:2: pot.diameter: "2 m" does not fit. Write 8 cm to 60 cm.'],
    [
      'pot: 3 l',
      'hall.yaml:2: pot: "3 l" is here, and fields belong here: volume or diameter. Write "field: value", one a line or between braces.',
    ],
    [
      'room: { humidity: 450 % }',
      'hall.yaml:2: room.humidity: "450 %" is no relative humidity. Type 0 % to 100 %, for example 45 %.',
    ],
    [
      'thermometers:\n  - { id: a, boils: hot }',
      `hall.yaml:3: thermometers[1].boils: "hot" is no temperature. Write a number, with C or F behind it if it is not the thermometer's own unit: 33, 0.5 C.`,
    ],
    [
      'thermometers:\n  - { id: a, checked: 2026-02-30 }',
      'hall.yaml:3: thermometers[1].checked: "2026-02-30" is no date. Write year-month-day: 2026-11-20.',
    ],
    [
      'thermometers:\n  - { id: a }\n  - { id: a }',
      'hall.yaml:4: thermometers[2]: Two thermometers are called "a". Give each its own id.',
    ],
    [
      'thermometer: dial',
      'hall.yaml:2: thermometer: "thermometer" is no field here. Did you mean thermometers? Fields: kettlehand-kitchen, altitude, pressure, stove, heat, pot, thermometers, room, unit, hands, language, weights, clock, learned.',
    ],
    ['kettlehand-kitchen: 2', 'hall.yaml:2: This field is written twice. Keep one of them.'],
  ])('%s -> %s', (lines, sentence) => expect(problemsOf(lines)).toEqual([sentence]));

  it('knows a recipe when it is given one', () => {
    const parsed = parseKitchen('kettlehand: 1\nname: Pull\n', 'pull.yaml');
    expect('problems' in parsed && parsed.problems.map(sayProblem)).toEqual([
      'pull.yaml:1: This is a recipe. Name a kitchen here; it begins with "kettlehand-kitchen: 1".',
    ]);
  });

  it('never throws, whatever is in the file', () => {
    const pieces = fc.constantFrom(
      ...example.split(/(?<=[\s,:{}[\]])/),
      '&a ',
      '*a',
      '? ',
      '- ',
      '9e999 m',
      '-0 ft',
      '1/0 l',
    );
    fc.assert(
      fc.property(fc.array(fc.oneof(pieces, fc.string()), { maxLength: 60 }), (parts) => {
        const parsed = parseKitchen(`kettlehand-kitchen: 1\n${parts.join('')}`, 'hall.yaml');
        return 'kitchen' in parsed || parsed.problems.length > 0;
      }),
      { numRuns: 2000 },
    );
  });
});

const within = (low: number, high: number, step: number) =>
  fc
    .integer({ min: Math.round(low / step), max: Math.round(high / step) })
    .map((n) => Math.round(n * step * 1000) / 1000);
const perhaps = <T>(known: fc.Arbitrary<T>) => fc.option(known, { nil: null });
const kitchens: fc.Arbitrary<Kitchen> = fc.record({
  altitudeMetres: perhaps(within(-400, 5000, 0.5)),
  pressurePascal: perhaps(within(51_000, 108_000, 10)),
  stove: fc.constantFrom(...stoveKinds),
  heat: fc.constantFrom(
    ['low', 'medium', 'high'],
    ['1', '2', '3', '4', '5', '6'],
    ['one'],
    ['Min', '1.5', 'P+'],
  ),
  pot: fc.record({
    litres: perhaps(within(0.5, 30, 0.1)),
    diameterMillimetres: perhaps(within(100, 500, 1)),
  }),
  thermometers: fc.uniqueArray(
    fc.record({
      id: fc.stringMatching(/^[a-z][a-z0-9-]{0,20}$/),
      kind: fc.constantFrom(...thermometerKinds),
      use: fc.constantFrom('pot' as const, 'middle' as const, 'both' as const),
      unit: fc.constant('C' as const),
      iceShownCelsius: perhaps(within(-10, 10, 0.1)),
      boilsShownCelsius: perhaps(within(70, 110, 0.1)),
      checked: perhaps(fc.constantFrom('2026-11-20', '2024-02-29')),
      stemMillimetres: perhaps(within(10, 200, 1)),
    }),
    { maxLength: 4, selector: ({ id }) => id },
  ),
  room: fc.record({ celsius: perhaps(within(-5, 40, 0.1)), humidity: perhaps(within(0.02, 1, 0.01)) }),
  unit: fc.constant('C' as const),
  hands: fc.constantFrom(...handsKinds),
});

/** Binary fractions aside: hectopascals and centimetres come back as the same number to a millionth. */
const rounded = (kitchen: Kitchen): unknown =>
  JSON.parse(
    JSON.stringify(kitchen, (_, value) =>
      typeof value === 'number' ? Math.round(value * 1e6) / 1e6 : value,
    ),
  );

describe('a kitchen that is saved', () => {
  it('reads back as the same kitchen', () => {
    fc.assert(
      fc.property(kitchens, (kitchen) => {
        expect(rounded(kitchenOf(kitchenToYaml(kitchen)))).toEqual(rounded(kitchen));
      }),
      { numRuns: 300 },
    );
  });

  it('keeps the comments of the person when a setting changes', () => {
    const edited = setInKitchen(example, [
      ['altitude', '4750 ft'],
      ['thermometer.boils', '204'],
      ['heat', 'low high'],
    ]);
    if ('problems' in edited) throw new Error('not set');
    expect(edited.kitchen.altitudeMetres).toBeCloseTo(1447.8, 6);
    expect(edited.kitchen.heat).toEqual(['low', 'high']);
    expect(edited.text).toContain('# gas | coil | glass-ceramic | induction');
    expect(edited.text).toContain('boils: 204');
  });

  it('begins with nothing', () => {
    const edited = setInKitchen(null, [
      ['thermometer', 'digital'],
      ['thermometer.unit', 'C'],
      ['thermometer.boils', '95,2'],
    ]);
    expect('kitchen' in edited && edited.kitchen.thermometers).toMatchObject([
      { id: 'my-digital', kind: 'digital', boilsShownCelsius: 95.2 },
    ]);
  });

  it('forgets what is set to none', () => {
    const edited = setInKitchen(example, [
      ['altitude', 'none'],
      ['thermometer', 'none'],
    ]);
    expect('kitchen' in edited && [edited.kitchen.altitudeMetres, edited.kitchen.thermometers]).toEqual([
      null,
      [],
    ]);
  });

  it.each([
    [
      'stove',
      'gass',
      '"gass" is not known here. Did you mean gas? Write gas, coil, glass-ceramic or induction.',
    ],
    ['altitude', '1450', '"1450" has no unit. Add one of m, ft and km, for example 1450 m or 4750 ft.'],
    [
      '__proto__',
      'x',
      '"__proto__" is nothing that can be set. Settings: altitude, pressure, stove, heat, pot.volume, pot.diameter, room.temperature, room.humidity, unit, hands, language, weights, clock, thermometer, thermometer.id, thermometer.use, thermometer.unit, thermometer.ice, thermometer.boils, thermometer.checked, thermometer.stem, learned.thermometer, learned.carry-over, learned.losses, learned.fold, learned.pull, learned.cut, learned.watts.LABEL.',
    ],
  ])('set %s %s is answered', (key, value, sentence) => {
    const edited = setInKitchen(example, [[key, value]]);
    expect('problems' in edited && edited.problems.map(say)).toEqual([sentence]);
  });
});

describe('the stove', () => {
  const hall = kitchenOf(example);
  const nine = { ...hall, heat: '123456789'.split('') };

  it.each([
    ['off', 0],
    ['high', 1],
    ['HIGH', 1],
    [' medium ', 2 / 3],
    ['low', 1 / 3],
  ])('the hall’s knob at "%s" is %d of full heat', (setting, level) =>
    expect(heatLevel(hall, setting)).toBeCloseTo(level, 9),
  );

  it.each([
    ['9', 1],
    ['6', 6 / 9],
    ['1', 1 / 9],
    ['medium', 0.6],
    ['off', 0],
    ['10', null],
    ['hot', null],
    ['constructor', null],
  ])('a knob from 1 to 9 at "%s" is %s of full heat', (setting, level) => {
    if (level === null) expect(heatLevel(nine, setting)).toBeNull();
    else expect(heatLevel(nine, setting)).toBeCloseTo(level, 9);
  });

  it('says what may be typed, and offers the nearest', () => {
    expect(heatWords(nine)).toEqual([...'123456789', 'off', 'low', 'medium', 'high']);
    expect(nearestHeatWord(hall, 'meduim')).toBe('medium');
  });

  it('keeps alcohol from what glows or burns, and the pot from what keeps heating', () => {
    expect(stoveKinds.filter((kind) => stoveTraits[kind].openFlame || stoveTraits[kind].glows)).toEqual([
      'gas',
      'coil',
      'glass-ceramic',
    ]);
    expect(stoveKinds.filter((kind) => stoveTraits[kind].keepsHeating)).toEqual(['coil', 'glass-ceramic']);
    // 1-2 F for a thin pot, 2-3 F for coil and radiant.
    for (const kind of stoveKinds) {
      const fahrenheit = stoveTraits[kind].carryOverKelvin * 1.8;
      expect(fahrenheit).toBeGreaterThanOrEqual(stoveTraits[kind].keepsHeating ? 2 : 1);
      expect(fahrenheit).toBeLessThanOrEqual(stoveTraits[kind].keepsHeating ? 3 : 2);
    }
  });
});

describe('the first run', () => {
  it('asks three questions at most, each with a default and a reason', () => {
    expect(firstRunQuestions.length).toBeLessThanOrEqual(3);
    for (const { ask, why, skip } of firstRunQuestions)
      for (const said of [ask, why, skip]) expect(say(said).length).toBeGreaterThan(5);
  });

  it('needs no answer', () =>
    expect(answerFirstRun({})).toMatchObject({
      altitudeMetres: null,
      stove: 'coil',
      thermometers: [{ kind: 'dial', unit: 'F' }],
      unit: 'F',
    }));

  it.each([
    [
      { place: '4750 ft', stove: 'gas', thermometer: 'digital C' },
      { stove: 'gas', unit: 'C', thermometers: [{ id: 'my-digital', kind: 'digital', unit: 'C' }] },
      1447.8,
    ],
    [
      { place: 'boils 203 F', thermometer: 'glass f' },
      { thermometers: [{ kind: 'glass', unit: 'F' }] },
      null,
    ],
    [
      { place: '95c', thermometer: 'none', stove: 'glass ceramic' },
      { thermometers: [], stove: 'glass-ceramic' },
      null,
    ],
  ])('%o', (answers, kitchen, altitude) => {
    const answered = answerFirstRun(answers);
    expect(answered).toMatchObject(kitchen);
    if (altitude === null) expect(airOf(answered).waterBoilsCelsius).toBeCloseTo(95, 6);
    else expect(answered.altitudeMetres).toBeCloseTo(altitude, 6);
  });

  it.each([
    ['place', 'sea level', { altitudeMetres: 0 }],
    ['place', '1.450 m', { altitudeMetres: 1450 }],
    ['place', 'about 500 m', { altitudeMetres: 500 }],
    ['place', '500 m ü. M.', { altitudeMetres: 500 }],
    ['place', '500 m above sea level', { altitudeMetres: 500 }],
    ['stove', 'electric coil', { stove: 'coil' }],
    ['stove', 'Ceranfeld', { stove: 'glass-ceramic' }],
    ['stove', 'Gasherd', { stove: 'gas' }],
    ['thermometer', 'dial °C', { thermometers: [{ kind: 'dial', unit: 'C' }] }],
    ['thermometer', 'digital thermometer, in Celsius', { thermometers: [{ kind: 'digital', unit: 'C' }] }],
    ['thermometer', 'celsius', { thermometers: [{ kind: 'dial', unit: 'C' }] }],
    ['thermometer', 'Zeiger', { thermometers: [{ kind: 'dial', unit: 'F' }] }],
    ['thermometer', 'no thermometer', { thermometers: [] }],
  ] as const)('as people say it: %s: %s', (id, typed, kitchen) => {
    expect(firstRunProblem(id, typed)).toBeNull();
    expect(answerFirstRun({ [id]: typed })).toMatchObject(kitchen);
  });

  it('water that is said to boil at 95 boils at 95 °C, also for a thermometer in °F', () => {
    for (const place of ['water boils at 95', 'boils 95', 'Wasser kocht bei 95'])
      expect(airOf(answerFirstRun({ place })).waterBoilsCelsius).toBeCloseTo(95, 6);
    expect(
      airOf(answerFirstRun({ place: 'boils 203', thermometer: 'dial c' })).waterBoilsCelsius,
    ).toBeCloseTo(95, 6);
  });

  it.each(['constructor', '__proto__', 'dial digital', 'c f', 'thermometer'])(
    '%s is no thermometer',
    (typed) => {
      expect(firstRunProblem('thermometer', typed)).not.toBeNull();
      expect(firstRunProblem('stove', typed)).not.toBeNull();
    },
  );

  it.each([
    [
      'place',
      'high up',
      '"high up" is neither an altitude nor a boiling point. Type for example 1450 m, 4750 ft or boils 203 F.',
    ],
    [
      'place',
      '1450',
      '1450 what? Type 1450 m, 1450 ft, or what the thermometer shows in boiling water: boils 203 F.',
    ],
    [
      'place',
      'boils 300 F',
      '"boils 300 F" is neither an altitude nor a boiling point. Type for example 1450 m, 4750 ft or boils 203 F.',
    ],
    [
      'place',
      '384400 km',
      '384,400,000 m is no place for a kitchen. Write an altitude from -450 m to 5,500 m, for example 1450 m or 4750 ft.',
    ],
    [
      'stove',
      'electric',
      '"electric" does not say which of the four. Type gas, coil (a spiral or an iron plate), glass-ceramic (a flat glass top) or induction.',
    ],
    [
      'thermometer',
      'finger',
      '"finger" does not say which kind. Type dial, digital, glass or infrared, and C or F; or none.',
    ],
  ] as const)('%s: %s -> %s', (id, typed, sentence) => {
    const problem = firstRunProblem(id, typed);
    expect(problem === null ? null : say(problem)).toBe(sentence);
  });
});
