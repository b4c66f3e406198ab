import { describe, expect, it } from 'vitest';
import { runSheetOf } from '../../source/batch/run-sheet.js';
import { printerOf } from '../../source/commands/cook-printer.js';
import { plainPrinter } from '../../source/commands/io.js';
import type { CookEvent } from '../../source/cook/event.js';
import type { TrackPoint } from '../../source/lessons/boil-story.js';
import { type Story, storyOf } from '../../source/lessons/story.js';
import { compareText } from '../../source/sheets/debrief-compare.js';
import { debriefCsv } from '../../source/sheets/debrief-csv.js';
import { debriefHtml } from '../../source/sheets/debrief-html.js';
import { debriefJson } from '../../source/sheets/debrief-json.js';
import { debriefMarkdown } from '../../source/sheets/debrief-markdown.js';
import { debriefText } from '../../source/sheets/debrief-text.js';
import { textCone } from '../../source/sheets/debrief-text-cone.js';
import { blind, hall, opened, Play } from '../cook/play.js';
import { eventsOf, fair, fairStory, startedAt } from '../lessons/cooks-told.js';

const flat = (text: string) => text.replaceAll(/\s+/g, ' ');
const text = (story: Story) => flat(debriefText(story, printerOf(story.cook)));
const markdown = (story: Story) => debriefMarkdown(story, printerOf(story.cook));
const html = (story: Story) => debriefHtml(story, printerOf(story.cook));
const told = (play: Play) => storyOf(play.events, startedAt);

const bare = storyOf([opened({ kitchen: hall })], null);
const byFingers = () => {
  const play = new Play({ kitchen: blind });
  play.until('fold');
  return told(play);
};
/** The page's drawing for laptop and paper. */
const wide = (page: string) => /<svg class="wide" viewBox="0 0 760.*?<\/svg>/s.exec(page)?.[0] ?? '';
const legend = (page: string) => /<ul class="legend">.*?<\/ul>/s.exec(page)?.[0] ?? '';

