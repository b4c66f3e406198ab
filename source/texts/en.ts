import { commandTexts } from './en/commands.js';
import { cookTexts } from './en/cook.js';
import { debriefTexts } from './en/debrief.js';
import { farTexts } from './en/far.js';
import { feedTexts } from './en/feed.js';
import { handoutTexts } from './en/handout.js';
import { hazardTexts } from './en/hazards.js';
import { lineTexts } from './en/lines.js';
import { planTexts } from './en/plan.js';
import { problemTexts } from './en/problems.js';
import { rehearsalTexts } from './en/rehearsal.js';
import { screenTexts } from './en/screen.js';
import { typedTexts } from './en/typed.js';
import { watchTexts } from './en/watch.js';

/** English: every sentence a person can read, by id. Divided by room so that each file stays readable. */
export const en = {
  ...cookTexts,
  ...debriefTexts,
  ...feedTexts,
  ...farTexts,
  ...handoutTexts,
  ...hazardTexts,
  ...lineTexts,
  ...planTexts,
  ...problemTexts,
  ...rehearsalTexts,
  ...commandTexts,
  ...screenTexts,
  ...typedTexts,
  ...watchTexts,
};
