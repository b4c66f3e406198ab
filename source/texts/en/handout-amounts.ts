/** US customary measures, NIST Handbook 44. */
const cupMillilitres = 236.588;
const tablespoonMillilitres = cupMillilitres / 16;
const teaspoonMillilitres = cupMillilitres / 48;
const ounceGrams = 28.3495;
const quartLitres = 0.946353;

const quarters = ['', '1/4', '1/2', '3/4'] as const;

/** In quarters: 2.3 is "2 1/4". */
const inQuarters = (value: number): string => {
  const count = Math.max(1, Math.round(value * 4));
  const [whole, part] = [Math.floor(count / 4), quarters[count % 4] ?? ''];
  return [whole === 0 ? '' : String(whole), part].filter((one) => one !== '').join(' ');
};

const thirds = [
  [0.25, '1/4'],
  [1 / 3, '1/3'],
  [0.5, '1/2'],
  [2 / 3, '2/3'],
  [0.75, '3/4'],
] as const;

const inCups = (cups: number): string => {
  const whole = Math.floor(cups + 0.1);
  const rest = Math.max(0, cups - whole);
  if (rest < 0.1) return whole === 1 ? '1 cup' : `${whole} cups`;
  const [, part] = thirds.toSorted(([one], [other]) => Math.abs(one - rest) - Math.abs(other - rest))[0] ?? [
    0,
    '',
  ];
  return whole === 0 ? `${part} cup` : `${whole} ${part} cups`;
};

/** From a few grains to a bucket, by the measures of a home kitchen: "2 1/2 cups", "1 1/2 tbsp", "1/4 tsp". */
export const householdVolume = (millilitres: number): string => {
  if (millilitres >= 0.23 * cupMillilitres) return inCups(millilitres / cupMillilitres);
  if (millilitres >= 0.95 * tablespoonMillilitres)
    return `${inQuarters(Math.round((2 * millilitres) / tablespoonMillilitres) / 2)} tbsp`;
  if (millilitres >= 0.2 * teaspoonMillilitres) return `${inQuarters(millilitres / teaspoonMillilitres)} tsp`;
  return millilitres >= 0.09 * teaspoonMillilitres ? '1/8 tsp' : 'a pinch';
};

export const ounces = (grams: number): string =>
  grams < 0.2 * ounceGrams ? `${(grams / ounceGrams).toFixed(1)} oz` : `${inQuarters(grams / ounceGrams)} oz`;
export const quarts = (litres: number): string =>
  `${inQuarters(Math.ceil((litres / quartLitres) * 2) / 2)} quarts`;

/** Grams as a kitchen scale shows them. */
export const scaleGrams = (grams: number): string => {
  if (grams >= 999.5) return `${Number((grams / 1000).toFixed(2))} kg`;
  if (grams >= 9.5) return `${Math.round(grams)} g`;
  return `${Number(grams.toFixed(grams >= 0.095 ? 1 : 2))} g`;
};

const fahrenheit = (celsius: number): number => Math.round(celsius * 1.8 + 32);

/** A true temperature on both scales: "43 °C (109 °F)". */
export const bothDegrees = (celsius: number): string =>
  `${Math.round(celsius)} °C (${fahrenheit(celsius)} °F)`;
export const bothSpans = (low: number, high: number): string =>
  `${Math.round(low)}-${Math.round(high)} °C (${fahrenheit(low)}-${fahrenheit(high)} °F)`;

const inches = (millimetres: number): string => {
  const eighths = Math.max(1, Math.round((millimetres / 25.4) * 8));
  const [whole, rest] = [Math.floor(eighths / 8), eighths % 8];
  const divisor = rest % 4 === 0 ? 4 : rest % 2 === 0 ? 2 : 1;
  const part = rest === 0 ? '' : `${rest / divisor}/${8 / divisor}`;
  return `${[whole === 0 ? '' : String(whole), part].filter((one) => one !== '').join(' ')} in`;
};
/** "15 mm (5/8 in)". */
export const bothLengths = (millimetres: number): string =>
  `${Math.round(millimetres)} mm (${inches(millimetres)})`;
