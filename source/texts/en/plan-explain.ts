import { escapeForTerminal } from '../../units/escape.js';
import type { Printer } from '../../units/printer.js';
import { kilopascals } from './batch.js';

type Span = readonly [low: number, high: number];

/** The parts of one explanation, in the order in which they are said. */
export type Parts = {
  readonly formula: string;
  readonly given: string;
  readonly gives: string;
  readonly source: string;
  readonly known: string;
};

const entry = (title: string, { formula, given, gives, source, known }: Parts): string =>
  [
    title,
    `  formula   ${formula}`,
    `  with      ${given}`,
    `  gives     ${gives}`,
    `  source    ${source}`,
    `  known to  ${known}`,
  ].join('\n');

const kelvin = (value: number): string => `${value.toFixed(1)} K (${(value * 1.8).toFixed(1)} °F)`;
const kelvinSpan = ([low, high]: Span): string =>
  low.toFixed(1) === high.toFixed(1)
    ? kelvin(low)
    : `${low.toFixed(1)} to ${high.toFixed(1)} K (${(low * 1.8).toFixed(1)} to ${(high * 1.8).toFixed(1)} °F)`;
const degrees = (celsius: number): string =>
  `${celsius.toFixed(1)} °C (${(celsius * 1.8 + 32).toFixed(0)} °F)`;
const degreeSpan = ([low, high]: Span): string =>
  `${low.toFixed(1)} to ${high.toFixed(1)} °C (${(low * 1.8 + 32).toFixed(0)} to ${(high * 1.8 + 32).toFixed(0)} °F)`;
const percentSpan = ([low, high]: Span): string =>
  `${(low * 100).toFixed(1)} to ${(high * 100).toFixed(1)} %`;
const grams = (value: number): string => `${value < 10 ? value.toFixed(1) : value.toFixed(0)} g`;

