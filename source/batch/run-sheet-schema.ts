import * as z from 'zod/mini';
import { timedPhases } from './run-sheet-times.js';

const finite = z.number().check(z.refine(Number.isFinite));

/** The planned times as a journal holds them. */
export const runSheetSchema = z.object({
  pullsAt: finite,
  spareSeconds: finite,
  phases: z.array(
    z.object({
      phase: z.enum(timedPhases),
      startsAt: finite,
      between: z.tuple([finite, finite]),
      seconds: z.object({ low: finite, typical: finite, high: finite }),
    }),
  ),
});
