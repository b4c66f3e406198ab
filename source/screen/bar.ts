import type { Signs } from './looks.js';
import { type Span, span } from './text.js';

/** A bar that does not lie: filled by whole and part cells to the very share, never more. */
export const bar = ({ full, halves, empty }: Signs, share: number, cells: number): readonly Span[] => {
  const parts = halves.length;
  const filled = Math.floor(Math.max(0, Math.min(1, share)) * cells * parts);
  const whole = Math.floor(filled / parts);
  const rest = halves[filled % parts] ?? '';
  const left = cells - whole - (rest === '' ? 0 : 1);
  return [span(full.repeat(whole) + rest, 'plain'), span(empty.repeat(Math.max(0, left)), 'faint')];
};
