import { defineConfig } from 'vitest/config';

/**
 * The tests that judge a room in `npm run mutation`: its own fast ones, and what books say. What runs thousands of
 * times must not take seconds. MUTATE names the room.
 */
const tests: Readonly<Record<string, readonly string[]>> = {
  sugar: ['tests/sugar/**/*.test.ts', 'tests/published/**/*.test.ts'],
  forecast: ['tests/forecast/**/*.test.ts'],
  journal: ['tests/journal/**/*.test.ts'],
  cook: ['tests/cook/**/*.test.ts'],
};

export default defineConfig({
  test: {
    include: [...(tests[process.env.MUTATE ?? 'journal'] ?? [])],
    exclude: [
      'tests/cook/{budget,properties}.test.ts',
      'tests/journal/kill.test.ts',
      'tests/forecast/totality.test.ts',
    ],
    setupFiles: ['tests/seed.ts', 'tests/languages.ts'],
    testTimeout: 30_000,
    // Loading the program anew for each test file takes longer than its tests; only what is worked out while a module
    // loads needs it.
    isolate: process.env.MUTATE_STATIC === '1',
  },
});
