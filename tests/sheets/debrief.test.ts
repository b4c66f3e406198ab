import { describe, expect, it } from 'vitest';
import { printerOf } from '../../source/commands/cook-printer.js';
import { chaptersOf } from '../../source/lessons/moments.js';
import { type Story, storyOf } from '../../source/lessons/story.js';
import { debriefChapters } from '../../source/sheets/debrief-chapters.js';
import { compareJson, compareText } from '../../source/sheets/debrief-compare.js';
import { debriefCsv } from '../../source/sheets/debrief-csv.js';
import { curveFrame, curveScales } from '../../source/sheets/debrief-frame.js';
import { debriefHtml } from '../../source/sheets/debrief-html.js';
import { debriefJson } from '../../source/sheets/debrief-json.js';
import { debriefMarkdown } from '../../source/sheets/debrief-markdown.js';
import { debriefText } from '../../source/sheets/debrief-text.js';
import { message } from '../../source/texts/message.js';
import { blind, hall, opened, Play } from '../cook/play.js';
import { eventsOf, fair, fairStory, rehearsed, startedAt } from '../lessons/cooks-told.js';

const text = (story: Story) => debriefText(story, printerOf(story.cook));
const html = (story: Story) => debriefHtml(story, printerOf(story.cook));
const markdown = (story: Story) => debriefMarkdown(story, printerOf(story.cook));

const blindStory = () => {
  const play = new Play({ kitchen: blind });
  play.until('fold');
  return storyOf(play.events, startedAt);
};
const bare = storyOf([opened({ kitchen: hall })], null);
const half = storyOf(eventsOf(fair.filter(({ t }) => t <= 1551)), startedAt);
const fairTold = fairStory();
const foamed = rehearsed('foam-over');

