import type { BoilingCurve } from '../sugar/syrup.js';

/** The curve as a table against water per gram dissolved, for a pot that asks thousands of times. */
export type CurveTable = {
  celsiusAt(waterGrams: number): number;
  /** Kelvin that the boil rises for each gram that leaves. */
  kelvinPerGram(waterGrams: number): number;
  evaporationJoulePerGram(waterGrams: number): number;
  readonly leastWaterGrams: number;
};

type Row = { readonly water: number; readonly celsius: number; readonly evaporation: number };

const rows = 900;
const wettestSolids = 0.12;
const tables = new WeakMap<BoilingCurve, CurveTable>();

const lay = (curve: BoilingCurve): CurveTable => {
  const driest = curve.validSolidsFraction[1];
  const least = curve.dissolvedGrams * (1 / driest - 1);
  const most = curve.dissolvedGrams * (1 / wettestSolids - 1);
  // Evenly in the logarithm of water: the curve bends where little is left.
  const ratio = Math.log(most / least) / (rows - 1);
  const table: Row[] = Array.from({ length: rows }, (_, index) => {
    const water = index === 0 ? least : least * Math.exp(index * ratio);
    const solids = Math.min(driest, curve.dissolvedGrams / (curve.dissolvedGrams + water));
    return { water, celsius: curve.celsiusAt(solids), evaporation: curve.evaporationJoulePerGram(solids) };
  });
  const around = (water: number): readonly [Row, Row, number] => {
    const place = Math.log(Math.max(water, least) / least) / ratio;
    const index = Math.min(rows - 2, Math.max(0, Math.floor(place)));
    const below = table[index] as Row;
    const above = table[index + 1] as Row;
    return [below, above, (water - below.water) / (above.water - below.water)];
  };
  return {
    leastWaterGrams: least,
    celsiusAt: (water) => {
      const [below, above, share] = around(water);
      return below.celsius + share * (above.celsius - below.celsius);
    },
    kelvinPerGram: (water) => {
      const [below, above] = around(water);
      return (below.celsius - above.celsius) / (above.water - below.water);
    },
    evaporationJoulePerGram: (water) => {
      const [below, above, share] = around(water);
      return below.evaporation + share * (above.evaporation - below.evaporation);
    },
  };
};

export const curveTable = (curve: BoilingCurve): CurveTable => {
  const known = tables.get(curve);
  if (known !== undefined) return known;
  const made = lay(curve);
  tables.set(curve, made);
  return made;
};
