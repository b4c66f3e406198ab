import { OutOfRange, within } from './out-of-range.js';
import { type BoilingCurve, dissolvedGrams, type Syrup } from './syrup.js';

/**
 * Specific heat of a sugar solution, joule per gram and kelvin.
 * Source: Llano 2005, as cited in public process code: 4184 - 2971 B + 460 B q + 7.5 B T with
 * B solids fraction, T Celsius, and the purity q taken as 1. Above 100 °C and 90 % extrapolated.
 */
export const solutionJoulePerGramKelvin = (solidsFraction: number, celsius: number): number =>
  4.184 - 2.511 * solidsFraction + 0.0075 * solidsFraction * celsius;

/** Fat, starch and protein that are warmed with the syrup; from memory: liquid fat 2.0 to 2.2, starch 1.6 to 1.8. */
export const otherJoulePerGramKelvin = 2;

/** Grams in the pot that take up heat beside water and what is dissolved. */
export const otherGrams = (syrup: Syrup): number => syrup.fatGrams + syrup.inertGrams;

/**
 * Heat that warms a syrup between two temperatures without evaporation, joule; negative where it cools.
 * Heat of dissolving the crystals is left out: it is about 2 % of a batch's heating.
 */
export const warmingJoule = (syrup: Syrup, fromCelsius: number, toCelsius: number): number => {
  const dissolved = dissolvedGrams(syrup);
  const solution = dissolved + syrup.waterGrams;
  const middle = (fromCelsius + toCelsius) / 2;
  const perKelvin =
    (solution > 0 ? solution * solutionJoulePerGramKelvin(dissolved / solution, middle) : 0) +
    otherGrams(syrup) * otherJoulePerGramKelvin;
  return perKelvin * (toCelsius - fromCelsius);
};

/** Heat that a batch has taken up along its boiling curve, counted from the thinnest syrup of the table. */
export type HeatAlongCurve = {
  readonly validSolidsFraction: readonly [number, number];
  readonly validCelsius: readonly [number, number];
  readonly validJoule: readonly [number, number];
  /** Joule at a boiling temperature: sensible heat of all in the pot and evaporation. OutOfRange outside. */
  jouleAt(celsius: number): number;
  jouleAtSolids(solidsFraction: number): number;
  /** The inverse: where the syrup is after that heat. OutOfRange outside. */
  celsiusAt(joule: number): number;
  solidsAt(joule: number): number;
};

const thinnestSolidsFraction = 0.1;
const panels = 64;
const inverseSteps = 50;

type Node = { readonly solids: number; readonly joule: number; readonly slope: number };

const tableOf = (curve: BoilingCurve, other: number): readonly Node[] => {
  const [low, high] = [thinnestSolidsFraction, curve.validSolidsFraction[1]];
  const jouleBySolids = (solids: number): number => {
    const grams = curve.dissolvedGrams / solids;
    const perKelvin =
      grams * solutionJoulePerGramKelvin(solids, curve.celsiusAt(solids)) + other * otherJoulePerGramKelvin;
    const evaporated = curve.dissolvedGrams / (solids * solids);
    return (
      perKelvin * curve.kelvinPerSolidsFraction(solids) + evaporated * curve.evaporationJoulePerGram(solids)
    );
  };
  const width = (high - low) / panels;
  const nodes: Node[] = [{ solids: low, joule: 0, slope: jouleBySolids(low) }];
  for (let panel = 1; panel <= panels; panel++) {
    const before = nodes[panel - 1] as Node;
    const solids = panel === panels ? high : low + panel * width;
    const slope = jouleBySolids(solids);
    const middle = jouleBySolids((before.solids + solids) / 2);
    const simpson = (before.slope + 4 * middle + slope) / 6;
    nodes.push({ solids, joule: before.joule + simpson * (solids - before.solids), slope });
  }
  return nodes;
};

