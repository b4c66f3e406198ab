/**
 * A journal read and folded as a program that starts does it, which the test process with its own loader is not: prints
 * milliseconds, and where the cook stands.
 */
import { readFileSync } from 'node:fs';
import { fold } from '../../source/cook/step.js';
import { recover } from '../../source/journal/recover.js';
import { readEntries } from '../../source/session/start.js';

const bytes = readFileSync(process.argv[2] ?? '');
const start = performance.now();
const events = readEntries(recover(bytes).entries)?.events ?? [];
const read = performance.now();
const { length, lastReading } = fold(events);
const folded = performance.now();
process.stdout.write(JSON.stringify({ read: read - start, fold: folded - read, length, lastReading }));