describe('a cook of which hardly anything is known', () => {
  it('says so in every form, with no drawing, no result and no advice', () => {
    for (const form of [markdown(bare), html(bare)]) {
      expect(form).toContain('there is no curve');
      expect(form).not.toMatch(/<svg|```|What came of it|Result|undefined|NaN/);
      expect(form).toMatch(/Warnings[^a-z]*(<\/h2><p>)?none/);
    }
  });

  it('is drawn by the tests alone where no thermometer was in the pot', () => {
    const page = html(byFingers());
    expect(wide(page)).toContain('hard ball');
    expect(wide(page)).toContain('poured');
    expect(wide(page)).not.toContain('<circle');
    expect(legend(page)).toContain('cold-water test');
    expect(legend(page)).not.toContain('reading');
    // Nothing was believed, so nothing is drawn as believed.
    expect(wide(page)).not.toMatch(/ d="[^"]*NaN/);
    expect(wide(page).match(/ d=""/g)).toHaveLength(2);
  });

  it('is drawn from the cold pot where a number was typed before anything was dissolved', () => {
    const play = new Play({ kitchen: hall }).type('70f').wait(30).type('72f');
    const page = html(told(play));
    expect(wide(page)).toContain('<circle');
    expect(wide(page)).not.toContain('poured');
    expect(page).not.toMatch(/NaN|null/);
    expect(text(told(play))).not.toContain('Hottest');
  });

  it('draws nothing of the forecast that said too little', () => {
    const point = (t: number): TrackPoint => ({
      t,
      celsius: 110,
      sd: 1,
      takeOffSeconds: { low: 500, typical: 600, high: 700 },
      watts: 1000,
    });
    const off = {
      t: 700,
      celsius: 120,
      wantedCelsius: 120,
      askedAt: 690,
      implied: false,
      backAt: null,
    };
    const cone = (...times: readonly number[]) =>
      textCone({ track: times.map(point), offs: [off] }, plainPrinter, 78);
    expect(cone(60, 90)).toBeNull();
    const drawn = cone(60, 90, 120) ?? [];
    // Nothing was foreseen any more when the last forecast was older than a minute and a quarter.
    const mark = (line: string, at: number) => line.slice(7)[at];
    const column = (at: number) => drawn.slice(0, 9).map((line) => mark(line, at) ?? ' ');
    expect(column(2)).toContain('o');
    expect(column(60)).not.toContain('o');
    expect(column(60)).toContain('*');
  });
});

describe('what stands beside the curve', () => {
  it('has a mark for a reading that was not taken for right', () => {
    const story = fairStory({ t: 1800, typed: '330' }, { t: 1801, typed: 'no' });
    expect(legend(html(story))).toContain('doubted reading');
    expect(legend(html(fairStory()))).not.toContain('doubted reading');
  });

  it('names a test on its right where there is no room on its left, and leaves an alarm after the end out', () => {
    const play = new Play({ kitchen: blind });
    play.until('boil.still').type('soft ball').wait(3000).type('hard ball');
    const tests = wide(html(told(play)));
    expect(tests).toMatch(/text-anchor="start"[^>]*>soft ball|text-anchor="start"[^>]*>[^<]*soft/);
    expect(tests).toMatch(/text-anchor="end"[^>]*>[^<]*hard ball/);
    const late = fairStory({ t: 6000, typed: 'trouble burn' });
    const top = debriefText(late, printerOf(late.cook))
      .split('\n')
      .find((line) => /^ +\d+ [|+].*hard ball|^ {6}\|/.test(line));
    expect(top).not.toContain('!');
    expect(late.troubles).toHaveLength(1);
  });

  it('keeps a long table together only where a page holds it', () => {
    const few = html(byFingers());
    const play = new Play({ kitchen: blind });
    play.until('boil.still');
    for (let test = 0; test < 14; test += 1) play.wait(60).type('soft ball');
    const many = html(told(play));
    const sections = (page: string) => [...page.matchAll(/<section( class="short")?><h2>([^<]*)/g)];
    const isShort = (page: string) =>
      sections(page).find(([, , heading]) => heading?.startsWith('In cold water'))?.[1] !== undefined;
    expect(isShort(few)).toBe(true);
    expect(isShort(many)).toBe(false);
  });
});

describe('the result', () => {
  it('names no temperature and no firmness where the pot was poured without a number or a test', () => {
    const story = told(new Play({ kitchen: hall }).wait(600).type('at fold'));
    expect(text(story)).toMatch(/Off the heat [a-z]/);
    expect(text(story)).not.toMatch(/Off the heat at \d/);
    const wrapped = new Play({ kitchen: hall, from: 'cut' });
    wrapped.until('over');
    expect(told(wrapped).state).toBe('finished');
    expect(text(told(wrapped))).not.toMatch(/NaN|null|undefined|Firmness/);
  });

  it('is judged in a usual room where the room is not known', () => {
    const nowhere = { ...hall, room: { ...hall.room, celsius: null } };
    const known = new Play({ kitchen: { ...hall, room: { ...hall.room, celsius: 5 } } });
    const unknown = new Play({ kitchen: nowhere });
    for (const play of [known, unknown]) play.until('fold');
    expect(text(told(unknown))).toMatch(/Texture [^.]* at 68 °F/);
    expect(text(told(known))).toMatch(/Texture [^.]* at 41 °F/);
  });

  it('says how far pieces are apart that were weighed by the handful', () => {
    const story = fairStory({ t: 5600, typed: 'weigh 70g of 10' }, { t: 5601, typed: 'weigh 80g of 10' });
    expect(text(story)).toContain('2 handfuls averaged 7 g to 8 g a piece');
  });

  it('is held against the run sheet that it was opened with', () => {
    const [first, ...rest] = eventsOf(fair);
    if (first?.kind !== 'opened') throw new Error('a cook is opened');
    const story = storyOf([{ ...first, runSheet: runSheetOf(bare.batch) }, ...rest], startedAt);
    expect(text(story)).toContain('planned');
    expect(markdown(story)).toMatch(/\| phase \|.*\| planned \|/i);
    expect(text(fairStory())).toMatch(/usual/);
    expect(text(story)).not.toBe(text(fairStory()));
  });

  it('never prints a minus before nothing', () => {
    const story = fairStory();
    const { peak } = story;
    if (peak === null) throw new Error('the fair was boiled');
    const json = debriefJson({ ...story, peak: { ...peak, outsideKelvin: -0.0001 } }, null, plainPrinter);
    expect(Object.is(json.peak?.outsideKelvin, 0)).toBe(true);
  });
});

describe('the table for a spreadsheet', () => {
  const play = new Play({ kitchen: hall });
  const events: readonly CookEvent[] = [
    { kind: 'room', celsius: 19, humidity: null },
    { kind: 'room', celsius: null, humidity: 0.554 },
    { kind: 'pot', on: false },
    { kind: 'lid', on: true },
    { kind: 'water', grams: 30 },
    { kind: 'hands', whose: 'visitors' },
    { kind: 'mark', what: 'recording' },
    { kind: 'gap', seconds: 90, sure: true },
    { kind: 'ok', warning: 'stalled' },
    { kind: 'weigh', grams: 70, pieces: 10 },
    { kind: 'weigh', grams: 800, pieces: null },
    { kind: 'count', pieces: 112 },
    { kind: 'at', phase: 'pull' },
    { kind: 'stop' },
  ];
  for (const event of events) play.wait(10).happen(event);
  const rows = (story: Story) =>
    debriefCsv(story)
      .trimEnd()
      .split('\r\n')
      .map((row) => row.split(','));
  const [head = [], ...body] = rows(told(play));
  const column = (name: string) => body.map((row) => row[head.indexOf(name)]);

  it('has what an event carries in the column that fits', () => {
    const cells = body
      .slice(1)
      .map((row) => ['kind', 'value', 'unit', 'detail'].map((name) => row[head.indexOf(name)]));
    expect(cells).toEqual([
      ['room', '19', 'C', ''],
      ['room', '', '', 'humidity 55 %'],
      ['pot', '', '', 'off'],
      ['lid', '', '', 'on'],
      ['water', '30', 'g', ''],
      ['hands', '', '', 'visitors'],
      ['mark', '', '', 'recording'],
      ['gap', '90', 's', ''],
      ['ok', '', '', 'stalled'],
      ['weigh', '70', 'g', '10 pieces'],
      ['weigh', '800', 'g', ''],
      ['count', '112', 'pieces', ''],
      ['at', '', '', 'pull'],
      ['stop', '', '', ''],
    ]);
  });

  it('counts the clock from the opening, and has none where its time is not known', () => {
    expect(column('clock')[1]).toBe('2026-11-25T13:35:12.000Z');
    const [, first = []] = rows(storyOf(play.events, null));
    expect(first[head.indexOf('clock')]).toBe('');
  });
});

describe('side by side', () => {
  it('has a dash for a day that is not known, and cuts what is too long', () => {
    const long = storyOf(eventsOf(fair), null);
    const named = {
      ...long,
      batch: {
        ...long.batch,
        kitchen: long.batch.kitchen,
        dial: { ...long.batch.dial, id: 'the-borrowed-dial-of-the-village-hall-in-the-hills' },
      },
    };
    const lines = compareText([
      { id: 'one', story: fairStory() },
      { id: 'two', story: named },
      { id: 'three', story: bare },
    ]).split('\n');
    expect(lines.find((line) => line.includes('2026-11-25'))).toMatch(/2026-11-25 +-? *-?/);
    expect(lines.find((line) => line.includes('hall-dial'))).toMatch(/the-borrowed-di\S*~/);
    expect(lines.filter((line) => line.length > 78)).toEqual([]);
  });
});
