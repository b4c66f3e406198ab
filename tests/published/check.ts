import { expect, it } from 'vitest';
import type { Row } from './syrups.js';

/** One test a row: ours within the tolerance of the published value. Rows known to disagree are run and shown. */
export const check = <At>(
  what: (at: At) => string,
  rows: ReadonlyArray<Row<At>>,
  ours: (at: At) => number,
): void => {
  for (const { at, value, tolerance, source, disagrees } of rows) {
    const title = `${what(at)}: ${value} ± ${tolerance} (${source})`;
    const compare = (): void => {
      const found = ours(at);
      expect(Math.abs(found - value), `found ${found}`).toBeLessThanOrEqual(tolerance);
    };
    if (disagrees === undefined) it(title, compare);
    else it.fails(`${title} - KNOWN TO DISAGREE: ${disagrees}`, compare);
  }
};