/** Cubic through both nodes with both slopes, `share` of the way. */
const between = (from: Node, to: Node, share: number): number => {
  const width = to.solids - from.solids;
  const rest = 1 - share;
  return (
    rest * rest * ((1 + 2 * share) * from.joule + share * width * from.slope) +
    share * share * ((3 - 2 * share) * to.joule - rest * width * to.slope)
  );
};

const build = (curve: BoilingCurve, other: number): HeatAlongCurve => {
  const nodes = tableOf(curve, other);
  const first = nodes[0] as Node;
  const last = nodes[nodes.length - 1] as Node;
  const validSolidsFraction = [first.solids, last.solids] as const;
  const validJoule = [first.joule, last.joule] as const;
  const validCelsius = [curve.celsiusAt(first.solids), curve.validCelsius[1]] as const;
  const width = (last.solids - first.solids) / panels;
  const panelFrom = (index: number): readonly [Node, Node] => {
    const at = Math.min(panels - 1, Math.max(0, index));
    return [nodes[at] as Node, nodes[at + 1] as Node];
  };

  const jouleAtSolids = (solidsFraction: number): number => {
    const solids = within('solids fraction', solidsFraction, ...validSolidsFraction, 1e-9);
    const [from, to] = panelFrom(Math.floor((solids - first.solids) / width));
    return between(from, to, (solids - from.solids) / (to.solids - from.solids));
  };

  const solidsAt = (joule: number): number => {
    const heat = within('joule', joule, ...validJoule, 1e-6);
    const above = nodes.findIndex((node) => node.joule >= heat);
    const [from, to] = panelFrom(above - 1);
    let [low, high] = [0, 1];
    for (let step = 0; step < inverseSteps; step++) {
      const middle = (low + high) / 2;
      if (between(from, to, middle) < heat) low = middle;
      else high = middle;
    }
    return from.solids + ((low + high) / 2) * (to.solids - from.solids);
  };

  return {
    validSolidsFraction,
    validCelsius,
    validJoule,
    jouleAt: (celsius) => {
      if (!(celsius >= validCelsius[0] - 1e-6)) throw new OutOfRange('celsius', celsius, ...validCelsius);
      return jouleAtSolids(Math.max(first.solids, curve.solidsAt(celsius)));
    },
    jouleAtSolids,
    celsiusAt: (joule) => curve.celsiusAt(solidsAt(joule)),
    solidsAt,
  };
};

const built = new WeakMap<BoilingCurve, Map<number, HeatAlongCurve>>();

/**
 * Heat content along a boiling curve as a function of temperature, with `other` grams of fat and inert warmed with it.
 * Differences of jouleAt are what the burner must bring between two temperatures. The table behind it is made once for
 * a curve and a mass; solids fraction 0.1 up to the end of the curve.
 * Source: energy balance; specific heat and evaporation as in this file and in the curve.
 */
export const heatAlongCurve = (curve: BoilingCurve, other: number): HeatAlongCurve => {
  const byMass = built.get(curve) ?? new Map<number, HeatAlongCurve>();
  built.set(curve, byMass);
  const known = byMass.get(other);
  if (known !== undefined) return known;
  const made = build(curve, other);
  byMass.set(other, made);
  return made;
};

/**
 * Heat from a cold pot to a boiling temperature, joule: warming to where this syrup boils, then along its curve.
 * At or below that point only the warming counts.
 */
export const heatToReachJoule = (
  syrup: Syrup,
  curve: BoilingCurve,
  fromCelsius: number,
  toCelsius: number,
): number => {
  const startSolids = curve.dissolvedGrams / (curve.dissolvedGrams + syrup.waterGrams);
  const boilsFrom = curve.celsiusAt(startSolids);
  if (toCelsius <= boilsFrom) return warmingJoule(syrup, fromCelsius, toCelsius);
  const heat = heatAlongCurve(curve, otherGrams(syrup));
  return (
    warmingJoule(syrup, fromCelsius, boilsFrom) + heat.jouleAt(toCelsius) - heat.jouleAtSolids(startSolids)
  );
};
