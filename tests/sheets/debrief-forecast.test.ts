import { expect, it } from 'vitest';
import { printerOf } from '../../source/commands/cook-printer.js';
import { type Story, storyOf } from '../../source/lessons/story.js';
import { debriefText } from '../../source/sheets/debrief-text.js';
import { eventsOf, fair, fairStory, startedAt } from '../lessons/cooks-told.js';

const text = (story: Story) => debriefText(story, printerOf(story.cook)).replaceAll(/\s+/g, ' ');
const unheld = 'the forecast cannot be held against what came';

it('holds the forecast against nothing where the pot came off long before its time, and says so', () => {
  const early = [...fair.filter(({ t }) => t <= 1551), { t: 1600, typed: 'pot off' }];
  const told = text(storyOf(eventsOf(early), startedAt));
  expect(told).toContain(unheld);
  expect(told).not.toContain('80 % band held');
  expect(text(fairStory())).not.toContain(unheld);
});
