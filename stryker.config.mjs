/**
 * Mutation testing of one room, by that room's own fast tests. Run through `npm run mutation [room]`, which names
 * the room in MUTATE and the files in MUTATE_FILES.
 */
const room = process.env.MUTATE ?? 'journal';
const files = process.env.MUTATE_FILES?.split(',') ?? [`source/${room}/**/*.ts`];

export default {
  testRunner: 'vitest',
  vitest: { configFile: 'vitest.mutation.config.ts', related: false },
  mutate: files,
  coverageAnalysis: 'perTest',
  // What is worked out while a module loads would need every test anew for each mutant.
  ignoreStatic: process.env.MUTATE_STATIC !== '1',
  concurrency: 1,
  // A busy machine must not make a slow test look like one that noticed: endless loops are told by their count first.
  timeoutMS: 60_000,
  reporters: ['json', 'progress-append-only'],
  jsonReporter: { fileName: `coverage/mutation/${room}.json` },
  tempDirName: `coverage/mutation/${room}-sandbox`,
  cleanTempDir: 'always',
  ignorePatterns: ['bench', 'coverage', 'dist', 'docs'],
  disableTypeChecks: false,
  allowConsoleColors: false,
};
