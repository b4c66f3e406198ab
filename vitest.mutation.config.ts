import { defineConfig } from 'vitest/config';

/** A room's own fast tests: what runs thousands of times must not take seconds. MUTATE names the room. */
const room = process.env.MUTATE ?? 'journal';
const tests: Readonly<Record<string, readonly string[]>> = {
  sugar: ['tests/sugar/**/*.test.ts', 'tests/published/**/*.test.ts'],
  forecast: ['tests/forecast/**/*.test.ts'],
  journal: ['tests/journal/**/*.test.ts'],
  cook: ['tests/cook/**/*.test.ts'],
};

export default defineConfig({
  test: {
    include: [...(tests[room] ?? [])],
    exclude: [
      'tests/cook/{budget,properties}.test.ts',
      'tests/journal/kill.test.ts',
      'tests/forecast/totality.test.ts',
    ],
    testTimeout: 30_000,
  },
});
