import { expect, it } from 'vitest';
import { monochrome, paintsFor } from '../../source/screen/palette.js';
import { penned, pensFor } from '../../source/screen/pens.js';

const line = [
  { text: 'due', look: 'due' as const },
  { text: ' now', look: 'plain' as const },
];
const written = (paints: Parameters<typeof pensFor>[0], bits: number): string =>
  penned(line, pensFor(paints, bits));

it.each([
  ['values where it has them', 'many', 24, '1m\u001b[38;2;0;0;0m\u001b[48;2;255;196;0'],
  // xterm's colour cube: 16 + 36 r + 6 g + b, each of six levels.
  ['the nearest of 256', 'many', 8, '1m\u001b[38;5;16m\u001b[48;5;220'],
  ['names of the sixteen', 'sixteen', 4, '1m\u001b[30m\u001b[43'],
] as const)('tells a terminal its colours by %s, and takes them back', (_, depth, bits, on) => {
  expect(written(paintsFor(depth, 'unknown'), bits)).toBe(
    `\u001b[${on}mdue\u001b[49m\u001b[39m\u001b[22m now`,
  );
});

it('tells one without colours of weight and inverse alone', () => {
  expect(written(monochrome, 1)).toBe('\u001b[1m\u001b[7mdue\u001b[27m\u001b[22m now');
});

it('writes nothing but text into what is no terminal', () => {
  expect(written(paintsFor('many', 'dark'), 0)).toBe('due now');
});
