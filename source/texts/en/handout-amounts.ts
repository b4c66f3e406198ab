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
