import { numberAt } from '../units/at.js';

/** A mass of candy on a slab. Kelvin, metres, seconds, grams. */
export type Slab = {
  advance(seconds: number): void;
  /** The edges are turned to the middle with a scraper: thicker, half mixed, on a cool spot. */
  fold(): void;
  /** In a warm oven for a few minutes. */
  warm(celsius: number, seconds: number): void;
  middleCelsius(): number;
  /** What lies against the air. */
  surfaceCelsius(): number;
  meanCelsius(): number;
  thicknessMetres(): number;
};

/** Boiled sugar and syrup; conductivity 0.3-0.45 W/(m K), from memory. */
const conductivity = 0.4;
const kilogramPerCubicMetre = 1400;
const joulePerKilogramKelvin = 2100;
/** Still air with radiation, and contact with a greased plate. Our judgement. */
const airWatts = 12;
const contactWatts = 110;
/** A stone or steel plate under it: what takes up the heat, and gives it to the room. Our judgement. */
const plate = { joulePerKelvin: 8000, wattsPerKelvin: 4 } as const;
/** Poured it runs out to about this thickness; folded, never thicker than a hand works. Our judgement. */
const poured = 0.009;
const thickest = 0.022;
const foldsBy = 1.5;
const mixedByFold = 0.6;
const coolSpotShare = 0.5;

const layers = 12;

/**
 * Conduction through the thickness (Fourier), the room's air above and the plate below; a mass folded over is thicker
 * and cools more slowly, which is why its skin says nothing of its middle.
 */
export const slabOf = (grams: number, startCelsius: number, roomCelsius: number): Slab => {
  const kilograms = grams / 1000;
  let thickness = poured;
  let area = kilograms / kilogramPerCubicMetre / thickness;
  let celsius: number[] = Array.from({ length: layers }, () => startCelsius);
  let plateCelsius = roomCelsius;

  const mean = (): number => celsius.reduce((sum, value) => sum + value, 0) / layers;

  const tick = (seconds: number): void => {
    const depth = thickness / layers;
    const between = conductivity / depth;
    const each = kilogramPerCubicMetre * joulePerKilogramKelvin * depth;
    const toAir = 1 / (1 / airWatts + depth / 2 / conductivity);
    const toPlate = 1 / (1 / contactWatts + depth / 2 / conductivity);
    const next = celsius.map((own, index) => {
      const above =
        index === 0 ? toAir * (roomCelsius - own) : between * (numberAt(celsius, index - 1) - own);
      const below =
        index === layers - 1
          ? toPlate * (plateCelsius - own)
          : between * (numberAt(celsius, index + 1) - own);
      return own + (seconds * (above + below)) / each;
    });
    const given = toPlate * (numberAt(celsius, layers - 1) - plateCelsius) * area;
    plateCelsius +=
      (seconds * (given - plate.wattsPerKelvin * (plateCelsius - roomCelsius))) / plate.joulePerKelvin;
    celsius = next;
  };

  return {
    advance: (seconds) => {
      const depth = thickness / layers;
      const stable = (0.3 * depth ** 2 * kilogramPerCubicMetre * joulePerKilogramKelvin) / conductivity;
      const steps = Math.max(1, Math.ceil(seconds / Math.min(stable, 2)));
      for (let step = 0; step < steps && seconds > 0; step++) tick(seconds / steps);
    },
    fold: () => {
      const middle = mean();
      celsius = celsius.map((own) => own + mixedByFold * (middle - own));
      thickness = Math.min(thickest, thickness * foldsBy);
      area = kilograms / kilogramPerCubicMetre / thickness;
      plateCelsius += coolSpotShare * (roomCelsius - plateCelsius);
    },
    warm: (oven, seconds) => {
      const kept = Math.exp(-seconds / 400);
      celsius = celsius.map((own) => oven + (own - oven) * kept);
    },
    middleCelsius: () => Math.max(...celsius),
    surfaceCelsius: () => numberAt(celsius, 0),
    meanCelsius: mean,
    thicknessMetres: () => thickness,
  };
};
