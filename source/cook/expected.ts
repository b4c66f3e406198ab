import type { Batch } from '../batch/batch.js';
import { boilSeconds } from '../batch/run-sheet-times.js';

/** How soon the boil may be over, seconds: on a strong burner, so that a first cold-water test is never too late. */
export const expectedBoilSeconds = (batch: Batch): number => boilSeconds(batch).low;