describe('the debrief in a terminal', () => {
  it.each([
    ['the fair', fairTold],
    ['a rehearsal', foamed],
    ['half a cook', half],
    ['nothing but the opening', bare],
    ['no thermometer', blindStory()],
  ])('keeps to 78 columns, without a number that is none: %s', (_, story) => {
    const lines = text(story).split('\n');
    expect(lines.filter((line) => line.length > 78)).toEqual([]);
    expect(text(story)).not.toMatch(/NaN|undefined|Infinity|null|\[object/);
  });

  it('draws the curve with the window, the readings, the test and the pour', () => {
    const told = text(fairTold);
    expect(told).toMatch(/o/);
    expect(told).toContain('T cold-water test');
    expect(told).toContain('| poured');
    expect(told).toMatch(/250 \+: : :/);
    expect(told).toContain('- hard ball');
  });

  it('names the longest phases above the curve, where they begin', () => {
    const lines = text(fairTold).split('\n');
    const names = lines.find((line) => line.includes('boil ')) ?? '';
    expect(names).toMatch(/dissolve +boil +fold/);
    const poured = lines.find((line) => /250 \+.*\|/.test(line))?.lastIndexOf('|') ?? 0;
    expect(Math.abs(names.indexOf('fold') - poured)).toBeLessThanOrEqual(2);
  });

  it('draws as wide as the terminal, up to 120 columns, and writes no wider than before', () => {
    for (const [columns, widest] of [
      [40, 78],
      [79, 79],
      [119, 119],
      [300, 120],
    ] as const) {
      const lines = debriefText(fairTold, printerOf(fairTold.cook), [], columns).split('\n');
      const longest = Math.max(...lines.map((line) => line.length));
      expect(longest).toBeLessThanOrEqual(widest);
      expect(longest).toBeGreaterThan(widest - 12);
    }
  });

  it('draws the forecast’s own track: what it said all along, against what came', () => {
    const lines = text(fairTold).split('\n');
    const from = lines.indexOf('What the forecast said');
    const plot = lines.slice(from + 1, from + 10);
    // It began a little low and met what came at the end, at nought minutes.
    const first = (mark: string) => plot.findIndex((line) => line[7] === mark);
    expect(first('o')).toBeGreaterThanOrEqual(first('*') === -1 ? 0 : first('*'));
    expect(plot.at(-1)).toMatch(/^ {4}0 \+.*o$/);
    expect(plot.join('\n')).toMatch(/\*{3}/);
    expect(text(half)).not.toContain('as foreseen at that time');
  });

  it('says when and how hot it came off, what came of it, and what to change', () => {
    const told = text(fairTold);
    expect(told).toContain('112 pieces, 804 g');
    expect(told).toMatch(/Off the heat\s+at 33:25, 24\d °F/);
    expect(told).toMatch(/Weighed\s+804 g, 8\d % of the \d+ g/);
    expect(told).toContain('Next time');
    expect(told).toMatch(/No trouble\s+was\s+reported\./);
    expect(told).not.toContain('REHEARSAL');
    expect(text(foamed)).toMatch(/2\s+troubles\s+reported,\s+\d\s+warnings?\s+raised/);
  });

  it('tells an unfinished cook as far as it went', () => {
    expect(text(half)).toContain('This cook is not finished');
    // It boils on: nothing is short of anything yet, and "the same again" is no advice.
    expect(text(half)).toMatch(/so far; the window is 24\d-25\d °F/);
    expect(text(half)).not.toMatch(/short of|The same again/);
    expect(text(bare)).toContain('there is no curve');
  });

  it('names no thermometer where there was none', () => {
    const play = new Play({ kitchen: hall }).type('thermometer none');
    expect(text(storyOf(play.events, startedAt))).toContain('no thermometer;');
    expect(text(fairTold)).toContain('"hall-dial"');
  });

  it('says what a damaged journal lost before anything that rests on it', () => {
    const told = debriefText(half, printerOf(half.cook), [
      message('journal.damaged', { lines: [7], more: 0 }),
    ]);
    expect(told.indexOf('damaged in line 7')).toBeGreaterThan(0);
    expect(told.indexOf('damaged in line 7')).toBeLessThan(told.indexOf('not finished'));
  });
});

describe('a rehearsal', () => {
  it('is marked in every form', () => {
    const print = printerOf(foamed.cook);
    for (const form of [text(foamed), markdown(foamed), html(foamed), debriefChapters(foamed, print)])
      expect(form).toContain('REHEARSAL');
    expect(debriefJson(foamed, null, print).rehearsal).toBe(true);
    const [head = '', ...rows] = debriefCsv(foamed).trimEnd().split('\r\n');
    expect(head.split(',').at(-1)).toBe('rehearsal');
    expect(rows.every((row) => row.endsWith(',yes'))).toBe(true);
  });
});

describe('the curve’s frame', () => {
  it('keeps the hotter higher and the later further right, and everything inside', () => {
    const frame = curveFrame(fairTold);
    if (frame === null) throw new Error('there is a curve');
    const { x, y } = curveScales(frame, 100, 100);
    const hot = [20, 60, 100, 110, 115, 118, 120].map(y);
    expect(hot).toEqual(hot.toSorted((one, other) => other - one));
    for (const { t, celsius } of fairTold.readings) {
      expect(x(t)).toBeGreaterThanOrEqual(0);
      expect(x(t)).toBeLessThanOrEqual(100);
      expect(y(celsius)).toBeGreaterThanOrEqual(0);
      expect(y(celsius)).toBeLessThanOrEqual(100);
    }
    // The last degrees get more room than the way from the cold pot.
    expect(y(116) - y(118)).toBeGreaterThan(2 * (y(60) - y(62)));
  });

  it('is none where nothing was read and nothing was tested', () => {
    expect(curveFrame(bare)).toBeNull();
  });
});

describe('the page', () => {
  it('carries no script, no link and no address to load from', () => {
    const page = html(foamed);
    expect(page).not.toMatch(/<script|<link|<img|<iframe|@import|url\((?!#)|\bsrc=|\son\w+=/i);
    expect(page.replaceAll('http-equiv', '').match(/https?:/g)).toBeNull();
    expect(page).toContain('default-src &#x27;none&#x27;');
  });

  it('shows a person’s words as words', () => {
    const story = fairStory({ t: 1700, typed: 'note <img src=x onerror=alert(1)> & "so"' });
    expect(html(story)).toContain('&lt;img src=x onerror=alert(1)&gt; &amp; &quot;so&quot;');
    expect(markdown(story)).toContain('\\<img');
    expect(markdown(story)).not.toMatch(/[^\\]<img/);
  });
});

describe('the table for a spreadsheet', () => {
  const rows = (story: Story) => debriefCsv(story).trimEnd().split('\r\n');

  it('has a line for every event, readings with their true temperature', () => {
    expect(rows(fairTold)).toHaveLength(fairTold.events.length + 1);
    const reading = rows(fairTold).find((row) => row.includes(',reading,212,F,syrup,')) ?? '';
    // 212 °F on a dial that reads a degree or two high.
    expect(Number(reading.split(',')[8])).toBeCloseTo(99.5, 0);
  });

  it('marks what was taken back, quotes what needs it, and lets no formula in', () => {
    const story = fairStory(
      { t: 1700, typed: 'note =HYPERLINK("x"), then' },
      { t: 1701, typed: 'note wrong' },
      { t: 1702, typed: 'undo' },
    );
    const csv = debriefCsv(story);
    expect(csv).toContain('"\'=HYPERLINK(""x""), then"');
    expect(csv).toMatch(/,note,,,,,,wrong,yes,no\r\n/);
  });
});

describe('for programs', () => {
  it('prints version 1, SI, and null where nothing is known', () => {
    const json = JSON.parse(JSON.stringify(debriefJson(bare, 'a', printerOf(bare.cook))));
    expect(json).toMatchObject({
      version: 1,
      id: 'a',
      state: 'unfinished',
      peak: null,
      candy: null,
      startedAt: null,
    });
    expect(json.yield).toMatchObject({ weighedGrams: null, share: null });
    const whole = debriefJson(fairTold, null, printerOf(fairTold.cook));
    expect(whole.yield.weighedGrams).toBe(804);
    expect(whole.changes.length).toBeLessThanOrEqual(5);
  });
});

describe('chapters', () => {
  it('count from the recording, the first at zero, and are at least ten seconds apart', () => {
    const story = fairStory({ t: 945, typed: 'mark recording' });
    const chapters = chaptersOf(story, 945);
    expect(chapters[0]?.seconds).toBe(0);
    for (const [index, { seconds }] of chapters.entries())
      if (index > 0) expect(seconds - (chapters[index - 1]?.seconds ?? 0)).toBeGreaterThanOrEqual(9);
    const lines = debriefChapters(story, printerOf(story.cook)).trimEnd().split('\n');
    expect(lines[0]).toBe('0:00:00 Dissolve the sugar');
    expect(lines).toContain('0:17:40 Off the heat at 246 °F');
    expect(lines.every((line) => /^\d:\d\d:\d\d \S/.test(line))).toBe(true);
  });

  it('are told apart for two recordings', () => {
    const story = fairStory({ t: 1200, typed: 'mark recording' }, { t: 3000, typed: 'mark recording' });
    const told = debriefChapters(story, printerOf(story.cook));
    expect(told).toContain('Recording 1\n00:00 Boil');
    expect(told).toContain('Recording 2\n00:00 Cool and fold');
  });
});

describe('side by side', () => {
  const other = fairStory({ t: 5600, typed: 'weigh 780g' });

  it('marks what differs and says that nothing was put in otherwise', () => {
    const told = compareText([
      { id: 'one', story: fairTold },
      { id: 'two', story: other },
    ]);
    expect(told).toMatch(/\* weighed\s+804 g\s+780 g/);
    expect(told).toContain('Nothing in recipe, amounts, kitchen and hands.');
    expect(told.split('\n').filter((line) => line.length > 78)).toEqual([]);
  });

  it('marks rehearsals, and gives the numbers to programs', () => {
    const cooks = [
      { id: 'one', story: fairTold },
      { id: 'two', story: foamed },
    ];
    expect(compareText(cooks)).toContain('REHEARSAL, no candy was made: two');
    const weighed = compareJson(cooks).rows.find(({ id }) => id === 'counted');
    expect(weighed).toMatchObject({ values: [112, null], differs: true });
  });
});
