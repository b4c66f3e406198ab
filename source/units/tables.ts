/** A unit as people write it: its words (lower case), the one to offer in a sentence, and its size in SI. */
export type UnitRow = {
  readonly symbol: string;
  readonly words: readonly string[];
  readonly size: number;
  /** Whether "1,450" of it can only be meant as thousands. */
  readonly thousands?: boolean;
};

const row = (symbol: string, size: number, words: readonly string[], thousands = false): UnitRow => ({
  symbol,
  words: [symbol.toLowerCase(), ...words],
  size,
  thousands,
});

/** Grams. The pound is 0.45359237 kg exactly (international yard and pound agreement, 1959). */
export const massUnits: readonly UnitRow[] = [
  row('g', 1, ['gr', 'gm', 'gms', 'gram', 'grams', 'gramme', 'grammes'], true),
  row('kg', 1000, ['kilo', 'kilos', 'kilogram', 'kilograms']),
  row('mg', 0.001, ['milligram', 'milligrams'], true),
  row('oz', 28.349523125, ['ounce', 'ounces']),
  row('lb', 453.59237, ['lbs', 'pound', 'pounds']),
];

const litreUnits: readonly UnitRow[] = [
  row('ml', 1, ['millilitre', 'millilitres', 'milliliter', 'milliliters', 'cc'], true),
  row('l', 1000, ['ltr', 'litre', 'litres', 'liter', 'liters']),
  row('cl', 10, ['centilitre', 'centilitres', 'centiliter', 'centiliters']),
  row('dl', 100, ['decilitre', 'decilitres', 'deciliter', 'deciliters']),
  row('fl oz', 29.5735295625, ['floz', 'fl. oz', 'fl. oz.', 'fluid ounce', 'fluid ounces']),
  row('pint', 473.176473, ['pints', 'pt']),
  row('quart', 946.352946, ['quarts', 'qt', 'qts']),
];

const spoonWords = {
  cup: ['cups'],
  tbsp: ['tbsp.', 'tbsps', 'tbs', 'tablespoon', 'tablespoons'],
  tsp: ['tsp.', 'tsps', 'teaspoon', 'teaspoons'],
} as const;

export type Cups = 'us' | 'metric';

/**
 * Millilitres. US customary measures: NIST Handbook 44, Appendix C (gallon of 231 cubic inches, a cup is a sixteenth).
 * Metric measures: cup 250, tablespoon 15, teaspoon 5 ml.
 */
export const volumeUnits: Readonly<Record<Cups, readonly UnitRow[]>> = {
  us: [
    row('cup', 236.5882365, spoonWords.cup),
    row('tbsp', 14.78676478125, spoonWords.tbsp),
    row('tsp', 4.92892159375, spoonWords.tsp),
    ...litreUnits,
  ],
  metric: [
    row('cup', 250, spoonWords.cup),
    row('tbsp', 15, spoonWords.tbsp),
    row('tsp', 5, spoonWords.tsp),
    ...litreUnits,
  ],
};

/** Things that are counted. */
export const countWords = {
  drop: ['drop', 'drops'],
  pinch: ['pinch', 'pinches'],
  piece: ['piece', 'pieces'],
} as const;

/** Millimetres; the inch is 25.4 mm exactly. */
export const lengthUnits: readonly UnitRow[] = [
  row('mm', 1, ['millimetre', 'millimetres', 'millimeter', 'millimeters'], true),
  row('cm', 10, ['centimetre', 'centimetres', 'centimeter', 'centimeters']),
  row('in', 25.4, ['inch', 'inches', '"', '″', '”']),
  row('m', 1000, ['metre', 'metres', 'meter', 'meters']),
];

/** Metres; the foot is 0.3048 m exactly. */
export const altitudeUnits: readonly UnitRow[] = [
  row('m', 1, ['metre', 'metres', 'meter', 'meters', 'masl', 'm asl'], true),
  row('ft', 0.3048, ['foot', 'feet', "'", '′', '’'], true),
  row('km', 1000, ['kilometre', 'kilometres', 'kilometer', 'kilometers']),
];

/** Pascal. Conventional millimetre and inch of mercury: NIST SP 811, Appendix B.8. */
export const pressureUnits: readonly UnitRow[] = [
  row('hPa', 100, ['hectopascal', 'hectopascals'], true),
  row('mbar', 100, ['mb', 'millibar', 'millibars'], true),
  row('kPa', 1000, ['kilopascal', 'kilopascals']),
  row('Pa', 1, ['pascal', 'pascals'], true),
  row('inHg', 3386.389, ['in hg', '"hg', 'inch hg', 'inches hg', 'inches of mercury']),
  row('mmHg', 133.3224, ['mm hg', 'torr'], true),
  row('bar', 100_000, []),
  row('atm', 101_325, []),
];

/** Seconds. */
export const durationUnits: readonly UnitRow[] = [
  row('s', 1, ['sec', 'secs', 'second', 'seconds'], true),
  row('min', 60, ['m', 'mins', 'minute', 'minutes']),
  row('h', 3600, ['hr', 'hrs', 'hour', 'hours']),
];
