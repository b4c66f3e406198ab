import { chaptersOf } from '../lessons/moments.js';
import type { Story } from '../lessons/story.js';
import { message, words } from '../texts/message.js';
import type { Printer } from '../units/printer.js';

const pad = (value: number): string => String(value).padStart(2, '0');

/** "01:02:03" where anything lies beyond the first hour, else "02:03": the same width on every line. */
const offset = (seconds: number, withHours: boolean): string => {
  const [hours, minutes, rest] = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60, seconds % 60];
  return withHours ? `${hours}:${pad(minutes)}:${pad(rest)}` : `${pad(minutes)}:${pad(rest)}`;
};

/**
 * Time offsets and titles, one a line, ready to paste under a video: from each "mark recording", or from the opening
 * where none was marked.
 */
export const debriefChapters = (story: Story, printer: Printer): string => {
  const starts = story.recordings.length === 0 ? [0] : story.recordings;
  const parts = starts.map((start, index) => {
    const chapters = chaptersOf(story, start, starts[index + 1]);
    const withHours = chapters.some(({ seconds }) => seconds >= 3600);
    const heading =
      starts.length > 1 ? [words(message('debrief.chapters.recording', { number: index + 1 }), printer)] : [];
    const rehearsal = story.rehearsal ? [words(message('debrief.rehearsal'), printer)] : [];
    return [
      ...heading,
      ...rehearsal,
      ...chapters.map(({ seconds, title }) => `${offset(seconds, withHours)} ${words(title, printer)}`),
    ].join('\n');
  });
  return `${parts.join('\n\n')}\n`;
};
