import type { CookLesson } from '../../source/lessons/learn-cook.js';
import { hall } from '../cook/play.js';

/** What one cook in the village hall taught: nothing but its day, and what is said. */
export const lesson = (changes: Partial<CookLesson> = {}): CookLesson => ({
  date: '2026-11-20',
  kitchen: hall,
  thermometerId: 'hall-dial',
  errorByChecks: null,
  errorByTests: null,
  logWatts: {},
  carryOverKelvin: null,
  boxShare: null,
  minutes: {},
  ...changes,
});
