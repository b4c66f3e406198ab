import type { Syrup } from './syrup.js';
import { gasConstant, waterMolarGrams, zeroCelsiusKelvin } from './water.js';

export const sucroseMolarGrams = 342.2965;
export const hexoseMolarGrams = 180.156;
const saltMolarGrams = 58.443;
const ionsOfSalt = 2;

/**
 * Mean molar mass of dry glucose syrup solids, g/mol.
 * Follows from the definition of the dextrose equivalent: reducing ends as dextrose, per 100 g of solids.
 */
export const glucoseSolidsMolarGrams = (de: number): number => (100 * hexoseMolarGrams) / de;

/**
 * Norrish constants: how strongly a sugar binds water beyond its number of molecules.
 * Source: Chirife, Favetto & Ferro Fontan 1982, Lebensm.-Wiss. Technol. 15:159 (from memory): sucrose 6.47, glucose and fructose 2.25.
 */
const hexoseWeight = Math.sqrt(2.25 / 6.47);

/**
 * Weight of glucose syrup solids in the activity term. At 42 DE the plain mole count matches measured water holding
 * of corn syrup (Sloan & Labuza 1975) within 1.6 g per 100 g; pure dextrose is a hexose. Between: our judgement.
 */
const glucoseSolidsWeight = (de: number): number => {
  const towardsHexose = Math.min(1, Math.max(0, (de - 65) / (100 - 65)));
  return 1 + (hexoseWeight - 1) * towardsHexose;
};

/** What the activity of water needs to know about what is dissolved, whatever its amount of water. */
export type Solute = {
  readonly grams: number;
  readonly moles: number;
  /** Weighted mean of the solutes' weights in the activity term; 1 for sucrose. */
  readonly weight: number;
};

export const soluteOf = (syrup: Syrup): Solute => {
  const parts = [
    { grams: syrup.sucroseGrams, moles: syrup.sucroseGrams / sucroseMolarGrams, weight: 1 },
    { grams: syrup.invertGrams, moles: syrup.invertGrams / hexoseMolarGrams, weight: hexoseWeight },
    { grams: syrup.saltGrams, moles: (ionsOfSalt * syrup.saltGrams) / saltMolarGrams, weight: 1 },
    ...syrup.glucoseSolids.map(({ grams, de }) => ({
      grams,
      moles: grams / glucoseSolidsMolarGrams(de),
      weight: glucoseSolidsWeight(de),
    })),
  ];
  const grams = parts.reduce((sum, part) => sum + part.grams, 0);
  const moles = parts.reduce((sum, part) => sum + part.moles, 0);
  const weight = moles > 0 ? parts.reduce((sum, part) => sum + part.moles * part.weight, 0) / moles : 1;
  return { grams, moles, weight };
};

/** Mole fraction of all solutes at a solids fraction (mass dissolved over mass dissolved plus water). */
export const moleFractionOf = (solute: Solute, solidsFraction: number): number => {
  const solidMoles = (solidsFraction * solute.moles) / solute.grams;
  return solidMoles / (solidMoles + (1 - solidsFraction) / waterMolarGrams);
};

/** Its slope by solids fraction. */
export const moleFractionSlope = (solute: Solute, solidsFraction: number): number => {
  const molesPerGram = solute.moles / solute.grams;
  const moles = solidsFraction * molesPerGram + (1 - solidsFraction) / waterMolarGrams;
  return molesPerGram / waterMolarGrams / (moles * moles);
};

/** The inverse of moleFractionOf. */
export const solidsFractionOf = (solute: Solute, moleFraction: number): number => {
  const solidGrams = moleFraction * (solute.grams / solute.moles);
  return solidGrams / (solidGrams + (1 - moleFraction) * waterMolarGrams);
};

/**
 * The Margules form for sucrose solutions: ln a = ln(1-x) + Q/(RT) x^2 (1 + a x + b x^2).
 * Source: Starzak & Peacock 1997, Zuckerindustrie 122:380-387; coefficients as given by Saska 2002,
 * Int. Sugar J. 104(1247):500-507, Eq. 3. For hexoses x in the activity term is weighted (see hexoseWeight).
 */
const excessJoulePerMole = -17_638;
const first = -1.0038;
const second = -0.24653;

/** x^2 (1 + a x + b x^2) with the solutes' weight; dimensionless. */
export const activityShape = (solute: Solute, moleFraction: number): number => {
  const x = solute.weight * moleFraction;
  return x * x * (1 + first * x + second * x * x);
};

const activityShapeSlope = (solute: Solute, moleFraction: number): number => {
  const x = solute.weight * moleFraction;
  return solute.weight * x * (2 + 3 * first * x + 4 * second * x * x);
};

/** Natural logarithm of the activity of water. */
export const logWaterActivity = (solute: Solute, moleFraction: number, celsius: number): number =>
  Math.log1p(-moleFraction) +
  (excessJoulePerMole / (gasConstant * (celsius + zeroCelsiusKelvin))) * activityShape(solute, moleFraction);

/** Its slope by mole fraction; negative over the range of the boiling curve. */
export const logWaterActivitySlope = (solute: Solute, moleFraction: number, celsius: number): number =>
  -1 / (1 - moleFraction) +
  (excessJoulePerMole / (gasConstant * (celsius + zeroCelsiusKelvin))) *
    activityShapeSlope(solute, moleFraction);

/**
 * Heat to bring one gram of water out of the syrup into pure water, joule (Gibbs-Helmholtz on the form above):
 * what evaporation from syrup costs beyond the latent heat of pure water.
 */
export const bindingJoulePerGram = (solute: Solute, moleFraction: number): number =>
  (-excessJoulePerMole * activityShape(solute, moleFraction)) / waterMolarGrams;
