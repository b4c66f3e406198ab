import type { Story } from '../lessons/story.js';
import { type Message, message, words } from '../texts/message.js';
import { numberAt, textAt } from '../units/at.js';
import type { Printer } from '../units/printer.js';
import { type DebriefDocument, type DebriefTable, debriefDocument } from './debrief-document.js';
import { textCone } from './debrief-text-cone.js';
import { textPlot } from './debrief-text-plot.js';
import { beside, sheetColumns, wrapped } from './layout.js';

const labelColumn = 14;
const gap = '  ';

const padded = (cell: string, width: number, right: boolean): string =>
  right ? cell.padStart(width) : cell.padEnd(width);

/** A table in columns as wide as their widest cell; what is too wide goes on under the last column's beginning. */
const tableLines = (
  { columns, rows, right, foot, whenEmpty }: DebriefTable,
  say: (said: Message) => string,
): string[] => {
  if (rows.length === 0 && whenEmpty !== null) return [`${gap}${say(whenEmpty)}`];
  const cells = [columns, ...rows].map((row) => row.map(say));
  const widths = columns.map((_, index) => Math.max(...cells.map((row) => textAt(row, index).length)));
  const fixed = widths.slice(0, -1).reduce((sum, width) => sum + width + gap.length, gap.length);
  const lines = cells.flatMap((row) => {
    const front = row
      .slice(0, -1)
      .map((cell, index) => padded(cell, numberAt(widths, index), right.includes(index)))
      .join(gap);
    return wrapped(
      `${gap}${front}${gap}${textAt(row, row.length - 1)}`,
      sheetColumns,
      Math.min(fixed, sheetColumns - 20),
    );
  });
  return [
    ...lines.map((line) => line.trimEnd()),
    ...(foot === null ? [] : wrapped(`${gap}${say(foot)}`, sheetColumns, 2)),
  ];
};

const changeLines = ({ changes, noChanges }: DebriefDocument, say: (said: Message) => string): string[] =>
  changes.length === 0
    ? wrapped(`${gap}${say(noChanges)}`, sheetColumns, 2)
    : changes.flatMap(({ action, because }, index) => [
        ...wrapped(`${gap}${index + 1}. ${say(action)}`, sheetColumns, 5),
        ...wrapped(`     ${say(because)}`, sheetColumns, 5),
      ]);

/** Wider than this a drawing says nothing more. */
const mostColumns = 120;

/**
 * The debrief for a terminal, lines of at most 78 columns, its drawings as wide as `columns` up to 120; what to change
 * comes last, where the eye is.
 */
export const debriefText = (
  story: Story,
  printer: Printer,
  damage: readonly Message[] = [],
  columns = sheetColumns,
): string => {
  const say = (said: Message): string => words(said, printer);
  const sheet = debriefDocument(story, damage, printer.twelveHours);
  const wide = Math.min(mostColumns, Math.max(sheetColumns, columns));
  const plot = textPlot(story, printer, wide);
  const cone = textCone(story, printer, wide);
  return [
    ...(sheet.rehearsal === null ? [] : [`*** ${say(sheet.rehearsal)} ***`]),
    ...wrapped(say(sheet.title)),
    ...sheet.circumstances.flatMap((one) => wrapped(say(one))),
    ...sheet.caveats.flatMap((one) => wrapped(`! ${say(one)}`, sheetColumns, 2)),
    '',
    ...wrapped(say(sheet.lead)),
    '',
    ...(plot ?? wrapped(say(message('debrief.no-curve')))),
    '',
    ...(sheet.result.length === 0 ? [] : [say(message('debrief.heading.result'))]),
    ...sheet.result.flatMap(({ label, value }) =>
      beside(`${gap}${say(label)}`, say(value), labelColumn + gap.length),
    ),
    ...sheet.tables.flatMap((table) => [
      '',
      say(table.heading),
      ...(table.heading.id === 'debrief.heading.forecast'
        ? [...(cone ?? []), ...(cone === null ? [] : [''])]
        : []),
      ...tableLines(table, say),
    ]),
    ...(sheet.remarks.length === 0
      ? []
      : [
          '',
          say(message('debrief.heading.remarks')),
          ...sheet.remarks.flatMap((one) => wrapped(`${gap}${say(one)}`, sheetColumns, 4)),
        ]),
    '',
    say(message('debrief.heading.changes')),
    ...changeLines(sheet, say),
    '',
    ...sheet.foot.flatMap((one) => wrapped(say(one))),
    '',
  ].join('\n');
};
