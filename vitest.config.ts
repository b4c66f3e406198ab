import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.{ts,tsx}'],
    exclude: ['tests/fixtures/**'],
    setupFiles: ['tests/seed.ts', 'tests/languages.ts'],
    testTimeout: 30_000,
    // The default leaves one core idle; many tests wait for a terminal, and then another file can run.
    maxWorkers: '100%',
    coverage: {
      provider: 'v8',
      include: ['source/**/*.{ts,tsx}'],
      reporter: ['text-summary', 'json-summary'],
    },
  },
});
