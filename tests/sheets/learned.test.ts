import { describe, expect, it } from 'vitest';
import { plainPrinter } from '../../source/commands/io.js';
import { type Learned, type Lesson, nothingLearned } from '../../source/kitchen/learned.js';
import { learnedLines } from '../../source/sheets/learned.js';
import { words } from '../../source/texts/message.js';

const lesson = (value: number): Lesson => ({ value, sd: 0.1, cooks: 3, date: '2026-11-20', by: 'cooks' });
const said = (learned: Learned | undefined) => learnedLines(learned).map((line) => words(line, plainPrinter));

describe('what a kitchen has learned', () => {
  it.each([undefined, nothingLearned])('is nothing, and says so: %o', (learned) => {
    expect(said(learned)).toEqual([expect.stringMatching(/nothing/i)]);
  });

  it.each<[string, Partial<Learned>, RegExp]>([
    ['a thermometer', { thermometer: { ...lesson(1.5), id: 'hall-dial' } }, /hall-dial.*high/],
    ['a burner', { watts: { 'medium high': lesson(1200) } }, /medium high.*1,?200 W/],
    ['a pot', { carryOverKelvin: lesson(2) }, /2(\.0)? °C|climb/],
    ['a box', { boxShare: lesson(0.85) }, /15 % stay on pot, table and hands/],
    ['hands', { minutes: { fold: lesson(14) } }, /14 min/],
  ])('is one sentence for %s', (_, learned, sentence) => {
    expect(said({ ...nothingLearned, ...learned })).toEqual([expect.stringMatching(sentence)]);
  });
});
