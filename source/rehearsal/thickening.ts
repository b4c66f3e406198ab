/**
 * What changes in a syrup as it thickens: heat passes from the base less easily, and water reaches the surface less
 * easily. Argument: water in the solution, mass over mass.
 */

const clamp = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value));

/** A thin syrup as it is weighed, and one that is nearly done. */
const thinWater = 0.3;
const thickWater = 0.08;

/**
 * Heat passes from base to boiling syrup in proportion to viscosity to the power of about -1/4 (boiling of viscous
 * liquids, from memory); between 70 % at 105 °C and 92 % at 125 °C sugar syrup thickens some thirtyfold: to two fifths. So a
 * base gets hotter towards the end, and gives more back on the trivet.
 */
const thickBaseShare = 0.42;

/** What the base passes on, over what it passes to thin syrup, 0 to 1. */
export const baseShare = (water: number): number =>
  1 - (1 - thickBaseShare) * clamp((thinWater - water) / (thinWater - thickWater), 0, 1.2);

/**
 * Steam into the still air of a half-empty pot over a surface that does not boil, g/(s m2 Pa): about 4 kg/(m2 h) at
 * 90 °C. Heat transfer by free convection over a hot plate, Nu = 0.15 Ra^(1/3) (Lloyd & Moran 1974, from memory), and the
 * analogy of Lewis give three times as much over an open tank; the pot's wall shelters it. Our judgement.
 */
const throughAir = 1.5e-5;

/**
 * To the surface water has to come through the syrup, by turning over under its own denser skin, m/s:
 * 0.15 (g Δρ/ρ D² / ν)^(1/3) with Δρ/ρ = 0.015 gives about 8e-6 in thin syrup (40 % water; D = 1e-9 m2/s, ν = 1e-6 m2/s)
 * and 4e-7 at 8 % (D = 1e-10, ν = 1e-4); diffusion of water in hot sucrose solutions from memory. Exponential between.
 */
const throughSyrup = { metresPerSecond: 8e-6, atWater: 0.4, foldWater: 0.107 } as const;
const gramsPerCubicMetre = 1.35e6;

/**
 * What leaves a surface that does not boil, g/(s m2): two resistances in a row, the syrup's and the air's, with the
 * water's partial pressure taken as proportional to its concentration. `pascal`: of water at the bulk of the syrup,
 * over that of the room.
 */
export const offSurface = (pascal: number, water: number): number => {
  const { metresPerSecond, atWater, foldWater } = throughSyrup;
  const most = throughAir * pascal;
  const reach =
    metresPerSecond * Math.exp((clamp(water, 0, atWater) - atWater) / foldWater) * gramsPerCubicMetre * water;
  return reach > 0 ? (most * reach) / (most + reach) : 0;
};
