import type { Syrup } from './syrup.js';
import { zeroCelsiusKelvin } from './water.js';

/**
 * Glass transitions of the dry sugars, Celsius. Sucrose 62, glucose 31, fructose 5: Mouritsen & Styrbaek, Mouthfeel,
 * hard candies. Other authors have sucrose at 52 (Berk 2008, Table 1.4) and 60: the spread is in `spreadKelvin`.
 */
const sucroseCelsius = 62;
/** Half glucose, half fructose. */
const invertCelsius = (31 + 5) / 2;
/** Water, Johari 1987, in Berk 2008, p. 22. */
const waterCelsius = -135;

/**
 * Dry starch syrups and maltodextrins by dextrose equivalent: Roos & Karel 1991 (from memory) for 5 to 36, glucose at
 * 100; straight between the rows.
 */
const glucoseSolidsRows: ReadonlyArray<readonly [de: number, celsius: number]> = [
  [5, 188],
  [10, 160],
  [20, 141],
  [36, 100],
  [100, 31],
];

/** Dry glass transition of glucose syrup solids, Celsius; the end rows hold beyond them. */
export const glucoseSolidsGlassCelsius = (de: number): number => {
  const upper = glucoseSolidsRows.findIndex(([rowDe]) => rowDe >= de);
  const to = glucoseSolidsRows.at(upper) as readonly [number, number];
  const from = upper > 0 ? (glucoseSolidsRows[upper - 1] as readonly [number, number]) : to;
  if (from === to) return to[1];
  return from[1] + ((de - from[0]) / (to[0] - from[0])) * (to[1] - from[1]);
};

/** Weight of water against sugars in the Gordon-Taylor equation; Roos & Karel 1991, sucrose and water (from memory). */
const waterWeight = 4.7;

/**
 * Glass transition of the sugars and water of a batch, Celsius: the weighted mean of Gordon & Taylor 1952 (Berk 2008,
 * Eq. 1.13), sugars weighing 1 and water 4.7. Salt, fat and starch are left out.
 */
export const glassTransitionCelsius = (syrup: Syrup): number => {
  const parts = [
    { weight: syrup.sucroseGrams, celsius: sucroseCelsius },
    { weight: syrup.invertGrams, celsius: invertCelsius },
    { weight: syrup.waterGrams * waterWeight, celsius: waterCelsius },
    ...syrup.glucoseSolids.map(({ grams, de }) => ({
      weight: grams,
      celsius: glucoseSolidsGlassCelsius(de),
    })),
  ];
  const weights = parts.reduce((sum, part) => sum + part.weight, 0);
  return (
    parts.reduce((sum, part) => sum + part.weight * (part.celsius + zeroCelsiusKelvin), 0) / weights -
    zeroCelsiusKelvin
  );
};

/** What the glass transition is known to, for one composition: published dry sucrose alone spans 10 K. */
export const spreadKelvin = 6;

export const firmnesses = ['runny', 'soft', 'chewy', 'firm', 'glassy'] as const;
export type Firmness = (typeof firmnesses)[number];

/**
 * How candy eats, by how far the room lies above its glass transition, kelvin. Chewy pulled candy of 6 to 9 % water
 * lies 5 to 25 K above; commercial hard candy (28 to 49 °C, Kawai et al. 2019) below. The cuts: our judgement.
 */
const firmnessFrom: ReadonlyArray<readonly [kelvinAbove: number, Firmness]> = [
  [45, 'runny'],
  [25, 'soft'],
  [5, 'chewy'],
  [0, 'firm'],
];

export const firmnessAt = (roomCelsius: number, glassCelsius: number): Firmness =>
  firmnessFrom.find(([kelvinAbove]) => roomCelsius - glassCelsius >= kelvinAbove)?.[1] ?? 'glassy';

/** Viscosity of a glass at its transition, pascal second: the usual convention (from memory). */
const glassPascalSecond = 1e12;
const steepness = 17.44;
const offsetKelvin = 51.6;

/**
 * Viscosity above the glass transition, pascal second: Williams, Landel & Ferry 1955 with the general constants (Berk
 * 2008, Eq. 1.15). At and below the transition the value there. Good for the power of ten, within about 100 K.
 */
export const viscosityPascalSecond = (celsius: number, glassCelsius: number): number => {
  const above = Math.max(0, celsius - glassCelsius);
  return glassPascalSecond * 10 ** ((-steepness * above) / (offsetKelvin + above));
};

/** Kelvin above the glass transition at which the viscosity is `pascalSecond`; inverse of viscosityPascalSecond. */
const kelvinAboveGlass = (pascalSecond: number): number => {
  const decades = Math.log10(glassPascalSecond / pascalSecond);
  return (offsetKelvin * decades) / (steepness - decades);
};

/** Thinner than this a rope sags faster than it is pulled; stiffer than the other hands cannot draw it. Our judgement. */
const droopsBelowPascalSecond = 1e3;
const stiffAbovePascalSecond = 1e6;

/**
 * Temperatures between which a batch pulls: [too stiff below, droops above], Celsius. What hands stand is another
 * matter (skin.ts) and comes first.
 */
export const pullingCelsius = (glassCelsius: number): readonly [number, number] => [
  glassCelsius + kelvinAboveGlass(stiffAbovePascalSecond),
  glassCelsius + kelvinAboveGlass(droopsBelowPascalSecond),
];
