import { deCommands } from './de/commands.js';
import { deCook } from './de/cook.js';
import { deDebrief } from './de/debrief.js';
import { deFar } from './de/far.js';
import { deFeed } from './de/feed.js';
import { deHandout } from './de/handout.js';
import { deHazards } from './de/hazards.js';
import { deLines } from './de/lines.js';
import { dePlan } from './de/plan.js';
import { deProblems } from './de/problems.js';
import { deRehearsal } from './de/rehearsal.js';
import { deScreen } from './de/screen.js';
import { deTyped } from './de/typed.js';
import { deWatch } from './de/watch.js';

/** German: every sentence a person can read, by id. Divided as the English is. */
export const de = {
  ...deCommands,
  ...deCook,
  ...deDebrief,
  ...deFar,
  ...deFeed,
  ...deHandout,
  ...deHazards,
  ...deLines,
  ...dePlan,
  ...deProblems,
  ...deRehearsal,
  ...deScreen,
  ...deTyped,
  ...deWatch,
};
