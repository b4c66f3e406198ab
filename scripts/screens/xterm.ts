const hex = (value: number): string => value.toString(16).padStart(2, '0');

/** One of xterm's 256 colours: a cube of six steps, and greys. Null for the first sixteen, which are each terminal's own. */
export const inPalette = (index: number): string | null => {
  if (index < 16) return null;
  if (index >= 232) return `#${hex(8 + 10 * (index - 232)).repeat(3)}`;
  const steps = [Math.floor((index - 16) / 36), Math.floor((index - 16) / 6) % 6, (index - 16) % 6];
  return `#${steps.map((step) => hex(step === 0 ? 0 : 55 + 40 * step)).join('')}`;
};
