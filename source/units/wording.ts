export const minute = 60;
const hour = 60 * minute;
/** Below this a duration is said in seconds. */
const secondsBelow = 90;
const exactBelow = 10;

export const whole = (value: number): string => {
  const rounded = Math.round(value);
  return String(Object.is(rounded, -0) ? 0 : rounded);
};
export const withThousands = (value: number): string => whole(value).replaceAll(/\B(?=(\d{3})+$)/g, ',');
export const trimmed = (value: number, decimals: number): string => String(Number(value.toFixed(decimals)));
const toStep = (value: number, step: number): number => Math.round(value / step) * step;

type Spoken = { readonly number: string; readonly unit: 's' | 'min' };

const spoken = (seconds: number): Spoken => {
  const positive = Math.max(0, seconds);
  if (positive < exactBelow) return { number: whole(positive), unit: 's' };
  if (positive < secondsBelow) return { number: whole(toStep(positive, 5)), unit: 's' };
  return { number: whole(positive / minute), unit: 'min' };
};

export const time = (seconds: number): string => {
  const wholeMinutes = Math.round(Math.max(0, seconds) / minute);
  if (wholeMinutes >= 60) {
    const rest = wholeMinutes % 60;
    return rest === 0 ? `${wholeMinutes / 60} h` : `${Math.floor(wholeMinutes / 60)} h ${rest} min`;
  }
  const { number, unit } = spoken(seconds);
  return `${number} ${unit}`;
};

export const about = ({ low, typical, high }: { low: number; typical: number; high: number }): string => {
  if (high <= 0) return 'now';
  const [from, middle, to] = [spoken(low), spoken(typical), spoken(high)];
  const said = `about ${time(typical)}`;
  if (time(low) === time(high)) return said;
  const sameUnit = from.unit === middle.unit && to.unit === middle.unit && high < hour - minute / 2;
  return sameUnit ? `${said} (${from.number}-${to.number})` : `${said} (${time(low)} to ${time(high)})`;
};

export const clock = (seconds: number): string => {
  const total = Math.max(0, Math.floor(seconds));
  const [hours, minutes, rest] = [Math.floor(total / hour), Math.floor(total / minute) % 60, total % 60];
  const pad = (value: number): string => String(value).padStart(2, '0');
  return hours > 0 ? `${hours}:${pad(minutes)}:${pad(rest)}` : `${minutes}:${pad(rest)}`;
};

export const grams = (value: number): string => {
  if (value >= 999.5) return `${trimmed(value / 1000, 2)} kg`;
  if (value >= 9.95) return `${whole(value)} g`;
  return `${trimmed(value, value >= 0.995 ? 1 : 2)} g`;
};

export const litres = (value: number): string =>
  value < 0.995 ? `${whole(toStep(value * 1000, value < 0.0995 ? 1 : 10))} ml` : `${trimmed(value, 1)} l`;

export const list = (items: readonly string[]): string => {
  const last = items.at(-1) ?? '';
  return items.length < 2 ? last : `${items.slice(0, -1).join(', ')} and ${last}`;
};
