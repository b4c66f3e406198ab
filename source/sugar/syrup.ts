/** A syrup by mass. `glucoseSolids` lists dry solids by dextrose equivalent; fat and inert do not dissolve. */
export type Syrup = {
  readonly sucroseGrams: number;
  readonly glucoseSolids: ReadonlyArray<{ readonly grams: number; readonly de: number }>;
  readonly invertGrams: number;
  readonly saltGrams: number;
  readonly waterGrams: number;
  readonly fatGrams: number;
  readonly inertGrams: number;
};

/** The boiling curve of one syrup at one air pressure. Fractions count dissolved solids over solids plus water. */
export type BoilingCurve = {
  readonly pressurePascal: number;
  readonly waterBoilsCelsius: number;
  /** Grams of what is dissolved: sugars, syrup solids, salt. */
  readonly dissolvedGrams: number;
  /** Range of solids fractions in which the curve may be asked. */
  readonly validSolidsFraction: readonly [number, number];
  readonly validCelsius: readonly [number, number];
  /** Boiling temperature at a solids fraction; RangeError outside the valid range. */
  celsiusAt(solidsFraction: number): number;
  /** Solids fraction that boils at `celsius`; RangeError outside the valid range. */
  solidsAt(celsius: number): number;
  /** Grams of water left in the pot when it boils at `celsius`. */
  waterGramsAt(celsius: number): number;
  /** Here and today's temperature of the syrup that would boil at `seaLevelCelsius` under 101 325 Pa. */
  fromSeaLevel(seaLevelCelsius: number): number;
};
