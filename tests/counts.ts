import { writeFileSync } from 'node:fs';
import { afterAll } from 'vitest';
import { countsFolder } from '../scripts/counted.mjs';

/** In `npm run coverage` only: what a test file ran in its own process is left beside what the programs leave. */
afterAll(() => {
  const counts = (globalThis as { __coverage__?: unknown }).__coverage__;
  if (counts !== undefined)
    writeFileSync(`${countsFolder}/${process.pid}-${Date.now()}.json`, JSON.stringify(counts));
});
