/** The scale of a thermometer or of a person's habit. */
export type TemperatureUnit = 'C' | 'F';

/** How this person reads numbers: the unit, and what their thermometer shows for a true temperature. */
export type Habits = {
  readonly unit: TemperatureUnit;
  /** What the cook's thermometer shows (Celsius on its scale) when the syrup truly has `celsius`. */
  readonly toShownCelsius: (celsius: number) => number;
};

/** SI values → what people read. Never more digits than the number knows. */
export type Printer = {
  readonly unit: TemperatureUnit;
  /** A true syrup temperature as the cook's own thermometer shows it: "252 °F". */
  dial(celsius: number): string;
  /** The same without unit: "252". */
  dialNumber(celsius: number): string;
  /** A window on the dial: "250-256 °F". */
  dialSpan(low: number, high: number): string;
  /** A true temperature, not corrected for the dial (limits for hands, rooms): "45 °C" or "113 °F". */
  degrees(celsius: number): string;
  /** A temperature difference: "6 °F" / "3 °C". */
  rise(kelvin: number): string;
  /** A rate of rise: "6 °F a minute"; takes kelvin per second. */
  rate(kelvinPerSecond: number): string;
  /** A duration for a sentence: "40 s", "4 min", "1 h 10 min". */
  time(seconds: number): string;
  /** A forecast: "about 4 min (3-5)". */
  about(seconds: { low: number; typical: number; high: number }): string;
  /** "18:42" since the start. */
  clock(seconds: number): string;
  grams(grams: number): string;
  litres(litres: number): string;
  millimetres(millimetres: number): string;
  metres(metres: number): string;
  percent(fraction: number): string;
  /** "n piece" / "n pieces". */
  count(n: number, one: string, many: string): string;
  /** "a, b and c". */
  list(items: readonly string[]): string;
};
