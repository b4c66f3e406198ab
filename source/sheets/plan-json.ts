import type { Batch, Pair, Spread } from '../batch/batch.js';
import { words } from '../texts/message.js';
import type { Printer } from '../units/printer.js';
import { fromCelsius } from '../units/temperature.js';

/** Decimals kept: more than anything here knows, and few enough to be read. */
const round =
  (decimals: number) =>
  (value: number): number => {
    const rounded = Number(value.toFixed(decimals));
    return Object.is(rounded, -0) ? 0 : rounded;
  };
const grams = round(2);
const celsius = round(2);
const fraction = round(4);
const litres = round(3);
const millimetres = round(1);

const pair = (values: Pair, as: (value: number) => number): [number, number] => [
  as(values[0]),
  as(values[1]),
];
const spread = ({ low, typical, high }: Spread, as: (value: number) => number): Spread => ({
  low: as(low),
  typical: as(typical),
  high: as(high),
});
const orNull = <T, R>(value: T | null, as: (value: T) => R): R | null => (value === null ? null : as(value));

/**
 * What `plan --json` prints, version 1: SI, Celsius true and today's, pairs ascending, null where nothing is known.
 * Only `thermometer` and `takeOffThermometer` are numbers on the dial, in `unit`; where no
 * thermometer is known, those that a right one would show.
 * `depthMillimetres` runs from the start of the boil to its end.
 */
export const planJson = (batch: Batch, printer: Printer) => {
  const { recipe, air, target, boil, candy, pot, dial } = batch;
  const onDial = (trueCelsius: number): number =>
    round(1)(fromCelsius(dial.toShownCelsius(trueCelsius), dial.unit));
  return {
    version: 1,
    recipe: recipe.name,
    ingredients: recipe.ingredients.map(({ item, grams: mass, amount }) => ({
      item,
      grams: grams(mass),
      amount,
    })),
    batch: {
      totalGrams: grams(batch.totalGrams),
      waterGrams: grams(batch.waterGrams),
      solidsGrams: grams(batch.solidsGrams),
      fatGrams: grams(batch.fatGrams),
      laterGrams: grams(batch.laterGrams),
    },
    kitchen: {
      pressurePascal: round(0)(air.pressurePascal),
      altitudeMetres: orNull(air.altitudeMetres, round(0)),
      waterBoilsCelsius: celsius(air.waterBoilsCelsius),
      from: air.from,
      unit: batch.kitchen.unit,
    },
    target: {
      seaLevelCelsius: pair(target.seaLevelCelsius, celsius),
      todayCelsius: pair(target.todayCelsius, celsius),
      thermometer: pair(target.todayCelsius, onDial),
      unit: dial.unit,
      feels: target.feels,
      takeOffCelsius: celsius(target.takeOffCelsius),
      takeOffThermometer: onDial(target.takeOffCelsius),
      carryOverKelvin: celsius(target.carryOverKelvin),
    },
    boil: {
      startsCelsius: celsius(boil.startsCelsius),
      solidsFractionAtTarget: pair(boil.solidsFractionAtTarget, fraction),
      waterToBoilAwayGrams: pair(boil.waterToBoilAwayGrams, grams),
    },
    candy: {
      moistureFraction: pair(candy.moistureFraction, fraction),
      glassTransitionCelsius: pair(candy.glassTransitionCelsius, celsius),
      firmness: candy.firmness,
      grainRisk: candy.grainRisk,
      equilibriumRelativeHumidity: pair(candy.equilibriumRelativeHumidity, fraction),
    },
    yield: {
      cookedGrams: grams(batch.yield.cookedGrams),
      expectedGrams: spread(batch.yield.expectedGrams, grams),
      pieces: batch.yield.pieces,
      portions: { count: batch.yield.portions.count, grams: grams(batch.yield.portions.grams) },
      ropeMetres: round(2)(batch.yield.ropeMetres),
      cutMillimetres: millimetres(batch.yield.cutMillimetres),
      wrappingSquares: batch.yield.wrappingSquares,
    },
    pot: {
      neededLitres: litres(pot.neededLitres),
      haveLitres: orNull(pot.haveLitres, litres),
      fits: pot.fits,
      depthMillimetres: orNull(pot.depthMillimetres, (depths) => pair(depths, millimetres)),
      stemCovered: pot.stemCovered,
    },
    notes: batch.notes.map((note) => ({ id: note.id, text: words(note, printer) })),
  };
};

export type PlanJson = ReturnType<typeof planJson>;