/** `plan --explain`: formula, inputs, result, source and uncertainty of every number. Always SI, Fahrenheit beside it. */
export const planExplainTexts = {
  'plan.explain.head':
    'How these numbers come about. Temperatures here are true, not those of the thermometer.',

  'plan.explain.air': ({
    from,
    altitudeMetres,
    pressurePascal,
  }: {
    from: 'pressure' | 'altitude' | 'boiling water' | 'assumed sea level';
    altitudeMetres: number | null;
    pressurePascal: number;
  }) =>
    entry('Air pressure', {
      formula: {
        altitude: 'p = 101.325 kPa (1 - 0.0065 H / 288.15)^5.2559, H the height in metres',
        pressure: 'taken as given',
        'boiling water': 'the pressure at which water boils where the thermometer said',
        'assumed sea level': 'p = 101.325 kPa, because neither altitude nor pressure is known',
      }[from],
      given: altitudeMetres === null ? 'no altitude' : `altitude ${altitudeMetres.toFixed(0)} m`,
      gives: kilopascals(pressurePascal),
      source: from === 'boiling water' ? 'IAPWS R7-97 (2012), Eq. 30' : 'ISO 2533:1975, Standard Atmosphere',
      known: 'weather moves it by about 2 kPa, and boiling water by 0.6 K (1 °F)',
    }),

  'plan.explain.water': ({ pressurePascal, boils }: { pressurePascal: number; boils: number }) =>
    entry('Boiling water', {
      formula: 'the temperature at which pure water has the vapour pressure of the air',
      given: kilopascals(pressurePascal),
      gives: degrees(boils),
      source: 'IAPWS R7-97 (2012), Eq. 31',
      known: '0.01 K for the air pressure given',
    }),

  'plan.explain.curve': ({
    sucroseGrams,
    glucose,
    invertGrams,
    saltGrams,
    waterGrams,
    starts,
    solids,
  }: {
    sucroseGrams: number;
    glucose: ReadonlyArray<{ grams: number; de: number }>;
    invertGrams: number;
    saltGrams: number;
    waterGrams: number;
    starts: number;
    solids: Span;
  }) =>
    entry('Boiling syrup', {
      formula:
        'water activity x vapour pressure of water = air pressure; ln a = ln(1-x) + Q/(RT) x^2 (1 + ax + bx^2), Q -17638 J/mol, a -1.0038, b -0.24653, x the share of all dissolved molecules',
      given: [
        `sucrose ${grams(sucroseGrams)}`,
        ...glucose.map((part) => `glucose syrup solids ${grams(part.grams)} of ${part.de} DE`),
        ...(invertGrams >= 0.5 ? [`invert sugar ${grams(invertGrams)}`] : []),
        ...(saltGrams >= 0.05 ? [`salt ${grams(saltGrams)}`] : []),
        `water ${grams(waterGrams)}; fat and starch stand aside`,
      ].join(', '),
      gives: `boils from ${degrees(starts)}; at the target ${percentSpan(solids)} of dissolved plus water is dissolved`,
      source:
        'Starzak & Peacock 1997, Zuckerindustrie 122:380, coefficients by Saska 2002, Int. Sugar J. 104:500, Eq. 3; mixed syrups by the number of molecules, glucose syrup 18016/DE g/mol',
      known:
        '2 K (4 °F) from 80 to 95 % solids, 5 K above 96 %: published tables differ by as much, and no measured curve of a mixed syrup was found',
    }),

  'plan.explain.target': ({
    seaLevel,
    today,
    curveKelvin,
    perFeetKelvin,
    boilingWaterKelvin,
  }: {
    seaLevel: Span;
    today: Span;
    curveKelvin: Span;
    perFeetKelvin: number | null;
    boilingWaterKelvin: number;
  }) =>
    entry('Target today', {
      formula: 'the temperature at which the syrup with the same water left boils in this air',
      given: `sea level ${degreeSpan(seaLevel)}`,
      gives: `${degreeSpan(today)}, lower by ${kelvinSpan(curveKelvin)}. By the rules of thumb: ${
        perFeetKelvin === null ? '' : `1 °F for every 500 ft, ${kelvin(perFeetKelvin)}; `
      }what boiling water reads low, ${kelvin(boilingWaterKelvin)}${
        Math.abs(boilingWaterKelvin) < 0.5
          ? ''
          : `. Syrup shifts by ${(curveKelvin[1] / boilingWaterKelvin).toFixed(2)} times as much as water, because it boils hotter`
      }`,
      source:
        'the boiling curve above; rules: Colorado State University Extension (500 ft), Utah State University Extension (boiling water)',
      known: 'a few tenths of a kelvin: errors of the curve cancel in the difference',
    }),

  'plan.explain.dial': ({
    id,
    basis,
    present,
    aim,
    shown,
    sd,
  }: {
    id: string | null;
    basis: 'two points' | 'ice' | 'boiling water' | 'taken as right';
    present: boolean;
    aim: number;
    shown: number;
    sd: number;
  }) =>
    entry('Thermometer', {
      formula: {
        'two points': 'a straight line through its readings in ice (0 °C) and in boiling water (as above)',
        ice: 'the same error everywhere as in ice',
        'boiling water': 'the same error everywhere as in boiling water',
        'taken as right': 'none: its readings are taken as they are',
      }[basis],
      given: `${present ? escapeForTerminal(id ?? 'a thermometer') : 'no thermometer'}, basis: ${basis}`,
      gives: `shows ${degrees(shown)} when the syrup has ${degrees(aim)}`,
      source:
        'Wisconsin Food Code Fact Sheet 7 for the two checks; carrying the line on to candy temperatures is our judgement',
      known: `${kelvin(2 * sd)} either way (two standard deviations)`,
    }),

  'plan.explain.takeoff': ({
    today,
    aim,
    carryOver,
    takeOff,
    stove,
    damp,
  }: {
    today: Span;
    aim: number;
    carryOver: number;
    takeOff: number;
    stove: string;
    damp: boolean;
  }) =>
    entry('Take-off', {
      formula: `come to rest ${damp ? 'two thirds (damp room)' : 'half'} of the way up the window, less what the pot's own heat adds`,
      given: `window ${degreeSpan(today)}, ${stove}: ${kelvin(carryOver)} on a trivet`,
      gives: `${degrees(takeOff)}, coming to rest at ${degrees(aim)}`,
      source:
        'carry-over: a trade book of about 1909 and recipe pages, 1 to 3 °F; the place in the window is our judgement; upper end on damp days: Exploratorium',
      known: '1 K (2 °F) until this kitchen has shown its own',
    }),

  'plan.explain.mass': ({
    totalGrams,
    waterGrams,
    waterLeft,
    laterGrams,
    cookedGrams,
    moisture,
  }: {
    totalGrams: number;
    waterGrams: number;
    waterLeft: Span;
    laterGrams: number;
    cookedGrams: number;
    moisture: Span;
  }) =>
    entry('Water to boil away', {
      formula: 'everything but water stays: water left = dissolved x (1 - s) / s, s the solids at the target',
      given: `${grams(totalGrams)} in the pot, of it ${grams(waterGrams)} water; ${grams(laterGrams)} added later`,
      gives: `${grams(waterLeft[0])} to ${grams(waterLeft[1])} of water left; ${grams(cookedGrams)} cooked, ${percentSpan(moisture)} water in the whole`,
      source: 'conservation of mass; compositions as in: kettlehand recipes items',
      known: '1 % of the mass, from 2 K of the curve and the water in syrups as bought',
    }),

  'plan.explain.yield': ({
    cookedGrams,
    shares,
    pieces,
  }: {
    cookedGrams: number;
    shares: { low: number; typical: number; high: number };
    pieces: { low: number; typical: number; high: number };
  }) =>
    entry('Yield', {
      formula: `cooked mass x ${shares.low}, ${shares.typical}, ${shares.high}; pieces = mass / mass of a piece, whole ones`,
      given: `${grams(cookedGrams)} cooked`,
      gives: `${grams(cookedGrams * shares.low)}, ${grams(cookedGrams * shares.typical)}, ${grams(cookedGrams * shares.high)}; ${pieces.low}, ${pieces.typical}, ${pieces.high} pieces`,
      source:
        'losses of 8 to 20 %; nine published recipes state 69 to 101 % of what their ingredients can give, median 89 %',
      known: 'the range shown; weigh what you get, and the next plan can be held to it',
    }),

  'plan.explain.rope': ({
    expectedGrams,
    pieceGrams,
    ropeMillimetres,
    metres,
    cut,
    density,
  }: {
    expectedGrams: number;
    pieceGrams: number;
    ropeMillimetres: number;
    metres: number;
    cut: number;
    density: { low: number; typical: number; high: number };
  }) =>
    entry('Rope and pieces', {
      formula: 'length = mass / (density x pi/4 x diameter^2)',
      given: `${grams(expectedGrams)}, pieces of ${grams(pieceGrams)}, rope ${ropeMillimetres} mm, ${density.typical} g/cm3`,
      gives: `${metres.toFixed(1)} m, cut every ${cut.toFixed(0)} mm`,
      source:
        'unaerated syrup 1.45 to 1.5 g/cm3 (NBS Circular C440); pulled candy: our judgement, no measured value found',
      known: `${density.low} to ${density.high} g/cm3: 8 % either way`,
    }),

  'plan.explain.glass': ({
    moisture,
    glass,
    pulls,
    room,
    effects,
  }: {
    moisture: Span;
    glass: Span;
    pulls: Span;
    room: number;
    effects: ReadonlyArray<{ kelvin: number; glass: number; moisture: number; firmness: string }>;
  }) =>
    entry('What it will be like', {
      formula:
        'glass transition = (sum of sugars x their own + 4.7 x water x -135 °C) / (sugars + 4.7 x water); firmness by how far the room lies above it: 0, 8, 25, 45 K',
      given: `${percentSpan(moisture)} water in the whole, room ${degrees(room)}`,
      gives: `glass transition ${degreeSpan(glass)}, too soft to pull above ${degrees(pulls[1])}, too stiff below ${degrees(pulls[0])} (hands wait for their own limit); ${effects
        .map(
          (effect) =>
            `${effect.kelvin > 0 ? '+' : '-'}${Math.abs(effect.kelvin)} K: ${effect.glass.toFixed(0)} °C, ${(effect.moisture * 100).toFixed(1)} % water, ${effect.firmness}`,
        )
        .join('; ')}`,
      source:
        'Gordon-Taylor (Berk 2008, Eq. 1.13); dry sugars: Mouritsen & Styrbaek; syrup solids and the weight of water: Roos & Karel 1991 (from memory); pulling by viscosity, Williams-Landel-Ferry; words and limits: our judgement',
      known: '6 K; air pressure never shifts it',
    }),

  'plan.explain.grain': ({
    sucroseGrams,
    doctorGrams,
    inverted,
    ratio,
    supersaturation,
    missingGrams,
    enough,
    tooLittle,
  }: {
    sucroseGrams: number;
    doctorGrams: number;
    inverted: number;
    ratio: number | null;
    supersaturation: number | null;
    missingGrams: number;
    enough: number;
    tooLittle: number;
  }) =>
    entry('Graining', {
      formula: `dry syrup solids and invert sugar over sucrose: low from ${enough}, high below ${tooLittle}`,
      given: `${grams(doctorGrams)} to ${grams(sucroseGrams)} of sucrose; acid splits about ${(inverted * 100).toFixed(0)} % of it in 28 min`,
      gives: `${ratio === null ? 'no sucrose' : ratio.toFixed(2)}${
        supersaturation === null
          ? ''
          : `; ${supersaturation.toFixed(0)} times as much sucrose for its water as can stay dissolved at room temperature, so it is the doctor that holds it`
      }; ${missingGrams > 0.5 ? `${grams(missingGrams)} of dry syrup solids are missing` : 'nothing missing'}`,
      source:
        "Hartel 2012, The Manufacturing Confectioner (80:20 the leanest); Knott's Pop Corn Book (75:25); inversion: Vukov 1965; solubility: CRC Handbook",
      known:
        'a rule for well-handled batches; inversion to the order of magnitude; a crystal on the wall defeats it',
    }),

  'plan.explain.humidity': (
    { humidity, room, sticky }: { humidity: Span; room: number | null; sticky: Span | null },
    printer: Printer,
  ) =>
    entry('Air it is in balance with', {
      formula: 'water activity at room temperature; damper air makes it sticky, drier air dries it',
      given:
        room === null ? 'humidity of the room not known' : `room at ${(room * 100).toFixed(0)} % humidity`,
      gives: `${percentSpan(humidity)} humidity${
        room === null
          ? ''
          : sticky === null
            ? '; this air does not make it sticky'
            : `; sticky unwrapped after ${printer.time(sticky[0])} to ${printer.time(sticky[1])}`
      }`,
      source:
        'Starzak & Mathlouthi 2006, Food Chem. 96:346 (coefficients from memory), widened to Starzak & Peacock 1997; time: 5 to 20 g of water per m2 at 2 to 5 mm/s, our judgement',
      known: '8 % humidity; the time to a factor of four',
    }),

  'plan.explain.pot': ({ litres, needed, depth }: { litres: number; needed: number; depth: Span | null }) =>
    entry('Pot', {
      formula: 'four times the volume of the dissolved syrup; depth = volume / area of the pot',
      given: `${litres.toFixed(2)} l when dissolved`,
      gives: `${needed.toFixed(1)} l${depth === null ? '; no diameter, so no depth' : `; ${depth[0].toFixed(0)} mm deep at first, ${depth[1].toFixed(0)} mm at the end`}`,
      source:
        'about four times: Household Discoveries c. 1908, recipe pages 3 to 4; density: ICUMSA SPS-4 form, beyond 80 °C carried on',
      known: 'foam of butter, molasses or milk can need more; volume 2 %',
    }),

  'plan.explain.never':
    'Air pressure shifts boiling temperatures and cooking stages only. Scorch limit, hand limits, glass transition and burn times stay.',
} as const;
