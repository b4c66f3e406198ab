import { mergeConfig } from 'vitest/config';
import { countingInVite } from './scripts/counted.mjs';
import ordinary from './vitest.config.js';

/** All tests, with counters in every source file: it takes about twice as long. */
export default mergeConfig(ordinary, {
  plugins: [countingInVite],
  test: { setupFiles: ['tests/counts.ts'], testTimeout: 120_000, hookTimeout: 60_000 },
});
